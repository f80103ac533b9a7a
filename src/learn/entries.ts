/** What `learn` writes to a shop file: better numbers and the outcomes behind them. */
import { defaultModel, modelNumbers } from '../numbers/numbers.ts';
import type { Learned } from './learn.ts';
import type { Refit } from './refit.ts';

export interface LearnedEntry {
  readonly block: 'model' | 'learned';
  readonly key: string;
  readonly value: string;
}

/** Clearance first. */
export const refitsOf = ({ clearance, give }: Learned): readonly Refit[] => [clearance, give];

/** Recommended numbers, and the least clearance where it follows. */
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

/** A required clearance never goes below the least one. */
export const writtenOf = ({ key, value }: Refit, { shop }: Pick<Learned, 'shop'>): number =>
  key === 'required-clearance' ? Math.max(value, restingFloor(shop)) : value;

export interface FloorAfter {
  /** Inches over k. */
  readonly value: number;
  /** `follows` the required clearance. */
  readonly moves: 'follows' | 'set-by-shop' | 'stays';
}

/** Rises from the default with the required clearance; stays where the shop set it. */
export function floorOf({ clearance, shop }: Pick<Learned, 'clearance' | 'shop'>): FloorAfter {
  const inForce = shop.model['floor-clearance'];
  if (isOwnFloor(shop)) return { value: inForce, moves: 'set-by-shop' };
  if (!clearance.recommended) return { value: inForce, moves: 'stays' };
  const raised = writtenOf(clearance, { shop }) - defaultModel['required-clearance'];
  const most = modelNumbers['floor-clearance'].max;
  const value = hundredths(Math.min(most, defaultModel['floor-clearance'] + Math.max(0, raised)));
  return { value, moves: raised > 0 || value !== inForce ? 'follows' : 'stays' };
}

/** Set in the shop file, not learned. */
const isOwnFloor = ({ overridden, learned }: Learned['shop']): boolean =>
  overridden.includes('floor-clearance') && learned?.['floor-clearance'] === undefined;

/** Before any learning. */
const restingFloor = (shop: Learned['shop']): number =>
  isOwnFloor(shop) ? shop.model['floor-clearance'] : defaultModel['floor-clearance'];

function basisOf({ outcomes, after }: Refit, value: number, until: string): string {
  const low = Math.max(0, Math.min(value, hundredths(after.low)));
  const high = Math.max(value, hundredths(after.high));
  return `{ outcomes: ${String(outcomes)}, until: ${until}, low: ${String(low)} in, high: ${String(high)} in }`;
}

const hundredths = (value: number): number => Math.round(100 * value) / 100;
