import { expect, test } from 'vitest'
import type { TestModule } from 'vitest/node'
import { countTests, formatCount } from './reporter.ts'

/** A test file as the runner reports it, as far as the count looks at it. */
function aFile(ok: boolean, ...states: readonly string[]): TestModule {
  const allTests = () => states.map((state) => ({ result: () => ({ state }) }))
  return { ok: () => ok, children: { allTests } } as unknown as TestModule
}

test('tests of all files are counted together', () => {
  const count = countTests([aFile(true, 'passed', 'skipped'), aFile(false, 'passed', 'failed', 'failed')], 0)
  expect(formatCount(count)).toBe('2 passed, 2 failed, 1 skipped')
})

test('a file that does not load is one failure', () => {
  expect(formatCount(countTests([aFile(false)], 0))).toBe('0 passed, 1 failed')
})

test('an error outside every test is one failure', () => {
  expect(formatCount(countTests([aFile(true, 'passed')], 1))).toBe('1 passed, 1 failed')
})
