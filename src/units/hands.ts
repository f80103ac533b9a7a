/** Heights in hands: four inches a hand; 15.2 is 62 inches. */
import type { Inches } from './length.ts';

export type HandsRead = { ok: true; inches: Inches } | { ok: false; why: string; suggestion?: string };

const inchesInHand = 4;
const pattern = /^(\d{1,3})(?:\.(\d+)(?: (\d{1,3}) ?\/ ?(\d{1,3}))?)?$/;

const no = (why: string): HandsRead => ({ ok: false, why });

/** Takes "15.2" or "15.2 1/2". Errors: "15.4" (that is 16.0), "15.10" (one digit only), "15 1/2". */
export function parseHands(text: string): HandsRead {
  const parts = pattern.exec(text);
  if (parts === null) {
    return no('write whole hands, then a point and 0 to 3 inches, as in 15.2 hh');
  }
  const [, hands = '', digits = '0', top = '0', bottom = '1'] = parts;
  if (digits.length > 1) {
    return no('hands are not decimal: write one digit after the point, for inches, 0 to 3');
  }
  if (Number(digits) >= inchesInHand) {
    return no(
      `the digit after the point counts inches, 0 to 3: after ${hands}.3 comes ${String(Number(hands) + 1)}.0`,
    );
  }
  if (Number(bottom) === 0 || Number(top) >= Number(bottom)) {
    return no('the fraction after hands must be less than an inch, as in 15.2 1/2 hh');
  }
  return { ok: true, inches: Number(hands) * inchesInHand + Number(digits) + Number(top) / Number(bottom) };
}

/** "15.2 hh", to the nearest inch. */
export function formatHands(inches: Inches): string {
  const whole = Math.round(inches);
  return `${String(Math.floor(whole / inchesInHand))}.${String(whole % inchesInHand)} hh`;
}
