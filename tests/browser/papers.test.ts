/**
 * Papers on a phone and on a desktop: no sideways scroll, no number broken in two, an ordinary one prints on one
 * page.
 */
import fs from 'node:fs';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Page } from 'playwright-core';
import { getDocumentProxy } from 'unpdf';
import { describe, expect, test } from 'vitest';
import { noBrowser } from './chromium.ts';
import { useBrowser } from './opened.ts';
import { long } from '../support/cases.ts';
import { newFolder } from '../support/folder.ts';
import { run } from '../support/run-cli.ts';

const orders = 'examples/orders';
const six = `order: 3001
customer: { name: Odo Fennimore-Castellane of the Lower Cottonwood }
taken: 2026-11-02
due: 2026-12-18
quantity: 12
horse: { name: Biscuit, heart-girth: 73 in, elbow-room: 4 in }
saddle: { rigging: 7/8, ring-to-ring: 44 in, double: true }
colors: { body: [natural, charcoal], accent: [rust] }
options: [center dees, initials]
notes: Winter coat now, so two inches more latigo.
`;
const invoice = ['--invoice', '2026-1041', '--itemized'];

const papers: readonly (readonly [name: string, args: readonly string[], onePage: boolean])[] = [
  ['a quote', ['quote', `${orders}/11-wants-refused.yaml`], true],
  ['a quote with a sore', ['quote', `${orders}/08-elbow-gall.yaml`, '--itemized'], true],
  [
    'a quote of a draft horse in centimeters',
    ['quote', `${orders}/04-heavy-draft.yaml`, '--units', 'cm'],
    true,
  ],
  [
    'a quote of a roper',
    ['quote', `${orders}/07-saddle-rolls.yaml`, '--itemized', '--style', 'low-flare'],
    true,
  ],
  ['a quote of twelve', ['quote', '-', '--itemized'], true],
  ['an invoice of twelve', ['quote', '-', ...invoice], true],
  ['a care card', ['ticket', '-', '--care'], true],
  ['a ticket', ['ticket', '-'], false],
  ['a ticket of a roper', ['ticket', `${orders}/07-saddle-rolls.yaml`, '--style', 'low-flare'], false],
];

describe.skipIf(noBrowser)('papers as pages', () => {
  const { watch } = useBrowser();

  test.each(papers)('%s', async (_, args, onePage) => {
    const { stdout } = await run([...args, '--format', 'html', '--date', '2026-11-20'], { stdin: six });
    const file = path.join(newFolder(), 'paper.html');
    fs.writeFileSync(file, stdout);
    const seen = await watch(pathToFileURL(file).href, { viewport: { width: 390, height: 844 } });
    for (const width of [390, 1200]) {
      await seen.page.setViewportSize({ width, height: 844 });
      expect(await widthOf(seen.page), 'no sideways scroll').toBe(width);
      expect(await brokenNumbers(seen.page)).toEqual([]);
    }
    // A4 is narrower and longer: what fits one page fits Letter.
    for (const format of onePage ? ['Letter', ...(long ? ['A4'] : [])] : []) {
      const { numPages } = await getDocumentProxy(new Uint8Array(await seen.page.pdf({ format })));
      expect(numPages, format).toBe(1);
    }
    expect([seen.requests, seen.faults]).toEqual([[], []]);
    await seen.page.context().close();
  });
});

const widthOf = (page: Page): Promise<number> => page.evaluate(() => document.documentElement.scrollWidth);

/** Numbers split from their fraction or unit. */
const brokenNumbers = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const broken: string[] = [];
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    while (walker.nextNode()) {
      const node = walker.currentNode;
      for (const found of (node.textContent ?? '').matchAll(/\$?\d[\d.,/]*(?:\u00a0\S+)*/g)) {
        const range = document.createRange();
        range.setStart(node, found.index);
        range.setEnd(node, found.index + found[0].length);
        const tops = [...range.getClientRects()].map(({ top }) => Math.round(top));
        if (new Set(tops).size > 1) broken.push(found[0]);
      }
    }
    return broken;
  });
