/** A picture known to the pixel, and two screens. */
export const width = 1600;
export const height = 1200;

/** A small black square at each landmark to click. */
export const places = {
  from: [400, 700],
  to: [1120, 690],
  'plumb-top': [1500, 100],
  'plumb-bottom': [1506, 1000],
  ring: [640, 560],
  elbow: [560, 800],
  'girth-groove': [650, 900],
  spine: [655, 330],
  underline: [655, 905],
  fork: [600, 350],
  cantle: [900, 340],
} as const satisfies Record<string, readonly [number, number]>;

const square = ([x, y]: readonly [number, number]): string =>
  `<rect x="${String(x - 4)}" y="${String(y - 4)}" width="8" height="8"/>`;
export const drawing = `<svg xmlns="http://www.w3.org/2000/svg" width="${String(width)}" height="${String(height)}"><rect width="100%" height="100%" fill="#aab"/><rect width="80" height="60" fill="#d00"/>${Object.values(places).map(square).join('')}</svg>`;

export const desktop = { viewport: { width: 1300, height: 900 } };
export const phone = {
  viewport: { width: 390, height: 844 },
  hasTouch: true,
  isMobile: true,
  deviceScaleFactor: 3,
};
