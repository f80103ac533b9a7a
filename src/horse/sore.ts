/** Whether the cinch made the horse sore. */
import type { Order } from '../order/types.ts';

/** [common practice, no source] */
const rawSkin =
  /\b(?:raw(?!\s+(?:umber|sienna|hide))|gall(?:s|ed|ing)?|(?:cinch|girth)[\s-]sores?|sores|open sore|sore (?:at|behind|under|from)|bleed(?:s|ing)?|bloody|blister(?:s|ed)?|scab(?:s|bed|by)?|chafed|weeping|wound(?:s|ed)?|brok(?:e|en) (?:the )?skin|skin (?:is |was |has )?(?:broken|open|rubbed)|rubbed (?:bald|bare|through))\b/gi;

/** Right before such words, these deny them. */
const denied =
  /\b(?:(?:no|never|without|nothing|none|free of)(?:\s+[\w'\u2019-]+){0,3}|(?:not|\w+n['\u2019]t)(?:\s+[\w-]+)?)\s*$/i;

/** Words about raw or broken skin, as written; undefined when none or denied. */
export function rawSkinInNotes({ notes }: Pick<Order, 'notes'>): string | undefined {
  const clauses = (notes?.split(/[.;,!?\n]/) ?? []).filter((clause) => !/\bhealed\b/i.test(clause));
  for (const clause of clauses)
    for (const found of clause.matchAll(rawSkin))
      if (!denied.test(clause.slice(0, found.index))) return found[0];
  return undefined;
}

type SoreReport = Pick<Order, 'notes'> & { readonly horse: Pick<Order['horse'], 'trouble'> };

/** A gall at the elbow, or raw skin not blamed on the buckle. */
export const isGalled = (order: SoreReport): boolean =>
  order.horse.trouble.includes('elbow-gall') ||
  (rawSkinInNotes(order) !== undefined && !order.horse.trouble.includes('buckle-rub'));

/** Galled or cinchy: clearance must be surer. */
export const isSore = (order: SoreReport): boolean =>
  isGalled(order) || order.horse.trouble.includes('girthy');
