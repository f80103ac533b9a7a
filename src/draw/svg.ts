/** A picture as a self-contained SVG, the same on every machine; nothing else rounds. */
import { html } from '../pages/html.ts';
import { colors } from '../pages/look.ts';
import { isKnown, textWidth } from './letters.ts';
import { families, fills, hands, strokes, type FillName, type StrokeName } from './look.ts';
import type { Layer, Point, Scene, Shape } from './scene.ts';

/** XML allows fewer letters than HTML (XML 1.0, 2.2). */
const xml = (text: string): string =>
  html(text).replace(/[\ufffe\uffff]/g, (sign) => `\\u{${sign === '\ufffe' ? 'fffe' : 'ffff'}}`);

const mmPerPoint = 25.4 / 72;

/** Machines cut in millimeters. */
export type SvgUnit = 'pt' | 'mm';

/** The whole file. */
export function sceneSvg(scene: Scene, unit: SvgUnit = 'pt'): string {
  return `<?xml version="1.0" encoding="UTF-8"?>\n${svgElement(scene, unit)}`;
}

/** For inside a page. */
export function svgElement(
  { width, height, margin, title, about, scale, layers }: Scene,
  unit: SvgUnit = 'pt',
): string {
  const pen = penFor(unit);
  const [wide, tall] = [pen.number(width + 2 * margin), pen.number(height + 2 * margin)];
  const from = pen.number(-margin);
  return `<svg xmlns="http://www.w3.org/2000/svg" role="img" width="${wide}${unit}" height="${tall}${unit}" viewBox="${from} ${from} ${wide} ${tall}" data-by="cinchwright" data-scale="${rounded(scale, 3)}" font-family="${families.text.names}" stroke-linejoin="round">
<title>${xml(title)}</title>
<desc>${xml(about)}</desc>
${layers.map((layer) => layerText(layer, pen)).join('\n')}
</svg>
`;
}

interface Pen {
  readonly number: (points: number) => string;
}

const penFor = (unit: SvgUnit): Pen => ({
  number: (points) => rounded(unit === 'pt' ? points : points * mmPerPoint, 3),
});

/** No trailing zeros, no "-0". */
const rounded = (value: number, places: number): string => String(Number(value.toFixed(places)) || 0);

function layerText({ name, shapes, layers = [] }: Layer, pen: Pen): string {
  const inside = [
    ...shapes.map((shape) => shapeText(shape, pen)),
    ...layers.map((layer) => layerText(layer, pen)),
  ];
  return `<g class="${name}">\n${inside.join('\n')}\n</g>`;
}

function shapeText(shape: Shape, pen: Pen): string {
  switch (shape.kind) {
    case 'line':
      return `<path d="${pathOf(shape.points, pen)}" fill="none"${strokeText(shape.stroke, pen)}/>`;
    case 'area':
      return `<path d="${pathOf(shape.points, pen)}Z"${fillText(shape.fill)}${strokeText(shape.stroke, pen)}/>`;
    case 'circle': {
      const [x, y] = shape.at.map(pen.number) as [string, string];
      return `<circle cx="${x}" cy="${y}" r="${pen.number(shape.radius)}"${fillText(shape.fill)}${strokeText(shape.stroke, pen)}/>`;
    }
    case 'label':
      return labelText(shape, pen);
  }
}

const pathOf = (points: readonly Point[], { number }: Pen): string =>
  points.map(([x, y], i) => `${i === 0 ? 'M' : 'L'}${number(x)} ${number(y)}`).join('');

const fillText = (fill: FillName | undefined): string =>
  ` fill="${fill === undefined ? 'none' : fills[fill]}"`;

function strokeText(name: StrokeName | undefined, { number }: Pen): string {
  if (name === undefined) return '';
  const {
    color,
    width,
    dash = [],
  }: { color: keyof typeof colors; width: number; dash?: readonly number[] } = strokes[name];
  const dashes = dash.length === 0 ? '' : ` stroke-dasharray="${dash.map(number).join(' ')}"`;
  return ` stroke="${colors[color]}" stroke-width="${number(width)}"${dashes}`;
}

/** Fixes the length of text, so another font does not shift it. */
function labelText(
  { at, text, hand, anchor = 'start', turn = 0 }: Shape & { kind: 'label' },
  pen: Pen,
): string {
  const { face, size, color } = hands[hand];
  const { names, weight } = families[face];
  const [x, y] = at.map(pen.number) as [string, string];
  const turned = turn === 0 ? '' : ` transform="rotate(${rounded(turn, 3)} ${x} ${y})"`;
  const held =
    text.length > 2 && isKnown(text)
      ? ` textLength="${pen.number(textWidth(text, hand))}" lengthAdjust="spacingAndGlyphs"`
      : '';
  const family = names === families.text.names ? '' : `font-family="${names}" `;
  const style = `${family}font-size="${pen.number(size)}" font-weight="${String(weight)}"`;
  const where = anchor === 'start' ? '' : ` text-anchor="${anchor}"`;
  return `<text x="${x}" y="${y}" ${style} fill="${colors[color]}"${where}${held}${turned}>${xml(text)}</text>`;
}
