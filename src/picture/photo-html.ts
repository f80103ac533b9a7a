/** Cinches laid on photos as one page that needs nothing else: the picture, then in words what it shows, and all cautions. */
import type { Advice } from '../advice/advice.ts';
import { element, html, htmlPage, plainList } from '../report/html.ts';
import { sheetCss } from '../report/sheet-css.ts';
import { phraseText, type Units } from '../report/text.ts';
import { facesText } from '../report/about-photo.ts';
import { roomText, ringText } from '../report/about-order.ts';
import { sureTexts } from './html.ts';
import { svgOnPhoto, type PhotoScene } from './photo-page.ts';
import type { Shown } from './shown.ts';

export interface PhotoPage {
  readonly advice: Advice;
  readonly shown: readonly Shown[];
  readonly units: Units;
  readonly drawing: PhotoScene;
  /** The part of the photo, as data. */
  readonly address: string;
}

const css = `${sheetCss}
.picture .sheet { padding: 18pt; } .picture svg { display: block; width: 100%; height: auto; margin: 0 auto; }
@media screen and (max-width: 460pt) { .picture .sheet { padding: 0 0 12pt; } .picture .sheet > :not(figure) { margin-left: 12pt; margin-right: 12pt; } }
@media print { .picture .sheet { padding: 0; } }`;

/** The whole file. */
export function photosHtml(pages: readonly PhotoPage[]): string {
  const [first] = pages;
  const title =
    pages.length === 1 && first !== undefined
      ? first.drawing.scene.title
      : `${String(pages.length)} pictures`;
  return htmlPage({ title, css, body: pages.map(pageText).join('\n'), kind: 'picture', pictures: true });
}

function pageText({ advice, shown, units, drawing, address }: PhotoPage): string {
  return element(
    'article',
    [
      element('figure', `\n${svgOnPhoto(drawing, address)}`),
      element('h2', 'What it shows'),
      plainList(
        shown.map(({ mark, head, lines }) =>
          [mark, `${head}. ${lines.join('. ')}.`].filter((part) => part !== undefined).join(' '),
        ),
      ),
      element('h2', 'Where the elbow and the ring are'),
      plainList([
        roomText(advice.facts, units),
        ringText(advice.facts, units),
        ...advice.remarks.map((remark) => phraseText(remark, units)),
        ...(advice.facts.photo === undefined ? [] : [facesText(advice.facts.photo)]),
      ]),
      element('h2', 'How sure'),
      plainList(sureTexts(advice, units)),
      element('p', html(advice.cautions.join(' ')), 'cautions'),
    ].map((part) => `\n${part}`),
    'sheet',
  );
}
