/** The materials of a backlog for scripts, lengths in inches; as a table, several lists in one. */
import { jsonText } from '../pages/json.ts';
import { inchesOf } from '../units/feet.ts';
import { takenText, type BacklogResult } from '../words/about-backlog.ts';
import { hereText, supplyText } from '../words/about-shelf.ts';
import type { Name } from '../words/names.ts';
import type { CutPutUp, MaterialPlan } from '../work/cutting/types.ts';
import type { HardwareNeed } from '../work/hardware.ts';
import type { Buy, CordNeed, LotPull, Materials, ShortCord } from '../work/materials.ts';
import type { Keyed } from '../work/planned.ts';
import { lengthBasis } from '../work/row.ts';
import type { Lack, Share } from '../work/shelf.ts';
import { candidateValue, paperRow, paperValue, phraseValue } from './shared-values.ts';
import { tableCsv, type Values } from './table.ts';

/** `{ schema, day, results, cord, hardware, buy, plan }`. */
export function materialsJson(materials: Materials, results: readonly BacklogResult[]): string {
  const { day, cords, hardware, buy, plan, shares, cuts } = materials;
  return jsonText({
    schema: 'cinchwright/materials/1',
    day,
    results: results.map((result) => paperValue(result, (paper) => orderValue(paper, shares))),
    cord: cords.map(cordValue),
    hardware: hardware.map(hardwareValue),
    buy: buy.map(buyValue),
    plan: {
      proven: plan.proven,
      gap: plan.gap,
      materials: plan.materials.map((material) => materialValue(material, cuts)),
    },
  });
}

/** One order, in every document about a backlog. */
export const orderValue = (paper: Keyed, shares: Materials['shares']): Values => ({
  order: paper.key,
  takes: paper.takes,
  quantity: paper.ticket.quantity,
  lengthBasis: lengthBasis(paper.ticket.measured),
  spec: candidateValue(paper.candidate),
  ...(paper.doubts.length === 0 ? {} : { remarks: paper.doubts.map(phraseValue) }),
  ...(paper.welfare.length === 0 ? {} : { welfare: paper.welfare.map(phraseValue) }),
  ...shelfValue(shares.get(paper.key)),
});

/** What it waits for. */
export const shelfValue = (share: Share | undefined): Values => ({
  shelf: share?.shelf ?? null,
  waits: (share?.lacks ?? []).map(lackValue),
});

const lackValue = ({ kind, name, ply, amount, supply, comes, swap }: Lack) => ({
  kind,
  ...(kind === 'cord'
    ? { color: name, ply: ply ?? null, length: inchesOf(amount) }
    : { id: name, count: amount }),
  supply,
  comes: comes ?? null,
  ...(swap === undefined ? {} : { swap }),
});

const cordValue = ({ color, ply, pieces, needed, onHand, near, lots, short, orders }: CordNeed) => ({
  color: color ?? null,
  ply,
  count: pieces,
  length: inchesOf(needed),
  lengthOnHand: onHand === undefined ? null : inchesOf(onHand),
  nearestColor: near ?? null,
  lots: lots.map(lotValue),
  shortages: short.map(shortValue),
  orders: [...orders],
});

const lotValue = ({ lot, bought, pieces, length }: LotPull) => ({
  lot: bought || lot === '' ? null : lot,
  origin: bought ? 'bought' : 'shelf',
  count: pieces,
  length: inchesOf(length),
});

const shortValue = ({ order, why, total, pieces }: ShortCord) => ({
  order,
  reason: why,
  count: pieces.length,
  length: inchesOf(total),
});

const hardwareValue = ({ kind, id, metal, needed, onHand, short, orderable, orders }: HardwareNeed) => ({
  kind,
  id,
  metal: metal ?? null,
  needed,
  onHand,
  short,
  orderable,
  orders: [...orders],
});

function buyValue(buy: Buy): Values {
  const comes = buy.comes ?? null;
  switch (buy.kind) {
    case 'put-up':
      return { ...buy, length: inchesOf(buy.length), comes };
    case 'cord':
      return { ...buy, length: inchesOf(buy.length), longest: inchesOf(buy.longest), comes };
    default:
      return { ...buy, comes };
  }
}

const materialValue = ({ color, ply, putUps, score, proven, returned }: MaterialPlan, cuts: Cuts) => ({
  color,
  ply,
  proven,
  short: { ...score.short },
  bought: { ...score.bought },
  opened: { ...score.opened },
  waste: { value: inchesOf(score.waste.value), bound: inchesOf(score.waste.bound) },
  returned: inchesOf(returned),
  putUps: putUps.map((putUp) => putUpValue(putUp, cuts)),
});

type Cuts = Materials['cuts'];

const putUpValue = ({ origin, lot, copy, length, pieces, leftover, goesBack }: CutPutUp, cuts: Cuts) => ({
  origin,
  lot: origin === 'bought' || lot === '' ? null : lot,
  copy,
  length: inchesOf(length),
  cuts: pieces.map(({ cut, number, order, length: own }) => ({
    order,
    note: cuts.get(cut)?.use ?? null,
    number,
    length: inchesOf(own),
  })),
  leftover: inchesOf(leftover),
  goesBack,
});

/** `list` is order, cord, hardware, short, buy, cut or leftover. */
export const materialsColumns: readonly Name[] = [
  'list',
  'order',
  'file',
  'quantity',
  'color',
  'ply',
  'id',
  'lot',
  'origin',
  'putUp',
  'copy',
  'count',
  'length',
  'needed',
  'onHand',
  'short',
  'note',
  'reason',
  'problem',
];

/** The table. */
export function materialsCsv(materials: Materials, results: readonly BacklogResult[]): string {
  const { cords, hardware, buy, plan, shares, cuts } = materials;
  return tableCsv(materialsColumns, [
    ...results.map((result) => ({
      list: 'order',
      ...paperRow(result, (paper) => ({ ...orderValue(paper, shares), note: takenText(paper) })),
    })),
    ...cords.flatMap(cordRows),
    ...hardware.map(hardwareRow),
    ...[...shares].flatMap(([order, { lacks }]) => lacks.map((lack) => ({ order, ...lackRow(lack) }))),
    ...buy.map(buyRow),
    ...plan.materials.flatMap((material) => planRows(materialValue(material, cuts))),
  ]);
}

function cordRows(need: CordNeed): Values[] {
  const { lots, shortages, orders, ...cord } = cordValue(need);
  const list = 'cord';
  if (cord.lengthOnHand === null) {
    const why = cord.color === null ? 'no color chosen' : 'not in the shop file';
    return [{ list, ...cord, note: `${why}: ${orders.join(', ')}` }];
  }
  const short = shortages.map((each) => ({ ...each, origin: 'short' }));
  return [...lots, ...short].map((row) => ({ list, ...cord, ...row }));
}

const hardwareRow = (need: HardwareNeed): Values => ({
  list: 'hardware',
  ...hardwareValue(need),
  note: need.short > 0 && !need.orderable ? "can't get more" : undefined,
});

const lackRow = (lack: Lack): Values => ({
  list: 'short',
  ...lackValue(lack),
  ...(lack.kind === 'cord' ? {} : { count: undefined, short: lack.amount }),
  note: supplyText(lack),
});

const buyRow = (buy: Buy): Values => ({
  list: 'buy',
  ...buyValue(buy),
  ...(buy.kind === 'put-up' ? { length: undefined, putUp: inchesOf(buy.length) } : {}),
  note: `${buy.kind === 'cord' ? 'length of its spools or hanks not given; ' : ''}${hereText(buy.comes)}`,
});

const planRows = ({ color, ply, putUps }: ReturnType<typeof materialValue>): Values[] =>
  putUps.flatMap(({ length: putUp, cuts, leftover, goesBack, ...rest }) => {
    const from = { color, ply, putUp, ...rest };
    const left = { list: 'leftover', ...from, length: leftover, note: goesBack ? 'goes back' : 'waste' };
    return [
      ...cuts.map((cut) => ({ list: 'cut', ...from, count: 1, ...cut })),
      ...(leftover === 0 ? [] : [left]),
    ];
  });
