/** Where a laid cinch comes nearest the elbow line: the two points between which its clearance was measured. */
import type { Facts } from '../facts/facts.ts';
import type { Candidate } from './candidate.ts';
import { bodyEdge, flareEdge, frameEdge, pinchedEdge } from './edges.ts';
import { elbowGap } from './elbow-gap.ts';
import type { Gap } from './gap.ts';

/** The gap that a candidate's clearance is, with both of its ends, by the same edges and the same measuring as judging it. */
export function nearestGap(candidate: Candidate, { elbowLine, centreLine }: Facts): Readonly<Gap> {
  const { shape, buckle, clearance, style } = candidate;
  const { slope } = centreLine;
  const gapOf = (edge: Float64Array): Gap => ({ ...elbowGap(edge, elbowLine) });
  if (clearance.where === 'buckle') return gapOf(frameEdge(buckle, shape.top, slope));
  if (style === 'straight') return gapOf(bodyEdge(shape, slope));
  const flare = gapOf(flareEdge(shape, slope));
  const pinched = gapOf(pinchedEdge(shape, slope));
  return flare.distance <= pinched.distance ? flare : pinched;
}
