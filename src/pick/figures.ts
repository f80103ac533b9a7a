/** Small drawings of where each point is: our own lines, a horse that looks to the left with a stock saddle on. */
import type { StepId } from './landmarks.ts';

const horse = `<path class="body" d="M44 52 C58 44 70 50 82 60 C94 66 104 68 116 66 C140 60 176 62 204 64 C228 64 246 72 252 92 C256 112 252 128 240 138 L236 196 L224 196 L222 150 C214 142 204 138 194 140 C170 150 140 154 116 148 C108 146 104 142 100 138 L98 196 L86 196 L84 134 C70 122 62 104 56 90 C46 84 40 76 36 70 Z"/>
<path class="fine" d="M84 134 C88 124 96 122 102 128 M102 128 L100 138 M252 92 C262 104 264 124 260 142"/>`;

const saddle = `<path class="leather" d="M108 64 C110 56 112 48 118 46 C122 46 122 52 124 56 C136 66 152 64 164 54 C168 50 172 52 172 60 L178 68 C176 78 168 84 156 86 L152 112 C146 116 138 116 134 112 L134 88 C122 86 112 78 108 64 Z"/>
<path class="fine" d="M122 74 L116 84"/><circle class="ring" cx="115" cy="88" r="4.5"/>`;

const stick = '<path class="stick" d="M96 118 L196 118"/><path class="fine" d="M96 113 V123 M196 113 V123"/>';
const paper = '<path class="paper" d="M150 96 L182 98 L181 124 L149 122 Z"/>';
const plumb =
  '<path class="plumb" d="M286 26 V190"/><path class="leather" d="M283 188 L289 188 L286 200 Z"/>';

const dot = (x: number, y: number): string =>
  `<circle class="halo" cx="${String(x)}" cy="${String(y)}" r="9"/><circle class="dot" cx="${String(x)}" cy="${String(y)}" r="4"/>`;

/** What is drawn over the horse for each step. */
const over: Readonly<Record<StepId, string>> = {
  measure: stick,
  from: stick + dot(96, 118),
  to: stick + dot(196, 118),
  'corner-1': paper + dot(150, 96),
  'corner-2': paper + dot(182, 98),
  'corner-3': paper + dot(181, 124),
  'corner-4': paper + dot(149, 122),
  'plumb-top': plumb + dot(286, 30),
  'plumb-bottom': plumb + dot(286, 184),
  ring: dot(115, 88),
  elbow: dot(102, 128),
  'girth-groove': dot(118, 149),
  spine: `<path class="guide" d="M118 30 V170"/>${dot(118, 62)}`,
  underline: `<path class="guide" d="M118 30 V170"/>${dot(118, 149)}`,
  fork: dot(112, 58),
  cantle: dot(164, 55),
  distance:
    '<path class="guide" d="M150 206 H20"/><path class="leather" d="M4 198 h14 v14 h-14 Z M18 202 l6 -3 v12 l-6 -3 Z"/>',
  done: stick + plumb + dot(115, 88) + dot(102, 128) + dot(118, 149),
};

/** All drawings, each hidden until its step is asked. */
export const figures = (): string =>
  `<svg id="figure" viewBox="0 0 300 218" aria-hidden="true" focusable="false">
<g>${horse}${saddle}</g>
${Object.entries(over)
  .map(([id, drawing]) => `<g data-step="${id}" hidden>${drawing}</g>`)
  .join('\n')}
</svg>`;
