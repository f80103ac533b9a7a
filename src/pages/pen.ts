/** Screen colors; each only repeats what a word says. */

/** Good, fair, poor, ruled out, does not apply, cannot tell. */
export type Sign = '+' | '~' | '!' | 'x' | '-' | '?';

export interface Pen {
  readonly strong: (text: string) => string;
  readonly quiet: (text: string) => string;
  readonly signed: (sign: Sign, text: string) => string;
}

const same = (text: string): string => text;
const plain: Pen = { strong: same, quiet: same, signed: (_, text) => text };

/** Loaded only when needed: most runs print no color. */
let colored: Pen | undefined;

/** The sixteen colors of every terminal. */
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
  // Chalk prints every argument, and `map` passes several.
  colored = {
    strong: (text) => ink.bold(text),
    quiet: (text) => ink.dim(text),
    signed: (sign, text) => inks[sign](text),
  };
}

/** Plain unless colors were loaded. */
export const penFor = (color: boolean): Pen => (color ? (colored ?? plain) : plain);
