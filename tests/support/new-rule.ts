/** npm run new-rule NAME: starts src/rules/NAME.ts and registers it. */
import { startRule } from './rule-start.ts';
import { repo } from './run-cli.ts';

const [, , name = ''] = process.argv;
const fault = startRule(name, repo);
if (fault !== undefined) {
  process.stderr.write(`new-rule: ${fault}\n`);
  process.exitCode = 2;
} else {
  process.stdout
    .write(`wrote src/rules/${name}.ts, and put it last in src/rules/registry.ts. Nothing can be sized until it judges. Next:
1. Fill it in, with one example for every entry of "can": DEVELOPERS.md, "A rule", says how.
2. npx vitest run --config tests/vitest.config.ts tests/project/lists.test.ts says what is still missing.
3. npm run generate && npm test && npm run golden, and read what changed.
`);
}
