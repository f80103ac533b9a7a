/** Weight by tape; no rule uses it. */
import { short, type Working } from './estimate.ts';

/** Pounds from inches: girth^2 x length / 330 [university laboratory exercise]. */
export const weightFromGirth = (girth: number, bodyLength: number): number =>
  (girth * girth * bodyLength) / 330;

/** Empty without a body length. */
export function weightWorking(girth: number, bodyLength: number | undefined): Working[] {
  if (bodyLength === undefined) return [];
  const pounds = Math.round(weightFromGirth(girth, bodyLength));
  return [
    { symbol: 'weight', sum: `${short(girth)}^2 x ${short(bodyLength)} / 330`, result: `about ${pounds} lb` },
  ];
}
