/** A template: the cinch at true size, to lay the work on. */
import type { Advice } from '../advice/advice.ts';
import type { Candidate } from '../cinch/candidate.ts';
import { capital, type Units } from '../units/text.ts';
import { specName } from '../words/words.ts';
import { formatLength } from '../units/print.ts';
import { placesTexts } from './flat-page.ts';
import { flatCinch, flatLayers, halfLength, halfWidth } from './flat.ts';
import { above, below, flatMarks } from './flat-marks.ts';
import { notCutText } from '../words/counter-words.ts';
import { POINTS, titleText } from './frame.ts';
import { linesAt, textLines } from './letters.ts';
import { hands, leading } from './look.ts';
import { box, placed, segment, type Layer, type Place, type Point, type Scene, type Shape } from './scene.ts';

/** On every sheet. */
export const printWords = 'Print at 100%, never "fit to page", then measure the bars before you trust it.';

export interface TemplateOf {
  readonly advice: Advice;
  readonly candidate: Candidate;
  readonly mark: string | undefined;
  readonly units: Units;
}

export interface Template {
  /** At true size. */
  readonly drawing: Scene;
  readonly notice: string | undefined;
  readonly title: string;
  readonly lines: readonly string[];
}

/** Points. */
const SIDE = 12;

/** Of one cinch. */
export function templateOf({ advice, candidate, mark, units }: TemplateOf): Template {
  const { order, lengthNeed } = advice.facts;
  const cinch = flatCinch(candidate, order.colors?.accent ?? []);
  const half: Point = [halfLength(cinch) * POINTS, halfWidth(cinch) * POINTS];
  const width = 2 * (half[0] + SIDE);
  const height = above + 2 * half[1] + below;
  const place: Place = ([x, y]) => [width / 2 + x * POINTS, above + half[1] + y * POINTS];
  const what = `${specName(candidate)}, ${formatLength(candidate.length, units)} long`;
  const notice = [
    ...(mark === undefined ? [] : [`${mark}: see check.`]),
    ...(lengthNeed.measured ? [] : [notCutText(advice)]),
  ].join(' ');
  return {
    title: `Template, ${titleText(order)}`,
    notice: notice === '' ? undefined : notice,
    lines: [`${capital(what)}.`, ...placesTexts(cinch, units)],
    drawing: {
      width,
      height,
      margin: 0,
      title: `Template, ${titleText(order)}`,
      about: `The cinch laid flat at its true size: ${what}.`,
      scale: 1,
      layers: [
        ...flatLayers(cinch).map(({ name, shapes }) => ({
          name,
          shapes: placed(shapes.map(unfilled), place, POINTS),
        })),
        ...flatMarks(cinch, { place, units }),
      ],
    },
  };
}

/** Saves ink; bars hide the strands under them. */
function unfilled(shape: Shape): Shape {
  if (shape.kind !== 'area') return shape;
  const { fill, ...rest } = shape;
  return fill === 'woven' ? { ...rest, fill: 'paper' } : fill === 'cord' ? rest : shape;
}

/** 100 mm and 4 in, to measure. */
export function checkBars([x, y]: Point): Shape[] {
  const bar = (down: number, points: number, text: string): Shape[] => [
    segment([x, y + down], [x + points, y + down], 'buckle'),
    ...[0, points].map((at) => segment([x + at, y + down - 4], [x + at, y + down + 4], 'measure')),
    { kind: 'label', at: [x + points + 6, y + down + 3], text, hand: 'strong' },
  ];
  return [...bar(5, (100 / 25.4) * POINTS, '100 mm'), ...bar(18, 4 * POINTS, '4 in')];
}

/** Points. */
export const checkBarsHeight = 26;

const LINE = hands.text.size * leading;

/** On one sheet as large as needed. */
export function templateScene(template: Template): Scene {
  const { drawing, notice, title, lines } = template;
  const words = [...(notice === undefined ? [] : [notice]), printWords, ...lines].flatMap((text) =>
    textLines(text, 'text', { width: drawing.width - 2 * SIDE }),
  );
  const head = 18 + words.length * LINE + checkBarsHeight + 12;
  const down = (layers: readonly Layer[]): Layer[] =>
    layers.map(({ name, shapes }) => ({ name, shapes: placed(shapes, ([x, y]) => [x, y + head], 1) }));
  const height = head + drawing.height;
  return {
    ...drawing,
    height,
    layers: [
      { name: 'paper', shapes: [box([0, 0], [drawing.width, height], { fill: 'paper' })] },
      {
        name: 'head',
        shapes: [
          ...linesAt(textLines(title, 'heading', { width: drawing.width - 2 * SIDE, most: 1 }), 'heading', [
            SIDE,
            2,
          ]),
          ...linesAt(words, 'text', [SIDE, 18]),
        ],
      },
      { name: 'check', shapes: checkBars([SIDE, 22 + words.length * LINE]) },
      ...down(drawing.layers),
    ],
  };
}
