/** Pictures as one page that needs nothing else: the picture itself, then what it shows in words. */
import { htmlPage } from '../report/html.ts';
import { sheetCss } from '../report/sheet-css.ts';
import { pictureArticle, type ToldPicture } from './article.ts';
import type { Scene } from './scene.ts';
import { svgElement } from './svg.ts';

export interface PicturePage extends ToldPicture {
  readonly scene: Scene;
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

function pageText({ scene, ...told }: PicturePage): string {
  return pictureArticle(svgElement(scene), told);
}
