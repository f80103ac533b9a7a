/** The page for landmarks, made and worked as a person would. */
import { createHash } from 'node:crypto';
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Page } from 'playwright-core';
import { pickPage } from '../../src/pick/page.ts';

const script = new URL('../../dist/pick.js', import.meta.url);

/** Writes the page for a picture, and gives its address. */
export function pageFor(
  bytes: Buffer,
  { file, width, height }: { file: string; width: number; height: number },
): string {
  const page = pickPage(
    { file, width, height },
    {
      base64: bytes.toString('base64'),
      type: 'image/jpeg',
      script: fs.readFileSync(script, 'utf8'),
      hash: (text) => createHash('sha256').update(text).digest('base64'),
    },
  );
  const folder = fs.mkdtempSync(path.join(os.tmpdir(), 'pick-'));
  const name = path.join(folder, 'page.html');
  fs.writeFileSync(name, page);
  return pathToFileURL(name).href;
}

export type Place = readonly [number, number];

/** Where a pixel of the picture is on the screen, by what the browser shows and not by what the page thinks. */
export async function onScreen(page: Page, [x, y]: Place): Promise<{ x: number; y: number }> {
  const box = await page.locator('#photo').evaluate((image: HTMLImageElement) => {
    const { left, top, width, height } = image.getBoundingClientRect();
    return { left, top, across: width / image.naturalWidth, down: height / image.naturalHeight };
  });
  return { x: box.left + x * box.across, y: box.top + y * box.down };
}

/** Two pictures of the screen, after which the page shows what was done. */
export const settled = (page: Page): Promise<void> =>
  page.evaluate(
    () =>
      new Promise((done) => {
        requestAnimationFrame(() => {
          requestAnimationFrame(() => {
            done();
          });
        });
      }),
  );

/** Clicks a pixel of the picture. */
export async function clickPixel(page: Page, place: Place): Promise<void> {
  const { x, y } = await onScreen(page, place);
  await page.mouse.click(x, y);
  await settled(page);
}

export const blockText = (page: Page): Promise<string> => page.locator('#block').inputValue();

/** The two numbers of a key of the block. */
export async function pixelOf(page: Page, key: string): Promise<Place | undefined> {
  const found = new RegExp(`\\b${key}: \\[(\\d+), (\\d+)\\]`).exec(await blockText(page));
  return found === null ? undefined : [Number(found[1]), Number(found[2])];
}

/** Goes to a step by its name in the list. */
export async function goTo(page: Page, name: string): Promise<void> {
  await page.locator('#list button', { hasText: new RegExp(`^(. )?${name}$`) }).click();
  await settled(page);
}
