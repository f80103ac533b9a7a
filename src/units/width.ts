/** Columns a text takes on a screen: 2 for wide signs and emoji, 0 for combining marks. */

/** Unicode UAX #11, classes W and F, roughly. */
const wide =
  /^[\u1100-\u115f\u231a\u231b\u2329\u232a\u23e9-\u23ec\u23f0\u23f3\u2e80-\u303e\u3041-\u33ff\u3400-\u4dbf\u4e00-\u9fff\ua000-\ua4cf\ua960-\ua97f\uac00-\ud7a3\uf900-\ufaff\ufe10-\ufe19\ufe30-\ufe6f\uff01-\uff60\uffe0-\uffe6\u{16fe0}-\u{18dff}\u{1aff0}-\u{1b2ff}\u{1f200}-\u{1f2ff}\u{20000}-\u{3fffd}]/u;
const pictures = /\p{Emoji_Presentation}|\ufe0f/u;
const marksOnly = /^[\p{Mn}\p{Me}]+$/u;
/** One column each. */
const plain = /^[\x20-\x7e\xa0]*$/;

let segmenter: Intl.Segmenter | undefined;

/** Letters with their accents, whole emoji. */
export function signs(text: string): string[] {
  if (plain.test(text)) return text.split('');
  // Slow and rarely needed.
  segmenter ??= new Intl.Segmenter('en', { granularity: 'grapheme' });
  return Array.from(segmenter.segment(text), ({ segment }) => segment);
}

/** Of text without color codes. */
export function columns(text: string): number {
  if (plain.test(text)) return text.length;
  return signs(text).reduce((sum, sign) => sum + columnsOfSign(sign), 0);
}

function columnsOfSign(sign: string): number {
  if (marksOnly.test(sign)) return 0;
  return wide.test(sign) || pictures.test(sign) ? 2 : 1;
}

/** Cut with an ellipsis if too wide. */
export function fit(text: string, most: number): string {
  if (columns(text) <= most) return text;
  return `${startOf(text, most - 1)}…`;
}

/** At least one sign. */
export function startOf(text: string, most: number): string {
  let taken = '';
  let used = 0;
  for (const sign of signs(text)) {
    used += columnsOfSign(sign);
    if (used > most && taken !== '') break;
    taken += sign;
  }
  return taken;
}

/** Filled up with spaces on the right. */
export const padRight = (text: string, width: number): string =>
  text + ' '.repeat(Math.max(0, width - columns(text)));
