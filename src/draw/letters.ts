/** Widths of our type, in thousandths of its size, and text broken by them. */
import { signs, startOf } from '../units/width.ts';
import { visible } from '../units/clean.ts';
import { glue, unglue } from '../units/text.ts';
import { hands, leading, type Face, type HandName } from './look.ts';
import type { Point, Shape } from './scene.ts';

/** Space to tilde. */
export const widths: Readonly<Record<Face, readonly number[]>> = {
  text: [
    200, 289, 426, 497, 497, 824, 609, 249, 303, 303, 418, 497, 249, 311, 249, 350, 497, 497, 497, 497, 497,
    497, 497, 497, 497, 497, 249, 249, 497, 497, 497, 425, 847, 544, 588, 571, 615, 527, 494, 617, 652, 263,
    480, 579, 486, 727, 647, 664, 566, 664, 569, 534, 536, 645, 515, 786, 513, 476, 539, 303, 350, 303, 497,
    500, 542, 504, 553, 456, 555, 496, 292, 504, 544, 246, 247, 495, 255, 829, 547, 542, 555, 555, 347, 419,
    338, 544, 467, 719, 446, 467, 425, 303, 241, 303, 497,
  ],
  strong: [
    200, 315, 482, 513, 513, 841, 639, 275, 324, 324, 438, 513, 275, 322, 275, 344, 513, 513, 513, 513, 513,
    513, 513, 513, 513, 513, 275, 275, 513, 513, 513, 444, 875, 558, 597, 576, 625, 538, 510, 628, 663, 282,
    494, 597, 502, 745, 657, 674, 582, 674, 592, 545, 546, 655, 536, 800, 541, 501, 540, 324, 344, 324, 513,
    500, 549, 516, 563, 462, 564, 507, 317, 520, 558, 262, 263, 522, 271, 843, 560, 549, 564, 564, 373, 431,
    361, 556, 495, 748, 481, 495, 443, 324, 255, 324, 513,
  ],
  head: [
    224, 316, 398, 545, 520, 883, 720, 207, 357, 357, 435, 537, 300, 325, 300, 356, 520, 520, 520, 520, 520,
    520, 520, 520, 520, 520, 300, 300, 537, 537, 537, 431, 861, 669, 639, 627, 708, 599, 579, 679, 777, 379,
    384, 681, 589, 899, 732, 705, 600, 705, 666, 526, 618, 729, 668, 971, 651, 629, 557, 333, 356, 333, 537,
    525, 400, 519, 592, 500, 580, 515, 358, 530, 609, 307, 291, 571, 310, 904, 611, 557, 596, 569, 443, 444,
    341, 594, 515, 776, 538, 522, 460, 341, 301, 341, 537,
  ],
};

const FIRST = 32;
/** Fair for other scripts; accented letters are as wide as plain ones. */
const OTHER = 1000;

/** Points; a guess outside ASCII. */
export function textWidth(text: string, hand: HandName): number {
  const { face, size } = hands[hand];
  let sum = 0;
  for (const sign of signs(text)) sum += signWidth(sign, face);
  return (sum * size) / 1000;
}

function signWidth(sign: string, face: Face): number {
  const bare = sign === '\u00a0' ? ' ' : sign === '\u00b1' ? '+' : sign.normalize('NFD').charAt(0);
  return widths[face][bare.charCodeAt(0) - FIRST] ?? OTHER;
}

/** Whether all widths are known. */
export const isKnown = (text: string): boolean => /^[ -~\u00b1]*$/.test(text);

/** Splits long words; drops lines after `most`. */
export function textLines(text: string, hand: HandName, { width, most = Infinity }: Bounds): string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of glue(visible(text).trim()).split(/ +/)) {
    const joined = line === '' ? word : `${line} ${word}`;
    if (textWidth(joined, hand) <= width) {
      line = joined;
      continue;
    }
    if (line !== '') lines.push(line);
    line = word;
    while (textWidth(line, hand) > width) {
      const start = startFitting(line, hand, width);
      lines.push(start);
      line = line.slice(start.length);
    }
  }
  if (line !== '') lines.push(line);
  const kept = lines.slice(0, most).map(unglue);
  if (lines.length <= most) return kept;
  return [...kept.slice(0, -1), shortened(`${kept.at(-1) ?? ''} ...`, hand, width)];
}

export interface Bounds {
  /** Points. */
  readonly width: number;
  readonly most?: number;
}

/** At least one letter. */
function startFitting(text: string, hand: HandName, width: number): string {
  const all = signs(text);
  let count = 1;
  while (count < all.length && textWidth(all.slice(0, count + 1).join(''), hand) <= width) count++;
  return startOf(all.slice(0, count).join(''), Infinity);
}

/** One line, with three dots when cut; control characters show. */
export function shortened(text: string, hand: HandName, width: number): string {
  const shown = visible(text);
  if (textWidth(shown, hand) <= width) return shown;
  const room = width - textWidth('...', hand);
  return `${startFitting(shown.replace(/ ?\.\.\.$/, ''), hand, room).trimEnd()}...`;
}

/** Lines from a top left point. */
export const linesAt = (lines: readonly string[], hand: HandName, [x, y]: Point): Shape[] =>
  lines.map((text, i): Shape => ({
    kind: 'label',
    at: [x, y + hands[hand].size * (leading * i + 0.95)],
    text,
    hand,
  }));
