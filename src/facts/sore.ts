/** Whether the horse is sore from the cinch it wears: by the trouble reported, or by what the notes say. */
import type { Order } from '../order/types.ts';

/** Words of raw or broken skin [common practice, no source]. */
const rawSkin =
  /\b(?:no|not|never|without|isn't)?\s*\b(?:raw|gall(?:s|ed|ing)?|sores?|bleed(?:s|ing)?|blood(?:y|ied)?|blister(?:s|ed)?|scab(?:s|bed|by)?|broken skin|skin (?:is )?(?:broken|open)|open wounds?|rubbed (?:bald|bare))\b/gi;
const denied = /^(?:no|not|never|without|isn't)\b/i;

/** The words of the notes that speak of raw or broken skin, as written; undefined when none do. */
export const rawSkinInNotes = ({ notes }: Pick<Order, 'notes'>): string | undefined =>
  (notes?.match(rawSkin) ?? []).map((words) => words.trim()).find((words) => !denied.test(words));

/** A gall at the elbow, or notes that speak of raw skin and do not say it is the buckle's doing. */
export const isGalled = (order: Pick<Order, 'notes' | 'horse'>): boolean =>
  order.horse.trouble.includes('elbow-gall') ||
  (rawSkinInNotes(order) !== undefined && !order.horse.trouble.includes('buckle-rub'));

/** Whether the elbow must be surer than usual: it is sore, or the horse minds being cinched. */
export const isSore = (order: Pick<Order, 'notes' | 'horse'>): boolean =>
  isGalled(order) || order.horse.trouble.includes('girthy');
