/** `ask` for scripts: one result an order in input order, questions that must be answered before cutting first, then most worth first. */
import type { Worth } from '../advice/ask.ts';
import type { Mean } from '../math/worth.ts';
import { askingNumbers } from '../numbers/asking-numbers.ts';
import type { Asked, AskedOrder } from '../words/about-ask.ts';
import { questionWords } from '../words/ask-words.ts';
import { jsonText, rounded, roundedChance } from '../pages/json.ts';
import { failedValue, remarksValue } from './size-json.ts';

/** Whole document: `{ schema, worthAsking, results }`. */
export const askJson = (results: readonly AskedOrder[]): string =>
  jsonText({
    schema: 'cinchwright/ask/1',
    worthAsking: {
      gain: askingNumbers['worth-gain'].value,
      changes: askingNumbers['worth-change'].value,
    },
    results: results.map((result) => (result.ok ? valueOf(result) : failedValue(result))),
  });

function valueOf({ file, result, toAsk, photo }: Asked): Record<string, unknown> {
  const { advice, now, worths, drawing } = result;
  const { order, customer, horse } = advice.facts.order;
  const first = advice.specs[0]?.candidate;
  return {
    order,
    file,
    customer: {
      name: customer?.name ?? null,
      phone: customer?.phone ?? null,
      email: customer?.email ?? null,
    },
    horse: horse.name ?? null,
    first:
      first === undefined
        ? null
        : { style: first.style, strands: first.strands, length: first.length, buckle: first.buckle.id },
    now:
      now === undefined
        ? null
        : {
            clears: rounded(now.clears),
            reaches: rounded(now.reaches),
            both: rounded(now.both),
          },
    ...remarksValue(advice),
    draws: 2 * drawing.strata,
    seed: drawing.seed,
    questions: worths.map((worth) => questionValue(worth, toAsk.includes(worth), worth === photo)),
  };
}

function questionValue(worth: Worth, asked: boolean, instead: boolean): Record<string, unknown> {
  const { name, instead: then, beforeCutting } = worth;
  const { asked: what, how, safely } = questionWords[name];
  return {
    input: name,
    ask: asked ? 'ask' : instead ? 'instead' : 'leave',
    beforeCutting,
    gain: meanValue(worth.gain),
    followed: meanValue(worth.followed),
    changes: meanValue(worth.changes),
    wider: meanValue(worth.wider),
    then: then === undefined ? null : { ...then, chance: roundedChance(then.chance) },
    what,
    how,
    safely,
  };
}

const meanValue = ({ mean, error }: Mean): Record<string, unknown> => ({
  mean: rounded(mean),
  error: rounded(error),
});
