/** The keys of a terminal as they are typed, one line at a time. */
import { Transform, type TransformCallback } from 'node:stream';
import type { Terminal } from '../io.ts';

const ignore = (): void => undefined;
const WIDTH = 80;
const ENTER = '\r';
const SHOW_CURSOR = '\u001b[?25h';

/** What was typed or pasted ahead waits for its question: a reader that pauses after a line has got no more than that line. */
class Keys extends Transform {
  override _transform(part: Buffer, _: unknown, done: TransformCallback): void {
    // Bytes as they are: a letter of several may be cut between two parts.
    const lines = part.toString('latin1').replaceAll(/\r?\n/g, ENTER);
    for (const line of lines.split(/(?<=\r)/)) this.push(Buffer.from(line, 'latin1'));
    done();
  }
}

/** A terminal that hands over every key, until it is given back as it was found. */
export function takeKeys({ input, output }: Terminal): Terminal & { readonly giveBack: () => void } {
  const keys = new Keys();
  input.setRawMode?.(true);
  // A window that is closed takes no more lines; what was said must be kept all the same.
  output.on('error', ignore);
  // Some terminals do not say how wide they are, and lines of no width are letters.
  output.columns ||= WIDTH;
  input.pipe(keys);
  return {
    input: keys,
    output,
    giveBack: () => {
      input.unpipe(keys);
      input.pause();
      input.setRawMode?.(false);
      output.write(SHOW_CURSOR);
    },
  };
}
