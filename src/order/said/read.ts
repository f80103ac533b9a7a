/** Splits a spoken line by the longest known phrases, without guessing. */
import { nearestWord } from '../../units/nearest.ts';
import { didYouMean } from '../leaves.ts';
import { mostProblems } from '../../yaml/load.ts';
import type { Fault } from '../../yaml/problem.ts';
import { buckleFault, buckleOf, cinchStarts, readCinch, unownedFault, type CinchBlock } from './cinch.ts';
import { labelFault, lengthKeys, numberFault, readLength } from './lengths.ts';
import { tokensOf, type Token } from './tokens.ts';
import { readWord, wordKeys, type Part, type Reading } from './words.ts';

export interface Span {
  readonly start: number;
  readonly end: number;
}

export type SaidPart = Part & Span;
export type SaidFault = Fault & Span;

export interface Said {
  readonly parts: readonly SaidPart[];
  readonly faults: readonly SaidFault[];
}

interface State {
  readonly tokens: readonly Token[];
  readonly buckles: readonly string[];
  readonly parts: SaidPart[];
  readonly faults: SaidFault[];
  /** The cinch being described. */
  block: CinchBlock | undefined;
}

const longestPhrase = 8;
const names: Readonly<Record<string, readonly string[]>> = {
  for: ['customer', 'name'],
  named: ['horse', 'name'],
  called: ['horse', 'name'],
  order: ['order'],
};
/** Filler words. */
const fillers: ReadonlySet<string> = new Set(
  'a an and at cinch colt filly for gelding horse in is mare on please rig rigging saddle stallion stud the with'.split(
    ' ',
  ),
);

/** Path of a buckle without an owner. */
export const bareBuckle: readonly string[] = ['buckle'];

/** "another horse" drops what was known of the old one. */
export const another: readonly string[] = ['another'];
const anothers = /^(?:another|other|different) (horse|saddle)$/;

/** Never throws. */
export function readLine(line: string, buckles: readonly string[]): Said {
  const tokens = tokensOf(line);
  const state: State = { tokens, buckles, parts: [], faults: [], block: undefined };
  for (let at = 0; at < tokens.length && state.faults.length < mostProblems;) {
    if (tokens[at]?.clause !== tokens[at - 1]?.clause) state.block = undefined;
    at += readAt(state, at);
  }
  return state;
}

/** Returns how many words it took. */
function readAt(state: State, at: number): number {
  const start = startAt(state, at);
  if (start > 0) return start;
  const found = longestAt(state, at);
  if (found !== undefined) return take(state, at, found);
  const name = nameAt(state, at);
  if (name > 0) return name;
  const { text = '' } = state.tokens[at] ?? {};
  if (fillers.has(text)) return 1;
  return take(state, at, strangeAt(state, at));
}

interface Found {
  readonly reading: Reading;
  readonly count: number;
}

function take(state: State, at: number, { reading, count }: Found): number {
  const { start = 0 } = state.tokens[at] ?? {};
  const { end = 0 } = state.tokens[at + count - 1] ?? {};
  if ('fault' in reading) state.faults.push({ ...reading.fault, start, end });
  else {
    state.parts.push({ ...reading.part, start, end });
    if (reading.part.path[0] !== state.block) state.block = undefined;
  }
  return count;
}

/** Which cinch comes next; some part must follow. */
function startAt(state: State, at: number): number {
  const count = [2, 1].find((each) => Object.hasOwn(cinchStarts, phraseAt(state, at, each) ?? ''));
  const block = count === undefined ? undefined : cinchStarts[phraseAt(state, at, count) ?? ''];
  if (count === undefined || block === undefined) return 0;
  state.block = block;
  const skipped = state.tokens.slice(at + count).findIndex(({ text }) => !fillers.has(text));
  const next = longestAt(state, at + count + Math.max(0, skipped));
  const isTold = next !== undefined && ('fault' in next.reading || next.reading.part.path[0] === block);
  if (isTold) return count;
  const expected = 'the cinch right after it, such as straight 25';
  return take(state, at, { reading: { fault: { path: block, expected } }, count });
}

/** The longest phrase that says something, even vaguely. */
function longestAt(state: State, at: number): Found | undefined {
  for (let count = longestPhrase; count > 0; count -= 1) {
    const phrase = phraseAt(state, at, count);
    const next = state.tokens[at + count]?.text ?? '';
    const reading = phrase === undefined ? undefined : readPhrase(state, phrase, next);
    if (reading !== undefined) return { reading, count };
  }
  return undefined;
}

function readPhrase(state: State, phrase: string, next: string): Reading | undefined {
  const { block, buckles } = state;
  const other = anothers.exec(phrase)?.[1];
  if (other !== undefined) return { part: { path: another, text: other } };
  const cinch = block === undefined ? undefined : readCinch(phrase, block);
  if (cinch !== undefined) return cinch;
  const buckle = buckleOf(phrase, buckles);
  if (buckle !== undefined)
    return { part: { path: block === undefined ? bareBuckle : [block, 'buckle'], text: buckle } };
  const word = readWord(phrase);
  if (word !== undefined) return word;
  const length = isOfCinch(state, phrase, next) ? undefined : readLength(phrase);
  const unowned = block === undefined ? unownedFault(phrase) : undefined;
  return length ?? (unowned && { fault: unowned });
}

/** In "wants straight 25 room 4 in" the 25 is strands, not room. */
function isOfCinch({ block, parts }: State, phrase: string, next: string): boolean {
  const measured = /^[\d/ -]+ ?(in|inch|inches|cm|mm|")? /.exec(phrase);
  if (block === undefined || measured === null || !/^\d/.test(next)) return false;
  const key = measured[1] === undefined ? 'strands' : 'length';
  return !parts.some(({ path }) => path[0] === block && path[1] === key);
}

/** undefined across a comma or the end. */
function phraseAt({ tokens }: State, at: number, count: number): string | undefined {
  const [first, last] = [tokens[at], tokens[at + count - 1]];
  if (first === undefined || first.clause !== last?.clause) return undefined;
  return tokens
    .slice(at, at + count)
    .map(({ text }) => text)
    .join(' ');
}

/** Up to a comma or the next known word without a capital. */
function nameAt(state: State, at: number): number {
  const key = state.tokens[at]?.text ?? '';
  const path = Object.hasOwn(names, key) ? names[key] : undefined;
  if (path === undefined || phraseAt(state, at, 2) === undefined || isForSomething(state, at)) return 0;
  let count = 2;
  if (key !== 'order')
    while (phraseAt(state, at, count + 1) !== undefined && isName(state, at + count)) count += 1;
  const raw = state.tokens.slice(at + 1, at + count).map((token) => token.raw);
  return take(state, at, { reading: { part: { path, text: raw.join(' ') } }, count });
}

/** "for roping" and "for a pony" are no customers. */
function isForSomething(state: State, at: number): boolean {
  if (state.tokens[at]?.text !== 'for') return false;
  const reading = longestAt(state, at + 1)?.reading;
  const about = reading !== undefined && 'part' in reading ? reading.part.path[0] : undefined;
  return about === 'use' || about === 'horse' || fillers.has(state.tokens[at + 1]?.text ?? '');
}

function isName(state: State, at: number): boolean {
  const { raw = '', text = '' } = state.tokens[at] ?? {};
  if (/^\p{Lu}/u.test(raw)) return true;
  const starts = [1, 2].some((count) => Object.hasOwn(cinchStarts, phraseAt(state, at, count) ?? ''));
  const says = starts || Object.hasOwn(names, text) || fillers.has(text);
  return !says && !/^[\d.]/.test(text) && longestAt(state, at) === undefined;
}

const vocabulary: readonly string[] = [
  ...wordKeys.flatMap(({ words, sense, labels }) => [...words, ...Object.keys(sense ?? {}), ...labels]),
  ...lengthKeys.flatMap(({ labels }) => labels),
  ...Object.keys(cinchStarts),
  ...Object.keys(names),
  'another',
];

/** When the meaning is unclear. */
export const anyWord = 'a word of an order, such as 15.2 hh, 7/8, round, trail';

/** Reports what nothing reads. */
function strangeAt(state: State, at: number): Found {
  for (let count = 5; count > 0; count -= 1) {
    const phrase = phraseAt(state, at, count) ?? '';
    const fault = numberFault(phrase) ?? buckleFault(phrase, state.buckles) ?? labelFault(phrase);
    if (fault !== undefined) return { reading: { fault }, count };
  }
  const text = state.tokens[at]?.text ?? '';
  const near = nearestWord(text, vocabulary)?.replaceAll('-', ' ');
  const half = near === text ? `${text} with its answer` : undefined;
  const expected = half ?? anyWord;
  const hint = half === undefined ? didYouMean(near) : undefined;
  return { reading: { fault: { path: '', expected, hint } }, count: 1 };
}
