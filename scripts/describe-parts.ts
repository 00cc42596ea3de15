import * as z from 'zod'
import type { Params, PartKind } from '../src/record/index.ts'
import { partUses, type PartUse } from './part-uses.ts'

/** What a person needs to know to write a part into a record: every kind with its ends, parameters and failures. */
export function describeParts(kinds: readonly PartKind[]): string {
  const head = `# Part kinds

What can stand as \`kind\` in \`parts\` of a record. An end is written \`part:end\`; where the part carries another marking, the record
says so in \`terminals\`: \`{ "58": { "is": "in" } }\`.

Parameters stand in \`params\`. What is not marked *needed* may be left out: what is then taken is said with each, and every answer
reports it as assumed. A number, a choice or a yes or no that may be left out may also be \`"unknown"\`: you looked and could not
tell; the same is then taken. An entry that has a name (an axis, a row, a winding, a filament …) may carry its own \`fits\`.

What is called by another name on the vehicle (a door switch, a washer, a heated window) is in the
[list of uses](#what-on-the-vehicle-is-which-kind) at the end.

The exact shapes are in [record.schema.json](record.schema.json). This page is written by \`npm run schema\`.
`
  return [head, ...kinds.map(describeKind), describeUses(partUses)].join('\n')
}

/** What on the vehicle is which kind, and an example of each. */
function describeUses(uses: readonly PartUse[]): string {
  const rows = uses.map(({ id, thing, kind, how }) => `| [${thing}](#${id}) | \`${kind}\` | ${how} |`)
  return [
    '## What on the vehicle is which kind\n', 'A switch is a `control` whatever moves it; what only warms is a `resistor`, what turns a `motor`.\n',
    ['| on the vehicle | kind | how |', '| --- | --- | --- |', ...rows, ''].join('\n'),
    '## Examples of uses\n', 'Entries of `parts`, unless they say otherwise; the wires between them are the vehicle\'s own.\n',
    ...uses.map(({ id, thing, parts, more }) => `<a id="${id}"></a>\n\n**${thing}**\n\n${parts ? jsonBlock('json', parts) : jsonBlock('jsonc', more ?? {})}\n`),
  ].join('\n')
}

const jsonBlock = (language: string, value: object) => `\`\`\`${language}\n${layOut(value)}\n\`\`\``

/** Width up to which an object or a list stands on one line. */
const LINE = 130

/** JSON with whatever fits on a line on one line. */
function layOut(value: unknown, indent = ''): string {
  const flat = JSON.stringify(value, null, 1).replace(/\n */g, ' ').replaceAll('[ ', '[').replaceAll(' ]', ']')
  if (typeof value !== 'object' || value === null || (indent && indent.length + flat.length <= LINE)) return flat
  const inner = `${indent}  `
  const lines = Array.isArray(value) ? value.map((one) => inner + layOut(one, inner))
    : Object.entries(value).map(([key, one]) => `${inner}${JSON.stringify(key)}: ${layOut(one, inner)}`)
  const [open, close] = Array.isArray(value) ? '[]' : '{}'
  return `${open}\n${lines.join(',\n')}\n${indent}${close}`
}

function describeKind(kind: PartKind): string {
  const ends = endsOf(kind)
  const example = EXAMPLES[kind.kind]
  return [
    `## ${kind.kind}\n`, `${kind.plain}\n`,
    ends.length ? `Ends: ${ends.map(({ is, what }) => `\`${is}\` ${what}`).join('; ')}.\n` : 'Ends: those that its rows and resistors name.\n',
    'Parameters:\n', `${listFields(paramsOf(kind), '').join('\n')}\n`,
    ...(example ? [`For example:\n\n\`\`\`json\n${example}\n\`\`\`\n`] : []),
    `Fails: ${kind.fails(leastParams(kind)).map(({ what, fault, likelihood }) => `${what} (${likelihood}, \`${fault}\`)`).join('; ') || 'each of its contacts, burnt, open or stuck'}.\n`,
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
  module: `{
  "ignition": {
    "kind": "module", "title": "Electronic ignition",
    "params": {
      "inputs": { "fed": { "from": "15", "to": "case", "ohm": 240 }, "turns": {} },
      "contacts": { "transistor": { "from": "1", "to": "case", "ohm": 0.2 } },
      "states": {
        "rest": { "next": [{ "when": ["fed", "turns"], "to": "fires" }] },
        "fires": { "closed": ["transistor"], "next": [{ "unless": ["fed"], "to": "rest" }, { "unless": ["turns"], "to": "rest" }] }
      }
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
