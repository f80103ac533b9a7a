/** npm run new-rule NAME: starts src/rules/NAME.ts and registers it. */
import fs from 'node:fs';
import { registryWith, ruleStart } from './rule-start.ts';

const inRules = (name: string): URL => new URL(`../../src/rules/${name}.ts`, import.meta.url);

function start(name = ''): string {
  if (!/^[a-z]+(?:-[a-z]+)*$/.test(name)) return 'name it: npm run new-rule pad-thickness';
  if (fs.existsSync(inRules(name))) return `src/rules/${name}.ts is there already`;
  const about = fs.readFileSync(new URL('../../package.json', import.meta.url), 'utf8');
  const { version } = JSON.parse(about) as { version: string };
  const registry = fs.readFileSync(inRules('registry'), 'utf8');
  fs.writeFileSync(inRules(name), ruleStart(name, version));
  fs.writeFileSync(inRules('registry'), registryWith(registry, name));
  process.stdout
    .write(`wrote src/rules/${name}.ts, and put it last in src/rules/registry.ts. Nothing can be sized until it judges. Next:
1. Fill it in, with one example for every entry of "can": DEVELOPERS.md, "A rule", says how.
2. npx vitest run --config tests/vitest.config.ts tests/project/lists.test.ts says what is still missing.
3. npm run generate && npm test && npm run golden, and read what changed.
`);
  return '';
}

const fault = start(process.argv[2]);
if (fault !== '') {
  process.stderr.write(`new-rule: ${fault}\n`);
  process.exitCode = 2;
}
