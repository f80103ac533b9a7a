/** Cinches drawn on photos, in one self-contained page. */
import { element } from '../../pages/html.ts';
import { sheetCss } from '../../pages/sheet-css.ts';
import { articlesPage, pictureArticle, shownText, type ToldPicture } from '../../draw/article.ts';
import { svgElement } from '../../draw/svg.ts';
import type { PhotoScene } from './page.ts';

export interface PhotoPage extends ToldPicture {
  readonly drawing: PhotoScene;
  /** Data URL of the cropped photo. */
  readonly address: string;
}

const css = `${sheetCss}
.picture .sheet { padding: 18pt; } .picture svg { display: block; width: 100%; height: auto; margin: 0 auto; }
@media screen and (max-width: 460pt) { .picture .sheet { padding: 0 0 12pt; } .picture .sheet > :not(figure) { margin-left: 12pt; margin-right: 12pt; } }
@media print { .picture .sheet { padding: 0; } }`;

/** The whole file. */
export const photosHtml = (pages: readonly PhotoPage[]): string =>
  articlesPage(pages.map(pageText), { title: pages[0]?.drawing.scene.title ?? '', css, pictures: true });

function pageText({ drawing, address, ...told }: PhotoPage): string {
  const figure = element('figure', `\n${svgOnPhoto(drawing, address)}`);
  return pictureArticle([figure, ...told.shown.map(shownText)], told);
}

function svgOnPhoto({ scene, photoHeight }: PhotoScene, address: string): string {
  const image = `<image x="0" y="0" width="${String(scene.width)}" height="${photoHeight.toFixed(3)}" preserveAspectRatio="none" href="${address}"/>`;
  // Safe: texts are escaped, so this end tag occurs once.
  return svgElement(scene).replace('</desc>', `</desc>\n${image}`);
}
