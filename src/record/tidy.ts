import { isObject } from './path.ts'
import { definitionOf, isOptional, schemaFor, schemaUnder, type Schema } from './schema-walk.ts'

/**
 * The same value without what says nothing: keys whose value is undefined, and empty maps where none need stand (no
 * splices and an empty map of splices are the same). What needs no change comes back as it is.
 */
export function tidy(value: unknown, schema: Schema | undefined): unknown {
  const shape = schema && schemaFor(schema, value)
  const inside = (key: string) => shape && schemaUnder(shape, key)
  if (Array.isArray(value)) {
    const list = value.map((entry, i) => tidy(entry, inside(String(i))))
    return list.some((entry, i) => entry !== value[i]) ? list : value
  }
  if (!isObject(value)) return value
  const entries = Object.entries(value).map(([key, entry]) => [key, tidy(entry, inside(key))] as const)
  const kept = entries.filter(([key, entry]) => entry !== undefined && !isNeedless(entry, inside(key)))
  const same = kept.length === entries.length && kept.every(([key, entry]) => entry === value[key])
  return same ? value : Object.fromEntries(kept)
}

/** An empty map or object that may as well be absent. */
export function isNeedless(value: unknown, schema: Schema | undefined): boolean {
  if (!schema || !isOptional(schema) || !isObject(value) || Object.keys(value).length > 0) return false
  const { type } = definitionOf(schemaFor(schema, value))
  return type === 'object' || type === 'record'
}
