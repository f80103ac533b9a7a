/** Checks prices, cord and hardware across keys. */
import { currencyOf, type Currency } from '../units/currency.ts';
import { readAmount } from '../units/money.ts';
import { nearestWord } from '../units/nearest.ts';
import { upTo } from '../units/pick.ts';
import { didYouMean } from './leaves.ts';
import type { Loaded } from '../yaml/load.ts';
import { pathText, type Problem } from '../yaml/problem.ts';
import { countAt, empty, numberAt, textAt, usedTwice, type Path } from './shop-tree.ts';
import { treeAt } from '../yaml/tree.ts';

/** All across the business half. */
export function acrossTrade(loaded: Loaded): Problem[] {
  const each = (key: string): Path[] => upTo(countAt(loaded, key)).map((index) => [key, index]);
  const once = (key: string, name: string): Problem[] =>
    usedTwice(
      loaded,
      each(key).map((path) => [[...path, name]]),
    );
  return [
    ...amountFaults(loaded),
    ...each('cord').flatMap((path) => [...cordPriceFaults(loaded, path), ...putUpFaults(loaded, path)]),
    ...once('dees', 'id'),
    ...once('options', 'name'),
    ...once('taxes', 'name'),
    ...once('consumables', 'name'),
    ...once('benches', 'name'),
    ...each('options').flatMap((path) => optionFaults(loaded, path)),
    ...each('taxes').flatMap((path) => empty(loaded, [...path, 'on'])),
    ...each('benches').flatMap((path) => empty(loaded, [...path, 'days'])),
  ];
}

function amountPaths(loaded: Loaded): Path[] {
  const priced = (key: string, names: readonly string[]): Path[] =>
    upTo(countAt(loaded, key)).flatMap((index) => names.map((name) => [key, index, name]));
  const all: Path[] = [
    ...priced('buckles', ['price']),
    ...priced('cord', ['price-a-foot', 'price-a-pound']),
    ...priced('dees', ['price']),
    ['labor', 'rate'],
    ...priced('options', ['price']),
  ];
  return all.filter((path) => textAt(loaded, path) !== undefined);
}

/** One fault without a currency; else one per amount with too many decimals. */
function amountFaults(loaded: Loaded): Problem[] {
  const paths = amountPaths(loaded);
  const [first] = paths;
  if (first === undefined) return [];
  const code = textAt(loaded, ['currency']);
  if (code === undefined) {
    const settled = loaded.settled.has('currency') || treeAt(loaded.tree, ['currency']) !== undefined;
    const expected = 'a currency, such as currency: USD, since the file states prices';
    return settled ? [] : [loaded.locate({ path: 'currency', expected }, first)];
  }
  const currency = currencyOf(code);
  return currency === undefined ? [] : paths.flatMap((path) => tooFine(loaded, path, currency));
}

function tooFine(loaded: Loaded, path: Path, { code, exponent }: Currency): Problem[] {
  const found = textAt(loaded, path) ?? '';
  const read = readAmount(found);
  if (!read.ok || read.decimals <= exponent) return [];
  const most = exponent === 0 ? 'no decimals' : `at most ${String(exponent)} decimals`;
  const byThePound = path.at(-1) === 'price-a-foot';
  const hint = byThePound ? 'a finer price goes by the pound: use price-a-pound and feet-a-pound' : undefined;
  const expected = `an amount with ${most}: ${code} has no smaller coin`;
  return [loaded.locate({ path: pathText(path), found, expected, hint }, path)];
}

/** A pound needs its feet. */
function cordPriceFaults(loaded: Loaded, cord: Path): Problem[] {
  const there = (key: string): boolean => treeAt(loaded.tree, [...cord, key]) !== undefined;
  const fault = (key: string, expected: string): Problem =>
    loaded.locate({ path: pathText([...cord, key]), expected }, [...cord, key], 'key');
  const [foot, pound, feet] = [there('price-a-foot'), there('price-a-pound'), there('feet-a-pound')];
  if (foot && pound) return [fault('price-a-pound', 'one price: by the foot or by the pound')];
  if (pound && !feet) return [fault('price-a-pound', 'feet-a-pound with it: how many feet make a pound')];
  return feet && !pound && foot ? [fault('feet-a-pound', 'price-a-pound with it')] : [];
}

function putUpFaults(loaded: Loaded, cord: Path): Problem[] {
  const tree = treeAt(loaded.tree, [...cord, 'put-ups']);
  const all = upTo(Array.isArray(tree) ? tree.length : 0).map((index): Path => [...cord, 'put-ups', index]);
  return [
    ...all.flatMap((path) => remnantFaults(loaded, path)),
    ...usedTwice(
      loaded,
      all.map((path) => [
        [...path, 'lot'],
        [...path, 'feet'],
      ]),
    ),
  ];
}

/** None is longer than its spool or hank. */
function remnantFaults(loaded: Loaded, putUp: Path): Problem[] {
  const feet = numberAt(loaded, [...putUp, 'feet']);
  const tree = treeAt(loaded.tree, [...putUp, 'opened']);
  if (feet === undefined || !Array.isArray(tree)) return [];
  return upTo(tree.length).flatMap((index) => {
    const path = [...putUp, 'opened', index];
    const left = numberAt(loaded, path);
    if (left === undefined || left <= feet) return [];
    const expected = `at most the feet of the put-up (${String(textAt(loaded, [...putUp, 'feet']))})`;
    return [loaded.locate({ path: pathText(path), found: textAt(loaded, path), expected }, path)];
  });
}

/** The shop has the dee; the count is given. */
function optionFaults(loaded: Loaded, option: Path): Problem[] {
  const dee = textAt(loaded, [...option, 'dee']);
  const count = textAt(loaded, [...option, 'dees']);
  const at = (key: string, fault: Omit<Parameters<Loaded['locate']>[0], 'path'>): Problem =>
    loaded.locate({ path: pathText([...option, key]), ...fault }, [...option, key]);
  if (dee === undefined)
    return count === undefined ? [] : [at('dees', { expected: 'dee with it: which dees' })];
  const ids = upTo(countAt(loaded, 'dees')).flatMap((index) => textAt(loaded, ['dees', index, 'id']) ?? []);
  if (!ids.includes(dee)) {
    const expected = 'the id of a dee under dees';
    return [at('dee', { found: dee, expected, hint: didYouMean(nearestWord(dee, ids)) })];
  }
  return count === undefined ? [at('dee', { expected: 'dees with it: how many' })] : [];
}
