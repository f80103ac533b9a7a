/** The order in sentences: horse, saddle, the shop's own numbers. */
import type { Facts } from '../horse/facts.ts';
import type { LearnedKey, Shop } from '../order/types.ts';
import type { CaseFacts } from '../rules/rule.ts';
import { modelNumbers, type ModelKey } from '../numbers/numbers.ts';
import { listed, plural } from '../units/phrase.ts';
import { formatLength, decimals } from '../units/print.ts';
import { basisText, capital, inputText, roughLength, spreadNumber, type Units } from '../units/text.ts';
import { riggingText, troubleName, useNames } from './words.ts';

/** "7/8 position, flat plate rigging; heart girth 73 in; roping; ..." */
export function situation({ order, girth }: Facts, units: Units): string {
  const { horse, use, quantity } = order;
  const parts = [
    riggingText(order.saddle, units),
    `heart girth ${girth.kind === 'measured' ? '' : 'about '}${formatLength(girth.value, units)}`,
    use === undefined ? 'no use given' : useNames[use],
  ];
  if (horse.trouble.length > 0) parts.push(`trouble: ${listed(horse.trouble.map(troubleName))}`);
  if (quantity > 1) parts.push(`${String(quantity)} cinches`);
  return `${capital(parts.join('; '))}.`;
}

/** Room, its spread and basis. */
export function roomText({ room }: Facts, units: Units): string {
  const from = basisText(room);
  const rough = roughLength(room.value, units);
  // Never round further than the tape read.
  const exact = inputText({ value: room.value, unit: 'in' }, units);
  const value = room.kind === 'measured' && exact.length > rough.length ? exact : rough;
  return `Room behind the elbow: ${value}, give or take ${spreadNumber(room.sd, units)} (${from}).`;
}

/** Where the ring hangs. */
export function ringText({ ring }: Facts, units: Units): string {
  const off = Math.abs(ring.x);
  const side = ring.x >= 0 ? 'ahead of' : 'behind';
  const where =
    off < 0.05 ? 'plumb over the girth groove' : `${roughLength(off, units)} ${side} the girth groove`;
  return `Ring: ${where} (${ring.setBack.basis}).`;
}

/** Basis of a least clearance that was learned. */
export const FLOOR_FOLLOWS = 'kept as far under the required clearance as by default';

/** Numbers the shop has set; undefined when none. */
export function ownNumbers({ shop, model }: Pick<CaseFacts, 'shop' | 'model'>): string | undefined {
  if (shop.overridden.length === 0) return undefined;
  const named = shop.overridden.map((key) => {
    const usual = modelNumbers[key].value;
    const from = learnedText(shop, key);
    const basis = from === undefined ? '' : `; ${from}`;
    return `${key.replaceAll('-', ' ')} ${numberText(model[key], key)} (usual ${numberText(usual, key)}${basis})`;
  });
  return `The shop set its own numbers: ${named.join('; ')}.`;
}

/** " (the shop's own number)", or "". */
export function whoseText({ shop }: Pick<CaseFacts, 'shop'>, key: ModelKey): string {
  if (!shop.overridden.includes(key)) return '';
  const from = learnedText(shop, key);
  return from === undefined ? " (the shop's own number)" : ` (${from.replace(/^from/, 'learned from')})`;
}

/** "from 212 outcomes of this shop through 2026-11-20". */
function learnedText({ learned }: Pick<Shop, 'learned'>, key: ModelKey): string | undefined {
  const from = learned?.[key as LearnedKey];
  if (from === undefined) return undefined;
  const { outcomes, until } = from;
  const text = `from ${plural(outcomes, 'outcome')} of this shop through ${until}`;
  return key === 'floor-clearance' ? `${FLOOR_FOLLOWS}, ${text}` : text;
}

function numberText(value: number, key: ModelKey): string {
  const { unit } = modelNumbers[key];
  const number = String(Number(decimals(value, 3)));
  if (unit === 'in' || unit === 'in*k') return `${number} in`;
  return unit === 'lbf' ? `${number} lbf` : number;
}
