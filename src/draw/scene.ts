/** A picture as data: layers of shapes, points from the top left, y down. */
import type { FillName, HandName, StrokeName } from './look.ts';

export type Point = readonly [x: number, y: number];

export type Shape =
  /** An open line. */
  | { readonly kind: 'line'; readonly points: readonly Point[]; readonly stroke: StrokeName }
  /** A closed area. */
  | {
      readonly kind: 'area';
      readonly points: readonly Point[];
      readonly fill?: FillName;
      readonly stroke?: StrokeName;
    }
  | {
      readonly kind: 'circle';
      readonly at: Point;
      readonly radius: number;
      readonly fill?: FillName;
      readonly stroke?: StrokeName;
    }
  /** Raw text, its baseline at `at`. */
  | {
      readonly kind: 'label';
      readonly at: Point;
      readonly text: string;
      readonly hand: HandName;
      readonly anchor?: 'start' | 'middle' | 'end';
      /** Degrees clockwise. */
      readonly turn?: number;
    };

/** Scripts find a layer by name. */
export interface Layer {
  readonly name: string;
  readonly shapes: readonly Shape[];
  /** On top of its shapes. */
  readonly layers?: readonly Layer[];
}

export interface Scene {
  /** Points. */
  readonly width: number;
  readonly height: number;
  /** White border. */
  readonly margin: number;
  /** For screen readers. */
  readonly title: string;
  readonly about: string;
  /** Inches per inch of paper. */
  readonly scale: number;
  readonly layers: readonly Layer[];
}

export type Place = (point: Point) => Point;

/** `factor` scales radii, not letters. */
export const placed = (shapes: readonly Shape[], place: Place, factor: number): Shape[] =>
  shapes.map((shape): Shape => {
    switch (shape.kind) {
      case 'circle':
        return { ...shape, at: place(shape.at), radius: shape.radius * factor };
      case 'label':
        return { ...shape, at: place(shape.at) };
      default:
        return { ...shape, points: shape.points.map(place) };
    }
  });

/** A line between two points. */
export const segment = (from: Point, to: Point, stroke: StrokeName): Shape => ({
  kind: 'line',
  points: [from, to],
  stroke,
});

/** Between opposite corners. */
export const box = (
  [x, y]: Point,
  [right, bottom]: Point,
  look: { fill?: FillName; stroke?: StrokeName },
): Shape => ({
  kind: 'area',
  points: [
    [x, y],
    [right, y],
    [right, bottom],
    [x, bottom],
  ],
  ...look,
});

/** With every text rewritten. */
export const withTexts = (layers: readonly Layer[], of: (text: string) => string): Layer[] =>
  layers.map((layer) => ({
    ...layer,
    shapes: layer.shapes.map((shape) =>
      shape.kind === 'label' ? { ...shape, text: of(shape.text) } : shape,
    ),
    ...(layer.layers === undefined ? {} : { layers: withTexts(layer.layers, of) }),
  }));
