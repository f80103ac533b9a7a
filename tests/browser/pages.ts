/** The landmark page, used as a person would. */
import { createHash } from 'node:crypto';
import fs from 'node:fs';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Page } from 'playwright-core';
import type { PhotoFile } from '../../src/photo/pick/block.ts';
import { pickPage } from '../../src/photo/pick/page.ts';
import { newFolder } from '../support/folder.ts';
import { run } from '../support/run-cli.ts';

/** Gives the page's address. */
export async function pageFor(bytes: Buffer, file: string): Promise<string> {
  const folder = newFolder();
  fs.writeFileSync(path.join(folder, file), bytes);
  const { code, stderr } = await run(['photo', '--pick', file, '--out', 'page.html'], { cwd: folder });
  if (code !== 0) throw new Error(stderr);
  return pathToFileURL(path.join(folder, 'page.html')).href;
}

/** A page that claims another name or size for its picture. */
export function pageClaiming(bytes: Buffer, photo: PhotoFile): string {
  const script = fs.readFileSync(new URL('../../dist/pick.js', import.meta.url), 'utf8');
  const page = pickPage(photo, {
    base64: bytes.toString('base64'),
    kind: 'jpeg',
    script,
    hash: (text) => createHash('sha256').update(text).digest('base64'),
  });
  const file = path.join(newFolder(), 'page.html');
  fs.writeFileSync(file, page);
  return pathToFileURL(file).href;
}

/** In pixels of the picture. */
export type Place = readonly [number, number];

/** Where a pixel is on the screen: what the browser shows, not what the page thinks. */
export async function onScreen(page: Page, [x, y]: Place): Promise<{ x: number; y: number }> {
  const box = await page.locator('#photo').evaluate((image: HTMLImageElement) => {
    const { left, top, width, height } = image.getBoundingClientRect();
    return { left, top, across: width / image.naturalWidth, down: height / image.naturalHeight };
  });
  return { x: box.left + x * box.across, y: box.top + y * box.down };
}

/** After two frames the page shows what was done. */
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

export async function clickPixel(page: Page, place: Place): Promise<void> {
  const { x, y } = await onScreen(page, place);
  await page.mouse.click(x, y);
  await settled(page);
}

export const blockText = (page: Page): Promise<string> => page.locator('#block').inputValue();

/** Of a key in the block. */
export async function pixelOf(page: Page, key: string): Promise<Place | undefined> {
  const found = new RegExp(`\\b${key}: \\[(\\d+), (\\d+)\\]`).exec(await blockText(page));
  return found === null ? undefined : [Number(found[1]), Number(found[2])];
}

export async function goTo(page: Page, name: string): Promise<void> {
  await page.locator('#list button', { hasText: new RegExp(`^(. )?${name}$`) }).click();
  await settled(page);
}
