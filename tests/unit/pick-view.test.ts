/** Zoom and place of the photo on the landmarks page. */
import { describe, expect, test } from 'vitest';
import {
  inside,
  moved,
  pixelAt,
  placeOf,
  showing,
  whole,
  zoomed,
  type View,
} from '../../src/photo/pick/view.ts';
import { within } from '../support/within.ts';

const frame = { picture: { width: 4032, height: 3024 }, window: { width: 800, height: 500 } };

describe('a view', () => {
  test('shows the whole picture in the middle', () => {
    const view = whole(frame.picture, frame.window);
    expect(placeOf(view, [0, 0]).y).toBe(0);
    expect(placeOf(view, [4032, 3024])).toEqual({ x: 800 - placeOf(view, [0, 0]).x, y: 500 });
  });

  test('zooms round the place pointed at, between the whole picture and eightfold pixels', () => {
    let view: View = whole(frame.picture, frame.window);
    const before = pixelAt(view, { x: 300, y: 200 }, frame.picture);
    view = zoomed(view, { factor: 10, x: 300, y: 200 }, frame);
    const there = placeOf(view, before);
    within(there.x, 300, 1.7);
    within(there.y, 200, 1.7);
    expect(zoomed(view, { factor: 1000, x: 0, y: 0 }, frame).scale).toBe(8);
    expect(zoomed(view, { factor: 1e-6, x: 0, y: 0 }, frame)).toEqual(whole(frame.picture, frame.window));
  });

  test('leaves no gap beside a picture that is larger than the window', () => {
    const view = zoomed(whole(frame.picture, frame.window), { factor: 8, x: 400, y: 250 }, frame);
    expect(moved(view, { x: 1e6, y: 1e6 }, frame)).toMatchObject({ left: 0, top: 0 });
    const far = moved(view, { x: -1e6, y: -1e6 }, frame);
    within(placeOf(far, [4032, 3024]).x, 800, 1e-9);
    within(placeOf(far, [4032, 3024]).y, 500, 1e-9);
  });

  test('brings a pixel into sight', () => {
    const view = zoomed(whole(frame.picture, frame.window), { factor: 8, x: 0, y: 0 }, frame);
    const { x, y } = placeOf(showing(view, [4000, 3000], frame), [4000, 3000]);
    expect(x).toBeLessThanOrEqual(800);
    expect(y).toBeLessThanOrEqual(500);
  });

  test('gives whole pixels inside the picture', () => {
    expect(inside([-3, 99999], frame.picture)).toEqual([0, 3023]);
    expect(inside([10.4, 10.6], frame.picture)).toEqual([10, 11]);
  });
});
