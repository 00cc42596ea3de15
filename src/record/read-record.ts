import { checkInPieces } from './check-in-pieces.ts'
import { findIdProblems, takeCensus } from './census.ts'
import { findClaimProblems } from './claim-problems.ts'
import { findFitsProblems, isInParameters } from './fits-problems.ts'
import { findLoomProblems } from './loom-problems.ts'
import { findKindProblems } from './kind-problems.ts'
import { parseJson } from './parse-json.ts'
import { findNumberProblems } from './number-problems.ts'
import type { PartKind } from './part-kind.ts'
import { isObject } from './path.ts'
import { findPositionProblems } from './position-problems.ts'
import { refuse, saidProblem, type Problem, type Refused } from './problem.ts'
import { findDoubleSizes, findReferenceProblems } from './reference-problems.ts'
import { findSameEnds } from './same-end-problems.ts'
import { FORMAT_VERSION, recordSchema, type WiringRecord } from './schema.ts'
import type { Schema } from './schema-walk.ts'
import { tidy } from './tidy.ts'
import { canonicalSchema } from './write-record.ts'

export type ReadRecord = { readonly ok: true; readonly record: WiringRecord } | Refused

/**
 * Reads a record from its text: the whole of it, or every problem that it has (the first hundred, and their count).
 * Nothing is repaired, filled in or passed over; a damaged text never gives half a record, and never throws.
 */
export function readRecord(text: string, kinds: readonly PartKind[]): ReadRecord {
  const parsed = parseJson(text)
  if (!parsed.ok) return refuse([parsed.problem])
  const problems = [...parsed.problems, ...findRecordProblems(parsed.value, kinds)]
  if (problems.length > 0) return refuse(problems)
  return { ok: true, record: tidy(parsed.value, canonicalSchema) as WiringRecord }
}

/** Everything that keeps a value from being a record: first its shape, then what its sound parts point to. */
export function findRecordProblems(document: unknown, kinds: readonly PartKind[]): Problem[] {
  const newer = findNewerVersion(document, 'loomwright-record')
  if (newer) return [newer]
  const schema = schemaOf(kinds)
  const shape = checkInPieces(document, schema)
  if (shape.isCut) return [...shape.problems]
  const census = takeCensus(document, shape.broken)
  const byName = new Map(kinds.map((kind) => [kind.kind, kind]))
  const problems = [
    ...shape.problems,
    ...findIdProblems(document),
    ...findReferenceProblems(census, byName),
    ...findDoubleSizes(census),
    ...findSameEnds(census),
    ...findNumberProblems(document),
    ...findLoomProblems(census),
    ...findFitsProblems(census),
    ...findPositionProblems(census),
    ...findKindProblems(census.sound.parts, kinds),
    ...findClaimProblems(census, schema),
  ]
  // A wrong condition inside parameters is met twice: by its kind's schema and by the record's own look at conditions.
  const met = new Set<string>()
  return problems.filter((problem) => !isInParameters(problem.path) || met.size < met.add(keyOf(problem)).size)
}

/** All that makes two problems one; the sentence would say the same, and costs more. */
function keyOf({ path, expected, received }: Problem): string {
  return [...path, expected, received].join('\0')
}

/** A file of a later version may hold anything; the only thing to say is which version it is. */
export function findNewerVersion(document: unknown, format: string): Problem | undefined {
  if (!isObject(document) || document.format !== format) return undefined
  const { version } = document
  if (typeof version !== 'number' || version <= FORMAT_VERSION) return undefined
  const said = `this file was written by a newer version of Loomwright (format ${version}); this one reads formats up to ${FORMAT_VERSION}`
  return saidProblem(['version'], `at most ${FORMAT_VERSION}`, String(version), said)
}

const schemas = new WeakMap<readonly PartKind[], Schema>()

/** One schema for each table of kinds, made when it is first asked for. */
function schemaOf(kinds: readonly PartKind[]): Schema {
  const made = schemas.get(kinds) ?? recordSchema(kinds)
  schemas.set(kinds, made)
  return made
}
