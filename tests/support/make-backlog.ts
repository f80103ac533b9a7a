/** Writes invented orders into a folder: npm run make-backlog -- N [FOLDER] [--seed S] [--faulty PERCENT]. */
import fs from 'node:fs';
import path from 'node:path';
import { parseArgs } from 'node:util';
import { backlogFiles, type Backlog } from './backlog/backlog.ts';
import { repo } from './run-cli.ts';

const usage = 'npm run make-backlog -- N [FOLDER] [--seed S] [--faulty PERCENT]';

class Wrong extends Error {}

function numberOf(text: string | undefined, about: string, most: number): number {
  const value = /^\d{1,15}$/.test(text ?? '') ? Number(text) : NaN;
  if (value <= most) return value;
  throw new Wrong(`${about} is a whole number from 0 to ${most}, not "${text ?? ''}"`);
}

function asked(): Backlog & { folder: string } {
  const { values, positionals } = parseArgs({
    allowPositionals: true,
    options: { seed: { type: 'string', default: '1' }, faulty: { type: 'string', default: '0' } },
  });
  const [count, folder = 'dist/backlog', ...more] = positionals;
  // Without "--", npm swallows options and passes their values.
  if (count === undefined || more.length > 0) throw new Wrong(`write it so: ${usage}`);
  return {
    count: numberOf(count, 'N', 999_999),
    seed: numberOf(values.seed, '--seed', 999_999_999),
    faultyPercent: numberOf(values.faulty, '--faulty', 100),
    folder: path.resolve(repo, folder),
  };
}

function make(): void {
  const { folder, ...backlog } = asked();
  // Files of an older backlog would count as orders.
  if (fs.existsSync(folder) && fs.readdirSync(folder).length > 0)
    throw new Wrong(`${folder} is not empty: name another folder, or remove it first`);
  let last = '';
  for (const { name, text } of backlogFiles(backlog)) {
    const file = path.join(folder, name);
    const dir = path.dirname(file);
    if (dir !== last) fs.mkdirSync(dir, { recursive: true });
    last = dir;
    fs.writeFileSync(file, text);
  }
  process.stdout.write(`${backlog.count} orders in ${folder}\n`);
}

try {
  make();
} catch (error) {
  const known = error instanceof Wrong || (error instanceof TypeError && 'code' in error);
  if (!known) throw error;
  process.stderr.write(`make-backlog: ${error.message}\n`);
  process.exitCode = 2;
}
