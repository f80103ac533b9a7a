/** The system's Chromium, started fresh, with no memory. */
import fs from 'node:fs';
import { chromium, type Browser, type BrowserContextOptions, type Page } from 'playwright-core';

const places = ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome'];
const found = [process.env['CHROMIUM'] ?? '', ...places].find(
  (place) => place !== '' && fs.existsSync(place),
);

const how = 'install it (Debian: apt-get install chromium) or name it in CHROMIUM';

/** Browser tests are left out only without Chromium, and never in CI. */
export const noBrowser = found === undefined && (process.env['CI_OUTSIDE'] ?? '') === '';

if (noBrowser)
  process.stderr.write(
    `\n*** NOT TESTED: there is no Chromium, so no page was tried in a browser: ${how} ***\n\n`,
  );

/** @throws Error that says how to install Chromium */
export function startBrowser(): Promise<Browser> {
  if (found === undefined) throw new Error(`no Chromium found: ${how}`);
  return chromium.launch({
    executablePath: found,
    args: [
      '--no-sandbox',
      '--disable-gpu',
      '--disable-quic',
      '--no-first-run',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
    ],
  });
}

export interface Watched {
  readonly page: Page;
  /** What the page asked for outside itself. */
  readonly requests: string[];
  /** Errors, and what its policy forbade. */
  readonly faults: string[];
}

/** Opens a local page and records what it does. */
export async function watched(
  browser: Browser,
  address: string,
  options: BrowserContextOptions = {},
): Promise<Watched> {
  const context = await browser.newContext(options);
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  const page = await context.newPage();
  const requests: string[] = [];
  const faults: string[] = [];
  page.on('request', (request) => {
    const url = request.url();
    if (url !== address && !/^(data|blob):/.test(url)) requests.push(url);
  });
  page.on('pageerror', (error) => faults.push(error.message));
  page.on('console', (message) => {
    if (['error', 'warning'].includes(message.type())) faults.push(message.text());
  });
  await page.addInitScript(() => {
    document.addEventListener('securitypolicyviolation', (event) => {
      reportError(new Error(`policy: ${event.violatedDirective} ${event.blockedURI}`));
    });
  });
  await page.goto(address);
  return { page, requests, faults };
}
