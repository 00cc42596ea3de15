import { COLLECTIONS, isCollection, mapIn, wordFor, type Collection } from './collections.ts'
import { isObject, type JsonObject, type Path } from './path.ts'
import { saidProblem, type Problem } from './problem.ts'
import type { WiringRecord } from './schema.ts'

/** Every id of a document with its collection, and the part of the document whose shape is right. */
export interface Census {
  readonly collectionOf: ReadonlyMap<string, Collection>
  /** Only the entries whose shape is right; what is left out here is no reason to doubt what points to it. */
  readonly sound: WiringRecord
  readonly isSound: (id: string) => boolean
  /** False for a collection that is missing by mistake or is no map: nothing can be said of what points into it. */
  readonly isReadable: (collection: Collection) => boolean
}

/** Words that stand for something else where an id is expected. */
const RESERVED: ReadonlyMap<string, string> = new Map([
  ['unknown', 'says that a value is not known'], ['separate', 'says that a wire is in no loom'], ['bare', 'says that a wire has no covering'],
])

/** Sorts a document into what can be relied on and what cannot, given the paths at which its shape is wrong. */
export function takeCensus(document: unknown, broken: readonly Path[]): Census {
  const unsound = new Set(broken.filter(([collection, id]) => isCollection(collection) && id !== undefined).map(([, id]) => id))
  const unreadable = new Set(broken.filter(({ length }) => length === 1).map(([key]) => key))
  const collectionOf = new Map<string, Collection>()
  for (const collection of COLLECTIONS) for (const id of Object.keys(mapIn(document, collection))) collectionOf.set(id, collection)
  return {
    collectionOf,
    sound: soundPart(document, unsound, unreadable),
    isSound: (id) => !unsound.has(id),
    isReadable: (collection) => !unreadable.has(collection),
  }
}

/** Ids that stand twice in the document, or that mean something else. */
export function findIdProblems(document: unknown): Problem[] {
  const first = new Map<string, Collection>()
  const problems: Problem[] = []
  for (const collection of COLLECTIONS) {
    for (const id of Object.keys(mapIn(document, collection))) {
      const other = first.get(id)
      if (other) problems.push(doubleId([collection, id], wordFor(other)))
      else first.set(id, collection)
      const meaning = collection === 'parts' && id === 'engine' ? 'stands for the engine among positions' : RESERVED.get(id)
      if (meaning) problems.push(saidProblem([collection, id], 'another id', id, `${id} cannot be an id, because it ${meaning}`))
    }
  }
  return problems
}

function doubleId(path: Path, other: string): Problem {
  const id = path[1]
  return saidProblem(path, 'an id that nothing else has', id, `the id ${id} is already that of ${/^[aeiou]/.test(other) ? 'an' : 'a'} ${other}`)
}

function soundPart(document: unknown, unsound: ReadonlySet<string>, unreadable: ReadonlySet<string>): WiringRecord {
  const sound: { [key: string]: JsonObject } = {}
  for (const collection of COLLECTIONS) {
    const entries = Object.entries(mapIn(document, collection)).filter(([id, entry]) => isObject(entry) && !unsound.has(id))
    // Without a prototype: what points to `toString` finds nothing.
    sound[collection] = Object.assign(Object.create(null) as JsonObject, unreadable.has(collection) ? {} : Object.fromEntries(entries))
  }
  return sound as unknown as WiringRecord
}
