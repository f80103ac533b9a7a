/** The cutting problem as an integer program for HiGHS, independent of our methods. */
import type { CuttingTask } from '../../src/work/cutting/types.ts';
import { optimum } from './highs.ts';

interface Spool {
  readonly lot: string;
  readonly length: number;
  readonly cost: 'none' | 'opened' | 'bought';
}

/** For one color and ply. */
export interface Least {
  readonly short: number;
  readonly bought: number;
  readonly opened: number;
  readonly waste: number;
}

/** Optimizes one objective after another. */
export function leastOf({ cuts, onHand, buyable, usable }: CuttingTask): Least {
  const pieces = cuts.flatMap(({ order, length, quantity }) =>
    Array.from({ length: quantity }, () => ({ order, length })),
  );
  const spools: Spool[] = [
    ...onHand.flatMap(({ lot, length, count, opened }) =>
      Array.from({ length: count }, (): Spool => ({
        lot: `here ${lot}`,
        length,
        cost: opened ? 'none' : 'opened',
      })),
    ),
    ...buyable.flatMap(({ length, count = pieces.length }) =>
      Array.from({ length: Math.min(count, pieces.length) }, (): Spool => ({
        lot: 'new',
        length,
        cost: 'bought',
      })),
    ),
  ];
  const { rows, binaries } = model(pieces, spools, usable);
  const orders = [...new Set(pieces.map(({ order }) => order))];
  const count = (order: string): number => pieces.filter((piece) => piece.order === order).length;
  const terms = {
    short: orders.map((order, o) => `${count(order)} s${o}`),
    bought: spools.flatMap(({ cost }, b) => (cost === 'bought' ? [`y${b}`] : [])),
    opened: spools.flatMap(({ cost }, b) => (cost === 'opened' ? [`y${b}`] : [])),
    waste: spools.map((_, b) => `w${b}`),
  };
  const fixed: string[] = [];
  const stage = (name: keyof typeof terms): number => {
    if (terms[name].length === 0) return 0;
    const value = optimum(
      [
        `Minimize\n obj: ${terms[name].join(' + ')}\nSubject To`,
        ...[...rows, ...fixed].map((row, i) => ` c${i}: ${row}`),
        `Binary\n ${binaries.join(' ')}\nEnd`,
      ].join('\n'),
    );
    fixed.push(`${terms[name].join(' + ')} <= ${value}`);
    return value;
  };
  return {
    short: stage('short'),
    bought: stage('bought'),
    opened: stage('opened'),
    waste: stage('waste'),
  };
}

function model(
  pieces: readonly { order: string; length: number }[],
  spools: readonly Spool[],
  usable: number,
): { rows: string[]; binaries: string[] } {
  const orders = [...new Set(pieces.map(({ order }) => order))];
  const lots = [...new Set(spools.map(({ lot }) => lot))];
  const rows: string[] = [];
  const binaries = [
    ...orders.map((_, o) => `s${o}`),
    ...orders.flatMap((_, o) => lots.map((__, l) => `z${o}_${l}`)),
    ...spools.flatMap((_, b) => [`y${b}`, `r${b}`, ...pieces.map((__, p) => `x${p}_${b}`)]),
  ];
  orders.forEach((_, o) => rows.push([`s${o}`, ...lots.map((__, l) => `z${o}_${l}`)].join(' + ') + ' = 1'));
  pieces.forEach(({ order }, p) => {
    lots.forEach((lot, l) => {
      const there = spools.flatMap((spool, b) => (spool.lot === lot ? [`x${p}_${b}`] : []));
      rows.push(`${there.join(' + ')} - z${orders.indexOf(order)}_${l} = 0`);
    });
  });
  spools.forEach(({ length }, b) => {
    const cut = pieces.map((piece, p) => `${piece.length} x${p}_${b}`).join(' + ');
    rows.push(`${cut} - ${length} y${b} <= 0`);
    pieces.forEach((_, p) => rows.push(`x${p}_${b} - y${b} <= 0`));
    // Leftover is waste, unless r returns it, which needs the usable length.
    rows.push(`w${b} + ${cut} + ${length} r${b} - ${length} y${b} >= 0`);
    rows.push(`${cut} + ${usable} r${b} - ${length} y${b} <= 0`);
    rows.push(`r${b} - y${b} <= 0`);
  });
  return { rows, binaries };
}
