/** One try, as it is kept in a file to be tried again: the files a run finds, and the command lines that are run. */

export interface Case {
  /** Which input of the program is tried: a name of `targets`. */
  readonly target: string;
  /** The file that is damaged; the others are good. */
  readonly input: Buffer;
  /** Command lines, word by word, run one after the other where the files are. */
  readonly lines: readonly (readonly string[])[];
}

/** A case that failed, and why. */
export interface Failure {
  readonly tried: Case;
  readonly why: string;
}

interface Kept {
  readonly target: string;
  readonly why: string;
  readonly lines: readonly (readonly string[])[];
  readonly text?: string;
  readonly base64?: string;
}

/** As JSON: the input as text where it is text, else in base 64. */
export function keptText({ tried: { target, input, lines }, why }: Failure): string {
  const text = input.toString('utf8');
  const body = Buffer.from(text).equals(input) ? { text } : { base64: input.toString('base64') };
  const kept: Kept = { target, why, lines, ...body };
  return `${JSON.stringify(kept, null, 2)}\n`;
}

/** What `keptText` wrote. Throws on anything else. */
export function keptCase(json: string): Failure {
  const { target, why, lines, text, base64 } = JSON.parse(json) as Kept;
  const input = base64 === undefined ? Buffer.from(text ?? '') : Buffer.from(base64, 'base64');
  return { tried: { target, input, lines }, why };
}
