/** Paths on a PDF's pages by PDF.js, in points from the upper left. */
import { getDocumentProxy, getResolvedPDFJS } from 'unpdf';

export type Point = readonly [x: number, y: number];

export interface Drawn {
  readonly points: readonly Point[];
  /** Of the pen. */
  readonly width: number;
  /** Cuts off what is drawn next. */
  readonly clips: boolean;
}

// PDF.js needs this newer method for fonts; without it the rest of a page is missing.
const bare = ArrayBuffer.prototype as {
  transferToFixedLength?: (this: ArrayBuffer, length?: number) => ArrayBuffer;
};
bare.transferToFixedLength ??= function (this: ArrayBuffer, length = this.byteLength) {
  return this.slice(0, length);
};

type Matrix = readonly [number, number, number, number, number, number];

const times = ([a, b, c, d, e, f]: Matrix, [p, q, r, s, t, u]: Matrix): Matrix => [
  a * p + c * q,
  b * p + d * q,
  a * r + c * s,
  b * r + d * s,
  a * t + c * u + e,
  b * t + d * u + f,
];

export async function drawnOn(bytes: Uint8Array): Promise<Drawn[][]> {
  const { OPS } = await getResolvedPDFJS();
  const document = await getDocumentProxy(new Uint8Array(bytes));
  const pages: Drawn[][] = [];
  for (let n = 1; n <= document.numPages; n += 1) {
    const page = await document.getPage(n);
    const { height } = page.getViewport({ scale: 1 });
    const { fnArray, argsArray } = await page.getOperatorList();
    const state = { matrix: [1, 0, 0, -1, 0, height] as Matrix, width: 1 };
    const kept: { matrix: Matrix; width: number }[] = [];
    const found: Drawn[] = [];
    let clips = false;
    fnArray.forEach((operator, i) => {
      const args = argsArray[i] as unknown[];
      if (operator === OPS.save) kept.push({ ...state });
      else if (operator === OPS.restore) Object.assign(state, kept.pop());
      else if (operator === OPS.transform) state.matrix = times(state.matrix, args as unknown as Matrix);
      else if (operator === OPS.setLineWidth) state.width = args[0] as number;
      else if (operator === OPS.clip) clips = true;
      else if (operator === OPS.constructPath) {
        const [path] = args[1] as [ArrayLike<number> | null];
        if (path !== null) found.push({ points: cornersOf(path, state.matrix), width: state.width, clips });
        clips = false;
      }
    });
    pages.push(found);
  }
  return pages;
}

/** Numbers each command takes: move, line, curve, quadratic curve, close. */
const counts = [2, 2, 6, 4, 0];

function cornersOf(path: ArrayLike<number>, [a, b, c, d, e, f]: Matrix): Point[] {
  const points: Point[] = [];
  for (let i = 0; i < path.length;) {
    const count = counts[path[i]!]!;
    if (count > 0) {
      const [x, y] = [path[i + count - 1]!, path[i + count]!];
      points.push([a * x + c * y + e, b * x + d * y + f]);
    }
    i += 1 + count;
  }
  return points;
}
