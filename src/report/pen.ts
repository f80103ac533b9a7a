/** The few colors of the screen; a color only ever repeats what a word already says. */
import { Chalk } from 'chalk';
import type { Judgement } from '../rules/rule.ts';

export interface Pen {
  readonly strong: (text: string) => string;
  readonly quiet: (text: string) => string;
  readonly judged: (judgement: Judgement, text: string) => string;
}

/** A pen that writes with the sixteen colors every terminal has, or with none. */
export function penFor(color: boolean): Pen {
  const ink = new Chalk({ level: color ? 1 : 0 });
  const inks: Readonly<Record<Judgement, (text: string) => string>> = {
    good: ink.green,
    acceptable: ink.yellow,
    poor: ink.magenta,
    refuse: ink.red,
    'not-applicable': ink.dim,
    'cannot-tell': ink.cyan,
  };
  return { strong: ink.bold, quiet: ink.dim, judged: (judgement, text) => inks[judgement](text) };
}
