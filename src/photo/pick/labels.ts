/** Places the names of marks, off the marks and each other. */
import type { Size, Spot } from './view.ts';

export interface Label {
  /** From the mark to the text's start or end. */
  readonly dx: number;
  readonly dy: number;
  readonly anchor: 'start' | 'end';
}

/** Rough letter height and width, screen units. */
const LINE = 16;
const LETTER = 8.6;
/** Half a mark. */
const MARK = 9;

const tries: readonly Label[] = [-10, 20, 5].flatMap((dy): Label[] => [
  { dx: 14, dy, anchor: 'start' },
  { dx: -14, dy, anchor: 'end' },
]);

interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

export interface Named {
  readonly at: Spot;
  readonly name: string;
  /** Always named. */
  readonly now: boolean;
}

/** One a mark; undefined where there is no room. */
export function placeLabels(marks: readonly Named[], window: Size): (Label | undefined)[] {
  const taken: Box[] = [];
  const placed = new Map<Named, Label>();
  for (const mark of [...marks.filter(({ now }) => now), ...marks.filter(({ now }) => !now)]) {
    const { at, name } = mark;
    const isFree = (box: Box): boolean =>
      !taken.some((other) => overlap(other, box)) &&
      !marks.some((other) => other !== mark && overlap(around(other.at), box));
    const inside = tries.filter((label) => isInside(boxOf(at, name, label), window));
    const label = inside.find((each) => isFree(boxOf(at, name, each))) ?? (mark.now ? inside[0] : undefined);
    if (label === undefined) continue;
    taken.push(boxOf(at, name, label));
    placed.set(mark, label);
  }
  return marks.map((mark) => placed.get(mark));
}

const around = ({ x, y }: Spot): Box => ({
  left: x - MARK,
  right: x + MARK,
  top: y - MARK,
  bottom: y + MARK,
});

function boxOf(at: Spot, name: string, { dx, dy, anchor }: Label): Box {
  const start = at.x + dx - (anchor === 'end' ? LETTER * name.length : 0);
  return {
    left: start,
    right: start + LETTER * name.length,
    top: at.y + dy - 0.75 * LINE,
    bottom: at.y + dy + 0.25 * LINE,
  };
}

const isInside = ({ left, right, top, bottom }: Box, window: Size): boolean =>
  left >= 0 && right <= window.width && top >= 0 && bottom <= window.height;

const overlap = (a: Box, b: Box): boolean =>
  a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
