/** One picture on a page, with notices, what is assumed and all cautions. */
import type { Advice } from '../advice/advice.ts';
import { ownNumbers, roomText, ringText, situation } from '../words/about-order.ts';
import { facesText } from '../words/about-photo.ts';
import { assumptionText } from '../words/about-rest.ts';
import { element, html, htmlPage, plainList, type HtmlPage } from '../pages/html.ts';
import { capital, phraseText, type Units } from '../units/text.ts';
import { noticesOf, titleText } from './frame.ts';
import type { Shown } from './shown.ts';

export interface ToldPicture {
  readonly advice: Advice;
  readonly shown: readonly Shown[];
  readonly units: Units;
}

/** One cinch in words. */
export const shownText = ({ mark, head, lines }: Shown): string =>
  element('h2', html([mark, head].filter((part) => part !== undefined).join(': '))) +
  element('p', html(`${lines.join('. ')}.`));

/** Figures are markup. */
export function pictureArticle(figures: readonly string[], { advice, units }: ToldPicture): string {
  const { facts, remarks, cautions } = advice;
  return element(
    'article',
    [
      element('h1', html(titleText(advice.facts.order))),
      element('p', html(situation(advice.facts, units))),
      ...noticesOf(advice, units).map((text) => element('p', html(text), 'notice')),
      ...figures,
      element('h2', 'Where the elbow and the ring are'),
      plainList([
        roomText(facts, units),
        ringText(facts, units),
        ...remarks.map((remark) => phraseText(remark, units)),
        ...(facts.photo === undefined ? [] : [facesText(facts.photo)]),
      ]),
      element('h2', 'How sure'),
      plainList(sureTexts(advice, units)),
      element('p', html(cautions.join(' ')), 'cautions'),
    ].map((part) => `\n${part}`),
    'sheet',
  );
}

const sureTexts = ({ assumptions, facts }: Advice, units: Units): string[] => [
  ...assumptions.map((each) => `${capital(assumptionText(each, units))}.`),
  ...[ownNumbers(facts)].filter((text) => text !== undefined),
];

/** Titled after its picture, or their number. */
export const articlesPage = (
  bodies: readonly string[],
  page: Pick<HtmlPage, 'title' | 'css'> & { readonly pictures?: true },
): string =>
  htmlPage({
    ...page,
    title: bodies.length === 1 ? page.title : `${String(bodies.length)} pictures`,
    body: bodies.join('\n'),
    kind: 'picture',
  });
