/** The landmark page with turned pictures, hostile names, and the demo photo from clicks to measures. */
import fs from 'node:fs';
import sharp from 'sharp';
import { describe, expect, test } from 'vitest';
import { noBrowser } from './chromium.ts';
import { useBrowser } from './opened.ts';
import { long } from '../support/cases.ts';
import { demo } from '../support/camera.ts';
import { exifOf, jpegOf, rasterOf } from '../support/jpeg.ts';
import { photoFile } from '../support/make-photo.ts';
import { run } from '../support/run-cli.ts';
import {
  blockText,
  clickPixel,
  goTo,
  onScreen,
  pageClaiming,
  pageFor,
  pixelOf,
  settled,
  type Place,
} from './pages.ts';
import { desktop, drawing, height, places, width } from './sample.ts';

describe.skipIf(noBrowser)('the page for landmarks, picture by picture', () => {
  const { opened, watch, open } = useBrowser();

  // CIPA DC-008 (Exif 2.32), Orientation 6: the top of the scene is the right side of the rows.
  test.each(long ? [1, 3, 6, 8] : [6])(
    'a picture with orientation %i gives pixels of the upright picture',
    async (orientation) => {
      const bytes = await jpegOf(rasterOf(drawing), { exif: exifOf(orientation) });
      const at = await pageFor(bytes, 'turned.jpg');
      const page = await open(desktop, at);
      await goTo(page, 'ring');
      const upright = ([x, y]: Place): Place =>
        orientation === 1
          ? [x, y]
          : orientation === 3
            ? [width - x, height - y]
            : orientation === 6
              ? [height - y, x]
              : [y, width - x];
      const place = upright(places.ring);
      await clickPixel(page, place);
      const put = (await pixelOf(page, 'ring'))!;
      expect(Math.hypot(put[0] - place[0], put[1] - place[1])).toBeLessThan(2.5);
      const seen = await page.locator('#lens').evaluate((lens: HTMLCanvasElement) => {
        const [r = 0, g = 0, b = 0] = lens.getContext('2d')!.getImageData(144, 144, 1, 1).data;
        return [r, g, b];
      });
      expect(Math.max(...seen), 'the magnifier looks at the square').toBeLessThan(60);
    },
  );

  test.runIf(long)('a PNG with such a note, too', async () => {
    const bytes = await sharp(await jpegOf(rasterOf(drawing)))
      .withMetadata({ orientation: 6 })
      .png()
      .toBuffer();
    const page = await open(desktop, await pageFor(bytes, 'turned.png'));
    await goTo(page, 'ring');
    const [x, y] = places.ring;
    await clickPixel(page, [height - y, x]);
    const put = (await pixelOf(page, 'ring'))!;
    expect(Math.hypot(put[0] - (height - y), put[1] - x)).toBeLessThan(2.5);
    expect(await blockText(page)).toContain(`image-size: [${String(height)}, ${String(width)}]`);
  });

  test('a picture that the browser turns otherwise is refused, not measured wrongly', async () => {
    const bytes = await jpegOf(rasterOf(drawing), { exif: exifOf(6) });
    const seen = await watch(pageClaiming(bytes, { file: 'a.jpg', width, height }), desktop);
    await seen.page.locator('#fault:not([hidden])').waitFor();
    expect(await seen.page.locator('#fault').textContent()).toContain('use another browser');
  });

  test('the demo photo, clicked: the block leaves by clipboard and as a file, and the program reads from it what is true', async () => {
    const { clicks, subject } = demo;
    const page = await open(desktop, await pageFor(fs.readFileSync(photoFile), 'juniper-side.jpg'));
    await page.locator('[data-field="length"]').fill('36');
    await settled(page);
    const inTurn: Place[] = [
      clicks.from,
      clicks.to,
      clicks.top,
      clicks.bottom,
      clicks.ring,
      clicks.elbow,
      clicks['girth-groove'],
      clicks.spine,
      clicks.underline,
      clicks.fork,
      clicks.cantle,
    ];
    for (const place of inTurn) {
      await page.locator('#next').click();
      await page.locator('#fit').click();
      await settled(page);
      const { x, y } = await onScreen(page, place);
      await page.mouse.move(x, y);
      await page.mouse.wheel(0, -600);
      await settled(page);
      await clickPixel(page, place);
    }
    await page.locator('#next').click();
    await page.locator('[data-field="distance"]').fill('12');
    await settled(page);
    expect(await page.locator('#doubts li').count()).toBe(0);
    await page.locator('#copy').click();
    await page.locator('#copied', { hasText: /./ }).waitFor();
    const copied = await page.evaluate(() => navigator.clipboard.readText());
    expect(copied).toBe(await blockText(page));
    const [download] = await Promise.all([page.waitForEvent('download'), page.locator('#download').click()]);
    expect(download.suggestedFilename()).toBe('juniper-side-photo.yaml');
    const saved = fs.readFileSync(await download.path(), 'utf8');
    expect(saved).toBe(copied);
    const order = `order: 1\nhorse: { heart-girth: 74 in }\nsaddle: { rigging: 7/8 }\n${saved}`;
    const { code, stdout, stderr } = await run(['photo', '-', '--format', 'json'], { stdin: order });
    expect(stderr).toBe('');
    expect(code).toBe(0);
    const { results } = JSON.parse(stdout) as {
      results: [{ seen: { measure: string; inches: number; sd: number }[] }];
    };
    const seen = (name: string) => results[0].seen.find(({ measure }) => measure === name)!;
    for (const [name, truth] of [
      ['elbow room', subject.room],
      ['groove forward to ring', subject.ring.x],
    ] as const) {
      expect(Math.abs(seen(name).inches - truth), name).toBeLessThan(2 * seen(name).sd);
    }
    // The same clicks in an order file: a pixel is an eighth of an inch there.
    const shipped = await run(['photo', 'examples/orders/25-photo.yaml', '--format', 'json']);
    const without = (JSON.parse(shipped.stdout) as { results: typeof results }).results;
    for (const { measure, inches } of without[0].seen)
      expect(Math.abs(seen(measure).inches - inches), measure).toBeLessThan(0.25);
    const shown = await page.locator('#readings').textContent();
    const [, room, give] = /Room behind the elbow([\d.]+) in, give or take ([\d.]+)/.exec(shown ?? '')!;
    expect(Math.abs(Number(room) - subject.room)).toBeLessThan(2 * Number(give));
    const [, deep, giveDeep] = /Depth of the barrel([\d.]+) in, give or take ([\d.]+)/.exec(shown ?? '')!;
    expect(Math.abs(Number(deep) - 2 * subject.ellipse.halfDepth)).toBeLessThan(2 * Number(giveDeep));
  });

  test('a file name cannot become markup, script or another key of the block', async () => {
    const file = '</script><img src=x onerror=alert(1)>"\n  ring: [1, 2]\u202e.jpg';
    const at = pageClaiming(await jpegOf(rasterOf(drawing)), { file, width, height });
    const page = await open(desktop, at);
    expect(await page.locator('img').count()).toBe(1);
    const { parse } = await import('yaml');
    const read = parse(await blockText(page)) as { photo: Record<string, unknown> };
    expect(Object.keys(read.photo)).toEqual(['file', 'image-size']);
    expect(read.photo['file']).toBe(file);
  });

  test('a page that wanted to reach out could not, and the watch would tell', async () => {
    const address = await pageFor(fs.readFileSync(photoFile), 'juniper-side.jpg');
    const seen = await watch(address, desktop);
    await seen.page.evaluate(async () => {
      new Image().src = 'http://127.0.0.1:9/a.png';
      const script = document.createElement('script');
      script.textContent = 'document.title = "ran"';
      document.body.append(script);
      await fetch('http://127.0.0.1:9/b').catch(() => undefined);
    });
    for (const kind of ['img-src', 'script-src', 'connect-src'])
      await expect.poll(() => seen.faults.join('\n')).toContain(`policy: ${kind}`);
    expect(await seen.page.title()).toBe('Landmarks on juniper-side.jpg');
  });

  test('nothing was asked of any network, and nothing was forbidden', () => {
    expect(opened.length).toBeGreaterThan(2);
    expect(opened.flatMap(({ requests }) => requests)).toEqual([]);
    expect(opened.flatMap(({ faults }) => faults)).toEqual([]);
  });
});
