import { isObject, type Json, type JsonObject, type Path } from './path.ts'
import type { Problem } from './problem.ts'
import { checkShape, type CheckedShape } from './shape-problems.ts'
import { keysOf, type Schema } from './schema-walk.ts'
import { MOST_ENTRIES, tooLarge } from './too-large.ts'

/** Problems beyond this many are not counted: a document with so many is not what it should be at all. */
export const MOST_COUNTED = 10_000
/** Values of a piece that is checked at once, and the most that one entry of a collection may hold. */
const PIECE_VALUES = 2000
const ENTRY_VALUES = 200_000
const VALUES = `${ENTRY_VALUES} values`

/** `isCut`: so much is wrong that the rest was not looked at. */
export interface CheckedInPieces extends CheckedShape { readonly isCut: boolean }

/**
 * The shape of a document whose collections may be very long: checked entry by entry in pieces, until so many problems are
 * found that no more are worth counting. An entry too large to be checked is a problem by itself and not looked into.
 */
export function checkInPieces(document: unknown, schema: Schema): CheckedInPieces {
  if (!isObject(document) || countValues(document, PIECE_VALUES * 10) <= PIECE_VALUES * 10) return { ...checkShape(document, schema), isCut: false }
  const collections = listCollections(document, schema)
  const tooMany = findTooMany(document, collections)
  if (tooMany.length > 0) return { problems: tooMany, broken: [], isCut: true }
  const problems: Problem[] = [], broken: Path[] = []
  const bare: JsonObject = { ...document, ...Object.fromEntries(collections.map((key) => [key, {}])) }
  const take = (piece: JsonObject, isOwn: (path: Path) => boolean) => {
    const checked = checkShape(piece, schema)
    for (const problem of checked.problems) if (isOwn(problem.path)) problems.push(problem)
    for (const path of checked.broken) if (isOwn(path)) broken.push(path)
  }
  take(bare, () => true)
  for (const key of collections) {
    for (const piece of cutMap(document[key] as JsonObject)) {
      if (problems.length > MOST_COUNTED) return { problems, broken, isCut: true }
      const fit = Object.entries(piece).filter(([id, entry]) => {
        if (!isTooLarge(entry)) return true
        problems.push(tooLarge([key, id], VALUES))
        broken.push([key, id])
        return false
      })
      take({ ...bare, [key]: Object.fromEntries(fit) }, ([first]) => first === key)
    }
  }
  return { problems, broken, isCut: problems.length > MOST_COUNTED }
}

/** What no record has: thousands of keys, tens of thousands of entries in a collection, or of values outside any. */
function findTooMany(document: JsonObject, collections: readonly string[]): Problem[] {
  const keys = Object.keys(document)
  if (keys.length > MOST_ENTRIES) return [tooLarge([], `${MOST_ENTRIES} entries`)]
  return keys.flatMap((key) => {
    if (!collections.includes(key)) return isTooLarge(document[key]) ? [tooLarge([key], VALUES)] : []
    return Object.keys(document[key] as JsonObject).length > MOST_ENTRIES ? [tooLarge([key], `${MOST_ENTRIES} entries`)] : []
  })
}

/** The top keys that hold maps of entries. */
function listCollections(document: JsonObject, schema: Schema): string[] {
  const known = new Set(keysOf(schema))
  return Object.keys(document).filter((key) => known.has(key) && isObject(document[key]) && key !== 'layout' && key !== 'assume')
}

function* cutMap(map: JsonObject): Generator<JsonObject> {
  let piece: [string, Json][] = [], values = 0
  for (const [id, entry] of Object.entries(map)) {
    piece.push([id, entry])
    values += 1 + countValues(entry, PIECE_VALUES)
    if (values < PIECE_VALUES) continue
    yield Object.fromEntries(piece)
    piece = []
    values = 0
  }
  yield Object.fromEntries(piece)
}

/** The values inside a value, counted no further than `most`. */
function countValues(value: unknown, most: number): number {
  if (typeof value !== 'object' || value === null) return 1
  let count = 1
  for (const inner of Object.values(value)) {
    count += countValues(inner, most - count)
    if (count > most) return count
  }
  return count
}

const isTooLarge = (value: unknown) => countValues(value, ENTRY_VALUES) > ENTRY_VALUES
