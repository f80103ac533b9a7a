/** Readings of a photo are off by what they say, no more and not much less. */
import { describe, expect, test } from 'vitest';
import { factsOf } from '../../src/horse/facts.ts';
import { photoRemarks } from '../../src/horse/photo-remarks.ts';
import { gapSd } from '../../src/cinch/clearance.ts';
import { lay } from '../../src/cinch/lay.ts';
import { sideOf } from '../../src/cinch/side.ts';
import { cordSpots } from '../../src/cinch/spots.ts';
import { solveEllipse } from '../../src/math/ellipse.ts';
import { seededRandom } from '../../src/math/random.ts';
import { sideToPixel } from '../../src/photo/read/lengths.ts';
import { readLandmarks, type SeenName } from '../../src/photo/read/reading.ts';
import { defaultModel as model } from '../../src/numbers/numbers.ts';
import { cases } from '../support/cases.ts';
import { cameraAt, demo, landmarks, outline, project, skin, type Subject } from '../support/camera.ts';
import { orderOf, plainBuckle } from '../support/orders.ts';
import { drawScene, type Drawn, type How } from '../support/photo-scenes.ts';
import { within } from '../support/within.ts';

const names = ['room', 'ringBehindElbow', 'ringOffset', 'ringHeight', 'depth', 'setBack', 'barSpan'] as const;
const scenes = cases(120, 200);
const spec = { style: 'straight', strands: 19, buckle: plainBuckle, layers: 1, length: 32 } as const;

/** As the facts read it when only the girth is taped. */
function factsFor({ photo, girth }: Drawn) {
  return factsOf(orderOf({ photo, horse: { heartGirth: girth } }), model);
}

interface Tally {
  readonly rms: number;
  /** Root mean square of what was stated. */
  readonly stated: number;
  readonly covered: number;
}

function tallyOf(pairs: readonly (readonly [miss: number, sd: number])[]): Tally {
  const mean = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0) / values.length;
  return {
    rms: Math.sqrt(mean(pairs.map(([miss]) => miss * miss))),
    stated: Math.sqrt(mean(pairs.map(([, sd]) => sd * sd))),
    covered: mean(pairs.map(([miss, sd]) => (Math.abs(miss) <= 2 * sd ? 1 : 0))),
  };
}

const hows: readonly How[] = (['level stick', 'upright stick', 'sheet'] as const).map((reference, i) => ({
  reference,
  yaw: 10,
  plumb: i !== 1,
  paced: i !== 0,
}));

describe.each(hows)('scenes at 10 to 20 ft, $reference, yaw to $yaw degrees, roll to 3', (how) => {
  const random = seededRandom(20261126, 7);
  const drawn = Array.from({ length: scenes }, () => drawScene(random, how)).map((scene) => ({
    scene,
    facts: factsFor(scene),
  }));
  const pairs = (name: SeenName) =>
    drawn.map(({ scene, facts }) => {
      const seen = facts.photo!.seen[name]!;
      return [seen.value - scene.truth[name], seen.sd] as const;
    });

  test.each(names)(
    '%s: within two of its own spreads nine times in ten, and the spread is no excuse',
    (name) => {
      const { rms, stated, covered } = tallyOf(pairs(name));
      expect(covered).toBeGreaterThanOrEqual(0.9);
      expect(stated / rms).toBeGreaterThan(0.8);
      expect(stated / rms).toBeLessThan(1.3);
    },
  );

  test('the room that the facts use is within half an inch, root mean square, and as sure as it says', () => {
    const { rms, stated, covered } = tallyOf(
      drawn.map(({ scene, facts }) => [facts.room.value - scene.truth.room, facts.room.sd] as const),
    );
    expect(rms).toBeLessThan(0.5);
    expect(covered).toBeGreaterThanOrEqual(0.9);
    expect(stated / rms).toBeGreaterThan(0.8);
    expect(stated / rms).toBeLessThan(1.3);
  });

  test('the clearance of a cinch is off by no more than told, though yaw moves elbow and ring together', () => {
    const chance = seededRandom(3);
    const pairs = drawn.map(({ scene }) => {
      const { photo, girth, truth } = scene;
      const k = girth / 72;
      // The ring hangs within about an inch of its named position.
      const back = truth.ringBehindElbow - 2 * k;
      const fraction = 1 - (back + chance.normal()) / (12 * k);
      const named = { kind: 'named', name: 'somewhere', fraction } as const;
      const horse = { heartGirth: girth };
      const station = scene.subject.ring.station;
      const known = orderOf({
        horse: { ...horse, elbowRoom: truth.room },
        saddle: { rigging: { kind: 'measured', setBack: back }, ringToRing: 2 * station },
      });
      // At the point of the elbow, where most cinches come too near.
      const [seen, real] = [orderOf({ photo, horse, saddle: { rigging: named } }), known].map((order) => {
        const side = sideOf(factsOf(order, model));
        const spot = cordSpots(lay(spec, side)!.shape, side).find(({ s }) => s === side.elbow)!;
        return { inches: spot.gap.distance, sd: gapSd(spot, side) };
      });
      return [seen!.inches - real!.inches, seen!.sd] as const;
    });
    const { rms, stated, covered } = tallyOf(pairs);
    expect(covered).toBeGreaterThanOrEqual(0.93);
    expect(stated / rms).toBeGreaterThan(0.95);
    expect(stated / rms).toBeLessThan(1.6);
  });

  test('no spread is wider with the photo, unless it contradicts the order, which is told', () => {
    const near = drawn.filter(({ facts }) => photoRemarks(facts).length === 0);
    expect(near.length).toBeGreaterThan(scenes / 4);
    for (const { scene, facts } of near) {
      const bare = factsOf(orderOf({ horse: { heartGirth: scene.girth } }), model);
      expect(facts.room.sd).toBeLessThan(bare.room.sd);
      expect(facts.ring.setBack.sd).toBeLessThan(bare.ring.setBack.sd);
      expect(facts.ring.station.sd).toBeLessThan(bare.ring.station.sd);
    }
  });

  test('shares of the error add up, and none is below nothing', () => {
    for (const { facts } of drawn) {
      for (const name of names) {
        const shares = Object.values(facts.photo!.seen[name]!.shares);
        within(
          shares.reduce((a, b) => a + b),
          1,
          1e-12,
        );
        expect(Math.min(...shares)).toBeGreaterThanOrEqual(0);
      }
    }
  });
});

describe('without any error', () => {
  const subject: Subject = { ...demo.subject, elbowOut: 0, ring: { ...demo.subject.ring, out: 0 } };
  const near = subject.ellipse.halfWidth;
  const at = (yaw: number, tilt: number, roll: number) =>
    cameraAt(subject, { distance: 144, yaw, tilt, roll, focal: 1250, size: [1600, 1200] });
  const photoBy = (camera: ReturnType<typeof at>, plumb: boolean) => {
    const { groove, ...marks } = landmarks(subject, camera);
    return {
      file: 'x',
      imageSize: camera.size,
      reference: {
        kind: 'stick' as const,
        length: 36,
        from: project(camera, [-10, 7, near]),
        to: project(camera, [26, 7, near]),
      },
      referenceDepth: 0,
      plumb: plumb
        ? { top: project(camera, [0, 40, near]), bottom: project(camera, [0, -9, near]) }
        : undefined,
      groove,
      ...marks,
      cameraDistance: 144,
    };
  };
  const guess = { ellipse: subject.ellipse, halfWidthSd: 0.6, elbowStation: subject.elbowStation };

  test('a camera square to the horse gives every length exactly', () => {
    const { seen } = readLandmarks(photoBy(at(0, 0, 0), false), guess, model);
    within(seen.room.value, 4.25, 1e-6);
    within(seen.ringBehindElbow.value, 4.25 - subject.ring.x, 1e-4);
    within(seen.setBack!.value, 1.75, 1e-4);
    within(seen.barSpan!.value, 13, 1e-6);
    within(seen.depth!.value, 2 * subject.ellipse.halfDepth, 1e-6);
  });

  test('a plumb line takes a roll of 3 degrees out, and without it the roll shows', () => {
    const plumbed = readLandmarks(photoBy(at(0, 0, 3), true), guess, model).seen;
    const bare = readLandmarks(photoBy(at(0, 0, 3), false), guess, model).seen;
    within(plumbed.ringBehindElbow.value, 4.25 - subject.ring.x, 0.01);
    expect(Math.abs(bare.ringBehindElbow.value - (4.25 - subject.ring.x))).toBeGreaterThan(0.5);
    expect(plumbed.ringBehindElbow.sd).toBeLessThan(bare.ringBehindElbow.sd);
  });

  test('places of the side go to the pixels where that camera sees them', () => {
    const camera = at(0, 0, 0);
    const reading = readLandmarks(photoBy(camera, false), guess, model);
    for (const [forward, station] of [
      [0, 4],
      [4.25, 7.2],
      [-3, 22],
      [0.44, 15],
    ] as const) {
      const [x, y] = sideToPixel(reading, subject.ellipse, { forward, station });
      const [u, v] = project(camera, skin(subject, { x: forward, station }));
      within(x, u, 0.05);
      within(y, v, 0.5); // the outline is a few hundredths of an inch above the bottom
    }
  });

  test('a mirrored picture gives the same lengths and spreads', () => {
    const photo = photoBy(at(3, 2, 1), true);
    const flip = ([x, y]: readonly [number, number]) => [1600 - x, y] as const;
    const { reference, plumb } = photo;
    const mirrored = {
      ...photo,
      ...Object.fromEntries(
        (['ring', 'elbow', 'groove', 'spine', 'underline', 'fork', 'cantle'] as const).map((name) => [
          name,
          flip(photo[name]),
        ]),
      ),
      reference: { ...reference, from: flip(reference.from), to: flip(reference.to) },
      plumb: { top: flip(plumb!.top), bottom: flip(plumb!.bottom) },
    };
    const [one, other] = [photo, mirrored].map((shot) => readLandmarks(shot, guess, model).seen);
    for (const name of names) {
      within(one![name]!.value, other![name]!.value, 1e-9);
      within(one![name]!.sd, other![name]!.sd, 1e-9);
    }
  });

  test('the outline is where the formula says', () => {
    // Tangent from (D, 0) to an ellipse: a^2 / D along the axis (polar of the point).
    const camera = at(0, 0, 0);
    const [, , z] = outline(subject, camera, { forward: 0, top: true });
    within(z, near ** 2 / (144 + near), 1e-6);
  });

  test('a girth that was taped wrong hardly moves the room', () => {
    const photo = photoBy(at(0, 0, 0), false);
    const wrong = readLandmarks(photo, { ...guess, ellipse: solveEllipse(78, 0.7) }, model);
    within(wrong.seen.room.value, 4.25, 0.1);
  });
});
