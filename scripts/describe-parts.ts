import * as z from 'zod'
import type { Params, PartKind } from '../src/record/index.ts'

/** What a person needs to know to write a part into a record: every kind with its ends, parameters and failures. */
export function describeParts(kinds: readonly PartKind[]): string {
  const head = `# Part kinds

What can stand as \`kind\` in \`parts\` of a record. An end is written \`part:end\`; where the part carries another marking, the record
says so in \`terminals\`: \`{ "58": { "is": "in" } }\`.

Parameters stand in \`params\`. What is not marked *needed* may be left out: what is then taken is said with each, and every answer
reports it as assumed. A number, a choice or a yes or no that may be left out may also be \`"unknown"\`: you looked and could not
tell; the same is then taken. An entry that has a name (an axis, a row, a winding, a filament …) may carry its own \`fits\`.

The exact shapes are in [record.schema.json](record.schema.json). This page is written by \`npm run schema\`.
`
  return `${[head, ...kinds.map(describeKind)].join('\n')}`
}

function describeKind(kind: PartKind): string {
  const ends = endsOf(kind)
  const example = EXAMPLES[kind.kind]
  return [
    `## ${kind.kind}\n`, `${kind.plain}\n`,
    ends.length ? `Ends: ${ends.map(({ is, what }) => `\`${is}\` ${what}`).join('; ')}.\n` : 'Ends: those that its rows and resistors name.\n',
    'Parameters:\n', `${listFields(paramsOf(kind), '').join('\n')}\n`,
    ...(example ? [`For example:\n\n\`\`\`json\n${example}\n\`\`\`\n`] : []),
    `Fails: ${kind.fails(leastParams(kind)).map(({ what, fault }) => `${what} (\`${fault}\`)`).join('; ') || 'each of its contacts, burnt or open'}.\n`,
  ].join('\n')
}

const leastParams = ({ kind }: PartKind): Params => (kind === 'control' ? { axes: {}, rows: {} } : {})

function endsOf(kind: PartKind) {
  return kind.terminals(leastParams(kind))
}

/** As much of JSON Schema as parameters use. */
interface Field {
  readonly type?: string | readonly string[]
  readonly description?: string
  readonly const?: unknown
  readonly enum?: readonly string[]
  readonly anyOf?: readonly Field[]
  readonly minimum?: number
  readonly exclusiveMinimum?: number
  readonly maximum?: number
  readonly items?: Field
  readonly minItems?: number
  readonly prefixItems?: readonly Field[]
  readonly properties?: Readonly<Record<string, Field>>
  readonly required?: readonly string[]
  readonly propertyNames?: Field
  readonly additionalProperties?: Field
}

const paramsOf = ({ params }: PartKind) => z.toJSONSchema(params, { io: 'input' }) as Field

/** A line for each field of an object, with what is nested in it below and further in; the same nest is shown once. */
function listFields({ properties = {}, required = [] }: Field, indent: string): string[] {
  const shown = new Map<string, string>()
  return Object.entries(properties).flatMap(([name, field]) => {
    const nested = listFields(nestedIn(field), `${indent}  `)
    const twin = nested.length > 0 ? shown.get(nested.join()) : undefined
    shown.set(nested.join(), twin ?? name)
    const takes = [...(required.includes(name) ? ['*needed*'] : []), wordsFor(field), ...unknownOf(field, required.includes(name))]
    const line = `${indent}- \`${name}\` (${takes.join('; ')}${twin ? `, as in \`${twin}\`` : ''}): ${field.description}`
    return twin ? [line] : [line, ...nested]
  })
}

const isUnknown = (field: Field) => field.const === 'unknown'

/** The fields of an object, or of each entry of a map. */
function nestedIn(field: Field): Field {
  return field.properties ? field : entryOf(field) ?? {}
}

const entryOf = ({ additionalProperties }: Field) => (typeof additionalProperties === 'object' ? additionalProperties : undefined)

/** Whether a field may be unknown, where the head of the page leads to expect the other. */
function unknownOf(field: Field, isNeeded: boolean): string[] {
  const isExpected = !isNeeded && /^(number|whole number|`)/.test(wordsFor(field))
  const mayBe = field.anyOf?.some(isUnknown) === true
  return mayBe === isExpected ? [] : [isExpected ? 'not `"unknown"`' : 'or `"unknown"`']
}

/** What a field takes, in words. */
function wordsFor(field: Field): string {
  if (field.anyOf) return field.anyOf.filter((one) => !isUnknown(one)).map(wordsFor).join(' or ')
  if (typeof field.type === 'object') return field.type.map((type) => wordsFor({ type })).join(' or ')
  if (field.enum) return listed(field.enum.map((choice) => `\`${choice}\``))
  switch (field.type) {
    case 'boolean': return '`true` or `false`'
    case 'integer': return `whole number${limits(field)}`
    case 'number': return `number${limits(field)}`
    case 'array': return wordsForList(field)
    case 'object': return wordsForMap(field)
    default: return 'text'
  }
}

function limits({ exclusiveMinimum, minimum, maximum }: Field): string {
  const from = exclusiveMinimum !== undefined ? ` above ${exclusiveMinimum}` : minimum !== undefined ? ` from ${minimum}` : ''
  // The schema library bounds whole numbers by what a double counts.
  return maximum === undefined || maximum === Number.MAX_SAFE_INTEGER ? from : `${from} to ${maximum}`
}

function wordsForList({ items, prefixItems, minItems }: Field): string {
  if (prefixItems) return `[${prefixItems.map(wordsFor).join(', ')}]`
  const least = minItems !== undefined && minItems > 1 ? `, at least ${minItems}` : ''
  return `list of ${items?.type === 'array' ? wordsFor(items) : `${wordsFor(items ?? {})}s`}${least}`
}

function wordsForMap(field: Field): string {
  if (field.properties) return 'object'
  const entry = entryOf(field)
  const keys = field.propertyNames?.enum ? `by ${listed(field.propertyNames.enum.map((key) => `\`${key}\``))}` : 'by name'
  return entry?.properties ? `objects ${keys}` : `${wordsFor(entry ?? {})} ${keys}`
}

const listed = (words: readonly string[]) => (words.length < 2 ? words.join() : `${words.slice(0, -1).join(', ')} or ${words.at(-1)}`)

/** For kinds whose parameters are nested: entries of `parts`. */
const EXAMPLES: Readonly<Record<string, string>> = {
  control: `{
  "lights": {
    "kind": "control", "title": "Light switch with dimmer",
    "params": {
      "axes": {
        "lever": { "positions": ["off", "side", "head"], "rest": "off", "movedBy": "driver" },
        "knob": { "range": { "from": 0, "to": 100, "unit": "%" }, "rest": 100 }
      },
      "rows": {
        "side": { "when": { "lever": ["side", "head"] }, "joins": ["30", "58"] },
        "head": { "when": { "lever": ["head"] }, "joins": ["30", "56"], "ratingA": 15 }
      },
      "resistors": { "dimmer": { "between": ["58", "58d"], "axis": "knob", "ohmAt": [[0, 25], [100, 0]] } }
    }
  }
}`,
  electromagnet: `{
  "solenoid": {
    "kind": "electromagnet", "title": "Starter solenoid",
    "params": {
      "windings": {
        "pull": { "from": "50", "to": "M", "ohm": 0.3, "turns": 200 },
        "hold": { "from": "50", "to": "case", "ohm": 1.1, "turns": 200 }
      },
      "contacts": { "main": { "from": "30", "to": "M", "ohm": 0.0005 } },
      "pullAt": 4000, "releaseAt": 1000, "pullMs": 30
    }
  }
}`,
}
