/** Reads a side photo: each length, its spread and where that comes from. */
import type { Photo } from '../../order/photo-types.ts';
import type { Model } from '../../numbers/numbers.ts';
import { sheetLook, type Look } from './camera.ts';
import {
  DEGREE,
  errorsOf,
  errorSources,
  referenceClicks,
  type PhotoError,
  type ErrorSource,
} from './errors.ts';
import { lengthsOf, standOf, type Lengths, type Stand } from './lengths.ts';
import { bestUnknowns, type Guess, type Scene, type Trust } from './scene.ts';

/** Inches. */
export interface Seen {
  readonly value: number;
  readonly sd: number;
  /** Of the variance; they add up to 1. */
  readonly shares: Readonly<Record<ErrorSource, number>>;
}

export type SeenName = keyof Lengths;

export interface PhotoReading {
  readonly photo: Photo;
  readonly seen: Readonly<Record<Exclude<SeenName, 'depth' | 'setBack' | 'barSpan'>, Seen>> & {
    readonly depth: Seen | undefined;
    readonly setBack: Seen | undefined;
    readonly barSpan: Seen | undefined;
  };
  /** At best guess, for drawing on the picture. */
  readonly stand: Stand;
  readonly guess: Guess;
}

const names = ['room', 'ringBehindElbow', 'ringOffset', 'ringHeight', 'depth', 'setBack', 'barSpan'] as const;

/**
 * Each error is tried both ways, and the squares of half the differences add up (JCGM 100:2008, 5.1.2 and 5.1.3 note). Depth moves nothing
 * sideways while the camera looks straight, so depth with angle adds a second-order term.
 */
export function readLandmarks(photo: Photo, guess: Guess, model: Model): PhotoReading {
  const usual: Scene = {
    photo,
    guess,
    unknowns: bestUnknowns(photo, model),
    trust: { yaw: 0, tilt: 0, roll: 0 },
  };
  const scene: Scene = { ...usual, trust: trustOf(usual, model) };
  const best = lengthsOf(scene);
  const errors = errorsOf(photo, guess, model);
  const moves = [...errors.map((error) => alone(scene, error)), ...together(scene, errors)];
  const seen = Object.fromEntries(
    names.map((name) => {
      const value = best[name];
      if (value === undefined) return [name, undefined];
      const steps = moves.map(({ source, by }) => ({ source, by: by(name) }));
      return [name, seenOf(value, steps)];
    }),
  ) as PhotoReading['seen'];
  return { photo, seen, stand: standOf(scene), guess };
}

/** How far one error, or two together, move each length. */
interface Step {
  readonly source: ErrorSource;
  readonly by: (name: SeenName) => number;
}

const lengthIn = (lengths: Lengths | undefined, name: SeenName): number => lengths?.[name] ?? 0;

function alone(scene: Scene, { source, sd, turn }: PhotoError): Step {
  const [more, less] = [lengthsOf(turn(scene, sd)), lengthsOf(turn(scene, -sd))];
  return { source, by: (name) => (lengthIn(more, name) - lengthIn(less, name)) / 2 };
}

/** Mixed terms of each depth with each angle. */
function together(scene: Scene, errors: readonly PhotoError[]): Step[] {
  const angles = errors.filter(({ source }) => source === 'yaw' || source === 'tilt');
  return errors
    .filter(({ isPlace }) => isPlace)
    .flatMap((place) =>
      angles.map((angle): Step => {
        const [[a, b], [c, d]] = [1, -1].map((p) =>
          [1, -1].map((q) => lengthsOf(angle.turn(place.turn(scene, p * place.sd), q * angle.sd))),
        ) as [[Lengths, Lengths], [Lengths, Lengths]];
        const by = (name: SeenName): number =>
          (lengthIn(a, name) - lengthIn(b, name) - lengthIn(c, name) + lengthIn(d, name)) / 4;
        return { source: 'depth', by };
      }),
    );
}

function seenOf(value: number, steps: readonly { source: ErrorSource; by: number }[]): Seen {
  const squares = (wanted?: ErrorSource): number =>
    steps.reduce((sum, { source, by }) => sum + (wanted === undefined || source === wanted ? by * by : 0), 0);
  const whole = squares();
  const shares = Object.fromEntries(
    errorSources.map((source) => [source, whole > 0 ? squares(source) / whole : 0]),
  );
  return { value, sd: Math.sqrt(whole), shares: shares as Seen['shares'] };
}

/** The sheet against habit, by their spreads. */
function trustOf(scene: Scene, model: Model): Trust {
  const { photo, unknowns, trust: none } = scene;
  if (sheetLook(photo, unknowns.distance) === undefined) return none;
  const hand = model['photo-click-sd'] * Math.max(...photo.imageSize);
  const held = (model['photo-sheet-sd'] * DEGREE) ** 2;
  const looks = referenceClicks(photo, hand).map(({ turn }) => ({
    more: sheetLook(turn(scene, hand).photo, unknowns.distance),
    less: sheetLook(turn(scene, -hand).photo, unknowns.distance),
  }));
  const trust = (name: keyof Look, usual: number): number => {
    const clicks = looks.reduce(
      (sum, { more, less }) => sum + (((more?.[name] ?? 0) - (less?.[name] ?? 0)) / 2) ** 2,
      0,
    );
    const habit = (usual * DEGREE) ** 2;
    return habit / (habit + held + clicks);
  };
  return {
    yaw: trust('yaw', model['photo-yaw-sd']),
    tilt: trust('tilt', model['photo-tilt-sd']),
    roll: trust('roll', model['photo-roll-sd']),
  };
}
