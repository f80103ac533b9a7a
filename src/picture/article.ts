/** One picture on a page: the figure, then in words what it shows, where elbow and ring are, what is assumed, and all cautions. */
import type { Advice } from '../advice/advice.ts';
import { ownNumbers, roomText, ringText } from '../report/about-order.ts';
import { facesText } from '../report/about-photo.ts';
import { assumptionText } from '../report/about-rest.ts';
import { element, html, plainList } from '../report/html.ts';
import { capital, phraseText, type Units } from '../report/text.ts';
import type { Shown } from './shown.ts';

export interface ToldPicture {
  readonly advice: Advice;
  readonly shown: readonly Shown[];
  readonly units: Units;
}

/** The article; `figure` is markup already. */
export function pictureArticle(figure: string, { advice, shown, units }: ToldPicture): string {
  const { facts, remarks, cautions } = advice;
  return element(
    'article',
    [
      element('figure', `\n${figure}`),
      element('h2', 'What it shows'),
      plainList(
        shown.map(({ mark, head, lines }) =>
          [mark, `${head}. ${lines.join('. ')}.`].filter((part) => part !== undefined).join(' '),
        ),
      ),
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

/** Every assumption, and whose numbers are in force. */
const sureTexts = ({ assumptions, facts }: Advice, units: Units): string[] => [
  ...assumptions.map((each) => `${capital(assumptionText(each, units))}.`),
  ...[ownNumbers(facts)].filter((text) => text !== undefined),
];
