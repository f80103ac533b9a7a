/** Takes vitest's place: lists tests to be run one by one; `expect` is vitest's own. */
import { format } from 'node:util';
import fc from 'fast-check';
export { expect } from 'vitest';

/** A mutant needs one failing case, not the smallest. */
fc.configureGlobal({ endOnFailure: true });

let tests = [];
let before = [];
let names = [];
let file = '';

export async function collect(from, load) {
  file = from;
  await load();
}

export async function taken() {
  for (const prepare of before) await prepare();
  const all = tests;
  [tests, before] = [[], []];
  return all;
}

/** Puts values into a name, as vitest does. */
const named = (name, values) =>
  name.includes('$') && typeof values[0] === 'object'
    ? `${name} ${JSON.stringify(values[0])}`
    : format(name.replaceAll('%#', ''), ...values);

const eachOf = (add) => (table) => (name, run, timeout) => {
  for (const row of table) {
    const values = Array.isArray(row) ? row : [row];
    add(named(name, values), () => run(...values), timeout);
  }
};

function group(name, define) {
  names.push(name);
  define();
  names.pop();
}
export const describe = Object.assign(group, { each: eachOf(group) });

function add(name, run) {
  const own = [...names, name].join(' > ');
  const same = tests.filter((test) => test.file === file && test.own === own).length;
  tests.push({ file, own, id: `${file}: ${own}${same === 0 ? '' : ` (${same + 1})`}`, run: ended(run) });
}

let ends = [];
export const onTestFinished = (end) => void ends.push(end);
const ended = (run) => async () => {
  try {
    await run();
  } finally {
    for (const end of ends) end();
    ends = [];
  }
};
export const it = Object.assign(add, { each: eachOf(add) });
export const test = it;

export const beforeAll = (prepare) => void before.push(prepare);
/** The next mutant needs what was prepared: it is cleared away at the end. */
export const afterAll = (clear) => void process.once('exit', clear);
