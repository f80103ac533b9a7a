/** When the landmark page calls a photo complete, and why not; nothing is lost or hidden. */
import { describe, expect, test } from 'vitest';
import { long } from '../support/cases.ts';
import { noBrowser } from './chromium.ts';
import { useDrawing } from './opened.ts';
import { clickPixel, goTo, onScreen, pixelOf, settled, type Place } from './pages.ts';
import { phone, places } from './sample.ts';

describe.skipIf(noBrowser)('the page for landmarks, before its block is taken', () => {
  const { opened, open } = useDrawing();

  test('an empty size holds the page up, whatever stands in it as an example', async () => {
    const page = await open();
    const next = page.locator('#next');
    expect(await page.locator('[data-field="length"]').inputValue()).toBe('');
    expect(await next.isDisabled()).toBe(true);
    await page.locator('[data-field="length"]').fill('36,5');
    await settled(page);
    expect(await page.locator('#wrong').textContent()).toContain('36.5');
    expect(await next.isDisabled()).toBe(true);
    await page.locator('[data-field="lengthUnit"]').selectOption('m');
    await page.locator('[data-field="length"]').fill('400');
    await settled(page);
    expect(await page.locator('#wrong').textContent()).toContain('0.1 m to 3.66 m');
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

  // One of each kind; tests/unit/pick-verdict.test.ts tries every verdict.
  const good = Object.values(places);
  const moved = (key: keyof typeof places, to: Place): Place[] =>
    Object.entries(places).map(([name, at]) => (name === key ? to : at));
  test.each<[string, { marks: Place[]; length?: string; says: RegExp; ready?: true }]>([
    ['no length', { marks: good, length: '', says: /^Not ready: still needed: size of the measure/ }],
    [
      'a ring a foot too far back',
      {
        marks: moved('ring', [870, 560]),
        says: /^Complete, but check: A ring .* this one is 1\d\.\d in behind/,
        ready: true,
      },
    ],
  ])('%s: said beside the buttons', async (_, { marks, length = '36', says, ready }) => {
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
            stage.dispatchEvent(
              new PointerEvent(type, { pointerId: 1, pointerType: 'mouse', clientX, clientY }),
            );
        },
        [x, y] as const,
      );
      await settled(page);
    }
    await fill('length', length);
    await fill('distance', '12');
    await settled(page);
    expect(await page.locator('#lacking').textContent()).toMatch(says);
    expect(await page.locator('#copy').isEnabled()).toBe(ready === true);
    expect(await page.locator('#download').isEnabled()).toBe(ready === true);
  });

  test.runIf(long)('which way the horse is taken to look stands beside the numbers', async () => {
    const page = await open();
    for (const name of ['elbow', 'girth groove']) {
      await goTo(page, name);
      await clickPixel(page, places[name === 'elbow' ? 'elbow' : 'girth-groove']);
    }
    expect(await page.locator('#readings').textContent()).toContain('The horse facesleft');
  });

  test.runIf(long)('leaving a page with marks that were not taken away is asked about', async () => {
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

  test.runIf(long)('names of marks stay within the frame', async () => {
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

  test('nothing was asked of any network, and nothing was forbidden', () => {
    expect(opened.length).toBeGreaterThan(3);
    expect(opened.flatMap(({ requests }) => requests)).toEqual([]);
    expect(opened.flatMap(({ faults }) => faults)).toEqual([]);
  });
});
