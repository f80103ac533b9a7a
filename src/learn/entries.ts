/** What goes into a shop file of what was learned: the numbers that foretell better, and what stands behind them. */
import type { Learned } from './learn.ts';
import type { Refit } from './refit.ts';

/** An entry of a block of the shop file, as it is written there. */
export interface LearnedEntry {
  readonly block: 'model' | 'learned';
  readonly key: string;
  readonly value: string;
}

/** Both refits, that of the clearance first. */
export const refitsOf = ({ clearance, give }: Learned): readonly Refit[] => [clearance, give];

/** Entries of the refits that are recommended; a required clearance is never under the least one, which stays as it is. */
export function entriesOf(learned: Learned, until: string): LearnedEntry[] {
  const good = refitsOf(learned).filter(({ recommended }) => recommended);
  return [
    ...good.map((refit): LearnedEntry => ({
      block: 'model',
      key: refit.key,
      value: `${String(writtenOf(refit, learned))} in`,
    })),
    ...good.map((refit): LearnedEntry => ({
      block: 'learned',
      key: refit.key,
      value: basisOf(refit, writtenOf(refit, learned), until),
    })),
  ];
}

/** The number as it is written. */
export const writtenOf = ({ key, value }: Refit, { shop }: Learned): number =>
  key === 'required-clearance' ? Math.max(value, shop.model['floor-clearance']) : value;

function basisOf({ outcomes, after }: Refit, value: number, until: string): string {
  const low = Math.max(0, Math.min(value, hundredths(after.low)));
  const high = Math.max(value, hundredths(after.high));
  return `{ outcomes: ${String(outcomes)}, until: ${until}, low: ${String(low)} in, high: ${String(high)} in }`;
}

const hundredths = (value: number): number => Math.round(100 * value) / 100;
