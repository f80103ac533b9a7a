/** Reads orders; an unreadable file stops no other. */
import type { Problem } from '../yaml/problem.ts';
import type { OrderRead } from '../order/read-orders.ts';
import { ENOUGH, isBlank, looksByLine } from './by-line.ts';
import type { Unread } from '../words/types.ts';
import { CliFault, printable } from './fault.ts';
import type { CliIo } from './io.ts';
import { systemCode, systemWords } from './system-error.ts';
import { mostBytes, textOf, type TextRead } from './text-file.ts';

/** `unreadable` when the file itself is. */
export type Entry = OrderRead & { readonly unreadable?: string | undefined };

const standardInput = 'standard input';

/** Files, or piped standard input. Errors: nothing to read, an empty name. */
export function namesOf(files: readonly string[], io: CliIo, command: string): readonly string[] {
  if (files.includes(''))
    throw new CliFault('a file name is empty', { hint: 'Check the quotes on the command line.' });
  if (files.length > 0) return files;
  if (!io.stdinIsTerminal) return ['-'];
  throw new CliFault('name at least one order file, or "-" to type an order in', {
    hint: `For example: cinchwright ${command} order.yaml. To start an order: cinchwright new order.yaml`,
  });
}

/** In input order. */
export async function readEntries(names: readonly string[], io: CliIo): Promise<Entry[]> {
  let piped: TextRead | undefined; // can be read once
  const entries: Entry[] = [];
  for (const name of names) {
    const read = name === '-' ? (piped ??= await readText('-', io)) : await readText(name, io);
    const file = fileLabel(name);
    if (!read.ok) entries.push(unreadable(file, read));
    else for (const entry of await ordersIn(read.text, file)) entries.push(entry);
  }
  return entries;
}

/** YAML, JSON, or one JSON order per line. */
async function ordersIn(text: string, file: string): Promise<Entry[]> {
  const { mostOrders, readOrders, tooMany } = await import('../order/read-orders.ts');
  const isByLine = looksByLine(text.slice(0, ENOUGH), text.length > ENOUGH);
  if (isByLine !== true || !text.trim().includes('\n')) return readOrders(text, file);
  const lines = text.split(/\r?\n/);
  const told = lines.flatMap((line, at) => (isBlank(line) ? [] : [at]));
  const further = told[mostOrders];
  if (further !== undefined) return [tooMany(file, further + 1)];
  return told.flatMap((at) => readOrders(lines[at] ?? '', file, at));
}

/** As messages name it. */
export const fileLabel = (name: string): string => (name === '-' ? standardInput : name);

/** "-" is standard input. Gives the reason when unreadable. */
export async function readText(name: string, io: CliIo): Promise<TextRead> {
  if (name === '-' && io.stdinIsTerminal) io.stderr('type the order, then Ctrl-D on a line of its own\n');
  try {
    return textOf(name === '-' ? await io.stdin(mostBytes) : io.readFile(name, mostBytes));
  } catch (error) {
    const why = systemWords(error);
    if (why === undefined) throw error;
    const inside = `${printable(name).replace(/\/+$/, '')}/*.yaml`;
    const more = systemCode(error) === 'EISDIR' ? `; name the files in it, such as ${inside}` : '';
    return { ok: false, line: 1, why: `${why}${more}` };
  }
}

/** As printers take it. */
export const failed = ({ file, order, problems }: Entry & { ok: false }): Unread => ({
  ok: false,
  file,
  order,
  problems,
});

/** An entry that says why. */
export function unreadable(file: string, { why, line }: TextRead & { ok: false }): Entry {
  const problem: Problem = {
    file,
    line,
    column: 1,
    path: '',
    expected: 'a file that can be read',
    hint: why,
  };
  return { ok: false, file, line, problems: [problem], unreadable: why };
}
