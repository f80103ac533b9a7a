/** `ask` for scripts: questions by need and value; as a table, one row per question. */
import type { Worth } from '../advice/ask.ts';
import type { Mean } from '../math/worth.ts';
import { askingNumbers } from '../numbers/asking-numbers.ts';
import { jsonText, rounded, roundedChance } from '../pages/json.ts';
import { byCustomer, nothingText, type Asked, type AskedOrder } from '../words/about-ask.ts';
import { questionWords } from '../words/ask-words.ts';
import type { Name } from '../words/names.ts';
import { failedRow, failedValue, remarksValue } from './shared-values.ts';
import { tableCsv, type Values } from './table.ts';

/** `{ schema, worthAsking, results }`. */
export const askJson = (results: readonly AskedOrder[]): string =>
  jsonText({
    schema: 'cinchwright/ask/1',
    worthAsking: {
      gain: askingNumbers['worth-gain'].value,
      changes: askingNumbers['worth-change'].value,
    },
    results: results.map((result) => (result.ok ? valueOf(result) : failedValue(result))),
  });

function valueOf(asked: Asked): Values {
  const { advice, now, drawing } = asked.result;
  const first = advice.specs[0]?.candidate;
  return {
    ...headValue(asked),
    first:
      first === undefined
        ? null
        : { style: first.style, strands: first.strands, length: first.length, buckle: first.buckle.id },
    now:
      now === undefined
        ? null
        : { clears: rounded(now.clears), reaches: rounded(now.reaches), both: rounded(now.both) },
    ...remarksValue(advice),
    draws: 2 * drawing.strata,
    seed: drawing.seed,
    questions: questionsOf(asked),
  };
}

function headValue({ file, result }: Asked): Values {
  const { order, customer, horse } = result.advice.facts.order;
  return {
    order,
    file,
    customer: customer?.name ?? null,
    phone: customer?.phone ?? null,
    email: customer?.email ?? null,
    horse: horse.name ?? null,
  };
}

const questionsOf = ({ result, toAsk, photo }: Asked): Values[] =>
  result.worths.map((worth, i) => ({
    rank: i + 1,
    input: worth.name,
    advice: toAsk.includes(worth) ? 'ask' : worth === photo ? 'instead' : 'leave',
    ...worthValue(worth),
  }));

function worthValue({ name, instead, beforeCutting, gain, followed, changes, wider }: Worth): Values {
  const { asked: question, how, safely } = questionWords[name];
  return {
    beforeCutting,
    gain: meanValue(gain),
    followed: meanValue(followed),
    changes: meanValue(changes),
    wider: meanValue(wider),
    then: instead === undefined ? null : { ...instead, chance: roundedChance(instead.chance) },
    question,
    how,
    safely,
  };
}

const meanValue = ({ mean, error }: Mean): Values => ({ mean: rounded(mean), standardError: rounded(error) });

export const askColumns: readonly Name[] = [
  'customer',
  'phone',
  'email',
  'order',
  'horse',
  'file',
  'rank',
  'input',
  'advice',
  'beforeCutting',
  'gain',
  'gainStandardError',
  'changes',
  'changesStandardError',
  'wider',
  'how',
  'safely',
  'reason',
  'problem',
];

/** By customer; an order without questions gets one row. */
export const askCsv = (results: readonly AskedOrder[]): string =>
  tableCsv(askColumns, [
    ...byCustomer(results).flatMap(({ orders }) => orders.flatMap(rowsOf)),
    ...results.flatMap((result) => (result.ok ? [] : [failedRow(result)])),
  ]);

function rowsOf(asked: Asked): Values[] {
  const head = headValue(asked);
  const questions = questionsOf(asked).map((question) => ({ ...head, ...question }));
  return questions.length > 0 ? questions : [{ ...head, reason: nothingText(asked.result) }];
}
