/** docs/numbers.md: every number of the model with its unit, range, meaning and basis. */
import { askingNumbers } from '../../../src/sources/asking-numbers.ts';
import { benchNumbers } from '../../../src/sources/bench-numbers.ts';
import { document, escaped, table } from '../../../src/report/markdown.ts';
import { learningNumbers } from '../../../src/sources/learning-numbers.ts';
import type { FixedNumber, ModelNumber, NumberUnit } from '../../../src/sources/model-number.ts';
import { modelNumbers } from '../../../src/sources/numbers.ts';

const units: Readonly<Record<NumberUnit, string>> = {
  in: 'in',
  'in*k': 'in, times k',
  'in/in': 'in per in',
  ratio: 'ratio',
  lbf: 'lbf',
  chance: 'chance',
  deg: 'degrees',
  strands: 'strands',
};

/** Numbers that no shop file overrides. */
const fixedTable = (numbers: Readonly<Record<string, FixedNumber<string>>>): string =>
  table(
    ['Number', 'Value', 'Unit', 'What it is', 'Basis'],
    Object.entries(numbers).map(([key, { value, unit, about, basis }]) => [
      `\`${key}\``,
      String(value),
      unit,
      escaped(about),
      basis.source === 'engineering-choice' ? basis.kind : `${basis.kind}: \`${basis.source}\``,
    ]),
  );

/** Text of docs/numbers.md. */
export const numbersDoc = (): string =>
  document([
    '# Numbers of the model',
    'Every number that is neither arithmetic nor geometry. A shop file may set any of them under `model:`, within the range. Lengths marked "times k" are given for the average horse and grow with the horse: k is its heart girth over `average-girth`. Other lengths belong to tree, straps, cord and tape, and do not grow.',
    'The basis says whose word it is: `published` names a text, `practice` is common practice of the trade, `choice` is our own and may be argued with. The names stand in [sources](sources.md).',
    table(
      ['Number', 'Value', 'Unit', 'Range', 'What it is', 'Basis'],
      Object.entries<ModelNumber>(modelNumbers).map(([key, { value, unit, min, max, about, basis }]) => [
        `\`${key}\``,
        String(value),
        units[unit],
        `${min} to ${max}`,
        escaped(about),
        basis.kind === 'published' ? `published: \`${basis.source}\`` : basis.kind,
      ]),
    ),
    '## Numbers of the bench',
    'What tickets and quotes go by beside the model: where bars sit, what cord takes, how near is near enough. The shop file does not override these.',
    fixedTable(benchNumbers),
    '## Numbers of asking',
    'What `ask` goes by: how well a side photo reads, and what is worth the time of a customer. The shop file does not override these.',
    fixedTable(askingNumbers),
    '## Numbers of learning',
    'What `learn` goes by: what is thought before any outcome is known, and how soon trouble shows. The shop file does not override these.',
    fixedTable(learningNumbers),
  ]);
