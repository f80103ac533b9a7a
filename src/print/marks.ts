/** What stands on a printed page: texts, lines and areas at their places. Points from the top left corner, y downward. */
import type { Color } from '../report/look.ts';

/** Faces of type: running text, what stands out, headings. */
export type Face = 'text' | 'strong' | 'head';
export const faces: readonly Face[] = ['text', 'strong', 'head'];

export interface TextMark {
  readonly kind: 'text';
  readonly x: number;
  /** Of the line that the letters stand on. */
  readonly y: number;
  readonly text: string;
  readonly face: Face;
  readonly size: number;
  readonly color: Color;
}

export interface AreaMark {
  readonly kind: 'area';
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly fill?: Color;
  /** Its frame is drawn inside of it. */
  readonly frame?: { readonly color: Color; readonly width: number };
}

export type Mark = TextMark | AreaMark;

/** One page, ready to be drawn. */
export interface Page {
  readonly marks: readonly Mark[];
}

/** Width of a text of one face at size 1. */
export type Measure = (text: string, face: Face) => number;

/** The same marks elsewhere. */
export const moved = (marks: readonly Mark[], dx: number, dy: number): Mark[] =>
  marks.map((mark) => ({ ...mark, x: mark.x + dx, y: mark.y + dy }));

/** A level line: an area as thin as it is. */
export const rule = (
  at: { x: number; y: number; width: number },
  { color, weight }: { color: Color; weight: number },
): AreaMark => ({
  kind: 'area',
  ...at,
  height: weight,
  fill: color,
});
