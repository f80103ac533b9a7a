/** Looks into a shop's tree, so one wrong leaf hides nothing. */
import { parseLength } from '../units/length.ts';
import { parseNumber, toNumber } from '../units/number.ts';
import type { Loaded } from '../yaml/load.ts';
import { pathText, type Problem } from '../yaml/problem.ts';
import { treeAt } from '../yaml/tree.ts';

export type Path = readonly PropertyKey[];

/** 0 without a list. */
export function countAt(loaded: Loaded, key: string): number {
  const tree = treeAt(loaded.tree, [key]);
  return Array.isArray(tree) ? tree.length : 0;
}

/** Reports an empty list. */
export function empty(loaded: Loaded, path: Path): Problem[] {
  const tree = treeAt(loaded.tree, path);
  if (!Array.isArray(tree) || tree.length > 0) return [];
  const fault = { path: pathText(path), found: 'an empty list', expected: 'at least one entry' };
  return [loaded.locate(fault, path)];
}

/** Reports the later of two entries with the same texts. */
export function usedTwice(loaded: Loaded, entries: readonly (readonly Path[])[]): Problem[] {
  const first = new Map<string, Path>();
  return entries.flatMap((paths) => {
    const [path] = paths;
    const texts = paths.map((each) => textAt(loaded, each));
    if (path === undefined || texts.includes(undefined)) return [];
    const earlier = first.get(texts.join('\n'));
    if (earlier === undefined) {
      first.set(texts.join('\n'), path);
      return [];
    }
    const { line } = loaded.locate({ path: '', expected: '' }, earlier);
    const expected = `each ${String(path.at(-1))} once; this one is on line ${String(line)} already`;
    return [loaded.locate({ path: pathText(path), found: texts[0], expected }, path)];
  });
}

/** undefined when empty. */
export function textAt(loaded: Loaded, path: Path): string | undefined {
  const tree = treeAt(loaded.tree, path);
  return typeof tree === 'string' && tree !== '' ? tree : undefined;
}

/** A plain number, or a length in inches. */
export function numberAt(loaded: Loaded, path: Path): number | undefined {
  const text = textAt(loaded, path);
  if (text === undefined) return undefined;
  const length = parseLength(text);
  if (length.ok) return length.inches;
  const number = /^[\d.]+$/.test(text) ? parseNumber(text) : undefined;
  return number?.ok === true ? toNumber(number.exact) : undefined;
}
