/** Likely causes at their bounds, which grow with the horse. */
import { describe, expect, test } from 'vitest';
import { causesOf, causesUnlaid } from '../../src/advice/causes.ts';
import type { Judged } from '../../src/advice/judge.ts';
import type { Trouble } from '../../src/order/types.ts';
import { phraseText } from '../../src/units/text.ts';
import type { CaseFacts } from '../../src/rules/rule.ts';
import { sizeOrder } from '../../src/index.ts';
import { defaultShop } from '../../src/cinch/default-shop.ts';
import { orderOf } from '../support/orders.ts';
import { defaultModel as model } from '../../src/numbers/numbers.ts';

const HAIR = 1e-6;
const k = 0.8;
const slant = model['slant-fine'] * k;

interface Given {
  trouble: Trouble;
  facts?: object;
  candidate?: object;
  clearance?: object;
  age?: number;
  unsaid?: true;
}

/** On a small horse. */
function said({ trouble, facts, candidate, clearance, age, unsaid }: Given): string {
  const laid = {
    style: 'straight',
    buckleAboveElbow: 9,
    frameClearance: { inches: 4 },
    clearance: { inches: 2, likely: 0.95, floor: 0.8, station: 6, where: 'cinch', ...clearance },
    ...candidate,
  };
  const seen = {
    order: { horse: { trouble: [trouble] } },
    ring: { x: 0 },
    slipNeed: { level: 2, because: ['the saddle rolls'] },
    ...{ model, k, ...facts },
  };
  const judged = { candidate: laid } as unknown as Judged;
  const [cause] = causesOf(judged, seen as unknown as CaseFacts, {
    ...(age === undefined ? {} : { age }),
    ...(unsaid === undefined ? { style: 'straight' } : {}),
  });
  return `${cause!.explained ? 'yes' : 'no'}: ${phraseText(cause!.words, 'in')}`;
}

describe('a gall behind the elbow', () => {
  const gall = (more: Omit<Given, 'trouble'>): string => said({ trouble: 'elbow-gall', ...more });
  const near = { inches: 0.5, likely: 0.3 };

  test('is not explained by a cinch that is good at the elbow, and then old cord is named', () => {
    expect(gall({ clearance: { likely: model['chance-good'] } })).toMatch(
      /^no: the cinch as described clears .*: look/,
    );
    expect(gall({ clearance: { likely: model['chance-good'] - HAIR } })).toMatch(/^yes: /);
    expect(gall({ age: 2 })).toMatch(/elbow by about 2 in: look for dirt/);
    expect(gall({ age: 3 })).toContain('2 in: cord this old may be hard; look');
    expect(gall({ age: 12 })).toContain('may be hard');
  });

  test('says how near, where, and why, as one sentence', () => {
    expect(gall({ clearance: near })).toBe(
      'yes: it sits 1/2 in off the elbow, 6 in up from the chest midline; it is too wide for the room',
    );
    expect(gall({ clearance: { inches: -0.5, likely: 0 } })).toContain(
      'it reaches onto the elbow, about 1/2 in,',
    );
    expect(gall({ clearance: { inches: 0, likely: 0 } })).toContain('it sits 0 in off');
    expect(
      gall({
        clearance: near,
        candidate: { style: 'high-flare', clearance: { ...near, station: 6, where: 'cinch' } },
      }),
    ).toMatch(/; the high flare starts there$/);
    expect(gall({ clearance: { ...near, where: 'buckle' } })).toMatch(/; the buckle's frame is too big/);
  });

  test('names the ring where it hangs ahead', () => {
    expect(gall({ clearance: near, facts: { ring: { x: slant } } })).toMatch(/too wide for the room/);
    expect(gall({ clearance: near, facts: { ring: { x: slant + HAIR } } })).toMatch(
      /ahead of the groove and carries/,
    );
  });
});

test('a rub of the buckle: too low first, then too near', () => {
  const rub = (candidate: object): string => said({ trouble: 'buckle-rub', candidate });
  const aim = model['buckle-above-elbow-target'] * k;
  expect(rub({ buckleAboveElbow: aim - HAIR })).toMatch(
    /^yes: the buckle sits only .* a longer cinch lifts it/,
  );
  expect(rub({ buckleAboveElbow: 0 })).toMatch(/^yes: the buckle sits only 0 in above/);
  expect(rub({ buckleAboveElbow: -0.45 })).toBe(
    'yes: the buckle sits 1/2 in below the point of the elbow; a longer cinch lifts it',
  );
  // Muscle asks half an inch, 0.4 in on this small horse.
  const frame = (inches: number): string => rub({ buckleAboveElbow: aim, frameClearance: { inches } });
  expect(frame(0.4 - HAIR)).toMatch(
    /^yes: the buckle's frame stays only 3\/8 in off the elbow; use a smaller buckle/,
  );
  expect(frame(-0.2)).toMatch(
    /^yes: the buckle's frame reaches onto the elbow, about 1\/4 in; use a smaller buckle/,
  );
  expect(frame(0.4 + HAIR)).toMatch(/^no: the buckle as described is clear/);
});

test('a saddle that rolls: a high flare would hold it only if something else lets it roll too', () => {
  const rolls = (because: string[], style = 'straight'): string =>
    said({ trouble: 'saddle-rolls', facts: { slipNeed: { level: 3, because } }, candidate: { style } });
  expect(rolls(['the saddle rolls'])).toMatch(/^no: look at the tree/);
  expect(rolls(['the saddle rolls', 'the barrel is round'])).toBe(
    'yes: the barrel is round, and a straight has no high flare to hold it',
  );
  expect(rolls(['the saddle rolls', 'the saddle slips back'])).toMatch(/^yes: it slips in more than one way/);
  expect(rolls(['the saddle rolls', 'the barrel is round'], 'high-flare')).toMatch(/^no: /);
  expect(rolls(['the saddle rolls', 'the barrel is round'], 'low-flare')).toContain(
    'a low-flare roper has no high flare',
  );
});

test('a saddle that rolls, style not named: the guessed style is not blamed', () => {
  const facts = { slipNeed: { level: 3, because: ['the saddle rolls', 'the barrel is round'] } };
  for (const style of ['straight', 'high-flare']) {
    expect(said({ trouble: 'saddle-rolls', facts, candidate: { style }, unsaid: true })).toBe(
      'yes: the barrel is round, unless it is a high flare: its style was not given',
    );
  }
});

test('a saddle that creeps or slips: where the ring hangs', () => {
  const at = (trouble: Trouble, x: number): string => said({ trouble, facts: { ring: { x } } });
  expect(at('creeps-forward', -slant)).toMatch(/^no: the ring is not far behind the groove/);
  expect(at('creeps-forward', -slant - HAIR)).toMatch(/^yes: the ring hangs .* behind the groove/);
  expect(at('creeps-forward', slant + 1)).toMatch(/^no: /);
  expect(at('slips-back', slant)).toMatch(/^no: the ring is not far ahead of the groove/);
  expect(at('slips-back', slant + HAIR)).toMatch(/^yes: the ring hangs .* ahead of the groove/);
  expect(at('slips-back', -slant - 1)).toMatch(/^no: /);
});

test('a girthy horse: the cinch may be why, and a vet is asked all the same', () => {
  const girthy = (inches: number): string => said({ trouble: 'girthy', clearance: { inches, likely: 0.2 } });
  expect(girthy(0.8)).toMatch(/^no: ask a vet first/);
  expect(girthy(0.8 - HAIR)).toMatch(
    /^yes: it sits .* off the elbow.*stop using this cinch; ask a vet all the same/,
  );
  expect(girthy(0)).toMatch(/^yes: it sits 0 in off/);
  expect(girthy(-0.4)).toMatch(/^yes: it reaches onto the elbow, about 1\/2 in.*stop/);
});

test('a cinch that cannot be laid: only causes that need no cinch, and the vet', () => {
  const order = orderOf({ horse: { trouble: ['girthy', 'elbow-gall', 'slips-back', 'creeps-forward'] } });
  const facts = { ...sizeOrder(order, defaultShop).facts, ring: { x: 9 } } as unknown as CaseFacts;
  const told = causesUnlaid(facts).map(({ trouble, explained, words }) => [
    trouble,
    explained,
    phraseText(words, 'in'),
  ]);
  expect(told).toEqual([
    [
      'girthy',
      undefined,
      expect.stringMatching(
        /^ask a vet first; .*; the current cinch, as described, does not fit on this horse/,
      ),
    ],
    [
      'elbow-gall',
      undefined,
      expect.stringMatching(/^the current cinch, as described, does not fit on this horse/),
    ],
    ['slips-back', true, expect.stringContaining('ahead of the groove')],
    ['creeps-forward', false, expect.stringContaining('not far behind the groove')],
  ]);
});
