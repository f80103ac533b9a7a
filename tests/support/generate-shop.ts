/** Writes src/cinch/default-shop.ts from examples/shop.yaml, so starting up reads no YAML. */
import { format } from 'prettier';
import { readShop } from '../../src/order/read-shop.ts';

/** @throws when the shop file has problems */
export async function defaultShopSource(yaml: string): Promise<string> {
  const read = readShop(yaml, 'examples/shop.yaml');
  if (!read.ok) throw new Error(`examples/shop.yaml: ${JSON.stringify(read.problems, null, 2)}`);
  const { shop } = read;
  const own = Object.fromEntries(shop.overridden.map((key) => [key, shop.model[key]]));
  const model =
    shop.overridden.length === 0 ? 'defaultModel' : `{ ...defaultModel, ...${JSON.stringify(own)} }`;
  const body = JSON.stringify({ ...shop, model: 0 }).replace('"model":0', () => `"model":${model}`);
  const source = `/** The shop used when no other is given. Generated from examples/shop.yaml by \`npm run generate\`: edit that file, not this one. */
import type { Shop } from '../order/types.ts';
import { defaultModel } from '../numbers/numbers.ts';

export const defaultShop: Shop = ${body};
`;
  return format(source, { parser: 'typescript', singleQuote: true, printWidth: 110 });
}
