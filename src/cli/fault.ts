/** What can go wrong at the command line, and the number the program ends with. */

/** The contract's exit codes; there are no others. */
export const exit = {
  good: 0,
  /** At least one order has no spec that passes, or something checked does not pass. */
  noSpec: 1,
  usage: 2,
  /** An input is unreadable or invalid. */
  input: 3,
  /** Ctrl-C while questions are asked: 128 and the number of the signal, as shells have it. */
  stopped: 130,
} as const;

export type ExitCode = (typeof exit)[keyof typeof exit];

/** The one of two codes that says more: an input at fault before an order without a spec. */
export const worse = (a: ExitCode, b: ExitCode): ExitCode => (a > b ? a : b);

/** A fault the user can mend: `message` is one plain sentence, `hint` says what to do about it. */
export class CliFault extends Error {
  readonly code: ExitCode;
  readonly hint: string | undefined;

  constructor(
    message: string,
    { code = exit.usage, hint }: { code?: ExitCode; hint?: string | undefined } = {},
  ) {
    super(message);
    this.code = code;
    this.hint = hint;
  }
}

/** Text from outside made safe to print: control signs, which could steer the terminal, are written out. */
export function printable(text: string): string {
  return text.replace(/[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}]/gu, (sign) => {
    const code = sign.codePointAt(0)?.toString(16) ?? '';
    return `\\u{${code}}`;
  });
}

/** "Did you mean X?", or nothing when no word is near. */
export const didYouMean = (word: string | undefined): string | undefined =>
  word === undefined ? undefined : `Did you mean ${word}?`;
