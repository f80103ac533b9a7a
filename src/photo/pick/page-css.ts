/** How the page for landmarks looks. */
import { colors } from '../../pages/look.ts';

const serif = '"Source Serif 4", "Iowan Old Style", Palatino, "Book Antiqua", Georgia, "DejaVu Serif", serif';
const sans = '"Source Sans 3", "Segoe UI", "Helvetica Neue", "DejaVu Sans", Arial, sans-serif';
const strands = `repeating-linear-gradient(180deg, ${colors.cord} 0 3px, ${colors.shade} 3px 4px)`;
const weave = `repeating-linear-gradient(90deg, ${colors.rust} 0 3px, ${colors.ink} 3px 4px)`;

export const pageCss = `
:root { --ink: ${colors.ink}; --soft: ${colors.soft}; --line: ${colors.line}; --rust: ${colors.rust}; --sand: ${colors.sand}; }
* { box-sizing: border-box; margin: 0; padding: 0; }
[hidden] { display: none !important; }
html { background: #ddd5cb; color: var(--ink); -webkit-text-size-adjust: 100%; }
body { font: 16px/1.4 ${sans}; }
.strands { height: 16px; border: solid var(--ink); border-width: 0 0 1px;
  background: ${weave} left / 20px 100% no-repeat, ${weave} center / 40px 100% no-repeat, ${weave} right / 20px 100% no-repeat, ${strands}; }
header { background: #fff; padding-bottom: 6px; }
header p { padding: 4px 14px 0; color: var(--soft); overflow-wrap: anywhere; }
h1 { font: 600 22px/1.2 ${serif}; padding: 8px 14px 0; }
h2 { font: 600 20px/1.25 ${serif}; color: var(--rust); }
h3 { font: 600 16px/1.3 ${serif}; color: var(--rust); margin-bottom: 4px; }
main { display: grid; grid-template: "stage task" auto "stage moves" auto "stage rest" 1fr / minmax(0, 1fr) 400px; gap: 0 14px; padding: 14px; max-width: 1800px; margin: 0 auto; }
#task { grid-area: task; } #moves { grid-area: moves; } #rest { grid-area: rest; }
#task, #moves, #rest > section, #rest > nav { background: #fff; padding: 10px 14px; }
#moves { padding-top: 0; }
#rest > section, #rest > nav { margin-top: 10px; }
#photo-part { grid-area: stage; position: sticky; top: 14px; align-self: start; }
#count { color: var(--soft); }
#step { display: grid; grid-template-columns: minmax(0, 1fr) 164px; gap: 10px; }
#figure { width: 164px; height: auto; background: var(--sand); align-self: start; }
#figure path, #figure circle { vector-effect: non-scaling-stroke; }
.body { fill: #fff; stroke: var(--ink); stroke-width: 1.2; } .fine { fill: none; stroke: var(--ink); stroke-width: 1; }
.leather { fill: ${colors.cord}; stroke: var(--ink); stroke-width: 1; } .ring { fill: none; stroke: var(--ink); stroke-width: 1.6; }
.stick { fill: none; stroke: ${colors.shade}; stroke-width: 3; } .paper { fill: #fff; stroke: var(--ink); stroke-width: 1.2; }
.far { fill: var(--line); stroke: var(--ink); stroke-width: 1; } .dark { fill: var(--ink); }
.plumb { fill: none; stroke: var(--ink); stroke-width: 1; } .guide { fill: none; stroke: var(--soft); stroke-width: 1; stroke-dasharray: 4 3; }
.halo { fill: none; stroke: var(--rust); stroke-width: 2; } .dot { fill: var(--rust); }
#stage { position: relative; height: calc(100vh - 190px); min-height: 320px; overflow: hidden; background: #3a322e; touch-action: none; cursor: crosshair; user-select: none; -webkit-user-select: none; }
#photo { position: absolute; left: 0; top: 0; max-width: none; transform-origin: 0 0; image-orientation: from-image; pointer-events: none; -webkit-user-drag: none; }
#marks { position: absolute; inset: 0; width: 100%; height: 100%; pointer-events: none; }
#lens { position: absolute; top: 8px; right: 8px; width: 144px; height: 144px; border: 2px solid #fff; outline: 1px solid var(--ink); background: #3a322e; pointer-events: none; }
#lens.left { right: auto; left: 8px; }
.mark circle { fill: none; stroke: #fff; stroke-width: 2; } .mark .under { stroke: var(--ink); stroke-width: 5; }
.mark path { stroke: #fff; stroke-width: 1.5; fill: none; } .mark path.under { stroke: var(--ink); stroke-width: 3.5; }
.mark.now circle { stroke: #ffb347; } .mark.now .under { stroke: var(--ink); } .mark.now path { stroke: #ffb347; } .mark.now path.under { stroke: var(--ink); }
.mark text { font: 600 13px ${sans}; fill: #fff; stroke: var(--ink); stroke-width: 3.5; paint-order: stroke; }
.mark.now text { fill: #ffd9a0; }
.span { stroke: #fff; stroke-width: 2; fill: none; } .span.under { stroke: var(--ink); stroke-width: 4.5; } .span.dashed { stroke-dasharray: 7 5; }
.tools { display: flex; flex-wrap: wrap; gap: 6px; padding: 8px; background: #fff; }
.tools span { flex: 1; min-width: 9em; text-align: right; align-self: center; color: var(--soft); font-variant-numeric: tabular-nums; }
button, .button { font: 600 16px/1.2 ${sans}; color: var(--ink); background: var(--sand); border: 1px solid var(--ink); border-radius: 3px; padding: 10px 14px; min-height: 44px; cursor: pointer; }
button.main { background: var(--rust); color: #fff; border-color: var(--rust); }
button:disabled { color: #6d615a; background: #fff; border-color: var(--line); cursor: default; }
.row { display: flex; flex-wrap: wrap; gap: 8px; align-items: center; } .row button.main { flex: 1; }
.fields { margin-top: 8px; } fieldset { border: 0; } legend { font-weight: 600; }
.fields label { display: inline-flex; align-items: center; gap: 6px; min-height: 44px; margin-right: 12px; }
input[type="radio"] { width: 20px; height: 20px; accent-color: var(--rust); }
input[type="text"], select { font: inherit; color: var(--ink); background: #fff; border: 1px solid var(--soft); border-radius: 3px; padding: 8px; min-height: 44px; }
input[type="text"] { width: 7em; } ::placeholder { color: var(--soft); font-style: italic; opacity: 1; } input[aria-invalid="true"] { border: 2px solid #b3261e; }
.wrong { color: #8f1d17; font-weight: 600; } .wrong:empty { display: none; }
dl { display: grid; grid-template-columns: auto 1fr; gap: 2px 12px; font-variant-numeric: tabular-nums; } dt { color: var(--soft); }
#doubts { list-style: none; } #doubts li { border-left: 4px solid var(--rust); background: var(--sand); padding: 6px 10px; margin-top: 6px; }
nav ol { list-style: none; display: flex; flex-wrap: wrap; gap: 6px; }
nav button { font-weight: 400; font-size: 15px; padding: 6px 10px; } nav button[aria-current="step"] { border: 2px solid var(--rust); font-weight: 600; }
textarea { font: 14px/1.45 "DejaVu Sans Mono", Menlo, Consolas, monospace; width: 100%; height: 250px; padding: 8px; border: 1px solid var(--soft); color: var(--ink); background: #fff; white-space: pre; overflow: auto; }
:focus-visible { outline: 3px solid #0b57d0; outline-offset: 2px; } #stage:focus-visible { outline-offset: -3px; box-shadow: inset 0 0 0 5px #fff; }
#fault, noscript p { background: #fff; border: 3px solid #8f1d17; margin: 14px; padding: 10px 14px; font-weight: 600; }
details { margin-top: 8px; } summary { cursor: pointer; min-height: 32px; } kbd { font: inherit; border: 1px solid var(--line); border-radius: 3px; padding: 0 4px; }
.hold:empty { display: none; } .hold, .soft { color: var(--soft); margin-top: 6px; }
#lacking { margin: 8px 0; font-weight: 600; } #lacking.no { color: #8f1d17; }
.cautions { color: var(--soft); font-size: 14px; }
@media (max-width: 900px) {
  h1 { font-size: 18px; padding: 5px 10px 0; } header p { padding: 0 10px; font-size: 14px; }
  main { grid-template: "task" auto "stage" auto "moves" auto "rest" auto / minmax(0, 1fr); padding: 0; gap: 0; }
  #task { padding: 8px 10px; } #moves { padding: 8px 10px; } h2 { font-size: 18px; }
  #step { grid-template-columns: minmax(0, 1fr) 118px; } #figure { width: 118px; }
  #photo-part { position: static; } #stage { height: 48vh; min-height: 240px; }
  .tools { padding: 6px 10px 0; } .tools span { flex-basis: 100%; text-align: left; } #lens { width: 116px; height: 116px; }
}
@media (prefers-reduced-motion: reduce) { * { transition: none !important; animation: none !important; scroll-behavior: auto !important; } }`;
