/** Every command says what to measure again when tapes disagree. */
import fs from 'node:fs';
import path from 'node:path';
import { beforeAll, expect, test } from 'vitest';
import { orderText } from '../support/backlogs.ts';
import { ownFolder } from '../support/own-folder.ts';
import { run } from '../support/run-cli.ts';

const cwd = ownFolder();
beforeAll(() => {
  // By girth and usual drop: 44 1/2 in.
  fs.writeFileSync(
    path.join(cwd, 'doubt.yaml'),
    'order: 31\nhorse: { heart-girth: 73 in }\nsaddle: { rigging: 7/8, ring-to-ring: 55 in }\n',
  );
  fs.writeFileSync(path.join(cwd, 'plain.yaml'), orderText(1));
});

const told = async (line: string): Promise<string> => {
  const { stdout, stderr } = await run(line.split(' '), { cwd });
  return `${stdout}\n${stderr}`.replace(/\s+/g, ' ');
};

test.each([
  'size doubt.yaml',
  'check doubt.yaml --strands 17',
  'quote doubt.yaml',
  'ticket doubt.yaml',
  'ask doubt.yaml --draws 8',
  'ask doubt.yaml plain.yaml --draws 8',
  'ask doubt.yaml --draws 8 --format text',
  'ask doubt.yaml --draws 8 --format csv',
  'ask doubt.yaml --draws 8 --format json',
  'materials doubt.yaml plain.yaml',
  'schedule doubt.yaml plain.yaml',
  'materials doubt.yaml --format json',
  'schedule doubt.yaml --format json',
  'backlog doubt.yaml --format csv',
  'backlog doubt.yaml --format json',
])('%s', async (line) => {
  expect(await told(line)).toMatch(
    /Check the tapes: by girth and the usual ring drop, ring to ring would be 44/,
  );
  expect(await told(line.replaceAll('doubt.yaml', 'plain.yaml'))).not.toContain('Check the tapes');
});

test('a backlog on the screen has no room for it: it counts such orders', async () => {
  expect(await told('backlog doubt.yaml plain.yaml')).toContain(
    'Measure again for 1 order, whose tapes disagree: see column remarks.',
  );
  expect(await told('backlog plain.yaml')).not.toContain('Measure again for');
});
