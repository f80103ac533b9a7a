/** Makes text from a file harmless on a screen: it cannot move the cursor, hide letters or reverse them. */

/**
 * Emoji of several parts, and variation signs after a picture or ideograph, stay: names use them. All else that steers a screen or cannot
 * be seen is caught: control characters (so every escape sequence), format signs, line separators, lone surrogates, blank fillers.
 * Made when it is needed: it takes a fiftieth of a start.
 */
const steeringSigns = (): RegExp =>
  /(\p{Extended_Pictographic}[\p{Emoji_Modifier}\ufe0f]*(?:\u200d\p{Extended_Pictographic}[\p{Emoji_Modifier}\ufe0f]*)+|(?<=[\p{Extended_Pictographic}\p{Script=Han}])[\ufe00-\ufe0f\u{e0100}-\u{e01ef}])|[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}\p{Default_Ignorable_Code_Point}]/gu;

/** Most text is plain; this check is hundreds of times faster. */
const plain = /^[ -~]*$/;

/** Shows every sign that steers a screen as `\u{1b}`. */
export function visible(text: string): string {
  if (plain.test(text)) return text;
  return text.replace(steeringSigns(), (sign, whole: string | undefined) => {
    if (whole !== undefined) return whole;
    return `\\u{${(sign.codePointAt(0) ?? 0).toString(16)}}`;
  });
}
