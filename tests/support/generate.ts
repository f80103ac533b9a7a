/** Writes every generated file; prints the names of those that changed. */
import fs from 'node:fs';
import path from 'node:path';
import { generated } from './docs/generated.ts';
import { repo } from './run-cli.ts';

for (const { file, text } of generated) {
  const at = path.join(repo, file);
  const made = await text();
  if (fs.existsSync(at) && fs.readFileSync(at, 'utf8') === made) continue;
  fs.mkdirSync(path.dirname(at), { recursive: true });
  fs.writeFileSync(at, made);
  process.stdout.write(`${file}\n`);
}
