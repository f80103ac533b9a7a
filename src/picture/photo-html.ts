/** Cinches laid on photos as one page that needs nothing else: the picture, then in words what it shows, and all cautions. */
import type { Advice } from '../advice/advice.ts';
import { element, html } from '../report/html.ts';
import { sheetCss } from '../report/sheet-css.ts';
import type { Units } from '../report/text.ts';
import { roomText, ringText } from '../report/about-order.ts';
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
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; img-src data:; style-src 'unsafe-inline'">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${html(title)}</title>
<style>${css}
</style>
</head>
<body class="picture">
${pages.map(pageText).join('\n')}
</body>
</html>
`;
}

function pageText({ advice, shown, units, drawing, address }: PhotoPage): string {
  const list = (texts: readonly string[]): string =>
    element(
      'ul',
      texts.map((text) => element('li', html(text))),
      'plain',
    );
  return element(
    'article',
    [
      element('figure', `\n${svgOnPhoto(drawing, address)}`),
      element('h2', 'What it shows'),
      list(
        shown.map(({ mark, head, lines }) =>
          [mark, `${head}. ${lines.join('. ')}.`].filter((part) => part !== undefined).join(' '),
        ),
      ),
      element('h2', 'Where the elbow and the ring are'),
      list([roomText(advice.facts, units), ringText(advice.facts, units)]),
      element('p', html(advice.cautions.join(' ')), 'cautions'),
    ].map((part) => `\n${part}`),
    'sheet',
  );
}
