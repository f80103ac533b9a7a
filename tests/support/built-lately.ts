/** Warns when dist/ is older than src/, which makes tests fail oddly. */
import fs from 'node:fs';
import path from 'node:path';
import { repo } from './run-cli.ts';

const changed = (file: string): number => fs.statSync(path.join(repo, file)).mtimeMs;

export default function builtLately(): void {
  const built = path.join('dist', 'cinchwright.cjs');
  const sources = fs.readdirSync(path.join(repo, 'src'), { recursive: true, encoding: 'utf8' });
  const newest = Math.max(...sources.map((name) => changed(path.join('src', name))));
  const at = fs.existsSync(path.join(repo, built)) ? changed(built) : 0;
  if (at < newest)
    process.stderr.write(
      `\n${built} is older than src/: tests that start the built program try what was. Run "npm run build".\n`,
    );
}
