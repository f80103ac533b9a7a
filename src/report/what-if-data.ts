/** The same answers for scripts, spreadsheets and papers. */
import { csvText } from './csv.ts';
import { jsonText } from './json.ts';
import { document, escaped, list, section, table } from './markdown.ts';
import { sizeCells, sizeColumns } from './size-csv.ts';
import { sizeSchema, sizeValue } from './size-json.ts';
import { welfareTexts } from './about-styles.ts';
import type { ReportOptions } from './types.ts';
import { differsText, whatIfTable, type WhatIf } from './what-if.ts';
import { orderTitle } from './words.ts';

/** As `size`, with `whatIf` in every result: null for the order as it is. */
export const whatIfJson = (answers: readonly WhatIf[]): string =>
  jsonText({
    schema: sizeSchema,
    results: answers.map(({ whatIf = null, result }) => ({ whatIf, ...sizeValue(result) })),
  });

/** As `size`, with a first column that is empty for the order as it is. */
export const whatIfCsv = (answers: readonly WhatIf[]): string =>
  csvText([
    ['what_if', ...sizeColumns.map(({ name }) => name)],
    ...answers.flatMap(({ whatIf, result }) => sizeCells(result).map((cells) => [whatIf, ...cells])),
  ]);

/** A table with one column an answer. */
export function whatIfMarkdown(answers: readonly WhatIf[], { units }: Pick<ReportOptions, 'units'>): string {
  const advices = answers.flatMap(({ result }) => (result.ok ? [result.advice] : []));
  const [base] = advices;
  if (base === undefined) return '';
  const { heads, rows } = whatIfTable(answers, units);
  const lines = rows.map(({ name, cells }) => [
    name,
    ...cells.map(({ text, differs }) => `${escaped(text)}${differs ? ' \\*' : ''}`),
  ]);
  const welfare = new Set(advices.flatMap((advice) => welfareTexts(advice, units)));
  const cautions = new Set(advices.flatMap(({ cautions }) => cautions));
  return document([
    `# ${escaped(orderTitle(base.facts.order))}`,
    ...[...welfare].map((text) => `**${escaped(text)}**`),
    table(['', ...heads.map(escaped)], lines),
    escaped(differsText),
    ...section('## Keep in mind', list([...cautions].map(escaped))),
  ]);
}
