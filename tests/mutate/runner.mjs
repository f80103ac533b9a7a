/**
 * Runs tests for Stryker in one process: they are bundled and loaded once, and a mutant costs no more than the tests it takes. With
 * Vitest as the runner every mutant loads the test files anew, which takes about a second; there are thousands of mutants.
 */
import fs from 'node:fs';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'esbuild';
import { testsOf } from './tests-of.mjs';

/** Stryker lets a place be passed a hundred times as often as in all tests together, and a loop that fills a list fills the memory first. */
const SOONER = 20;

const files = testsOf[process.env.MUTATED];
const state = (globalThis.__stryker__ ??= {});

/** All tests as one module, the sources as Stryker has changed them. */
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
    // Vitest's own `expect` is asked for in collect.mjs.
    plugins: [
      {
        name: 'collect',
        setup: ({ onResolve, onLoad }) => {
          // A module in a bundle is still to find what lies beside its file.
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

/** The message of a test that fails, or undefined. */
async function failure({ run }) {
  try {
    await run();
    return undefined;
  } catch (error) {
    return error instanceof Error ? error.message : String(error);
  }
}

class OneProcess {
  // Of the copy that Stryker has made; it is the current folder only when this is run.
  place = path.resolve('tests', 'mutate');
  bundle = path.join(this.place, 'bundle.mjs');
  tests = [];
  loads = 0;

  /** Mutants are switched on for tests only, never while modules load, so nothing has to be loaded anew after one. */
  capabilities() {
    return { reloadEnvironment: true };
  }

  async init() {
    if (!fs.existsSync(this.bundle)) await bundled(this.place, this.bundle);
    await this.load();
  }

  /** Fresh modules, with nothing in them that was worked out before. */
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

  /** A test that fails must also pass without the mutant: else something kept from another mutant made it fail, and it is tried afresh. */
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
