/** Letter widths match the fonts; labels do not overlap. */
import fs from 'node:fs';
import { create, type Font } from 'fontkit';
import { describe, expect, test } from 'vitest';
import { checkCinch } from '../../src/advice/check.ts';
import { fontFiles, paperFonts } from '../../src/cli/fonts.ts';
import { sizeOrder } from '../../src/index.ts';
import type { Order } from '../../src/order/types.ts';
import { flatScene } from '../../src/draw/flat-page.ts';
import { paper } from '../../src/draw/frame.ts';
import { shortened, textLines, textWidth, widths } from '../../src/draw/letters.ts';
import { hands, type Face } from '../../src/draw/look.ts';
import { sideScene } from '../../src/draw/page.ts';
import type { Layer, Scene, Shape } from '../../src/draw/scene.ts';
import { shownChecked, shownSpec } from '../../src/draw/shown.ts';
import { defaultShop } from '../../src/cinch/default-shop.ts';
import { orderOf, rigging } from '../support/orders.ts';
import { within } from '../support/within.ts';

test('every font that is named is there', () => {
  for (const file of fontFiles()) expect(fs.statSync(file).size).toBeGreaterThan(100_000);
});

test.each(Object.entries(paperFonts()))('the widths of %s are those of its font file', (face, bytes) => {
  const font = create(Buffer.from(bytes)) as Font;
  widths[face as Face].forEach((width, i) => {
    const glyph = font.glyphForCodePoint(32 + i);
    within(width, (1000 * glyph.advanceWidth) / font.unitsPerEm, 0.5);
  });
  expect(widths[face as Face]).toHaveLength(95);
  expect(font.glyphForCodePoint(0xb1).advanceWidth).toBe(font.glyphForCodePoint(0x2b).advanceWidth);
});

test('lines are no wider than asked, and nothing of a text is lost unless it says so', () => {
  const text = `A long word ${'x'.repeat(200)} and 4 1/4 in of many short ones, Löwenherz`;
  for (const width of [40, 90, 300]) {
    const lines = textLines(text, 'text', { width });
    expect(Math.max(...lines.map((line) => textWidth(line, 'text')))).toBeLessThanOrEqual(width);
    expect(lines.join('').replaceAll(' ', '')).toBe(text.replaceAll(' ', ''));
    const cut = textLines(text, 'text', { width, most: 2 });
    expect(cut).toHaveLength(2);
    expect(cut[1]).toMatch(/\.\.\.$/);
    expect(textWidth(shortened(text, 'title', width), 'title')).toBeLessThanOrEqual(width);
  }
});

interface Box {
  readonly text: string;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** Without the white above and below. */
function boxOf({ at: [x, y], text, hand, anchor = 'start' }: Shape & { kind: 'label' }): Box {
  const width = textWidth(text, hand);
  const left = x - (anchor === 'middle' ? width / 2 : anchor === 'end' ? width : 0);
  const { size } = hands[hand];
  return { text, left, right: left + width, top: y - 0.66 * size, bottom: y + 0.2 * size };
}

const labelsOf = (layers: readonly Layer[]): Box[] =>
  layers.flatMap(({ shapes, layers: inner = [] }) => [
    ...shapes.flatMap((shape) => (shape.kind === 'label' ? [boxOf(shape)] : [])),
    ...labelsOf(inner),
  ]);

/** Labels that overlap or leave the paper. */
function clashes({ layers }: Scene): string[] {
  const boxes = labelsOf(layers);
  expect(boxes.length).toBeGreaterThan(10);
  const pairs = boxes.flatMap((a, i) =>
    boxes
      .slice(i + 1)
      .filter((b) => a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom)
      .map((b) => `"${a.text}" on "${b.text}"`),
  );
  const out = boxes.filter(
    ({ left, right, top, bottom }) =>
      left < -1 || right > paper.width + 1 || top < 0 || bottom > paper.height + paper.margin,
  );
  return [...pairs, ...out.map(({ text }) => `"${text}" leaves the paper`)];
}

const long = 'Wilhelmina von und zu Hohenstaufen-Löwenherz the Younger of Cottonwood Creek Ranch';
const orders: readonly [string, Order][] = [
  ['an average horse', orderOf()],
  ['a small pony', orderOf({ horse: { heartGirth: 42, kind: 'pony' } })],
  [
    'a big draft, far back',
    orderOf({
      horse: { heartGirth: 99, kind: 'draft', barrel: 'round' },
      saddle: { rigging: rigging('center-fire') },
    }),
  ],
  [
    'much to say',
    orderOf({
      order: 'Q-2026-0000000000417-b/third',
      use: 'roping',
      horse: {
        name: long,
        trouble: ['saddle-rolls', 'elbow-gall', 'buckle-rub', 'creeps-forward', 'girthy'],
      },
      saddle: { style: 'in-skirt', rigging: rigging('3/4') },
      colors: { body: ['natural'], accent: ['turquoise', 'a color with a very long name indeed'] },
    }),
  ],
];

describe.each(orders)('%s', (_, order) => {
  const advice = sizeOrder(order, defaultShop);
  const asked = [
    { style: 'straight', strands: 31, length: 24 },
    { style: 'low-flare', strands: 25, length: 40 },
    { style: 'high-flare', strands: 11 },
  ] as const;
  describe.each(['in', 'cm'] as const)('in %s', (units) => {
    test('no label lies on another on the side', () => {
      const best = advice.specs.slice(0, 3).map((spec) => shownSpec(spec, advice, units));
      const wishes = asked.map((cinch) => shownChecked(checkCinch(cinch, 'wants', advice), advice, units));
      for (const shown of [
        best,
        best.slice(0, 1),
        ...wishes.map((wish) => [wish, ...best.slice(0, 1)]),
        wishes,
      ]) {
        expect(clashes(sideScene({ advice, shown, units }))).toEqual([]);
      }
    });
    test('nor on one laid flat', () => {
      const best = advice.specs.map((spec) => shownSpec(spec, advice, units));
      const wishes = asked.map((cinch) => shownChecked(checkCinch(cinch, 'wants', advice), advice, units));
      for (const shown of [...best, ...wishes])
        expect(clashes(flatScene({ advice, shown, units }))).toEqual([]);
    });
  });
});
