/** Shop files; a good shop sizes, prices and plans orders. */
import { textOf } from '../../../src/cli/text-file.ts';
import { shopJsonSchema } from '../../../src/order/json-schema.ts';
import { readShop } from '../../../src/order/read-shop.ts';
import { modelNumbers } from '../../../src/numbers/numbers.ts';
import { happens, pick } from '../../support/draw.ts';
import { damaged } from '../damage/damage.ts';
import { lexiconOf } from '../damage/tree.ts';
import { holdProblems } from '../hold-problems.ts';
import { kept, shopSeeds } from '../seeds.ts';
import { hold, type Standing, type Target } from '../target.ts';
import { orderLines } from './orders.ts';

const file = 'shop.yaml';

/** Infinity and NaN become null; the shop has none. */
function holdsNull(value: unknown): boolean {
  let found = false;
  JSON.parse(JSON.stringify(value), (_, each: unknown) => {
    found ||= each === null;
    return each;
  });
  return found;
}

function look(input: Buffer): Standing {
  const read = textOf(input);
  if (!read.ok) return 'faulty';
  const { text } = read;
  const shop = readShop(text, file);
  if (!shop.ok) holdProblems(shop.problems, file, text);
  else hold(!holdsNull(shop.shop), () => 'a number of the shop is none');
  return shop.ok ? 'good' : 'faulty';
}

/** Numbers at or near their limits. */
function modelBlock(chance: { uniform: () => number }): string {
  const entries = Object.entries(modelNumbers).filter(() => chance.uniform() < 0.1);
  const lines = entries.map(([key, { min: low, max: high, unit }]) => {
    const at = chance.uniform();
    const value = at < 0.35 ? low : at < 0.7 ? high : low + (high - low) * chance.uniform();
    return `  ${key}: ${String(Number(value.toFixed(4)))}${unit.startsWith('in') && unit !== 'in/in' ? ' in' : ''}\n`;
  });
  return lines.length === 0 ? '' : `model:\n${lines.join('')}`;
}

export function shopTarget(): Target {
  const seeds = shopSeeds();
  const orders = [
    '02-everything-measured',
    '10-nothing-passes',
    '16-several-orders',
    '17-colors',
    '25-photo',
  ].map((name) => kept(`examples/orders/${name}.yaml`));
  const lexicon = lexiconOf(seeds, shopJsonSchema());
  return {
    name: 'shop',
    file,
    beside: { 'o.yaml': Buffer.from(orders.map((bytes) => bytes.toString('utf8')).join('---\n')) },
    seeds,
    change: (parents, chance) => {
      if (!happens(chance, 0.3)) return damaged(parents, chance, lexicon);
      const whole = pick(chance, parents).toString('utf8');
      return Buffer.from(`${whole.replace(/^model:(?:\n .*)*/m, '')}\n${modelBlock(chance)}`);
    },
    look,
    lines: (standing, _, chance) => {
      if (standing === 'faulty' && happens(chance, 0.75)) return [];
      return [[...pick(chance, orderLines), '--shop', file]];
    },
  };
}
