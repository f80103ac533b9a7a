/** One page to click landmarks on a photo: photo, script and style are inside, and nothing is fetched from anywhere. */
import { html } from '../report/html.ts';
import { cautions } from '../sources/cautions.ts';
import { figures } from './figures.ts';
import type { Photo } from './block.ts';
import { pageCss } from './page-css.ts';

export interface PageParts {
  /** The picture's bytes as they are, in base 64, and what they are. */
  readonly base64: string;
  readonly type: 'image/jpeg' | 'image/png';
  /** The page's script, built from src/browser. */
  readonly script: string;
  /** SHA-256 of a text in base 64, for the page's own rule of what may run. */
  readonly hash: (text: string) => string;
}

/** The whole page. Names and bytes are a customer's: every one is escaped, and the policy lets run only what was built here. */
export function pickPage(photo: Photo, { base64, type, script, hash }: PageParts): string {
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
<p>${name}, ${String(photo.width)} x ${String(photo.height)} pixels. The photo stays on this machine: this page sends nothing anywhere.</p>
</header>
<noscript><p>This page needs scripts, which are switched off here. Its script is inside the page.</p></noscript>
<p id="fault" role="alert" hidden></p>
<main>
${task}
<section id="photo-part" aria-label="Photo">
<div id="stage" tabindex="0" role="application" aria-label="Photo to click on" aria-describedby="keys">
<img id="photo" alt="The photo to be measured" draggable="false" src="data:${type};base64,${base64}">
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

/** JSON in which nothing can end a script element (HTML, restrictions for contents of script elements). */
const inScript = (value: unknown): string => JSON.stringify(value).replace(/[<>&\u2028\u2029]/g, unicode);
const unicode = (sign: string): string => `\\u${sign.charCodeAt(0).toString(16).padStart(4, '0')}`;

const option = (unit: string): string => `<option>${unit}</option>`;
const lengthUnits = ['in', 'cm', 'mm', 'ft'].map(option).join('');
const number = (field: string, label: string): string =>
  `<label>${label} <input type="text" inputmode="decimal" autocomplete="off" data-field="${field}" aria-describedby="wrong"></label>`;
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
<div id="stick-size">${number('length', 'Length')}${unit('lengthUnit', 'Unit', lengthUnits)}</div>
<div id="sheet-size" hidden>${number('width', 'Width')}${number('height', 'Height')}${unit('sheetUnit', 'Unit', lengthUnits)}</div>
</fieldset>
<fieldset id="distance" class="fields" hidden>
<legend>Camera to horse</legend>
${number('distance', 'Distance')}${unit('distanceUnit', 'Unit', ['ft', 'in', 'cm'].map(option).join(''))}
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
<div class="row"><button type="button" id="back">Back</button><button type="button" id="skip" hidden>Skip</button><button type="button" id="next" class="main">Next</button></div>
<details><summary>Keys and fingers</summary><p id="keys">Click or tap to put the mark, drag it to adjust; drag the photo to move it; wheel, two fingers, or + and - to zoom, 0 for the whole photo. With the photo in focus: arrows move the cross, Enter puts the mark; then arrows move it by one pixel, with Shift by ten, and Enter goes on. Delete takes the mark away, Page Up and Page Down change the step, Ctrl+Z takes back.</p></details>
</div>`;

const rest = `<div id="rest">
<section aria-labelledby="so-far"><h3 id="so-far">What it comes to so far</h3><dl id="readings"></dl><ul id="doubts" role="status" aria-label="What looks wrong"></ul></section>
<section aria-labelledby="block-title"><h3 id="block-title">For the order file</h3>
<p id="lacking"></p>
<textarea id="block" readonly spellcheck="false" aria-labelledby="block-title"></textarea>
<div class="row"><button type="button" id="copy" class="main">Copy</button><button type="button" id="download">Download</button></div><p id="copied" role="status"></p></section>
<nav aria-labelledby="all-steps"><h3 id="all-steps">All steps</h3><ol id="list"></ol></nav>
<section class="cautions"><p>A photo measures roughly. A tape at the horse is surer: tape what the program asks for before cord is cut. ${html(cautions[0] ?? '')}</p></section>
</div>`;
