/** The style of HTML papers, black on white. */

import { colors, look } from './look.ts';

const { margin, band, type, leading, rules, gap, box, hand, label, halves } = look;
const pt = (points: number): string => `${String(points)}pt`;
const percent = (part: number): string => `${String(Math.round(100 * part))}%`;
const serif = '"Source Serif 4", "Iowan Old Style", Palatino, "Book Antiqua", Georgia, "DejaVu Serif", serif';
const weave = `repeating-linear-gradient(90deg, var(--rust) 0 ${pt(band.row - 0.5)}, var(--ink) ${pt(band.row - 0.5)} ${pt(band.row)})`;
const strands = `repeating-linear-gradient(180deg, ${colors.cord} 0 ${pt(band.strand - 0.4)}, ${colors.shade} ${pt(band.strand - 0.4)} ${pt(band.strand)})`;

/** In points, so screen and paper look alike. */
export const sheetCss = `
:root { --ink: ${colors.ink}; --soft: ${colors.soft}; --line: ${colors.line}; --rust: ${colors.rust}; --sand: ${colors.sand}; }
* { box-sizing: border-box; margin: 0; padding: 0; }
html { background: #ddd5cb; color: var(--ink); -webkit-print-color-adjust: exact; print-color-adjust: exact; }
body { font: ${pt(type.text)}/${String(leading)} "Source Sans 3", "Segoe UI", "Helvetica Neue", "DejaVu Sans", Arial, sans-serif; padding: 18pt; }
.sheet { background: #fff; max-width: 612pt; margin: 0 auto 18pt; padding: ${pt(margin.top)} ${pt(margin.side)} ${pt(margin.bottom)}; box-shadow: 0 1pt 6pt #0003; }
.strands { height: ${pt(band.height)}; margin: 0 0 ${pt(gap.column)}; border: solid var(--ink); border-width: 0.6pt 0;
  background: ${weave} left / ${pt(band.bar)} 100% no-repeat, ${weave} center / ${pt(band.center)} 100% no-repeat,
  ${weave} right / ${pt(band.bar)} 100% no-repeat, ${strands}; }
.head { display: flex; justify-content: space-between; align-items: baseline; gap: 14pt; }
h1 { font: 600 ${pt(type.title)}/${String(leading)} ${serif}; overflow-wrap: anywhere; }
.shop { font-weight: 600; text-align: right; overflow-wrap: anywhere; max-width: 42%; }
.about { color: var(--soft); overflow-wrap: anywhere; }
.notice { border: ${pt(rules.thick)} solid var(--ink); margin-top: 8pt; break-inside: avoid; overflow-wrap: anywhere; }
.notice b, .notice span { display: block; font-weight: 600; padding: 4pt 7pt; }
.notice b { background: var(--ink); color: #fff; font-size: ${pt(type.loud)}; } .notice span:empty { display: none; }
h2 { font: 600 ${pt(type.heading)}/${String(leading)} ${serif}; color: var(--rust); margin: ${pt(gap.heading)} 0 2pt; break-after: avoid; }
p, li, td { overflow-wrap: anywhere; }
p + p:not(.about) { margin-top: ${pt(gap.block)}; } table.pairs + p { margin-top: ${pt(gap.block)}; } p.strong { font-weight: 600; } p.quiet { color: var(--soft); margin-top: 2pt; }
ul { list-style: none; } ul.plain li { padding-left: 10pt; position: relative; }
ul.plain li::before { content: "\\2013"; position: absolute; left: 0; color: var(--soft); }
ul.boxes li { padding: 0.9pt 0 0.9pt ${pt(box.room)}; position: relative; break-inside: avoid; }
ul.boxes li::before { content: ""; position: absolute; left: 0; top: 2.8pt; width: ${pt(box.side)}; height: ${pt(box.side)}; border: ${pt(rules.thin)} solid var(--ink); }
table { border-collapse: collapse; width: 100%; margin: 2pt 0 ${pt(gap.block)}; font-variant-numeric: tabular-nums; }
tr { break-inside: avoid; } thead { display: table-header-group; }
th { font-weight: 600; color: var(--soft); font-size: ${pt(type.small)}; text-align: left; border-bottom: ${pt(rules.thin)} solid var(--ink); }
th, td { padding: ${pt(gap.cell)} ${pt(gap.column)} ${pt(gap.cell)} 0; vertical-align: top; } th:last-child, td:last-child { padding-right: 0; }
tbody td { border-bottom: ${pt(rules.hair)} solid var(--line); }
table:not(.pairs) tbody:first-child tr:first-child td { border-top: ${pt(rules.thin)} solid var(--ink); } tfoot td { border: 0; } tfoot tr:first-child td { border-top: ${pt(rules.thin)} solid var(--ink); }
tfoot tr.total td { font-weight: 600; background: var(--sand); border-top: ${pt(rules.thin)} solid var(--ink); border-bottom: ${pt(rules.thin)} solid var(--ink); }
td.right, th.right { text-align: right; white-space: nowrap; }
figure svg { display: block; max-width: 100%; height: auto; } .beside { display: flow-root; } .beside figure { float: right; margin: 0 0 ${pt(gap.block)} ${pt(gap.picture)}; }
table.half { display: inline-table; vertical-align: top; width: ${percent(halves.first)}; } table.half + table.half { width: ${percent(1 - halves.first - halves.gap - 0.01)}; margin-left: ${percent(halves.gap)}; }
table.pairs td:first-child { width: ${pt(label)}; color: var(--soft); white-space: nowrap; }
.blanks { display: grid; grid-template-columns: repeat(4, 1fr); gap: 2pt 14pt; break-inside: avoid; }
.blanks div { margin-top: ${pt(hand)}; border-top: ${pt(rules.thin)} solid var(--ink); color: var(--soft); font-size: ${pt(type.small)}; }
.rules { margin-top: ${pt(gap.heading)}; padding: 3pt 9pt; background: var(--sand); border-left: ${pt(rules.thick)} solid var(--rust); break-inside: avoid; }
.cautions { margin-top: 9pt; padding-top: 4pt; border-top: ${pt(rules.thin)} solid var(--ink); color: var(--soft); font-size: ${pt(type.fine)}; break-inside: avoid; }
@page { margin: ${pt(margin.top - 4)} ${pt(margin.side)} ${pt(margin.bottom + 8)};
  @bottom-right { content: counter(page) " of " counter(pages); font: ${pt(type.fine)} "Source Sans 3", "Segoe UI", Arial, sans-serif; color: ${colors.soft}; } }
@media print {
  html { background: #fff; } body { padding: 0; font-size: ${pt(type.text * 0.88)}; line-height: 1.19; }
  th, td { padding-top: 1.2pt; padding-bottom: 0.6pt; } h1 { font-size: 17pt; } h2 { margin: 5.5pt 0 0.5pt; font-size: 10.5pt; }
  ul.boxes li { padding-top: 0.4pt; padding-bottom: 0.4pt; } ul.boxes li::before { top: 1.4pt; } .blanks div { margin-top: 14pt; }
  .notice b { font-size: 13pt; padding: 2pt 7pt; } .notice span { padding: 2pt 7pt; }
  .rules { margin-top: 7pt; padding: 2pt 9pt; } .cautions { margin-top: 6pt; padding-top: 3pt; font-size: 7.5pt; }
  .sheet { max-width: none; margin: 0; padding: 0; box-shadow: none; }
  .sheet + .sheet { break-before: page; }
}
@media screen and (max-width: 460pt) {
  body { padding: 0; } .sheet { padding: 12pt 12pt 18pt; }
  .head { display: block; } .shop { text-align: left; max-width: none; } .blanks { grid-template-columns: 1fr; }
  table.half, table.half + table.half { width: 100%; margin-left: 0; } .beside figure { float: none; margin: 6pt 0; } .beside figure svg { margin: 0 auto; }
  table:not(.pairs) { font-size: ${pt(type.small)}; } th, td { padding-right: 6pt; } table.pairs td:first-child { width: 84pt; white-space: normal; } td.right, th.right { white-space: normal; overflow-wrap: normal; }
}`;
