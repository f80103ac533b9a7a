/** Random horses whose measures go together: larger girth for tall and fat, less room for ponies. */
import type { Random } from '../../../src/math/random.ts';
import type { BarrelWord, Kind, Trouble, Use, Withers } from '../../../src/order/types.ts';
import { draftGirthRatio, heightGirthFit } from '../../../src/numbers/girth-fit.ts';
import { around, byShare, happens, pick, type Spread } from '../draw.ts';

/** The truth, in inches; what the order says comes later. */
export interface DrawnHorse {
  readonly kind: Kind;
  readonly height: number;
  readonly girth: number;
  readonly elbowRoom: number;
  readonly bodyLength: number;
  readonly barrel: BarrelWord;
  readonly withers: Withers;
  readonly condition: number;
  readonly trouble: readonly Trouble[];
  readonly use: Use;
}

interface KindShape {
  readonly share: number;
  /** At the withers, inches [choice: what such animals commonly measure]. */
  readonly height: Spread;
  /** Inches from inches, at condition 5. */
  readonly girth: (height: number) => number;
  readonly barrel: Readonly<Record<BarrelWord, number>>;
  readonly withers: Readonly<Record<Withers, number>>;
}

const cm = 2.54;
const fitted = (height: number): number => heightGirthFit.slope * height + heightGirthFit.intercept / cm;

const usual = { 'slab-sided': 2, average: 6, round: 2 };
const round = { 'slab-sided': 0.5, average: 4, round: 5 };
const slab = { 'slab-sided': 4, average: 5, round: 1 };
const flat = { low: 6, average: 3, high: 0.5 };
const even = { low: 2, average: 6, high: 2 };

/** Shares and shapes are our choice; girths follow the published fit, shifted by kind. */
const kinds: Readonly<Record<Kind, KindShape>> = {
  stock: { share: 45, height: { mean: 60.5, sd: 1.8 }, girth: fitted, barrel: usual, withers: even },
  light: {
    share: 20,
    height: { mean: 61.5, sd: 2 },
    girth: (height) => fitted(height) - 1,
    barrel: slab,
    withers: { low: 1, average: 5, high: 4 },
  },
  pony: {
    share: 13,
    height: { mean: 52, sd: 2.6 },
    girth: (height) => fitted(height) + 1,
    barrel: round,
    withers: flat,
  },
  draft: {
    share: 8,
    height: { mean: 65.5, sd: 2 },
    girth: (height) => (draftGirthRatio - 0.04) * height,
    barrel: round,
    withers: even,
  },
  mule: {
    share: 9,
    height: { mean: 59, sd: 2.6 },
    girth: (height) => fitted(height) - 2,
    barrel: slab,
    withers: flat,
  },
  donkey: {
    share: 5,
    height: { mean: 46, sd: 3 },
    girth: (height) => fitted(height) - 1,
    barrel: usual,
    withers: flat,
  },
};

const shares = Object.fromEntries(Object.entries(kinds).map(([kind, { share }]) => [kind, share])) as Record<
  Kind,
  number
>;

const usesOf: Readonly<Record<Kind, Readonly<Partial<Record<Use, number>>>>> = {
  stock: { roping: 3, ranch: 4, trail: 3, barrels: 2, reining: 2, pleasure: 2 },
  light: { trail: 3, endurance: 3, pleasure: 3, barrels: 2, reining: 1 },
  pony: { pleasure: 4, trail: 3, barrels: 1 },
  draft: { trail: 3, packing: 2, pleasure: 3 },
  mule: { packing: 5, trail: 4, ranch: 1 },
  donkey: { packing: 5, trail: 2, pleasure: 2 },
};

/** Share of upright shoulders, which leave hardly any room. */
const uprightShoulder = 0.08;

export function drawHorse(random: Random): DrawnHorse {
  const kind = byShare(random, shares);
  const shape = kinds[kind];
  const height = around(random, shape.height);
  const condition = Math.round(2 * around(random, { mean: kind === 'pony' ? 6 : 5.4, sd: 1.1 })) / 2;
  const fat = 0.7 * (condition - 5);
  const girth = shape.girth(height) + fat + around(random, { mean: 0, sd: 1.6 });
  const k = girth / 72;
  const upright = happens(random, uprightShoulder);
  const elbowRoom = around(random, upright ? { mean: 2.4 * k, sd: 0.35 } : { mean: 4 * k, sd: 0.5 });
  const barrel = byShare(random, condition >= 7 ? { average: 3, round: 7 } : shape.barrel);
  const withers = byShare(random, shape.withers);
  return {
    kind,
    height,
    girth,
    elbowRoom: Math.max(1.25, elbowRoom),
    bodyLength: height * around(random, { mean: 1.04, sd: 0.03 }),
    barrel,
    withers,
    condition: Math.max(2, Math.min(9, condition)),
    trouble: troubles(random, { barrel, withers, upright }),
    use: byShare(random, usesOf[kind]),
  };
}

type Shape = Pick<DrawnHorse, 'barrel' | 'withers'> & { readonly upright: boolean };

/** What rolls is round, what galls has little room. */
function troubles(random: Random, { barrel, withers, upright }: Shape): Trouble[] {
  const likely: Trouble[] = [];
  if (barrel === 'round' || withers === 'low') likely.push('saddle-rolls', 'creeps-forward');
  if (barrel === 'slab-sided') likely.push('slips-back');
  if (upright) likely.push('elbow-gall', 'elbow-gall', 'buckle-rub');
  const all: readonly Trouble[] = [...likely, ...likely, 'elbow-gall', 'buckle-rub', 'girthy', 'slips-back'];
  const count = byShare(random, { '0': upright ? 2 : 6, '1': 3, '2': 1 });
  return [...new Set(Array.from({ length: Number(count) }, () => pick(random, all)))];
}
