/** Corners of a sheet on a photo: errors against OpenCV's map, and what door and page refuse. */
import { describe, expect, test } from 'vitest';
import type { Point } from '../../src/math/homography.ts';
import { plumbFault } from '../../src/math/plumb.ts';
import { cornerFault, depthRatio, type Corners } from '../../src/math/sheet-corners.ts';
import { seededRandom } from '../../src/math/random.ts';
import { referenceDoubts } from '../../src/photo/pick/doubts-marks.ts';
import { photoBounds } from '../../src/numbers/photo-bounds.ts';
import { orderProblems } from '../support/door.ts';
import { byOpenCv } from '../support/opencv.ts';
import { within } from '../support/within.ts';

const sheet: Point[] = [
  [0, 0],
  [24, 0],
  [24, 18],
  [0, 18],
];

/** Depths of the corners are the map's third parts, up to a factor (Hartley & Zisserman 2004, section 2.3). */
function ratioByOpenCv(corners: readonly Point[]): number {
  const [, , , , , , g = 0, h = 0, one = 1] = byOpenCv(sheet, corners);
  const depths = sheet.map(([x, y]) => g * x + h * y + one);
  return Math.max(...depths) / Math.min(...depths);
}

test('how much further the furthest corner is agrees with the map of another library', () => {
  const random = seededRandom(23);
  const near = (x: number, y: number): Point => [
    Math.round(x + 60 * (random.uniform() - 0.5)),
    Math.round(y + 60 * (random.uniform() - 0.5)),
  ];
  for (let run = 0; run < 200; run += 1) {
    const corners: Corners = [near(600, 500), near(840, 500), near(840, 680), near(600, 680)];
    within(depthRatio(corners), ratioByOpenCv(corners), 1e-6);
  }
});

/** 24 by 18 in, turned, before a camera 10 ft away with 9 pixels an inch there. */
function turned(degrees: number): Corners {
  const angle = (degrees * Math.PI) / 180;
  return sheet.map(([x, y]): Point => {
    const z = 120 + (x - 12) * Math.sin(angle);
    const tenths = (pixels: number): number => Math.round(10 * pixels) / 10;
    return [tenths(800 + (1080 * (x - 12) * Math.cos(angle)) / z), tenths(600 + (1080 * (y - 9)) / z)];
  }) as unknown as Corners;
}

const orderWith = (corners: Corners): string =>
  `order: 1
horse: { height: 15.2 hh }
saddle: { rigging: 7/8 }
photo:
  file: a.jpg
  image-size: [1600, 1200]
  reference: { width: 24 in, height: 18 in, corners: ${JSON.stringify(corners)} }
  ring: [728, 549]
  elbow: [696, 673]
  girth-groove: [736, 698]
  spine: [741, 475]
  underline: [736, 698]
`;

function told(corners: Corners): { door: string; page: boolean } {
  const problems = orderProblems(orderWith(corners));
  const page = referenceDoubts({ kind: 'sheet', width: 24, height: 18, corners });
  return {
    door: problems.map(({ path, hint }) => `${path}: ${hint ?? ''}`).join('\n'),
    page: page.some(({ refused }) => refused),
  };
}

describe('three corners nearly in one line', () => {
  const inLine: Corners = [
    [651.3, 545],
    [759.7, 620.5],
    [868.1, 696],
    [658.8, 701.1],
  ];
  test.each([
    ['in line', inLine],
    ['half a pixel out of it', [inLine[0], [760.1, 620.1], inLine[2], inLine[3]]],
    ['half a pixel dented in', [inLine[0], [759.3, 620.9], inLine[2], inLine[3]]],
    ['ten pixels out of it', [inLine[0], [767, 612], inLine[2], inLine[3]]],
  ] as const)('%s: refused at the door and on the page', (_, corners) => {
    const { door, page } = told(corners);
    expect(door).toMatch(/^photo\.reference\.corners: (three of its corners are|one corner would be)/);
    expect(page).toBe(true);
  });
  test.each([0, 10, 30, 45])('turned by %i degrees a sheet is taken', (degrees) => {
    expect(cornerFault(turned(degrees), photoBounds)).toBeUndefined();
    expect(told(turned(degrees))).toEqual({ door: '', page: false });
  });
});

describe('by hand, a square of 100 pixels', () => {
  const bounds = { leastEdge: 70, mostDepth: 2 };
  const fault = (fourth: Point, more: Partial<typeof bounds> = {}) =>
    cornerFault([[0, 0], [100, 0], [100, 100], fourth], { ...bounds, ...more });

  test('an edge may be as long as the shortest allowed, and the upper one lean by half a right angle', () => {
    expect(fault([0, 100], { leastEdge: 100 })).toBeUndefined();
    expect(fault([0, 100], { leastEdge: 101 })?.hint).toMatch(/100 pixels long/);
    expect(
      cornerFault(
        [
          [0, 0],
          [80, 80],
          [0, 160],
          [-80, 80],
        ],
        bounds,
      ),
    ).toBeUndefined();
    expect(
      cornerFault(
        [
          [0, 0],
          [80, 81],
          [-1, 161],
          [-81, 80],
        ],
        bounds,
      )?.expected,
    ).toMatch(/top left/);
  });

  // Twice the triangle of the first three is 10000; without the second 2000, 1000 and 200.
  test('a fourth corner near the line from the third to the first is told by how much further it would be', () => {
    expect(fault([40, 60], { mostDepth: 5 })).toBeUndefined();
    expect(fault([40, 60])?.hint).toMatch(/5\.0 times as far/);
    expect(fault([45, 55])?.hint).toMatch(/10\.0 times as far/);
    expect(fault([49, 51], { leastEdge: 70 })?.hint).toMatch(/nearly in line/);
  });
});

test('a plumb line may be as short and lean as far as is allowed, and not lie level', () => {
  const fault = (bottom: Point, leastPixels: number, mostLean: number) =>
    plumbFault([[0, 0], bottom], { leastPixels, mostLean })?.hint;
  expect(fault([0, 100], 100, 20)).toBeUndefined();
  expect(fault([0, 99], 100, 20)).toMatch(/99 pixels long/);
  expect(fault([80, 80], 100, 45)).toBeUndefined();
  expect(fault([100, 0], 100, 100)).toMatch(/bottom is above/);
});
