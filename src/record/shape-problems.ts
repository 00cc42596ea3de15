import * as z from 'zod'
import { describeSchema } from './describe-schema.ts'
import { countSlips, nearest } from './nearest.ts'
import { showName, valueAt, type Path } from './path.ts'
import { makeProblem, saidProblem, showValue, type Problem } from './problem.ts'
import { keysOf, neededKeys, optionsOf, schemaFor, schemaUnder, type Schema } from './schema-walk.ts'

/** What is wrong with a document's shape, and the paths at which it cannot be relied on; a key too many does no harm there. */
export interface CheckedShape { readonly problems: readonly Problem[]; readonly broken: readonly Path[] }

/** Everything in which a document departs from a schema, in our own words. */
export function checkShape(document: unknown, schema: Schema): CheckedShape {
  const issues = z.safeParse(schema, document).error?.issues ?? []
  return {
    problems: issues.flatMap((issue) => explainIssue({ document, schema }, issue, [])),
    broken: issues.filter(({ code }) => code !== 'unrecognized_keys').map(({ path }) => path.map(String)),
  }
}

interface Subject { readonly document: unknown; readonly schema: Schema }

function explainIssue(subject: Subject, issue: z.core.$ZodIssue, above: Path): Problem[] {
  const path = [...above, ...issue.path.map(String)]
  const value = valueAt(subject.document, path)
  switch (issue.code) {
    case 'unrecognized_keys': return issue.keys.map((key) => unknownKey(subject, path, key))
    case 'invalid_key': return [makeProblem(path, describeKey(issue), showValue(path.at(-1)))]
    case 'invalid_union': return explainUnion(subject, issue, path)
    case 'custom': return [saidProblem(path, issue.message, showValue(value), issue.message)]
    case 'too_small':
    case 'too_big': return [makeProblem(path, describeLimit(issue) ?? expectedAt(subject, path), showValue(value))]
    default: return [wrongValue(path, expectedAt(subject, path), value, choicesOf(issue))]
  }
}

function wrongValue(path: Path, expected: string, value: unknown, choices: readonly string[]): Problem {
  return makeProblem(path, expected, showValue(value), typeof value === 'string' ? () => nearest(value, choices) : undefined)
}

function unknownKey({ document, schema }: Subject, path: Path, key: string): Problem {
  const names = keysOf(shapeAt(schema, document, path) ?? schema)
  const expected = names.length === 0 ? 'no such key' : `one of ${names.join(', ')}`
  return saidProblem([...path, key], expected, showName(key), `${showName(key)} is not known here`, () => nearest(key, names), () => names)
}

/** A branch that fits the type of the value says more than "none of these". */
function explainUnion(subject: Subject, issue: z.core.$ZodIssueInvalidUnion, path: Path): Problem[] {
  if (issue.errors.length === 0) return [unknownKind(subject, issue, path)]
  const deeper = issue.errors.find((branch) => branch.length > 0 && branch.every(({ path: inner, code }) => inner.length > 0 || code === 'unrecognized_keys'))
  if (deeper) return deeper.flatMap((inner) => explainIssue(subject, inner, path))
  const choices = issue.errors.flatMap((branch) => branch.flatMap(choicesOf))
  const value = valueAt(subject.document, path)
  if (typeof value !== 'string') return [wrongValue(path, expectedAt(subject, path), value, choices)]
  return [makeProblem(path, expectedAt(subject, path), showValue(value), () => nearestIn(value, choices, schemaAt(subject, path)))]
}

/** A choice a slip away; else, for `"blue"` where `{"base": "red"}` may stand, that object with the value in it; else the nearest choice. */
function nearestIn(value: string, choices: readonly string[], schema: Schema | undefined): string | undefined {
  const choice = nearest(value, choices)
  return choice !== undefined && countSlips(value.toLowerCase(), choice) <= 1 ? choice : wrapIn(schema, value) ?? choice
}

function wrapIn(schema: Schema | undefined, value: string): string | undefined {
  for (const option of schema ? optionsOf(schema) : []) {
    const [key, ...more] = neededKeys(option)
    if (key !== undefined && more.length === 0 && z.safeParse(option, { [key]: value }).success) return `{"${key}": ${JSON.stringify(value)}}`
  }
  return undefined
}

function unknownKind({ document }: Subject, issue: z.core.$ZodIssueInvalidUnion, path: Path): Problem {
  const options = (issue as { options?: readonly unknown[] }).options?.map(String) ?? []
  return wrongValue(path, `one of ${options.join(', ')}`, valueAt(document, path), options)
}

function choicesOf(issue: z.core.$ZodIssue): readonly string[] {
  return issue.code === 'invalid_value' ? issue.values.map(String) : []
}

function describeKey(issue: z.core.$ZodIssueInvalidKey): string {
  const format = issue.issues.find((inner) => inner.code === 'invalid_format')
  const pattern = format && 'pattern' in format ? String(format.pattern) : ''
  return pattern.includes('/') && pattern.includes('{0,19}') ? 'a terminal such as 58 or D+' : 'an id such as w12 (letters, digits, _ + -, at most 40)'
}

function describeLimit(issue: z.core.$ZodIssueTooSmall | z.core.$ZodIssueTooBig): string | undefined {
  if (issue.origin !== 'array') return undefined
  return issue.code === 'too_small' ? `a list of at least ${issue.minimum}` : `a list of at most ${issue.maximum}`
}

function expectedAt(subject: Subject, path: Path): string {
  const here = schemaAt(subject, path)
  return here ? describeSchema(here) : 'another value'
}

/** All that may stand at the path, choices included. */
function schemaAt({ document, schema }: Subject, path: Path): Schema | undefined {
  const above = shapeAt(schema, document, path.slice(0, -1))
  return path.length === 0 ? schema : above && schemaUnder(above, path[path.length - 1])
}

/** The schema that speaks of what stands at the path, following the document's own values through every choice. */
function shapeAt(schema: Schema, document: unknown, path: Path): Schema | undefined {
  let shape: Schema | undefined = schemaFor(schema, document)
  path.forEach((key, i) => {
    const under: Schema | undefined = shape && schemaUnder(shape, key)
    shape = under && schemaFor(under, valueAt(document, path.slice(0, i + 1)))
  })
  return shape
}
