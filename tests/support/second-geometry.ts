/** Gaps between cinch and elbow computed a second way, and how often chance leaves enough. */
import { Point, Segment } from '@flatten-js/core';
import {
  asTold,
  sideOf,
  usualGirth,
  xAt,
  type Chance,
  type Line,
  type Place,
  type PlainCinch,
  type PlainHorse,
  type Side,
} from './second-lines.ts';

export type { PlainCinch, PlainHorse } from './second-lines.ts';

/** Inches to the elbow line; below 0 they overlap. */
export interface Gaps {
  readonly skin: number;
  readonly muscle: number;
  readonly frame: number;
}

/** Least distance of lines that do not cross. */
type Least = (one: Line, other: Line) => number;

/** The most a line is forward of the elbow line; below 0 when behind. */
function overlapOf(line: Line, elbow: Line): number {
  const low = Math.max(line[0]!.s, elbow[0]!.s);
  const high = Math.min(line.at(-1)!.s, elbow.at(-1)!.s);
  // Straight lines: the most is at a corner or an end.
  let most = -Infinity;
  const compare = (s: number): void => {
    if (s >= low && s <= high) most = Math.max(most, xAt(line, s) - xAt(elbow, s));
  };
  for (const { s } of line) compare(s);
  for (const { s } of elbow) compare(s);
  return most;
}

function gapOf(front: readonly Line[], elbow: Line, least: Least): number {
  const overlap = Math.max(...front.map((line) => overlapOf(line, elbow)));
  return overlap > 0 ? -overlap : Math.min(...front.map((line) => least(line, elbow)));
}

const gapsOf = ({ elbow, skin, cordsAbove, frame }: Side, least: Least): Gaps => ({
  skin: gapOf([skin], elbow, least),
  muscle: gapOf(cordsAbove === undefined ? [frame] : [frame, cordsAbove], elbow, least),
  frame: gapOf([frame], elbow, least),
});

const segmentsOf = (line: Line): Segment[] =>
  line.slice(1).map((to, i) => new Segment(new Point(line[i]!.x, line[i]!.s), new Point(to.x, to.s)));

function leastByLibrary(one: Line, other: Line): number {
  const others = segmentsOf(other);
  return Math.min(...segmentsOf(one).flatMap((a) => others.map((b) => a.distanceTo(b)[0])));
}

function squareToPiece(place: Place, from: Place, to: Place): number {
  const [dx, ds] = [to.x - from.x, to.s - from.s];
  const along = ((place.x - from.x) * dx + (place.s - from.s) * ds) / (dx * dx + ds * ds);
  const held = Math.min(1, Math.max(0, along));
  return (place.x - from.x - held * dx) ** 2 + (place.s - from.s - held * ds) ** 2;
}

/** From corners to pieces; loops, because every draw runs this. */
function leastSquare(corners: Line, pieces: Line): number {
  let least = Infinity;
  for (const corner of corners)
    for (let i = 1; i < pieces.length; i += 1)
      least = Math.min(least, squareToPiece(corner, pieces[i - 1]!, pieces[i]!));
  return least;
}

/** Lines that do not cross are nearest at a corner or an end. */
const leastByHand: Least = (one, other) =>
  Math.sqrt(Math.min(leastSquare(one, other), leastSquare(other, one)));

/** By the library. */
export function secondGeometry(horse: PlainHorse, cinch: PlainCinch): Gaps {
  return gapsOf(sideOf(horse, cinch, asTold), leastByLibrary);
}

/** By hand, fast enough for many draws. */
export function gapsByHand(horse: PlainHorse, cinch: PlainCinch, chance = asTold): Gaps {
  return gapsOf(sideOf(horse, cinch, chance), leastByHand);
}

/** Whether both fronts keep their distance, by the horse as told, not as drawn. */
export function clears(horse: PlainHorse, cinch: PlainCinch, chance: Chance): boolean {
  const { skin, muscle } = gapsByHand(horse, cinch, chance);
  return skin >= horse.girth / usualGirth && muscle >= 0;
}

/** Uniform, strictly between 0 and 1: the generator mulberry32. */
function evenly(seed: number): () => number {
  let state = seed | 0;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed);
    return (((mixed ^ (mixed >>> 14)) >>> 0) + 0.5) / 2 ** 32;
  };
}

/** Two standard normals, after Box and Muller. */
function normalPair(next: () => number): [number, number] {
  const radius = Math.sqrt(-2 * Math.log(next()));
  const angle = 2 * Math.PI * next();
  return [radius * Math.cos(angle), radius * Math.sin(angle)];
}

function drawChance(next: () => number, times: number): Chance {
  const pair = (): [number, number] => {
    const [a, b] = normalPair(next);
    return [a * times, b * times];
  };
  const [girth, elbow] = pair();
  const [setBack, ringPlace] = pair();
  const [ringStation, push] = pair();
  const [strand, opening] = pair();
  return { girth, elbow, setBack, ringPlace, ringStation, push, strand, opening };
}

export interface Draws {
  readonly draws: number;
  readonly seed: number;
  /** Multiplies all standard deviations; 1 by default. */
  readonly spreadTimes?: number;
}

/** Share of drawn horses it clears; a seed draws the same chances for every horse. */
export function shareThatClears(horse: PlainHorse, cinch: PlainCinch, how: Draws): number {
  const { draws, seed, spreadTimes = 1 } = how;
  const next = evenly(seed);
  let clear = 0;
  for (let i = 0; i < draws; i += 1) if (clears(horse, cinch, drawChance(next, spreadTimes))) clear += 1;
  return clear / draws;
}
