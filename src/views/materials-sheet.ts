/** The materials of a backlog for the bench: what to pull, buy, and cut from what. */
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
import { planBlocks } from './cutting-plan.ts';
import { under, type Block, type Sheet } from '../pages/sheet.ts';
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
          columns: [{ head: 'What' }, ...right('Needed', 'On hand', 'Short')],
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

const right = (...heads: readonly string[]) => heads.map((head) => ({ head, align: 'right' as const }));

/** "lot N-114". */
const lotName = ({ lot, bought }: { lot: string; bought: boolean }): string =>
  bought ? 'to buy, one new lot' : lot === '' ? 'lot not given' : `lot ${lot}`;

/** One row per lot, then what no lot can supply. */
function cordTable(cords: readonly CordNeed[]): Block {
  return {
    kind: 'table',
    columns: [{ head: 'Cord' }, { head: 'From' }, ...right('Pieces', 'Feet')],
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
