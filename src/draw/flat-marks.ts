/** Marks around a cinch laid flat: distances, widths, bar letters, lengths. */
import { formatLength } from '../units/print.ts';
import type { Units } from '../units/text.ts';
import { halfLength, halfWidth, type FlatCinch } from './flat.ts';
import { textWidth } from './letters.ts';
import { arrow, type HandName } from './look.ts';
import { segment, type Layer, type Place, type Point, type Shape } from './scene.ts';

export interface Marking {
  readonly place: Place;
  readonly units: Units;
}

/** Points. */
export const above = 40;
export const below = 64;

/** A is next to the buckle. */
export const letterOf = (index: number): string => String.fromCharCode(65 + index);

/** All marks of one cinch. */
export function flatMarks(cinch: FlatCinch, marking: Marking): Layer[] {
  return [
    { name: 'middle', shapes: middleShapes(cinch, marking) },
    { name: 'stations', shapes: stationShapes(cinch, marking) },
    { name: 'letters', shapes: letterShapes(cinch, marking) },
    { name: 'length', shapes: lengthShapes(cinch, marking) },
  ];
}

function middleShapes(cinch: FlatCinch, { place }: Marking): Shape[] {
  const half = halfWidth(cinch);
  const [x, top] = place([0, -half]);
  const [, bottom] = place([0, half]);
  return [segment([x, top - 12], [x, bottom + 8], 'middle')];
}

/** Below the left half: distance from the buckle, and width. */
function stationShapes(cinch: FlatCinch, { place, units }: Marking): Shape[] {
  const { profile, flat } = cinch;
  const half = halfWidth(cinch);
  const [, under] = place([0, half]);
  const text = (inches: number): string => formatLength(inches, units).replace(/ (?:in|cm)$/, '');
  const ticks = profile.flatMap(({ at, width }, i): Shape[] => {
    const [x] = place([at - flat.half, 0]);
    const [, edge] = place([0, width / 2]);
    // Left out where its number would run into the middle's.
    const next = profile[i + 1]?.at;
    if (next !== undefined && (next - at < NEAR || place([next - at, 0])[0] - place([0, 0])[0] < CROWDED))
      return [];
    const label = (y: number, value: string, hand: HandName): Shape => ({
      kind: 'label',
      at: [x, y],
      text: value,
      hand,
      anchor: 'middle',
    });
    return [
      segment([x, edge], [x, under + 8], 'leader'),
      label(under + 18, at === 0 ? '0' : text(at), 'text'),
      label(under + 30, text(width), 'strong'),
    ];
  });
  // On the middle mark's free side.
  const [middle] = place([0, 0]);
  const rows = [`from the buckle, ${units}`, `width there, ${units}`].map((text, i): Shape => ({
    kind: 'label',
    at: [middle + CROWDED, under + 18 + 12 * i],
    text,
    hand: 'fine',
  }));
  return [...ticks, ...rows];
}

/** Inches between marks. */
const NEAR = 1;
/** Points between numbers. */
const CROWDED = 24;

function letterShapes(cinch: FlatCinch, { place }: Marking): Shape[] {
  const { bars, flat } = cinch;
  const half = halfWidth(cinch);
  const [, top] = place([0, -half]);
  return bars.flatMap(({ kind, from, length, width }, i) => {
    const middle = kind === 'centre' ? [0] : [-1, 1].map((side) => side * (flat.half - from - length / 2));
    return middle.flatMap((x): Shape[] => {
      const [at, edge] = place([x, -width / 2]);
      return [
        segment([at, edge], [at, top - 6], 'leader'),
        {
          kind: 'label',
          at: [at + (kind === 'centre' ? 7 : 0), top - 9],
          text: letterOf(i),
          hand: 'strong',
          anchor: 'middle',
        },
      ];
    });
  });
}

function lengthShapes(cinch: FlatCinch, { place, units }: Marking): Shape[] {
  const { flat, candidate } = cinch;
  const [, top] = place([0, -halfWidth(cinch)]);
  const [, under] = place([0, halfWidth(cinch)]);
  const [left] = place([-halfLength(cinch), 0]);
  const [right] = place([halfLength(cinch), 0]);
  const [middle] = place([0, 0]);
  const [low] = place([flat.half, 0]);
  return [
    ...measure(
      [left, top - 26],
      [right, top - 26],
      `${formatLength(candidate.length, units)} finished, outside to outside of the hardware`,
    ),
    ...measure(
      [middle, under + 44],
      [low, under + 44],
      `${formatLength(flat.half, units)} from the middle to the buckle`,
    ),
    segment([left, top - 30], [left, top], 'leader'),
    segment([right, top - 30], [right, top], 'leader'),
    segment([low, under + 2], [low, under + 48], 'leader'),
    segment([middle, under + 34], [middle, under + 48], 'leader'),
  ];
}

function measure(from: Point, to: Point, text: string): Shape[] {
  const middle = (from[0] + to[0]) / 2;
  const half = textWidth(text, 'strong') / 2 + 4;
  const fits = 2 * half + 4 * arrow.length < to[0] - from[0];
  const y = from[1];
  const head = ([x]: Point, side: number): Shape => ({
    kind: 'area',
    points: [
      [x, y],
      [x + side * arrow.length, y - arrow.half],
      [x + side * arrow.length, y + arrow.half],
    ],
    fill: 'ink',
  });
  return [
    ...(fits
      ? [segment(from, [middle - half, y], 'measure'), segment([middle + half, y], to, 'measure')]
      : [segment(from, to, 'measure')]),
    head(from, 1),
    head(to, -1),
    { kind: 'label', at: [middle, fits ? y + 3 : y + 13], text, hand: 'strong', anchor: 'middle' },
  ];
}
