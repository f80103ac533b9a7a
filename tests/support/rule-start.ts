/** The first text of a rule, which fails until its author has filled it in, and its place in the registry. */

/** "pad-thickness" is padThickness. */
const camel = (name: string): string => name.replace(/-(.)/g, (_, letter: string) => letter.toUpperCase());

/** The whole shape with nothing said: tests/project/lists.test.ts refuses every empty part. */
export const ruleStart = (name: string, version: string): string => `/** ? */
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

/** The registry with a rule more, which is asked last. */
export function registryWith(registry: string, name: string): string {
  const lines = registry.split('\n');
  const after = lines.findIndex((line) => (/^import .*'\.\/(.*)\.ts'/.exec(line)?.[1] ?? '') > name);
  const place = after < 0 ? lines.findLastIndex((line) => line.startsWith('import ')) + 1 : after;
  const imported = lines.toSpliced(place, 0, `import { ${camel(name)} } from './${name}.ts';`).join('\n');
  return imported.replace(/\n\];/, `\n  ${camel(name)},\n];`);
}
