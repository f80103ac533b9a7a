/** The page to click landmarks on: one file, which fetches nothing. */
import { cautions } from '../../numbers/cautions.ts';
import { html } from '../../pages/html.ts';
import type { PhotoFile } from './block.ts';
import { figures } from './figures.ts';
import { pageCss } from './page-css.ts';

export interface PageParts {
  readonly base64: string;
  readonly kind: 'jpeg' | 'png';
  /** Built from src/photo/browser. */
  readonly script: string;
  /** SHA-256 in base 64. */
  readonly hash: (text: string) => string;
}

/** Names come from outside: they are escaped, and the policy runs only our script. */
export function pickPage(photo: PhotoFile, { base64, kind, script, hash }: PageParts): string {
  const policy = [
    "default-src 'none'",
    'img-src data: blob:',
    `style-src 'sha256-${hash(pageCss)}'`,
    `script-src 'sha256-${hash(script)}'`,
    "base-uri 'none'",
    "form-action 'none'",
  ].join('; ');
  const name = html(photo.file);
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policy}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="referrer" content="no-referrer">
<title>Landmarks on ${name}</title>
<style>${pageCss}</style>
</head>
<body>
<header>
<div class="strands"></div>
<h1>Landmarks on the photo</h1>
<p>${name}, ${String(photo.width)} x ${String(photo.height)} pixels. The photo stays on this machine: this page sends nothing.</p>
</header>
<noscript><p>This page needs JavaScript, which is turned off here. Its script is inside the page.</p></noscript>
<p id="fault" role="alert" hidden></p>
<main>
${task}
<section id="photo-part" aria-label="Photo">
<div id="stage" tabindex="0" role="application" aria-label="Photo to click on" aria-describedby="keys">
<img id="photo" alt="The photo to be measured" draggable="false" src="data:image/${kind};base64,${base64}">
<svg id="marks" aria-hidden="true" focusable="false"></svg>
<canvas id="lens" width="288" height="288" aria-hidden="true" hidden></canvas>
</div>
${tools}
</section>
${moves}
${rest}
</main>
<script type="application/json" id="facts">${inScript(photo)}</script>
<script>${script}</script>
</body>
</html>
`;
}

/** Cannot end a script element (HTML, restrictions for contents of script elements). */
const inScript = (value: unknown): string => JSON.stringify(value).replace(/[<>&\u2028\u2029]/g, unicode);
const unicode = (sign: string): string => `\\u${sign.charCodeAt(0).toString(16).padStart(4, '0')}`;

const option = (unit: string): string => `<option>${unit}</option>`;
const lengthUnits = ['in', 'ft', 'mm', 'cm', 'm'].map(option).join('');
const number = (field: string, label: string, example: string): string =>
  `<label>${label} <input type="text" placeholder="such as ${example}" inputmode="decimal" autocomplete="off" data-field="${field}" aria-describedby="wrong"></label>`;
const unit = (field: string, label: string, options: string): string =>
  `<label>${label} <select data-field="${field}">${options}</select></label>`;

const task = `<section id="task" aria-labelledby="title">
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

const tools = `<div class="tools" role="group" aria-label="Zoom and undo">
<button type="button" id="in" aria-label="Zoom in">+</button>
<button type="button" id="out" aria-label="Zoom out">&minus;</button>
<button type="button" id="fit">Whole photo</button>
<button type="button" id="undo" disabled>Undo</button>
<span id="where"></span>
</div>`;

const moves = `<div id="moves" role="group" aria-label="Steps">
<div class="row"><button type="button" id="back">Back</button><button type="button" id="skip" hidden>Skip</button><button type="button" id="next" class="main">Next</button></div><p id="hold" class="hold"></p>
<details><summary>Keyboard and touch</summary><p id="keys">Click or tap to place the mark, drag it to adjust; drag the photo to move it; wheel, two fingers, or + and - to zoom, 0 for the whole photo. With the photo in focus: arrows move the cross, Enter places the mark; then arrows move it by one pixel, with Shift by ten, and Enter goes on. Delete removes the mark, Page Up and Page Down change the step, Ctrl+Z undoes.</p></details>
</div>`;

const rest = `<div id="rest">
<section aria-labelledby="so-far"><h3 id="so-far">Measurements so far</h3><dl id="readings"></dl><p class="soft">These come from the photo alone; an order weighs them against what is usual.</p><ul id="doubts" role="status" aria-label="What looks wrong"></ul></section>
<section aria-labelledby="block-title"><h3 id="block-title">For the order file</h3>
<textarea id="block" readonly spellcheck="false" aria-labelledby="block-title"></textarea>
<p id="lacking" role="status"></p><div class="row"><button type="button" id="copy" class="main">Copy</button><button type="button" id="download">Download</button></div><p id="copied" role="status"></p></section>
<nav aria-labelledby="all-steps"><h3 id="all-steps">All steps</h3><ol id="list"></ol></nav>
<section class="cautions"><p>A photo measures roughly; a tape on the horse is surer. Tape what the program asks for before you cut cord. ${html(cautions[0] ?? '')}</p></section>
</div>`;
