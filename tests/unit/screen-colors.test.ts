/** Color on a terminal changes no word. */
import { stripVTControlCharacters } from 'node:util';
import { expect, test } from 'vitest';
import { run } from '../support/run-cli.ts';

const wants = 'examples/orders/11-wants-refused.yaml';
const measured = 'examples/orders/02-everything-measured.yaml';

test.each([
  ['size', wants, '--why', '--all'],
  ['size', wants, '--what-if', '3/4'],
  ['size', wants, measured, '--side-by-side'],
  ['check', 'examples/orders/09-buckle-rub.yaml', '--why'],
  ['ask', wants, '--draws', '8'],
  ['quote', wants, '--itemized'],
  ['ticket', wants],
  ['materials', wants, measured],
  ['schedule', wants, measured],
  ['backlog', 'examples/orders'],
  ['photo', 'examples/orders/25-photo.yaml'],
  ['rules', 'grip'],
])('%j', async (...told) => {
  const colored = await run(told, { columns: 80 });
  const plain = await run(told, { columns: 80, env: { NO_COLOR: '1' } });
  expect(colored.stdout).not.toBe(plain.stdout);
  expect(stripVTControlCharacters(colored.stdout)).toBe(plain.stdout);
});
