/** Makes text from files harmless on a screen. */

/**
 * Keeps joined emoji, and variation signs after a picture or ideograph: names use them. Catches all else that
 * steers a screen or is invisible: control and format signs, line separators, lone surrogates, blank fillers.
 * Made on demand: it takes a fiftieth of a start.
 */
const steeringSigns = (): RegExp =>
  /(\p{Extended_Pictographic}[\p{Emoji_Modifier}\ufe0f]*(?:\u200d\p{Extended_Pictographic}[\p{Emoji_Modifier}\ufe0f]*)+|(?<=[\p{Extended_Pictographic}\p{Script=Han}])[\ufe00-\ufe0f\u{e0100}-\u{e01ef}])|[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}\p{Default_Ignorable_Code_Point}]/gu;

/** Most text; hundreds of times faster. */
const plain = /^[ -~]*$/;

/** Shows every sign that steers a screen as `\u{1b}`. */
export function visible(text: string): string {
  if (plain.test(text)) return text;
  return text.replace(steeringSigns(), (sign, whole: string | undefined) => {
    if (whole !== undefined) return whole;
    return `\\u{${(sign.codePointAt(0) ?? 0).toString(16)}}`;
  });
}
