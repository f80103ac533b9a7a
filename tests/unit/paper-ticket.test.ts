/** Bench tickets: nothing private, no cutting before measuring. */
import { describe, expect, test } from 'vitest';
import { sizeOrder } from '../../src/index.ts';
import { piecesOf, sectionsOf } from '../../src/work/strands.ts';
import { ticketOf } from '../../src/work/ticket.ts';
import { ticketSheet } from '../../src/views/ticket-sheet.ts';
import { sheetsHtml } from '../../src/pages/sheet-html.ts';
import { sheetText as sheetsScreen } from '../support/screens.ts';
import { ticketsJson } from '../../src/views/ticket-data.ts';
import { phraseText } from '../../src/units/text.ts';
import { defaultShop } from '../../src/cinch/default-shop.ts';
import { styleIds } from '../../src/cinch/styles.ts';
import { orderOf, rigging } from '../support/orders.ts';
import { ticketFor } from '../support/papers.ts';
import { within } from '../support/within.ts';

const order = orderOf({
  customer: { name: 'Nell Secret', phone: '555 0199', email: 'nell@example.com' },
  notes: 'Call 555 0198 after six. Winter coat: two inches more. Agreed on $90; or mail n@example.com!',
  saddle: { rigging: rigging('3/4'), ringToRing: 44 },
  colors: { body: ['natural', 'charcoal'], accent: ['rust', 'black'] },
});
const screen = { color: false, units: 'in', width: 80 } as const;

describe('nothing private', () => {
  const ticket = ticketFor(order);
  const sheet = ticketSheet(ticket, 'in');
  const json = ticketsJson([{ ok: true, file: 'f', order: 'o', paper: ticket, none: undefined }]);
  test.each([
    ['screen', sheetsScreen([sheet], screen)],
    ['HTML', sheetsHtml([sheet])],
    ['JSON', json],
    ['data', JSON.stringify({ ...ticket, buckle: { ...ticket.buckle, price: undefined } })],
  ])('no name, phone, mail or price in the %s', (_, text) => {
    expect(text).not.toMatch(/Nell|555|example\.com|after six|\$90/);
    expect(text).not.toMatch(/USD|price|\b\d+\.\d\d (?:each|a foot)/);
  });
});

test('what the maker needs of the notes is there, and that there was more', () => {
  expect(ticketFor(order).notes).toBe('Winter coat: two inches more. (More in the order.)');
  expect(ticketFor({ ...order, notes: 'Initials N.S.' }).notes).toBe('Initials N.S.');
  expect(ticketFor({ ...order, notes: undefined }).notes).toBe(undefined);
  expect(ticketFor({ ...order, notes: '  Soft hands.  No dye. \n\n Wide end bar ' }).notes).toBe(
    'Soft hands. No dye. Wide end bar',
  );
});

describe('measured or not', () => {
  test('without ring to ring the first thing said is not to cut', () => {
    const { saddle, ...rest } = order;
    const ticket = ticketFor({ ...rest, saddle: { ...saddle, ringToRing: undefined } });
    const text = sheetsScreen([ticketSheet(ticket, 'in')], screen);
    expect(text.indexOf('DO NOT CUT')).toBeGreaterThan(0);
    expect(text.indexOf('DO NOT CUT')).toBeLessThan(text.indexOf('What to tie'));
    expect(ticket.steps[0]!.words.join('')).toMatch(/^Tape ring to ring/);
  });
  test('with it nothing of the kind is said', () => {
    expect(sheetsScreen([ticketSheet(ticketFor(order), 'in')], screen)).not.toMatch(/DO NOT CUT/);
  });
});

describe('where things sit', () => {
  const advice = sizeOrder(order, defaultShop);
  const specs = styleIds.flatMap((style) =>
    advice.specs.filter(({ candidate: c }) => c.style === style).slice(0, 3),
  );
  test.each(specs.map((spec) => [`${spec.candidate.style} ${spec.candidate.strands}`, spec] as const))(
    '%s',
    (_, spec) => {
      const ticket = ticketOf(spec, advice, { day: '2026-11-20' });
      const { candidate } = spec;
      const stops = ticket.profile.map(({ at }) => at);
      expect(stops.slice(0, -1)).toEqual(stops.slice(0, -1).map((_, i) => 2 * i));
      within(stops.at(-1)!, candidate.length / 2 - candidate.buckle.frameHeight, 1e-9);
      within(ticket.profile.at(-1)!.width, candidate.shape.full, 1e-9);
      expect(ticket.profile[0]!.width).toBeLessThanOrEqual(candidate.buckle.barWidth);
      const rows = ticket.bars.map(({ from, length }) => [from, from + length] as const);
      expect(rows.flat()).toEqual(rows.flat().toSorted((a, b) => a - b));
      const last = ticket.bars.filter(({ kind }) => kind !== 'centre').at(-1)!;
      // A roper's last row ends where its flare starts.
      if (ticket.flare !== undefined) within(last.from + last.length, ticket.flare.start, 0.13);
    },
  );
  test('a low flare has a further weave where a high flare has none', () => {
    const kinds = (style: string) =>
      ticketOf(
        advice.specs.find(({ candidate: c }) => c.style === style)!,
        advice,
        { day: '2026-11-20' },
      ).bars.map(({ kind }) => kind);
    expect(kinds('high-flare')).toEqual(['end', 'pinch', 'centre']);
    expect(kinds('low-flare')).toContain('further');
    expect(kinds('low-flare').length).toBeGreaterThan(3);
    expect(kinds('straight')).toEqual(['end', 'centre']);
  });
});

describe('options', () => {
  const steps = (change: object) =>
    ticketFor({ ...order, options: ['Center Dees', 'initials', 'tie-down dee'], ...change }).steps.map(
      (step) => phraseText(step, 'in'),
    );
  test('with dees are one step, others one each, and none is open', () => {
    const own = steps({}).filter((step) => /dee|initials/.test(step));
    expect(own).toEqual([
      'For center dees, sew in 2 x dee 1 1/2 at the center bar.',
      'For tie-down dee, sew in 1 x dee 1 at the center bar.',
      'Option: initials.',
    ]);
    expect(steps({ quantity: 3 }).filter((step) => step.includes('dees'))).toEqual([
      'For center dees, sew in 2 x dee 1 1/2 at the center bar for each cinch.',
    ]);
    const ticket = ticketFor({ ...order, options: ['Center Dees', 'initials'] });
    expect([ticket.options, ticket.open]).toEqual([['center dees', 'initials'], []]);
  });
});

test('buckles to pull are for all cinches', () => {
  const pull = (quantity: number) => phraseText(ticketFor({ ...order, quantity }).steps[0]!, 'in');
  expect(pull(1)).toMatch(/^Pull 2 [^;]* buckles; /);
  expect(pull(2)).toMatch(/^Pull 4 [^;]* buckles for both; /);
  expect(pull(3)).toMatch(/^Pull 6 [^;]* buckles for all 3; /);
});

test('three strands take two colors, a single one is called by its number', () => {
  const sections = sectionsOf(3, ['natural', 'rust', 'black']);
  expect(sections.map(({ color, from, to }) => [color, from, to])).toEqual([
    ['natural', 1, 1],
    ['rust', 2, 2],
    ['natural', 3, 3],
  ]);
  expect(piecesOf(sections, 30).map(({ strands }) => strands)).toEqual(['1', '2', '3']);
  expect(piecesOf(sectionsOf(13, []), 30)).toMatchObject([{ color: undefined, strands: '1 to 13' }]);
});

describe('what is open', () => {
  test('colors and options that are not said or not known are asked for', () => {
    expect(ticketFor({ ...order, colors: undefined, options: ['initals'] }).open).toEqual([
      'no body cord color chosen',
      'no accent cord color chosen',
      'option initals: not in the shop file (did you mean initials?)',
    ]);
    expect(ticketFor(order).open).toEqual([]);
    expect(ticketFor({ ...order, colors: undefined }).sections).toMatchObject([{ color: undefined }]);
  });

  test('a cord is known by its color and its ply', () => {
    const colors = { body: ['Natural', 'turquois'], accent: ['sorrel'] };
    expect(ticketFor({ ...order, colors }).open).toEqual([
      'turquois body cord: not in the shop file',
      'sorrel accent cord: not in the shop file',
    ]);
  });
});

describe('what is told before anything is tied', () => {
  const doubts = (change: Parameters<typeof orderOf>[0], rank = 1) =>
    ticketFor(
      orderOf({ saddle: { rigging: rigging('7/8'), ringToRing: 44 }, ...change }),
      defaultShop,
      rank,
    ).doubts.map((phrase) => phraseText(phrase, 'in'));

  test('a sore first, then tapes that disagree', () => {
    const told = doubts({ horse: { trouble: ['elbow-gall'] } }, 1);
    expect(told[0]).toMatch(/^GALLED AT THE ELBOW\. Let it heal first\./);
    const saddle = { rigging: rigging('7/8'), ringToRing: 55 };
    expect(doubts({ saddle }).join(' ')).toMatch(/ring to ring/);
  });

  test('a chance under four in five, as long as a tape could tell', () => {
    const all = { horse: { elbowRoom: 3.2, barrel: 'average' } } as const;
    const saddle = { rigging: { kind: 'measured', setBack: 1.5 }, ringToRing: 44 } as const;
    const { specs } = sizeOrder(orderOf({ ...all, saddle }), defaultShop);
    const rank = 1 + specs.findIndex(({ candidate }) => candidate.clearance.chance < 0.8);
    expect(rank).toBeGreaterThan(0);
    expect(doubts({ ...all, saddle }, rank)).toEqual([]);
    const open = sizeOrder(orderOf({ saddle: { rigging: rigging('7/8'), ringToRing: 44 } }), defaultShop);
    const unsure = 1 + open.specs.findIndex(({ candidate }) => candidate.clearance.chance < 0.8);
    expect(doubts({}, unsure)).toEqual([
      expect.stringMatching(
        /^The chance to clear the elbow is \d\d%: measure [a-z -]+ or [a-z -]+ before you tie\.$/,
      ),
    ]);
    expect(doubts({})).toEqual([]);
  });
});
