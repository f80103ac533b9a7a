/** New folders for tests. */
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';

/** The caller removes it. */
export const newFolder = (): string =>
  fs.realpathSync(fs.mkdtempSync(path.join(os.tmpdir(), 'cinchwright-')));
