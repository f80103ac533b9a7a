/** Questions as a table for a spreadsheet: one row a question, by customer; an order without any has one row that says so. */
import type { Worth } from '../advice/ask.ts';
import { byCustomer, nothingText, type Asked, type AskedOrder } from '../words/about-ask.ts';
import { questionWords } from '../words/ask-words.ts';
import { csvText, type Cell } from '../pages/csv.ts';
import { unreadNote } from '../words/unread-note.ts';
import { rounded } from '../pages/json.ts';

/** Columns in order, each with what it holds. */
export const askColumns: Readonly<Record<string, string>> = {
  customer: 'name of the customer',
  phone: 'phone of the customer',
  email: 'mail of the customer',
  order: 'the order',
  horse: 'name of the horse',
  file: 'the file it came from',
  outcome:
    'ask, instead (a photo, instead of what it shows), leave (not worth asking), none (nothing is open), or not read',
  place: 'place among the questions of its order, 1 is worth most',
  question: 'what is asked',
  before_cutting: 'yes when it must be known before cord is cut',
  gain: 'expected gain in the chance that the cinch tied clears and reaches, 0 to 1',
  gain_error: 'its Monte Carlo standard error',
  changes: 'chance that the answer changes what comes first or a verdict, 0 to 1',
  changes_error: 'its Monte Carlo standard error',
  wider: 'chance that what comes first then is wider, 0 to 1',
  how: 'how to measure it',
  safely: 'how to stay safe',
  note: 'why there is no question',
};

type Row = Partial<Record<string, Cell>>;

/** The table with its head. */
export function askCsv(results: readonly AskedOrder[]): string {
  const names = Object.keys(askColumns);
  const rows = [
    ...byCustomer(results).flatMap(({ orders }) => orders.flatMap(rowsOf)),
    ...results.flatMap((result) =>
      result.ok
        ? []
        : [{ order: result.order, file: result.file, outcome: 'not read', note: unreadNote(result) }],
    ),
  ];
  return csvText([names, ...rows.map((row: Row) => names.map((name) => row[name]))]);
}

function rowsOf({ file, result, toAsk, photo }: Asked): Row[] {
  const { order, customer, horse } = result.advice.facts.order;
  const head: Row = {
    customer: customer?.name,
    phone: customer?.phone,
    email: customer?.email,
    order,
    horse: horse.name,
    file,
  };
  if (result.worths.length === 0) return [{ ...head, outcome: 'none', note: nothingText(result) }];
  const outcomeOf = (worth: Worth): string =>
    worth === photo ? 'instead' : toAsk.includes(worth) ? 'ask' : 'leave';
  return result.worths.map((worth, i) => ({
    ...head,
    ...rowOf(worth),
    outcome: outcomeOf(worth),
    place: i + 1,
  }));
}

function rowOf({ name, gain, changes, wider, beforeCutting }: Worth): Row {
  const { how, safely } = questionWords[name];
  const number = (value: number): Cell => rounded(value) ?? undefined;
  return {
    question: name,
    before_cutting: beforeCutting ? 'yes' : 'no',
    gain: number(gain.mean),
    gain_error: number(gain.error),
    changes: number(changes.mean),
    changes_error: number(changes.error),
    wider: number(wider.mean),
    how,
    safely,
  };
}
