/** Checks a tree against a schema and locates every fault. */
import type * as z from 'zod/mini';
import { nearestWord } from '../units/nearest.ts';
import { didYouMean } from './leaves.ts';
import { noSpaceHint } from '../yaml/layout.ts';
import { mostProblems, type Loaded } from '../yaml/load.ts';
import { pathText, shown, type Problem } from '../yaml/problem.ts';
import { keyPlaces, type KeyPlace } from './schema-keys.ts';
import { elsewhereOther, sensedKey } from './near-in-sense.ts';
import { describe, treeAt, type Tree } from '../yaml/tree.ts';

type Issue = z.core.$ZodIssue;
type Path = readonly PropertyKey[];

export interface Checker<T> {
  schema: z.ZodMiniType<T>;
  places: readonly KeyPlace[];
  /** Where a near word would mislead. */
  instead?: Readonly<Record<string, string>>;
}

/** Prepares a schema for `check`. */
export function checker<T>(schema: z.ZodMiniType<T>, instead: Checker<T>['instead'] = {}): Checker<T> {
  return { schema, instead, places: keyPlaces(schema) };
}

/** All problems, YAML's included. */
export function check<T>(loaded: Loaded, checker: Checker<T>): { value?: T; problems: Problem[] } {
  if (loaded.tree === undefined) return { problems: loaded.problems };
  const result = checker.schema.safeParse(loaded.tree);
  if (result.success) return { value: result.data, problems: loaded.problems };
  const own = result.error.issues
    .flatMap((issue) => flatten(issue, []))
    .flatMap((issue) => problemsOf(loaded, issue, checker))
    .filter((problem) => !isSettled(loaded.settled, problem.path));
  return { problems: [...loaded.problems, ...own] };
}

/** By place, cut to what people read. */
export function inOrder(problems: readonly Problem[]): Problem[] {
  const sorted = problems.toSorted((a, b) => a.line - b.line || a.column - b.column);
  if (sorted.length <= mostProblems) return sorted;
  const kept = sorted.slice(0, mostProblems);
  const next = sorted[mostProblems];
  if (next === undefined) return kept;
  return [...kept, { ...next, expected: `${next.expected}; more problems are not listed` }];
}

/** Of a union, report the branch for this kind (text, list, block). */
function flatten(issue: Issue, base: Path): Issue[] {
  const path = [...base, ...issue.path];
  if (issue.code !== 'invalid_union') return [{ ...issue, path }];
  const branch = issue.errors.find(
    (errors) => !errors.some((inner) => inner.path.length === 0 && inner.code === 'invalid_type'),
  );
  if (branch !== undefined) return branch.flatMap((inner) => flatten(inner, path));
  return [{ code: 'custom', input: issue.input, message: issue.message, path }];
}

type Keys = Pick<Checker<unknown>, 'places' | 'instead'>;

function problemsOf(loaded: Loaded, issue: Issue, keys: Keys): Problem[] {
  if (issue.code === 'unrecognized_keys') {
    return issue.keys.slice(0, mostProblems).map((key) => unknownKey(loaded, [...issue.path, key], keys));
  }
  const tree = treeAt(loaded.tree, issue.path);
  const found = describe(tree);
  const hint =
    issue.code === 'custom' ? (issue.params?.['hint'] as string | undefined) : blockHint(issue, tree);
  const fault = { path: pathText(issue.path), expected: issue.message, hint };
  return [loaded.locate({ ...fault, found: found === undefined ? undefined : shown(found) }, issue.path)];
}

/** "height:15 hh" is text where a block belongs. */
function blockHint(issue: Issue, tree: Tree | undefined): string | undefined {
  const wantsBlock = issue.code === 'invalid_type' && issue.expected === 'object';
  return wantsBlock && typeof tree === 'string' ? noSpaceHint(tree) : undefined;
}

function unknownKey(loaded: Loaded, path: Path, { places, instead = {} }: Keys): Problem {
  const key = String(path.at(-1));
  const parent = path
    .slice(0, -1)
    .filter((step) => typeof step === 'string')
    .join('.');
  const allowed = places.filter((place) => place.path === parent).flatMap((place) => place.keys);
  const many = allowed.length > 20;
  const own = parent === '' ? key : `${parent}.${key}`;
  const where = parent === '' ? 'at the top' : `of ${parent}`;
  const expected = many ? `a key ${where}` : `a key ${where}: ${allowed.join(', ')}`;
  const fault = {
    path: pathText(path),
    found: shown(key),
    expected,
    hint: Object.hasOwn(instead, own) ? instead[own] : keyHint(key, { parent, allowed, places }),
  };
  return loaded.locate(fault, path, 'key');
}

interface Around {
  parent: string;
  allowed: readonly string[];
  places: readonly KeyPlace[];
}

function keyHint(key: string, { parent, allowed, places }: Around): string | undefined {
  const path = `${parent}.${key}`;
  if (Object.hasOwn(elsewhereOther, path)) return elsewhereOther[path];
  const meant = sensedKey(key, parent, allowed);
  if (meant !== undefined) return didYouMean(meant);
  const elsewhere = places.find((place) => place.path !== parent && place.keys.includes(key));
  const near = nearestWord(key, allowed);
  // An exact key elsewhere beats a similar one here.
  if (elsewhere !== undefined)
    return elsewhere.path === '' ? 'it belongs at the top' : `it belongs under ${elsewhere.path}`;
  if (near !== undefined) return didYouMean(near);
  for (const place of places) {
    const other = nearestWord(key, place.keys);
    if (other !== undefined) return didYouMean(place.path === '' ? other : `${place.path}.${other}`);
  }
  return undefined;
}

function isSettled(settled: ReadonlySet<string>, path: string): boolean {
  for (const done of settled) {
    if (path === done || (path.startsWith(done) && /^[.[]/.test(path.slice(done.length)))) return true;
  }
  return false;
}
