/** docs/sources.md: every source once, how it is known, and what rests on it. */
import { document, escaped, table } from '../../../src/report/markdown.ts';
import { sourceList } from '../../../src/sources/sources.ts';
import { citations, type Citation } from './citations.ts';

const kinds = {
  choice: 'Our own choices',
  practice: 'Practice of the trade',
  paper: 'Papers',
  book: 'Books',
  standard: 'Standards',
  table: 'Tables, formulas and data',
} as const;

const many = 4;

/** Text of docs/sources.md. */
export function sourcesDoc(): string {
  const cited = citations();
  return document([
    '# Sources',
    'What anything here rests on. "How known" says how near we came to the text: `seen` was opened, `seen second-hand` is quoted by a text that was opened, `memory` is recalled and not looked up, `derived` was computed from a published formula or by ourselves, `unwritten` has no text. A source without an entry under "Used by" is named in the comment of a formula or checks it in the tests.',
    'Where sources disagree stands in [errata](errata.md).',
    ...Object.entries(kinds).flatMap(([kind, heading]) => [
      `## ${heading}`,
      table(
        ['Name', 'What', 'Where', 'How known', 'Used by'],
        sourceList
          .filter((source) => source.kind === kind)
          .map(({ id, title, year, where, how }) => [
            `\`${id}\``,
            escaped(title),
            escaped([where, year].filter((part) => part !== undefined).join(', ')),
            how,
            usedBy(cited.filter(({ source }) => source === id)),
          ]),
      ),
    ]),
  ]);
}

function usedBy(cited: readonly Citation[]): string {
  return (['rules', 'numbers', 'facts', 'errata'] as const)
    .map((by) => {
      const names = [...new Set(cited.filter((entry) => entry.by === by).map(({ name }) => name))];
      if (names.length === 0) return '';
      return `${by}: ${names.length > many ? `${names.length} of them` : names.join(', ')}`;
    })
    .filter((part) => part !== '')
    .join('; ');
}
