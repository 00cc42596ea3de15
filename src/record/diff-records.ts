import { compareIds } from './compare-ids.ts'
import type { Edit } from './edit.ts'
import { isObject, isSameJson, type Json, type Path } from './path.ts'
import type { WiringRecord } from './schema.ts'
import { definitionOf, isOptional, schemaFor, schemaUnder, type Schema } from './schema-walk.ts'
import { canonicalSchema } from './write-record.ts'

/** One fact that differs between two records; undefined where it is absent. */
export interface Change { readonly path: Path; readonly before: Json | undefined; readonly after: Json | undefined }

/** The facts that differ, each as small as it can stand by itself: a new wire is one change, a new length of a wire too. */
export function diffRecords(before: WiringRecord, after: WiringRecord): Change[] {
  return diffValues(before as unknown as Json, after as unknown as Json, canonicalSchema, [])
}

/** The edits that turn the one record into the other. */
export function editsBetween(before: WiringRecord, after: WiringRecord): Edit[] {
  return diffRecords(before, after).map(toEdit)
}

export function toEdit({ path, before, after }: Change): Edit {
  if (after === undefined) return { kind: 'remove', path }
  return before === undefined ? { kind: 'put', path, value: after } : { kind: 'set', path, from: before, to: after }
}

function diffValues(before: Json | undefined, after: Json | undefined, schema: Schema | undefined, path: Path): Change[] {
  if (before === undefined && after === undefined || isSameJson(before, after)) return []
  const shape = schema && schemaFor(schema, after ?? before)
  const inside = (key: string) => shape && schemaUnder(shape, key)
  const [left, right] = [asHolder(before, schema), asHolder(after, schema)]
  if (left && right) {
    const keys = [...new Set([...Object.keys(left), ...Object.keys(right)])].sort(compareIds)
    return keys.flatMap((key) => diffValues(left[key], right[key], inside(key), [...path, key]))
  }
  const isTuple = shape && definitionOf(shape).type === 'tuple' && Array.isArray(before) && Array.isArray(after) && before.length === after.length
  if (isTuple) return (before as readonly Json[]).flatMap((entry, i) => diffValues(entry, (after as readonly Json[])[i], inside(String(i)), [...path, String(i)]))
  return [{ path, before, after }]
}

/** What holds facts of its own. An absent map, or object of which no field need stand, is one with nothing in it. */
function asHolder(value: Json | undefined, schema: Schema | undefined): { readonly [key: string]: Json } | undefined {
  if (isObject(value)) return value
  return value === undefined && schema && isOptional(schema) && mayBeEmpty(schemaFor(schema, {})) ? {} : undefined
}

function mayBeEmpty(schema: Schema): boolean {
  const definition = definitionOf(schema)
  if (definition.type === 'record') return true
  return definition.type === 'object' && Object.values(definition.shape).every(isOptional)
}
