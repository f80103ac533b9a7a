/** A whole picture of the side of the horse: head, panels, legend, scale, what is assumed and how sure, and the caution. */
import type { Advice } from '../advice/advice.ts';
import { situation } from '../report/about-order.ts';
import { assumedTexts, measuredText } from '../report/about-rest.ts';
import { look } from '../report/look.ts';
import type { Units } from '../report/text.ts';
import { legendShapes, sideLegend } from './legend.ts';
import { shortened, textLines, textWidth } from './letters.ts';
import { hands, leading } from './look.ts';
import { extentOf, GAP, linesAt, panelLayers, widened, wordsHeight } from './panel.ts';
import { box, segment, type Layer, type Point, type Scene, type Shape } from './scene.ts';
import type { Shown } from './shown.ts';

/** With its margin ten and a half inches by seven and three quarters: fits on Letter and on A4, lying. */
export const paper = { width: 720, height: 522, margin: 18 } as const;

/** What must be said of every length that nobody measured. */
export const notMeasured =
  'Do not cut until measured: nobody has taped ring to ring, lengths are provisional.';

const POINTS = 72;
const COLUMN = 152;
const BAND = 10;

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
  const title = titleText(advice);
  return {
    ...paper,
    title,
    about: aboutText(shown, scale),
    scale,
    layers: [
      { name: 'paper', shapes: [paperShape()] },
      { name: 'head', shapes: headShapes(advice, title, units) },
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

/** The largest scale in whole and half steps at which a subject of that many inches fits in a field of that many points. */
export function scaleFor(tall: number, wide: number, field: { width: number; height: number }): number {
  const exact = Math.max((tall * POINTS) / field.height, (wide * POINTS) / field.width);
  return Math.max(1, Math.ceil(2 * exact - 1e-9) / 2);
}

/** White behind everything, the margin too: some viewers show what is bare in black. */
const paperShape = (): Shape =>
  box([-paper.margin, -paper.margin], [paper.width + paper.margin, paper.height + paper.margin], {
    fill: 'paper',
  });

const titleText = ({ facts: { order } }: Advice): string =>
  `Order ${order.order}${order.horse.name === undefined ? '' : `: ${order.horse.name}`}`;

const aboutText = (shown: readonly Shown[], scale: number): string =>
  `The side of the horse behind the elbow, 1 : ${String(scale)}. ${shown
    .map(({ head, lines }) => `${head}. ${lines.join('. ')}.`)
    .join(' ')}`;

/** The band of strands that all papers have at their head, the order, the shop, and what the pair are. */
function headShapes({ facts }: Advice, title: string, units: Units): Shape[] {
  const { shop } = facts;
  const right = shortened(shop.name, 'strong', paper.width * 0.3);
  const room = paper.width - textWidth(right, 'strong') - 20;
  const about = textLines(situation(facts, units), 'quiet', { width: paper.width, most: 1 });
  return [
    ...bandShapes(paper.width),
    { kind: 'label', at: [0, 33], text: shortened(title, 'title', room), hand: 'title' },
    { kind: 'label', at: [paper.width, 33], text: right, hand: 'strong', anchor: 'end' },
    ...linesAt(about, 'quiet', [0, 40]),
  ];
}

/** Strands across the top, woven at both ends and in the middle. */
export function bandShapes(width: number): Shape[] {
  const { bar, centre, strand, row } = look.band;
  const bars: [number, number][] = [
    [0, bar],
    [(width - centre) / 2, centre],
    [width - bar, bar],
  ];
  const lines = Math.round(BAND / strand) - 1;
  return [
    box([0, 0], [width, BAND], { fill: 'cord' }),
    ...Array.from({ length: lines }, (_, i) => {
      const y = ((i + 1) * BAND) / (lines + 1);
      return segment([0, y], [width, y], 'strand');
    }),
    ...bars.flatMap(([x, wide]) => [
      box([x, 0], [x + wide, BAND], { fill: 'woven' }),
      ...Array.from({ length: Math.floor(wide / row) }, (_, i) =>
        segment([x + (i + 1) * row, 0], [x + (i + 1) * row, BAND], 'weave'),
      ),
    ]),
    segment([0, 0], [width, 0], 'measure'),
    segment([0, BAND], [width, BAND], 'measure'),
  ];
}

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

/** A bar of five inches or ten centimeters of the subject, and the scale in words. */
export function scaleBar([x, y]: Point, scale: number, units: Units): Shape[] {
  const inches = units === 'in' ? 5 : 10 / 2.54;
  const length = (inches * POINTS) / scale;
  const parts = 5;
  return [
    ...Array.from({ length: parts }, (_, i) =>
      box([x + (length * i) / parts, y], [x + (length * (i + 1)) / parts, y + 5], {
        fill: i % 2 === 0 ? 'ink' : 'paper',
        stroke: 'measure',
      }),
    ),
    { kind: 'label', at: [x + length + 6, y + 6], text: units === 'in' ? '5 in' : '10 cm', hand: 'strong' },
    {
      kind: 'label',
      at: [x, y + 17],
      text: `Scale 1 : ${String(scale)}, printed at 100 %.`,
      hand: 'quiet',
    },
  ];
}

/** What is assumed, what is taped, and the caution: the same for every panel. */
function footLines({ facts, assumptions, cautions }: Advice, units: Units): Line[] {
  const measured = measuredText(assumptions, units) ?? 'Nothing was measured.';
  const lines = (text: string, hand: Line['hand']): Line[] =>
    textLines(text, hand, { width: paper.width, most: 4 }).map((line) => ({ text: line, hand }));
  return [
    ...(facts.lengthNeed.measured ? [] : lines(notMeasured, 'strong')),
    ...lines([measured, ...assumedTexts(assumptions, units)].join(' '), 'fine'),
    ...lines(cautions.slice(0, 3).join(' '), 'fine'),
  ];
}

interface Line {
  readonly text: string;
  readonly hand: 'fine' | 'strong';
}

const FOOT_LINE = hands.fine.size * leading;

const footShapes = (lines: readonly Line[], top: number): Shape[] =>
  lines.map(({ text, hand }, i): Shape => ({
    kind: 'label',
    at: [0, top + (i + 0.8) * FOOT_LINE - (hand === 'strong' ? 1.5 : 0)],
    text,
    hand,
  }));
