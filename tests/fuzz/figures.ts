/** The figures of a run as they are put into docs/trust.md. */
import type { Figures } from './fuzz.ts';
import { table } from '../../src/report/markdown.ts';

const thousands = (count: number): string => String(Math.round(count)).replace(/\B(?=(?:\d{3})+$)/g, ' ');

/** A table in Markdown, with a line on the run. */
export function figuresText(all: readonly Figures[], seed: number): string {
  const sum = (of: (figures: Figures) => number): number => all.reduce((total, each) => total + of(each), 0);
  const row = (name: string, figures: readonly Figures[]): string[] => {
    const total = (of: (each: Figures) => number): number => figures.reduce((all, each) => all + of(each), 0);
    const slowest = Math.max(0, ...figures.map(({ slowest }) => slowest));
    return [
      name,
      thousands(total(({ tries }) => tries)),
      thousands(total(({ good }) => good)),
      thousands(total(({ runs }) => runs)),
      thousands(total(({ parents }) => parents)),
      `${thousands(slowest)} ms`,
      String(total(({ failures }) => failures.length)),
    ];
  };
  const heads = ['Input', 'Tries', 'Good ones', 'Command lines run', 'Kept as parents', 'Slowest', 'Failures'];
  const rows = [...all.map((figures) => row(figures.target, [figures])), ...(all.length > 1 ? [row('together', all)] : [])];
  const minutes = sum(({ seconds }) => seconds) / 60;
  return `\nSeed ${String(seed)}, ${minutes.toFixed(1)} minutes, Node ${process.version}, one thread.\n\n${table(heads, rows)}\n`;
}
