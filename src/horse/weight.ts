/** Weight by tape: information for the reader, judged by no rule. */
import { short, type Working } from './estimate.ts';

/** Pounds from heart girth and body length in inches: girth^2 x length / 330 [university laboratory exercise]. */
export const weightFromGirth = (girth: number, bodyLength: number): number =>
  (girth * girth * bodyLength) / 330;

/** How the weight came about; nothing when nobody taped the body's length. */
export function weightWorking(girth: number, bodyLength: number | undefined): Working[] {
  if (bodyLength === undefined) return [];
  const pounds = Math.round(weightFromGirth(girth, bodyLength));
  return [
    { symbol: 'weight', sum: `${short(girth)}^2 x ${short(bodyLength)} / 330`, result: `about ${pounds} lb` },
  ];
}
