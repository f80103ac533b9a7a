/** A cinch in use whose buckle nobody named: what every buckle it may have says, so that a guess refuses nothing and passes nothing. */
import type { Spec } from '../cinch/candidate.ts';
import { bySize, layersOn } from '../cinch/buckles.ts';
import type { Buckle } from '../order/types.ts';
import { listed, say, type Phrase } from '../units/phrase.ts';
import type { Finding, Judged } from './judge.ts';

/** Rules that may refuse one buckle and pass another on the same cinch; whether the shop has it does not matter to one in use. */
const decidedByBuckle: ReadonlySet<string> = new Set(['elbow-clearance', 'buckle-height', 'buckle-strands']);

export interface Laid {
  readonly spec: Spec;
  /** Undefined when it cannot be laid on this horse. */
  readonly judged: Judged | undefined;
}

/**
 * The cinch of `usual`, or with another buckle of the list where the usual one is refused and that one is not. Rules that refuse some
 * of the buckles that take the strands cannot tell; where every one is refused, so is the cinch.
 */
export function overBuckles(
  usual: Spec,
  buckles: readonly Buckle[],
  layAndJudge: (spec: Spec) => Judged | undefined,
): Laid {
  const sorted = [...buckles].sort(bySize);
  const taking = sorted.filter((buckle) => layersOn(buckle, usual.strands) !== undefined);
  const possible = taking.length > 0 ? taking : sorted;
  const tried = [usual.buckle, ...possible.filter(({ id }) => id !== usual.buckle.id)].map((buckle): Laid => {
    const spec: Spec = { ...usual, buckle, layers: layersOn(buckle, usual.strands) ?? 0 };
    return { spec, judged: layAndJudge(spec) };
  });
  // Of a buckle that is on no list nothing is known but that it takes the strands: it holds them.
  const open = taking.length > 0 ? [] : ['buckle-strands'];
  const taken = tried.find(({ judged }) => judged !== undefined && isSubset(refusals(judged), open));
  const first = tried[0] ?? { spec: usual, judged: undefined };
  if (taken?.judged === undefined || refusedAnyway(taken.judged)) return first;
  return { spec: taken.spec, judged: withDoubts(taken.judged, doubtsOf(tried)) };
}

const refused = ({ findings }: Judged): string[] =>
  findings.filter(({ judgement }) => judgement === 'refuse').map(({ rule }) => rule);
const refusals = (judged: Judged): string[] => refused(judged).filter((rule) => decidedByBuckle.has(rule));
const isSubset = (some: readonly string[], all: readonly string[]): boolean =>
  some.every((entry) => all.includes(entry));

/** Stock and the shop's range say nothing of a cinch that is there; any other rule refuses it with any buckle. */
const refusedAnyway = (judged: Judged): boolean =>
  refused(judged).some((rule) => !decidedByBuckle.has(rule) && rule !== 'stock' && rule !== 'strand-range');

/** Rules that refuse some of the buckles -> which. */
function doubtsOf(tried: readonly Laid[]): Map<string, Phrase> {
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

/** The same judged cinch, where some rules cannot tell. */
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
