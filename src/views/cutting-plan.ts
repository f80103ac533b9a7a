/** The cutting plan in words: where each piece is cut, what is left, whether a better plan could exist. */
import type { CutPutUp, MaterialPlan, Piece, Proven } from '../work/cutting/types.ts';
import type { Materials } from '../work/materials.ts';
import { feetText } from '../units/feet.ts';
import { plural } from '../units/phrase.ts';
import { cordName } from '../words/about-backlog.ts';
import { under, type Block } from '../pages/sheet.ts';
import { capital } from '../units/text.ts';

/** A paragraph per cord, a check box per spool. */
export function planBlocks({ plan, cuts, orders }: Materials): Block[] {
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

/** "Lot N-114, remnant of 120 ft: 2402 61 ft (strands 1 to 21); 59 ft left, goes back on the shelf". */
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
  /** Orders whose length is not taped. */
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
