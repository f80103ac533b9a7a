/** The pinhole camera against another written apart: one that looks at a point. */
import { describe, expect, it, test } from 'vitest';
import { pixelOf, placeOf, type Pinhole } from '../../src/math/pinhole.ts';
import { seededRandom } from '../../src/math/random.ts';
import { project, type Vector } from '../support/camera.ts';
import { within } from '../support/within.ts';

const straight: Pinhole = { yaw: 0, tilt: 0, roll: 0, distance: 100, focal: 1000, center: [400, 300] };

describe('a camera straight in front', () => {
  // Similar triangles: focal times size over depth.
  it.each([
    [0, 0, 0, 400, 300],
    [10, 0, 0, 500, 300],
    [0, 10, 0, 400, 200],
    [10, 10, 50, 600, 100],
    [-10, -10, -100, 350, 350],
  ])('place %f, %f, %f', (...[x, y, z, u, v]) => {
    expect(pixelOf(straight, { x, y, z })).toEqual([u, v]);
  });

  test('sees nothing beside or behind itself', () => {
    expect(pixelOf(straight, { x: 1, y: 1, z: 100 })).toBeUndefined();
    expect(pixelOf(straight, { x: 1, y: 1, z: 101 })).toBeUndefined();
    expect(pixelOf(straight, { x: 1, y: 1, z: 99 })).toBeDefined();
  });
});

describe('a camera anywhere', () => {
  const random = seededRandom(31);
  const between = (low: number, high: number): number => low + (high - low) * random.uniform();
  const cases = Array.from({ length: 60 }, () => ({
    camera: {
      yaw: between(-0.5, 0.5),
      tilt: between(-0.4, 0.4),
      roll: between(-0.3, 0.3),
      distance: between(80, 200),
      focal: between(900, 3000),
      center: [between(300, 2000), between(300, 1500)] as const,
    },
    place: { x: between(-30, 30), y: between(-30, 30), z: between(-20, 30) },
  }));

  test('puts places where the other one does', () => {
    for (const { camera, place } of cases) {
      const { yaw, tilt, distance, center } = camera;
      // Right by the yaw, then up by the tilt.
      const position: Vector = [
        distance * Math.sin(yaw) * Math.cos(tilt),
        distance * Math.sin(tilt),
        distance * Math.cos(yaw) * Math.cos(tilt),
      ];
      const other = {
        position,
        aim: [0, 0, 0] as const,
        roll: (camera.roll * 180) / Math.PI,
        focal: camera.focal,
        size: [2 * center[0], 2 * center[1]] as const,
      };
      const [u, v] = project(other, [place.x, place.y, place.z]);
      const pixel = pixelOf(camera, place)!;
      within(pixel[0], u, 1e-8);
      within(pixel[1], v, 1e-8);
    }
  });

  test('finds each place again from its pixel and its depth', () => {
    for (const { camera, place } of cases) {
      const found = placeOf(camera, pixelOf(camera, place)!, place.z);
      within(found.x, place.x, 1e-9);
      within(found.y, place.y, 1e-9);
      expect(found.z).toBe(place.z);
    }
  });
});
