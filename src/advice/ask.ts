/** What each question is worth: what its answer changes or makes surer. */
import { adviceOn, type Advice } from './advice.ts';
import { checkCinch } from './check.ts';
import type { Shop } from '../order/types.ts';
import { factsOf, type Facts } from '../horse/facts.ts';
import type { Candidate } from '../cinch/candidate.ts';
import { normalInverse } from '../math/normal.ts';
import { seededRandom } from '../math/random.ts';
import { fullMean, gainOver, pairedMean, type Mean } from '../math/worth.ts';
import { askingNumbers } from '../numbers/asking-numbers.ts';
import {
  answeredByPhoto,
  barrelAnswers,
  questionNames,
  questions,
  type Question,
  type QuestionName,
} from './questions.ts';
import { oddsOf, oddsTold, type Odds } from './odds.ts';
import { askedOf, drawOf, type Read } from './unknowns.ts';

export interface Drawing {
  /** Two draws each. */
  readonly strata: number;
  readonly seed: number;
}

export const usualDrawing: Drawing = { strata: askingNumbers.strata.value, seed: 1 };

export interface Worth {
  readonly name: QuestionName;
  /** Chance that the first spec changes, or whether the wish passes. */
  readonly changes: Mean;
  /** In the chance to clear and reach; never negative, since the shop may ignore the answer. */
  readonly gain: Mean;
  /** Gain if the new first is always tied; may be negative. */
  readonly followed: Mean;
  /** Chance of a wider first. */
  readonly wider: Mean;
  /** The most frequent other first. */
  readonly instead:
    | {
        readonly style: Candidate['style'];
        readonly strands: number;
        readonly length: number;
        readonly chance: number;
      }
    | undefined;
  /** Needed before cutting, whatever its worth. */
  readonly beforeCutting: boolean;
  readonly worthAsking: boolean;
}

export interface AskResult {
  readonly advice: Advice;
  /** For today's first; undefined when nothing passes. */
  readonly now: Odds | undefined;
  /** Open questions: before cutting first, then by worth. */
  readonly worths: readonly Worth[];
  readonly drawing: Drawing;
}

/** The same seed gives the same result. */
export function askAbout(advice: Advice, drawing: Drawing = usualDrawing): AskResult {
  const { facts } = advice;
  const first = advice.specs[0]?.candidate;
  const scene = { advice, first, before: verdictOf(advice) };
  const worths = questions
    .filter((question) => question.open(facts))
    .map((question) => worthOfAsking(question, scene, drawing));
  const now = first === undefined ? undefined : oddsTold(first, facts);
  return { advice, now, worths: worths.sort(byWorth), drawing };
}

/** Before cutting, then gain in whole percent (less is noise), then changes. */
function byWorth(a: Worth, b: Worth): number {
  const percent = ({ mean }: Mean): number => Math.round(100 * mean);
  return (
    Number(b.beforeCutting) - Number(a.beforeCutting) ||
    percent(b.gain) - percent(a.gain) ||
    percent(b.changes) - percent(a.changes) ||
    questionNames.indexOf(a.name) - questionNames.indexOf(b.name)
  );
}

interface Before {
  readonly advice: Advice;
  readonly first: Candidate | undefined;
  readonly before: string;
}

interface Effect {
  readonly changed: number;
  readonly gain: number;
  readonly followed: number;
  readonly wider: number;
  readonly first: Candidate | undefined;
}

function worthOfAsking(question: Question, scene: Before, drawing: Drawing): Worth {
  const { name } = question;
  const byWord = name === 'barrel shape';
  const { chances, outcomes } = byWord ? everyWord(scene) : drawn(question, scene, drawing);
  const mean = (of: (outcome: Effect) => number): Mean => {
    const values = outcomes.map(of);
    return byWord ? fullMean(chances, values) : pairedMean(values);
  };
  const changes = mean(({ changed }) => changed);
  const gain = mean(({ gain: own }) => own);
  const beforeCutting = name === 'ring to ring';
  return {
    name,
    changes,
    gain,
    followed: mean(({ followed }) => followed),
    wider: mean(({ wider }) => wider),
    instead: mostOften(outcomes, chances, scene.first),
    beforeCutting,
    worthAsking:
      beforeCutting ||
      gain.mean >= askingNumbers['worth-gain'].value ||
      changes.mean >= askingNumbers['worth-change'].value,
  };
}

interface Effects {
  readonly chances: readonly number[];
  readonly outcomes: readonly Effect[];
}

/** All three barrel words. */
function everyWord(scene: Before): Effects {
  const { facts } = scene.advice;
  const answers = barrelAnswers(facts);
  return {
    chances: answers.map(({ chance }) => chance),
    outcomes: answers.map(({ word }) => {
      const order = { ...facts.order, horse: { ...facts.order.horse, barrel: word } };
      const read = { order, model: facts.model };
      return outcomeOf({ read, shop: facts.shop, believed: read }, scene);
    }),
  };
}

/** Each question has its own random stream, so others do not change it; the first reading is stratified. */
function drawn(question: Question, scene: Before, { strata, seed }: Drawing): Effects {
  const { order, model, shop: usual } = scene.advice.facts;
  const asked = askedOf(question.unknowns(scene.advice.facts), { order, model });
  const taken = question.weighed === true ? asked.believedModel : asked.readModel;
  const shop = { ...usual, model: taken };
  const random = seededRandom(seed, questionNames.indexOf(question.name));
  const outcomes: Effect[] = [];
  for (let i = 0; i < 2 * strata; i++) {
    const within = (Math.floor(i / 2) + random.uniform()) / strata;
    const normals = asked.unknowns.map((_, j) => (j === 0 ? normalInverse(within) : random.normal()));
    const { read, believed } = drawOf(asked, normals);
    outcomes.push(
      outcomeOf(
        {
          read: { order: question.weighed === true ? believed : read, model: taken },
          shop,
          believed: { order: believed, model: asked.believedModel },
        },
        scene,
      ),
    );
  }
  return { chances: outcomes.map(() => 1 / outcomes.length), outcomes };
}

interface Reading {
  readonly read: Read;
  readonly shop: Shop;
  readonly believed: Read;
}

/** Sizes by the reading, then compares both firsts by what is then believed. */
function outcomeOf({ read, shop, believed }: Reading, { first, before }: Before): Effect {
  const then = adviceOn(factsOf(read.order, read.model), shop);
  const next = then.specs[0]?.candidate;
  const facts = factsOf(believed.order, believed.model);
  const stay = chanceOf(first, facts);
  const go = sameTied(first, next) ? stay : chanceOf(next, facts);
  return {
    changed: verdictOf(then) === before ? 0 : 1,
    gain: gainOver([stay, go], 0),
    followed: go - stay,
    wider: next !== undefined && first !== undefined && next.width > first.width ? 1 : 0,
    first: next,
  };
}

/** No cinch clears nothing. */
const chanceOf = (tied: Candidate | undefined, facts: Facts): number =>
  tied === undefined ? 0 : oddsOf(tied, facts).both;

const keyOf = ({ style, strands, length, buckle }: Candidate): string =>
  `${style} ${String(strands)} ${String(length)} ${buckle.id}`;

/** The same on the bench, start of a low flare included. */
const sameTied = (a: Candidate | undefined, b: Candidate | undefined): boolean =>
  a !== undefined && b !== undefined && keyOf(a) === keyOf(b) && a.shape.pinchedFrom === b.shape.pinchedFrom;

/** First spec, and whether the wish passes. */
function verdictOf(advice: Advice): string {
  const [first] = advice.specs;
  const { wants } = advice.facts.order;
  const wish = wants === undefined ? '' : String(checkCinch(wants, 'wants', advice).passes);
  return `${first === undefined ? 'nothing' : keyOf(first.candidate)} ${wish}`;
}

function mostOften(
  outcomes: readonly Effect[],
  chances: readonly number[],
  now: Candidate | undefined,
): Worth['instead'] {
  const byKey = new Map<string, { first: Candidate; chance: number }>();
  outcomes.forEach(({ first }, i) => {
    if (first === undefined) return;
    const key = keyOf(first);
    if (now !== undefined && key === keyOf(now)) return;
    const known = byKey.get(key);
    byKey.set(key, { first: known?.first ?? first, chance: (known?.chance ?? 0) + (chances[i] ?? 0) });
  });
  const [most] = [...byKey.values()].sort((a, b) => b.chance - a.chance);
  if (most === undefined) return undefined;
  const { style, strands, length } = most.first;
  return { style, strands, length, chance: most.chance };
}

/** Worth asking; a photo replaces what it shows. */
export function toAsk({ worths }: AskResult): { questions: readonly Worth[]; photo: Worth | undefined } {
  const worth = worths.filter(({ worthAsking }) => worthAsking);
  const photo = worth.find(({ name }) => name === 'side photo');
  const others = worth.filter((each) => each !== photo);
  const replaced = others.some(({ name }) => answeredByPhoto.includes(name));
  // A photo that replaces nothing is a question itself.
  return replaced || photo === undefined
    ? { questions: others, photo }
    : { questions: worth, photo: undefined };
}
