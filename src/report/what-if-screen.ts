/** Answers side by side on the screen; one under the other where it is too narrow. */
import { cautionLines } from './heads.ts';
import { welfareTexts } from './about-styles.ts';
import { visible } from './clean.ts';
import { item, markOf, pageFor, pageText, sentence, title, type Page } from './page.ts';
import { wrap } from './text.ts';
import type { ReportOptions } from './types.ts';
import { differsText, whatIfTable, type WhatIf, type WhatIfRow, type WhatIfTable } from './what-if.ts';
import { padRight } from './width.ts';
import { orderTitle } from './words.ts';

const nameWidth = 14;
const gap = 2;
/** Narrower than this, words break. */
const narrowestColumn = 13;

/** The screen of one order. */
export function whatIfScreen(answers: readonly WhatIf[], options: ReportOptions): string {
  const results = answers.map(({ result }) => result);
  const advices = results.flatMap((result) => (result.ok ? [result.advice] : []));
  const [base] = advices;
  if (base === undefined) return '';
  const page: Page = { ...pageFor(options), width: options.width };
  const table = whatIfTable(answers, options.units);
  const count = table.heads.length;
  const each = Math.floor((page.width - nameWidth - gap * (count - 1)) / count);
  const welfare = new Set(advices.flatMap((advice) => welfareTexts(advice, options.units)));
  return pageText([
    ...title(page, orderTitle(base.facts.order)),
    ...[...welfare].flatMap((text) => item(page, text, markOf('poor', page, 0))),
    ...(each < narrowestColumn ? under(table, page) : beside(table, each, page)),
    '',
    ...sentence(page, differsText),
    ...cautionLines(results, page),
  ]);
}

function beside({ heads, rows }: WhatIfTable, each: number, page: Page): string[] {
  const head = { name: '', cells: heads.map((text) => ({ text: visible(text), differs: false })) };
  return [
    ...rowLines(head, each).map((line) => page.pen.strong(line)),
    page.pen.quiet('-'.repeat(page.width)),
    ...rows.flatMap((row) => rowLines(row, each)),
  ];
}

/** A row, as high as its fullest cell. */
function rowLines({ name, cells }: WhatIfRow, each: number): string[] {
  const columns = cells.map((cell) => wrap(marked(cell), each));
  const height = Math.max(...columns.map((lines) => lines.length));
  return Array.from({ length: height }, (_, i) => {
    const texts = columns.map((lines) => padRight(lines[i] ?? '', each + gap));
    return (padRight(i === 0 ? name : '', nameWidth) + texts.join('')).trimEnd();
  });
}

/** The mark stays on the line of the last word. */
const marked = ({ text, differs }: WhatIfRow['cells'][number]): string => (differs ? `${text}\u00a0*` : text);

function under({ heads, rows }: WhatIfTable, page: Page): string[] {
  return heads.flatMap((head, i) => [
    '',
    ...sentence(page, head).map((line) => page.pen.strong(line)),
    ...rows.flatMap(({ name, cells }) => {
      const cell = cells[i] ?? { text: '', differs: false };
      const [first = '', ...more] = sentence(page, marked(cell), nameWidth + gap);
      return [`  ${padRight(name, nameWidth)}${first.trimStart()}`, ...more];
    }),
  ]);
}
