/** The materials of a backlog for the bench: what to pull, buy and cut. */
import type { CutPutUp, MaterialPlan, Piece, Proven } from '../work/cutting/types.ts';
import type { Buy, CordNeed, Materials } from '../work/materials.ts';
import { BODY_PLY } from '../numbers/plies.ts';
import { feetText } from '../units/feet.ts';
import { plural } from '../units/phrase.ts';
import {
  cordName,
  leftOutBlocks,
  doubtBlocks,
  provisionalNotice,
  takenText,
  type BacklogResult,
} from '../words/about-backlog.ts';
import { hereText, shortBlocks } from '../words/about-shelf.ts';
import { left, right, under, type Block, type Sheet } from '../pages/sheet.ts';
import { capital } from '../units/text.ts';

/** The paper. */
export function materialsSheet(materials: Materials, results: readonly BacklogResult[]): Sheet {
  const { orders, shop, day, cords, hardware, buy } = materials;
  return {
    title: `Materials for ${plural(orders.length, 'order')}`,
    shop,
    about: [`Written ${day}. Feet of body cord include 15% extra.`],
    notice: provisionalNotice(orders),
    blocks: [
      ...doubtBlocks(orders),
      ...under('Ask first', [{ kind: 'list', items: cords.flatMap(askTexts) }]),
      ...under('Cord to pull', [cordTable(cords)]),
      ...under('Hardware to pull', [
        {
          kind: 'table',
          columns: [...left('What'), ...right('Needed', 'On hand', 'Short')],
          rows: hardware.map(({ id, metal, needed, onHand, short }) => [
            metal === undefined ? id : `${id}, ${metal}`,
            ...[needed, onHand].map(String),
            short === 0 ? '' : String(short),
          ]),
        },
      ]),
      ...under('To buy', [{ kind: 'boxes', items: buy.map(buyText) }]),
      ...shortBlocks(materials.shares, day),
      ...planBlocks(materials),
      ...under('Orders included', [
        {
          kind: 'pairs',
          rows: orders.map((order) => [order.key, takenText(order)] as const),
        },
      ]),
      ...leftOutBlocks(results),
    ],
    rules: [],
    cautions: [],
  };
}

/** "lot N-114". */
const lotName = ({ lot, bought }: { lot: string; bought: boolean }): string =>
  bought ? 'to buy, one new lot' : lot === '' ? 'lot not given' : `lot ${lot}`;

/** One row per lot, then what no lot can supply. */
function cordTable(cords: readonly CordNeed[]): Block {
  return {
    kind: 'table',
    columns: [...left('Cord', 'From'), ...right('Pieces', 'Feet')],
    rows: cords.flatMap((need) => {
      const { lots, short } = need;
      const name = cordName(need);
      const pulled = lots.map((lot) => [name, lotName(lot), String(lot.pieces), feetText(lot.length)]);
      const lacking = (['to buy, see below', "can't get more"] as const).flatMap((from) => {
        const own = short.filter(({ why }) => (why === 'no-length') === (from === 'to buy, see below'));
        const missing = own.reduce((sum, { total }) => sum + total, 0);
        const pieces = own.reduce((sum, each) => sum + each.pieces.length, 0);
        return missing === 0 ? [] : [[name, from, String(pieces), feetText(missing)]];
      });
      const open =
        need.onHand === undefined ? [[name, 'ask first', String(need.pieces), feetText(need.needed)]] : [];
      return [...pulled, ...lacking, ...open];
    }),
  };
}

function askTexts({ color, ply, onHand, near, orders }: CordNeed): string[] {
  const kind = ply === BODY_PLY ? 'body' : 'accent';
  if (color === undefined) return [`No color chosen for the ${kind} cord: ${orders.join(', ')}.`];
  if (onHand !== undefined) return [];
  const hint = near === undefined ? '' : ` (did you mean ${near}?)`;
  return [`${capital(color)} ${kind} cord: not in the shop file${hint}. Asked for in ${orders.join(', ')}.`];
}

const buyText = (buy: Buy): string => `${boughtText(buy)}: ${hereText(buy.comes)}`;

function boughtText(buy: Buy): string {
  switch (buy.kind) {
    case 'put-up':
      return `${String(buy.count)} x ${feetText(buy.length)} of ${cordName(buy)}, one dye lot`;
    case 'cord':
      return `${feetText(buy.length)} of ${cordName(buy)}, one dye lot per order; the longest piece is ${feetText(buy.longest)} (the shop file does not say how long its spools or hanks are)`;
    default:
      return `${String(buy.count)} x ${buy.id}`;
  }
}

/** A paragraph per cord, a check box per spool. */
function planBlocks({ plan, cuts, orders }: Materials): Block[] {
  const waiting = new Set(orders.filter(({ ticket }) => !ticket.measured).map(({ key }) => key));
  const used = plan.materials.filter(({ putUps }) => putUps.length > 0);
  return under(
    'Cutting plan',
    used.flatMap((material): Block[] => [
      { kind: 'text', tone: 'strong', text: `${capital(cordName(material))}: ${summaryText(material)}` },
      {
        kind: 'boxes',
        items: material.putUps.map((putUp) =>
          putUpText(putUp, (piece) => pieceText(piece, { cuts, waiting })),
        ),
      },
    ]),
  );
}

function summaryText(material: MaterialPlan): string {
  const { putUps, score } = material;
  const of = (origin: CutPutUp['origin']): number => putUps.filter((putUp) => putUp.origin === origin).length;
  const from = [
    of('remnant') === 0 ? '' : plural(of('remnant'), 'remnant'),
    of('shelf') === 0 ? '' : `${plural(of('shelf'), 'spool or hank', 'spools or hanks')} off the shelf`,
    of('bought') === 0 ? '' : `${plural(of('bought'), 'spool or hank', 'spools or hanks')} to buy`,
  ].filter((text) => text !== '');
  const left = [
    material.returned === 0 ? '' : `${feetText(material.returned)} goes back on the shelf`,
    `${score.waste.value === 0 ? 'no' : feetText(score.waste.value)} waste`,
  ].filter((text) => text !== '');
  return `from ${from.join(', ')}; ${left.join(', ')}. ${provenText(material)}`;
}

function provenText({ proven, putUps, score: { short, bought, opened } }: MaterialPlan): string {
  const both = ['bought', 'here'].every((side) =>
    putUps.some(({ origin }) => (origin === 'bought') === (side === 'bought')),
  );
  const turn = both ? ' with the shelf going to the earliest due' : '';
  if (proven) return `Proven best${turn}: no plan leaves fewer pieces uncut, buys fewer or opens fewer.`;
  const over = (...parts: readonly Proven[]): number =>
    parts.reduce((sum, { value, bound }) => sum + Math.max(0, value - bound), 0);
  const [undone, spools] = [over(short), over(bought, opened)];
  const gaps = [
    ...(undone === 0 ? [] : [`at most ${plural(undone, 'piece')} more could be cut`]),
    ...(spools === 0 ? [] : [`at most ${plural(spools, 'spool')} more than needed`]),
  ];
  return `Not proven best${turn}: ${gaps.join(', ')}.`;
}

/** "Lot N-114, remnant of 120 ft: 2402 61 ft; 59 ft left, waste". */
function putUpText(putUp: CutPutUp, piece: (piece: Piece) => string): string {
  const { pieces, leftover, goesBack } = putUp;
  const left =
    leftover === 0
      ? 'nothing left'
      : `${feetText(leftover)} left, ${goesBack ? 'goes back on the shelf' : 'waste'}`;
  return `${capital(originText(putUp))}: ${pieces.map(piece).join(', ')}; ${left}`;
}

/** "lot N-114, spool or hank of 300 ft, no. 2". */
function originText({ origin, lot, length, copy }: CutPutUp): string {
  const number = copy === 1 ? '' : `, no. ${String(copy)}`;
  if (origin === 'bought') return `bought, spool or hank of ${feetText(length)}${number}`;
  const kind = origin === 'remnant' ? 'remnant' : 'spool or hank';
  return `${lot === '' ? 'lot not given' : `lot ${lot}`}, ${kind} of ${feetText(length)}${number}`;
}

interface Known {
  readonly cuts: Materials['cuts'];
  /** Orders not taped. */
  readonly waiting: ReadonlySet<string>;
}

function pieceText({ cut, number, order, length }: Piece, { cuts, waiting }: Known): string {
  const of = cuts.get(cut);
  const which = of !== undefined && of.quantity > 1 ? `, no. ${String(number)}` : '';
  const parts = [
    of === undefined ? '' : `${of.use}${which}`,
    waiting.has(order) ? 'NOT YET: not measured' : '',
  ];
  const told = parts.filter((part) => part !== '').join('; ');
  return `${order} ${feetText(length)}${told === '' ? '' : ` (${told})`}`;
}
