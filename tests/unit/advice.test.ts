/** Checking, causes of trouble, what to ask, refusals. */
import { describe, expect, it } from 'vitest';
import { checkCinch } from '../../src/advice/check.ts';
import { sizeOrder } from '../../src/index.ts';
import type { Order, Trouble } from '../../src/order/types.ts';
import { defaultShop } from '../../src/cinch/default-shop.ts';
import { refusedRuns } from '../../src/words/refused-runs.ts';
import { phraseText } from '../../src/units/text.ts';
import { rules } from '../../src/rules/registry.ts';
import { orderOf, rigging } from '../support/orders.ts';

const current = { style: 'straight', strands: 27, length: 32 } as const;

const causeOf = (trouble: Trouble, order: Order, cinch: Parameters<typeof checkCinch>[0] = current) => {
  const withTrouble = { ...order, horse: { ...order.horse, trouble: [trouble] } };
  const cause = checkCinch(cinch, 'current', sizeOrder(withTrouble, defaultShop)).causes[0];
  return { explained: cause?.explained, words: cause === undefined ? '' : phraseText(cause.words, 'in') };
};

describe('likely cause of trouble', () => {
  it('a 27-strand straight on full crowds the elbow, and the ring carries it there', () => {
    const cause = causeOf('elbow-gall', orderOf());
    expect(cause.explained).toBe(true);
    expect(cause.words).toContain('ahead of the groove');
  });

  it('a narrow one that clears is not blamed', () => {
    const cause = causeOf('elbow-gall', orderOf({ saddle: { rigging: rigging('3/4') } }), {
      style: 'straight',
      strands: 15,
    });
    expect(cause.explained).toBe(false);
    expect(cause.words).toMatch(/look (?:at|for)/);
  });

  it('old cord is named only when it is old', () => {
    const order = orderOf({ saddle: { rigging: rigging('3/4') } });
    const aged = (age: number) =>
      causeOf('elbow-gall', order, { style: 'straight', strands: 15, age } as never).words;
    expect(aged(4)).toContain('hard');
    expect(aged(1)).not.toContain('hard');
  });

  it('a short cinch puts the buckle low', () => {
    expect(causeOf('buckle-rub', orderOf(), { style: 'straight', strands: 17, length: 22 }).explained).toBe(
      true,
    );
    expect(causeOf('buckle-rub', orderOf(), { style: 'straight', strands: 17, length: 34 }).explained).toBe(
      false,
    );
  });

  it('a saddle creeps forward with the ring behind the groove, back with the ring ahead of it', () => {
    const behind = orderOf({ saddle: { rigging: rigging('center-fire') } });
    expect(causeOf('creeps-forward', behind).explained).toBe(true);
    expect(causeOf('creeps-forward', orderOf()).explained).toBe(false);
    expect(causeOf('slips-back', orderOf()).explained).toBe(true);
    expect(causeOf('slips-back', behind).explained).toBe(false);
  });

  it('a rolling saddle on a round barrel lacks a fan high on the side', () => {
    const round = orderOf({ horse: { barrel: 'round' }, saddle: { rigging: rigging('3/4') } });
    expect(causeOf('saddle-rolls', round).explained).toBe(true);
    expect(causeOf('saddle-rolls', round, { style: 'high-flare', strands: 19 }).explained).toBe(false);
  });
});

describe('check', () => {
  const advice = sizeOrder(orderOf({ saddle: { rigging: rigging('7/8') } }), defaultShop);

  it('refuses 25 strands on 7/8 and names the nearest that passes, in the same style', () => {
    const checked = checkCinch({ style: 'straight', strands: 25 }, 'wants', advice);
    expect(checked.passes).toBe(false);
    expect(checked.nearest?.candidate.style).toBe('straight');
    expect(checked.nearest?.candidate.strands).toBe(21);
  });

  it('passes 19 strands and then names no other', () => {
    const checked = checkCinch({ style: 'straight', strands: 19 }, 'wants', advice);
    expect(checked.passes).toBe(true);
    expect(checked.nearest).toBeUndefined();
  });

  it('says what it took for the parts that nobody named', () => {
    const checked = checkCinch({ strands: 19 }, 'wants', advice);
    expect(checked.filled.map(({ part }) => part)).toEqual(['style', 'buckle', 'length']);
    expect(checkCinch({}, 'wants', advice).filled).toHaveLength(4);
  });

  it('refuses a buckle that does not take the strands, an even count, and strands nobody ties', () => {
    const small = defaultShop.buckles[0]?.id;
    const on = (asked: Parameters<typeof checkCinch>[0]) => checkCinch(asked, 'wants', advice).judged;
    expect(on({ style: 'straight', strands: 19, buckle: small })?.judgementOf('buckle-strands')).toBe(
      'refuse',
    );
    expect(on({ style: 'straight', strands: 18 })?.judgementOf('strand-range')).toBe('refuse');
    expect(on({ style: 'straight', strands: 41 })?.judgementOf('strand-range')).toBe('refuse');
  });

  it('cannot judge a buckle that the shop does not have', () => {
    const checked = checkCinch({ strands: 19, buckle: 'no such thing' }, 'wants', advice);
    expect(checked.judged).toBeUndefined();
    expect(checked.cannot).toBeDefined();
    expect(checked.passes).toBe(false);
  });

  it('cannot lay a low flare that leaves no side below the buckle', () => {
    const checked = checkCinch({ style: 'low-flare', strands: 19, length: 16 }, 'wants', advice);
    expect(checked.judged).toBeUndefined();
    expect(checked.cannot).toBeDefined();
  });
});

describe('what to measure next', () => {
  it('asks for the length before cutting, and nothing measured makes the first less sure', () => {
    const { ask } = sizeOrder(orderOf(), defaultShop);
    expect(ask[0]?.input).toBe('ring to ring');
    for (const { chanceNow, chanceThen } of ask) expect(chanceThen).toBeGreaterThanOrEqual(chanceNow - 1e-3);
  });

  it('asks nothing when everything is measured', () => {
    const order = orderOf({
      horse: { elbowRoom: 4, barrel: 'average' },
      saddle: { rigging: { kind: 'measured', setBack: 1 }, ringToRing: 44 },
    });
    expect(sizeOrder(order, defaultShop).ask).toEqual([]);
  });
});

describe('what is refused', () => {
  it('is told in one run for neighboring strand counts that fail the same rule', () => {
    const { refused } = sizeOrder(orderOf(), defaultShop);
    const runs = refusedRuns(refused).filter(({ style }) => style === 'straight');
    expect(runs).toHaveLength(1);
    // Straights are tied up to 25 [common practice, no source].
    expect(runs[0]).toMatchObject({ from: 19, to: 25, rule: 'elbow-clearance' });
  });

  it('together with what passes covers every style and strand count that has a buckle', () => {
    const advice = sizeOrder(orderOf(), defaultShop);
    // Straights of 11 to 25, both ropers of 19 to 31: 8 + 2 x 7.
    expect(advice.specs.length + advice.refused.length).toBe(22);
    const passing = new Set(advice.specs.map(({ candidate: c }) => `${c.style} ${c.strands}`));
    for (const { style, strands } of advice.refused) expect(passing.has(`${style} ${strands}`)).toBe(false);
  });
});

describe('verdicts', () => {
  it('are what every rule says of every candidate when it is asked afresh', () => {
    const orders = [
      orderOf(),
      orderOf({ use: 'roping', horse: { heartGirth: 55 }, colors: { body: ['sorrel'] }, quantity: 3 }),
      orderOf({ horse: { trouble: ['saddle-rolls'], barrel: 'round' }, saddle: { rigging: rigging('3/4') } }),
    ];
    for (const order of orders) {
      const { every, facts } = sizeOrder(order, defaultShop);
      expect(every).toHaveLength(22);
      for (const { candidate, findings, judgementOf } of every) {
        const afresh = rules.map((rule) => [rule.id, rule.judge(facts, candidate).judgement]);
        expect(findings.map(({ rule, judgement }) => [rule, judgement])).toEqual(afresh);
        for (const [id, judgement] of afresh) expect(judgementOf(id!)).toBe(judgement);
      }
    }
  });
});
