/** What an order lacks on the shelf, worded alike on every paper. */
import { ACCENT_PLY, BODY_PLY } from '../numbers/plies.ts';
import { feetText } from '../units/feet.ts';
import { under, type Block } from '../pages/sheet.ts';
import type { Lack, Share } from '../work/shelf.ts';

/** "2 x plain 3, here 2026-12-14; 61 ft of natural body cord, ...". */
export const lacksText = ({ lacks }: Share): string =>
  lacks.map((lack) => `${whatText(lack)}, ${supplyText(lack)}${swapText(lack)}`).join('; ');

const swapText = ({ swap }: Lack): string =>
  swap === undefined ? '' : ` (or ${swap}, which we have: what-if shows how it sits)`;

/** Per order: first what is coming, then what is not. */
export function shortBlocks(shares: ReadonlyMap<string, Share>, ordered: string): Block[] {
  const texts = (never: boolean): string[] =>
    [...shares].flatMap(([key, share]) =>
      share.lacks.length > 0 && (share.shelf === 'refuse') === never ? [`${key}: ${lacksText(share)}.`] : [],
    );
  return [
    ...under(`Short on the shelf, ordered ${ordered}`, [{ kind: 'list', items: texts(false) }]),
    ...under('Cannot be tied as they stand', [{ kind: 'list', items: texts(true) }]),
  ];
}

function whatText({ kind, name, ply, amount }: Lack): string {
  if (kind !== 'cord') return `${String(amount)} x ${name}`;
  const kinds =
    ply === BODY_PLY ? 'body cord' : ply === ACCENT_PLY ? 'accent cord' : `${String(ply)}-ply cord`;
  return `${feetText(amount)} of ${name} ${kinds}`;
}

const supplyTexts = {
  none: "can't get more",
  lots: "no one dye lot has enough, and can't get more",
  'too-long': 'a piece is longer than any spool or hank',
  unknown: 'not in the shop file: ask first',
} as const;

/** Whether it is coming, and when. */
export function supplyText({ kind, supply, comes }: Lack): string {
  if (supply === 'ordered') return hereText(comes);
  return supplyTexts[supply === 'none' && kind === 'cord' ? 'lots' : supply];
}

/** Its delivery day. */
export const hereText = (comes: string | undefined): string =>
  comes === undefined ? 'the shop file does not say when it comes' : `here ${comes}`;
