/**
 * Runs tests for Stryker in one process, bundled and loaded once: Vitest takes about a second a mutant to load
 * them, and there are thousands.
 */
import fs from 'node:fs';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'esbuild';
import { testsOf } from './tests-of.mjs';

/** Stryker allows a hundred times the usual passes; a loop that fills a list runs out of memory first. */
const SOONER = 20;

const files = testsOf[process.env.MUTATED];
const state = (globalThis.__stryker__ ??= {});

/** All tests as one module, with the sources as Stryker changed them. */
async function bundled(place, bundle) {
  const loads = files.map((file) => `await collect('${file}', () => import('../../${file}'));`);
  await build({
    stdin: {
      contents: `import { collect, taken } from './collect.mjs'; ${loads.join('\n')} export const tests = await taken();`,
      resolveDir: place,
    },
    outfile: bundle,
    bundle: true,
    platform: 'node',
    target: 'node20',
    format: 'esm',
    packages: 'external',
    // collect.mjs itself imports vitest's `expect`.
    plugins: [
      {
        name: 'collect',
        setup: ({ onResolve, onLoad }) => {
          // Bundled modules must still find what lies beside their files.
          onLoad({ filter: /\.ts$/ }, ({ path: at }) => ({
            contents: fs
              .readFileSync(at, 'utf8')
              .replaceAll('import.meta.url', `'${pathToFileURL(at).href}'`),
            loader: 'ts',
          }));
          onResolve({ filter: /^vitest$/ }, ({ importer }) =>
            importer.endsWith('collect.mjs') ? undefined : { path: path.join(place, 'collect.mjs') },
          );
        },
      },
    ],
    logLevel: 'error',
  });
}

async function failure({ run }) {
  try {
    await run();
    return undefined;
  } catch (error) {
    return error instanceof Error ? error.message : String(error);
  }
}

class OneProcess {
  // In Stryker's copy, the current folder only at run time.
  place = path.resolve('tests', 'mutate');
  bundle = path.join(this.place, 'bundle.mjs');
  tests = [];
  loads = 0;

  /** Mutants are on only while tests run, never while modules load, so nothing is reloaded after one. */
  capabilities() {
    return { reloadEnvironment: true };
  }

  async init() {
    if (!fs.existsSync(this.bundle)) await bundled(this.place, this.bundle);
    await this.load();
  }

  async load() {
    state.activeMutant = undefined;
    state.currentTestId = undefined;
    this.loads += 1;
    ({ tests: this.tests } = await import(`${pathToFileURL(this.bundle).href}?${this.loads}`));
  }

  async dryRun() {
    const tests = [];
    for (const test of this.tests) {
      state.currentTestId = test.id;
      const start = performance.now();
      const failureMessage = await failure(test);
      const timeSpentMs = performance.now() - start;
      const status = failureMessage === undefined ? 0 : 1;
      tests.push({
        id: test.id,
        name: test.id,
        fileName: path.resolve(test.file),
        timeSpentMs,
        status,
        failureMessage,
      });
    }
    state.currentTestId = undefined;
    return { status: 'complete', tests, mutantCoverage: state.mutantCoverage };
  }

  /** A failing test must pass without the mutant; if not, an earlier mutant left something behind: try afresh. */
  async mutantRun(options) {
    const first = await this.tried(options);
    if (first.status !== 'killed') return first;
    if ((await failure(this.tests.find(({ id }) => id === first.killedBy[0]))) === undefined) return first;
    await this.load();
    const second = await this.tried(options);
    await this.load();
    return second;
  }

  async tried({ testFilter, activeMutant, hitLimit: most }) {
    const hitLimit = most === undefined ? undefined : most / SOONER;
    const wanted = testFilter === undefined ? undefined : new Set(testFilter);
    let nrOfTests = 0;
    let result = { status: 'survived' };
    state.activeMutant = activeMutant.id;
    state.hitCount = hitLimit === undefined ? undefined : 0;
    state.hitLimit = hitLimit;
    for (const test of this.tests) {
      if (wanted !== undefined && !wanted.has(test.id)) continue;
      nrOfTests += 1;
      const failureMessage = await failure(test);
      if (hitLimit !== undefined && state.hitCount > hitLimit) {
        result = { status: 'timeout', reason: 'a place was passed far too often' };
        break;
      }
      if (failureMessage === undefined) continue;
      result = { status: 'killed', killedBy: [test.id], failureMessage };
      break;
    }
    state.activeMutant = undefined;
    state.hitCount = undefined;
    return { ...result, nrOfTests };
  }
}

export const strykerPlugins = [{ kind: 'TestRunner', name: 'one-process', injectableClass: OneProcess }];
