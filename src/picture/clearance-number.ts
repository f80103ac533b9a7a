/** What stands at the line of a clearance, on every kind of picture: the number and its give or take. */
import type { Clearance } from '../fit/candidate.ts';
import { spreadNumber, type Units } from '../report/text.ts';
import { formatLength } from '../units/print.ts';
import { textWidth } from './letters.ts';

/** The two lines with the hand each is written in, and the points the wider one takes. */
export function clearanceNumber({ inches, sd }: Clearance, units: Units) {
  const number = formatLength(Math.abs(inches), units, 'computed');
  const texts = [
    { text: inches < 0 ? `${number} over` : number, hand: 'number' },
    { text: `± ${spreadNumber(sd, units)}`, hand: 'fine' },
  ] as const;
  return { texts, width: Math.max(...texts.map(({ text, hand }) => textWidth(text, hand))) };
}
