/** The page for landmarks in a real browser: mouse, keys, fingers, a turned picture, and that nothing leaves it. */
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { noBrowser, startBrowser, watched, type Watched } from './chromium.ts';
import { jpegOf, rasterOf } from '../support/jpeg.ts';
import { blockText, clickPixel, goTo, onScreen, pageFor, pixelOf, settled, type Place } from './pages.ts';
import { desktop, drawing, height, phone, places, width } from './sample.ts';

describe.skipIf(noBrowser)('the page for landmarks', () => {
  let browser: Browser;
  let address: string;
  const opened: Watched[] = [];

  const open = async (
    options = desktop as Parameters<typeof watched>[2],
    at = address,
  ): Promise<Watched['page']> => {
    const seen = await watched(browser, at, options);
    opened.push(seen);
    await seen.page.locator('#title', { hasText: /./ }).waitFor();
    return seen.page;
  };

  beforeAll(async () => {
    browser = await startBrowser();
    address = await pageFor(await jpegOf(rasterOf(drawing)), 'juniper-side.jpg');
  });
  afterAll(async () => {
    await browser.close();
  });

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
      // A unit of the screen is more than a pixel of the picture here.
      expect(Math.abs(at![0] - place[0]), key).toBeLessThanOrEqual(1);
      expect(Math.abs(at![1] - place[1]), key).toBeLessThanOrEqual(1);
    }
    expect(await page.locator('#copy').isEnabled()).toBe(true);
    expect(await blockText(page)).toContain('camera-distance: 12 ft');
  });

  test('an empty size holds the page up, whatever stands in it as an example', async () => {
    const page = await open();
    const next = page.locator('#next');
    expect(await page.locator('[data-field="length"]').inputValue()).toBe('');
    expect(await next.isDisabled()).toBe(true);
    await page.locator('[data-field="length"]').fill('36,5');
    expect(await page.locator('#wrong').textContent()).toContain('36.5');
    expect(await next.isDisabled()).toBe(true);
    await page.locator('[data-field="lengthUnit"]').selectOption('m');
    await page.locator('[data-field="length"]').fill('400');
    expect(await page.locator('#wrong').textContent()).toContain('from 0.1 m to 3.66 m');
    await page.locator('[data-field="length"]').fill('1');
    await settled(page);
    expect(await page.locator('#wrong').textContent()).toBe('');
    await next.click();
    await settled(page);
    expect(await next.isDisabled(), 'no mark yet').toBe(true);
    expect(await page.locator('#hold').textContent()).toBe('Click the mark first.');
    await page.locator('input[value="sheet"]').evaluate((radio: HTMLInputElement) => {
      radio.click();
    });
    await settled(page);
    for (const field of ['width', 'height'])
      expect(await page.locator(`[data-field="${field}"]`).inputValue()).toBe('');
  });

  // What a shop owner got past the page: each would have been refused, or read wrongly, in the order.
  const good = Object.values(places);
  const moved = (key: keyof typeof places, to: Place): Place[] =>
    Object.entries(places).map(([name, at]) => (name === key ? to : at));
  const swapped = (a: keyof typeof places, b: keyof typeof places): Place[] =>
    Object.entries(places).map(([name, at]) => (name === a ? places[b] : name === b ? places[a] : at));
  test.each<[string, { marks: Place[]; length?: string; distance?: string; says: RegExp; ready?: true }]>([
    ['good marks', { marks: good, says: /^Complete: copy/, ready: true }],
    ['a stick of 20 pixels', { marks: moved('to', [420, 700]), says: /^Not ready: The measure is only 20 pix/ }],
    ['a depth that no horse has', { marks: good, length: '144', says: /^Not ready: .*from (14|1) to/ }],
    ['spine and underline swapped', { marks: swapped('spine', 'underline'), says: /^Not ready: The top line/ }],
    ['the plumb line upside down', { marks: swapped('plumb-top', 'plumb-bottom'), says: /^Not ready: The bott/ }],
    ['fork and cantle swapped', { marks: swapped('fork', 'cantle'), says: /^Not ready: Elbow and girth groove/ }],
    ['a distance no camera is at', { marks: good, distance: 'far', says: /^Not ready: Camera distance/ }],
    ['no length', { marks: good, length: '', says: /^Not ready: still to come: size of the measure/ }],
    [
      'a ring a foot too far back',
      { marks: moved('ring', [870, 560]), says: /^Complete, but look at: A ring 1\d\.\d in behind the groove/, ready: true },
    ],
  ])('%s: said beside the buttons', async (_, { marks, length = '36', distance = '12', says, ready }) => {
    const page = await open();
    const fill = async (field: string, text: string): Promise<void> => {
      await page.locator(`[data-field="${field}"]`).evaluate((input: HTMLInputElement, value) => {
        input.value = value;
        input.dispatchEvent(new Event('input', { bubbles: true }));
      }, text);
    };
    await fill('length', '36');
    for (const place of marks) {
      await page.locator('#next').click();
      await settled(page);
      const { x, y } = await onScreen(page, place);
      await page.locator('#stage').evaluate(
        (stage, [clientX, clientY]) => {
          for (const type of ['pointerdown', 'pointerup'])
            stage.dispatchEvent(new PointerEvent(type, { pointerId: 1, pointerType: 'mouse', clientX, clientY }));
        },
        [x, y] as const,
      );
      await settled(page);
    }
    await fill('length', length);
    await fill('distance', distance);
    await settled(page);
    expect(await page.locator('#lacking').textContent()).toMatch(says);
    expect(await page.locator('#copy').isEnabled()).toBe(ready === true);
    expect(await page.locator('#download').isEnabled()).toBe(ready === true);
  });

  test('which way the horse is taken to look stands beside the numbers', async () => {
    const page = await open();
    for (const name of ['elbow', 'girth groove']) {
      await goTo(page, name);
      await clickPixel(page, places[name === 'elbow' ? 'elbow' : 'girth-groove']);
    }
    expect(await page.locator('#readings').textContent()).toContain('The horse looksto the left');
  });

  test('leaving a page with marks that were not taken away is asked about', async () => {
    const page = await open();
    await goTo(page, 'ring');
    await clickPixel(page, places.ring);
    const asked = page.waitForEvent('dialog');
    void page.reload().catch(() => undefined);
    const dialog = await asked;
    expect(dialog.type()).toBe('beforeunload');
    await dialog.dismiss();
    await settled(page);
    expect(await pixelOf(page, 'ring')).toBeDefined();
  });

  test('names of marks stay within the frame', async () => {
    const page = await open(phone);
    await page.locator('#list button', { hasText: 'plumb line, top' }).click();
    await page.locator('#stage').scrollIntoViewIfNeeded();
    const { x, y } = await onScreen(page, [1590, 8]);
    await page.touchscreen.tap(x, y);
    await settled(page);
    const [label, stage] = [
      (await page.locator('[data-mark="plumb-top"] text').boundingBox())!,
      (await page.locator('#stage').boundingBox())!,
    ];
    expect(label.x + label.width).toBeLessThanOrEqual(stage.x + stage.width);
    expect(label.y).toBeGreaterThanOrEqual(stage.y - 1);
  });

  test('on a phone what is asked next comes into sight', async () => {
    const page = await open(phone);
    await page.locator('[data-field="length"]').fill('36');
    await settled(page);
    await page.locator('#next').scrollIntoViewIfNeeded();
    await page.evaluate(() => {
      document.querySelector('#moves')!.scrollIntoView({ block: 'start' });
    });
    await page.locator('#next').click();
    await settled(page);
    expect((await page.locator('#title').boundingBox())!.y).toBeGreaterThanOrEqual(0);
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

  test('wheel and buttons zoom, a drag moves the photo, and a click then hits its pixel exactly', async () => {
    const page = await open();
    await goTo(page, 'elbow');
    // A wheel tells its place in whole units of the screen.
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
  });

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
    await page.keyboard.press('Enter'); // on to the other end
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
    expect(opened.length).toBeGreaterThan(4);
    expect(opened.flatMap(({ requests }) => requests)).toEqual([]);
    expect(opened.flatMap(({ faults }) => faults)).toEqual([]);
  });
});
