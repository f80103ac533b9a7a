/** The figures of a run as a table. */
import { table } from '../../src/pages/markdown.ts';
import type { Figures } from './fuzz.ts';

export type Row = Omit<Figures, 'failures' | 'slow'> & { readonly failures: number };

const grouped = (count: number): string => String(Math.round(count)).replace(/\B(?=(?:\d{3})+$)/g, ' ');

const heads = ['Input', 'Tries', 'Good ones', 'Command lines run', 'Kept as parents', 'Slowest', 'Failures'];

export function figuresText(rows: readonly Row[], seed: number): string {
  const cells = (name: string, of: readonly Row[]): string[] => {
    const sum = (key: 'tries' | 'good' | 'runs' | 'parents' | 'failures'): string =>
      grouped(of.reduce((total, row) => total + row[key], 0));
    const slowest = Math.max(0, ...of.map((row) => row.slowest));
    return [
      name,
      sum('tries'),
      sum('good'),
      sum('runs'),
      sum('parents'),
      `${grouped(slowest)} ms`,
      sum('failures'),
    ];
  };
  const body = [
    ...rows.map((row) => cells(row.target, [row])),
    ...(rows.length > 1 ? [cells('together', rows)] : []),
  ];
  const minutes = rows.reduce((total, { seconds }) => total + seconds, 0) / 60;
  return `\nSeed ${String(seed)}, ${minutes.toFixed(1)} minutes of one core, Node ${process.version}.\n\n${table(heads, body)}\n`;
}
