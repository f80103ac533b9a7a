/** A browser and its watched pages for the tests of a file. */
import type { Browser, BrowserContextOptions, Page } from 'playwright-core';
import { afterAll, beforeAll } from 'vitest';
import { jpegOf, rasterOf } from '../support/jpeg.ts';
import { startBrowser, watched, type Watched } from './chromium.ts';
import { pageFor } from './pages.ts';
import { desktop, drawing } from './sample.ts';

interface Desk {
  /** Every landmark page that opened and works. */
  readonly opened: readonly Watched[];
  /** Waits for nothing. */
  readonly watch: (address: string, options: BrowserContextOptions) => Promise<Watched>;
  readonly open: (options: BrowserContextOptions, address: string) => Promise<Page>;
}

/** Call it inside `describe`. */
export function useBrowser(): Desk {
  let browser: Browser;
  const opened: Watched[] = [];
  beforeAll(async () => {
    browser = await startBrowser();
  });
  afterAll(async () => {
    await browser.close();
  });
  const watch: Desk['watch'] = (address, options) => watched(browser, address, options);
  const open: Desk['open'] = async (options, address) => {
    const seen = await watch(address, options);
    opened.push(seen);
    await seen.page.locator('#title', { hasText: /./ }).waitFor();
    return seen.page;
  };
  return { opened, watch, open };
}

/** For the drawing's page. */
export function useDrawing(): Pick<Desk, 'opened'> & {
  readonly open: (options?: BrowserContextOptions, address?: string) => Promise<Page>;
} {
  const { opened, open } = useBrowser();
  let ofDrawing = '';
  beforeAll(async () => {
    ofDrawing = await pageFor(await jpegOf(rasterOf(drawing)), 'juniper-side.jpg');
  });
  return { opened, open: (options = desktop, address = ofDrawing) => open(options, address) };
}
