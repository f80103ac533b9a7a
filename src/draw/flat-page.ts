/** A cinch laid flat, to scale, for the bench. */
import { bench } from '../numbers/bench-numbers.ts';
import { formatLength } from '../units/print.ts';
import type { Units } from '../units/text.ts';
import { barNames } from '../words/words.ts';
import {
  FOOT_LINE,
  footLines,
  footShapes,
  headOf,
  paper,
  POINTS,
  scaleBar,
  scaleFor,
  titleText,
  whitePaper,
} from './frame.ts';
import { flatCinch, flatLayers, halfLength, halfWidth, type FlatCinch } from './flat.ts';
import { above, below, flatMarks, letterOf } from './flat-marks.ts';
import { linesAt, textLines } from './letters.ts';
import { hands, leading } from './look.ts';
import type { PictureOf } from './page.ts';
import { wordShapes, wordsHeight } from './panel-words.ts';
import { placed, type Layer, type Place, type Scene } from './scene.ts';
import type { Shown } from './shown.ts';

const LINE = hands.text.size * leading;
const BAR = 28;

export interface FlatPictureOf extends Omit<PictureOf, 'shown'> {
  readonly shown: Shown;
}

/** One cinch. */
export function flatScene({ advice, shown, units }: FlatPictureOf): Scene {
  const { order } = advice.facts;
  const head = headOf(advice, units);
  const foot = footLines(advice, units);
  const footTop = paper.height - foot.length * FOOT_LINE;
  const { candidate } = shown;
  const cinch = candidate === undefined ? undefined : flatCinch(candidate, order.colors?.accent ?? []);
  const words = wordsHeight(shown, paper.width);
  const lines = cinch === undefined ? [] : linesOf(cinch, units);
  const room = footTop - BAR - head.bottom - words - above - below - lines.length * LINE;
  const free = { width: paper.width - 4, height: Math.max(60, room) };
  const scale = cinch === undefined ? 1 : scaleFor(2 * halfWidth(cinch), 2 * halfLength(cinch), free);
  const top = head.bottom + words + above;
  return {
    ...paper,
    title: titleText(order),
    about: `The cinch laid flat, 1 : ${String(scale)}. ${shown.head}. ${[...shown.lines, ...lines].join('. ')}`,
    scale,
    layers: [
      { name: 'paper', shapes: [whitePaper()] },
      { name: 'head', shapes: head.shapes },
      { name: 'words', shapes: wordShapes(shown, [0, head.bottom], paper.width) },
      ...(cinch === undefined ? [] : cinchOn(cinch, { top, factor: POINTS / scale, units, lines })),
      { name: 'legend', shapes: cinch === undefined ? [] : scaleBar([0, footTop - BAR], scale, units) },
      { name: 'foot', shapes: footShapes(foot, footTop) },
    ],
  };
}

const linesOf = (cinch: FlatCinch, units: Units): string[] =>
  placesTexts(cinch, units).flatMap((text) => textLines(text, 'text', { width: paper.width, most: 2 }));

interface CinchOn {
  readonly top: number;
  readonly factor: number;
  readonly units: Units;
  readonly lines: readonly string[];
}

function cinchOn(cinch: FlatCinch, { top, factor, units, lines }: CinchOn): Layer[] {
  const half = halfWidth(cinch) * factor;
  const place: Place = ([x, y]) => [paper.width / 2 + x * factor, top + half + y * factor];
  return [
    ...flatLayers(cinch).map(({ name, shapes }) => ({ name, shapes: placed(shapes, place, factor) })),
    ...flatMarks(cinch, { place, units }),
    { name: 'places', shapes: linesAt(lines, 'text', [0, top + 2 * half + below]) },
  ];
}

/** Bars, flare, buckles, tolerances. */
export function placesTexts({ bars, flat, candidate }: FlatCinch, units: Units): string[] {
  const size = (inches: number): string => formatLength(inches, units);
  const places = bars.map(({ kind, from, length, width, accent }, i) => {
    const where =
      kind === 'centre'
        ? `${size(length)} over the middle`
        : `${size(from)} to ${size(from + length)} from the buckle`;
    return `${letterOf(i)}  ${barNames[kind]}: ${where}, ${size(width)} wide, ${accent === undefined ? 'no accent color chosen' : `accent ${accent}`}.`;
  });
  const { flare, half } = flat;
  const { buckle } = candidate;
  const near = [
    `length ${size(bench('length-tolerance'))}`,
    `width ${size(bench('width-tolerance'))}`,
    `bars ${size(bench('bar-tolerance'))}`,
  ];
  return [
    ...places,
    ...(flare === undefined
      ? []
      : [
          `Flare: starts ${size(flare.start)} from the buckle, whole at ${size(Math.min(flare.whole, half))}.`,
        ]),
    `Both buckles: ${buckle.id}, bar ${size(buckle.barWidth)}. One half mirrors the other. Give or take: ${near.join(', ')}.`,
  ];
}
