/** The landmark page with mouse, keys, fingers and a turned picture; it asks no network. */
import { describe, expect, test } from 'vitest';
import { long } from '../support/cases.ts';
import { noBrowser } from './chromium.ts';
import { useDrawing } from './opened.ts';
import { blockText, clickPixel, goTo, onScreen, pixelOf, settled, type Place } from './pages.ts';
import { height, phone, places, width } from './sample.ts';

describe.skipIf(noBrowser)('the page for landmarks', () => {
  const { opened, open } = useDrawing();

  test('asks for every landmark in turn, and the block says what was clicked', async () => {
    const page = await open();
    await page.locator('[data-field="length"]').fill('36');
    for (const place of Object.values(places)) {
      await page.locator('#next').click();
      await clickPixel(page, place);
    }
    await page.locator('#next').click();
    await page.locator('[data-field="distance"]').fill('12');
    await settled(page);
    for (const [key, place] of Object.entries(places)) {
      const at = await pixelOf(page, key.replace('plumb-', ''));
      // A screen unit is more than a pixel here.
      expect(Math.abs(at![0] - place[0]), key).toBeLessThanOrEqual(1);
      expect(Math.abs(at![1] - place[1]), key).toBeLessThanOrEqual(1);
    }
    expect(await page.locator('#copy').isEnabled()).toBe(true);
    expect(await blockText(page)).toContain('camera-distance: 12 ft');
  });

  test('a mark can be dragged, and undo takes back the whole drag and then the click', async () => {
    const page = await open();
    await goTo(page, 'ring');
    await clickPixel(page, places.ring);
    const before = await pixelOf(page, 'ring');
    const from = await onScreen(page, places.ring);
    const to = await onScreen(page, [760, 610]);
    await page.mouse.move(from.x, from.y);
    await page.mouse.down();
    await page.mouse.move((from.x + to.x) / 2, from.y + 20, { steps: 5 });
    await page.mouse.move(to.x, to.y, { steps: 5 });
    await page.mouse.up();
    await settled(page);
    const at = await pixelOf(page, 'ring');
    expect(Math.abs(at![0] - 760)).toBeLessThanOrEqual(2);
    expect(Math.abs(at![1] - 610)).toBeLessThanOrEqual(2);
    await page.locator('#undo').click();
    await settled(page);
    expect(await pixelOf(page, 'ring')).toEqual(before);
    await page.keyboard.press('Control+z');
    await settled(page);
    expect(await pixelOf(page, 'ring')).toBeUndefined();
  });

  test.runIf(long)(
    'wheel and buttons zoom, a drag moves the photo, and a click then hits its pixel exactly',
    async () => {
      const page = await open();
      await goTo(page, 'elbow');
      // Wheel events have whole screen units.
      const exact = await onScreen(page, places.elbow);
      const there = { x: Math.round(exact.x), y: Math.round(exact.y) };
      const [o, e] = [await onScreen(page, [0, 0]), await onScreen(page, [1, 0])];
      const under: Place = [(there.x - o.x) / (e.x - o.x), (there.y - o.y) / (e.x - o.x)];
      await page.mouse.move(there.x, there.y);
      await page.mouse.wheel(0, -1200);
      await settled(page);
      const still = await onScreen(page, under);
      expect(Math.hypot(still.x - there.x, still.y - there.y)).toBeLessThan(0.5);
      const [a, b] = [await onScreen(page, [0, 0]), await onScreen(page, [100, 0])];
      expect((b.x - a.x) / 100).toBeGreaterThan(3);
      await page.mouse.move(there.x, there.y);
      await page.mouse.down();
      await page.mouse.move(there.x + 90, there.y - 60, { steps: 4 });
      await page.mouse.up();
      await settled(page);
      const moved = await onScreen(page, under);
      expect(moved.x - there.x).toBeCloseTo(90, 0);
      expect(moved.y - there.y).toBeCloseTo(-60, 0);
      expect(await pixelOf(page, 'elbow'), 'a drag of the photo puts no mark').toBeUndefined();
      await clickPixel(page, places.elbow);
      expect(await pixelOf(page, 'elbow')).toEqual(places.elbow);
      await page.locator('#fit').click();
      await settled(page);
      const stage = (await page.locator('#stage').boundingBox())!;
      const corner = await onScreen(page, [width, height]);
      expect(corner.x).toBeLessThanOrEqual(stage.x + stage.width + 0.5);
      expect(corner.y).toBeLessThanOrEqual(stage.y + stage.height + 0.5);
    },
  );

  test('all of it works by keys alone', async () => {
    const page = await open();
    await page.locator('[data-field="length"]').fill('36');
    await settled(page);
    await page.locator('#next').focus();
    await page.keyboard.press('Enter');
    await page.locator('#stage').focus();
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('Enter');
    await settled(page);
    expect(await page.locator('[data-mark="from"]').count()).toBe(1);
    await page.keyboard.press('Enter'); // the other end
    for (let i = 0; i < 6; i++) await page.keyboard.press('Shift+ArrowRight');
    await page.keyboard.press('Enter');
    await settled(page);
    const text = (): Promise<string> => blockText(page);
    const read = async (): Promise<Place> => {
      const found = /to: \[(\d+), (\d+)\]/.exec(await text());
      return [Number(found![1]), Number(found![2])];
    };
    const first = await read();
    await page.keyboard.press('ArrowLeft');
    await page.keyboard.press('ArrowUp');
    await page.keyboard.press('ArrowUp');
    await settled(page);
    expect(await read()).toEqual([first[0] - 1, first[1] - 2]);
    await page.keyboard.press('Shift+ArrowDown');
    await settled(page);
    expect(await read()).toEqual([first[0] - 1, first[1] + 8]);
    const { x } = await onScreen(page, [0, 0]);
    await page.keyboard.press('+');
    await page.keyboard.press('+');
    await settled(page);
    expect((await onScreen(page, [0, 0])).x).not.toBe(x);
    await page.keyboard.press('0');
    await settled(page);
    expect((await onScreen(page, [0, 0])).x).toBeCloseTo(x, 1);
    await page.keyboard.press('Delete');
    await settled(page);
    expect(await page.locator('[data-mark="to"]').count()).toBe(0);
  });

  test('a finger puts and drags marks on a phone, two fingers zoom', async () => {
    const page = await open(phone);
    await goTo(page, 'ring');
    await page.locator('#stage').scrollIntoViewIfNeeded();
    const at = await onScreen(page, places.ring);
    await page.touchscreen.tap(at.x, at.y);
    await settled(page);
    const put = (await pixelOf(page, 'ring'))!;
    expect(Math.hypot(put[0] - places.ring[0], put[1] - places.ring[1])).toBeLessThan(4);
    const devtools = await page.context().newCDPSession(page);
    const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', points: readonly Place[]): Promise<void> =>
      devtools.send('Input.dispatchTouchEvent', {
        type,
        touchPoints: points.map(([x, y], id) => ({ x, y, id })),
      }) as unknown as Promise<void>;
    await touch('touchStart', [[at.x + 5, at.y + 5]]);
    for (const step of [1, 2, 3, 4]) await touch('touchMove', [[at.x + 5 + 10 * step, at.y + 5]]);
    await touch('touchEnd', []);
    await settled(page);
    const dragged = (await pixelOf(page, 'ring'))!;
    const scale = (await onScreen(page, [1000, 0])).x / 1000 - (await onScreen(page, [0, 0])).x / 1000;
    expect(Math.abs(dragged[0] - put[0] - 40 / scale)).toBeLessThan(3);
    await touch('touchStart', [
      [120, at.y],
      [200, at.y],
    ]);
    for (const step of [1, 2, 3, 4]) {
      await touch('touchMove', [
        [120 - 15 * step, at.y],
        [200 + 15 * step, at.y],
      ]);
    }
    await touch('touchEnd', []);
    await settled(page);
    const after = (await onScreen(page, [1000, 0])).x / 1000 - (await onScreen(page, [0, 0])).x / 1000;
    expect(after / scale).toBeCloseTo(2.5, 1);
    expect(await pixelOf(page, 'ring'), 'two fingers put no mark').toEqual(dragged);
    const across = await page.evaluate(() => document.documentElement.scrollWidth);
    expect(across, 'nothing sticks out to the side').toBeLessThanOrEqual(390);
  });

  test('nothing was asked of any network, and nothing was forbidden', () => {
    expect(opened.length).toBeGreaterThan(3);
    expect(opened.flatMap(({ requests }) => requests)).toEqual([]);
    expect(opened.flatMap(({ faults }) => faults)).toEqual([]);
  });
});
