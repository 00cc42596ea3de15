import { showPath, type Path } from './path.ts'

/** One thing wrong with a document from outside: where, what was expected, what was found, the nearest valid name, and all of it in one sentence. */
export interface Problem {
  readonly path: Path
  readonly expected: string
  readonly received: string
  readonly nearest?: string
  readonly sentence: string
}

/** As many problems as are worth reading at once. */
const SHOWN_PROBLEMS = 100

/** All that is wrong with a document: the first hundred problems, and how many there are. */
export interface Refused { readonly ok: false; readonly problems: readonly Problem[]; readonly count: number }

export function refuse(problems: readonly Problem[]): Refused {
  return { ok: false, problems: problems.slice(0, SHOWN_PROBLEMS), count: problems.length }
}

/** A problem whose sentence is put together from what was expected and what was found. */
export function makeProblem(path: Path, expected: string, received: string, nearest?: string): Problem {
  const hint = nearest === undefined ? '' : `; the nearest is ${nearest}`
  return saidProblem(path, expected, received, `expected ${expected}, found ${received}${hint}`, nearest)
}

/** A problem with a sentence of its own, which the path is put before. */
export function saidProblem(path: Path, expected: string, received: string, said: string, nearest?: string): Problem {
  const sentence = `${showPath(path)}: ${said}.`
  return nearest === undefined ? { path, expected, received, sentence } : { path, expected, received, nearest, sentence }
}

/** The same problem of a value that stands at a path of a larger document. */
export function underPath(at: Path, { path, expected, received, nearest, sentence }: Problem): Problem {
  const said = sentence.slice(showPath(path).length + 2, -1)
  return saidProblem([...at, ...path], expected, received, said, nearest)
}

/** A value in a few words: small ones as they stand, large ones by what they are. */
export function showValue(value: unknown): string {
  if (value === undefined) return 'nothing'
  if (Array.isArray(value)) return value.length === 0 ? 'an empty list' : `a list of ${value.length}`
  if (typeof value === 'object' && value !== null) return Object.keys(value).length === 0 ? 'an empty object' : 'an object'
  const text = JSON.stringify(value)
  return text.length > 60 ? `${text.slice(0, 57)}…` : text
}
