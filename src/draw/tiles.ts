/** Splits a template over labeled sheets of paper. */
import { textLines, linesAt, shortened, textWidth } from './letters.ts';
import { hands, leading } from './look.ts';
import { box, segment, type Layer, type Point, type Shape } from './scene.ts';
import { checkBars, checkBarsHeight, printWords, type Template } from './template.ts';

export interface Rectangle {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** One sheet, points. */
export interface Tile {
  readonly width: number;
  readonly height: number;
  /** "A1": row letter, column number. */
  readonly label: string;
  readonly window: Rectangle;
  /** The drawing's point at the window's top left. */
  readonly from: Point;
  /** In drawing points; they overlap when sheets are joined. */
  readonly marks: readonly Layer[];
  /** In sheet points. */
  readonly layers: readonly Layer[];
}

/** Points shared by neighbors. */
const OVERLAP = 36;
/** Unprintable border, points. */
const MARGIN = 28;
const FOOT_LINES = 4;
const FOOT = FOOT_LINES * hands.fine.size * leading + 4;
const HEAD = 60 + checkBarsHeight;

interface Grid {
  readonly width: number;
  readonly height: number;
  readonly window: Rectangle;
  /** Where columns and rows start in the drawing. */
  readonly lefts: readonly number[];
  readonly tops: readonly number[];
  readonly columns: number;
  readonly rows: number;
}

/** Portrait or landscape, whichever needs fewer sheets; points. */
export function tilesOf(template: Template, paper: { width: number; height: number }): Tile[] {
  const lying = gridOf(template, { width: paper.height, height: paper.width });
  const upright = gridOf(template, paper);
  const grid = upright.columns * upright.rows < lying.columns * lying.rows ? upright : lying;
  return Array.from({ length: grid.rows * grid.columns }, (_, i) =>
    tileOf(template, grid, { row: Math.floor(i / grid.columns), column: i % grid.columns }),
  );
}

function gridOf({ drawing }: Template, { width, height }: { width: number; height: number }): Grid {
  const window = {
    x: MARGIN,
    y: MARGIN + HEAD,
    width: width - 2 * MARGIN,
    height: height - 2 * MARGIN - HEAD - FOOT,
  };
  const lefts = startsOf(drawing.width, window.width, textSpans(drawing.layers, 0));
  const tops = startsOf(drawing.height, window.height, textSpans(drawing.layers, 1));
  return { width, height, window, lefts, tops, columns: lefts.length, rows: tops.length };
}

type Span = readonly [number, number];

/** Starts along one axis; neighbors overlap more where a seam would cut a text, if that needs no extra sheet. */
function startsOf(whole: number, part: number, texts: readonly Span[]): number[] {
  const count = Math.max(1, Math.ceil((whole - OVERLAP) / (part - OVERLAP) - 1e-9));
  let spare = OVERLAP + count * (part - OVERLAP) - whole;
  const starts = [0];
  for (let i = 1; i < count; i++) {
    const latest = (starts[i - 1] ?? 0) + part - OVERLAP;
    const free = [texts, texts.filter(isFigure)].map((avoided) => beforeTexts(latest, avoided));
    const kept = free.find((start) => latest - start <= spare) ?? latest;
    spare -= latest - kept;
    starts.push(kept);
  }
  return starts;
}

/** A cut figure is unreadable, a cut sentence is not. */
const isFigure = ([from, to]: Span): boolean => to - from < FIGURE;
const FIGURE = 66;

/** The last place up to this one that cuts no text. */
function beforeTexts(place: number, texts: readonly Span[]): number {
  const through = texts.filter(([from, to]) => from < place && place < to);
  if (through.length === 0) return place;
  return beforeTexts(Math.min(...through.map(([from]) => from)), texts);
}

/** Points around a text. */
const ROUND = 3;

/** Along axis 0 (across) or 1 (down). */
function textSpans(layers: readonly Layer[], axis: 0 | 1): Span[] {
  return layers.flatMap(({ shapes, layers: inner = [] }): Span[] => [
    ...shapes.flatMap((shape): Span[] => {
      if (shape.kind !== 'label') return [];
      const { at, text, hand, anchor = 'start' } = shape;
      if (axis === 1) return [[at[1] - hands[hand].size - ROUND, at[1] + ROUND]];
      const width = textWidth(text, hand);
      const from = at[0] - (anchor === 'middle' ? width / 2 : anchor === 'end' ? width : 0);
      return [[from - ROUND, from + width + ROUND]];
    }),
    ...textSpans(inner, axis),
  ]);
}

interface Cell {
  readonly row: number;
  readonly column: number;
}

const labelOf = ({ row, column }: Cell): string => `${String.fromCharCode(65 + row)}${String(column + 1)}`;

function tileOf(template: Template, grid: Grid, cell: Cell): Tile {
  const { window, width, height } = grid;
  const from: Point = [grid.lefts[cell.column] ?? 0, grid.tops[cell.row] ?? 0];
  return {
    width,
    height,
    window,
    from,
    label: labelOf(cell),
    marks: [{ name: 'joints', shapes: jointShapes(grid) }],
    layers: [
      { name: 'head', shapes: headShapes(template, grid, cell) },
      { name: 'check', shapes: checkBars([MARGIN, MARGIN + 54]) },
      { name: 'edge', shapes: edgeShapes(grid, cell) },
      { name: 'foot', shapes: footShapes(template, grid) },
    ],
  };
}

/** Crosses in every shared strip, to align sheets against the light. */
function jointShapes({ window, lefts, tops }: Grid): Shape[] {
  const places: Point[] = [];
  for (const [row, top] of tops.entries()) {
    for (const [column, left] of lefts.entries()) {
      for (const part of [0.12, 0.88]) {
        if (column > 0) places.push([left + OVERLAP / 2, top + part * window.height]);
        if (row > 0) places.push([left + part * window.width, top + OVERLAP / 2]);
      }
    }
  }
  return places.flatMap(([x, y]): Shape[] => [
    { kind: 'circle', at: [x, y], radius: 5, stroke: 'measure' },
    segment([x - 9, y], [x + 9, y], 'measure'),
    segment([x, y - 9], [x, y + 9], 'measure'),
  ]);
}

function headShapes({ title, notice }: Template, grid: Grid, cell: Cell): Shape[] {
  const wide = grid.window.width;
  const name = `Sheet ${labelOf(cell)} of ${labelOf({ row: grid.rows - 1, column: grid.columns - 1 })}: `;
  const lines = [notice, printWords].filter((text) => text !== undefined);
  return [
    {
      kind: 'label',
      at: [MARGIN, MARGIN + 11],
      text: shortened(`${name}${title}`, 'heading', wide),
      hand: 'heading',
    },
    ...linesAt(
      lines.map((text) => shortened(text, 'strong', wide)),
      'strong',
      [MARGIN, MARGIN + 18],
    ),
  ];
}

/** Of the window and the next sheet. */
function edgeShapes({ window, lefts, tops }: Grid, { row, column }: Cell): Shape[] {
  const { x, y, width, height } = window;
  const [right, bottom] = [x + width, y + height];
  return [
    box([x, y], [right, bottom], { stroke: 'leader' }),
    ...nextOf(lefts, column).map((far) => segment([x + far, y], [x + far, bottom], 'joint')),
    ...nextOf(tops, row).map((far) => segment([x, y + far], [right, y + far], 'joint')),
  ];
}

/** Where the next sheet starts; empty on the last. */
const nextOf = (starts: readonly number[], at: number): number[] => {
  const [here = 0, next] = starts.slice(at, at + 2);
  return next === undefined ? [] : [next - here];
};

function footShapes({ lines }: Template, { window }: Grid): Shape[] {
  const join =
    'Cut a sheet along its left or top frame and lay it on the dashed line of the one before, cross on cross.';
  const texts = textLines([join, ...lines].join(' '), 'fine', { width: window.width, most: FOOT_LINES });
  return linesAt(texts, 'fine', [MARGIN, window.y + window.height + 4]);
}
