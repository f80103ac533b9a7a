/** A horse's unrolled side and its cinch as lines, computed without the program's code. */

/** Inches. */
export interface PlainHorse {
  readonly girth: number;
  /** Only when taped. */
  readonly elbowRoom?: number | undefined;
  readonly setBack: number;
  /** Only when taped; overrides the drop. */
  readonly ringToRing?: number | undefined;
  /** Only when measured; overrides the style's. */
  readonly ringDrop?: number | undefined;
  readonly style?: 'ring' | 'flat-plate' | 'in-skirt' | 'dropped' | undefined;
  readonly round: boolean;
  readonly barrelTold: boolean;
  readonly girthTaped: boolean;
  readonly setBackMeasured: boolean;
}

/** Finished, in inches. */
export interface PlainCinch {
  readonly style: 'straight' | 'roper';
  readonly strands: number;
  readonly layers: 1 | 2;
  readonly barWidth: number;
  readonly frameWidth: number;
  readonly frameHeight: number;
  readonly length: number;
  /** Inches below the buckle's low edge where a roper widens. */
  readonly flareStart: number;
}

/** In standard deviations from what was told or assumed. */
export interface Chance {
  readonly girth: number;
  readonly elbow: number;
  readonly setBack: number;
  readonly ringPlace: number;
  readonly ringStation: number;
  readonly push: number;
  readonly strand: number;
  readonly opening: number;
}

/** On the unrolled side: inches forward of the groove, and up from the chest midline. */
export interface Place {
  readonly x: number;
  readonly s: number;
}

/** From the lowest up, no two at one station. */
export type Line = readonly Place[];

export interface Side {
  readonly elbow: Line;
  /** Cords below the muscle, where the skin wrinkles. */
  readonly skin: Line;
  /** Cords above that; none when the buckle hangs lower. */
  readonly cordsAbove: Line | undefined;
  readonly frame: Line;
}

/** After chance. */
interface Drawn {
  readonly girth: number;
  readonly k: number;
  readonly elbow: number;
  readonly ringX: number;
  readonly ringStation: number;
  readonly push: number;
  readonly opening: number;
}

/** The model's lengths are for this girth. */
export const usualGirth = 72;
const elbowCorners = { low: 3, high: 7, slope: 1, opening: 0.1 };
const usualDrop = { ring: 14, 'flat-plate': 14.5, 'in-skirt': 16, dropped: 17 };
const strandWidth = 0.25;
/** Inches; the opening in its own unit, the strand as a part of its width. */
const spread = {
  girth: { taped: 0.5, fromHeight: 8.31 / 2.54 },
  elbow: { taped: 0.25, usual: 0.5 },
  setBack: { measured: 0.25, named: 1 },
  ringPlace: 0.4,
  ringStation: { ringToRing: 0.25, measuredDrop: 0.5, usualDrop: 1.5 },
  push: { told: 0.1, untold: 0.2 },
  strand: 0.015 / 0.25,
  opening: 0.15,
};

/** All as told. */
export const asTold: Chance = {
  girth: 0,
  elbow: 0,
  setBack: 0,
  ringPlace: 0,
  ringStation: 0,
  push: 0,
  strand: 0,
  opening: 0,
};

function ringStationOf(horse: PlainHorse, girth: number, chance: number): number {
  const { ringToRing, ringDrop, style = 'ring' } = horse;
  if (ringToRing !== undefined) return ringToRing / 2 + chance * spread.ringStation.ringToRing;
  if (ringDrop !== undefined) return girth / 2 - ringDrop + chance * spread.ringStation.measuredDrop;
  return girth / 2 - usualDrop[style] * (girth / usualGirth) + chance * spread.ringStation.usualDrop;
}

/** The elbow moves the ring: the saddle sits where the shoulder lets it. */
function drawHorse(horse: PlainHorse, chance: Chance): Drawn {
  const girth =
    horse.girth + chance.girth * (horse.girthTaped ? spread.girth.taped : spread.girth.fromHeight);
  const k = girth / usualGirth;
  const elbow =
    horse.elbowRoom === undefined
      ? 4 * k + chance.elbow * spread.elbow.usual
      : horse.elbowRoom + chance.elbow * spread.elbow.taped;
  const setBack =
    horse.setBack + chance.setBack * (horse.setBackMeasured ? spread.setBack.measured : spread.setBack.named);
  return {
    girth,
    k,
    elbow,
    ringX: elbow - 2 * k - setBack + chance.ringPlace * spread.ringPlace,
    ringStation: ringStationOf(horse, girth, chance.ringStation),
    push:
      (horse.round ? 0.4 * k : 0) + chance.push * (horse.barrelTold ? spread.push.told : spread.push.untold),
    opening: elbowCorners.opening + chance.opening * spread.opening,
  };
}

/** From the midline to the elbow, up behind it, then along the shoulder. */
function elbowLine({ girth, k, elbow, opening }: Drawn): Line {
  const { low, high, slope } = elbowCorners;
  const top = girth / 2;
  return [
    { x: elbow + slope * low * k, s: 0 },
    { x: elbow, s: low * k },
    { x: elbow, s: high * k },
    { x: elbow + opening * (top - high * k), s: top },
  ];
}

export function xAt(line: Line, s: number): number {
  const above = line.findIndex((place, i) => i > 0 && place.s >= s);
  const [from, to] = [line[above - 1], line[above]];
  if (from === undefined || to === undefined || s < from.s) throw new RangeError(`no line at station ${s}`);
  return from.x + ((to.x - from.x) * (s - from.s)) / (to.s - from.s);
}

const cut = (line: Line, from: number, to: number): Line => [
  { x: xAt(line, from), s: from },
  ...line.filter(({ s }) => s > from && s < to),
  { x: xAt(line, to), s: to },
];

/** By station, extended below the midline. */
function unboundedWidths(cinch: PlainCinch, low: number, strand: number): Line {
  const { strands, layers, barWidth, flareStart } = cinch;
  const full = strands * strandWidth * strand;
  if (cinch.style === 'straight') {
    const atBar = Math.min(barWidth, layers === 1 ? full : full / 2);
    return [
      { x: full, s: Math.min(0, low - 2) - 1 },
      { x: full, s: low - 2 },
      { x: atBar, s: low },
    ];
  }
  const pinched = strands * (layers === 1 ? 0.2 : 0.145) * strand;
  const flare = low - flareStart;
  return [
    { x: full, s: Math.min(0, flare - 3) - 1 },
    { x: full, s: flare - 3 },
    { x: pinched, s: flare },
    // A flare that starts at the bar leaves no narrow length.
    ...(flareStart > 0 ? [{ x: pinched, s: low }] : []),
  ];
}

/** @throws RangeError when the buckle hangs below the midline, where the model ends */
export function sideOf(horse: PlainHorse, cinch: PlainCinch, chance: Chance): Side {
  const drawn = drawHorse(horse, chance);
  const { frameHeight, frameWidth, length } = cinch;
  // It stretches by an inch.
  const low = (length + 1) / 2 - frameHeight;
  if (low <= 0) throw new RangeError(`the buckle begins ${low} in up from the midline`);
  const lean = drawn.ringX / drawn.ringStation + drawn.push / (drawn.girth / 4);
  const widths = cut(unboundedWidths(cinch, low, 1 + chance.strand * spread.strand), 0, low);
  const cords = widths.map(({ x: width, s }) => ({ x: lean * s + width / 2, s }));
  const skinEnd = elbowCorners.high * drawn.k;
  return {
    elbow: elbowLine(drawn),
    skin: cut(cords, 0, Math.min(low, skinEnd)),
    cordsAbove: low > skinEnd ? cut(cords, skinEnd, low) : undefined,
    frame: [low, low + frameHeight].map((s) => ({ x: lean * s + frameWidth / 2, s })),
  };
}
