/** `npm run mutate -- [FOLDER or FILE...]`: breaks the model place by place and lists breaks no test notices. */
import { Stryker } from '@stryker-mutator/core';

const folders = ['math', 'horse', 'cinch', 'rules', 'advice', 'learn', 'work'].map((name) => `src/${name}`);
const asked = process.argv.slice(2);
/** By folder, since each has tests of its own. */
const byFolder = Map.groupBy
  ? Map.groupBy(asked.length > 0 ? asked : folders, (name) => name.split('/')[1])
  : (asked.length > 0 ? asked : folders).reduce(
      (map, name) => map.set(name.split('/')[1], [...(map.get(name.split('/')[1]) ?? []), name]),
      new Map(),
    );

for (const [folder, names] of byFolder) {
  process.env.MUTATED = folder;
  await new Stryker({
    mutate: names.map((name) => (/\.ts\b/.test(name) ? name : `${name}/**/*.ts`)),
    testRunner: 'one-process',
    coverageAnalysis: 'perTest',
    ignoreStatic: true,
    concurrency: 1,
    plugins: ['./tests/mutate/runner.mjs', './tests/mutate/words.mjs', './tests/mutate/survivors.mjs'],
    ignorers: ['words'],
    ignorePatterns: ['coverage', 'dist', 'tests/fuzz', 'tests/browser'],
    tempDirName: 'coverage/mutate',
    reporters: ['survivors', 'progress-append-only', 'json'],
    jsonReporter: { fileName: `coverage/mutants-${folder}.json` },
    // Counting passes finds endless loops; the clock catches the rest.
    timeoutMS: 30_000,
  }).runMutationTest();
}
