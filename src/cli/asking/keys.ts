/** Keys of a terminal, one line at a time. */
import { Transform, type TransformCallback } from 'node:stream';
import type { Terminal } from '../io.ts';

const ignore = (): void => undefined;
const WIDTH = 80;
const ENTER = '\r';
const SHOW_CURSOR = '\u001b[?25h';

/** Makes text typed ahead wait for its question. */
class Keys extends Transform {
  override _transform(part: Buffer, _: unknown, done: TransformCallback): void {
    // Raw bytes: a letter may be split between chunks.
    const lines = part.toString('latin1').replaceAll(/\r?\n/g, ENTER);
    for (const line of lines.split(/(?<=\r)/)) this.push(Buffer.from(line, 'latin1'));
    done();
  }
}

/** Restores the terminal afterwards. */
export function takeKeys({ input, output }: Terminal): Terminal & { readonly giveBack: () => void } {
  const keys = new Keys();
  input.setRawMode?.(true);
  // Keep answers even after the window closes.
  output.on('error', ignore);
  // Some terminals report no width.
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
