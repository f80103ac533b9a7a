/** The few colors of the screen; a color only ever repeats what a word already says. */
import type { Judgement } from '../rules/rule.ts';

export interface Pen {
  readonly strong: (text: string) => string;
  readonly quiet: (text: string) => string;
  readonly judged: (judgement: Judgement, text: string) => string;
}

const same = (text: string): string => text;
const plain: Pen = { strong: same, quiet: same, judged: (_, text) => text };

/** Set once by `loadColors`: most runs print no color and need not wait for it. */
let colored: Pen | undefined;

/** Makes colors available to `penFor`: the sixteen that every terminal has. */
export async function loadColors(): Promise<void> {
  const { Chalk } = await import('chalk');
  const ink = new Chalk({ level: 1 });
  const inks: Readonly<Record<Judgement, (text: string) => string>> = {
    good: ink.green,
    acceptable: ink.yellow,
    poor: ink.magenta,
    refuse: ink.red,
    'not-applicable': ink.dim,
    'cannot-tell': ink.cyan,
  };
  colored = { strong: ink.bold, quiet: ink.dim, judged: (judgement, text) => inks[judgement](text) };
}

/** A pen that writes in color, if colors were loaded, or a plain one. */
export const penFor = (color: boolean): Pen => (color ? (colored ?? plain) : plain);
