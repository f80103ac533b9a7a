/** Strands by color, and where each piece of cord ends. */
import { bodyCordFeet, tailOf } from '../cinch/cord.ts';
import { BODY_PLY } from '../numbers/plies.ts';

export type End = 'near' | 'off';

/** Neighboring strands strung from one piece of cord. */
export interface Section {
  /** Undefined when not chosen. */
  readonly color: string | undefined;
  /** From 1, at the front edge. */
  readonly from: number;
  readonly to: number;
  readonly passes: number;
  readonly startsAt: End;
  readonly endsAt: End;
}

const other = (end: End): End => (end === 'near' ? 'off' : 'near');

/** An odd count ends at the other buckle. */
export const endOf = (start: End, passes: number): End => (passes % 2 === 1 ? other(start) : start);

/**
 * Colors run from both edges to the middle, mirrored [choice]. Each section is odd, so each piece leaves one
 * tail at each buckle. Extra colors are dropped.
 */
export function sectionsOf(strands: number, colors: readonly string[]): Section[] {
  const used = colors.slice(0, (strands + 1) / 2);
  const middle = used.at(-1);
  const outer = used.slice(0, -1);
  const share = Math.floor(strands / (2 * outer.length + 1));
  const side = share % 2 === 1 ? share : share - 1;
  const center = strands - 2 * outer.length * side;
  const sides = (list: readonly string[], startsAt: End) =>
    list.map((color) => ({ color, passes: side, startsAt }));
  const plan = [
    ...sides(outer, 'near'),
    ...[{ color: middle, passes: center, startsAt: 'near' as const }],
    ...sides(outer.toReversed(), 'off'),
  ];
  let before = 0;
  return plan.map(({ color, passes, startsAt }) => {
    const from = before + 1;
    before += passes;
    return { color, from, to: before, passes, startsAt, endsAt: endOf(startsAt, passes) };
  });
}

export interface Piece {
  readonly color: string | undefined;
  readonly ply: number;
  readonly strands: string;
  /** Nearest whole foot; includes 15% extra. */
  readonly feet: number;
  /** At each end, inches. */
  readonly tail: number;
}

/** The body cord of one cinch. */
export const piecesOf = (sections: readonly Section[], length: number): Piece[] =>
  sections.map(({ color, from, to, passes }) => ({
    color,
    ply: BODY_PLY,
    strands: from === to ? String(from) : `${String(from)} to ${String(to)}`,
    feet: Math.round(bodyCordFeet(passes, length)),
    tail: tailOf(passes),
  }));
