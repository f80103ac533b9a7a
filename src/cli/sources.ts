/** Turns command line names into things to read. */
import fs from 'node:fs';
import path from 'node:path';
import { CliFault } from './fault.ts';
import { neverEnds, noEnd } from './files.ts';
import { systemWords } from './system-error.ts';

export interface Source {
  readonly label: string;
  /** Absolute; undefined for standard input. */
  readonly path: string | undefined;
  /** Bytes, if known. */
  readonly size: number | undefined;
  /** On disk, so readable twice. */
  readonly plain: boolean;
  /** Why it cannot be read. */
  readonly fault?: string | undefined;
}

export interface Place {
  readonly cwd: string;
  /** This run's outputs, absolute: skip them. */
  readonly without: ReadonlySet<string>;
}

const orderFile = /\.(?:ya?ml|json|ndjson|jsonl)$/i;
const inOrders = 'their names end in .yaml, .yml, .json, .ndjson or .jsonl';

/** In input order; a bad name stays, with its fault. */
export async function sourcesOf(names: readonly string[], place: Place): Promise<Source[]> {
  const sources: Source[] = [];
  for (const name of names) {
    const found = name === '-' ? [standardInput] : await opened(name, place);
    for (const source of found) sources.push(source);
  }
  return sources;
}

const standardInput: Source = { label: 'standard input', path: undefined, size: undefined, plain: false };

async function opened(name: string, place: Place): Promise<Source[]> {
  const at = path.resolve(place.cwd, name);
  const stat = statOf(at);
  if (stat?.isDirectory() === true) {
    const found = [...walkable(name, { ...place, seen: new Set() })];
    return found.length > 0 ? found : [nothing(name, `there are no order files in it (${inOrders})`)];
  }
  if (stat !== undefined) return [sourceOf(name, at, stat)];
  const matched = await matches(name, place);
  if (matched === undefined) return [{ label: name, path: at, size: 0, plain: true }];
  return matched.length > 0 ? matched : [nothing(name, 'no file matches')];
}

const nothing = (label: string, fault: string): Source => ({
  label,
  path: undefined,
  size: 0,
  plain: true,
  fault,
});

const sourceOf = (label: string, at: string, stat: fs.Stats): Source => ({
  label,
  path: at,
  size: stat.isFile() ? stat.size : undefined,
  plain: stat.isFile(),
  fault: neverEnds(stat) ? noEnd : undefined,
});

const bytewise = (a: string, b: string): number => Buffer.compare(Buffer.from(a), Buffer.from(b));

interface Walk extends Place {
  /** Folders walked, so circular links end. */
  readonly seen: Set<string>;
}

/** With subfolders, sorted, without hidden files. */
function* below(folder: string, walk: Walk): Generator<Source> {
  const at = path.resolve(walk.cwd, folder);
  const real = fs.realpathSync(at);
  if (walk.seen.has(real)) return;
  walk.seen.add(real);
  const names = fs.readdirSync(at).filter((name) => !name.startsWith('.'));
  for (const name of names.sort(bytewise)) {
    const label = path.join(folder, name);
    const full = path.join(at, name);
    const stat = statOf(full);
    if (stat?.isDirectory() === true) yield* walkable(label, walk);
    else if (orderFile.test(name) && !walk.without.has(full)) {
      // A dead link is a missing order: report it.
      if (stat === undefined) yield { label, path: full, size: 0, plain: true };
      else if (stat.isFile()) yield sourceOf(label, full, stat);
    }
  }
}

function* walkable(folder: string, walk: Walk): Generator<Source> {
  try {
    yield* below(folder, walk);
  } catch (error) {
    yield nothing(folder, `the folder cannot be read: ${systemWords(error) ?? String(error)}`);
  }
}

function statOf(full: string): fs.Stats | undefined {
  try {
    return fs.statSync(full, { throwIfNoEntry: false });
  } catch {
    return undefined; // circular links, or no permission
  }
}

/** For patterns the shell left alone; undefined for a plain name. */
async function matches(pattern: string, { cwd, without }: Place): Promise<Source[] | undefined> {
  const { globSync, isDynamicPattern } = await import('tinyglobby');
  if (!isDynamicPattern(pattern)) return undefined;
  const found = globSync(pattern, { cwd, expandDirectories: false, followSymbolicLinks: false });
  return found
    .sort(bytewise)
    .filter((name) => !without.has(path.resolve(cwd, name)))
    .map((name) => {
      const at = path.resolve(cwd, name);
      const stat = statOf(at);
      return stat === undefined ? { label: name, path: at, size: 0, plain: true } : sourceOf(name, at, stat);
    });
}

/** None means piped standard input. Errors: nothing to read, an empty name. */
export function namedOrPiped(names: readonly string[], piped: boolean): readonly string[] {
  if (names.includes('')) {
    throw new CliFault('a file name is empty', { hint: 'Check the quotes on the command line.' });
  }
  const inputs = names.filter((name) => name === '-').length;
  if (inputs > 1) throw new CliFault('standard input can be named only once');
  if (names.length > 0) return names;
  if (piped) return ['-'];
  throw new CliFault('name files or folders with orders, or "-" for standard input', {
    hint: 'For example: cinchwright backlog orders/',
  });
}
