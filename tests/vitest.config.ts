import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

export default defineConfig({
  root: fileURLToPath(new URL('..', import.meta.url)),
  test: {
    include: ['tests/**/*.test.ts'],
    environment: 'node',
    setupFiles: ['tests/words-at-hand.ts'],
    pool: 'threads',
    maxWorkers: 2,
    passWithNoTests: false,
    // Whole plates are worked out in some tests, on whatever machine this is.
    testTimeout: 240_000,
    hookTimeout: 60_000,
  },
});
