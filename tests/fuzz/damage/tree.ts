/** Damages what a file says: values swapped, of another kind, missing, doubled, too deep. */
import { parseAllDocuments } from 'yaml';
import type { Random } from '../../../src/math/random.ts';
import { happens, pick, whole } from '../../support/draw.ts';
import { misspelled, strangeText } from './texts.ts';

/** Every leaf a text. */
export type Said = string | Said[] | Said_;
interface Said_ {
  [key: string]: Said;
}

/** Those that can be read. */
export function documentsOf(text: string): Said[] {
  try {
    return parseAllDocuments(text, { schema: 'failsafe', uniqueKeys: false, logLevel: 'silent' }).map(
      (document) => asSaid(document.toJS({ maxAliasCount: 20 }), 0),
    );
  } catch {
    return [];
  }
}

function asSaid(value: unknown, depth: number): Said {
  if (depth > 30 || value === null || value === undefined) return '';
  if (Array.isArray(value)) return value.map((each) => asSaid(each, depth + 1));
  if (typeof value !== 'object') return typeof value === 'string' ? value : JSON.stringify(value);
  const entries = Object.entries(value).map(([key, each]) => [key, asSaid(each, depth + 1)] as const);
  return Object.fromEntries(entries);
}

/** A parent and a key. */
interface Seat {
  readonly around: Said[] | Said_;
  readonly key: string;
}

const isBlock = (said: Said | undefined): said is Said_ => typeof said === 'object' && !Array.isArray(said);
const at = ({ around, key }: Seat): Said => (around as Said_)[key] ?? '';
function put({ around, key }: Seat, said: Said): void {
  const value = structuredClone(said); // may come from this same document
  if (Array.isArray(around)) around[Number(key)] = value;
  else Object.defineProperty(around, key, { value, enumerable: true, configurable: true, writable: true });
}
function drop({ around, key }: Seat): void {
  if (Array.isArray(around)) around.splice(Number(key), 1);
  else Reflect.deleteProperty(around, key);
}

function seatsIn(said: Said, seats: Seat[] = []): Seat[] {
  if (typeof said === 'string') return seats;
  for (const [key, value] of Object.entries(said)) {
    seats.push({ around: said, key });
    seatsIn(value, seats);
  }
  return seats;
}

/** Values seen under each key, and its allowed words. */
export type Lexicon = ReadonlyMap<string, readonly Said[]>;

/** Values of good files by key, with the words and key names of their JSON Schema. */
export function lexiconOf(files: readonly Buffer[], schema: object): Lexicon {
  const all = new Map<string, Said[]>();
  const add = (key: string, value: Said): void => {
    all.set(key, [...(all.get(key) ?? []), value]);
  };
  for (const said of files.flatMap((file) => documentsOf(file.toString('utf8'))))
    for (const seat of seatsIn(said)) if (!Array.isArray(seat.around)) add(seat.key, at(seat));
  const walk = (part: unknown): void => {
    if (typeof part !== 'object' || part === null) return;
    const { properties = {} } = part as { properties?: Record<string, { enum?: string[] }> };
    for (const [key, each] of Object.entries(properties))
      for (const word of each.enum ?? ['']) add(key, word);
    for (const each of Object.values(part)) walk(each);
  };
  walk(schema);
  return all;
}

type Change = (seat: Seat, seats: readonly Seat[], draw: { chance: Random; lexicon: Lexicon }) => void;

/** Most files still read after these, few after `rough`. */
const mild: readonly Change[] = [
  (seat, _, { chance, lexicon }) => {
    put(seat, pick(chance, lexicon.get(seat.key) ?? [at(seat)]));
  },
  (seat, _, { chance }) => {
    const value = at(seat);
    if (typeof value === 'string') {
      const scale = pick(chance, [0.01, 0.1, 0.5, 0.9, 1.1, 2, 10, 1000]);
      put(
        seat,
        value.replace(/\d+(?:\.\d+)?/, (digits) => String(Number((Number(digits) * scale).toFixed(4)))),
      );
    }
  },
  (seat, _, { chance }) => {
    const value = at(seat);
    if (typeof value === 'string')
      put(
        seat,
        value.replace(/\d+/, (digits) => String(Number(digits) + pick(chance, [-2, -1, 1, 2]))),
      );
  },
  (seat, _, { chance, lexicon }) => {
    if (!isBlock(seat.around)) return;
    const key = pick(chance, [...lexicon.keys()]);
    put({ around: seat.around, key }, pick(chance, lexicon.get(key) ?? ['']));
  },
  (seat, _, { chance }) => {
    if (
      ['name', 'notes', 'order', 'buckle', 'body', 'accent', 'phone', 'email', 'shop', 'id'].includes(
        seat.key,
      )
    )
      put(seat, strangeText(chance));
  },
  (seat) => {
    drop(seat);
  },
];

const rough: readonly Change[] = [
  (seat, _, { chance }) => {
    put(seat, strangeText(chance));
  },
  (seat, seats, { chance }) => {
    const other = pick(chance, seats);
    const [mine, theirs] = [structuredClone(at(seat)), structuredClone(at(other))];
    put(seat, theirs);
    put(other, mine);
  },
  (seat, _, { chance }) => {
    put(
      { around: seat.around, key: Array.isArray(seat.around) ? '0' : misspelled(seat.key, chance) },
      at(seat),
    );
    if (happens(chance, 0.5)) drop(seat);
  },
  (seat, _, { chance }) => {
    const value = at(seat);
    if (typeof value === 'string') put(seat, misspelled(value, chance));
  },
  (seat, _, { chance }) => {
    put(
      seat,
      pick<Said>(chance, [[at(seat)], [], {}, { [seat.key]: at(seat) }, [at(seat), at(seat)], [[at(seat)]]]),
    );
  },
  (seat, _, { chance }) => {
    let deep = at(seat);
    for (let depth = whole(chance, 1, 40); depth > 0; depth -= 1)
      deep = happens(chance, 0.5) ? [deep] : { a: deep };
    put(seat, deep);
  },
  (seat, _, { chance }) => {
    const value = at(seat);
    if (Array.isArray(value))
      put(
        seat,
        Array.from({ length: whole(chance, 2, 200) }, () => structuredClone(value[0] ?? '')),
      );
  },
];

/** One to four changes, mild or rough. */
export function changed(said: Said, chance: Random, lexicon: Lexicon): Said {
  const root: Said_ = { root: structuredClone(said) };
  const kinds = happens(chance, 0.6) ? mild : rough;
  for (let times = whole(chance, 1, 4); times > 0; times -= 1) {
    const seats = seatsIn(root).slice(1);
    if (seats.length === 0) break;
    pick(chance, kinds)(pick(chance, seats), seats, { chance, lexicon });
  }
  return root['root'] ?? '';
}
