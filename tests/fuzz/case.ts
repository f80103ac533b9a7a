/** One try, kept in a file to run again. */

export interface Case {
  readonly target: string;
  /** The damaged file; the others are good. */
  readonly input: Buffer;
  /** Run in turn in the folder of the files. */
  readonly lines: readonly (readonly string[])[];
}

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

/** Input that is no text is in base64. */
export function keptText({ tried: { target, input, lines }, why }: Failure): string {
  const text = input.toString('utf8');
  const body = Buffer.from(text).equals(input) ? { text } : { base64: input.toString('base64') };
  const kept: Kept = { target, why, lines, ...body };
  return `${JSON.stringify(kept, null, 2)}\n`;
}

/** @throws on what `keptText` did not write */
export function keptCase(json: string): Failure {
  const { target, why, lines, text, base64 } = JSON.parse(json) as Kept;
  const input = base64 === undefined ? Buffer.from(text ?? '') : Buffer.from(base64, 'base64');
  return { tried: { target, input, lines }, why };
}
