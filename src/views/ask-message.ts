/** A message to one customer: what we need, how to measure it safely, signed by the shop. */
import { listed } from '../units/phrase.ts';
import { lower } from '../units/text.ts';
import { cautions, shortCaution } from '../numbers/cautions.ts';
import { soreText } from '../words/counter-words.ts';
import { insteadOf, type Asked } from '../words/about-ask.ts';
import { generalSafety, howToAnswer, questionWords, shortWords } from '../words/ask-words.ts';

/** Raw text; each printer escapes it. */
export type Piece =
  | { readonly kind: 'paragraph'; readonly text: string }
  | { readonly kind: 'heading'; readonly text: string }
  | { readonly kind: 'steps'; readonly items: readonly { readonly lead: string; readonly text: string }[] }
  | { readonly kind: 'list'; readonly items: readonly string[] };

const paragraph = (text: string): Piece => ({ kind: 'paragraph', text });

/** Of questions; where a sore is told, there is room for one. */
const MOST = 2;

/** At most two questions about all orders of one customer; empty without questions. */
export function shortMessage(orders: readonly Asked[]): Piece[] {
  const asking = orders.filter(({ toAsk }) => toAsk.length > 0);
  const [first] = asking;
  if (first === undefined) return [];
  const { order, shop } = first.result.advice.facts;
  const name = order.customer?.name?.trim() ?? '';
  const worths = asking.flatMap(({ toAsk }) => toAsk);
  const cutting = worths.filter(({ beforeCutting }) => beforeCutting);
  const asked = [...new Set([...cutting, ...worths].map((worth) => worth.name))].slice(
    0,
    asking.some(isSore) ? 1 : MOST,
  );
  const horses = asking.map((each) => each.result.advice.facts.order.horse.name ?? 'the horse');
  const which = listed(asking.map(({ result }) => result.advice.facts.order.order));
  const horse = listed([...new Set(horses)]);
  const helps =
    cutting.length > 0
      ? `We won't cut cord for ${horse} (order ${which}) until we have ${asked.length === 1 ? 'this' : 'the first'}.`
      : `One measurement makes the cinch for ${horse} (order ${which}) surer.${asked.length === 1 ? '' : ' Two is better.'}`;
  const blanks = asked.map(
    (question, i) => `${String(i + 1)}: __${question === 'barrel shape' ? '' : ' in'}`,
  );
  return [
    paragraph(name === '' ? 'Hi,' : `Hi ${name},`),
    ...sorePieces(asking),
    paragraph(helps),
    {
      kind: 'steps',
      items: asked.map((question) => ({
        lead: '',
        text: shortWords[question].replace('{horse}', horses.length === 1 ? horse : 'Each horse'),
      })),
    },
    paragraph(`Reply "${blanks.join(', ')}", or "not measured".`),
    paragraph(
      `Stay standing beside the shoulder; never reach under. Fussing? Stop. ${asking.some(isSore) ? '' : "Broken skin: don't ride. "}Newly cinchy: ask a vet. ${shortCaution}`,
    ),
    paragraph(shop.name),
  ];
}

/** Every question about all orders of one customer; empty without questions. */
export function messageFor(orders: readonly Asked[]): Piece[] {
  const asking = orders.filter(({ toAsk }) => toAsk.length > 0);
  const [first] = asking;
  if (first === undefined) return [];
  const { order, shop } = first.result.advice.facts;
  const name = order.customer?.name?.trim() ?? '';
  const cutting = asking.some(({ toAsk }) => toAsk.some(({ beforeCutting }) => beforeCutting));
  return [
    paragraph(name === '' ? 'Hello,' : `Hello ${name},`),
    ...sorePieces(asking),
    paragraph(opening(asking)),
    ...asking.flatMap((each) => questionPieces(each, asking.length > 1)),
    ...(cutting ? [paragraph("We won't cut cord until we have ring to ring.")] : []),
    paragraph(howToAnswer),
    { kind: 'heading', text: 'Safety first' },
    { kind: 'list', items: generalSafety },
    { kind: 'heading', text: 'Keep in mind' },
    { kind: 'list', items: cautions },
    paragraph('With thanks,'),
    paragraph(shop.name),
  ];
}

const isSore = ({ result }: Asked): boolean => result.advice.mustHeal;

/** A sore comes before any question, and nobody holds a ruler to one. */
function sorePieces(asking: readonly Asked[]): Piece[] {
  const sore = asking.filter(isSore).map(({ result }) => result.advice.facts.order.horse.name ?? 'the horse');
  if (sore.length === 0) return [];
  const names = listed([...new Set(sore)]);
  return [paragraph(`${soreText(names)} Measure after.`)];
}

function opening(asking: readonly Asked[]): string {
  const [only] = asking;
  const about =
    asking.length === 1 && only !== undefined ? `order ${nameOf(only)}` : `${String(asking.length)} orders`;
  return `Thank you for your ${about}. A few more measurements make it surer that the cinch clears the elbow and is the right length. ${firstText(asking)}; every answer helps.`;
}

function firstText(asking: readonly Asked[]): string {
  const before = asking.some(
    ({ toAsk }) => toAsk.length > 1 && toAsk.some(({ beforeCutting }) => beforeCutting),
  );
  return before
    ? 'What we need before we cut comes first, then what helps most'
    : 'What helps most comes first';
}

function nameOf({ result }: Asked): string {
  const { order, horse } = result.advice.facts.order;
  return horse.name === undefined ? order : `${order} for ${horse.name}`;
}

function questionPieces(asked: Asked, named: boolean): Piece[] {
  const { toAsk, photo } = asked;
  const steps = toAsk.map(({ name }) => {
    const { asked: lead, how, safely } = questionWords[name];
    return { lead: `${lead}.`, text: `${how} ${safely}` };
  });
  const pieces: Piece[] = [
    ...(named ? [{ kind: 'heading', text: `Order ${nameOf(asked)}` } as const] : []),
    { kind: 'steps', items: steps },
  ];
  if (photo === undefined) return pieces;
  const replaced = insteadOf(toAsk).map((name) => lower(questionWords[name].asked));
  const { how, safely } = questionWords['side photo'];
  return [
    ...pieces,
    paragraph(
      `If you would rather not measure ${listed(replaced)}, a photo from the side helps, too. ${how} ${safely}`,
    ),
  ];
}
