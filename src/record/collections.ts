import { isObject, type JsonObject } from './path.ts'

/** The collections of a record, each a map by id, with the word for one of its items. An id stands in one of them only. */
const WORDS = {
  serials: 'serial series', markets: 'market', options: 'option', supply: 'supply', engine: 'engine row', metals: 'metal',
  parts: 'part', splices: 'splice', connectors: 'connector', halves: 'connector half', wires: 'wire', fixings: 'fixing',
  looms: 'loom', places: 'place', passages: 'passage', runs: 'run', duties: 'duty', limits: 'limit', claims: 'claim',
} as const

export type Collection = keyof typeof WORDS

export const COLLECTIONS = Object.keys(WORDS) as readonly Collection[]

export function isCollection(key: string | undefined): key is Collection {
  return key !== undefined && Object.hasOwn(WORDS, key)
}

/** What one item of the collection is called. */
export function wordFor(collection: Collection): string {
  return WORDS[collection]
}

/** The collection of a document, or nothing where it is absent or no map at all. */
export function mapIn(document: unknown, collection: Collection): JsonObject {
  const map = isObject(document) ? document[collection] : undefined
  return isObject(map) ? map : {}
}
