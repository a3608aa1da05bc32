import { availableParallelism } from 'node:os';
import { defineConfig } from 'vitest/config';

const excluded = ['**/node_modules/**', '**/dist/**'];
const shared = {
  resolve: { conditions: ['clampwright-source'] },
  ssr: { resolve: { conditions: ['clampwright-source'], externalConditions: ['clampwright-source'] } },
};

/** `unit` needs nothing but Node; `integration` uses real ports, processes and disks; `browser` a real Chromium. */
export default defineConfig({
  test: {
    // One core less, as the runner would take it, leaves half of a small machine waiting for servers to start.
    maxWorkers: Math.max(2, availableParallelism()),
    projects: [
      {
        ...shared,
        test: {
          name: 'unit',
          include: ['*/**/*.test.{ts,tsx}'],
          exclude: [...excluded, '**/*.integration.test.ts', '**/*.browser.test.ts'],
          // Nothing here waits; a busy machine alone makes a rendered page take longer than the usual five seconds.
          testTimeout: 20_000,
        },
      },
      {
        ...shared,
        test: {
          name: 'integration',
          include: ['*/**/*.integration.test.ts'],
          exclude: excluded,
          testTimeout: 120_000,
          hookTimeout: 120_000,
        },
      },
      {
        ...shared,
        test: {
          name: 'browser',
          include: ['*/**/*.browser.test.ts'],
          exclude: excluded,
          testTimeout: 240_000,
          hookTimeout: 120_000,
        },
      },
    ],
  },
});
