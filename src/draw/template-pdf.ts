/** Templates as PDF, sheet after sheet at true size: a point of the drawing is a point of the page. */
import { fills, hands, strokes, type Stroke, type StrokeName } from './look.ts';
import { withTexts, type Layer, type Shape } from './scene.ts';
import type { Template } from './template.ts';
import { tilesOf, type Tile } from './tiles.ts';
import { colors } from '../pages/look.ts';
import { papers, pdfOf, type Document, type Pdf, type PdfOptions } from '../pages/pdf/document.ts';

/** One file of all templates, each on as many sheets as it takes. */
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

/** What of the drawing lies in the window of a sheet. */
function drawPart(document: Document, { window, from }: Tile, layers: readonly Layer[]): void {
  const { x, y, width, height } = window;
  document.save();
  document.rect(x, y, width, height).clip();
  document.translate(x - from[0], y - from[1]);
  drawLayers(document, layers);
  document.restore();
}

function drawLayers(document: Document, layers: readonly Layer[]): void {
  for (const { shapes, layers: inner = [] } of layers) {
    for (const shape of shapes) drawShape(document, shape);
    drawLayers(document, inner);
  }
}

function drawShape(document: Document, shape: Shape): void {
  if (shape.kind === 'label') {
    drawLabel(document, shape);
    return;
  }
  if (shape.kind === 'circle') document.circle(shape.at[0], shape.at[1], shape.radius);
  else document.path(`M${shape.points.join('L')}${shape.kind === 'area' ? 'Z' : ''}`);
  ink(document, shape);
}

function ink(document: Document, { fill, stroke }: { fill?: keyof typeof fills; stroke?: StrokeName }): void {
  if (stroke !== undefined) {
    const { color, width, dash = [] }: Stroke = strokes[stroke];
    document.lineWidth(width).strokeColor(colors[color]).lineJoin('round');
    if (dash.length === 0) document.undash();
    else document.dash([...dash] as unknown as number, {}); // takes a list, which its types do not know
  }
  if (fill !== undefined) document.fillColor(fills[fill]);
  document[fill === undefined ? 'stroke' : stroke === undefined ? 'fill' : 'fillAndStroke']();
}

/** Templates have no turned letters. */
function drawLabel(document: Document, { at, text, hand, anchor }: Shape & { kind: 'label' }): void {
  const { face, size, color } = hands[hand];
  document.font(face).fontSize(size).fillColor(colors[color]);
  const width = anchor === undefined || anchor === 'start' ? 0 : document.widthOfString(text);
  const left = at[0] - (anchor === 'middle' ? width / 2 : width);
  document.text(text, left, at[1], { lineBreak: false, baseline: 'alphabetic' });
}
