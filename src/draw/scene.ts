/** A picture as plain data: shapes in layers, in points from the top left corner of the paper, y downward. */
import type { FillName, HandName, StrokeName } from './look.ts';

export type Point = readonly [x: number, y: number];

export type Shape =
  /** A broken line. */
  | { readonly kind: 'line'; readonly points: readonly Point[]; readonly stroke: StrokeName }
  /** What a broken line encloses. */
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
  /** One line of letters that stand on `at`; texts are as they came, not yet escaped. */
  | {
      readonly kind: 'label';
      readonly at: Point;
      readonly text: string;
      readonly hand: HandName;
      readonly anchor?: 'start' | 'middle' | 'end';
      /** Degrees, turning right. */
      readonly turn?: number;
    };

/** Shapes that belong together, drawn in their order; its name is what a script finds it by. */
export interface Layer {
  readonly name: string;
  readonly shapes: readonly Shape[];
  /** Drawn over its shapes. */
  readonly layers?: readonly Layer[];
}

export interface Scene {
  /** Of the paper, points. */
  readonly width: number;
  readonly height: number;
  /** White around it on all sides, where no shape stands. */
  readonly margin: number;
  /** For readers who cannot see it. */
  readonly title: string;
  readonly about: string;
  /** Inches of horse or cinch to an inch of paper. */
  readonly scale: number;
  readonly layers: readonly Layer[];
}

/** Carries a point of a subject, in inches, to the paper. */
export type Place = (point: Point) => Point;

/** The same shapes carried over; radii grow by `factor`, letters keep their size. */
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

/** An upright rectangle from one corner to the opposite one. */
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

/** Layers with every text as it can be printed. */
export const withTexts = (layers: readonly Layer[], of: (text: string) => string): Layer[] =>
  layers.map((layer) => ({
    ...layer,
    shapes: layer.shapes.map((shape) =>
      shape.kind === 'label' ? { ...shape, text: of(shape.text) } : shape,
    ),
    ...(layer.layers === undefined ? {} : { layers: withTexts(layer.layers, of) }),
  }));
