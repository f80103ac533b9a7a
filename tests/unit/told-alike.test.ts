/** What is less than good reads the same everywhere. */
import { describe, expect, test } from 'vitest';
import { checkCinch } from '../../src/advice/check.ts';
import type { Judged } from '../../src/advice/judge.ts';
import { sizeOrder } from '../../src/index.ts';
import { shownChecked, shownSpec } from '../../src/draw/shown.ts';
import { sideScene } from '../../src/draw/page.ts';
import { sceneSvg } from '../../src/draw/svg.ts';
import { templateOf } from '../../src/draw/template.ts';
import { tilesOf } from '../../src/draw/tiles.ts';
import { textWidth } from '../../src/draw/letters.ts';
import type { Layer } from '../../src/draw/scene.ts';
import { toTell } from '../../src/words/about-specs.ts';
import { ruleName } from '../../src/words/words.ts';
import { rules } from '../../src/rules/registry.ts';
import { defaultShop } from '../../src/cinch/default-shop.ts';
import { orderOf, rigging } from '../support/orders.ts';

const pairs = [
  ['nobody taped ring to ring', undefined],
  ['ring to ring taped', 45],
] as const;

describe.each(pairs)('%s', (_, ringToRing) => {
  const trouble = ['saddle-rolls', 'slips-back'] as const;
  const advice = sizeOrder(
    orderOf({
      horse: { heartGirth: 76, trouble: [...trouble] },
      saddle: { rigging: rigging('full'), ringToRing },
    }),
    defaultShop,
  );
  const told = (judged: Judged, of: 'acceptable' | 'poor' | 'cannot-tell'): string[] =>
    toTell(judged, advice.facts)
      .filter(({ judgement }) => judgement === of)
      .map(({ rule }) => rule);

  test('a spec on a picture and the same cinch named in a check have the same faults', () => {
    let faults = 0;
    for (const spec of advice.specs.slice(0, 12)) {
      const { style, strands, length, buckle } = spec.candidate;
      const checked = checkCinch({ style, strands, length, buckle: buckle.id }, 'command line', advice);
      const own = [...told(spec, 'poor'), ...told(spec, 'acceptable'), ...told(spec, 'cannot-tell')];
      faults += own.length;
      const picture = shownSpec(spec, advice, 'in').lines.join('\n');
      const asked = shownChecked(checked, advice, 'in').lines.join('\n');
      for (const { id } of rules) {
        const has = own.includes(id);
        expect(picture.includes(ruleName(id)), `${id}: ${picture}`).toBe(has);
        expect(asked.includes(ruleName(id)), `${id}: ${asked}`).toBe(has);
      }
    }
    expect(faults).toBeGreaterThan(0);
  });

  test('a merely acceptable length is told only when it was taped', () => {
    const all = advice.specs.flatMap((spec) => told(spec, 'acceptable'));
    const ofLength = all.filter((rule) => rule === 'latigo-run' || rule === 'length-agreement');
    expect(ofLength.length > 0).toBe(ringToRing !== undefined);
  });
});

describe('whose clearance it is', () => {
  const picture = (shop: typeof defaultShop): string => {
    const advice = sizeOrder(orderOf({}), shop);
    const shown = [shownSpec(advice.specs[0]!, advice, 'in')];
    const svg = sceneSvg(sideScene({ advice, shown, units: 'in' }));
    return [...svg.matchAll(/<text[^>]*>([^<]*)/g)].map(([, text]) => text).join(' ');
  };
  const model = { ...defaultShop.model, 'required-clearance': 1.4 };
  const own = { ...defaultShop, model, overridden: ['required-clearance'] as const };

  test('the default has no owner', () => {
    expect(picture(defaultShop)).not.toMatch(/own number|learned/);
  });
  test('set by the shop', () => {
    expect(picture(own)).toMatch(/set its own numbers: required clearance 1\.4 in/);
  });
  test('learned', () => {
    const learned = { 'required-clearance': { outcomes: 212, until: '2026-11-20' } };
    expect(picture({ ...own, learned })).toContain('from 212 outcomes of this shop through 2026-11-20');
  });
});

test.each(['letter', 'a4'] as const)(
  'the line along which sheets of %s are joined runs through no figure',
  (name) => {
    const paper = name === 'letter' ? { width: 612, height: 792 } : { width: 595.28, height: 841.89 };
    let joins = 0;
    for (const { spec, advice } of templates()) {
      const template = templateOf({ advice, candidate: spec.candidate, mark: undefined, units: 'in' });
      const texts = spansOf(template.drawing.layers);
      const tiles = tilesOf(template, paper);
      const last = tiles.at(-1)!;
      expect(last.from[0] + last.window.width).toBeGreaterThanOrEqual(template.drawing.width - 1e-6);
      for (const start of new Set(tiles.map(({ from }) => from[0]))) {
        if (start === 0) continue;
        joins++;
        const through = texts.filter(([from, to]) => from < start && start < to);
        expect(through, `${spec.candidate.style} ${String(spec.candidate.strands)}`).toEqual([]);
      }
    }
    expect(joins).toBeGreaterThan(10);
  },
);

function* templates() {
  for (const heartGirth of [60, 68, 74, 80]) {
    const advice = sizeOrder(orderOf({ horse: { heartGirth } }), defaultShop);
    for (const spec of advice.specs.slice(0, 8)) yield { spec, advice };
  }
}

const spansOf = (layers: readonly Layer[]): [number, number][] =>
  layers.flatMap(({ shapes }) =>
    shapes.flatMap((shape): [number, number][] => {
      if (shape.kind !== 'label') return [];
      const width = textWidth(shape.text, shape.hand);
      // Longer than the sheet: may break in the middle.
      if (width > 60) return [];
      const from = shape.at[0] - (shape.anchor === 'middle' ? width / 2 : 0);
      return [[from, from + width]];
    }),
  );
