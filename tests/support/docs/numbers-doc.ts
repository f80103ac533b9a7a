/** docs/numbers.md: every model number with unit, range, meaning and basis. */
import { askingNumbers } from '../../../src/numbers/asking-numbers.ts';
import { benchNumbers } from '../../../src/numbers/bench-numbers.ts';
import { document, escaped, list } from '../../../src/pages/markdown.ts';
import { learningNumbers } from '../../../src/numbers/learning-numbers.ts';
import type { FixedNumber } from '../../../src/numbers/model-number.ts';
import { modelNumbers } from '../../../src/numbers/numbers.ts';

type Listed = FixedNumber<string> & { readonly min?: number; readonly max?: number };

/** Others read as they are; chances and ratios have none. */
const units: Readonly<Record<string, string>> = {
  'in*k': ' in·k',
  'in/in': ' in/in',
  ratio: '',
  chance: '',
  log: '',
};

const line = ([key, { value, unit, about, basis, min, max }]: [string, Listed]): string => {
  const range = min === undefined ? '' : ` (${String(min)}–${String(max)})`;
  const known =
    basis.source === 'engineering-choice'
      ? ''
      : `; ${basis.kind}${basis.kind === 'practice' ? '' : ` \`${basis.source}\``}`;
  return `\`${key}\` ${String(value)}${units[unit] ?? ` ${unit}`}${range}: ${escaped(about)}${known}`;
};

const lines = (numbers: Readonly<Record<string, Listed>>): string => list(Object.entries(numbers).map(line));

export const numbersDoc = (): string =>
  document([
    '# Numbers',
    'Our own choice, unless a line says `practice` or names a [source](sources.md). A spread is one standard deviation. Lengths in in·k are for the average horse and grow with heart girth; those in in do not.',
    '## The model',
    'A shop file may set these under `model:`, within the range in parentheses.',
    lines(modelNumbers),
    '## Fixed',
    'A shop file cannot change these. Tickets and quotes:',
    lines(benchNumbers),
    '`ask`:',
    lines(askingNumbers),
    '`learn`:',
    lines(learningNumbers),
  ]);
