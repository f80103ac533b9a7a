/** The map between planes against published points, a textbook's formula and another library. */
import { describe, expect, test } from 'vitest';
import { homographyOf, type Homography, type Point } from '../../src/math/homography.ts';
import { seededRandom } from '../../src/math/random.ts';
import { mapPoint } from '../support/map-point.ts';
import { byOpenCv } from '../support/opencv.ts';
import { within } from '../support/within.ts';

/** Scaled so that the last entry is 1. */
const likeOthers = (h: Homography | undefined): number[] => {
  const flat = h!.flat();
  return flat.map((entry) => entry / flat[8]!);
};

const square: Point[] = [
  [0, 0],
  [1, 0],
  [1, 1],
  [0, 1],
];

/**
 * Heckbert 1989, Fundamentals of Texture Mapping and Image Warping, section 2.2.3: unit square to
 * quadrilateral (memory).
 */
function heckbert(quad: readonly Point[]): number[] {
  const [[x0, y0], [x1, y1], [x2, y2], [x3, y3]] = quad as [Point, Point, Point, Point];
  const [dx1, dx2, sx] = [x1 - x2, x3 - x2, x0 - x1 + x2 - x3];
  const [dy1, dy2, sy] = [y1 - y2, y3 - y2, y0 - y1 + y2 - y3];
  const under = dx1 * dy2 - dx2 * dy1;
  const g = (sx * dy2 - dx2 * sy) / under;
  const h = (dx1 * sy - sx * dy1) / under;
  return [x1 - x0 + g * x1, x3 - x0 + h * x3, x0, y1 - y0 + g * y1, y3 - y0 + h * y3, y0, g, h, 1];
}

/** Convex, corners in whole pixels, which the other library keeps exactly in single precision. */
function quads(count: number): Point[][] {
  const random = seededRandom(11);
  const near = (x: number, y: number): Point => [
    Math.round(x + 160 * (random.uniform() - 0.5)),
    Math.round(y + 160 * (random.uniform() - 0.5)),
  ];
  return Array.from({ length: count }, () => [
    near(400, 300),
    near(900, 300),
    near(900, 800),
    near(400, 800),
  ]);
}

describe('published points', () => {
  // scikit-image, tests of geometric transforms (BSD-3, seen): four of eight.
  const from: Point[] = [
    [-12.3705, -10.5075],
    [-10.7865, 15.4305],
    [8.6985, 10.8675],
    [11.4975, -9.5715],
  ];
  const to: Point[] = [
    [0, 0],
    [0, 5800],
    [4900, 5800],
    [4900, 0],
  ];
  const expected = [
    194.669012907773, -11.8881839943678, 2283.23793085479, -8.69100775394441, 221.620697725583,
    2221.16736993139, -0.0126959667351073, -0.00960536242895396, 1,
  ];
  test('scikit-image: the map of four of its points, and where it sends the other four', () => {
    const h = homographyOf(from, to);
    likeOthers(h).forEach((entry, i) => {
      within(entry, expected[i]!, 1e-11 * Math.max(1, Math.abs(expected[i]!)));
    });
    const others: [Point, Point][] = [
      [
        [7.8435, 7.4835],
        [4491.238248106, 4600.272345241],
      ],
      [
        [-5.3325, 6.5025],
        [1161.772060132, 3689.260275728],
      ],
      [
        [6.7905, -6.3765],
        [3775.184182474, 768.1626295878],
      ],
      [
        [-6.1695, -0.8235],
        [1005.320743394, 1926.173008298],
      ],
    ];
    for (const [point, image] of others) {
      const [x, y] = mapPoint(h!, point);
      within(x, image[0], 1e-8);
      within(y, image[1], 1e-8);
    }
  });

  // README of the package perspective-transform (memory); the map by opencv-wasm 4.3.
  test('a picture of a document', () => {
    const h = homographyOf(
      [
        [158, 64],
        [494, 69],
        [495, 404],
        [158, 404],
      ],
      [
        [100, 500],
        [152, 564],
        [148, 604],
        [100, 560],
      ],
    );
    const opencv = [
      0.38697493836536456, 0.04268174477272567, 59.242794796891516, 0.9589610618003153, 0.4562821237697463,
      434.8644299346543, 0.0012901794340898173, 0.0004268174477272565, 1,
    ];
    likeOthers(h).forEach((entry, i) => {
      within(entry, opencv[i]!, 1e-10 * Math.max(1, Math.abs(opencv[i]!)));
    });
    const [x, y] = mapPoint(h!, [250, 120]);
    within(x, 117.27521003323227, 1e-9);
    within(y, 530.9202355782547, 1e-9);
  });
});

describe('300 quadrilaterals', () => {
  test('are those of the textbook', () => {
    for (const quad of quads(300)) {
      const expected = heckbert(quad);
      likeOthers(homographyOf(square, quad)).forEach((entry, i) => {
        within(entry, expected[i]!, 1e-9 * Math.max(1, Math.abs(expected[i]!)));
      });
    }
  });
  test('are those of OpenCV', () => {
    const all = quads(301);
    all.slice(1).forEach((quad, at) => {
      const expected = byOpenCv(all[at]!, quad);
      likeOthers(homographyOf(all[at]!, quad)).forEach((entry, i) => {
        within(entry, expected[i]!, 1e-8 * Math.max(1, Math.abs(expected[i]!)));
      });
    });
  });
  test('there and back is the same point', () => {
    const all = quads(301);
    all.slice(1).forEach((quad, at) => {
      const [there, back] = [homographyOf(all[at]!, quad)!, homographyOf(quad, all[at]!)!];
      const [x, y] = mapPoint(back, mapPoint(there, [650, 550]));
      within(x, 650, 1e-8);
      within(y, 550, 1e-8);
    });
  });
});

describe('the awkward ones', () => {
  test('a map whose last entry is 0 is found like any other', () => {
    // (x, y) -> (1/x, y/x) sends the origin to infinity.
    const from: Point[] = [
      [1, 1],
      [2, 1],
      [2, 3],
      [1, 2],
    ];
    const h = homographyOf(
      from,
      from.map(([x, y]): Point => [1 / x, y / x]),
    );
    const [x, y] = mapPoint(h!, [4, 2]);
    within(x, 0.25, 1e-12);
    within(y, 0.5, 1e-12);
    expect(Math.abs(h![2][2])).toBeLessThan(1e-12);
  });
  test.each([
    [
      'three in line',
      [
        [0, 0],
        [1, 1],
        [2, 2],
        [0, 5],
      ],
    ],
    [
      'two the same',
      [
        [0, 0],
        [0, 0],
        [2, 2],
        [0, 5],
      ],
    ],
    [
      'all the same',
      [
        [1, 1],
        [1, 1],
        [1, 1],
        [1, 1],
      ],
    ],
    [
      'not a number',
      [
        [NaN, 0],
        [1, 0],
        [1, 1],
        [0, 1],
      ],
    ],
    [
      'three points',
      [
        [0, 0],
        [1, 0],
        [1, 1],
      ],
    ],
  ] as [string, Point[]][])('%s: there is none', (_, points) => {
    expect(homographyOf(points, square)).toBeUndefined();
    expect(homographyOf(square, points)).toBeUndefined();
  });
});
