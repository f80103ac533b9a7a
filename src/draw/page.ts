/** The whole picture: head, panels, legend, scale, caution. */
import type { Advice } from '../advice/advice.ts';
import type { Units } from '../units/text.ts';
import { FOOT_LINE, footLines, footShapes, headOf, paper, scaleBar, titleText, whitePaper } from './frame.ts';
import { legendShapes, sideLegend } from './legend.ts';
import { linesAt, textLines } from './letters.ts';
import { panelLayers, settingFor, type Size } from './panel.ts';
import { wordShapes, wordsHeight } from './panel-words.ts';
import type { Layer, Scene } from './scene.ts';
import type { Shown } from './shown.ts';

const GAP = 12;
/** Points. */
const STRIP = 50;
const QUARTER = paper.width / 4;

export interface PictureOf {
  readonly advice: Advice;
  readonly shown: readonly Shown[];
  readonly units: Units;
}

/** `shown` is best first. */
export function sideScene({ advice, shown, units }: PictureOf): Scene {
  const { facts } = advice;
  const head = headOf(advice, units);
  const foot = footLines(advice, units);
  const footTop = paper.height - foot.length * FOOT_LINE;
  const column = (paper.width + GAP) / Math.max(1, shown.length);
  const width = column - GAP;
  const top = head.bottom + Math.max(...shown.map((each) => wordsHeight(each, width)));
  const legend = sideLegend(facts, units);
  const [height, legendTop] = [footTop - 8 - top - STRIP, footTop - STRIP];
  const set = settingFor(shown, { facts, units }, { width, height });
  return {
    ...paper,
    title: titleText(facts.order),
    about: aboutText(shown, set.scale),
    scale: set.scale,
    layers: [
      { name: 'paper', shapes: [whitePaper()] },
      { name: 'head', shapes: head.shapes },
      ...shown.map((each, i): Layer => ({
        name: `shown-${String(i + 1)}`,
        shapes: [],
        layers: [
          ...panelLayers(each, set, [i * column, top]),
          { name: 'words', shapes: wordShapes(each, [i * column, head.bottom], width) },
        ],
      })),
      {
        name: 'legend',
        shapes: [
          ...[0, 1, 2].flatMap(
            (i) =>
              legendShapes(legend.slice(2 * i, 2 * i + 2), [i * QUARTER, legendTop], QUARTER - GAP).shapes,
          ),
          ...scaleBar([3 * QUARTER, legendTop + 2], set.scale, units),
          ...linesAt([note], 'quiet', [0, footTop - 18]),
        ],
      },
      { name: 'foot', shapes: footShapes(foot, footTop) },
    ],
  };
}

const aboutText = (shown: readonly Shown[], scale: number): string =>
  `The cinch on the side of a horse, 1 : ${String(scale)}. ${shown
    .map(({ head, lines }) => `${head}. ${lines.join('. ')}.`)
    .join(' ')}`;

const note =
  'The skin is laid flat so every distance is true; the horse looks taller than it is. It stands still; the outline is a drawing, not a photo.';

/** Read at full size on a phone. */
const PHONE: Size = { width: 262, height: 330 };

/** A picture a cinch, then the legend. */
export function phoneScenes({ advice: { facts }, shown, units }: PictureOf): readonly Scene[] {
  const set = settingFor(shown, { facts, units }, PHONE);
  const legend = legendShapes(sideLegend(facts, units), [0, 0], PHONE.width);
  const words = textLines(note, 'quiet', { width: PHONE.width });
  const sceneOf = (title: string, height: number, layers: readonly Layer[]): Scene => ({
    width: PHONE.width,
    height,
    margin: 1,
    title,
    about: aboutText([], set.scale),
    scale: set.scale,
    layers,
  });
  return [
    ...shown.map((each) => sceneOf(each.head, PHONE.height, panelLayers(each, set, [0, 0]))),
    sceneOf('What the lines are', legend.height + 34 + words.length * 11, [
      {
        name: 'legend',
        shapes: [
          ...legend.shapes,
          ...scaleBar([0, legend.height + 4], set.scale, units),
          ...linesAt(words, 'quiet', [0, legend.height + 30]),
        ],
      },
    ]),
  ];
}
