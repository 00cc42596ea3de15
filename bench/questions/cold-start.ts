import { execFileSync } from 'node:child_process'
import { fileURLToPath } from 'node:url'
import type { Figure, Question } from '../question.ts'

const root = fileURLToPath(new URL('../../', import.meta.url))

/** A whole run of the built command line on the demo: start, read, resolve, solve, print. The median of eleven. */
export const coldStart: Question = {
  name: 'cold-start',
  ask(): Figure[] {
    execFileSync('npm', ['run', '--silent', 'build:cli'], { cwd: root })
    const times = Array.from({ length: 11 }, () => {
      const started = performance.now()
      const printed = execFileSync('node', ['dist/cli/loomwright.js', 'solve', 'examples/vehicles/tessarby-errand.json', '--year', '1961'], { cwd: root, encoding: 'utf8' })
      if (!printed.includes('Volts are against')) throw new Error('the command line did not solve the demo')
      return performance.now() - started
    })
    return [{ name: 'cold-start', value: times.sort((a, b) => a - b)[5], unit: 'ms', goal: 400, better: 'lower' }]
  },
}
