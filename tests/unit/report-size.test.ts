/** The screen of `size`, readable and harmless. */
import { describe, expect, test } from 'vitest';
import { simulateClearance } from '../../src/advice/simulate.ts';
import type { Order, Shop } from '../../src/order/types.ts';
import { sizeCsv, sizeJson } from '../../src/views/size-data.ts';
import { shortCaution } from '../../src/numbers/cautions.ts';
import { escaped } from '../../src/pages/markdown.ts';
import { oneLine, sizeMarkdown, sizeScreen, widest } from '../support/screens.ts';
import { defaultShop } from '../../src/cinch/default-shop.ts';
import { cases, failed, orderWith, plainOptions, screen, sized } from './report-cases.ts';
import { escapes, formulas } from './report-payloads.ts';

const names = Object.keys(cases) as (keyof typeof cases)[];

describe('screen', () => {
  test.each(names)('%s: no line is wider than the screen, in any form', (name) => {
    const result = sized(cases[name]);
    for (const width of [40, 80, 120]) {
      for (const change of [{}, { units: 'cm' }, { why: true }, { all: true }, { top: 40 }] as const) {
        expect(widest(screen(result, { ...change, width })), String(width)).toBeLessThanOrEqual(width);
      }
    }
    expect(widest(screen(result, { width: Number.NaN }))).toBeLessThanOrEqual(80);
  });

  test.each(names)('%s: no NaN, never called safe or certain, one caution at the end', (name) => {
    const text = screen(sized(cases[name]));
    expect(text).not.toMatch(/NaN|Infinity|undefined|\bsafe\b|100%|[^\d]0%|guarantee/);
    expect(text.endsWith(`${shortCaution}\n`)).toBe(true);
    expect(text.split(shortCaution)).toHaveLength(2);
  });

  test.each(names)(
    '%s: the first line begins with whose it is and holds the answer or the warning',
    (name) => {
      const { advice, ...rest } = sized(cases[name]);
      const text = oneLine(screen({ advice, ...rest }));
      const { order, horse, customer } = advice.facts.order;
      if (name !== 'otherScripts') expect(text).toContain(`${order} ${horse.name!}, ${customer!.name!}: `);
      const answer =
        advice.first === undefined ? 'TIE NOTHING' : `${String(advice.first.candidate.strands)} strands`;
      const [lead, at] = [text.indexOf(': '), text.indexOf(answer)];
      const warned = advice.welfare.length > 0;
      if (warned) expect(text.slice(lead + 2)).toMatch(/^[A-Z]{3}/);
      expect(at).toBeGreaterThan(lead);
      // Only the cause of a sore may stand before the strands.
      if (!warned) expect(at - lead, text).toBeLessThan(120);
    },
  );

  test('nothing may be cut before somebody has taped ring to ring', () => {
    for (const name of names) {
      const result = sized(cases[name]);
      const { first, facts } = result.advice;
      const rough = first !== undefined && !facts.lengthNeed.measured;
      for (const text of [screen(result), sizeMarkdown([result], plainOptions)]) {
        const at = text.indexOf('DO NOT CUT');
        expect(at >= 0, name).toBe(rough);
        if (rough) expect(at).toBeLessThan(text.search(/\b(?:tie|tie is) a\b/i));
      }
    }
  });

  test('when nothing passes, that is said first', () => {
    const text = screen(sized(cases.nothing));
    expect(text).not.toMatch(/\btie a\b|Instead/);
    expect(text.indexOf('TIE NOTHING')).toBeGreaterThan(0);
    expect(text.indexOf('TIE NOTHING')).toBeLessThan(text.indexOf('Ruled out'));
  });

  test('a sore comes first, and the cinch only once it has healed', () => {
    const text = screen(sized(cases.gall));
    expect(text).toMatch(/^2420 Biscuit, Jo Alvarez: GALLED AT THE ELBOW\./);
    expect(text.indexOf('Likely cause')).toBeLessThan(text.search(/Once healed, tie/i));
    expect(text.search(/Once healed, tie/i)).toBeLessThan(text.indexOf('Instead'));
  });

  test("the shop's own numbers are named when they are in force", () => {
    const shop: Shop = {
      ...defaultShop,
      model: { ...defaultShop.model, stretch: 0.5 },
      overridden: ['stretch'],
    };
    expect(oneLine(screen(sized(cases.full, shop)))).toContain('stretch 0.5 in (usual 1 in)');
  });

  test('a simulation is one line, of the first', () => {
    const result = sized(cases.full);
    const simulated = result.advice.specs
      .slice(0, 2)
      .map(({ candidate }) => simulateClearance(candidate, result.advice.facts, { draws: 50, seed: 3 }));
    expect(screen({ ...result, simulated }).match(/50 random draws \(seed 3\)/g)).toHaveLength(1);
  });

  test('an order that failed leaves one line among the others, and the caution is said once', () => {
    const text = sizeScreen([sized(cases.full), failed, sized(cases.pony)], plainOptions);
    expect(text).toContain('99 in bad.yaml: could not be read: see the messages.');
    expect(text.split(shortCaution)).toHaveLength(2);
    expect(sizeScreen([], plainOptions)).toBe('\n');
  });

  test('all lists every candidate', () => {
    const result = sized(cases.full);
    const text = screen(result, { all: true });
    const [, tried = ''] = text.split('Everything we tried');
    const rows = tried.split('\n').filter((line) => /^ *(straight|high flare|low flare) +\d+ +\d/.test(line));
    expect(rows).toHaveLength(result.advice.every.length);
  });
});

const hostile = (text: string): Order =>
  orderWith({
    order: text,
    customer: { name: text },
    horse: { name: text },
    colors: { body: [text] },
    wants: { style: 'straight', strands: 17, buckle: text },
    saddle: { rigging: { kind: 'named', name: text, fraction: 1 } },
  });

test.each([...escapes, ...formulas])('%j in an order does nothing', (text) => {
  const shop = {
    ...defaultShop,
    buckles: defaultShop.buckles.map((buckle) => ({ ...buckle, id: buckle.id + text })),
  };
  const result = { ...sized(hostile(text), shop), file: `${text}.yaml` };
  const shown = [
    screen(result),
    screen(result, { why: true, all: text === escapes[0] }),
    sizeMarkdown([result], plainOptions),
    sizeCsv([result], plainOptions).replaceAll('\r\n', ''),
    sizeJson([result], plainOptions),
  ]
    .join('')
    .replaceAll('\n', '');
  expect(/[\p{Cc}\p{Cs}\p{Zl}\p{Zp}\u202a-\u202e\u2066-\u2069]/u.exec(shown)?.index).toBeUndefined();
  expect(JSON.parse(sizeJson([result], plainOptions))).toMatchObject({ results: [{ order: text }] });
});

describe('markdown', () => {
  test.each(names)('%s: a heading, the answer, every caution', (name) => {
    const { advice, ...rest } = sized(cases[name]);
    const text = sizeMarkdown([{ advice, ...rest }], plainOptions);
    expect(text).toMatch(/^# .*\n\n\*\*\S/);
    for (const caution of advice.cautions) expect(text).toContain(escaped(caution));
    expect(text).not.toMatch(/NaN|undefined|\n\n\n/);
  });

  test('an order that failed leaves a line', () => {
    expect(sizeMarkdown([failed], plainOptions)).toMatch(/^# 99 in bad\.yaml\n\n\*\*Could not be read/);
  });
});
