/** Command line errors and exit codes. */
export const exit = {
  good: 0,
  /** An order gets no spec, or a checked cinch fails. */
  noSpec: 1,
  usage: 2,
  /** Unreadable or invalid. */
  input: 3,
  /** 128 plus the signal. */
  stopped: 130,
} as const;

export type ExitCode = (typeof exit)[keyof typeof exit];

/** The worse of two. */
export const worse = (a: ExitCode, b: ExitCode): ExitCode => (a > b ? a : b);

/** The user can fix it; `hint` says how. */
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

/** Escapes control characters, which could steer the terminal. */
export function printable(text: string): string {
  return text.replace(/[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}]/gu, (sign) => {
    const code = sign.codePointAt(0)?.toString(16) ?? '';
    return `\\u{${code}}`;
  });
}

/** A hint, if a word is near. */
export const didYouMean = (word: string | undefined): string | undefined =>
  word === undefined ? undefined : `Did you mean ${word}?`;
