/** The parts of the page for landmarks, as markup that holds nothing of a customer's. */
import { html } from '../pages/html.ts';
import { cautions } from '../numbers/cautions.ts';
import { figures } from './figures.ts';

const option = (unit: string): string => `<option>${unit}</option>`;
const lengthUnits = ['in', 'ft', 'mm', 'cm', 'm'].map(option).join('');
const number = (field: string, label: string, example: string): string =>
  `<label>${label} <input type="text" placeholder="such as ${example}" inputmode="decimal" autocomplete="off" data-field="${field}" aria-describedby="wrong"></label>`;
const unit = (field: string, label: string, options: string): string =>
  `<label>${label} <select data-field="${field}">${options}</select></label>`;

export const task = `<section id="task" aria-labelledby="title">
<div id="step">
<div id="told" aria-live="polite" aria-atomic="true"><p id="count"></p><h2 id="title"></h2><p id="text"></p></div>
${figures()}
</div>
<fieldset id="measure" class="fields" hidden>
<legend>What was held against the horse</legend>
<label><input type="radio" name="kind" value="stick"> stick or tape</label>
<label><input type="radio" name="kind" value="sheet"> flat sheet</label>
<div id="stick-size">${number('length', 'Length', '36')}${unit('lengthUnit', 'Unit', lengthUnits)}</div>
<div id="sheet-size" hidden>${number('width', 'Width', '8.5')}${number('height', 'Height', '11')}${unit('sheetUnit', 'Unit', lengthUnits)}</div>
</fieldset>
<fieldset id="distance" class="fields" hidden>
<legend>Camera to horse</legend>
${number('distance', 'Distance', '12')}${unit('distanceUnit', 'Unit', ['ft', 'm', 'in', 'cm'].map(option).join(''))}
</fieldset>
<p id="wrong" class="wrong" role="status"></p>
</section>`;

export const tools = `<div class="tools" role="group" aria-label="Zoom and undo">
<button type="button" id="in" aria-label="Zoom in">+</button>
<button type="button" id="out" aria-label="Zoom out">&minus;</button>
<button type="button" id="fit">Whole photo</button>
<button type="button" id="undo" disabled>Undo</button>
<span id="where"></span>
</div>`;

export const moves = `<div id="moves" role="group" aria-label="Steps">
<div class="row"><button type="button" id="back">Back</button><button type="button" id="skip" hidden>Skip</button><button type="button" id="next" class="main">Next</button></div><p id="hold" class="hold"></p>
<details><summary>Keyboard and touch</summary><p id="keys">Click or tap to place the mark, drag it to adjust; drag the photo to move it; wheel, two fingers, or + and - to zoom, 0 for the whole photo. With the photo in focus: arrows move the cross, Enter places the mark; then arrows move it by one pixel, with Shift by ten, and Enter goes on. Delete removes the mark, Page Up and Page Down change the step, Ctrl+Z undoes.</p></details>
</div>`;

export const rest = `<div id="rest">
<section aria-labelledby="so-far"><h3 id="so-far">Measurements so far</h3><dl id="readings"></dl><p class="soft">These come from the photo alone; an order weighs them against what is usual.</p><ul id="doubts" role="status" aria-label="What looks wrong"></ul></section>
<section aria-labelledby="block-title"><h3 id="block-title">For the order file</h3>
<textarea id="block" readonly spellcheck="false" aria-labelledby="block-title"></textarea>
<p id="lacking" role="status"></p><div class="row"><button type="button" id="copy" class="main">Copy</button><button type="button" id="download">Download</button></div><p id="copied" role="status"></p></section>
<nav aria-labelledby="all-steps"><h3 id="all-steps">All steps</h3><ol id="list"></ol></nav>
<section class="cautions"><p>A photo measures roughly; a tape on the horse is surer. Tape what the program asks for before you cut cord. ${html(cautions[0] ?? '')}</p></section>
</div>`;
