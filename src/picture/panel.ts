/** One panel of a picture: the words above, and under them the cinch on the side of the horse, to scale. */
import type { Facts } from '../facts/facts.ts';
import type { Units } from '../report/text.ts';
import { clearanceLayer } from './clearance.ts';
import { elbowLayers, giveLayer, limbOutline, type Extent } from './elbow.ts';
import { hatched } from './hatch.ts';
import { linesAt, textLines, textWidth } from './letters.ts';
import { hands, leading } from './look.ts';
import { box, placed, segment, type Layer, type Place, type Point, type Shape } from './scene.ts';
import type { Shown } from './shown.ts';
import { cinchLayers, highestOf } from './side.ts';

/** Where a panel stands on the paper, points. */
export interface Spot {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** What all panels of a picture share. */
export interface Setting {
  readonly facts: Facts;
  readonly units: Units;
  /** Points to an inch of horse. */
  readonly factor: number;
  readonly extent: Extent;
}

/** Inches of horse that must be seen around the cinches: a little on all sides, and the foreleg below. */
export function extentOf(shown: readonly Shown[], facts: Facts): Extent {
  const { ring, room, elbowLine, centreLine } = facts;
  const sides = shown.flatMap(({ candidate }) => {
    if (candidate === undefined) return [];
    const { shape, buckle } = candidate;
    const half = Math.max(shape.full, shape.pinched, buckle.frameWidth) / 2;
    const top = centreLine.slope * (shape.top + buckle.frameHeight);
    return [-half, half, top - half, top + half];
  });
  const chest = elbowLine[0] ?? room.value;
  return {
    back: Math.min(ring.x - 2, -2, ...sides) - 1.2,
    forward: Math.max(chest + room.sd + 0.8, ring.x + 2, ...sides.map((side) => side + 0.5)),
    low: -2.6,
    high: highestOf(facts) + 0.6,
  };
}

/** No more than this is added on a side: further off the unrolled side says nothing. */
const MOST_AROUND = 3.5;

/** The same with what room there is beside it, inches: more of the horse forward than behind. */
export function widened(extent: Extent, width: number): Extent {
  const spare = Math.max(0, width - (extent.forward - extent.back));
  return {
    ...extent,
    forward: extent.forward + Math.min(MOST_AROUND, spare * 0.65),
    back: extent.back - Math.min(MOST_AROUND, spare * 0.35),
  };
}

export const GAP = 14;
const HEAD = 15;

/** How wide the words above a panel may be. */
const wordWidth = (spot: { width: number }): number => spot.width - GAP;

const wordLines = ({ lines }: Shown, width: number): string[] =>
  lines.flatMap((line, i) => textLines(line, 'text', { width, most: i === 1 ? 6 : 3 }));

/** Room that the words take. */
export const wordsHeight = (shown: Shown, spot: { width: number }): number =>
  HEAD * textLines(shown.head, 'heading', { width: headWidth(shown, spot), most: 2 }).length +
  wordLines(shown, wordWidth(spot)).length * hands.text.size * leading +
  4;

const markWidth = ({ mark }: Shown): number => (mark === undefined ? 0 : textWidth(mark, 'loud') + 16);
const headWidth = (shown: Shown, spot: { width: number }): number => wordWidth(spot) - markWidth(shown);

/** All of a panel; the drawing starts `words` points under its top. */
export function panelLayers(
  shown: Shown,
  set: Setting,
  { spot, words }: { spot: Spot; words: number },
): Layer[] {
  const top = spot.y + words;
  const layers = sideLayers(shown, set, { ...spot, y: top, height: spot.height - words });
  return [...layers, { name: 'words', shapes: wordShapes(shown, spot) }];
}

/** The words above a panel. */
export function wordShapes(shown: Shown, spot: Spot): Shape[] {
  const { mark, head } = shown;
  const aside = markWidth(shown);
  const heads = textLines(head, 'heading', { width: headWidth(shown, spot), most: 2 });
  const at = (y: number): Point => [spot.x, spot.y + y];
  return [
    ...(mark === undefined ? [] : markShapes(mark, spot, aside - 6)),
    ...heads.map((text, i): Shape => ({
      kind: 'label',
      at: [spot.x + aside, spot.y + HEAD * i + 10],
      text,
      hand: 'heading',
    })),
    ...linesAt(wordLines(shown, wordWidth(spot)), 'text', at(HEAD * heads.length)),
  ];
}

const markShapes = (mark: string, { x, y }: Spot, width: number): Shape[] => [
  box([x, y - 1], [x + width, y + 13], { fill: 'ink' }),
  { kind: 'label', at: [x + width / 2, y + 10], text: mark, hand: 'loud', anchor: 'middle' },
];

/** The drawing itself: forward is to the left, as on the near side of a horse. */
function sideLayers({ candidate, mark }: Shown, set: Setting, spot: Spot): Layer[] {
  const { facts, factor, extent, units } = set;
  const spare = spot.width - GAP - (extent.forward - extent.back) * factor;
  const left = spot.x + Math.max(0, spare) / 2;
  const place: Place = ([x, s]) => [
    left + (extent.forward - x) * factor,
    spot.y + (extent.high - s) * factor,
  ];
  const on = (layers: readonly Layer[]): Layer[] =>
    layers.map(({ name, shapes }) => ({ name, shapes: placed(shapes, place, factor) }));
  const right = left + (extent.forward - extent.back) * factor;
  const bottom = spot.y + (extent.high - extent.low) * factor;
  return [
    {
      name: 'panel',
      shapes: [
        box([left, spot.y], [right, bottom], {
          fill: 'paper',
          stroke: mark === 'REFUSED' ? 'refused' : 'frame',
        }),
      ],
    },
    { name: 'horse', shapes: horseShapes(set, place) },
    { name: 'limb', shapes: hatched(limbOutline(facts, extent).map(place), 'limb') },
    ...on([giveLayer(facts, extent)]),
    ...on(candidate === undefined ? [] : cinchLayers(candidate, facts)),
    ...on(elbowLayers(facts, extent)),
    ...(candidate === undefined ? [] : [clearanceLayer(candidate, facts, { place, units, left })]),
    { name: 'stations', shapes: stationShapes(set, place) },
  ];
}

/** Ticks up the back edge, every so many inches of skin; the topmost has the unit. */
function stationShapes({ extent, units }: Setting, place: Place): Shape[] {
  const [step, unit] = units === 'in' ? [5, 1] : [10, 2.54];
  const count = Math.floor(((extent.high - 0.4) * unit) / step);
  return Array.from({ length: count }, (_, i) => {
    const [x, y] = place([extent.back, ((i + 1) * step) / unit]);
    const text = `${String((i + 1) * step)}${i + 1 === count ? ` ${units}` : ''}`;
    return [
      segment([x, y], [x - 4, y], 'measure'),
      { kind: 'label', at: [x - 6, y + 2.4], text, hand: 'fine', anchor: 'end' } as const,
    ];
  }).flat();
}

/** The chest midline, plain strokes where the foreleg goes on, and which way is forward. */
function horseShapes({ facts: { elbowLine, room, k }, extent }: Setting, place: Place): Shape[] {
  const chest = elbowLine[0] ?? room.value;
  const strokes = [chest + 0.2 * k, chest + 3.7 * k].filter((x) => x + 0.4 * k < extent.forward);
  const leg = strokes.map((x, i): Shape => {
    const lean = (i === 0 ? 0.35 : -0.3) * k;
    const points: Point[] = [
      [x - lean, 0],
      [x, extent.low * 0.4],
      [x + 0.15 * lean, extent.low],
    ];
    return { kind: 'line', points: points.map(place), stroke: 'horse' };
  });
  const [x, y] = place([Math.min(0.5, room.value - 4 * k), extent.low / 2]);
  const tip: Point = [x - 16, y];
  return [
    segment(place([extent.back, 0]), place([extent.forward, 0]), 'middle'),
    ...leg,
    segment(tip, [x, y], 'measure'),
    { kind: 'area', points: [tip, [tip[0] + 6, y - 2.2], [tip[0] + 6, y + 2.2]], fill: 'ink' },
    { kind: 'label', at: [x + 4, y + 2.6], text: 'front', hand: 'fine' },
  ];
}
