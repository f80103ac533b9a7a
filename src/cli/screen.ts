/** Screen width and colors. */
import type { ReportOptions } from '../pages/page.ts';
import type { CliIo } from './io.ts';

const narrowest = 60;
const widest = 100;
const withoutTerminal = 80;

/** The terminal's, within limits; 80 without one. */
export function widthFor({ columns, stdoutIsTerminal }: Pick<CliIo, 'columns' | 'stdoutIsTerminal'>): number {
  if (!stdoutIsTerminal || columns === undefined || columns <= 0) return withoutTerminal;
  return Math.min(widest, Math.max(narrowest, columns));
}

/** Command line, then FORCE_COLOR, NO_COLOR, then whether it is a terminal. */
export function colorFor(io: CliIo, wanted: boolean, stream: 'stdout' | 'stderr' = 'stdout'): boolean {
  const { FORCE_COLOR: force, NO_COLOR: no, TERM: term } = io.env;
  if (!wanted) return false;
  if (force !== undefined) return force !== '0' && force !== 'false';
  if (no !== undefined && no !== '') return false;
  return term !== 'dumb' && (stream === 'stdout' ? io.stdoutIsTerminal : io.stderrIsTerminal);
}

interface Asked {
  units: 'in' | 'cm';
  color: boolean;
  top?: number;
  why?: boolean;
  all?: boolean;
  out?: string | undefined;
}

/** A file gets no colors and a fixed width. */
export function reportOptions(asked: Asked, io: CliIo): ReportOptions {
  const { units, color, top = 3, why = false, all = false, out } = asked;
  const toFile = out !== undefined && out !== '-';
  return {
    units,
    top,
    why,
    all,
    color: !toFile && colorFor(io, color),
    width: toFile ? withoutTerminal : widthFor(io),
  };
}
