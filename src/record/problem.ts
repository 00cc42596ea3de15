import { showName, showPath, showText, type Path } from './path.ts'

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

/** All that is wrong with a document: the first hundred problems, and how many there are (of tens of thousands, how many were counted). */
export interface Refused { readonly ok: false; readonly problems: readonly Problem[]; readonly count: number }

export function refuse(problems: readonly Problem[]): Refused {
  const shown = problems.slice(0, SHOWN_PROBLEMS)
  return { ok: false, problems: shown.map(({ nearest, ...rest }) => nearest === undefined ? rest : { ...rest, nearest }), count: problems.length }
}

/**
 * Looks for the nearest valid name. Asked only when the problem is read: among thousands of names, for each of thousands
 * of problems that are counted and never shown, looking would take minutes.
 */
export type Near = () => string | undefined

/** A problem whose sentence is put together from what was expected and what was found. */
export function makeProblem(path: Path, expected: string, received: string, near?: Near): Problem {
  return saidProblem(path, expected, received, `expected ${expected}, found ${received}`, near)
}

/** So many valid names stand in a sentence where none of them is near. */
const LISTED_NAMES = 20

/**
 * A problem with a sentence of its own, which the path is put before, and behind it the nearest valid name or else, where they
 * are given, all of them.
 */
export function saidProblem(
  path: Path, expected: string, received: string, said: string | (() => string), near: Near = () => undefined, valid: () => readonly string[] = () => [],
): Problem {
  let found: { readonly nearest: string | undefined } | undefined
  return {
    path, expected, received,
    get nearest() { return (found ??= { nearest: near() }).nearest },
    get sentence() {
      const hint = this.nearest === undefined ? listValid(valid()) : `; the nearest is ${this.nearest}`
      return `${showPath(path)}: ${typeof said === 'string' ? said : said()}${hint}.`
    },
  }
}

function listValid(names: readonly string[]): string {
  return names.length === 0 ? '' : `; there ${names.length === 1 ? 'is' : 'are'} ${showNames(names, LISTED_NAMES)}`
}

/** The same problem of a value that stands at a path of a larger document. */
export function underPath(at: Path, problem: Problem): Problem {
  const said = problem.sentence.slice(showPath(problem.path).length + 2, -1)
  const { path, expected, received, nearest } = problem
  return { path: [...at, ...path], expected, received, ...nearest !== undefined && { nearest }, sentence: `${showPath([...at, ...path])}: ${said}.` }
}

/** As many names as a sentence holds. */
const SHOWN_NAMES = 60

/** The valid names in a row, the first of them where they are many. */
export function showNames(names: Iterable<string>, most = SHOWN_NAMES, show = showName): string {
  const shown: string[] = []
  for (const name of names) {
    if (shown.length === most) return `${shown.join(', ')} …`
    shown.push(show(name))
  }
  return shown.join(', ')
}

/** A value in a few words: small ones as they stand, large ones by what they are. */
export function showValue(value: unknown): string {
  if (value === undefined) return 'nothing'
  if (typeof value === 'number' && !Number.isFinite(value)) return 'a number too large to count with'
  if (Array.isArray(value)) return value.length === 0 ? 'an empty list' : `a list of ${value.length}`
  if (typeof value === 'object' && value !== null) return Object.keys(value).length === 0 ? 'an empty object' : 'an object'
  return typeof value === 'string' ? showText(value) : JSON.stringify(value)
}
