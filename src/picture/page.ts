/** A whole picture of the side of the horse: head, panels, legend, scale, what is assumed and how sure, and the caution. */
import type { Advice } from '../advice/advice.ts';
import type { Units } from '../report/text.ts';
import {
  FOOT_LINE,
  footLines,
  footShapes,
  headShapes,
  paper,
  POINTS,
  scaleBar,
  scaleFor,
  titleText,
  whitePaper,
} from './frame.ts';
import { legendShapes, sideLegend } from './legend.ts';
import { linesAt, textLines } from './letters.ts';
import { extentOf, GAP, panelLayers, widened, wordsHeight } from './panel.ts';
import type { Layer, Scene, Shape } from './scene.ts';
import type { Shown } from './shown.ts';

const COLUMN = 152;

export interface PictureOf {
  readonly advice: Advice;
  readonly shown: readonly Shown[];
  readonly units: Units;
}

/** Where things stand on the paper, points. */
interface Plan {
  readonly panelTop: number;
  readonly footTop: number;
  readonly panelWidth: number;
}

/** The picture of what is shown, best first; at least one. Pure; total for what an advice holds. */
export function sideScene({ advice, shown, units }: PictureOf): Scene {
  const { facts } = advice;
  const foot = footLines(advice, units);
  const plan: Plan = {
    panelTop: 64,
    footTop: paper.height - foot.length * FOOT_LINE,
    panelWidth: (paper.width - COLUMN) / Math.max(1, shown.length),
  };
  const words = Math.max(...shown.map((each) => wordsHeight(each, { width: plan.panelWidth })));
  const extent = extentOf(shown, facts);
  const tall = plan.footTop - 6 - plan.panelTop - words;
  const scale = scaleFor(extent.high - extent.low, extent.forward - extent.back, {
    height: tall,
    width: plan.panelWidth - GAP,
  });
  const set = {
    facts,
    units,
    factor: POINTS / scale,
    extent: widened(extent, ((plan.panelWidth - GAP) * scale) / POINTS),
  };
  const height = words + (extent.high - extent.low) * set.factor;
  return {
    ...paper,
    title: titleText(facts.order),
    about: aboutText(shown, scale),
    scale,
    layers: [
      { name: 'paper', shapes: [whitePaper()] },
      { name: 'head', shapes: headShapes(advice, units) },
      ...shown.map((each, i): Layer => {
        const spot = { x: i * plan.panelWidth, y: plan.panelTop, width: plan.panelWidth, height };
        const layers = panelLayers(each, set, { spot, words });
        return { name: `shown-${String(i + 1)}`, shapes: [], layers };
      }),
      { name: 'legend', shapes: columnShapes(advice, scale, units) },
      { name: 'foot', shapes: footShapes(foot, plan.footTop) },
    ],
  };
}

const aboutText = (shown: readonly Shown[], scale: number): string =>
  `The side of the horse behind the elbow, 1 : ${String(scale)}. ${shown
    .map(({ head, lines }) => `${head}. ${lines.join('. ')}.`)
    .join(' ')}`;

/** Legend, scale and what kind of picture it is. */
function columnShapes({ facts }: Advice, scale: number, units: Units): Shape[] {
  const x = paper.width - COLUMN;
  const width = COLUMN;
  const legend = legendShapes(sideLegend(facts, units), [x, 80], width);
  let y = 80 + legend.height + 6;
  const bar = scaleBar([x, y + 8], scale, units);
  y += 40;
  const note = textLines(
    'The side of the barrel as if its skin were laid flat: up is along the skin, forward is to the left, and distances are true. The horse stands still; no stride is in it.',
    'quiet',
    { width },
  );
  return [
    { kind: 'label', at: [x, 74], text: 'What the lines are', hand: 'rust' },
    ...legend.shapes,
    ...bar,
    ...linesAt(note, 'quiet', [x, y]),
  ];
}
