/** Draws layers of a picture on a PDF page. */
import { colors } from '../pages/look.ts';
import type { Document } from '../pages/pdf/document.ts';
import { fills, hands, strokes, type Stroke, type StrokeName } from './look.ts';
import type { Layer, Shape } from './scene.ts';

/** Bottom layer first. */
export function drawLayers(document: Document, layers: readonly Layer[]): void {
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
    else document.dash([...dash] as unknown as number, {}); // its types leave out lists
  }
  if (fill !== undefined) document.fillColor(fills[fill]);
  document[fill === undefined ? 'stroke' : stroke === undefined ? 'fill' : 'fillAndStroke']();
}

/** No text here is turned. */
function drawLabel(document: Document, { at, text, hand, anchor }: Shape & { kind: 'label' }): void {
  const { face, size, color } = hands[hand];
  document.font(face).fontSize(size).fillColor(colors[color]);
  const width = anchor === undefined || anchor === 'start' ? 0 : document.widthOfString(text);
  const left = at[0] - (anchor === 'middle' ? width / 2 : width);
  document.text(text, left, at[1], { lineBreak: false, baseline: 'alphabetic' });
}
