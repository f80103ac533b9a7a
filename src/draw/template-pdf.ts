/** Templates as PDF sheets at true size. */
import { drawLayers } from './scene-pdf.ts';
import { withTexts, type Layer } from './scene.ts';
import type { Template } from './template.ts';
import { tilesOf, type Tile } from './tiles.ts';
import { papers, pdfOf, type Document, type Pdf, type PdfOptions } from '../pages/pdf/document.ts';

/** One file for all templates. */
export function templatesPdf(templates: readonly Template[], options: PdfOptions): Promise<Pdf> {
  const title =
    templates.length === 1 ? (templates[0]?.title ?? '') : `${String(templates.length)} templates`;
  return pdfOf(title, options, (document, { printed }) => {
    for (const template of templates) {
      const drawing = withTexts(template.drawing.layers, printed);
      for (const tile of tilesOf(template, papers[options.paper])) {
        document.addPage({ size: [tile.width, tile.height], margin: 0 });
        drawPart(document, tile, [...drawing, ...tile.marks]);
        drawLayers(document, withTexts(tile.layers, printed));
      }
    }
  });
}

function drawPart(document: Document, { window, from }: Tile, layers: readonly Layer[]): void {
  const { x, y, width, height } = window;
  document.save();
  document.rect(x, y, width, height).clip();
  document.translate(x - from[0], y - from[1]);
  drawLayers(document, layers);
  document.restore();
}
