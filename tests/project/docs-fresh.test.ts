/** Generated files match their sources. */
import fs from 'node:fs';
import path from 'node:path';
import { expect, test } from 'vitest';
import { generated } from '../support/docs/generated.ts';
import { repo } from '../support/run-cli.ts';

test.each(generated)('$file', async ({ file, text }) => {
  const at = path.join(repo, file);
  expect(fs.existsSync(at), `${file} is missing: run "npm run generate"`).toBe(true);
  expect(fs.readFileSync(at, 'utf8'), `${file} is stale: run "npm run generate" and commit it`).toBe(
    await text(),
  );
});
