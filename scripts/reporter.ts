import type { Reporter, SerializedError, TestModule } from 'vitest/node'

/** How many tests ended which way. */
export interface Count {
  readonly passed: number
  readonly failed: number
  readonly skipped: number
}

/** Ends the output of a test run with one line, `N passed, N failed`, and `, N skipped` if any were. */
export default class CountReporter implements Reporter {
  #count: Count | undefined

  onInit(): void {
    // Written on exit, because whatever closes down after the run may still print.
    process.once('exit', (code) => {
      const count = this.#count ?? (code === 0 ? undefined : { passed: 0, failed: 1, skipped: 0 })
      if (count) process.stdout.write(`${formatCount(count)}\n`)
    })
  }

  onTestRunEnd(modules: readonly TestModule[], errors: readonly SerializedError[]): void {
    this.#count = countTests(modules, errors.length)
  }
}

/** A file that could not be loaded, and an error outside any test, count as one failure each. */
export function countTests(modules: readonly TestModule[], errors: number): Count {
  let passed = 0
  let failed = errors
  let skipped = 0
  for (const module of modules) {
    let failedHere = 0
    for (const test of module.children.allTests()) {
      const { state } = test.result()
      if (state === 'passed') passed++
      else if (state === 'failed') failedHere++
      else skipped++
    }
    failed += failedHere === 0 && !module.ok() ? 1 : failedHere
  }
  return { passed, failed, skipped }
}

export function formatCount({ passed, failed, skipped }: Count): string {
  const line = `${passed} passed, ${failed} failed`
  return skipped === 0 ? line : `${line}, ${skipped} skipped`
}
