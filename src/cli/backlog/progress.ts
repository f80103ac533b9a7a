/** A progress line: orders, share, rate, time left. */
import type { CliIo } from '../io.ts';

const REDRAW = 100;
/** Milliseconds; earlier rates mislead. */
const SETTLED = 500;

type Screen = Pick<CliIo, 'stderr' | 'stderrIsTerminal' | 'columns' | 'env'>;

export interface Progress {
  readonly at: (orders: number, bytes: number) => void;
  readonly clear: () => void;
}

/** Shows nothing. */
export const noProgress: Progress = { at: () => undefined, clear: () => undefined };

/** On standard error, if it is a terminal. */
export function progressFor(io: Screen, bytes: number | undefined, now: () => number): Progress {
  if (!io.stderrIsTerminal || io.env['TERM'] === 'dumb')
    return { at: () => undefined, clear: () => undefined };
  const start = now();
  const most = (io.columns ?? 80) - 1;
  let drawn = start;
  let shown = false;
  return {
    at: (orders, done) => {
      const time = now();
      if (time - drawn < REDRAW) return;
      drawn = time;
      shown = true;
      const part = bytes === undefined || bytes === 0 ? undefined : Math.min(1, done / bytes);
      io.stderr(`\r${progressText(orders, part, time - start).slice(0, most)}\u001b[K`);
    },
    clear: () => {
      if (shown) io.stderr('\r\u001b[K');
      shown = false;
    },
  };
}

/** "1200 orders, 40%, 310 a second, 6 s left". */
export function progressText(orders: number, part: number | undefined, milliseconds: number): string {
  const texts = [`${String(orders)} orders`];
  if (part !== undefined) texts.push(`${String(Math.floor(100 * part))}%`);
  if (milliseconds >= SETTLED) {
    texts.push(`${String(Math.round((1000 * orders) / milliseconds))} a second`);
    if (part !== undefined && part > 0) texts.push(`${timeText((milliseconds * (1 - part)) / part)} left`);
  }
  return texts.join(', ');
}

/** "8 s", "2 min 5 s", "1 h 12 min". */
export function timeText(milliseconds: number): string {
  const seconds = Math.round(milliseconds / 1000);
  const [hours, minutes] = [Math.floor(seconds / 3600), Math.floor(seconds / 60) % 60];
  if (hours > 0) return `${String(hours)} h ${String(minutes)} min`;
  return minutes > 0 ? `${String(minutes)} min ${String(seconds % 60)} s` : `${String(seconds)} s`;
}
