/** Starts a rule that fails until filled in, and registers it. */
import fs from 'node:fs';
import path from 'node:path';

const camel = (name: string): string => name.replace(/-(.)/g, (_, letter: string) => letter.toUpperCase());

/** tests/project/lists.test.ts refuses every empty part. */
const ruleStart = (name: string, version: string): string => `/** ? */
import { rule } from './rule.ts';

export const ${camel(name)} = rule({
  id: '${name}',
  question: '',
  reads: ['k'],
  looks: ['strands'],
  evidence: [],
  can: ['good'],
  // Gives { judgement, reason: () => say\`...\`, margin? }; pure, total, about twenty lines.
  judge({ k }, { strands }) {
    throw new Error(\`${name} does not judge \${String(strands)} strands at \${String(k)} yet\`);
  },
  examples: [{ shows: '', facts: { k: 1 }, candidate: { strands: 17 }, gives: 'good' }],
  since: '${version}',
});
`;

/** The new rule is asked last. */
function registryWith(registry: string, name: string): string {
  const lines = registry.split('\n');
  const after = lines.findIndex((line) => (/^import .*'\.\/(.*)\.ts'/.exec(line)?.[1] ?? '') > name);
  const place = after < 0 ? lines.findLastIndex((line) => line.startsWith('import ')) + 1 : after;
  const imported = lines.toSpliced(place, 0, `import { ${camel(name)} } from './${name}.ts';`).join('\n');
  return imported.replace(/\n\];/, `\n  ${camel(name)},\n];`);
}

/** Gives what prevented it, or undefined. */
export function startRule(name: string, root: string): string | undefined {
  const at = (file: string): string => path.join(root, 'src', 'rules', `${file}.ts`);
  if (!/^[a-z]+(?:-[a-z]+)*$/.test(name)) return 'name it: npm run new-rule pad-thickness';
  if (fs.existsSync(at(name))) return `src/rules/${name}.ts is there already`;
  const about = JSON.parse(fs.readFileSync(path.join(root, 'package.json'), 'utf8')) as { version: string };
  fs.writeFileSync(at(name), ruleStart(name, about.version));
  fs.writeFileSync(at('registry'), registryWith(fs.readFileSync(at('registry'), 'utf8'), name));
  return undefined;
}
