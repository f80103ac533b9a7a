/** Checks across a shop file: reversed ranges, repeated names, crossed limits. */
import { defaultModel, modelNumbers, type ModelKey } from '../numbers/numbers.ts';
import { upTo } from '../units/pick.ts';
import type { Loaded } from '../yaml/load.ts';
import { pathText, type Problem } from '../yaml/problem.ts';
import { countAt, empty, numberAt, textAt, usedTwice, type Path } from './shop-tree.ts';
import { acrossTrade } from './trade-plausible.ts';
import { treeAt } from '../yaml/tree.ts';

/** Must not fall along a line; defaults count. */
const rising: readonly (readonly ModelKey[])[] = [
  ['chance-acceptable', 'chance-good'],
  ['floor-clearance', 'required-clearance'],
  ['run-least', 'run-low', 'run-target', 'run-high', 'run-most'],
  ['buckle-above-elbow-floor', 'buckle-above-elbow-target'],
  ['slant-fine', 'slant-mention', 'slant-warn'],
  ['armpit-station', 'elbow-station'],
  ['ratio-slab-sided', 'ratio-average', 'ratio-round'],
  ['pinch-pitch', 'strand-pitch'],
];

/** From the tree: one wrong leaf hides nothing. */
export function acrossShop(loaded: Loaded): Problem[] {
  const buckles = countAt(loaded, 'buckles');
  const cords = countAt(loaded, 'cord');
  return [
    ...upsideDown(loaded, ['strands']),
    ...upsideDown(loaded, ['lengths']),
    ...empty(loaded, ['buckles']),
    ...empty(loaded, ['cord']),
    ...upTo(buckles).flatMap((index) => buckleFaults(loaded, index)),
    ...usedTwice(
      loaded,
      upTo(buckles).map((index) => [['buckles', index, 'id']]),
    ),
    ...usedTwice(
      loaded,
      upTo(cords).map((index) => [
        ['cord', index, 'color'],
        ['cord', index, 'ply'],
      ]),
    ),
    ...acrossTrade(loaded),
    ...rising.flatMap((keys) => falling(loaded, keys)),
    ...learnedFaults(loaded),
  ];
}

/** A learned number must be set and in its interval. */
function learnedFaults(loaded: Loaded): Problem[] {
  const learned = treeAt(loaded.tree, ['learned']);
  if (typeof learned !== 'object' || Array.isArray(learned)) return [];
  return Object.keys(learned).flatMap((key) => {
    const path = ['learned', key];
    if (!Object.hasOwn(defaultModel, key)) return []; // already reported
    if (treeAt(loaded.tree, ['model', key]) === undefined) {
      const expected = `${key} under model too: only a number set there can be learned`;
      return [loaded.locate({ path: pathText(path), found: key, expected }, path, 'key')];
    }
    const value = numberAt(loaded, ['model', key]);
    const [low, high] = [numberAt(loaded, [...path, 'low']), numberAt(loaded, [...path, 'high'])];
    if (value === undefined || (value >= (low ?? value) && value <= (high ?? value))) return [];
    const expected = `an interval that contains the number under model (${textAt(loaded, ['model', key]) ?? ''})`;
    const end = value < (low ?? value) ? 'low' : 'high';
    const at = [...path, end];
    return [loaded.locate({ path: pathText(at), found: textAt(loaded, at), expected }, at)];
  });
}

function upsideDown(loaded: Loaded, path: Path): Problem[] {
  const [min, max] = [numberAt(loaded, [...path, 'min']), numberAt(loaded, [...path, 'max'])];
  if (min === undefined || max === undefined || min <= max) return [];
  const fault = { path: pathText([...path, 'max']), found: textAt(loaded, [...path, 'max']) };
  return [
    loaded.locate({ ...fault, expected: `max at least min (${String(textAt(loaded, [...path, 'min']))})` }, [
      ...path,
      'max',
    ]),
  ];
}

function buckleFaults(loaded: Loaded, index: number): Problem[] {
  const path = ['buckles', index];
  const layers = ['single', 'double'].filter(
    (layer) =>
      treeAt(loaded.tree, [...path, layer]) !== undefined || loaded.settled.has(pathText([...path, layer])),
  );
  const expected = 'single or double: a buckle takes strands in at least one of the two';
  const isBuckle = treeAt(loaded.tree, [...path, 'bar']) !== undefined;
  const none =
    layers.length === 0 && isBuckle ? [loaded.locate({ path: pathText(path), expected }, path)] : [];
  const wider = frameFaults(loaded, path);
  return [...none, ...wider, ...layers.flatMap((layer) => upsideDown(loaded, [...path, layer]))];
}

function frameFaults(loaded: Loaded, path: Path): Problem[] {
  const framePath = [...path, 'frame-width'];
  const [bar, frame] = [numberAt(loaded, [...path, 'bar']), numberAt(loaded, framePath)];
  if (bar === undefined || frame === undefined || frame >= bar) return [];
  const expected = 'a frame at least as wide as its bar';
  return [
    loaded.locate({ path: pathText(framePath), found: textAt(loaded, framePath), expected }, framePath),
  ];
}

function falling(loaded: Loaded, keys: readonly ModelKey[]): Problem[] {
  return keys.slice(1).flatMap((high, index) => {
    const low = keys[index] ?? high;
    const set = [high, low].find((key) => textAt(loaded, ['model', key]) !== undefined);
    const [below, above] = [modelAt(loaded, low), modelAt(loaded, high)];
    if (set === undefined || below === undefined || above === undefined || below <= above) return [];
    const path = ['model', set];
    const other =
      set === high ? `at least ${low} (${plain(low, below)})` : `at most ${high} (${plain(high, above)})`;
    return [
      loaded.locate({ path: pathText(path), found: textAt(loaded, path), expected: `${set} ${other}` }, path),
    ];
  });
}

const plain = (key: ModelKey, value: number): string =>
  modelNumbers[key].unit.startsWith('in') && modelNumbers[key].unit !== 'in/in'
    ? `${String(value)} in`
    : String(value);

/** Or its default; undefined when unreadable. */
function modelAt(loaded: Loaded, key: ModelKey): number | undefined {
  const path = ['model', key];
  return treeAt(loaded.tree, path) === undefined ? defaultModel[key] : numberAt(loaded, path);
}
