/** A small drawing of where each mark goes. */
import type { StepId } from './landmarks.ts';

const legs =
  '<path class="far" d="M92 128 L98 164 L96 202 L108 204 L110 164 L118 140 Z M214 130 L208 160 L210 202 L222 204 L222 164 L236 140 Z"/>';

const horse = `<path class="body" d="M120 58 C102 50 84 26 66 12 L64 1 L56 9 C46 18 30 38 17 54 C12 60 16 69 25 67 C36 65 46 56 58 54 C64 66 62 86 68 100 C70 112 76 122 84 128 L86 162 L83 200 L78 209 L95 209 L96 200 L100 162 L106 132 C108 142 112 149 118 151 C150 154 182 150 208 134 C214 130 216 128 218 126 C222 138 230 146 234 158 L230 200 L226 209 L243 209 L245 200 L249 158 C252 140 260 120 257 96 C255 78 246 66 232 62 C212 55 196 60 180 65 C158 70 138 67 120 58 Z"/>
<path class="fine" d="M106 132 C108 124 103 112 92 106 M256 86 C270 92 276 124 268 156 C262 150 258 138 257 122"/><circle class="dark" cx="42" cy="33" r="1.6"/>`;

const saddle = `<path class="leather" d="M110 62 C112 56 117 52 119 47 C117 43 119 40 123 40 C127 40 128 44 127 48 C134 58 152 62 164 52 C168 46 174 43 177 46 C179 52 180 58 184 64 L192 70 C190 80 182 85 168 86 L140 88 C126 88 114 82 109 74 Z"/>
<path class="fine" d="M112 66 C130 76 160 74 186 66 M134 55 L137 43 H156 L160 54 M141 43 L138 32 H155 L152 43"/><circle class="ring" cx="116" cy="89" r="5"/>`;

const stick =
  '<path class="stick" d="M100 112 L232 112"/><path class="fine" d="M100 106 V118 M232 106 V118"/>';
const paper = '<path class="paper" d="M176 92 L210 94 L209 122 L175 119 Z"/>';
const plumb =
  '<path class="plumb" d="M286 20 V188"/><path class="leather" d="M282 187 L290 187 L286 202 Z"/>';

const dot = (x: number, y: number): string =>
  `<circle class="halo" cx="${String(x)}" cy="${String(y)}" r="10"/><circle class="dot" cx="${String(x)}" cy="${String(y)}" r="4"/>`;

const over: Readonly<Record<StepId, string>> = {
  measure: stick,
  from: stick + dot(100, 112),
  to: stick + dot(232, 112),
  'corner-1': paper + dot(176, 92),
  'corner-2': paper + dot(210, 94),
  'corner-3': paper + dot(209, 122),
  'corner-4': paper + dot(175, 119),
  'plumb-top': plumb + dot(286, 26),
  'plumb-bottom': plumb + dot(286, 180),
  ring: dot(116, 89),
  elbow: dot(106, 132),
  'girth-groove': dot(120, 151),
  spine: `<path class="guide" d="M120 30 V172"/>${dot(120, 58)}`,
  underline: `<path class="guide" d="M120 30 V172"/>${dot(120, 151)}`,
  fork: dot(111, 62),
  cantle: dot(165, 52),
  distance:
    '<path class="guide" d="M150 214 V176"/><path class="fine" d="M145 182 L150 174 L155 182"/><path class="leather" d="M138 203 h6 l2 -3 h8 l2 3 h6 v14 h-24 Z"/><circle class="ring" cx="150" cy="210" r="4"/>',
  done: stick + plumb + dot(116, 89) + dot(106, 132) + dot(120, 151),
};

/** One group a step, hidden until then. */
export const figures = (): string =>
  `<svg id="figure" viewBox="0 0 300 218" aria-hidden="true" focusable="false">
<g>${legs}${horse}${saddle}</g>
${Object.entries(over)
  .map(([id, drawing]) => `<g data-step="${id}" hidden>${drawing}</g>`)
  .join('\n')}
</svg>`;
