/** A current cinch whose buckle nobody named: tries every buckle it may have. */
import type { Spec } from '../cinch/candidate.ts';
import { bySize, layersOn } from '../cinch/buckles.ts';
import type { Buckle } from '../order/types.ts';
import { listed, say, type Phrase } from '../units/phrase.ts';
import type { Finding, Judged } from './judge.ts';

/** Rules that depend on the buckle. */
const decidedByBuckle: ReadonlySet<string> = new Set(['elbow-clearance', 'buckle-height', 'buckle-strands']);

export interface Tried {
  readonly spec: Spec;
  readonly judged: Judged | undefined;
}

/** The usual buckle, or another if only that passes. A rule only some buckles fail cannot tell. */
export function overBuckles(
  usual: Spec,
  buckles: readonly Buckle[],
  layAndJudge: (spec: Spec) => Judged | undefined,
): Tried {
  const sorted = [...buckles].sort(bySize);
  const taking = sorted.filter((buckle) => layersOn(buckle, usual.strands) !== undefined);
  const possible = taking.length > 0 ? taking : sorted;
  const tryOn = (buckle: Buckle): Tried => {
    const spec: Spec = { ...usual, buckle, layers: layersOn(buckle, usual.strands) ?? 0 };
    return { spec, judged: layAndJudge(spec) };
  };
  const others = possible.filter(({ id }) => id !== usual.buckle.id);
  const tried: readonly [Tried, ...Tried[]] = [tryOn(usual.buckle), ...others.map(tryOn)];
  // An unlisted buckle is known only to take the strands.
  const taken = tried.find(
    ({ judged }) => judged && refusals(judged).every((rule) => rule === 'buckle-strands'),
  );
  if (taken?.judged === undefined || refusedAnyway(taken.judged)) return tried[0];
  return { spec: taken.spec, judged: withDoubts(taken.judged, doubtsOf(tried)) };
}

const refused = ({ findings }: Judged): string[] =>
  findings.filter(({ judgement }) => judgement === 'refuse').map(({ rule }) => rule);
const refusals = (judged: Judged): string[] => refused(judged).filter((rule) => decidedByBuckle.has(rule));

/** Stock and the shop's range don't matter once it is tied. */
const refusedAnyway = (judged: Judged): boolean =>
  refused(judged).some((rule) => !decidedByBuckle.has(rule) && rule !== 'stock' && rule !== 'strand-range');

/** Buckles ruled out, by rule. */
function doubtsOf(tried: readonly Tried[]): Map<string, Phrase> {
  const ids = new Map<string, string[]>();
  for (const { spec, judged } of tried) {
    if (judged === undefined) continue;
    for (const rule of refusals(judged)) ids.set(rule, [...(ids.get(rule) ?? []), spec.buckle.id]);
  }
  return new Map(
    [...ids].map(([rule, buckles]) => [
      rule,
      buckles.length === tried.length
        ? say`none of the shop's buckles take that many strands, and nobody named the one on it`
        : say`depends on the buckle, which nobody named: ${listed(buckles)} would be ruled out`,
    ]),
  );
}

function withDoubts(judged: Judged, doubts: ReadonlyMap<string, Phrase>): Judged {
  const findings = judged.findings.map((finding): Finding => {
    const reason = doubts.get(finding.rule);
    return reason === undefined ? finding : { rule: finding.rule, judgement: 'cannot-tell', reason };
  });
  return {
    candidate: judged.candidate,
    findings,
    judgementOf: (rule) => findings.find((finding) => finding.rule === rule)?.judgement,
  };
}
