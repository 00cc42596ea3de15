import * as z from 'zod'
import { compareIds } from './compare-ids.ts'
import { isObject, type JsonObject } from './path.ts'
import { recordSchema, type KindSchema, type WiringRecord } from './schema.ts'
import { keysOf, schemaFor, schemaUnder, type Schema } from './schema-walk.ts'
import { tidy } from './tidy.ts'

/**
 * The record as its one canonical text: keys in the order of the schema, maps by id with w2 before w10, two spaces of
 * indent, a line break at the end. Parameters are in the order of their names, so that the text depends on no kind; a
 * map that may be absent is left out when it is empty.
 */
export function writeRecord(record: WiringRecord): string {
  return `${writeValue(tidy(record, canonicalSchema), canonicalSchema, '')}\n`
}

/** Stands for every kind, with parameters of which nothing is known. */
export const anyKind: KindSchema = { kind: 'any', params: z.looseObject({}) }

/** The shape of every record, whatever its part kinds. */
export const canonicalSchema: Schema = recordSchema([anyKind])

/** The value as canonical JSON, its keys in the order of the schema. */
export function writeValue(value: unknown, schema: Schema | undefined, indent: string): string {
  const inner = `${indent}  `
  const shape = schema && schemaFor(schema, value)
  if (Array.isArray(value)) {
    return block('[', value.map((entry, i) => inner + writeValue(entry, shape && schemaUnder(shape, String(i)), inner)), ']', indent)
  }
  if (!isObject(value)) return JSON.stringify(value)
  const lines = orderedKeys(value, shape).map((key) =>
    `${inner}${JSON.stringify(key)}: ${writeValue(value[key], shape && schemaUnder(shape, key), inner)}`)
  return block('{', lines, '}', indent)
}

function block(open: string, lines: readonly string[], close: string, indent: string): string {
  return lines.length === 0 ? open + close : `${open}\n${lines.join(',\n')}\n${indent}${close}`
}

function orderedKeys(value: JsonObject, shape: Schema | undefined): string[] {
  const first = new Map((shape ? keysOf(shape) : []).map((key, i) => [key, i]))
  const place = (key: string) => first.get(key) ?? first.size
  return Object.keys(value).sort((a, b) => place(a) - place(b) || compareIds(a, b))
}
