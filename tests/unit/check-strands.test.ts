/** A buckle we filled in is not blamed. */
import { describe, expect, test } from 'vitest';
import { checkCinch } from '../../src/advice/check.ts';
import { sizeOrder } from '../../src/index.ts';
import { readOrders } from '../../src/order/read-orders.ts';
import type { Buckle, Shop } from '../../src/order/types.ts';
import { bySize, layersOn, mustBeOrdered, strandsAway } from '../../src/cinch/buckles.ts';
import { defaultShop } from '../../src/cinch/default-shop.ts';
import { phraseText } from '../../src/units/text.ts';
import { checkJson } from '../../src/views/check-data.ts';
import { standingOf } from '../../src/words/about-check.ts';
import type { CheckResult } from '../../src/words/types.ts';
import { orderOf } from '../support/orders.ts';
import { checkScreen, oneLine } from '../support/screens.ts';
import { checked as checkedOrder, orderWith, plainOptions } from './report-cases.ts';

const checked = (strands: number, shop = defaultShop) =>
  checkCinch({ style: 'straight', strands }, 'command line', sizeOrder(orderOf(), shop));

const refusal = (strands: number, shop = defaultShop): string => {
  const { judged } = checked(strands, shop);
  const finding = judged?.findings.find(({ rule }) => rule === 'buckle-strands');
  return finding === undefined ? '' : phraseText(finding.reason, 'in');
};

describe('strands that no buckle takes', () => {
  test.each([5, 9, 41])('%i: the shop is named, not a buckle', (strands) => {
    expect(refusal(strands)).toContain(`shop's buckles take ${String(strands)} strands`);
  });

  test('the nearest buckle is filled in, so that only what must change changes', () => {
    expect(checked(5).judged?.candidate.buckle.id).toBe('plain 2 1/2');
    expect(checked(41).judged?.candidate.buckle.id).toBe('special 6');
  });

  test('where another buckle takes them, the buckle is named', () => {
    const { judged } = checkCinch(
      { style: 'straight', strands: 31, buckle: 'plain 3' },
      'command line',
      sizeOrder(orderOf(), defaultShop),
    );
    const finding = judged?.findings.find(({ rule }) => rule === 'buckle-strands');
    expect(finding && phraseText(finding.reason, 'in')).toMatch(/plain 3 .*31 strands/);
  });
});

test('cords lie in the usual layers if the buckle allows, else in its own', () => {
  const both = { single: { min: 13, max: 21 }, double: { min: 15, max: 29 } } as unknown as Buckle;
  expect([13, 17, 19, 21, 29, 31].map((strands) => layersOn(both, strands))).toEqual([
    ...[1, 1, 2, 2, 2, undefined],
  ]);
  expect(layersOn({ ...both, double: undefined }, 19)).toBe(1);
  expect(layersOn({ ...both, single: undefined }, 15)).toBe(2);
});

test('two buckles per cinch are ordered where fewer are on hand, if they can be', () => {
  const stock = (onHand: number, orderable: boolean) => mustBeOrdered({ onHand, orderable } as Buckle, 2);
  expect([stock(3, true), stock(4, true), stock(3, false)]).toEqual([true, false, false]);
});

test('smaller is the narrower frame, then the narrower bar, then the first by name', () => {
  const [a, b, c, d] = [
    { id: 'z', frameWidth: 3, barWidth: 2.5 },
    { id: 'a', frameWidth: 3, barWidth: 3 },
    { id: 'b', frameWidth: 3, barWidth: 3 },
    { id: 'a', frameWidth: 4, barWidth: 2 },
  ] as unknown as Buckle[];
  expect([d!, c!, b!, a!].sort(bySize)).toEqual([a, b, c, d]);
});

test('strands away are counted to the nearer end of the nearer range', () => {
  const buckle = { single: { min: 13, max: 17 }, double: { min: 23, max: 27 } } as unknown as Buckle;
  const away = [9, 13, 17, 19, 21, 25, 31].map((strands) => strandsAway(buckle, strands));
  expect(away).toEqual([4, 0, 0, 2, 2, 0, 4]);
  expect(strandsAway({} as Buckle, 17)).toBe(Infinity);
});

test.each(['wants', 'current'] as const)('an empty %s says nothing', (block) => {
  const text = `order: E-1\nhorse: {heart-girth: 72 in}\nsaddle: {rigging: 7/8}\n${block}: {}\n`;
  const [read] = readOrders(text, 'e.yaml');
  expect(read?.ok === true ? read.order[block] : 'faulty').toBeUndefined();
});

describe('a cinch in use whose buckle nobody named', () => {
  const tall = (change: object) => ({ ...defaultShop.buckles[1]!, id: 'tall', frameHeight: 8, ...change });
  const low = { ...defaultShop.buckles[1]!, id: 'low' };
  const only = (...buckles: Shop['buckles'][number][]): Shop => ({ ...defaultShop, buckles });
  const asked = { style: 'straight', strands: 15, length: 26 } as const;
  const inUse = (shop: Shop, change: object = {}): CheckResult & { ok: true } =>
    checkedOrder(
      orderWith({ current: { ...asked, ...change }, saddle: { ringToRing: 44 }, horse: { elbowRoom: 4 } }),
      shop,
    );

  test('is refused only where every buckle that takes the strands is', () => {
    expect(inUse(only(low)).checked.map(standingOf)).toEqual(['passes']);
    expect(inUse(only(tall({}))).checked.map(standingOf)).toEqual(['refused']);
    for (const shop of [only(low, tall({})), only(tall({ frameWidth: 3 }), low)]) {
      const result = inUse(shop);
      expect(result.checked.map(standingOf)).toEqual(['not sure']);
      for (const { judged } of result.checked)
        for (const { rule, judgement } of judged!.findings) expect(judged!.judgementOf(rule)).toBe(judgement);
      const text = oneLine(checkScreen([result], plainOptions));
      expect(text).toMatch(/we filled in low buckles\): NOT SURE\..* Not judged: [^.]*buckle[^.]*\btall\b/);
      expect(text).not.toContain('Smallest change');
      expect(JSON.parse(checkJson([result]))).toMatchObject({
        results: [{ checked: [{ standing: 'not sure', cannotTell: ['buckle-height'] }] }],
      });
    }
    const many = only(low, tall({ single: { min: 21, max: 25 }, double: undefined }));
    expect(inUse(many).checked.map(standingOf)).toEqual(['passes']);
  });

  test('a named one is judged as it is', () => {
    const shop = only(low, tall({}));
    expect(inUse(shop, { buckle: 'tall' }).checked.map(standingOf)).toEqual(['refused']);
    expect(inUse(shop, { buckle: 'low' }).checked.map(standingOf)).toEqual(['passes']);
  });

  test('whose strands no buckle here takes has a buckle of another shop', () => {
    const few = inUse(only({ ...low, single: { min: 21, max: 25 }, double: undefined }));
    expect(few.checked.map(standingOf)).toEqual(['not sure']);
    expect(JSON.parse(checkJson([few]))).toMatchObject({
      results: [{ checked: [{ cannotTell: expect.arrayContaining(['buckle-strands']) as unknown }] }],
    });
    expect(oneLine(checkScreen([few], plainOptions))).toContain(
      "none of the shop's buckles take that many strands",
    );
  });

  test('is refused all the same by what no buckle changes', () => {
    expect(inUse(only(low, tall({})), { length: 40 }).checked.map(standingOf)).toEqual(['refused']);
    expect(inUse(defaultShop, { strands: 31 }).checked.map(standingOf)).toEqual(['refused']);
    // Too tall a buckle would hang too low.
    const taller = only(low, tall({ frameHeight: 17 }));
    const [long] = inUse(taller, { length: 40 }).checked;
    expect(long!.judged!.findings.filter(({ judgement }) => judgement === 'cannot-tell')).toEqual([]);
  });

  test('is judged whatever the shop stocks or ties', () => {
    const gone = { onHand: 0, orderable: false };
    const shops = [
      only({ ...low, ...gone }, tall(gone)),
      { ...only(low, tall({})), strands: { min: 17, max: 31 } },
    ];
    for (const shop of shops)
      expect(JSON.parse(checkJson([inUse(shop)]))).toMatchObject({
        results: [{ checked: [{ cannotTell: ['buckle-height'] }] }],
      });
  });
});
