/** Checks across keys: what an order needs, and contradictions. */
import { parseDay } from '../units/days.ts';
import { parseLength, unitOf, type Inches } from '../units/length.ts';
import { tidy } from '../units/number.ts';
import { barrelDepth, horseKeys } from './keys/horse.ts';
import { saddleKeys } from './keys/saddle.ts';
import { within, type LengthRange } from './measure.ts';
import type { Across } from './across.ts';
import { photoFaults } from './photo-plausible.ts';
import type { Problem } from '../yaml/problem.ts';
import { isBlock, treeAt } from '../yaml/tree.ts';

type Path = readonly string[];

const ranges = {
  height: horseKeys.height,
  heartGirth: horseKeys['heart-girth'],
  ringToRing: saddleKeys['ring-to-ring'],
  ringDrop: saddleKeys['ring-drop'],
  barrelDepth: barrelDepth.depth,
};

const girthPath = ['horse', 'heart-girth'];
const heightPath = ['horse', 'height'];
const ringPath = ['saddle', 'ring-to-ring'];
const depthPath = ['horse', 'barrel', 'depth'];
const dropPath = ['saddle', 'ring-drop'];

/** From the tree: one wrong leaf hides nothing. */
export function acrossKeys(loaded: Across): Problem[] {
  return [
    ...needsSize(loaded),
    ...ringAgainstGirth(loaded),
    ...dropAgainstGirth(loaded),
    ...depthAgainstGirth(loaded),
    ...dueAfterTaken(loaded),
    ...photoFaults(loaded),
  ];
}

function needsSize(loaded: Across): Problem[] {
  const horse = treeAt(loaded.tree, ['horse']);
  const said = [girthPath, heightPath].some(
    (path) => treeAt(loaded.tree, path) !== undefined || loaded.settled.has(path.join('.')),
  );
  if (!isBlock(horse) || said) return [];
  const expected = 'height or heart-girth: we need one to size the horse';
  return [loaded.locate({ path: 'horse', expected }, ['horse', 'height'])];
}

function ringAgainstGirth(loaded: Across): Problem[] {
  const girth = lengthAt(loaded, girthPath, ranges.heartGirth);
  const rings = lengthAt(loaded, ringPath, ranges.ringToRing);
  if (girth === undefined || rings === undefined || rings < girth) return [];
  const found = textAt(loaded, ringPath);
  const hint = `heart-girth is ${textAt(loaded, girthPath) ?? ''}; ring-to-ring runs only under the horse, from ring to ring`;
  const expected = 'ring-to-ring less than the heart girth';
  return [loaded.locate({ path: 'saddle.ring-to-ring', found, expected, hint }, ringPath)];
}

function dropAgainstGirth(loaded: Across): Problem[] {
  const girth = lengthAt(loaded, girthPath, ranges.heartGirth);
  const drop = lengthAt(loaded, dropPath, ranges.ringDrop);
  if (girth === undefined || drop === undefined || 2 * drop < girth) return [];
  const found = textAt(loaded, dropPath);
  const hint = `heart-girth is ${textAt(loaded, girthPath) ?? ''}; ring-drop runs from the spine down one side to the ring`;
  const expected = 'ring-drop less than half the heart girth';
  return [loaded.locate({ path: 'saddle.ring-drop', found, expected, hint }, dropPath)];
}

/** A tape around is at least twice the depth. */
function depthAgainstGirth(loaded: Across): Problem[] {
  const girth = lengthAt(loaded, girthPath, ranges.heartGirth);
  const depth = lengthAt(loaded, depthPath, ranges.barrelDepth);
  if (girth === undefined || depth === undefined || 2 * depth < girth) return [];
  const found = textAt(loaded, depthPath);
  const hint = `heart-girth is ${textAt(loaded, girthPath) ?? ''}; depth runs straight down, from spine to underline`;
  const expected = 'depth less than half the heart girth';
  return [loaded.locate({ path: 'horse.barrel.depth', found, expected, hint }, depthPath)];
}

function dueAfterTaken(loaded: Across): Problem[] {
  const taken = dayAt(loaded, 'taken');
  const due = dayAt(loaded, 'due');
  if (taken === undefined || due === undefined || due >= taken) return [];
  const expected = `a day on or after the day the order was taken (${taken})`;
  return [loaded.locate({ path: 'due', found: due, expected }, ['due'])];
}

/** Hints at a swap of height and heart girth. Beside another hint only when units match: "73 cm" with "15 hh" is a wrong unit. */
export function withSwapHint(loaded: Across, problem: Problem): Problem {
  if (problem.path !== 'horse.height' && problem.path !== 'horse.heart-girth') return problem;
  const height = lengthAt(loaded, heightPath);
  const girth = lengthAt(loaded, girthPath);
  if (height === undefined || girth === undefined) return problem;
  const swapped = within(girth, ranges.height) && within(height, ranges.heartGirth);
  const likelier = problem.hint === undefined || unitAt(loaded, heightPath) === unitAt(loaded, girthPath);
  return swapped && likelier ? { ...problem, hint: 'are height and heart-girth swapped?' } : problem;
}

function lengthAt(loaded: Across, path: Path, range?: LengthRange): Inches | undefined {
  const read = parseLength(textAt(loaded, path) ?? '');
  if (!read.ok) return undefined;
  return range === undefined || within(read.inches, range) ? read.inches : undefined;
}

function unitAt(loaded: Across, path: Path): string | undefined {
  const word = /([a-z]+|["'])\.?$/i.exec(tidy(textAt(loaded, path) ?? ''))?.[1]?.toLowerCase();
  return word === undefined ? undefined : (unitOf(word) ?? word);
}

function dayAt(loaded: Across, key: string): string | undefined {
  const text = textAt(loaded, [key]);
  return text !== undefined && parseDay(text).ok ? text : undefined;
}

function textAt(loaded: Across, path: Path): string | undefined {
  const tree = treeAt(loaded.tree, path);
  return typeof tree === 'string' ? tree : undefined;
}
