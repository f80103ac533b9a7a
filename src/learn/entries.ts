/** What goes into a shop file of what was learned: the numbers that foretell better, and what stands behind them. */
import { defaultModel, modelNumbers } from '../numbers/numbers.ts';
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

/** Entries of the refits that are recommended, and of the least clearance where it follows. */
export function entriesOf(learned: Learned, until: string): LearnedEntry[] {
  const good = refitsOf(learned).filter(({ recommended }) => recommended);
  const floor = floorOf(learned);
  const follows =
    floor.moves === 'follows'
      ? [
          entry('model', 'floor-clearance', `${String(floor.value)} in`),
          entry(
            'learned',
            'floor-clearance',
            `{ outcomes: ${String(learned.clearance.outcomes)}, until: ${until} }`,
          ),
        ]
      : [];
  return [
    ...good.map((refit) => entry('model', refit.key, `${String(writtenOf(refit, learned))} in`)),
    ...good.map((refit) => entry('learned', refit.key, basisOf(refit, writtenOf(refit, learned), until))),
    ...follows,
  ];
}

const entry = (block: LearnedEntry['block'], key: string, value: string): LearnedEntry => ({
  block,
  key,
  value,
});

/** The number as it is written; a required clearance is never under the least one that the shop set or the defaults have. */
export const writtenOf = ({ key, value }: Refit, { shop }: Pick<Learned, 'shop'>): number =>
  key === 'required-clearance' ? Math.max(value, restingFloor(shop)) : value;

export interface FloorAfter {
  /** The least clearance after learning, inches over k. */
  readonly value: number;
  /** It follows the required clearance; the shop set it itself; or nothing is learned that could raise it. */
  readonly moves: 'follows' | 'set-by-shop' | 'stays';
}

/**
 * The least clearance is kept as far under a learned required clearance as by default: both are one scale. It is never lowered below
 * the default, and where the shop set it itself it is left alone.
 */
export function floorOf({ clearance, shop }: Pick<Learned, 'clearance' | 'shop'>): FloorAfter {
  const inForce = shop.model['floor-clearance'];
  if (isOwnFloor(shop)) return { value: inForce, moves: 'set-by-shop' };
  if (!clearance.recommended) return { value: inForce, moves: 'stays' };
  const raised = writtenOf(clearance, { shop }) - defaultModel['required-clearance'];
  const most = modelNumbers['floor-clearance'].max;
  const value = hundredths(Math.min(most, defaultModel['floor-clearance'] + Math.max(0, raised)));
  return { value, moves: raised > 0 || value !== inForce ? 'follows' : 'stays' };
}

/** The shop itself set the least clearance: it stands in the file, and not because it was learned. */
const isOwnFloor = ({ overridden, learned }: Learned['shop']): boolean =>
  overridden.includes('floor-clearance') && learned?.['floor-clearance'] === undefined;

/** The least clearance before any learning. */
const restingFloor = (shop: Learned['shop']): number =>
  isOwnFloor(shop) ? shop.model['floor-clearance'] : defaultModel['floor-clearance'];

function basisOf({ outcomes, after }: Refit, value: number, until: string): string {
  const low = Math.max(0, Math.min(value, hundredths(after.low)));
  const high = Math.max(value, hundredths(after.high));
  return `{ outcomes: ${String(outcomes)}, until: ${until}, low: ${String(low)} in, high: ${String(high)} in }`;
}

const hundredths = (value: number): number => Math.round(100 * value) / 100;
