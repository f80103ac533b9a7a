/** Names every printer shares. */
import type { Order, Saddle, Style, Trouble, Use } from '../order/types.ts';
import type { PlacedBar } from '../cinch/accent.ts';
import type { Judgement } from '../rules/rule.ts';
import { styles } from '../cinch/styles.ts';
import { formatLength } from '../units/print.ts';
import { visible } from '../units/clean.ts';
import type { Sign } from '../pages/pen.ts';
import type { Units } from '../units/text.ts';
import { fit } from '../units/width.ts';

/** "high-flare roper". */
export const styleName = (style: Style): string => styles[style].name;

/** "straight, 17 strands". */
export const specName = (spec: { style: Style; strands: number }): string =>
  `${styleName(spec.style)}, ${String(spec.strands)} strands`;

/** "latigo run". */
export const ruleName = (id: string): string => id.replaceAll('-', ' ');

/** The sign repeats the word, never replaces it. */
export const judgementWords: Readonly<Record<Judgement, { readonly word: string; readonly sign: Sign }>> = {
  good: { word: 'good', sign: '+' },
  acceptable: { word: 'fair', sign: '~' },
  poor: { word: 'poor', sign: '!' },
  refuse: { word: 'ruled out', sign: 'x' },
  'not-applicable': { word: 'does not apply', sign: '-' },
  'cannot-tell': { word: 'cannot tell', sign: '?' },
};

/** "elbow gall". */
export const troubleName = (trouble: Trouble): string =>
  trouble === 'girthy' ? 'cinchy (girthy)' : ruleName(trouble);

export const useNames: Readonly<Record<Use, string>> = {
  roping: 'roping',
  ranch: 'ranch work',
  trail: 'trail riding',
  barrels: 'barrel racing',
  reining: 'reining',
  packing: 'packing',
  endurance: 'endurance riding',
  pleasure: 'pleasure riding',
};

const riggingNames: Readonly<Record<NonNullable<Saddle['style']>, string>> = {
  ring: 'ring',
  'flat-plate': 'flat plate',
  'in-skirt': 'in-skirt',
  dropped: 'dropped',
};

/** As the customer said it. */
export function riggingText({ rigging, style }: Saddle, units: Units): string {
  const kind = style === undefined ? '' : `, ${riggingNames[style]} rigging`;
  if (rigging.kind === 'measured') {
    return `ring ${setBackText(rigging.setBack, units)}${kind}`;
  }
  return `${visible(rigging.name)} position${kind}`;
}

/** Less than a quarter rounds to nothing. */
function setBackText(inches: number, units: Units): string {
  if (Math.abs(inches) < 0.125) return 'at full position (measured)';
  const side = inches > 0 ? 'back' : 'ahead';
  return `${formatLength(Math.abs(inches), units)} ${side} of full position`;
}

/** "Order 2417: Jo Alvarez, horse Biscuit"; long names are shortened. */
export function orderTitle({ order, customer, horse }: Order): string {
  const who = [
    nameText(customer?.name, 28),
    horse.name === undefined ? undefined : `horse ${nameText(horse.name, 20) ?? ''}`,
  ].filter((name) => name !== undefined && name !== '');
  return `Order ${fit(visible(order), 18)}${who.length === 0 ? '' : `: ${who.join(', ')}`}`;
}

const nameText = (name: string | undefined, most: number): string | undefined =>
  name === undefined ? undefined : fit(visible(name), most);

export const barNames: Readonly<Record<PlacedBar['kind'], string>> = {
  end: 'end bar',
  pinch: 'weave',
  further: 'further weave',
  centre: 'center bar',
};
