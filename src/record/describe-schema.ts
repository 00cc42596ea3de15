import * as z from 'zod'
import { ID_PATTERN, TERMINAL_PATTERN } from './schema.ts'
import { definitionOf, neededKeys, unwrap, type Schema } from './schema-walk.ts'

/** What a schema asks for, in words: `a number from 0 to 100000, or "unknown"`. */
export function describeSchema(schema: Schema): string {
  const inner = unwrap(schema)
  if (inner) return describeSchema(inner)
  const definition = definitionOf(schema)
  switch (definition.type) {
    case 'lazy': return 'any value'
    case 'union': return definition.options.map(describeSchema).join(', or ')
    case 'literal': return definition.values.map((value) => JSON.stringify(value)).join(' or ')
    case 'enum': return `one of ${Object.values(definition.entries).map((value) => JSON.stringify(value)).join(', ')}`
    case 'string': return describeText(schema as z.ZodString)
    case 'number': return describeNumber(schema as z.ZodNumber)
    case 'boolean': return 'true or false'
    case 'array': return `a list of ${describeSchema(definition.element)}`
    case 'tuple': return `a list of exactly ${definition.items.length}`
    case 'object': return describeObject(neededKeys(schema), definition.shape)
    case 'record': return 'an object with ids as its keys'
    default: return 'any value'
  }
}

function describeObject(needed: readonly string[], shape: Readonly<Record<string, Schema>>): string {
  return needed.length === 0 ? 'an object' : `an object such as {${needed.map((key) => `"${key}": ${sampleOf(shape[key])}`).join(', ')}}`
}

/** A value that the schema takes where it names its values, else three dots. */
function sampleOf(schema: Schema | undefined): string {
  const definition = schema && definitionOf(unwrap(schema) ?? schema)
  const example = schema && (z.globalRegistry.get(schema)?.examples as readonly unknown[] | undefined)?.[0]
  if (example !== undefined) return JSON.stringify(example)
  switch (definition?.type) {
    case 'literal': return JSON.stringify(definition.values[0])
    case 'enum': return JSON.stringify(Object.values(definition.entries)[0])
    case 'union': return sampleOf(definition.options[0])
    default: return '…'
  }
}

/** The limits put on a text or a number, as the schema library keeps them. */
interface Limit {
  readonly check: string
  readonly value?: number
  readonly inclusive?: boolean
  readonly maximum?: number
  readonly pattern?: RegExp
}

function limitsOf(schema: z.ZodString | z.ZodNumber): readonly Limit[] {
  return (schema._zod.def.checks ?? []).map((check) => check._zod.def as Limit)
}

function describeText(schema: z.ZodString): string {
  const limits = limitsOf(schema)
  const patterns = limits.map(({ pattern }) => pattern?.source)
  if (patterns.includes(ID_PATTERN.source)) return 'an id (letters, digits, _ + -, at most 40)'
  if (patterns.includes(TERMINAL_PATTERN.source)) return 'a terminal (letters, digits, + - / _, at most 20)'
  const longest = limits.find(({ check }) => check === 'max_length')
  return longest ? `a text of at most ${longest.maximum} letters` : 'a text'
}

function describeNumber(schema: z.ZodNumber): string {
  const limits = limitsOf(schema)
  const isWhole = limits.some(({ check }) => check === 'number_format') || (schema._zod.def as { format?: string }).format === 'safeint'
  const low = limits.find(({ check }) => check === 'greater_than')
  const high = limits.find(({ check }) => check === 'less_than')
  const from = low ? ` ${low.inclusive ? 'from' : 'above'} ${low.value}` : ''
  const to = high ? `${low ? ' to' : ' up to'} ${high.value}` : ''
  return `${isWhole ? 'a whole number' : 'a number'}${from}${to}`
}
