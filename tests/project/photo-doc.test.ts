/** The block in docs/photo.md is read as it stands; its sources of error are complete. */
import { expect, test } from 'vitest';
import { readOrders } from '../../src/order/read-orders.ts';
import { errorSources } from '../../src/photo/read/errors.ts';
import { howToTakePhoto, questionWords } from '../../src/words/ask-words.ts';
import { demoPhoto } from '../support/photo-scenes.ts';
import { repoText } from '../support/run-cli.ts';

const text = repoText('docs/photo.md');

test('the block is that of the example, and is read as it stands', () => {
  const block = /```yaml\n([^]*?)```/.exec(text)![1]!;
  expect(repoText('examples/orders/25-photo.yaml')).toContain(block);
  const [read] = readOrders(
    `order: 1\nhorse: { heart-girth: 74 in }\nsaddle: { rigging: 7/8 }\n${block}`,
    'x',
  );
  expect(read?.ok === true && read.order.photo).toEqual(demoPhoto);
});

test('a customer is asked for the picture in the same words', () => {
  expect(questionWords['side photo'].how).toContain(howToTakePhoto.join(' '));
});

test('every source of error', () => {
  const section = text.split('## How sure\n')[1]!;
  expect([...section.matchAll(/^- `(\w+)`: /gm)].map(([, name]) => name)).toEqual([...errorSources]);
});
