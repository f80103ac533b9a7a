/** How papers look: a band of strands at the head, plain columns, black on white; the same on Letter and on A4. */

/** The whole style sheet. Lengths are points, so that a page looks alike on the screen and on paper. */
export const sheetCss = `
:root { --ink: #2b2320; --soft: #6d5f57; --line: #c9bdb2; --rust: #96401f; --sand: #f3ece3; }
* { box-sizing: border-box; margin: 0; padding: 0; }
html { background: #ddd5cb; color: var(--ink); -webkit-print-color-adjust: exact; print-color-adjust: exact; }
body { font: 10pt/1.38 "Source Sans 3", "Segoe UI", "Helvetica Neue", "DejaVu Sans", Arial, sans-serif; padding: 18pt; }
.sheet { background: #fff; max-width: 540pt; margin: 0 auto 18pt; padding: 0 34pt 26pt; box-shadow: 0 1pt 6pt #0003; }
.strands { height: 17pt; margin: 0 -34pt 16pt; border-bottom: 1pt solid var(--ink);
  background: repeating-linear-gradient(0deg, #d9c3a5 0 0.75pt, #a88a66 0.75pt 1pt);
  -webkit-mask: none; position: relative; }
.strands::before, .strands::after { content: ""; position: absolute; top: 0; bottom: 0; width: 13pt;
  background: repeating-linear-gradient(90deg, var(--rust) 0 2.1pt, #6f2e15 2.1pt 2.6pt); }
.strands::before { left: 34pt; } .strands::after { right: 34pt; }
.head { display: flex; justify-content: space-between; align-items: baseline; gap: 14pt; }
h1 { font: 600 19pt/1.15 "Iowan Old Style", Palatino, "Book Antiqua", Georgia, "DejaVu Serif", serif; overflow-wrap: anywhere; }
.shop { color: var(--soft); text-align: right; overflow-wrap: anywhere; max-width: 45%; }
.about { color: var(--soft); margin-top: 2pt; overflow-wrap: anywhere; }
.notice { border: 1.5pt solid var(--rust); color: var(--rust); font-weight: 700; padding: 5pt 8pt; margin-top: 9pt; }
h2 { font: 600 11.5pt/1.2 "Iowan Old Style", Palatino, "Book Antiqua", Georgia, "DejaVu Serif", serif;
  color: var(--rust); margin: 12pt 0 3pt; break-after: avoid; }
p, li, td { overflow-wrap: anywhere; }
p.strong { font-weight: 700; } p.quiet { color: var(--soft); margin-top: 2pt; }
ul { list-style: none; } ul.plain li { padding-left: 10pt; position: relative; }
ul.plain li::before { content: "\\2013"; position: absolute; left: 0; color: var(--soft); }
ul.boxes li { padding: 1pt 0 1pt 17pt; position: relative; break-inside: avoid; }
ul.boxes li::before { content: ""; position: absolute; left: 0; top: 3.2pt; width: 8pt; height: 8pt; border: 1pt solid var(--ink); }
table { border-collapse: collapse; width: 100%; margin: 2pt 0 5pt; font-variant-numeric: tabular-nums; }
tr { break-inside: avoid; } thead { display: table-header-group; }
th { font-weight: 600; color: var(--soft); font-size: 8.5pt; text-align: left; border-bottom: 0.75pt solid var(--ink); }
th, td { padding: 1.8pt 8pt 1.8pt 0; vertical-align: top; } th:last-child, td:last-child { padding-right: 0; }
tbody td { border-bottom: 0.5pt solid var(--line); }
tfoot td { border: 0; } tfoot tr:first-child td { border-top: 0.75pt solid var(--ink); }
tfoot tr.total td { font-weight: 700; background: var(--sand); border-top: 0.75pt solid var(--ink); border-bottom: 0.75pt solid var(--ink); }
td.right, th.right { text-align: right; white-space: nowrap; }
table.half { display: inline-table; vertical-align: top; width: 61%; } table.half + table.half { width: 33%; margin-left: 5%; }
table.pairs td:first-child { width: 104pt; color: var(--soft); white-space: nowrap; }
.blanks { display: grid; grid-template-columns: repeat(4, 1fr); gap: 3pt 14pt; break-inside: avoid; }
.blanks div { border-bottom: 0.75pt solid var(--ink); padding-top: 11pt; color: var(--soft); font-size: 8.5pt; }
.rules { margin-top: 12pt; padding: 6pt 9pt; background: var(--sand); break-inside: avoid; }
.cautions { margin-top: 10pt; padding-top: 5pt; border-top: 0.75pt solid var(--line); color: var(--soft); font-size: 8pt; line-height: 1.3; break-inside: avoid; }
@page { margin: 10mm 15mm 9mm; }
@media print {
  html { background: #fff; } body { padding: 0; font-size: 9pt; line-height: 1.22; }
  th, td { padding-top: 0.8pt; padding-bottom: 0.8pt; } h1 { font-size: 17pt; } h2 { font-size: 10.5pt; margin: 7pt 0 2pt; } ul.boxes li { padding-top: 0.3pt; padding-bottom: 0.3pt; }
  .rules { margin-top: 9pt; padding: 4pt 8pt; } .cautions { margin-top: 6pt; padding-top: 4pt; font-size: 7.5pt; line-height: 1.2; }
  ul.boxes li::before { top: 1.6pt; } .blanks div { padding-top: 9pt; } h1 + .shop { line-height: 1.1; }
  .sheet { max-width: none; margin: 0; padding: 0; box-shadow: none; }
  .sheet + .sheet { break-before: page; }
  .strands { height: 13pt; margin: 0 0 9pt; } .strands::before { left: 0; } .strands::after { right: 0; }
}
@media screen and (max-width: 460pt) {
  body { padding: 0; } .sheet { padding: 0 12pt 18pt; } .strands { margin: 0 -12pt 12pt; }
  .head { display: block; } .shop { text-align: left; max-width: none; } .blanks { grid-template-columns: 1fr; }
  table.half, table.half + table.half { width: 100%; margin-left: 0; }
  table.pairs td:first-child { width: 84pt; white-space: normal; } td.right, th.right { white-space: normal; }
}`;
