/** The bench ticket, for the maker. */
import type { Ticket } from '../work/ticket.ts';
import { outcomeResults } from '../numbers/outcome-results.ts';
import { left, right, under, type Block, type Sheet } from '../pages/sheet.ts';
import { allOf } from '../units/phrase.ts';
import { capital, phraseText, quantityText, type Units } from '../units/text.ts';
import { strungText } from '../words/counter-words.ts';
import { barNames, specName } from '../words/words.ts';

/** The paper. */
export function ticketSheet(ticket: Ticket, units: Units): Sheet {
  const { order, horse, shop, day, due, quantity, measured, doubts, open, cautions } = ticket;
  const about = [
    horse === undefined ? '' : `For ${horse}.`,
    `Written ${day}${due === undefined ? '' : `, due ${due}`}.`,
    quantity === 1 ? '' : `${String(quantity)} cinches, all alike.`,
  ];
  return {
    title: `Bench ticket ${order}`,
    shop,
    about: about.filter((line) => line !== ''),
    notice: measured ? undefined : 'DO NOT CUT: ring to ring is not taped, and this length is a guess.',
    blocks: [
      ...under('Ask first', [
        {
          kind: 'list',
          items: [
            ...doubts.map((doubt) => phraseText(doubt, units)),
            ...open.map((text) => `${capital(text)}.`),
          ],
        },
      ]),
      ...makeBlocks(ticket, units),
      ...cordBlocks(ticket, units),
      ...placeBlocks(ticket, units),
      ...under('Order of work', [
        { kind: 'boxes', items: ticket.steps.map((step) => phraseText(step, units)) },
      ]),
      ...under('Before it leaves the bench', [
        { kind: 'boxes', items: ticket.checks.map((check) => phraseText(check, units)) },
      ]),
      ...under('Maker fills in', [{ kind: 'blanks', labels: blanksFor(quantity) }]),
      ...outcomeBlocks(ticket),
    ],
    rules: [],
    cautions,
  };
}

const blanks = [
  'Hours worked',
  'Body cord used, ft',
  'Accent cord used, ft',
  'Dye lots',
  'Finished length, flat',
  'Width in the middle',
  'Tied by, and on',
];

/** One line for all cinches, or for each. */
const blanksFor = (quantity: number): string[] =>
  quantity === 1
    ? blanks
    : blanks.map((label) =>
        ['Finished length, flat', 'Width in the middle'].includes(label)
          ? `${label}, of each`
          : `${label}, all ${String(quantity)}`,
      );

/** With the names `learn` reads. */
function outcomeBlocks({ order, style, strands, buckle, quantity }: Ticket): Block[] {
  const known = `order ${order}, style ${style}, strands ${String(strands)}, buckle ${buckle.id}`;
  return under(`For the outcomes file${quantity === 1 ? '' : ', each cinch a line'}`, [
    { kind: 'text', text: `${known}, if tied as above.` },
    {
      kind: 'blanks',
      labels: ['length', 'days, in use when reported', `result: ${outcomeResults.join(', ')}`],
    },
  ]);
}

const size = (value: number, units: Units): string => quantityText({ value, as: 'length' }, units);

function makeBlocks(ticket: Ticket, units: Units): Block[] {
  const { lengths, buckle, dees, layers, tolerances, quantity, keeper, hours } = ticket;
  const all = (each: number): string => (quantity === 1 ? '' : `; ${String(each * quantity)} for all`);
  const metal = buckle.metal === undefined ? '' : `, ${buckle.metal}`;
  const time = hours === undefined ? '' : hoursText(hours);
  const inches = (value: number): string => size(value, units);
  const rows: [label: string, text: string][] = [
    ['Cinch', `${specName(ticket)}, ${strungText(layers)}`],
    [
      'Finished length',
      `${inches(lengths.finished)}, outside to outside of the hardware, flat, under light hand tension; give or take ${inches(tolerances.length)}`,
    ],
    ['Stretch allowed for', `${inches(lengths.stretch)}, in the length already; add nothing`],
    [
      'Frame setting',
      `${inches(lengths.frame)}, outside to outside of the buckles; ${inches(lengths.frameBars)} between buckle bars`,
    ],
    ['Strung length', `${inches(lengths.strung)} each strand, between buckle bars, off the frame`],
    ['Flare', flareText(ticket, units)],
    ['Buckle, near side', `${buckle.id}${metal}, bar ${inches(buckle.barWidth)}`],
    ['Buckle, off side', `${buckle.id}${metal}, the same${all(2)}`],
    ...dees.map(({ id, count }): [string, string] => ['Dees', `${String(count)} x ${id}${all(count)}`]),
    ['Options', ticket.options.join(', ')],
    ['Keeper', keeper ? 'one in the middle, for the connecting strap: double rigged' : ''],
    [
      'Latigo, off billet',
      `take up ${inches(ticket.run)} each side, from ring to buckle${ticket.measured ? '' : ', a guess'}`,
    ],
    ['Time allowed', time === '' || quantity === 1 ? time : `${time} for ${allOf(quantity)}`],
    ["Customer's notes", ticket.notes ?? ''],
  ];
  return under('What to tie', [{ kind: 'pairs', rows: rows.filter(([, text]) => text !== '') }]);
}

function flareText({ flare, half }: Ticket, units: Units): string {
  if (flare === undefined) return '';
  const whole = Math.min(flare.whole, half);
  return `starts ${size(flare.start, units)} from the buckle, whole at ${size(whole, units)}`;
}

function cordBlocks({ sections, pieces, accents, barInches, quantity }: Ticket, units: Units): Block[] {
  const feetText = (feet: number): string =>
    quantity === 1 ? String(feet) : `${String(feet)} x ${String(quantity)} = ${String(feet * quantity)}`;
  return under('Cut list; body cord includes 15% extra', [
    {
      kind: 'table',
      columns: [
        ...left('Cord', 'For, from the front'),
        ...right('Feet', 'Tail each end'),
        ...left('Starts', 'Ends'),
      ],
      rows: [
        ...pieces.map(({ color, ply, strands, feet, tail }, i) => [
          `${color ?? 'no color chosen'}, ${String(ply)}-ply`,
          `strands ${strands} (${String(sections[i]?.passes ?? 0)})`,
          feetText(feet),
          size(tail, units),
          sections[i]?.startsAt ?? '',
          sections[i]?.endsAt ?? '',
        ]),
        ...accents.map(({ color, feet }) => [
          `${color ?? 'no color chosen'}, 2-ply accent`,
          `${size(barInches, units)} of bar`,
          feetText(feet),
          '',
          '',
          '',
        ]),
      ],
    },
    { kind: 'text', tone: 'quiet', text: tailsText(sections) },
  ]);
}

/** An odd number of passes leaves one tail at each buckle. */
function tailsText(sections: Ticket['sections']): string {
  const at = (end: 'near' | 'off'): number =>
    sections.reduce(
      (sum, { startsAt, endsAt }) => sum + Number(startsAt === end) + Number(endsAt === end),
      0,
    );
  const tails = (count: number): string => `${String(count)} ${count === 1 ? 'tail' : 'tails'}`;
  return `${tails(at('near'))} at the near buckle, ${tails(at('off'))} at the off buckle.`;
}

function placeBlocks({ bars, profile, half }: Ticket, units: Units): Block[] {
  return under('Where it sits, from the low edge of the buckle; the other half mirrors it', [
    {
      kind: 'table',
      half: true,
      columns: [...left('Woven bar'), ...right('From', 'To', 'Width'), ...left('Accent')],
      rows: bars.map(({ kind, from, length, width, accent }) => [
        barNames[kind],
        size(from, units),
        kind === 'centre' ? `${size(length, units)} over the middle` : size(from + length, units),
        size(width, units),
        accent ?? 'none chosen',
      ]),
    },
    {
      kind: 'table',
      half: true,
      columns: [...left('From the buckle'), ...right('Width')],
      rows: profile.map(({ at, width }) => [
        at === 0 ? 'on its bar' : at === half ? `${size(at, units)}, the middle` : size(at, units),
        size(width, units),
      ]),
    },
  ]);
}

/** "1 h 20 min". */
function hoursText(hours: number): string {
  const minutes = Math.ceil(hours * 60 - 1e-6);
  return `${String(Math.floor(minutes / 60))} h ${String(minutes % 60)} min`;
}
