/** What can go wrong on the command line, and the exit codes. */

/** There are no others. */
export const exit = {
  good: 0,
  /** No spec passes for some order, or a checked cinch fails. */
  noSpec: 1,
  usage: 2,
  /** An input is unreadable or invalid. */
  input: 3,
  /** 128 plus the signal's number. */
  stopped: 130,
} as const;

export type ExitCode = (typeof exit)[keyof typeof exit];

/** The worse of two: bad input before no spec. */
export const worse = (a: ExitCode, b: ExitCode): ExitCode => (a > b ? a : b);

/** A fault the user can fix; `hint` says how. */
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

/** Writes out control signs, which could steer the terminal. */
export function printable(text: string): string {
  return text.replace(/[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}]/gu, (sign) => {
    const code = sign.codePointAt(0)?.toString(16) ?? '';
    return `\\u{${code}}`;
  });
}

/** Nothing when no word is near. */
export const didYouMean = (word: string | undefined): string | undefined =>
  word === undefined ? undefined : `Did you mean ${word}?`;
