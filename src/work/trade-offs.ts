/** How another spec differs from the quoted one, in a rider's words. */
import type { Finding, Judged } from '../advice/judge.ts';
import { styles } from '../cinch/styles.ts';
import { chance, count, len, say, type Phrase } from '../units/phrase.ts';

/** Empty when a rider would notice nothing. */
export function tradeOffs(other: Judged, quoted: Judged): Phrase[] {
  const [a, b] = [other.candidate, quoted.candidate];
  return [
    ...(a.style === b.style ? [] : [say`${styles[a.style].about}`]),
    ...widths(a.elbowWidth - b.elbowWidth),
    ...elbows(a.clearance.chance, b.clearance.chance),
    ...(a.strands === b.strands ? [] : [say`${count(a.strands)} strands instead of ${count(b.strands)}`]),
    ...(a.buckle.id === b.buckle.id ? [] : [say`${a.buckle.id} buckles instead of ${b.buckle.id}`]),
    ...worse(other, quoted).map(({ reason }) => withBut(reason)),
  ];
}

/** Inches; less does not show on a horse. */
const SEEN = 0.125;

function widths(wider: number): Phrase[] {
  if (Math.abs(wider) < SEEN) return [];
  return wider > 0
    ? [say`${len(wider)} wider behind the elbow, so the pull is spread over more of the horse`]
    : [say`${len(-wider)} narrower behind the elbow, so the pull lies on less of the horse`];
}

function elbows(here: number, there: number): Phrase[] {
  if (Math.round(100 * here) === Math.round(100 * there)) return [];
  return here > there
    ? [say`surer to stay clear of the elbow: ${chance(here)} against ${chance(there)}`]
    : [say`less sure to stay clear of the elbow: ${chance(here)} against ${chance(there)}`];
}

/** Poor or unknown, unlike the quoted one. */
function worse(other: Judged, quoted: Judged): Finding[] {
  return other.findings.filter(
    ({ rule, judgement }) =>
      (judgement === 'poor' || judgement === 'cannot-tell') && quoted.judgementOf(rule) !== judgement,
  );
}

const withBut = ({ words, values }: Phrase): Phrase => {
  const [first = '', ...rest] = words;
  return { words: [`but ${first}`, ...rest], values };
};
