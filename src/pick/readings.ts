/** What the marks come to while they are set, and what looks wrong with them, in plain words. */
import { isPoint, stepsFor } from './landmarks.ts';
import { lengthText, type Photo } from './block.ts';
import { parseLength } from '../units/length.ts';
import type { Picked, Pixel, Points } from './state.ts';

export interface Readings {
  readonly rows: readonly { readonly label: string; readonly value: string }[];
  readonly doubts: readonly string[];
}

/** Readings of what is there so far; what is missing gives no row. */
export function readingsOf(now: Picked, { width }: Photo): Readings {
  if (width === 0) return { rows: [], doubts: [] };
  const { from, to, spine, underline } = now.points;
  const rows: { label: string; value: string }[] = [];
  const inches = read(lengthText(now.fields.length, now.fields.lengthUnit));
  if (from !== undefined && to !== undefined && inches !== undefined) {
    const scale = Math.hypot(from[0] - to[0], from[1] - to[1]) / inches;
    rows.push({ label: 'Scale', value: `${scale.toFixed(1)} pixels an inch` });
    if (spine !== undefined && underline !== undefined)
      rows.push({
        label: 'Depth of the barrel',
        value: `${((underline[1] - spine[1]) / scale).toFixed(1)} in`,
      });
  }
  return { rows, doubts: together(now.points, now) };
}

const read = (text: string | undefined): number | undefined => {
  const length = text === undefined ? undefined : parseLength(text);
  return length?.ok === true ? length.inches : undefined;
};

function together(points: Points, now: Picked): string[] {
  const named = stepsFor(now.kind).flatMap(({ id, name }): { name: string; at: Pixel }[] => {
    const at = isPoint(id) ? points[id] : undefined;
    return at === undefined ? [] : [{ name, at }];
  });
  return named.flatMap(({ name, at }, i) =>
    named
      .slice(i + 1)
      .filter((other) => Math.hypot(other.at[0] - at[0], other.at[1] - at[1]) < 2)
      .map((other) => `The marks of ${name} and ${other.name} are in the same place.`),
  );
}
