/** New folders that are removed when the tests in them are done. */
import fs from 'node:fs';
import { afterAll, onTestFinished } from 'vitest';
import { newFolder } from './folder.ts';

const remove = (folder: string) => (): void => {
  fs.rmSync(folder, { recursive: true });
};

/** For all tests of a file or group. */
export function ownFolder(): string {
  const folder = newFolder();
  afterAll(remove(folder));
  return folder;
}

/** For one test, which calls it or whose `beforeEach` does. */
export function testFolder(): string {
  const folder = newFolder();
  onTestFinished(remove(folder));
  return folder;
}
