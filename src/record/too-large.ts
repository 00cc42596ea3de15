import type { Path } from './path.ts'
import { saidProblem, type Problem } from './problem.ts'

/** No object of a record has more keys than this, and no collection more entries. */
export const MOST_ENTRIES = 20_000

/** A place of a document that holds more than any vehicle needs. */
export function tooLarge(path: Path, most: string): Problem {
  return saidProblem(path, `at most ${most}`, 'more', `this holds more than ${most}, which no vehicle needs in one place`)
}
