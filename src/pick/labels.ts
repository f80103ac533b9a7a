/** Where the names of marks stand beside them: within the window, and off each other where there is room. */

interface Spot {
  readonly x: number;
  readonly y: number;
}

export interface Label {
  /** From the mark to where the text starts or ends, on its base line. */
  readonly dx: number;
  readonly dy: number;
  readonly anchor: 'start' | 'end';
}

/** Height of a line of letters, and width of one, roughly: units of the screen. */
const LINE = 16;
const LETTER = 7.4;

/** Beside the mark, above or below, then further off. */
const tries: readonly Label[] = [-10, 20, -26, 36, -42, 52].flatMap((dy): Label[] => [
  { dx: 12, dy, anchor: 'start' },
  { dx: -12, dy, anchor: 'end' },
]);

interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** A place for the name of each mark, in turn; each gives way to those before it. */
export function placeLabels(
  marks: readonly { readonly at: Spot; readonly name: string }[],
  window: { readonly width: number; readonly height: number },
): Label[] {
  const taken: Box[] = [];
  return marks.map(({ at, name }) => {
    const inside = tries.filter((label) => isInside(boxOf(at, name, label), window));
    const free = inside.find((label) => !taken.some((other) => overlap(other, boxOf(at, name, label))));
    const label = free ?? inside[0] ?? { dx: 12, dy: -10, anchor: 'start' };
    taken.push(boxOf(at, name, label));
    return label;
  });
}

function boxOf(at: Spot, name: string, { dx, dy, anchor }: Label): Box {
  const start = at.x + dx - (anchor === 'end' ? LETTER * name.length : 0);
  return {
    left: start,
    right: start + LETTER * name.length,
    top: at.y + dy - 0.75 * LINE,
    bottom: at.y + dy + 0.25 * LINE,
  };
}

const isInside = ({ left, right, top, bottom }: Box, window: { width: number; height: number }): boolean =>
  left >= 0 && right <= window.width && top >= 0 && bottom <= window.height;

const overlap = (a: Box, b: Box): boolean =>
  a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
