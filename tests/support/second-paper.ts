/** A horse and a straight cinch of round numbers, solved on paper. */
import type { PlainCinch, PlainHorse } from './second-geometry.ts';

// Places are (x, s): forward of the groove, up from the midline. At 72 in of girth k is 1; 4 in of room gives the elbow line
// (7, 0) (4, 3) (4, 7) (6.9, 36): x + s = 7 below, x = 4 + 0.1 (s - 7) above. The ring is 4 - 2 - 2 = 0 in forward and
// 20 in up: a plumb center line. One in further back leans it by 1/20.
export const plumb: PlainHorse = {
  girth: 72,
  elbowRoom: 4,
  setBack: 2,
  ringToRing: 40,
  round: false,
  barrelTold: true,
  girthTaped: true,
  setBackMeasured: true,
};
/** 2 in forward: the center line leans 0.1, like the upper elbow line. */
export const full: PlainHorse = { ...plumb, setBack: 0 };
// Low edge of the buckle: 32 / 2 - 4 = 12; 4 in wide up to 10, then narrowing to 3 in. On a plumb line the leading edge
// of the cords is (2, 0) (2, 10) (1.5, 12), of the frame (2.5, 12) (2.5, 16).
export const straight: PlainCinch = {
  style: 'straight',
  strands: 16,
  layers: 1,
  barWidth: 3,
  frameWidth: 5,
  frameHeight: 4,
  length: 31,
  flareStart: 0,
};
