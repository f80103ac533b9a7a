/** The lengths worth trying, by latigo run. */
import { runFor } from '../horse/length.ts';
import type { CaseFacts } from '../rules/rule.ts';

/** Shortest first; if no run passes, the one nearest the target. */
export function lengthsFor({
  lengthNeed,
  shop,
  model,
}: Pick<CaseFacts, 'lengthNeed' | 'shop' | 'model'>): number[] {
  const { min, max, step } = shop.lengths;
  const steps = Math.floor((max - min) / step + 1e-9);
  const all = Array.from({ length: steps + 1 }, (_, i) => min + i * step);
  const reach = all.filter((length) => {
    const run = runFor(length, lengthNeed);
    return run >= model['run-least'] && run <= model['run-most'];
  });
  if (reach.length > 0) return reach;
  const off = (length: number): number => Math.abs(length - lengthNeed.target.value);
  return all.sort((a, b) => off(a) - off(b)).slice(0, 1);
}
