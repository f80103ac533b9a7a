/** The numbers that a side photo is read with: how well people click, hold a stick, stand square and guess a distance. */
import { choice, n, type ModelNumber } from './model-number.ts';

/** Part of the model's table; a shop may override any of them. */
export const photoNumbers = {
  'photo-click-sd': n(
    0.001,
    'ratio',
    [0.0001, 0.01],
  )("spread of a click on a photo, as a share of the picture's longer side: 4 pixels of 4000", choice),
  'photo-landmark-sd': n(
    0.2,
    'in',
    [0, 1],
  )('spread of where the eye puts the back of the elbow, the groove and the underline', choice),
  'photo-spine-sd': n(
    0.5,
    'in',
    [0, 2],
  )('spread of where the eye puts the top line, which saddle and pad hide', choice),
  'photo-reference-sd': n(
    0.005,
    'ratio',
    [0, 0.05],
  )('spread of the length of a reference, as a share: ends worn, held aslant', choice),
  'photo-reference-depth-sd': n(
    1.5,
    'in',
    [0, 6],
  )('spread of how far the reference is from the plane it is said to be held in', choice),
  'photo-distance': n(
    180,
    'in',
    [60, 480],
  )('distance of the camera from the near side of the barrel when nobody said', choice),
  'photo-distance-sd': n(36, 'in', [6, 120])('spread of that', choice),
  'photo-distance-paced-sd': n(
    0.05,
    'ratio',
    [0.005, 0.3],
  )('spread of a camera distance that was given, as a share of it', choice),
  'photo-yaw-sd': n(
    5.8,
    'deg',
    [0.5, 15],
  )(
    'spread of how squarely the camera looks at the side of the horse: anywhere within 10 degrees, which is 10 over the root of 3',
    choice,
  ),
  'photo-tilt-sd': n(4, 'deg', [0.5, 15])('spread of how level the line of sight is', choice),
  'photo-roll-sd': n(2, 'deg', [0.1, 10])('spread of how level the picture is, without a plumb line', choice),
  'photo-plumb-sd': n(
    0.3,
    'deg',
    [0.02, 3],
  )('spread of a plumb line: it sways, and leans where the camera is tilted', choice),
  'photo-sheet-sd': n(
    4,
    'deg',
    [0.5, 15],
  )('spread of how squarely a flat sheet is held to the side of the horse, each way', choice),
  'photo-elbow-depth-sd': n(
    1.5,
    'in',
    [0, 6],
  )('spread of how far the back of the elbow lies from the skin of the barrel', choice),
  'photo-ring-depth-sd': n(
    1,
    'in',
    [0, 6],
  )('spread of how far skirt and pad hold the ring off the skin', choice),
  'photo-saddle-depth-sd': n(
    3,
    'in',
    [0, 8],
  )('spread of how far fork and cantle, as seen, lie from the middle of the horse', choice),
} as const satisfies Record<string, ModelNumber>;
