/** Reads a spoken order or change, checked like a file. */
import { Lines } from '../../yaml/lines.ts';
import { mostProblems, type Loaded } from '../../yaml/load.ts';
import { pathText, shown, type Fault, type Problem } from '../../yaml/problem.ts';
import { readLoaded, type OrderRead } from '../read-orders.ts';
import { strangeSign, strangeWords } from '../../yaml/syntax.ts';
import { describe, isBlock, treeAt, type Block, type Tree } from '../../yaml/tree.ts';
import {
  another,
  anyWord,
  bareBuckle,
  readLine,
  type Said,
  type SaidFault,
  type SaidPart,
  type Span,
} from './read.ts';

export interface SaidLine {
  readonly line: string;
  /** As problems name it. */
  readonly file: string;
  /** Names in the shop. */
  readonly buckles: readonly string[];
}

/** Longer than anyone types. */
const mostSaid = 2000;
/** For an order without a number. */
const unnamed = 'said';
/** Where a buckle without an owner goes. */
const wantedBuckle = ['wants', ...bareBuckle];

/** As a document. */
export function loadSaid(said: SaidLine): Loaded {
  const { parts, faults } = readSafely(said);
  const tree: Block = { order: unnamed, horse: {}, saddle: {} };
  const placed = putAll(
    parts.map((part) => (part.path === bareBuckle ? { ...part, path: wantedBuckle } : part)),
    tree,
  );
  const told = [...faults, ...placed.faults];
  // A misunderstood word may be the missing one: report only the word.
  const lacking = told.length === 0 ? [] : needed.filter((path) => treeAt(tree, path) === undefined);
  return loadedOf(said, tree, { ...placed, faults: told, settled: lacking.map(pathText) });
}

/** Buckles it may use; all when none is named. */
export type Changed = OrderRead & { readonly buckles: readonly string[] };

/** `base` with the changes. */
export function readChanged(base: Loaded, said: SaidLine): Changed {
  const { parts, faults } = readLineOf(said);
  const own = parts.filter(({ path }) => path !== bareBuckle && path !== another);
  const others = parts.flatMap(({ path, text }) => (path === another ? [text] : []));
  const { loaded } = onto(without(base.tree ?? {}, others), said, { parts: own, faults });
  const buckles = parts.flatMap(({ path, text }) => (path === bareBuckle ? [text] : []));
  return { ...readLoaded({ ...loaded, line: base.line }), buckles };
}

/** Goes when a horse or saddle is replaced, photo included. */
const goesWith: Readonly<Record<string, readonly (readonly string[])[]>> = {
  horse: [['horse'], ['current'], ['photo'], ['saddle', 'ring-to-ring'], ['saddle', 'ring-drop']],
  saddle: [['saddle'], ['photo']],
};

/** Keeps blocks, so only needed keys are missed. */
function without(tree: Tree, others: readonly string[]): Tree {
  const left = structuredClone(tree);
  for (const path of others.flatMap((other) => goesWith[other] ?? [])) {
    const block = treeAt(left, path.slice(0, -1));
    if (isBlock(block)) Reflect.deleteProperty(block, path.at(-1) ?? '');
  }
  return isBlock(left) ? { horse: {}, saddle: {}, ...left } : left;
}

export interface Answered {
  /** With the answer. */
  readonly tree: Block;
  /** As the order writes it. */
  readonly taken: readonly string[];
  readonly problems: readonly Problem[];
  /** Even if impossible. */
  readonly understood: boolean;
}

/** Order words, or text for one key. Missing keys are not reported. */
export function readAnswer(base: Tree, said: SaidLine, path?: readonly string[]): Answered {
  const { line } = said;
  const read = path === undefined ? readSafely(said) : textFor(path, line);
  const parts = read.parts.map((part) => (part.path === bareBuckle ? { ...part, path: wantedBuckle } : part));
  const { tree, loaded } = onto(base, said, { ...read, parts });
  const lacking = [['order'], ...needed].filter((each) => treeAt(tree, each) === undefined);
  const settled = new Set([...loaded.settled, ...lacking.map(pathText)]);
  const entry = readLoaded({ ...loaded, settled });
  return {
    tree,
    taken: parts.map(({ text }) => text),
    problems: entry.ok ? [] : entry.problems,
    understood: read.faults.length === 0,
  };
}

const textFor = (path: readonly string[], line: string): Said =>
  strangeIn(line) ?? { parts: [{ path, text: line, start: 0, end: line.length }], faults: [] };

function onto(base: Tree, said: SaidLine, { parts, faults }: Said): { tree: Block; loaded: Loaded } {
  // Another cinch replaces all of the old one, buckle included.
  const cinches = ['wants', 'current'].filter((block) => parts.some(({ path }) => path[0] === block));
  const kept = Object.entries(structuredClone(base)).filter(([key]) => !cinches.includes(key));
  const tree: Block = Object.fromEntries(kept);
  const placed = putAll(parts, tree);
  return { tree, loaded: loadedOf(said, tree, { ...placed, faults: [...faults, ...placed.faults] }) };
}

interface Placed {
  readonly places: readonly (Span & { readonly path: string; readonly text: string })[];
  readonly faults: readonly SaidFault[];
  /** Keys that may be missing. */
  readonly settled?: readonly string[];
}

/** Refuses "another horse", which is for --what-if. */
function readSafely(said: SaidLine): Said {
  const { parts, faults } = readLineOf(said);
  const strays = parts.filter(({ path }) => path === another);
  const expected = "the order's one horse and saddle";
  const hint = '"another" is for --what-if';
  return {
    parts: parts.filter(({ path }) => path !== another),
    faults: [...faults, ...strays.map(({ start, end }) => ({ path: '', expected, hint, start, end }))],
  };
}

function readLineOf({ line, buckles }: SaidLine): Said {
  const strange = strangeIn(line);
  if (strange !== undefined) return strange;
  const said = readLine(line, buckles);
  return said.parts.length + said.faults.length > 0 ? said : only({ expected: anyWord }, 0);
}

/** Refused unread; undefined for other lines. */
function strangeIn(line: string): Said | undefined {
  const strange = strangeSign.exec(line);
  if (strange !== null) return only(strangeWords(strange[0]), strange.index);
  if (line.length <= mostSaid) return undefined;
  return only({ expected: `at most ${String(mostSaid)} characters: put a longer order in a file` }, mostSaid);
}

const only = (fault: Omit<Fault, 'path'>, start: number): Said => ({
  parts: [],
  faults: [{ path: '', ...fault, start, end: start + 1 }],
});

/** A key said twice is a fault, but troubles add up. */
function putAll(parts: readonly SaidPart[], tree: Block): Placed {
  const places: Placed['places'][number][] = [];
  const faults: SaidFault[] = [];
  for (const { path, text, start, end } of parts) {
    const isList = path.at(-1) === 'trouble';
    // A set-back answers rigging, a depth answers barrel.
    const key = (isOneAnswer(path) ? path.slice(0, 2) : path).join('.');
    const earlier = isList
      ? undefined
      : places.find((place) => isWithin(place.path, key) || isWithin(key, place.path));
    const hint = `"${shown(earlier?.text ?? '')}" already says it`;
    if (earlier !== undefined) faults.push({ path: key, expected: 'each thing once', hint, start, end });
    else {
      put(tree, path, text);
      places.push({ path: isList ? `${key}[${String(troubles(tree).length - 1)}]` : key, text, start, end });
    }
  }
  return { places, faults };
}

const isWithin = (path: string, key: string): boolean => path === key || path.startsWith(`${key}.`);

const isOneAnswer = ([, key]: readonly string[]): boolean => key === 'rigging' || key === 'barrel';

const troubles = (tree: Block): Tree[] => [treeAt(tree, ['horse', 'trouble']) ?? []].flat();

function put(tree: Block, path: readonly string[], text: string): void {
  let here = tree;
  for (const step of path.slice(0, -1)) {
    const next = here[step];
    here = isBlock(next) ? next : (here[step] = {});
  }
  const key = path.at(-1) ?? '';
  here[key] = key === 'trouble' ? [...troubles(tree), text] : text;
}

const needed = [
  ['horse', 'height'],
  ['saddle', 'rigging'],
];

/** Places faults at the words that caused them. */
function loadedOf({ file, line }: SaidLine, tree: Tree, { places, faults, settled = [] }: Placed): Loaded {
  const lines = new Lines(line);
  const problem = ({ path, expected, ...fault }: Fault, { start, end }: Span): Problem => {
    const found = shown(line.slice(start, end).trim()) || fault.found;
    const said = found === undefined ? {} : { found };
    return { file, ...lines.at(start), path, ...said, expected, ...(fault.hint && { hint: fault.hint }) };
  };
  const spanOf = (path: string): Span | undefined =>
    places.find((place) => place.path === path) ?? places.find((place) => path.startsWith(`${place.path}.`));
  // File conflicts go to the first word, missing keys to the end.
  const [{ start: first } = { start: 0 }] = places;
  const elsewhere = ({ found }: Fault): number => (found === undefined ? line.length : first);
  return {
    file,
    document: undefined,
    tree,
    top: (key) => describe(treeAt(tree, [key])),
    line: 1,
    problems: faults.slice(0, mostProblems).map((fault) => problem(fault, fault)),
    settled: new Set([...faults.map(({ path }) => path), ...settled].filter((path) => path !== '')),
    locate: (fault, path) => {
      const at = elsewhere(fault);
      return problem(fault, spanOf(pathText(path)) ?? { start: at, end: at });
    },
  };
}
