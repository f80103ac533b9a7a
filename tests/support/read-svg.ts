/** Reads SVG with a strict XML parser and a path parser. */
import { SaxesParser } from 'saxes';
import { makeAbsolute, parseSVG } from 'svg-path-parser';

type Point = readonly [x: number, y: number];

export interface SvgElement {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  /** Layers around it, outermost first. */
  readonly layers: readonly string[];
  text: string;
}

export interface Svg {
  readonly elements: readonly SvgElement[];
  /** With unit, as written. */
  readonly size: readonly [string, string];
  readonly viewBox: readonly number[];
  readonly scale: number;
}

/** @throws unless it is well-formed */
export function readSvg(text: string): Svg {
  const parser = new SaxesParser({ xmlns: true });
  const elements: SvgElement[] = [];
  const open: SvgElement[] = [];
  const fails: Error[] = [];
  parser.on('error', (error) => fails.push(error));
  parser.on('opentag', ({ name, attributes }) => {
    const own = Object.fromEntries(Object.entries(attributes).map(([key, { value }]) => [key, value]));
    const layers = open.flatMap((each) => (each.name === 'g' ? [each.attributes['class'] ?? ''] : []));
    const element = { name, attributes: own, layers, text: '' };
    open.push(element);
    elements.push(element);
  });
  parser.on('text', (found) => {
    const inner = open.at(-1);
    if (inner !== undefined) inner.text += found;
  });
  parser.on('closetag', () => open.pop());
  parser.write(text).close();
  if (fails.length > 0) throw fails[0]!;
  const { attributes } = elements[0]!;
  return {
    elements,
    size: [attributes['width']!, attributes['height']!],
    viewBox: attributes['viewBox']!.split(' ').map(Number),
    scale: Number(attributes['data-scale']),
  };
}

/** At any depth. */
export const inLayer = (svg: Svg, ...layers: readonly string[]): SvgElement[] =>
  svg.elements.filter((each) => layers.every((layer) => each.layers.includes(layer)));

/** In the file's unit. */
export function cornersOf({ attributes }: SvgElement): Point[] {
  const commands = makeAbsolute(parseSVG(attributes['d']!));
  return commands.flatMap((command) =>
    command.code === 'M' || command.code === 'L' ? [[command.x, command.y] as const] : [],
  );
}

export const distance = ([ax, ay]: Point, [bx, by]: Point): number => Math.hypot(ax - bx, ay - by);
