import { defineConfig } from 'vitest/config'

export default defineConfig({
  cacheDir: 'node_modules/.cache/vitest',
  test: {
    include: ['src/**/*.test.{ts,tsx}', 'test/**/*.test.ts', 'scripts/**/*.test.ts'],
    setupFiles: ['test/laws/set-up.ts'],
    globalSetup: ['test/browser/global-setup.ts'],
    reporters: ['default', './scripts/reporter.ts'],
    // Modules are shared between the test files of one process: most of what they load is constant tables, and loading
    // those once a process instead of once a file is most of the running time.
    isolate: false,
    // A missing golden is a failure, never written in passing: `npm run golden` writes it.
    update: 'none',
    testTimeout: 20_000,
    hookTimeout: 60_000,
    // A busy machine may take seconds to lay a large drawing out: what is waited for comes, or the test fails in the end.
    expect: { poll: { timeout: 15_000 } },
  },
})
