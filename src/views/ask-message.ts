/** A message to one customer: what to measure and how, signed by the shop. */
import { cautions, shortCaution } from '../numbers/cautions.ts';
import type { Message, Piece } from '../pages/messages.ts';
import { listed } from '../units/phrase.ts';
import { lower } from '../units/text.ts';
import { byCustomer, insteadOf, type Asked, type AskedOrder } from '../words/about-ask.ts';
import { generalSafety, howToAnswer, questionWords, shortWords } from '../words/ask-words.ts';
import { soreText, vetText } from '../words/counter-words.ts';

/** One per customer with a question. */
export const askMessages = (results: readonly AskedOrder[], long: boolean): Message[] =>
  byCustomer(results).flatMap(({ orders }) => {
    const asking = orders.filter(({ toAsk }) => toAsk.length > 0);
    const [first] = asking;
    if (first === undefined) return [];
    const { order, shop } = first.result.advice.facts;
    const hello = [long ? 'Hello' : 'Hi', order.customer?.name?.trim() ?? ''].join(' ').trim();
    return [[`${hello},`, soreWarning(asking), ...(long ? longPieces : shortPieces)(asking), shop.name]];
  });

/** Questions in a short message; a sore leaves room for one. */
const MOST = 2;

function shortPieces(asking: readonly Asked[]): Piece[] {
  const worths = asking.flatMap(({ toAsk }) => toAsk);
  const cutting = worths.filter(({ beforeCutting }) => beforeCutting);
  const anySore = asking.some(isSore);
  const asked = [...new Set([...cutting, ...worths].map(({ name }) => name))].slice(0, anySore ? 1 : MOST);
  const horse = horsesOf(asking);
  const which = listed(asking.map(({ result }) => result.advice.facts.order.order));
  const helps =
    cutting.length > 0
      ? `We won't cut cord for ${horse} (order ${which}) until we have ${asked.length === 1 ? 'this' : 'the first'}.`
      : `One measurement makes the cinch for ${horse} (order ${which}) surer.${asked.length === 1 ? '' : ' Two is better.'}`;
  const vet = vetText(
    asking.map(({ result }) => result.advice.facts.order),
    'Newly cinchy: ask a vet.',
  );
  const blanks = asked.map(
    (question, i) => `${String(i + 1)}: __${question === 'barrel shape' ? '' : ' in'}`,
  );
  return [
    helps,
    {
      kind: 'steps',
      items: asked.map((question) => ({
        text: shortWords[question].replace('{horse}', asking.length === 1 ? horse : 'Each horse'),
      })),
    },
    `Reply "${blanks.join(', ')}", or "not measured".`,
    `Stay standing beside the shoulder; never reach under. Fussing? Stop. ${anySore ? '' : "Broken skin: don't ride. "}${vet} ${shortCaution}`,
  ];
}

function longPieces(asking: readonly Asked[]): Piece[] {
  const cutting = asking.some(({ toAsk }) => toAsk.some(({ beforeCutting }) => beforeCutting));
  return [
    opening(asking),
    ...asking.flatMap((each) => questionPieces(each, asking.length > 1)),
    cutting ? "We won't cut cord until we have ring to ring." : '',
    howToAnswer,
    { kind: 'heading', text: 'Safety first' },
    { kind: 'list', items: generalSafety },
    { kind: 'heading', text: 'Keep in mind' },
    { kind: 'list', items: cautions },
    'With thanks,',
  ];
}

const isSore = ({ result }: Asked): boolean => result.advice.mustHeal;

const horsesOf = (asking: readonly Asked[]): string =>
  listed([...new Set(asking.map(({ result }) => result.advice.facts.order.horse.name ?? 'the horse'))]);

/** First of all: nobody measures on a sore. */
function soreWarning(asking: readonly Asked[]): string {
  const sore = asking.filter(isSore);
  return sore.length === 0 ? '' : `${soreText(horsesOf(sore))} Measure after.`;
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
    `If you would rather not measure ${listed(replaced)}, a photo from the side helps, too. ${how} ${safely}`,
  ];
}
