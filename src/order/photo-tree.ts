/** Reads photo landmarks, whatever else is wrong in the order. */
import { parseLength, type Inches } from '../units/length.ts';
import type { Across } from './across.ts';
import { within, type LengthRange } from './measure.ts';
import type { Pixel } from './photo-types.ts';
import { pathText, shown, type Problem } from '../yaml/problem.ts';
import { describe, treeAt, type Tree } from '../yaml/tree.ts';

export type Path = readonly (string | number)[];

export const photoPath: Path = ['photo'];
export const landmarks = ['ring', 'elbow', 'girth-groove', 'spine', 'underline', 'fork', 'cantle'] as const;
export type Landmark = (typeof landmarks)[number];

/** `path` is within the block. */
export function fault(loaded: Across, path: Path, words: { expected: string; hint?: string }): Problem {
  const full = [...photoPath, ...path];
  const text = pairText(treeAt(loaded.tree, full));
  return loaded.locate(
    { path: pathText(full), found: text === undefined ? undefined : shown(text), ...words },
    full,
  );
}

function pairText(tree: Tree | undefined): string | undefined {
  const isPair = Array.isArray(tree) && tree.every((entry) => typeof entry === 'string');
  return isPair ? `[${tree.join(', ')}]` : describe(tree);
}

/** undefined when missing or unreadable. */
export function pixelAt({ tree }: Across, path: Path): Pixel | undefined {
  return pixelIn(treeAt(tree, [...photoPath, ...path]));
}

/** From a list of two plain numbers. */
export function pixelIn(tree: Tree | undefined): Pixel | undefined {
  if (!Array.isArray(tree) || tree.length !== 2) return undefined;
  const [x, y] = tree.map((text) =>
    typeof text === 'string' && /^\d+(?:\.\d+)?$/.test(text) ? Number(text) : NaN,
  );
  return x === undefined || y === undefined || Number.isNaN(x + y) ? undefined : [x, y];
}

/** undefined outside its range. */
export function inchesAt({ tree }: Across, path: Path, range: LengthRange): Inches | undefined {
  const text = treeAt(tree, path);
  const read = typeof text === 'string' ? parseLength(text) : undefined;
  return read?.ok === true && within(read.inches, range) ? read.inches : undefined;
}
