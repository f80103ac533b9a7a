/** Text that came from a file, made harmless for a screen: nothing in it can move the cursor, hide or turn round letters. */

/**
 * An emoji of several parts is left whole, and so is a variation sign after a picture or an ideograph: they are how names are written.
 * Everything else that steers a screen or cannot be seen is caught: C0, C1 and DEL (so every CSI, OSC, DCS, APC, PM and SOS loses its
 * introducer and its end), format signs (bidirectional controls, zero width, tags), line and paragraph separators, lone surrogates,
 * fillers that look like nothing.
 */
const steering =
  /(\p{Extended_Pictographic}[\p{Emoji_Modifier}\ufe0f]*(?:\u200d\p{Extended_Pictographic}[\p{Emoji_Modifier}\ufe0f]*)+|(?<=[\p{Extended_Pictographic}\p{Script=Han}])[\ufe00-\ufe0f\u{e0100}-\u{e01ef}])|[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}\p{Default_Ignorable_Code_Point}]/gu;

/** Nearly all texts are this, and seeing so is hundreds of times faster. */
const plain = /^[ -~]*$/;

/** Same text with every sign that steers a screen shown as `\u{1b}`: seen rather than obeyed, and rather than silently gone. */
export function visible(text: string): string {
  if (plain.test(text)) return text;
  return text.replace(steering, (sign, whole: string | undefined) => {
    if (whole !== undefined) return whole;
    return `\\u{${(sign.codePointAt(0) ?? 0).toString(16)}}`;
  });
}
