/** Whether the horse is sore from the cinch it wears: by the trouble reported, or by what the notes say. */
import type { Order } from '../order/types.ts';

/** Words of raw or broken skin [common practice, no source]. */
const rawSkin =
  /\b(?:raw(?!\s+(?:umber|sienna|hide))|gall(?:s|ed|ing)?|(?:cinch|girth)[\s-]sores?|sores|open sore|sore (?:at|behind|under|from)|bleed(?:s|ing)?|bloody|blister(?:s|ed)?|scab(?:s|bed|by)?|chafed|weeping|wound(?:s|ed)?|brok(?:e|en) (?:the )?skin|skin (?:is |was |has )?(?:broken|open|rubbed)|rubbed (?:bald|bare|through))\b/gi;

/** Just before such words these deny them. */
const denied =
  /\b(?:(?:no|never|without|nothing|none|free of)(?:\s+[\w'\u2019-]+){0,3}|(?:not|\w+n['\u2019]t)(?:\s+[\w-]+)?)\s*$/i;

/** The words of the notes that speak of raw or broken skin, as written; undefined when none do, or all are denied. */
export function rawSkinInNotes({ notes }: Pick<Order, 'notes'>): string | undefined {
  const clauses = (notes?.split(/[.;,!?\n]/) ?? []).filter((clause) => !/\bhealed\b/i.test(clause));
  for (const clause of clauses)
    for (const found of clause.matchAll(rawSkin))
      if (!denied.test(clause.slice(0, found.index))) return found[0];
  return undefined;
}

/** What an order tells of the horse's skin. */
type Told = Pick<Order, 'notes'> & { readonly horse: Pick<Order['horse'], 'trouble'> };

/** A gall at the elbow, or notes that speak of raw skin and do not say it is the buckle's doing. */
export const isGalled = (order: Told): boolean =>
  order.horse.trouble.includes('elbow-gall') ||
  (rawSkinInNotes(order) !== undefined && !order.horse.trouble.includes('buckle-rub'));

/** Whether the elbow must be surer than usual: it is sore, or the horse minds being cinched. */
export const isSore = (order: Told): boolean => isGalled(order) || order.horse.trouble.includes('girthy');
