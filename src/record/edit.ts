import * as z from 'zod'
import { DEEPEST_NESTING } from './parse-json.ts'
import type { PartKind } from './part-kind.ts'
import { isInherited, isObject, isSameJson, showPath, valueAt, type Json, type Path } from './path.ts'
import { showValue, type Problem } from './problem.ts'
import { findRecordProblems } from './read-record.ts'
import type { WiringRecord } from './schema.ts'
import { schemaFor, schemaUnder, type Schema } from './schema-walk.ts'
import { isNeedless, tidy } from './tidy.ts'
import { canonicalSchema } from './write-record.ts'

/** One edit to the record. Put adds what is not there (into a list, before the entry at that position), remove takes away, set changes. */
export type Edit =
  | { readonly kind: 'put'; readonly path: Path; readonly value: Json }
  | { readonly kind: 'remove'; readonly path: Path }
  | { readonly kind: 'set'; readonly path: Path; readonly from: Json; readonly to: Json }

const path = z.array(z.string()).min(1).max(40)
const json = z.json() as unknown as z.ZodType<Json>

/** The shape of an edit that comes from outside. */
export const editSchema = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('put'), path, value: json }),
  z.strictObject({ kind: z.literal('remove'), path }),
  z.strictObject({ kind: z.literal('set'), path, from: json, to: json }),
])

/** Why an edit was refused; where the edited record would be wrong, with all that would be wrong in it. */
export interface Refusal { readonly edit: Edit; readonly sentence: string; readonly problems: readonly Problem[] }

/** The edited record and the edit that takes it back, or the reason it was refused. */
export type Applied =
  | { readonly ok: true; readonly record: WiringRecord; readonly undo: Edit }
  | { readonly ok: false; readonly refusal: Refusal }

/** The record after all edits and the edits that take it back, in their order, or the reason the first bad one was refused. */
export type AppliedAll =
  | { readonly ok: true; readonly record: WiringRecord; readonly undo: readonly Edit[] }
  | { readonly ok: false; readonly refusal: Refusal }

/** Applies one edit if it finds what it expects and leaves a sound record. Undoing restores the text byte for byte. */
export function applyEdit(record: WiringRecord, edit: Edit, kinds: readonly PartKind[]): Applied {
  const applied = applyEdits(record, [edit], kinds)
  return applied.ok ? { ok: true, record: applied.record, undo: applied.undo[0] } : applied
}

/** Applies all edits or none. The record need be sound only after the last, so that a part and its wires may go together. */
export function applyEdits(record: WiringRecord, edits: readonly Edit[], kinds: readonly PartKind[]): AppliedAll {
  let document: Json = record as unknown as Json
  const undo: Edit[] = []
  for (const edit of edits) {
    const step = takeStep(document, edit)
    if (!step.ok) return { ok: false, refusal: { edit, sentence: `${showPath(edit.path)}: ${step.why}.`, problems: [] } }
    document = step.document
    undo.unshift(step.undo)
  }
  const edited = tidy(document, canonicalSchema) as WiringRecord
  const problems = findRecordProblems(edited, kinds)
  if (problems.length === 0) return { ok: true, record: edited, undo }
  const more = problems.length > 1 ? ` (and ${problems.length - 1} more)` : ''
  return { ok: false, refusal: { edit: edits[edits.length - 1], sentence: `the record would be wrong: ${problems[0].sentence}${more}`, problems } }
}

/** Applies an edit that cannot be refused. */
export function mustApplyEdit(record: WiringRecord, edit: Edit, kinds: readonly PartKind[]): WiringRecord {
  return mustApplyEdits(record, [edit], kinds)
}

export function mustApplyEdits(record: WiringRecord, edits: readonly Edit[], kinds: readonly PartKind[]): WiringRecord {
  const applied = applyEdits(record, edits, kinds)
  if (!applied.ok) throw new RangeError(`refused in record ${record.id}: ${applied.refusal.sentence}`)
  return applied.record
}

type Step = { readonly ok: true; readonly document: Json; readonly undo: Edit } | { readonly ok: false; readonly why: string }

/** One edit of a bare document, whatever becomes of its soundness. */
export function takeStep(document: Json, edit: Edit): Step {
  if (edit.path.length === 0) return { ok: false, why: 'the whole record cannot be edited at once' }
  const value = edit.kind === 'put' ? edit.value : edit.kind === 'set' ? edit.to : null
  if (edit.path.length + depthOf(value) > DEEPEST_NESTING) return { ok: false, why: `it would be deeper than ${DEEPEST_NESTING} levels` }
  const name = [...edit.path, ...listKeys(value)].find(isInherited)
  if (name !== undefined) return { ok: false, why: `${name} cannot be used as a name` }
  switch (edit.kind) {
    case 'put': return put(document, edit.path, edit.value)
    case 'remove': return remove(document, edit.path)
    case 'set': return set(document, edit)
  }
}

function put(document: Json, at: Path, value: Json): Step {
  const parent = at.slice(0, -1)
  const clean = tidyAt(document, at, value)
  if (isNeedless(clean, schemaAt(document, at))) return { ok: false, why: 'an empty map says nothing; leave it out' }
  const grown = growTo(document, parent)
  const holder = grown === undefined ? undefined : valueAt(grown, parent)
  if (grown === undefined || holder === undefined) return { ok: false, why: `nothing is at ${showPath(parent)} to put it in` }
  const isTaken = isObject(holder) && Object.hasOwn(holder, at[at.length - 1])
  if (isTaken) return { ok: false, why: 'something is there already' }
  if (!isObject(holder) && !isPlaceFor(holder, at[at.length - 1])) return { ok: false, why: `${showPath(parent)} holds nothing of that name` }
  return { ok: true, document: changeIn(grown, at, clean, 'put'), undo: { kind: 'remove', path: at } }
}

function remove(document: Json, at: Path): Step {
  const value = valueAt(document, at)
  if (value === undefined || at[at.length - 1] === 'length') return { ok: false, why: 'nothing is there to remove' }
  return { ok: true, document: changeIn(document, at, undefined, 'remove'), undo: { kind: 'put', path: at, value } }
}

function set(document: Json, { path: at, from, to }: Edit & { kind: 'set' }): Step {
  const value = valueAt(document, at)
  if (value === undefined || at[at.length - 1] === 'length') return { ok: false, why: 'nothing is there to set; put it' }
  if (!isSameJson(value, from)) return { ok: false, why: `it should be ${showValue(from)}, but has become ${showValue(value)}` }
  const clean = tidyAt(document, at, to)
  if (isNeedless(clean, schemaAt(document, at))) return { ok: false, why: 'an empty map says nothing; remove it' }
  return { ok: true, document: changeIn(document, at, clean, 'set'), undo: { kind: 'set', path: at, from: clean, to: value } }
}

/** The document with empty maps down to the path, where the schema lets them stand and where they may vanish again; undefined where it does not. */
function growTo(document: Json, at: Path): Json | undefined {
  let grown = document
  for (let i = 1; i <= at.length; i++) {
    const here = at.slice(0, i)
    if (valueAt(grown, here) !== undefined) continue
    const schema = schemaAt(grown, here)
    if (!schema || !isNeedless({}, schema)) return undefined
    grown = changeIn(grown, here, {}, 'put')
  }
  return grown
}

/** A copy of the document with one value changed at the path; everything beside the path is shared. */
function changeIn(document: Json, at: Path, value: Json | undefined, how: Edit['kind']): Json {
  const [key, ...rest] = at
  if (Array.isArray(document)) {
    const list: Json[] = [...document as readonly Json[]]
    const i = Number(key)
    if (rest.length > 0) list[i] = changeIn(list[i], rest, value, how)
    else list.splice(i, how === 'put' ? 0 : 1, ...value === undefined ? [] : [value])
    return list
  }
  const object = document as { readonly [key: string]: Json }
  if (rest.length > 0) return { ...object, [key]: changeIn(object[key], rest, value, how) }
  if (value !== undefined) return { ...object, [key]: value }
  const { [key]: _gone, ...others } = object
  return others
}

function isPlaceFor(holder: Json, key: string): boolean {
  return Array.isArray(holder) && /^(0|[1-9]\d*)$/.test(key) && Number(key) <= holder.length
}

function tidyAt(document: Json, at: Path, value: Json): Json {
  return tidy(value, schemaAt(document, at)) as Json
}

/** The schema of the record for the place at the path, whether or not anything stands there. */
function schemaAt(document: Json, at: Path): Schema | undefined {
  let schema: Schema | undefined = canonicalSchema
  for (let i = 0; i < at.length && schema; i++) {
    const here = valueAt(document, at.slice(0, i))
    schema = schemaUnder(schemaFor(schema, here ?? {}), at[i])
  }
  return schema
}

function depthOf(value: Json): number {
  return typeof value === 'object' && value !== null ? 1 + Math.max(0, ...Object.values(value).map(depthOf)) : 0
}

function listKeys(value: Json): string[] {
  if (Array.isArray(value)) return (value as readonly Json[]).flatMap(listKeys)
  return isObject(value) ? Object.entries(value).flatMap(([key, inner]) => [key, ...listKeys(inner)]) : []
}
