/** A cinch on the side of a horse, to scale. */
import type { Facts } from '../horse/facts.ts';
import type { Units } from '../units/text.ts';
import { nearest } from '../words/counter-words.ts';
import { clearanceLayer } from './clearance.ts';
import { linesWithin } from './clip.ts';
import { elbowLayers, giveLayer, type Extent } from './elbow.ts';
import { POINTS, scaleFor } from './frame.ts';
import { hatched } from './hatch.ts';
import { horseOf, type Horse } from './horse.ts';
import { box, placed, type Layer, type Place, type Point, type Shape } from './scene.ts';
import type { Shown } from './shown.ts';
import { cinchLayers } from './side.ts';

/** Points. */
export interface Size {
  readonly width: number;
  readonly height: number;
}

/** The same in all panels. */
export interface Setting {
  readonly facts: Facts;
  readonly units: Units;
  readonly size: Size;
  readonly horse: Horse;
  readonly scale: number;
  readonly extent: Extent;
}

/** The largest scale that shows forearm, withers and every cinch. */
export function settingFor(
  shown: readonly Shown[],
  { facts, units }: Pick<Setting, 'facts' | 'units'>,
  size: Size,
): Setting {
  const horse = horseOf(facts);
  const least = extentOf(shown, facts);
  const scale = scaleFor(least.high - least.low, least.forward - least.back, size);
  return { facts, units, size, horse, scale, extent: filled(least, horse, [size, scale]) };
}

/** Inches that must show. */
function extentOf(shown: readonly Shown[], { ring, room, centreLine, girth, k }: Facts): Extent {
  const sides = shown.flatMap(({ candidate }) => {
    if (candidate === undefined) return [];
    const { shape, buckle } = candidate;
    const half = Math.max(shape.full, shape.pinched, buckle.frameWidth) / 2;
    const top = centreLine.slope * (shape.top + buckle.frameHeight);
    return [-half, half, top - half, top + half];
  });
  return {
    back: Math.min(ring.x - 2, -5 * k, ...sides) - 1.2,
    forward: Math.max(room.value + room.sd + 9 * k, ring.x + 2, ...sides),
    low: -5 * k,
    high: girth.value / 2 + 4 * k,
  };
}

/** Spare room goes to the chest first, then more behind than ahead. */
function filled(least: Extent, { chest: reach }: Horse, [{ width, height }, scale]: [Size, number]): Extent {
  const spare = (width * scale) / POINTS - (least.forward - least.back);
  const chest = Math.min(spare, Math.max(0, reach + 1.5 - least.forward));
  const tall = (height * scale) / POINTS - (least.high - least.low);
  return {
    forward: least.forward + chest + 0.25 * (spare - chest),
    back: least.back - 0.75 * (spare - chest),
    low: least.low - 0.5 * tall,
    high: least.high + 0.5 * tall,
  };
}

/** The near side: forward is left. */
export function panelLayers(
  { candidate, mark, clearance }: Shown,
  set: Setting,
  [left, top]: Point,
): Layer[] {
  const { facts, scale, extent, units, size, horse } = set;
  const factor = POINTS / scale;
  const place: Place = ([x, s]) => [left + (extent.forward - x) * factor, top + (extent.high - s) * factor];
  const corner: Point = [left + size.width, top + size.height];
  const inside = (shapes: readonly Shape[]): Shape[] =>
    linesWithin(shapes, { from: [left, top], to: corner });
  const on = (layers: readonly Layer[]): Layer[] =>
    layers.map(({ name, shapes }) => ({ name, shapes: placed(shapes, place, factor) }));
  const stroke = mark === undefined ? 'frame' : 'refused';
  return [
    { name: 'panel', shapes: [box([left, top], corner, { fill: 'paper', stroke })] },
    { name: 'limb', shapes: inside(hatched(horse.limb.map(place))) },
    {
      name: 'horse',
      shapes: inside(
        horse.lines.map((points): Shape => ({ kind: 'line', points: points.map(place), stroke: 'horse' })),
      ),
    },
    ...on([giveLayer(facts, extent)]),
    ...on(candidate === undefined ? [] : cinchLayers(candidate, facts)),
    ...on(elbowLayers(facts, extent)),
    ...(candidate === undefined
      ? []
      : [clearanceLayer(clearance ?? nearest(candidate), facts, { place, units, left })]),
  ];
}
