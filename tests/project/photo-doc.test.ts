/** docs/photo.md says what the program does: its block is read, its keys, lengths, numbers and columns are all there are. */
import fs from 'node:fs';
import path from 'node:path';
import { expect, test } from 'vitest';
import { keyPlaces } from '../../src/order/schema-keys.ts';
import { orderSchema } from '../../src/order/order-schema.ts';
import { readOrders } from '../../src/order/read-orders.ts';
import { errorSources } from '../../src/photo/doubts.ts';
import { photoColumns } from '../../src/report/photo-csv.ts';
import { howToTakePhoto, questionWords } from '../../src/report/ask-words.ts';
import { photoNumbers } from '../../src/sources/photo-numbers.ts';
import { pictureLimits } from '../../src/cli/photo/picture.ts';
import { demoPhoto } from '../support/photo-scenes.ts';
import { repo, run } from '../support/run-cli.ts';

const text = fs.readFileSync(path.join(repo, 'docs', 'photo.md'), 'utf8');

/** First cells of the table under a heading, the code in them. */
function firstCells(heading: string, head: string): string[] {
  const section = text.split(`## ${heading}\n`)[1]?.split('\n## ')[0] ?? '';
  const table = section.split(/\n\n/).find((part) => part.startsWith(`| ${head}`)) ?? '';
  return [...table.matchAll(/^\| `([^`]+)`/gm)].map(([, code]) => code!);
}

test('the block is that of the example, and is read as it stands', () => {
  const block = /```yaml\n([^]*?)```/.exec(text)![1]!;
  expect(fs.readFileSync(path.join(repo, 'examples/orders/25-photo.yaml'), 'utf8')).toContain(block);
  const [read] = readOrders(
    `order: 1\nhorse: { heart-girth: 74 in }\nsaddle: { rigging: 7/8 }\n${block}`,
    'x',
  );
  expect(read?.ok === true && read.order.photo).toEqual(demoPhoto);
});

test('how to take the picture is what a customer is asked for, word for word', () => {
  const section = text.split('## How to take it')[1]!.split('\n## ')[0]!;
  const told = section.replaceAll(/\n\d\. /g, ' ').replaceAll(/\s+/g, ' ');
  for (const part of howToTakePhoto) for (const sentence of part.split(/(?<=\.) /)) expect(told).toContain(sentence);
  expect(questionWords['side photo'].how).toContain(howToTakePhoto.join(' '));
});

test('every key of the block is told, and no other', () => {
  const places = keyPlaces(orderSchema);
  const keys = (at: string): readonly string[] => places.find((place) => place.path === at)!.keys;
  expect(firstCells('The block', 'key')).toEqual(keys('photo'));
  for (const key of [...keys('photo.reference'), ...keys('photo.plumb')])
    expect(text).toContain(`\`${key}\``);
});

test('every source of error, every number with its value', () => {
  expect(firstCells('How sure', 'source')).toEqual([...errorSources]);
  const rows = [...text.matchAll(/^\| `(photo-[\w-]+)` +\| ([\d.]+)(?: (\w+))? +\|$/gm)];
  expect(rows.map(([, key, value, unit]) => [key, Number(value), unit ?? 'ratio'])).toEqual(
    Object.entries(photoNumbers).map(([key, { value, unit }]) => [key, value, unit]),
  );
});

test('the limits of the picture', () => {
  expect(text.replaceAll(/\s+/g, ' ')).toContain('at most 50 MB and 250 million pixels');
  expect(pictureLimits).toEqual({ bytes: 50_000_000, pixels: 250_000_000 });
});

test('every length and every key of the JSON', async () => {
  const { stdout } = await run(['photo', 'examples/orders/25-photo.yaml', '--format', 'json']);
  const [result] = (
    JSON.parse(stdout) as { results: [Record<string, unknown> & { seen: { length: string }[] }] }
  ).results;
  expect(firstCells('What it gives', 'in JSON and CSV')).toEqual(result.seen.map(({ length }) => length));
  const own = ['picture', 'seen', 'used', 'withoutPhoto', 'surer'] as const;
  const inner = own.flatMap((key) => [result[key]].flat()).flatMap((value) => Object.keys(value as object));
  for (const key of [...Object.keys(result), ...inner]) expect(text).toContain(`\`${key}\``);
});

test('every column of the CSV, in order', () => {
  const section = text.split('In CSV one row a length')[1]!;
  const rows = [...section.matchAll(/^\| `(\w+)` +\| (.+?) +\|$/gm)].map(([, name, about]) => [name, about]);
  expect(rows).toEqual(photoColumns.map((column) => [...column]));
});
