import * as z from 'zod'
import { isObject } from './path.ts'

export type Schema = z.core.$ZodType
type Definition = z.core.$ZodTypes['_zod']['def']

export function definitionOf(schema: Schema): Definition {
  return (schema as z.core.$ZodTypes)._zod.def
}

export function isOptional(schema: Schema): boolean {
  return schema._zod.optin === 'optional'
}

/** What a wrapper (optional, read-only, …) is laid around; undefined for a schema that speaks for itself. */
export function unwrap(schema: Schema): Schema | undefined {
  const definition = definitionOf(schema)
  switch (definition.type) {
    case 'optional':
    case 'nullable':
    case 'nonoptional':
    case 'readonly':
    case 'default':
    case 'prefault':
    case 'catch': return definition.innerType
    case 'pipe': return definition.in
    default: return undefined
  }
}

/** The schema that speaks of this value: wrappers taken off, and of a choice the branch of the value's own type. */
export function schemaFor(schema: Schema, value: unknown): Schema {
  const inner = unwrap(schema)
  if (inner) return schemaFor(inner, value)
  const definition = definitionOf(schema)
  switch (definition.type) {
    case 'lazy': return schemaFor(definition.getter(), value)
    case 'union': return schemaFor(definition.options.find((option) => suits(option, value)) ?? definition.options[0], value)
    default: return schema
  }
}

/** The schema of what stands under a key of an object, a map or a list; undefined where the schema does not say. */
export function schemaUnder(schema: Schema, key: string): Schema | undefined {
  const definition = definitionOf(schema)
  switch (definition.type) {
    case 'object': return Object.hasOwn(definition.shape, key) ? definition.shape[key] : undefined
    case 'record': return definition.valueType
    case 'array': return definition.element
    case 'tuple': return definition.items[Number(key)]
    default: return undefined
  }
}

/** The keys of an object in the order in which they are written; none for maps, whose keys are ids. */
export function keysOf(schema: Schema): readonly string[] {
  const definition = definitionOf(schema)
  return definition.type === 'object' ? Object.keys(definition.shape) : []
}

/** Of those the ones that must be there. */
export function neededKeys(schema: Schema): readonly string[] {
  const definition = definitionOf(schema)
  return definition.type === 'object' ? Object.keys(definition.shape).filter((key) => !isOptional(definition.shape[key])) : []
}

/** The choices of a choice; any other schema is its own only one. */
export function optionsOf(schema: Schema): readonly Schema[] {
  const inner = unwrap(schema)
  if (inner) return optionsOf(inner)
  const definition = definitionOf(schema)
  return definition.type === 'union' ? definition.options : [schema]
}

function suits(schema: Schema, value: unknown): boolean {
  const definition = definitionOf(schemaFor(schema, value))
  switch (definition.type) {
    case 'object': return isObject(value) && Object.entries(definition.shape).every(([key, field]) => agrees(field, value[key]))
    case 'record': return isObject(value)
    case 'array':
    case 'tuple': return Array.isArray(value)
    case 'literal':
    case 'enum': return schema._zod.values?.has(value as string) ?? false
    default: return definition.type === typeof value
  }
}

/** False only for a literal, such as a part's kind, that is another one. */
function agrees(field: Schema, value: unknown): boolean {
  return definitionOf(field).type !== 'literal' || suits(field, value)
}
