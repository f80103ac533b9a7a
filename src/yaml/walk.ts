/** Turns the YAML package's nodes into trees; reports odd constructions. */
import {
  isAlias,
  isMap,
  isScalar,
  isSeq,
  type Alias,
  type Pair,
  type Scalar,
  type YAMLMap,
  type YAMLSeq,
} from 'yaml';
import { noSpaceHint } from './layout.ts';
import { pathText, shown, type Fault } from './problem.ts';
import { strangeSign, strangeWords } from './syntax.ts';
import type { Block, Spot, Tree } from './tree.ts';

/** More than any file needs; repeated aliases grow without limit. */
export const mostNodes = 20_000;

type Path = readonly PropertyKey[];

/** Offset in the chunk; `earlier` is a doubled key's first place. */
export type Placed = Fault & { offset: number; earlier?: number };

export interface Walk {
  faults: Placed[];
  /** Offsets in the chunk, by path. */
  spots: Map<string, Spot>;
  /** Paths already reported. */
  settled: Set<string>;
  anchors: Map<string, unknown>;
  open: Set<unknown>;
  nodes: number;
}

/** Starts empty. */
export function newWalk(): Walk {
  return { faults: [], spots: new Map(), settled: new Set(), anchors: new Map(), open: new Set(), nodes: 0 };
}

/** Whether aliases repeated too much. */
export function gaveUp(walk: Walk): boolean {
  return walk.nodes > mostNodes;
}

/** undefined when it was reported instead. */
export function walkNode(walk: Walk, node: unknown, path: Path): Tree | undefined {
  walk.nodes += 1;
  if (gaveUp(walk)) return tooMuch(walk, node, path);
  if (isAlias(node)) return walkAlias(walk, node, path);
  if (!isScalar(node) && !isMap(node) && !isSeq(node)) return undefined;
  if (node.tag !== undefined) {
    return report(walk, node, {
      path: pathText(path),
      expected: 'a plain value without a "!" tag',
      found: shown(node.tag.replace('tag:yaml.org,2002:', '!!')),
    });
  }
  if (node.anchor !== undefined) walk.anchors.set(node.anchor, node);
  if (isScalar(node)) return walkText(walk, node, path);
  walk.open.add(node);
  const tree = isMap(node) ? walkMap(walk, node, path) : walkSeq(walk, node, path);
  walk.open.delete(node);
  return tree;
}

function walkText(walk: Walk, node: Scalar, path: Path): Tree | undefined {
  const text = typeof node.value === 'string' ? node.value.trim() : '';
  if (node.type === 'PLAIN' && /^(?:~|null)$/i.test(text)) {
    const hint = 'if you mean the word itself, put it in quotes';
    return report(walk, node, {
      path: pathText(path),
      found: text,
      expected: 'a value: this one means empty',
      hint,
    });
  }
  if (text === '') {
    return report(walk, node, {
      path: pathText(path),
      found: 'nothing',
      expected: 'a value: it is empty',
    });
  }
  const strange = strangeSign.exec(text);
  if (strange === null) return text;
  return report(walk, node, { path: pathText(path), found: shown(text), ...strangeWords(strange[0]) });
}

function walkSeq(walk: Walk, node: YAMLSeq, path: Path): Tree {
  const list: Tree[] = [];
  node.items.forEach((item, index) => {
    const here = [...path, index];
    const at = offsetOf(item);
    walk.spots.set(pathText(here), { key: at, value: at });
    // Keeps later list places right.
    list.push(walkNode(walk, item, here) ?? '');
  });
  return list;
}

function walkMap(walk: Walk, node: YAMLMap, path: Path): Tree {
  const block = Object.create(null) as Block;
  for (const [at, pair] of node.items.entries()) {
    if (gaveUp(walk)) break;
    if (glued(walk, pair, path) || splitByComma(walk, { node, at, path })) continue;
    walkPair(walk, { pair, block, path });
  }
  return block;
}

function walkPair(walk: Walk, { pair, block, path }: { pair: Pair; block: Block; path: Path }): void {
  const key = readKey(walk, pair.key, path);
  if (key === undefined) return;
  const here = [...path, key];
  const text = pathText(here);
  const first = Object.hasOwn(block, key) || walk.settled.has(text) ? walk.spots.get(text) : undefined;
  if (first !== undefined) {
    const found = shown(key);
    walk.faults.push({
      path: text,
      found,
      expected: 'each key once',
      offset: offsetOf(pair.key),
      earlier: first.key,
    });
    walk.settled.add(text);
    return;
  }
  const at = offsetOf(pair.key);
  walk.spots.set(text, { key: at, value: offsetOf(pair.value, at) });
  if (pair.value === null) {
    report(walk, pair.key, { path: text, found: 'nothing', expected: 'a value: it is empty' });
    return;
  }
  const tree = walkNode(walk, pair.value, here);
  if (tree !== undefined) block[key] = tree;
}

/** In braces, "height:15 hh" is one key: report the missing space. */
function glued(walk: Walk, { key, value }: Pair, path: Path): boolean {
  const text = isScalar(key) && value === null ? String(key.value) : '';
  const hint = noSpaceHint(text);
  if (hint === undefined) return false;
  const fault = { path: pathText([...path, text.replace(/:.*/s, '')]), found: shown(text), hint };
  report(walk, key, { ...fault, expected: 'a space after the colon' });
  return true;
}

/** { elbow-room: 4,5 in } reads as "4" and a key "5 in": report one fault. */
function splitByComma(walk: Walk, { node, at, path }: { node: YAMLMap; at: number; path: Path }): boolean {
  const pair = node.items[at];
  if (node.flow !== true || pair === undefined) return false;
  if (isDecimals(pair) && isWhole(node.items[at - 1])) return true;
  const next = node.items[at + 1];
  if (next === undefined || !isWhole(pair) || !isDecimals(next)) return false;
  const [whole, decimals] = [String((pair.value as Scalar).value), String((next.key as Scalar).value)];
  const key = String((pair.key as Scalar).value);
  const hint = `use a point for decimals: write ${key}: ${whole}.${decimals}`;
  const fault = { path: pathText([...path, key]), found: shown(`${whole},${decimals}`), hint: shown(hint) };
  report(walk, pair.value, { ...fault, expected: 'one value: between braces a comma ends it' });
  return true;
}

const isWhole = (pair: Pair | undefined): boolean =>
  isScalar(pair?.key) && isScalar(pair.value) && /^\d{1,6}$/.test(String(pair.value.value));
const isDecimals = ({ key, value }: Pair): boolean =>
  value === null && isScalar(key) && /^\d{1,6}(?: ?[a-z"']+)?$/i.test(String(key.value));

/** undefined when it was reported. */
function readKey(walk: Walk, node: unknown, path: Path): string | undefined {
  const refuse = (found: string, expected: string): string | undefined => {
    walk.faults.push({ path: pathText(path), found, expected, offset: offsetOf(node) });
    return undefined;
  };
  if (!isScalar(node))
    return refuse(isAlias(node) ? 'an alias' : 'a list or block', 'a plain word as the key');
  const key = typeof node.value === 'string' ? node.value : '';
  if (key === '') return refuse('an empty key', 'a word before the colon');
  if (key === '<<') return refuse('<<', 'keys written out: blocks are not merged');
  // Would change the object itself.
  if (key === '__proto__') return refuse('__proto__', 'a key of the order or shop file');
  return key;
}

/** Uses our anchors: the package searches the document for every alias. */
function walkAlias(walk: Walk, node: Alias, path: Path): Tree | undefined {
  const target = walk.anchors.get(node.source);
  const where = { path: pathText(path), found: `*${shown(node.source)}` };
  if (target === undefined) {
    return report(walk, node, {
      ...where,
      expected: 'a value',
      hint: 'no value above is marked with & and this name; if it is text, put it in quotes',
    });
  }
  if (walk.open.has(target))
    return report(walk, node, { ...where, expected: 'a value that does not contain itself' });
  return walkNode(walk, target, path);
}

function tooMuch(walk: Walk, node: unknown, path: Path): Tree | undefined {
  if (walk.nodes > mostNodes + 1) return undefined;
  return report(walk, node, {
    // Nobody wrote the path the alias led to.
    path: pathText(path.slice(0, 1)),
    expected: `at most ${String(mostNodes)} values in a document`,
    hint: walk.anchors.size > 0 ? 'aliases (*) repeat too much' : undefined,
  });
}

function report(walk: Walk, node: unknown, fault: Fault): Tree | undefined {
  const spot = walk.spots.get(fault.path);
  const offset =
    fault.found === 'nothing' && spot !== undefined ? spot.key : offsetOf(node, spot?.value ?? 0);
  walk.faults.push({ ...fault, offset });
  walk.settled.add(fault.path);
  return undefined;
}

function offsetOf(node: unknown, otherwise = 0): number {
  const range = (node as { range?: readonly number[] | null } | null | undefined)?.range;
  return range?.[0] ?? otherwise;
}
