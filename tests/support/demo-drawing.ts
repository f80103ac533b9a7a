/** The demo photo as a drawing, seen by the camera of its scene. */
import { demo, type Pixel } from './camera.ts';
import { byString, onStick, outAt, pixelAt, seenOutline, skinPixel, stringLength } from './demo-scene.ts';

const { subject, camera } = demo;
/** Pixels per inch, for line widths. */
const unit = camera.focal / 144;
const wide = (inches: number): string => `stroke-width="${(inches * unit).toFixed(2)}"`;

type Pair = readonly [number, number];

const text = ([x, y]: Pixel): string => `${x.toFixed(2)} ${y.toFixed(2)}`;
const line = (pixels: readonly Pixel[]): string => `M${pixels.map(text).join('L')}`;
const area = (pixels: readonly Pixel[], look: string): string => `<path d="${line(pixels)}Z" ${look}/>`;

/**
 * Body and legs are in units of a sketch with the groove at (120, 151) and the back above at (120, 58), laid into
 * the plane where the camera sees the barrel's outline.
 */
const sketch = { x: 120, bottom: 151, top: 58 };
const [low, high] = [seenOutline(0, false), seenOutline(0, true)];
const inch = (high[1] - low[1]) / (sketch.bottom - sketch.top);

function sketched([x, y]: Pair): Pixel {
  const below = y > sketch.bottom ? 1.9 : 1;
  const share = (sketch.bottom - y) / (sketch.bottom - sketch.top);
  const out = low[2] + (high[2] - low[2]) * Math.min(1, Math.max(0, share));
  return pixelAt((sketch.x - x) * inch, low[1] + (sketch.bottom - y) * inch * below, out);
}

/** A sketch's path in pixels. */
const carried = (path: string): string =>
  path.replace(/(-?[\d.]+) (-?[\d.]+)/g, (_, x: string, y: string) => text(sketched([Number(x), Number(y)])));

const coat = 'fill="url(#coat)" stroke="#4a2c1c" stroke-width="2" stroke-linejoin="round"';
const hair = 'fill="#241a17"';

const body =
  'M120 58 C102 49 84 26 66 12 L64 1 L56 9 C46 18 30 38 17 54 C12 60 16 69 25 67 C36 65 46 56 58 54 C64 66 62 86 68 100 C70 112 76 122 86 134 C96 146 108 151 120 151 C152 152 184 149 208 134 C214 130 216 128 218 126 C222 138 230 146 234 158 L232 200 L228 209 L245 209 L246 200 L249 158 C252 140 260 120 257 96 C255 78 246 66 232 62 C212 55 196 60 180 65 C158 70 138 66 120 58 Z';
const far =
  'M90 130 L94 164 L92 202 L104 204 L107 164 L118 140 Z M212 130 L206 160 L208 202 L220 204 L221 164 L236 140 Z';
const mane = 'M120 58 C102 49 84 26 66 12 L64 4 C78 14 90 32 96 52 C104 50 112 54 120 58 Z';
const tail = 'M254 78 C274 82 282 120 270 172 C262 160 256 120 255 96 Z';

/** Its rear top edge is the back of the elbow. */
function foreleg(): string {
  const at = (forward: number, up: number): Pixel => pixelAt(forward, up, outAt(subject.elbowStation));
  const elbowUp = 4.6;
  const rear: Pixel[] = [
    at(5.6, 11),
    at(4.7, 8),
    skinPixel(subject.room, subject.elbowStation, subject.elbowOut),
    at(4.9, 1),
    at(6.2, -5),
    at(6.6, -17),
    at(6.4, -29),
    at(6.2, -33.6),
  ];
  const front: Pixel[] = [at(12, -33.6), at(11, -29), at(10.6, -17), at(11.6, -5), at(13.6, 3), at(14, 9)];
  return `<path d="${line([...rear, ...front])}" ${coat} fill-opacity="1"/><path d="${line([at(9, elbowUp + 9), at(6.6, 10), at(5.4, 8)])}" fill="none" stroke="#4a2c1c" stroke-width="2"/>`;
}

/** Corners by forward and station; edges follow the barrel. */
function patch(corners: readonly Pair[], look: string, out = 0): string {
  const pixels = corners.flatMap(([x, s], i) => {
    const [nx, ns] = corners[(i + 1) % corners.length] ?? [x, s];
    return [0, 0.25, 0.5, 0.75].map((part) => skinPixel(x + (nx - x) * part, s + (ns - s) * part, out));
  });
  return area(pixels, look);
}

const leather = 'fill="#8a5a34" stroke="#3a2416" stroke-width="2" stroke-linejoin="round"';
const dark = 'fill="#6d4426" stroke="#3a2416" stroke-width="2" stroke-linejoin="round"';

function saddle(): string {
  const { fork, cantle, ring } = subject;
  const top = 36.6;
  const tree: Pixel[] = (
    [
      [fork.x + 1.8, 27],
      [fork.x, fork.y],
      [fork.x - 0.6, 33],
      [fork.x + 0.6, 36.2],
      [fork.x - 1.4, 37.4],
      [fork.x - 3.4, 36.4],
      [fork.x - 2.8, 33.2],
      [fork.x - 5.5, 30.6],
      [cantle.x + 4, 30.2],
      [cantle.x, cantle.y],
      [cantle.x - 1.6, 35.4],
      [cantle.x - 3, 34.6],
      [cantle.x - 4.4, 27],
    ] as const
  ).map(([x, y]) => pixelAt(x, y, 0));
  const blanket: Pair[] = [
    [fork.x + 4.5, top],
    [fork.x + 4, 22.8],
    [cantle.x - 8, 23.4],
    [cantle.x - 8.5, top],
  ];
  const skirt: Pair[] = [
    [fork.x + 2.6, top],
    [fork.x + 2.4, 27.5],
    [fork.x, 25.4],
    [cantle.x - 4.5, 25.8],
    [cantle.x - 6.6, 28.5],
    [cantle.x - 7, top],
  ];
  const plate: Pair[] = [
    [ring.x + 1.5, 27],
    [ring.x + 1.1, 22.6],
    [ring.x - 1.1, 22.6],
    [ring.x - 1.5, 27],
  ];
  // Folded over the seat, to show girth, elbow and ring.
  const fender: Pixel[] = (
    [
      [fork.x - 5.2, 29],
      [fork.x - 4.6, 33.4],
      [fork.x - 5.4, 36.2],
      [cantle.x + 3.6, 36],
      [cantle.x + 3.4, 33],
      [cantle.x + 4, 29],
    ] as const
  ).map(([x, y]) => pixelAt(x, y, 3));
  const stripes = [24.2, 25].map((s) =>
    patch(
      [
        [fork.x + 4.1, s],
        [fork.x + 4, s - 0.4],
        [cantle.x - 8, s - 0.4],
        [cantle.x - 8, s],
      ],
      'fill="#8a3518"',
    ),
  );
  return [
    patch(blanket, 'fill="#d8c9ae" stroke="#6d6152" stroke-width="2"'),
    ...stripes,
    patch(skirt, leather),
    patch(plate, dark),
    area(tree, leather),
    area(fender, dark),
    stirrup(),
    ringShape(),
  ].join('\n');
}

function stirrup(): string {
  const { fork, cantle } = subject;
  const middle = (fork.x + cantle.x) / 2 - 1;
  const frame = (
    [
      [middle + 2, 36.2],
      [middle + 3.2, 41.6],
      [middle - 3.2, 41.6],
      [middle - 2, 36.2],
    ] as const
  ).map(([x, y]): Pixel => pixelAt(x, y, 3));
  return `<path d="${line(frame)}Z" fill="none" stroke="#4a2f1b" ${wide(0.9)} stroke-linejoin="round"/>`;
}

/** Lies on the skin, so each point is projected. */
function ringShape(): string {
  const { x, station } = subject.ring;
  const round = Array.from({ length: 36 }, (_, i): Pixel => {
    const turn = (i * Math.PI) / 18;
    return skinPixel(x + 1.3 * Math.cos(turn), station + 1.3 * Math.sin(turn));
  });
  return `<path d="${line(round)}Z" fill="#6d4426" stroke="#2b2320" ${wide(0.75)}/><path d="${line(round)}Z" fill="none" stroke="#d9d5cc" ${wide(0.45)}/>`;
}

function stickShape(): string {
  const parts = 6;
  return Array.from({ length: parts }, (_, i) => {
    const [a, b] = [i / parts, (i + 1) / parts];
    const corners = [onStick(a, -0.35), onStick(b, -0.35), onStick(b, 0.35), onStick(a, 0.35)];
    return area(corners, `fill="${i % 2 === 0 ? '#c8321e' : '#f6f1e8'}" stroke="#2b2320" stroke-width="1"`);
  }).join('\n');
}

/** From a rail above the picture; the bob is below the clicked end. */
function plumbShape(): string {
  const top = stringLength;
  return `<path d="${line([byString(top + 0.5, -3), byString(top + 0.5, 3)])}" stroke="#5a4632" ${wide(1.1)}/>
<path d="${line([byString(top, 0), byString(0, 0)])}" stroke="#f4f0e6" ${wide(0.3)}/>
${area([byString(0, -0.8), byString(0, 0.8), byString(-3.2, 0)], 'fill="#b08a2e" stroke="#3a2416" stroke-width="1.5"')}`;
}

function fence(): string {
  const at = (x: number, y: number): Pixel => pixelAt(x, y, -70);
  const rails = [-12, 4, 20].map(
    (y) => `<path d="${line([at(-220, y), at(200, y)])}" stroke="#8b7b66" ${wide(1.6)}/>`,
  );
  const posts = [-190, -130, -70, -10, 50, 110, 170].map(
    (x) => `<path d="${line([at(x, -40), at(x, 27)])}" stroke="#756652" ${wide(2.6)}/>`,
  );
  return [...rails, ...posts].join('\n');
}

/** It says that it is no photo. */
export function demoDrawing(): string {
  const [width, height] = camera.size;
  const [, ground] = pixelAt(0, -20, -90);
  const [, top] = pixelAt(0, high[1], high[2]);
  const [, bottom] = pixelAt(0, low[1], low[2]);
  const shadow = pixelAt(-12, -33.6, 0);
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${String(width)}" height="${String(height)}" viewBox="0 0 ${String(width)} ${String(height)}">
<defs>
<linearGradient id="sky" x1="0" y1="0" x2="0" y2="1"><stop offset="0" stop-color="#a9c4d6"/><stop offset="1" stop-color="#e6ecea"/></linearGradient>
<linearGradient id="ground" x1="0" y1="0" x2="0" y2="1"><stop offset="0" stop-color="#b7a37e"/><stop offset="1" stop-color="#9c8560"/></linearGradient>
<linearGradient id="coat" gradientUnits="userSpaceOnUse" x1="0" y1="${top.toFixed(1)}" x2="0" y2="${bottom.toFixed(1)}"><stop offset="0" stop-color="#a5673d"/><stop offset="0.35" stop-color="#95552f"/><stop offset="0.8" stop-color="#74401f"/><stop offset="1" stop-color="#5a3018"/></linearGradient>
</defs>
<rect width="100%" height="100%" fill="url(#sky)"/>
<rect y="${ground.toFixed(1)}" width="100%" height="100%" fill="url(#ground)"/>
${fence()}
<ellipse cx="${shadow[0].toFixed(1)}" cy="${shadow[1].toFixed(1)}" rx="${(38 * unit).toFixed(0)}" ry="${(3.5 * unit).toFixed(0)}" fill="#6b5638" fill-opacity="0.5"/>
<path d="${carried(tail)}" ${hair}/>
<path d="${carried(far)}" fill="#4f2b16" stroke="#3a2012" stroke-width="3"/>
<path d="${carried(body)}" ${coat}/>
<path d="${carried(mane)}" ${hair}/>
<circle cx="${sketched([42, 33])[0].toFixed(1)}" cy="${sketched([42, 33])[1].toFixed(1)}" r="${(0.5 * unit).toFixed(1)}" fill="#1c1210"/>
${foreleg()}
${saddle()}
${stickShape()}
${plumbShape()}
<g font-family="Source Sans 3" font-weight="600" fill="#2b2320">
<rect x="0" y="${String(height - 56)}" width="${String(width)}" height="56" fill="#f3ece3"/>
<text x="28" y="${String(height - 18)}" font-size="30">Synthetic picture: drawn by a program, the horse is invented. Stick 36 in, camera 12 ft away.</text>
</g>
</svg>`;
}
