/** The few colors of the screen; a color only ever repeats what a word already says. */

/** A sign beside a word: good, fair, poor, ruled out, does not apply, cannot tell. */
export type Sign = '+' | '~' | '!' | 'x' | '-' | '?';

export interface Pen {
  readonly strong: (text: string) => string;
  readonly quiet: (text: string) => string;
  readonly signed: (sign: Sign, text: string) => string;
}

const same = (text: string): string => text;
const plain: Pen = { strong: same, quiet: same, signed: (_, text) => text };

/** Set once by `loadColors`: most runs print no color and need not wait for it. */
let colored: Pen | undefined;

/** Makes colors available to `penFor`: the sixteen that every terminal has. */
export async function loadColors(): Promise<void> {
  const { Chalk } = await import('chalk');
  const ink = new Chalk({ level: 1 });
  const inks: Readonly<Record<Sign, (text: string) => string>> = {
    '+': ink.green,
    '~': ink.yellow,
    '!': ink.magenta,
    x: ink.red,
    '-': ink.dim,
    '?': ink.cyan,
  };
  // Chalk prints every argument: handed over as they are, `map` would add its own.
  colored = {
    strong: (text) => ink.bold(text),
    quiet: (text) => ink.dim(text),
    signed: (sign, text) => inks[sign](text),
  };
}

/** A pen that writes in color, if colors were loaded, or a plain one. */
export const penFor = (color: boolean): Pen => (color ? (colored ?? plain) : plain);
