/** A side photo becomes lengths, each with its spread and with what share of it comes from where. */
import type { Photo } from '../order/photo-types.ts';
import type { Model } from '../numbers/numbers.ts';
import { sheetLook } from './camera.ts';
import { doubtsOf, errorSources, referenceClicks, type Doubt, type ErrorSource } from './doubts.ts';
import { lengthsOf, standOf, type Lengths, type Stand } from './lengths.ts';
import { bestUnknowns, type Guess, type Scene, type Trust } from './scene.ts';
import type { Look } from './sheet.ts';

/** Inches, with what each source of error adds to the square of the spread. */
export interface Seen {
  readonly value: number;
  readonly sd: number;
  /** Shares that add up to 1. */
  readonly shares: Readonly<Record<ErrorSource, number>>;
}

export type SeenName = keyof Lengths;

/** What a photo gives; depth, set-back and bar span only where the marks for them are there. */
export interface PhotoReading {
  readonly photo: Photo;
  readonly seen: Readonly<Record<Exclude<SeenName, 'depth' | 'setBack' | 'barSpan'>, Seen>> & {
    readonly depth: Seen | undefined;
    readonly setBack: Seen | undefined;
    readonly barSpan: Seen | undefined;
  };
  /** The camera and where the horse stands before it, at the best guess: to draw on the picture. */
  readonly stand: Stand;
  readonly guess: Guess;
}

const names = ['room', 'ringBehindElbow', 'ringOffset', 'ringHeight', 'depth', 'setBack', 'barSpan'] as const;

/**
 * Reads the landmarks of a photo. Spreads are of first order: every doubt is turned by its own spread, both ways, and the squares of
 * half the differences add up (JCGM 100:2008, 5.1.2, by differences as in its note to 5.1.3). A depth moves nothing sideways as long as
 * the camera looks straight, so for depths together with angles the next order counts as well.
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
  const doubts = doubtsOf(photo, guess, model);
  const moves = [...doubts.map((doubt) => alone(scene, doubt)), ...together(scene, doubts)];
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

/** What one doubt, or two together, move each length by. */
interface Step {
  readonly source: ErrorSource;
  readonly by: (name: SeenName) => number;
}

const lengthIn = (lengths: Lengths | undefined, name: SeenName): number => lengths?.[name] ?? 0;

function alone(scene: Scene, { source, sd, turn }: Doubt): Step {
  const [more, less] = [lengthsOf(turn(scene, sd)), lengthsOf(turn(scene, -sd))];
  return { source, by: (name) => (lengthIn(more, name) - lengthIn(less, name)) / 2 };
}

/** The mixed term of second order of each depth of a place with each angle the camera may be off by. */
function together(scene: Scene, doubts: readonly Doubt[]): Step[] {
  const angles = doubts.filter(({ source }) => source === 'yaw' || source === 'tilt');
  return doubts
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

const DEGREE = Math.PI / 180;

/** What a sheet shows and what is usual are weighed by their spreads: the clicks on its corners and how it is held, against habit. */
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
