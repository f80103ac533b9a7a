/** docs/sources.md: every source, and where sources disagree. */
import { document, escaped, list } from '../../../src/pages/markdown.ts';
import { errata } from '../../../src/numbers/errata.ts';
import { sourceList } from '../../../src/numbers/sources.ts';

const kinds = {
  choice: 'Our own choices',
  practice: 'Practice of the trade',
  paper: 'Papers',
  book: 'Books',
  standard: 'Standards',
  table: 'Tables, formulas and data',
} as const;

export const sourcesDoc = (): string =>
  document([
    '# Sources',
    'What the numbers, rules and tests rest on. We opened each text, unless it says second-hand (quoted in a text we opened), memory (not looked up), derived (worked out by us) or unwritten (no text).',
    ...Object.entries(kinds).flatMap(([kind, heading]) => [
      `## ${heading}`,
      list(
        sourceList
          .filter((source) => source.kind === kind)
          .map(({ id, title, year, where, how }) => {
            const parts = [title, where, year].filter((part) => part !== undefined);
            return `\`${id}\` ${escaped(parts.join(', '))}${how === 'seen' ? '' : ` (${how.replace('seen ', '')})`}`;
          }),
      ),
    ]),
    '## Where sources disagree',
    'Both stay as they are; here is which we use.',
    list(
      errata.map(
        ({ id, sources, says, here }) =>
          `**${id}.** ${escaped(says)} Here: ${escaped(here)} (${sources.map((name) => `\`${name}\``).join(', ')})`,
      ),
    ),
  ]);
