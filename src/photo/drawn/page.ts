/** A cinch on the horse's photo, cropped around the girth, with words below. */
import type { Advice } from '../../advice/advice.ts';
import type { PhotoReading } from '../read/reading.ts';
import { facesText } from '../../words/about-photo.ts';
import { phraseText, quantityText, roughLength, spreadNumber, type Units } from '../../units/text.ts';
import { whoseText } from '../../words/about-order.ts';
import { dist, listed } from '../../units/phrase.ts';
import { noticesOf, titleText } from '../../draw/frame.ts';
import { legendShapes, type Entry } from '../../draw/legend.ts';
import { linesAt, shortened, textLines } from '../../draw/letters.ts';
import { hands, leading, type HandName, type StrokeName } from '../../draw/look.ts';
import { markShapes } from '../../draw/panel-words.ts';
import type { Box } from '../pixels/raster.ts';
import { cinchOnPhoto, haloed, otherOnPhoto, tagOnPhoto, type OnPhoto } from './layers.ts';
import { partOf, placeOnPhoto } from './place.ts';
import { box, segment, type Layer, type Point, type Scene, type Shape } from '../../draw/scene.ts';
import type { Shown } from '../../draw/shown.ts';

/** Points; readable on a phone. */
const WIDTH = 420;
const INSET = 12;

export interface PhotoPicture {
  readonly advice: Advice;
  readonly reading: PhotoReading;
  /** The first in full, the others as edges. */
  readonly shown: readonly Shown[];
  readonly units: Units;
}

export interface PhotoScene {
  readonly scene: Scene;
  /** The crop; its height is in points. */
  readonly part: Box;
  readonly photoHeight: number;
}

/** Without the photo itself. */
export function photoScene({ advice, reading, shown, units }: PhotoPicture): PhotoScene {
  const { facts } = advice;
  const part = partOf(reading);
  const photoHeight = (WIDTH * part.height) / part.width;
  const place = placeOnPhoto(reading, facts, { part, width: WIDTH });
  const { facing } = reading.stand;
  const on = { facts, place, units, facing, size: [WIDTH, photoHeight] as const };
  const [first, ...rest] = shown;
  const others = rest.flatMap(({ candidate }, i): Layer[] =>
    candidate === undefined ? [] : [otherOnPhoto(candidate, on, `other-${String(i + 2)}`)],
  );
  const words = wordsUnder({ advice, reading, shown, units }, photoHeight + 8);
  const height = words.bottom + 8;
  const strip = box([0, photoHeight], [WIDTH, height], { fill: 'paper' });
  return {
    part,
    photoHeight,
    scene: {
      width: WIDTH,
      height,
      margin: 0,
      title: titleText(facts.order),
      about: `Drawn on the photo of the horse: ${shown.map(({ head, lines }) => [head, ...lines].join('. ')).join('; ')}.`,
      scale: 0,
      layers: [
        { name: 'strip', shapes: [strip] },
        ...others,
        ...(first?.candidate === undefined ? [] : cinchOnPhoto(first.candidate, on)),
        // Again without white, so that edges close together show.
        ...others.map(({ name, shapes }) => ({
          name,
          shapes: shapes.filter((shape) => shape.kind === 'line' && shape.stroke === 'other'),
        })),
        ...tagLayers(shown, on),
        ...(first?.mark === undefined
          ? []
          : [{ name: 'mark', shapes: markShapes(first.mark, [INSET, INSET]) }]),
        { name: 'words', shapes: words.shapes },
      ],
    },
  };
}

function tagLayers(shown: readonly Shown[], on: OnPhoto): Layer[] {
  const laid = shown.flatMap(({ candidate, tag }) => (candidate === undefined ? [] : [{ candidate, tag }]));
  return laid.length < 2 ? [] : laid.map((each, i) => tagOnPhoto(each, on, i));
}

interface Words {
  readonly shapes: readonly Shape[];
  readonly bottom: number;
}

function wordsUnder({ advice, reading, shown, units }: PhotoPicture, top: number): Words {
  const width = WIDTH - 2 * INSET;
  const shapes: Shape[] = [];
  let y = top;
  const write = (text: string, hand: HandName, most = 4): void => {
    const lines = textLines(text, hand, { width, most });
    shapes.push(...linesAt(lines, hand, [INSET, y]));
    y += lines.length * hands[hand].size * leading;
  };
  const shop = shortened(advice.facts.shop.name, 'strong', width * 0.45);
  const title = shortened(titleText(advice.facts.order), 'heading', width * 0.5);
  shapes.push(
    { kind: 'label', at: [INSET, y + 10], text: title, hand: 'heading' },
    { kind: 'label', at: [WIDTH - INSET, y + 10], text: shop, hand: 'strong', anchor: 'end' },
  );
  y += 15;
  for (const notice of noticesOf(advice, units)) write(notice, 'strong', 3);
  for (const { head, mark, lines } of shown) {
    write([mark, head].filter((part) => part !== undefined).join(': '), 'strong', 2);
    write(`${lines.join('. ')}.`, 'text', 5);
    y += 2;
  }
  for (const remark of advice.remarks) write(phraseText(remark, units), 'strong', 5);
  const entries = legend({ advice, reading, shown, units });
  const half = Math.ceil(entries.length / 2);
  const columns = [entries.slice(0, half), entries.slice(half)].map((part, i) =>
    legendShapes(part, [INSET + (i * (width + 10)) / 2, y + 2], (width - 10) / 2),
  );
  shapes.push(...columns.flatMap((column) => column.shapes));
  y += Math.max(...columns.map((column) => column.height)) + 2;
  write(facesText(reading), 'text', 2);
  write(reachText(reading, units), 'fine', 6);
  write(advice.cautions.join(' '), 'fine', 6);
  return { shapes, bottom: y };
}

/** What such a picture does not show. */
function reachText({ seen }: PhotoReading, units: Units): string {
  const give = spreadNumber(seen.room.sd, units);
  return `Drawn on the photo from the marks clicked on it: a point behind the elbow may be off by ${give} ${units}. We take the barrel as an ellipse and the horse as standing still. A photo never gives length: tape ring to ring before you cut cord.`;
}

type Line = (at: Point, size: readonly [number, number]) => Shape;

/** Lines on gray, as on a photo. */
const sample =
  (...lines: readonly Line[]): Entry['swatch'] =>
  (at, size) => [
    box(at, [at[0] + size[0], at[1] + size[1]], { fill: 'behindSample' }),
    ...haloed(lines.map((line) => line(at, size))),
  ];

const level =
  (stroke: StrokeName, down = 0.5): Line =>
  ([x, y], [width, height]) =>
    segment([x + 1, y + height * down], [x + width - 1, y + height * down], stroke);

const upright =
  (along: number): Line =>
  ([x, y], [width, height]) =>
    segment([x + width * along, y + 1], [x + width * along, y + height - 1], 'clearance');

const buckle: Line = ([x, y], [width, height]) =>
  box([x + 6, y + 1.5], [x + width - 6, y + height - 1.5], { stroke: 'buckle' });

function legend({ advice: { facts }, shown, units }: PhotoPicture): Entry[] {
  const whence =
    facts.room.kind === 'measured'
      ? 'taped'
      : facts.room.kind === 'photo'
        ? facts.room.weighed
          ? 'photo and the usual hand together'
          : 'by photo alone'
        : 'the usual hand';
  return [
    { swatch: sample(level('edge', 0.18), level('edge', 0.82)), text: 'edges of the cinch and of its strap' },
    { swatch: sample(buckle), text: 'buckle' },
    {
      swatch: sample(level('clearance'), upright(0.16), upright(0.84)),
      text: 'nearest place to the elbow, with its give or take',
    },
    {
      swatch: sample(level('elbow')),
      text: `back of the elbow, ${roughLength(facts.room.value, units)} ahead of the groove (${whence})`,
    },
    {
      swatch: sample(level('least')),
      text: `least it needs, ${quantityText(dist(facts.floor), units)}${whoseText(facts, 'floor-clearance')}`,
    },
    ...(shown.length < 2
      ? []
      : [
          {
            swatch: sample(level('other')),
            text: `edges of ${listed(shown.slice(1).map(({ tag }) => (tag.startsWith('No.') ? tag : `the one ${tag}`)))}`,
          },
        ]),
  ];
}
