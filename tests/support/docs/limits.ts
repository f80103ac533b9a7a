/** The program's limits, from its code. */
import { mostDraws } from '../../../src/cli/commands/size.ts';
import { drawnLimits } from '../../../src/cli/draw/photo-pixels.ts';
import { pictureLimits } from '../../../src/photo/pixels/picture.ts';
import { mostBytes } from '../../../src/cli/text-file.ts';
import { deepest, mostLetters, mostMarks } from '../../../src/yaml/refused.ts';
import { mostOrders } from '../../../src/order/read-orders.ts';
import { orderJsonSchema } from '../../../src/order/json-schema.ts';
import { mostProblems } from '../../../src/yaml/load.ts';
import { longestFound } from '../../../src/yaml/problem.ts';
import { mostNodes } from '../../../src/yaml/walk.ts';
import { list } from '../../../src/pages/markdown.ts';

const millions = (count: number): string => `${String(count / 1e6)} million`;
const megabytes = (bytes: number): string => `${String(bytes / 1e6)} MB`;

export function limits(): string {
  const { properties } = orderJsonSchema() as { properties: Record<string, { maxLength?: number }> };
  const most = (key: string): string => String(properties[key]?.maxLength);
  return list([
    `a file read whole: ${megabytes(mostBytes)}, ${String(mostOrders)} orders; of an order, ${String(mostLetters)} letters, ${String(mostMarks)} line ends, commas and brackets, ${String(mostNodes)} values, ${String(deepest)} deep`,
    `errors told of a file: ${String(mostProblems)}, quoting ${String(longestFound)} characters`,
    `a name or other text: ${most('order')} characters on one line; notes: ${most('notes')}`,
    `a picture: ${megabytes(pictureLimits.bytes)} and ${millions(pictureLimits.pixels)} pixels; to draw on, ${millions(drawnLimits.pixels)}`,
    `draws of \`size --simulate\`: ${String(mostDraws)}`,
  ]);
}
