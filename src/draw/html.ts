/** Pictures with their words as one self-contained page. */
import { element } from '../pages/html.ts';
import { sheetCss } from '../pages/sheet-css.ts';
import { articlesPage, pictureArticle, shownText, type ToldPicture } from './article.ts';
import type { Scene } from './scene.ts';
import { svgElement } from './svg.ts';

export interface PicturePage extends ToldPicture {
  readonly title: string;
  /** One per cinch, and a legend. */
  readonly scenes: readonly Scene[];
}

const css = `${sheetCss}
.picture .sheet { max-width: 864pt; padding: 18pt; } .picture svg { display: block; max-width: 100%; height: auto; }
.picture .panels { display: flex; flex-wrap: wrap; gap: 12pt; align-items: flex-end; } .picture figure { margin: 0; max-width: 100%; } .picture .panels figure { width: 264pt; }
.picture .notice { padding: 3pt 6pt; } .picture figcaption p { margin-bottom: 6pt; } .picture .cautions { font-size: 8.5pt; }
@media screen and (max-width: 460pt) { .picture .sheet { padding: 10pt; } }
@page { size: landscape; margin: 16pt 16pt 24pt; }
@media print { .picture .sheet { padding: 0; } .picture .panels { gap: 6pt; } .picture .panels figure { width: 248pt; } }`;

/** The whole file. */
export const picturesHtml = (pages: readonly PicturePage[]): string =>
  articlesPage(pages.map(pageText), { title: pages[0]?.title ?? '', css });

function pageText(page: PicturePage): string {
  const { scenes, shown } = page;
  const figures = scenes.map((scene, i) => {
    const each = shown[i];
    const words = each === undefined ? '' : element('figcaption', shownText(each));
    return element('figure', `${words}\n${svgElement(scene)}`);
  });
  // A flat cinch is one wide picture.
  const panels = scenes.length > 1 ? [element('div', figures, 'panels')] : figures;
  return pictureArticle(panels, page);
}
