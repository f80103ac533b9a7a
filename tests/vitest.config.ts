import { availableParallelism } from 'node:os';
import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    root: new URL('..', import.meta.url).pathname,
    include: ['tests/**/*.test.ts'],
    environment: 'node',
    globalSetup: new URL('support/built-lately.ts', import.meta.url).pathname,
    // Our modules keep no state, so files of one worker share them: loading them anew for each took a tenth of the time.
    isolate: false,
    // Bounds against hanging, not against slow machines.
    testTimeout: 120_000,
    hookTimeout: 120_000,
    // Vitest leaves a core free; on a machine with two that would be one worker.
    maxWorkers: Math.max(2, availableParallelism() - 1),
    // A missing golden file must fail, never be written in passing. CI_OUTSIDE is what the machine says of itself.
    env: { CI: 'true', FORCE_COLOR: '0', CI_OUTSIDE: process.env['CI'] ?? '' },
  },
});
