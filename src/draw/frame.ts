/** What surrounds a picture: head, scale, what is assumed, the caution. */
import type { Advice } from '../advice/advice.ts';
import type { Order } from '../order/types.ts';
import { ownNumbers, situation } from '../words/about-order.ts';
import { visible } from '../units/clean.ts';
import { tapedText } from '../words/measure-words.ts';
import { notCutText } from '../words/counter-words.ts';
import { phraseText, type Units } from '../units/text.ts';
import { linesAt, shortened, textLines, textWidth } from './letters.ts';
import { hands, leading } from './look.ts';
import { box, type Point, type Shape } from './scene.ts';

/** Points; with margins it fits Letter and A4 in landscape. */
export const paper = { width: 720, height: 522, margin: 18 } as const;

/** A sore, and DO NOT CUT. */
export const noticesOf = (advice: Advice, units: Units): string[] => [
  ...advice.welfare.map((phrase) => phraseText(phrase, units)),
  ...(advice.facts.lengthNeed.measured ? [] : [notCutText(advice)]),
];

/** Per inch of paper. */
export const POINTS = 72;

/** The largest whole or half scale at which inches fit a box in points. */
export function scaleFor(tall: number, wide: number, room: { width: number; height: number }): number {
  const exact = Math.max((tall * POINTS) / room.height, (wide * POINTS) / room.width);
  return Math.max(1, Math.ceil(2 * exact - 1e-9) / 2);
}

/** "Order 2417: Biscuit". */
export const titleText = (order: Order): string =>
  `Order ${order.order}${order.horse.name === undefined ? '' : `: ${order.horse.name}`}`;

/** Some viewers show bare areas black. */
export const whitePaper = (): Shape =>
  box([-paper.margin, -paper.margin], [paper.width + paper.margin, paper.height + paper.margin], {
    fill: 'paper',
  });

/** Order, shop, situation and notices. */
export function headOf(advice: Advice, units: Units): { shapes: Shape[]; bottom: number } {
  const { facts } = advice;
  const right = shortened(facts.shop.name, 'strong', paper.width * 0.3);
  const room = paper.width - textWidth(right, 'strong') - 20;
  const about = textLines(situation(facts, units), 'quiet', { width: paper.width, most: 1 });
  const notices = noticesOf(advice, units).flatMap((text) =>
    textLines(text, 'heading', { width: paper.width, most: 2 }),
  );
  return {
    shapes: [
      ...titleShapes(titleText(facts.order), room),
      { kind: 'label', at: [paper.width, 18], text: right, hand: 'strong', anchor: 'end' },
      ...linesAt(about, 'quiet', [0, 26]),
      ...linesAt(notices, 'heading', [0, 40]),
    ],
    bottom: 45 + notices.length * hands.heading.size * leading,
  };
}

/** Long titles shrink to two lines. */
function titleShapes(title: string, room: number): Shape[] {
  const shown = visible(title);
  if (textWidth(shown, 'title') <= room) return [{ kind: 'label', at: [0, 18], text: shown, hand: 'title' }];
  return linesAt(textLines(title, 'heading', { width: room, most: 2 }), 'heading', [0, -1]);
}

/** Longest first. */
const bars = {
  in: [5, 2, 1].map((long) => ({ long, parts: long, inches: long })),
  cm: [10, 5, 2].map((long) => ({ long, parts: 5, inches: long / 2.54 })),
} as const;

/** Longest bar, points. */
const LONGEST = 112;

/** The scale, as a bar and in words. */
export function scaleBar([x, y]: Point, scale: number, units: Units): Shape[] {
  const known = bars[units];
  const lengthOf = ({ inches }: { inches: number }): number => (inches * POINTS) / scale;
  const bar = known.find((each) => lengthOf(each) <= LONGEST) ?? known[known.length - 1];
  if (bar === undefined) return [];
  const { long, parts } = bar;
  const length = lengthOf(bar);
  return [
    ...Array.from({ length: parts }, (_, i) =>
      box([x + (length * i) / parts, y], [x + (length * (i + 1)) / parts, y + 5], {
        fill: i % 2 === 0 ? 'ink' : 'paper',
        stroke: 'measure',
      }),
    ),
    { kind: 'label', at: [x + length + 6, y + 6], text: `${String(long)} ${units}`, hand: 'strong' },
    { kind: 'label', at: [x, y + 17], text: `Scale 1 : ${String(scale)}, printed at 100%.`, hand: 'quiet' },
  ];
}

/** The same for every panel. */
export const footLines = (advice: Advice, units: Units): string[] =>
  [
    [tapedText(advice, units), ownNumbers(advice.facts) ?? ''].join(' ').trim(),
    advice.cautions.join(' '),
  ].flatMap((text) => textLines(text, 'fine', { width: paper.width, most: 4 }));

export const FOOT_LINE = hands.fine.size * leading;

/** Below the picture. */
export const footShapes = (lines: readonly string[], top: number): Shape[] =>
  linesAt(lines, 'fine', [0, top]);
