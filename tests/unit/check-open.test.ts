/** What nobody said of a cinch asked about or in use: what is taken for it, and what is left open. */
import { describe, expect, test } from 'vitest';
import { checkCinch } from '../../src/advice/check.ts';
import { factsOf } from '../../src/horse/facts.ts';
import type { Candidate, Spec } from '../../src/cinch/candidate.ts';
import { lay } from '../../src/cinch/lay.ts';
import { sideOf } from '../../src/cinch/side.ts';
import { styleIds } from '../../src/cinch/styles.ts';
import { sizeOrder } from '../../src/index.ts';
import type { Buckle, Order, Shop } from '../../src/order/types.ts';
import { defaultShop as shop } from '../../src/cinch/default-shop.ts';
import { phraseText } from '../../src/units/text.ts';
import { orderOf, rigging, shopWith } from '../support/orders.ts';
import { caseFactsOf, randomOrders } from '../support/random-cases.ts';

const orders = randomOrders(21, 30);
/** Afresh for each test. */
const advised = () => orders.map((order) => sizeOrder(order, shop));

describe('a cinch in use whose buckle nobody named', () => {
  const advice = sizeOrder(orderOf(), shop);
  const used = (strands: number, style: Candidate['style'] = 'straight') =>
    checkCinch({ style, strands, length: 32 }, 'current', advice);

  test('names its verdicts as they stand in the list', () => {
    for (const strands of [11, 13, 15, 17, 19, 21, 25, 29]) {
      const { judged } = used(strands);
      for (const { rule, judgement } of judged!.findings) expect(judged!.judgementOf(rule)).toBe(judgement);
      expect(judged!.judgementOf('no such rule')).toBeUndefined();
    }
  });

  test('is refused with any buckle for another reason, and not for the shelf or the range of the shop', () => {
    const bare: Shop = {
      ...shop,
      strands: { min: 11, max: 13 },
      buckles: shop.buckles.map((each) => ({ ...each, onHand: 0, orderable: false })),
    };
    const { judged } = checkCinch(
      { style: 'straight', strands: 17, length: 32 },
      'current',
      sizeOrder(orderOf(), bare),
    );
    const said = judged!.findings.filter(({ judgement }) => judgement === 'refuse').map(({ rule }) => rule);
    expect(said).not.toContain('buckle-strands');
    const long = checkCinch({ style: 'straight', strands: 17, length: 44 }, 'current', advice).judged;
    expect(long!.judgementOf('latigo-run')).toBe('refuse');
  });

  test('is told which buckles would rule it out, each once, smallest first, however the shop lists them', () => {
    const any = shop.buckles.map((each) => ({ ...each, single: { min: 11, max: 31 }, double: undefined }));
    const roomy = orderOf({ horse: { elbowRoom: 5.5 }, saddle: { rigging: rigging('center-fire') } });
    // At 25 in all but the frame of 2 1/4 in hang too low.
    const low =
      'depends on the buckle, which nobody named: plain 3, plain 3 1/2, old square 4, plain 4, wide 5 and special 6 would be ruled out';
    const nobody = "none of the shop's buckles take that many strands, and nobody named the one on it";
    // With none of the small ones on hand another would be tied, and is tried first.
    const ordered = any.map((each) => ({ ...each, onHand: each.id === 'plain 2 1/2' ? 0 : 9 }));
    for (const buckles of [any, any.toReversed(), ordered]) {
      const advice = sizeOrder(roomy, { ...shop, buckles });
      const told = (strands: number) =>
        checkCinch({ style: 'straight', strands, length: 25 }, 'current', advice)
          .judged!.findings.filter(({ rule }) => rule === 'buckle-height' || rule === 'buckle-strands')
          .map(({ reason }) => phraseText(reason, 'in'));
      expect(told(15)).toEqual([low, 'the plain 2 1/2 buckle takes 15 strands strung single']);
      expect(told(33)).toEqual([low, nobody]);
    }
  });

  test('but does not fit on the horse with any has no verdict, and its troubles are told without it', () => {
    const sore = sizeOrder(orderOf({ horse: { trouble: ['girthy'] } }), shop);
    const { judged, cannot, causes } = checkCinch(
      { style: 'low-flare', strands: 19, length: 16 },
      'current',
      sore,
    );
    expect(judged).toBeUndefined();
    expect(phraseText(cannot!, 'in')).toContain('no room below the buckle');
    expect(causes).toMatchObject([{ trouble: 'girthy', explained: undefined }]);
  });
});

describe('what a cinch asked about leaves open', () => {
  const taken = ({ filled }: ReturnType<typeof checkCinch>) =>
    Object.fromEntries(filled.map(({ part, taken }) => [part, taken]));

  test('is as that style and count would be tied here, where it would be', () => {
    for (const advice of advised().slice(0, 12))
      for (const { candidate } of advice.specs) {
        const { style, strands, buckle, length } = candidate;
        expect(taken(checkCinch({ style, strands }, 'wants', advice))).toEqual({ buckle: buckle.id, length });
      }
  });

  test('is the best of that style where no count is named, and nothing where none passes', () => {
    let none = 0;
    for (const advice of advised().slice(0, 30))
      for (const style of styleIds) {
        const best = advice.specs.find(({ candidate }) => candidate.style === style)?.candidate;
        const checked = checkCinch({ style }, 'wants', advice);
        if (best === undefined) {
          none += 1;
          expect(checked).toMatchObject({ judged: undefined, passes: false, filled: [], nearest: undefined });
          expect(phraseText(checked.cannot!, 'in')).toBe('no strand count given');
        } else {
          expect(taken(checked)).toEqual({
            strands: best.strands,
            buckle: best.buckle.id,
            length: best.length,
          });
        }
      }
    expect(none).toBeGreaterThan(5);
  });

  test('has the length of the cinch that comes first, where none like it would be tied', () => {
    for (const advice of advised().slice(0, 12))
      if (advice.first !== undefined)
        expect(taken(checkCinch({ style: 'straight', strands: 41 }, 'wants', advice))['length']).toBe(
          advice.first.candidate.length,
        );
  });
});

test('where all that passes is poor at the elbow it is offered all the same', () => {
  const strict = shopWith({ 'chance-acceptable': 0.995, 'chance-good': 0.999 });
  const advice = sizeOrder(orderOf(), strict);
  expect(advice.specs.every((spec) => spec.judgementOf('elbow-clearance') === 'poor')).toBe(true);
  const { nearest } = checkCinch({ style: 'straight', strands: 25 }, 'wants', advice);
  expect(nearest?.candidate.style).toBe('straight');
});

/** What a sore comes from: the frame and the cords of the cinch in use, as far as anybody said. */
describe('the current cinch', () => {
  const order = (current: Order['current']) => orderOf({ saddle: { rigging: rigging('7/8') }, current });
  const currentIn = (current: Order['current'], own: Shop = shop) => caseFactsOf(order(current), own).current;
  const laid = (spec: Omit<Spec, 'layers'>, layers: Spec['layers']) => {
    const cords = lay({ ...spec, layers }, sideOf(factsOf(order(undefined), shop.model)))!;
    return { frame: { width: spec.buckle.frameWidth, low: cords.low }, cords };
  };
  const [, plain3, , plain4] = shop.buckles as [Buckle, Buckle, Buckle, Buckle];

  test('is laid as it was described', () => {
    const high = { style: 'high-flare', strands: 21, length: 28 } as const;
    expect(currentIn({ ...high, buckle: 'plain 4' })).toEqual(laid({ ...high, buckle: plain4 }, 2));
  });

  test('is else a straight, on the smallest buckle that takes it, as long as this saddle needs', () => {
    // Ring to ring 44, less two runs of 6 and 1 of give, is 31 in: 30 or 32.
    const [{ length }] = [sizeOrder(order(undefined), shop).first!.candidate];
    expect(length).toBe(32);
    const expected = laid({ style: 'straight', strands: 19, length, buckle: plain3 }, 2);
    expect(currentIn({ strands: 19 })).toEqual(expected);
    expect(currentIn({ strands: 19 }, { ...shop, buckles: shop.buckles.toReversed() })).toEqual(expected);
  });

  test('is a frame alone where only that is known, with cords a buckle does not take strung single', () => {
    const { frame, cords } = currentIn({ buckle: 'plain 4', length: 28 });
    expect(frame).toEqual(laid({ style: 'straight', strands: 21, length: 28, buckle: plain4 }, 2).frame);
    expect(cords).toBeUndefined();
    const odd = { style: 'straight', strands: 31, length: 28 } as const;
    expect(currentIn({ ...odd, buckle: 'plain 3' })).toEqual(laid({ ...odd, buckle: plain3 }, 1));
  });

  test('is unknown where neither buckle nor strands are', () => {
    for (const said of [undefined, { style: 'straight', length: 30 } as const, { strands: 41 }])
      expect(currentIn(said)).toEqual({ frame: undefined, cords: undefined });
  });
});
