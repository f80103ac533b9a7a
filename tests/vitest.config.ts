import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    root: new URL('..', import.meta.url).pathname,
    include: ['tests/**/*.test.ts'],
    environment: 'node',
    testTimeout: 60_000,
    // A missing golden file must fail, never be written in passing.
    env: { CI: 'true', FORCE_COLOR: '0' },
  },
});
