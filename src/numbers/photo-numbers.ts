/** Numbers for reading a side photo: how well people click, stand and guess. */
import { choice, n, type ModelNumber } from './model-number.ts';

/** Part of the model, so shop files may change them. */
export const photoNumbers = {
  'photo-click-sd': n(
    0.001,
    'ratio',
    [0.0001, 0.01],
  )("spread of a click, over the picture's longer side: 4 pixels of 4000", choice),
  'photo-landmark-sd': n(0.2, 'in', [0, 1])('spread of the marks on elbow, groove and underline', choice),
  'photo-spine-sd': n(
    0.5,
    'in',
    [0, 2],
  )('spread of the mark on the top line, which saddle and pad hide', choice),
  'photo-reference-sd': n(
    0.005,
    'ratio',
    [0, 0.05],
  )("spread of a reference's length, as a share: worn ends, held at a slant", choice),
  'photo-reference-depth-sd': n(
    1.5,
    'in',
    [0, 6],
  )('spread of how deep in the picture the reference is held', choice),
  'photo-distance': n(180, 'in', [60, 480])('camera to near side of the barrel, not given', choice),
  'photo-distance-sd': n(36, 'in', [6, 120])('its spread', choice),
  'photo-distance-paced-sd': n(
    0.05,
    'ratio',
    [0.005, 0.3],
  )('spread of a given camera distance, as a share', choice),
  'photo-yaw-sd': n(
    5.8,
    'deg',
    [0.5, 15],
  )('spread of how square the camera is to the horse: within 10 degrees, over the root of 3', choice),
  'photo-tilt-sd': n(4, 'deg', [0.5, 15])('spread of how level the camera looks', choice),
  'photo-roll-sd': n(2, 'deg', [0.1, 10])('spread of how level the picture is, with no plumb line', choice),
  'photo-plumb-sd': n(
    0.3,
    'deg',
    [0.02, 3],
  )('spread of a plumb line: it sways, and looks slanted if the camera tilts', choice),
  'photo-sheet-sd': n(4, 'deg', [0.5, 15])('spread of how square a flat sheet is held, each way', choice),
  'photo-elbow-depth-sd': n(
    1.5,
    'in',
    [0, 6],
  )("spread of how far the back of the elbow is from the barrel's skin", choice),
  'photo-ring-depth-sd': n(
    1,
    'in',
    [0, 6],
  )('spread of how far skirt and pad hold the ring off the skin', choice),
  'photo-saddle-depth-sd': n(
    3,
    'in',
    [0, 8],
  )('spread of how far fork and cantle are from the middle of the horse', choice),
} as const satisfies Record<string, ModelNumber>;
