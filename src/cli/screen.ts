/** How wide the screen is and whether it takes colors. */
import type { ReportOptions } from '../pages/page.ts';
import type { CliIo } from './io.ts';

const narrowest = 60;
const widest = 100;
const withoutTerminal = 80;

/** Columns to fill: the terminal's within bounds that read well, 80 where there is no terminal. */
export function widthFor({ columns, stdoutIsTerminal }: Pick<CliIo, 'columns' | 'stdoutIsTerminal'>): number {
  if (!stdoutIsTerminal || columns === undefined || columns <= 0) return withoutTerminal;
  return Math.min(widest, Math.max(narrowest, columns));
}

/**
 * Whether to color what goes to a stream. What was typed for this run comes first, then FORCE_COLOR, then NO_COLOR, then whether
 * anybody looks.
 */
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

/** What the printers need to know of the options and the screen; a file gets neither colors nor the screen's width. */
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
