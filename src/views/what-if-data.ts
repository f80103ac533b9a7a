/** The same answers for scripts and spreadsheets. */
import { csvText } from '../pages/csv.ts';
import { jsonText } from '../pages/json.ts';
import { sizeCells, sizeColumns } from './size-csv.ts';
import { sizeSchema, sizeValue } from './size-json.ts';
import type { WhatIf } from './side-by-side-sheet.ts';

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
