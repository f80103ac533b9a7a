/** Names beside marks stay visible and apart. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { placeLabels } from '../../src/photo/pick/labels.ts';

const window = { width: 390, height: 400 };
const named = fc.record({
  at: fc.record({ x: fc.integer({ min: 0, max: 390 }), y: fc.integer({ min: 0, max: 400 }) }),
  name: fc.constantFrom('ring', 'elbow', 'girth groove', 'measure, other end', 'plumb line, bottom'),
  now: fc.constant(false),
});
// 13 px bold is 7 to 9 px wide (measured in Chromium, DejaVu Sans).
const boxes = (marks: { at: { x: number; y: number }; name: string; now: boolean }[]) =>
  placeLabels(marks, window).flatMap((label, i) => {
    if (label === undefined) return [];
    const { at, name } = marks[i]!;
    const width = 8.5 * name.length;
    const left = at.x + label.dx - (label.anchor === 'end' ? width : 0);
    return [{ left, right: left + width, top: at.y + label.dy - 10, bottom: at.y + label.dy + 3 }];
  });

test('no name leaves the window, and no two cover each other', () => {
  fc.assert(
    fc.property(fc.array(named, { maxLength: 12 }), (marks) => {
      const all = boxes(marks);
      for (const [i, a] of all.entries()) {
        expect(a.left).toBeGreaterThanOrEqual(0);
        expect(a.right).toBeLessThanOrEqual(390);
        for (const b of all.slice(i + 1))
          expect(a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom).toBe(false);
      }
    }),
  );
});

test('a mark alone has its name, on the left where the right has no room', () => {
  const at = (x: number) => [{ at: { x, y: 200 }, name: 'plumb line, top', now: false }];
  expect(placeLabels(at(100), window)[0]?.anchor).toBe('start');
  expect(placeLabels(at(380), window)[0]?.anchor).toBe('end');
});

test('in a crowd the current mark keeps its name', () => {
  const marks = Array.from({ length: 8 }, (_, i) => ({
    at: { x: 200 + 3 * i, y: 200 + 3 * i },
    name: 'girth groove',
    now: i === 7,
  }));
  const placed = placeLabels(marks, window);
  expect(placed[7]).toBeDefined();
  expect(placed.filter((label) => label === undefined).length).toBeGreaterThan(0);
});
