/** Pictures as one page that needs nothing else: the picture itself, then in words what it shows, what is assumed, and all cautions. */
import type { Advice } from '../advice/advice.ts';
import { ownNumbers, roomText, ringText } from '../report/about-order.ts';
import { assumptionText } from '../report/about-rest.ts';
import { element, html, htmlPage, plainList } from '../report/html.ts';
import { sheetCss } from '../report/sheet-css.ts';
import { capital, type Units } from '../report/text.ts';
import type { Scene } from './scene.ts';
import type { Shown } from './shown.ts';
import { svgElement } from './svg.ts';

export interface PicturePage {
  readonly advice: Advice;
  readonly shown: readonly Shown[];
  readonly scene: Scene;
  readonly units: Units;
}

/** A picture keeps its size, moves aside under the finger where there is no room for it, and is printed lying; the words follow on the next page if they must. */
const css = `${sheetCss}
.picture .sheet { max-width: 828pt; padding: 18pt 36pt; } .picture svg { display: block; max-width: 100%; height: auto; margin: 0 auto; }
@media screen and (max-width: 800pt) { .picture figure { overflow-x: auto; } .picture svg { max-width: none; } }
@page { size: landscape; margin: 16pt 16pt 24pt; }
@media print { .picture .sheet { padding: 0; } .picture figure + h2 { break-before: page; } }`;

/** The whole file. */
export function picturesHtml(pages: readonly PicturePage[]): string {
  const [first] = pages;
  const title =
    pages.length === 1 && first !== undefined ? first.scene.title : `${String(pages.length)} pictures`;
  return htmlPage({ title, css, body: pages.map(pageText).join('\n'), kind: 'picture' });
}

/** Every assumption, and whose numbers are in force. */
export const sureTexts = ({ assumptions, facts }: Advice, units: Units): string[] => [
  ...assumptions.map((each) => `${capital(assumptionText(each, units))}.`),
  ...[ownNumbers(facts)].filter((text) => text !== undefined),
];

function pageText({ advice, shown, scene, units }: PicturePage): string {
  const { facts, cautions } = advice;
  return element(
    'article',
    [
      element('figure', `\n${svgElement(scene)}`),
      element('h2', 'What it shows'),
      plainList(
        shown.map(({ mark, head, lines }) =>
          [mark, `${head}. ${lines.join('. ')}.`].filter(Boolean).join(' '),
        ),
      ),
      element('h2', 'Where the elbow and the ring are'),
      plainList([roomText(facts, units), ringText(facts, units)]),
      element('h2', 'How sure'),
      plainList(sureTexts(advice, units)),
      element('p', html(cautions.join(' ')), 'cautions'),
    ].map((part) => `\n${part}`),
    'sheet',
  );
}
