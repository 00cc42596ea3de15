import { notJson, positionOf, type Position, type Wanted } from './json-fault.ts'
import { isInherited, showName, type Path } from './path.ts'
import { makeProblem, saidProblem, showValue, type Problem } from './problem.ts'
import { MOST_ENTRIES, tooLarge } from './too-large.ts'

export const LARGEST_BYTES = 20_000_000
export const DEEPEST_NESTING = 100
/** Values of any kind in a whole text, lists and objects among them. */
const MOST_VALUES = 1_000_000

/** The value a text holds and what is wrong with its keys, or the one problem that stops it being read at all. */
export type ParsedJson =
  | { readonly ok: true; readonly value: unknown; readonly problems: readonly Problem[] }
  | { readonly ok: false; readonly problem: Problem }

/**
 * Reads JSON (RFC 8259). Unlike the language's own parser it says line and column, reports a key that is written twice
 * (the first value would be lost without a word), refuses keys that every object inherits, and stops at a size, a depth and a
 * number of entries as soon as they are reached, before they cost anything. A byte order mark is passed over.
 */
export function parseJson(text: string, deepest = DEEPEST_NESTING): ParsedJson {
  const tooLarge = findTooLarge(text)
  if (tooLarge) return { ok: false, problem: tooLarge }
  const reader = new JsonReader(text, deepest)
  try {
    const value = reader.readDocument()
    return { ok: true, value, problems: reader.problems }
  } catch (error) {
    if (error instanceof JsonFault) return { ok: false, problem: error.problem }
    throw error
  }
}

function findTooLarge(text: string): Problem | undefined {
  const bytes = text.length * 3 <= LARGEST_BYTES ? text.length : new TextEncoder().encode(text).length
  if (bytes <= LARGEST_BYTES) return undefined
  return makeProblem([], `at most ${LARGEST_BYTES / 1e6} MB of text`, `${bytes / 1e6} MB`)
}

class JsonFault extends Error {
  readonly problem: Problem

  constructor(problem: Problem) {
    super(problem.sentence)
    this.problem = problem
  }
}

const NUMBER = /-?(?:0|[1-9][0-9]*)(?:\.[0-9]+)?(?:[eE][+-]?[0-9]+)?/y
const ESCAPE = /\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4})/y
const WORDS: readonly (readonly [string, unknown])[] = [['true', true], ['false', false], ['null', null]]

/** A text being read: the place reached, the path of the value there, and the problems met so far. */
class JsonReader {
  readonly problems: Problem[] = []
  private readonly text: string
  private readonly path: string[] = []
  private readonly deepest: number
  private at: number
  private values = 0

  constructor(text: string, deepest: number) {
    this.text = text
    this.deepest = deepest
    this.at = text.startsWith('\uFEFF') ? 1 : 0
  }

  readDocument(): unknown {
    this.skipSpace()
    const value = this.readValue()
    this.skipSpace()
    if (this.at < this.text.length) this.fail('the end of the text')
    return value
  }

  private readValue(): unknown {
    if (++this.values > MOST_VALUES) this.refuseTooMany([], `${MOST_VALUES} values`)
    const first = this.text[this.at]
    if (first === '{') return this.readObject()
    if (first === '[') return this.readList()
    if (first === '"') return this.readString('a value')
    for (const [word, value] of WORDS) if (this.text.startsWith(word, this.at)) return this.take(word.length, value)
    const number = this.match(NUMBER)
    if (number === undefined) return this.fail('a value')
    const value = Number(number)
    // Negative zero is zero: JSON writes it as 0.
    return value === 0 ? 0 : value
  }

  private readObject(): unknown {
    const object: { [key: string]: unknown } = {}
    this.open()
    if (this.isNext('}')) return object
    let entries = 0
    do {
      if (++entries > MOST_ENTRIES) this.refuseTooMany([...this.path], `${MOST_ENTRIES} entries`)
      this.skipSpace()
      const start = this.at
      const key = this.readString('a key in quotes')
      this.skipSpace()
      if (!this.isNext(':')) this.fail('a colon')
      const value = this.readInside(key)
      if (isInherited(key)) this.problems.push(inheritedKey([...this.path, key]))
      else if (Object.hasOwn(object, key)) this.problems.push(doubleKey([...this.path, key], () => positionOf(this.text, start)))
      else object[key] = value
    } while (this.isNext(','))
    if (!this.isNext('}')) this.fail('a comma or }')
    return object
  }

  private readList(): unknown {
    const list: unknown[] = []
    this.open()
    if (this.isNext(']')) return list
    do list.push(this.readInside(String(list.length)))
    while (this.isNext(','))
    if (!this.isNext(']')) this.fail('a comma or ]')
    return list
  }

  private open(): void {
    if (this.path.length >= this.deepest) {
      throw new JsonFault(makeProblem(this.path.slice(0, 5), `at most ${this.deepest} levels of nesting`, 'more'))
    }
    this.at++
    this.skipSpace()
  }

  private readInside(key: string): unknown {
    this.path.push(key)
    this.skipSpace()
    const value = this.readValue()
    this.skipSpace()
    this.path.pop()
    return value
  }

  // Character by character: a pattern would overflow its stack on a text of many megabytes.
  private readString(what: Wanted): string {
    if (this.text[this.at] !== '"') this.fail(what)
    const start = this.at++
    let escaped = false
    while (this.text[this.at] !== '"') {
      if (this.text[this.at] === '\\') {
        escaped = true
        if (this.match(ESCAPE) === undefined) this.fail('an escape such as \\n')
      } else if (this.text.charCodeAt(this.at) >= 0x20) this.at++
      else this.fail('a closing quote')
    }
    const raw = this.text.slice(start, ++this.at)
    return escaped ? JSON.parse(raw) as string : raw.slice(1, -1)
  }

  private match(pattern: RegExp): string | undefined {
    pattern.lastIndex = this.at
    const found = pattern.exec(this.text)?.[0]
    if (found !== undefined) this.at += found.length
    return found
  }

  private skipSpace(): void {
    while (isSpace(this.text[this.at])) this.at++
  }

  private isNext(mark: string): boolean {
    if (this.text[this.at] !== mark) return false
    this.at++
    return true
  }

  private take<T>(length: number, value: T): T {
    this.at += length
    return value
  }

  private fail(wanted: Wanted): never {
    throw new JsonFault(notJson(this.text, this.at, wanted))
  }

  private refuseTooMany(path: Path, most: string): never {
    throw new JsonFault(tooLarge(path, most))
  }
}

function isSpace(mark: string | undefined): boolean {
  return mark === ' ' || mark === '\n' || mark === '\t' || mark === '\r'
}

function inheritedKey(path: Path): Problem {
  return saidProblem(path, 'another name', showValue(path.at(-1)), `${path.at(-1)} cannot be used as a name`)
}

// Where the line begins is looked for only if the problem is read: thousands of keys may stand twice in one long line.
function doubleKey(path: Path, position: () => Position): Problem {
  const name = showName(path.at(-1) as string)
  return saidProblem(path, 'every key once', `${name} twice`, () => {
    const { line, column } = position()
    return `${name} is written twice, the second time at line ${line}, column ${column}`
  })
}
