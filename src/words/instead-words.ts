/** The alternatives, one row each: other widths and styles. */
import type { Advice, RankedSpec } from '../advice/advice.ts';
import { isUnsure, type Judged } from '../advice/judge.ts';
import { isUseful } from '../advice/measure-next.ts';
import { PLAIN } from '../advice/criteria.ts';
import type { OtherStyle } from '../advice/straight-or-roper.ts';
import { capital, chanceText, phraseText, type Units } from '../units/text.ts';
import { formatLength } from '../units/print.ts';
import { bucklesText, shortStyle, strungText, type Telling } from './counter-words.ts';

interface Shown {
  readonly units: Units;
  readonly top: number;
}

/** In the same style: "17 strands", "92%", "4 1/4 in wide. Surer, but spreads the pressure less." */
export function insteadRows(advice: Advice, { units, top }: Shown): string[][] {
  const [first, ...others] = advice.specs.filter(
    ({ candidate }) => candidate.style === advice.first?.candidate.style,
  );
  if (first === undefined) return [];
  return others
    .slice(0, Math.max(0, top - 1))
    .map((spec) => [
      `${String(spec.candidate.strands)} strands`,
      chanceText(spec.candidate.clearance.chance),
      `${sizeText(spec, first, { advice, units })}. ${sideText(spec, first, advice)}`.trim(),
    ]);
}

/** Width, and what else differs from our pick. */
function sizeText({ candidate: c }: RankedSpec, { candidate: first }: RankedSpec, telling: Telling): string {
  const { advice, units } = telling;
  const wide = c.style === 'straight' ? 'wide' : 'across the chest';
  return [
    `${formatLength(c.width, units)} ${wide}`,
    ...(c.length === first.length ? [] : [`${formatLength(c.length, units)} long`]),
    ...(c.buckle.id === first.buckle.id ? [] : [`on ${bucklesText(c.buckle, advice.facts.shop, units)}`]),
    ...(c.layers === first.layers ? [] : [strungText(c.layers)]),
  ].join(', ');
}

function sideText(spec: RankedSpec, first: RankedSpec, { facts, ask }: Advice): string {
  const canMeasure = ask.some(isUseful);
  const { candidate: c } = spec;
  const surer = c.clearance.chance - first.candidate.clearance.chance;
  if (spec.judgementOf('usual-strands') === 'poor') return 'Well outside the usual here.';
  if (isUnsure(spec)) return canMeasure ? 'Not sure: measure before you tie it.' : 'Not sure.';
  if (canMeasure && c.clearance.likely < facts.model['chance-good'] && surer < 0)
    return 'Measure before you tie it.';
  if (c.strands > first.candidate.strands) return surer < 0 ? 'Wider, less sure.' : 'Wider.';
  const less = c.style === 'straight' ? 'spreads the pressure less' : 'fewer strands';
  return surer > 0.005 ? `Surer, but ${less}.` : `${capital(less)}.`;
}

interface Styled {
  readonly first: Judged | undefined;
  readonly facts: Pick<Advice['facts'], 'slipNeed' | 'order'>;
}

/** "Straight or roper? Straight: nothing here slips." */
export function straightOrRoper({ first, facts }: Styled): string {
  if (first === undefined) return '';
  const why = whyStyle(first, facts);
  return `Straight or roper? ${capital(shortStyle(first.candidate.style))}: ${why}.`;
}

function whyStyle(first: Judged, { slipNeed, order }: Styled['facts']): string {
  const { style } = first.candidate;
  const slips = slipNeed.level >= 2;
  if (style === 'straight') {
    if (slips) return 'no roper does better here';
    return order.use === 'roping' ? 'it has enough strands, or no roper clears' : 'nothing here slips';
  }
  if (slips) return slipNeed.because.join(', ');
  return `it has the strands${isUnsure(first) ? ', but may not clear' : ' and clears'} the elbow`;
}

/** Other styles, and why they are not first. */
export const styleRows = (advice: Advice, units: Units): string[][] =>
  advice.otherStyles.map((other) => styleRow(other, advice, units));

function styleRow({ style, spec, why, criterion }: OtherStyle, advice: Advice, units: Units): string[] {
  const name = shortStyle(style);
  if (spec === undefined || advice.first === undefined)
    return [name, '', `Ruled out: ${phraseText(why, units).replace(': ', ', ')}.`];
  const chance = chanceText(spec.candidate.clearance.chance);
  // The line above says the need is plain.
  const note =
    criterion === PLAIN
      ? besideText(spec, advice, units)
      : `Not first: ${phraseText(why, units).split(': ')[0] ?? ''}.`;
  return [`${name} ${String(spec.candidate.strands)}`, chance, note];
}

/** "Same room, 4 3/4 in across the chest, more weaving." */
function besideText({ candidate: c }: RankedSpec, advice: Advice, units: Units): string {
  const points = 100 * (c.clearance.chance - (advice.first?.candidate.clearance.chance ?? 0));
  const room = points > 1 ? 'Surer' : points < -1 ? 'Less sure' : 'Same room';
  return `${room}, ${formatLength(c.width, units)} across the chest, more weaving.`;
}
