/** The words above a panel. */
import { linesAt, textLines, textWidth } from './letters.ts';
import { hands, leading } from './look.ts';
import { box, type Point, type Shape } from './scene.ts';
import type { Shown } from './shown.ts';

const HEAD = 15;

const markWidth = ({ mark }: Shown): number => (mark === undefined ? 0 : textWidth(mark, 'loud') + 16);

const headLines = (shown: Shown, width: number): string[] =>
  textLines(shown.head, 'heading', { width: width - markWidth(shown), most: 2 });

const wordLines = ({ lines }: Shown, width: number): string[] =>
  lines.flatMap((line) => textLines(line, 'text', { width, most: 6 }));

/** Height of the words, points. */
export const wordsHeight = (shown: Shown, width: number): number =>
  HEAD * headLines(shown, width).length + wordLines(shown, width).length * hands.text.size * leading + 4;

/** From a top left point. */
export function wordShapes(shown: Shown, [x, y]: Point, width: number): Shape[] {
  const { mark } = shown;
  const aside = markWidth(shown);
  const heads = headLines(shown, width);
  return [
    ...(mark === undefined ? [] : markShapes(mark, [x, y - 1], aside - 6)),
    ...heads.map((text, i): Shape => ({
      kind: 'label',
      at: [x + aside, y + HEAD * i + 10],
      text,
      hand: 'heading',
    })),
    ...linesAt(wordLines(shown, width), 'text', [x, y + HEAD * heads.length]),
  ];
}

/** White on black, so it is seen first. */
export const markShapes = (mark: string, [x, y]: Point, width = textWidth(mark, 'loud') + 10): Shape[] => [
  box([x, y], [x + width, y + 14], { fill: 'ink' }),
  { kind: 'label', at: [x + width / 2, y + 11], text: mark, hand: 'loud', anchor: 'middle' },
];
