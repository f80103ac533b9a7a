/** Every key of an order changes some answer. */
import { describe, expect, test } from 'vitest';
import type { Advice } from '../../src/advice/advice.ts';
import { checkCinch, type Checked } from '../../src/advice/check.ts';
import { workingOf } from '../../src/horse/facts.ts';
import { sizeOrder } from '../../src/index.ts';
import { orderSchema } from '../../src/order/order-schema.ts';
import { keyPlaces } from '../../src/order/schema-keys.ts';
import { agendaOf } from '../../src/work/agenda.ts';
import { plannedOf } from '../../src/work/planned.ts';
import { quoteOf } from '../../src/work/quote.ts';
import { takenOf } from '../../src/work/taken.ts';
import { ticketOf } from '../../src/work/ticket.ts';
import { pictureText } from '../../src/words/about-photo.ts';
import { askCsv } from '../../src/views/ask-data.ts';
import { quoteSheet } from '../../src/views/quote-sheet.ts';
import { sheetsMarkdown } from '../../src/pages/sheet-markdown.ts';
import { phraseText } from '../../src/units/text.ts';
import type { PhotoResult } from '../../src/words/types.ts';
import { defaultShop as shop } from '../../src/cinch/default-shop.ts';
import { orderIn } from '../support/door.ts';

const day = '2026-11-20';

type Tree = Record<string, unknown>;

const advised = (tree: Tree): Advice => sizeOrder(orderIn(JSON.stringify(tree)), shop);

const checked = ({ passes, judged, causes }: Checked): unknown => [
  passes,
  judged?.findings.map(({ rule, judgement }) => [rule, judgement]),
  causes.map(({ words }) => phraseText(words, 'in')),
];

const answers = {
  cinch: ({ first }: Advice) => {
    if (first === undefined) return 'none';
    const { style, strands, length, buckle } = first.candidate;
    return [style, strands, length, buckle.id];
  },
  sureness: ({ first }: Advice) => first?.candidate.clearance.likely,
  margins: ({ first }: Advice) => first?.findings.map(({ rule, margin }) => [rule, margin]),
  welfare: ({ welfare }: Advice) => welfare.map((phrase) => phraseText(phrase, 'in')),
  working: ({ facts }: Advice) => workingOf(facts),
  check: (advice: Advice) => {
    const { current } = advice.facts.order;
    return current === undefined ? undefined : checked(checkCinch(current, 'current', advice));
  },
  tied: (advice: Advice) => {
    const { takes, spec } = takenOf(advice)!;
    const { style, strands, length, buckle } = spec.candidate;
    return [takes, style, strands, length, buckle.id];
  },
  quote: (advice: Advice) =>
    sheetsMarkdown([quoteSheet(quoteOf(takenOf(advice)!, advice, { day }), { units: 'in', itemized: true })]),
  ticket: (advice: Advice) => ticketOf(takenOf(advice)!.spec, advice, { day }),
  schedule: (advice: Advice) =>
    agendaOf([{ ...plannedOf(advice, day)!, key: '1' }], shop, { from: day, ordered: day }).task.jobs,
  asking: (advice: Advice) => {
    const result = { advice, now: undefined, worths: [], drawing: { strata: 1, seed: 1 } };
    return askCsv([{ ok: true, file: 'o.yaml', result, toAsk: [], photo: undefined }]);
  },
  picture: ({ facts }: Advice) =>
    pictureText({ photo: facts.photo, picture: { there: false } } as PhotoResult & { ok: true }),
} satisfies Record<string, (advice: Advice) => unknown>;

const plain: Tree = { order: '1', horse: { height: '15.2 hh' }, saddle: { rigging: '7/8' } };
const worn = { style: 'straight', strands: 17, buckle: 'plain 3', length: '32 in' };
const sides = { horse: { height: '15.1 hh', 'elbow-room': { near: '4.5 in', off: '4.5 in' } } };
const galled = { horse: { height: '15.2 hh', trouble: ['elbow-gall'] }, current: worn };
const rubbed = { horse: { height: '15.2 hh', trouble: ['buckle-rub'] }, current: worn };
const wish = { wants: { style: 'straight', strands: 17, buckle: 'plain 3', length: '30 in' } };
const stick = { length: '36 in', from: [644, 640], to: [956, 647] };
const sheet = {
  width: '24 in',
  height: '18 in',
  corners: [
    [700, 560],
    [908, 560],
    [908, 716],
    [700, 716],
  ],
};
const pictured = (more: Tree = {}): Tree => ({
  photo: {
    file: 'side.jpg',
    'image-size': [1600, 1200],
    reference: stick,
    plumb: { top: [1137, 362], bottom: [1132, 695] },
    ring: [728, 549],
    elbow: [696, 673],
    'girth-groove': [736, 698],
    spine: [741, 475],
    underline: [736, 698],
    fork: [725, 431],
    cantle: [830, 440],
    'camera-distance': '12 ft',
    ...more,
  },
});
const onSheet = pictured({ reference: sheet, plumb: undefined });

type Answer = keyof typeof answers;
type Row = readonly [key: string, answer: Answer, from: unknown, to: unknown, beside?: Tree];

/** Key, whose answer it changes, two values, the rest. */
const live: readonly Row[] = [
  ['order', 'ticket', '1', '2'],
  ['customer.name', 'quote', undefined, 'Ann Example'],
  ['customer.phone', 'asking', undefined, '555 0100'],
  ['customer.email', 'asking', undefined, 'ann@example.com'],
  ['due', 'schedule', undefined, '2026-12-01'],
  ['taken', 'quote', '2026-11-02', '2026-11-20', { due: '2026-12-01' }],
  ['quantity', 'schedule', 1, 3],
  ['horse.name', 'ticket', undefined, 'Bo'],
  ['horse.height', 'cinch', '15.2 hh', '13.2 hh'],
  ['horse.heart-girth', 'cinch', undefined, '80 in'],
  ['horse.body-length', 'working', undefined, '67 in'],
  ['horse.elbow-room', 'cinch', undefined, '5 in'],
  ['horse.elbow-room.near', 'cinch', '3.5 in', '4.5 in', sides],
  ['horse.elbow-room.off', 'cinch', '3.5 in', '4.5 in', sides],
  ['horse.barrel', 'cinch', 'average', 'round', { saddle: { rigging: 'full' } }],
  ['horse.barrel.depth', 'margins', '25 in', '29 in'],
  ['horse.withers', 'cinch', 'average', 'low', { horse: { height: '15.2 hh', barrel: 'round' } }],
  ['horse.condition', 'cinch', 5, 9],
  ['horse.kind', 'cinch', 'light', 'draft'],
  ['horse.trouble', 'welfare', [], ['elbow-gall']],
  ['saddle.rigging', 'cinch', '7/8', '5/8'],
  ['saddle.rigging.set-back', 'cinch', '1.5 in', '5 in'],
  ['saddle.style', 'cinch', 'ring', 'dropped'],
  ['saddle.bar-span', 'sureness', undefined, '15 in'],
  ['saddle.ring-to-ring', 'cinch', undefined, '40 in'],
  ['saddle.ring-drop', 'cinch', undefined, '17 in'],
  ['saddle.double', 'ticket', false, true],
  ['use', 'cinch', 'trail', 'roping', { saddle: { rigging: 'full' } }],
  ['current.style', 'check', 'straight', 'high-flare', galled],
  ['current.strands', 'cinch', 15, 27, galled],
  ['current.buckle', 'cinch', 'plain 3', 'plain 4', rubbed],
  ['current.length', 'check', '32 in', '26 in', rubbed],
  ['current.age', 'check', '1 y', '5 y', { ...galled, saddle: { rigging: '3/4' } }],
  ['wants.style', 'tied', 'straight', 'low-flare', { wants: { strands: 21 }, saddle: { rigging: '3/4' } }],
  ['wants.strands', 'tied', 17, 19, wish],
  ['wants.buckle', 'tied', 'plain 3', 'plain 3 1/2', wish],
  ['wants.length', 'tied', '30 in', '31 in', wish],
  ['colors.body', 'ticket', ['natural'], ['charcoal']],
  ['colors.accent', 'ticket', ['rust'], ['sage']],
  ['options', 'quote', [], ['initials']],
  ['notes', 'welfare', 'call before noon', 'raw behind the left elbow'],
  ['photo.file', 'picture', 'side.jpg', 'other.jpg', pictured()],
  ['photo.image-size', 'sureness', [1600, 1200], [1700, 1200], pictured()],
  ['photo.reference.length', 'sureness', '36 in', '34 in', pictured()],
  ['photo.reference.from', 'sureness', [644, 640], [630, 640], pictured()],
  ['photo.reference.to', 'sureness', [956, 647], [970, 647], pictured()],
  ['photo.reference.width', 'sureness', '24 in', '23 in', onSheet],
  ['photo.reference.height', 'sureness', '18 in', '17 in', onSheet],
  ['photo.reference.corners', 'sureness', sheet.corners, [[702, 561], ...sheet.corners.slice(1)], onSheet],
  ['photo.reference-depth', 'sureness', '0 in', '4 in', pictured()],
  ['photo.plumb.top', 'sureness', [1137, 362], [1147, 362], pictured()],
  ['photo.plumb.bottom', 'sureness', [1132, 695], [1142, 695], pictured()],
  ['photo.ring', 'sureness', [728, 549], [740, 549], pictured()],
  ['photo.elbow', 'sureness', [696, 673], [690, 673], pictured()],
  ['photo.girth-groove', 'sureness', [736, 698], [742, 698], pictured()],
  ['photo.spine', 'sureness', [741, 475], [741, 465], pictured()],
  ['photo.underline', 'sureness', [736, 698], [736, 706], pictured()],
  ['photo.fork', 'sureness', [725, 431], [718, 431], pictured()],
  ['photo.cantle', 'sureness', [830, 440], [838, 440], pictured()],
  ['photo.camera-distance', 'sureness', '12 ft', '18 ft', pictured()],
];

function set(tree: Tree, path: string, value: unknown): Tree {
  const [key = '', ...rest] = path.split('.');
  const at = tree[key];
  const below = typeof at === 'object' && at !== null ? (at as Tree) : {};
  return { ...tree, [key]: rest.length === 0 ? value : set(below, rest.join('.'), value) };
}

describe('every key of an order', () => {
  test('is in the table of this test', () => {
    const places = keyPlaces(orderSchema);
    const blocks = new Set(places.map(({ path }) => path));
    const leaves = places
      .flatMap(({ path, keys }) => keys.map((key) => (path === '' ? key : `${path}.${key}`)))
      .filter(
        (key) => !blocks.has(key) || ['horse.barrel', 'horse.elbow-room', 'saddle.rigging'].includes(key),
      );
    expect(live.map(([key]) => key).toSorted()).toEqual([...new Set(leaves)].toSorted());
  });

  test.each(live.map((row) => [row[0], row[1], row] as const))('%s changes the %s', (key, answer, row) => {
    const [, , from, to, beside] = row;
    const at = (value: unknown): unknown =>
      answers[answer](advised(set({ ...plain, ...beside }, key, value)));
    expect(at(from)).toEqual(at(from));
    expect(at(to)).not.toEqual(at(from));
  });
});
