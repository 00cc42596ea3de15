import { compareIds } from './compare-ids.ts'
import { diffRecords, editsBetween, toEdit, type Change } from './diff-records.ts'
import { applyEdits, takeStep, type Edit, type Refusal } from './edit.ts'
import type { Envelope } from './envelope.ts'
import { mintId } from './mint-id.ts'
import type { PartKind } from './part-kind.ts'
import { isSameJson, type Json, type Path } from './path.ts'
import type { Problem } from './problem.ts'
import { findRecordProblems } from './read-record.ts'
import type { Claim, WiringRecord } from './schema.ts'
import { tidy } from './tidy.ts'
import { canonicalSchema } from './write-record.ts'

/** A fact on which devices differ: it stays as it was, and each device's word is a claim for a person to decide. */
export interface Undecided { readonly path: Path; readonly claims: readonly string[] }

export type Merged =
  | { readonly ok: true; readonly record: WiringRecord; readonly edits: readonly Edit[]; readonly undecided: readonly Undecided[] }
  | { readonly ok: false; readonly refusals: readonly { readonly device: string; readonly refusal: Refusal }[] }

/** What one device has made of the record that all of them started from. */
export interface Branch {
  readonly device: string
  /** The last running number of the device, from which the ids of its claims are made. */
  readonly sequence: number
  readonly record: WiringRecord
  readonly by?: string
  readonly when?: string
}

/**
 * Merges what several devices did to one record, in whatever order it arrives. Envelopes of one device apply in their
 * sequence, and one that arrives twice counts once. Edits of different facts all stand; one fact set in two ways stays
 * as it was and becomes claims. Refused if a device's own edits do not apply to the base.
 */
export function mergeEdits(base: WiringRecord, envelopes: readonly Envelope[], kinds: readonly PartKind[]): Merged {
  const devices = [...new Set(envelopes.map(({ device }) => device))].sort(compareIds)
  const branches: Branch[] = []
  const refusals: { device: string, refusal: Refusal }[] = []
  for (const device of devices) {
    const own = listOnce(envelopes.filter((envelope) => envelope.device === device))
    const applied = applyEdits(base, own.flatMap(({ edits }) => edits), kinds)
    const { sequence, by, when } = own[own.length - 1]
    if (applied.ok) branches.push({ device, sequence, record: applied.record, by, when })
    else refusals.push({ device, refusal: applied.refusal })
  }
  return refusals.length > 0 ? { ok: false, refusals } : mergeBranches(base, branches, kinds)
}

function listOnce(envelopes: readonly Envelope[]): Envelope[] {
  const bySequence = new Map<number, Envelope>()
  for (const envelope of envelopes) {
    const other = bySequence.get(envelope.sequence)
    if (other && !isSameJson(other, envelope)) {
      throw new RangeError(`device ${envelope.device} has two different envelopes of sequence ${envelope.sequence}`)
    }
    bySequence.set(envelope.sequence, envelope)
  }
  return [...bySequence.values()].sort((a, b) => a.sequence - b.sequence)
}

interface OwnChange extends Change { readonly branch: Branch }

/** Merges records that have all grown from the base. */
export function mergeBranches(base: WiringRecord, branches: readonly Branch[], kinds: readonly PartKind[]): Merged & { ok: true } {
  const sorted = [...branches].sort((a, b) => compareIds(a.device, b.device))
  const changes = sorted.flatMap((branch) => diffRecords(base, branch.record).map((change): OwnChange => ({ ...change, branch })))
  const facts = gatherFacts(changes)
  const held = new Set(facts.filter(isDisputed))
  for (;;) {
    const record = build(base, facts.filter((fact) => !held.has(fact)))
    const problems = findRecordProblems(record, kinds)
    if (problems.length === 0) return finish(base, record, [...held])
    const more = facts.filter((fact) => !held.has(fact) && isToBlame(fact, problems))
    // Where nothing single is to blame, nothing is changed: the base is sound.
    for (const fact of more.length > 0 ? more : facts) held.add(fact)
  }
}

/** Changes of one fact by all devices: the same path, or one above the other. */
interface Fact { readonly path: Path; readonly changes: OwnChange[] }

function gatherFacts(changes: readonly OwnChange[]): Fact[] {
  const facts: Fact[] = []
  const sorted = [...changes].sort((a, b) => a.path.length - b.path.length || comparePaths(a.path, b.path) || compareIds(a.branch.device, b.branch.device))
  const byPath = new Map<string, Fact>()
  for (const change of sorted) {
    const path = factOf(change.path)
    const above = path.map((_, i) => byPath.get(JSON.stringify(path.slice(0, i + 1)))).find((fact) => fact !== undefined)
    if (above) above.changes.push(change)
    else {
      const fact = { path, changes: [change] }
      byPath.set(JSON.stringify(path), fact)
      facts.push(fact)
    }
  }
  return facts
}

const SIZES = ['sizeMm2', 'sizeAwg', 'sizeStrands', 'copperDiameterMm']

/** The size of a wire is one fact, however it is given. */
function factOf(path: Path): Path {
  return path[0] === 'wires' && path.length === 3 && SIZES.includes(path[2]) ? ['wires', path[1], 'size'] : path
}

/** Devices agree where all that touch the fact made the same of it. */
function isDisputed({ changes }: Fact): boolean {
  const devices = [...new Set(changes.map(({ branch }) => branch))]
  const made = devices.map((branch) => changes.filter((change) => change.branch === branch).map(({ path, after }) => [path, after ?? null, after === undefined]))
  return made.some((one) => !isSameJson(one, made[0]))
}

/** A change of what a problem names, or the removal of a thing, which may be missed elsewhere. */
function isToBlame({ path, changes }: Fact, problems: readonly Problem[]): boolean {
  const isNamed = problems.some((problem) => problem.path[0] === path[0] && problem.path[1] === path[1])
  return isNamed || path.length === 2 && changes.some(({ after }) => after === undefined)
}

function build(base: WiringRecord, facts: readonly Fact[]): WiringRecord {
  let document = base as unknown as Json
  const done = new Set<string>()
  for (const change of facts.flatMap(({ changes }) => changes)) {
    const key = JSON.stringify(change.path)
    if (done.has(key)) continue
    done.add(key)
    const step = takeStep(document, toEdit(change))
    if (!step.ok) throw new RangeError(`cannot merge at ${change.path.join('.')}: ${step.why}`)
    document = step.document
  }
  return tidy(document, canonicalSchema) as WiringRecord
}

function finish(base: WiringRecord, merged: WiringRecord, held: readonly Fact[]): Merged & { ok: true } {
  const claims: { [id: string]: Claim } = { ...merged.claims }
  const undecided = [...held].sort((a, b) => comparePaths(a.path, b.path)).map((fact): Undecided => ({
    path: fact.changes[0].path,
    claims: fact.changes.map((change) => addClaim(claims, change)),
  }))
  const record = held.length === 0 ? merged : { ...merged, claims }
  return { ok: true, record, edits: editsBetween(base, record), undecided }
}

/** What a device says of a fact, `null` where it says that there is none. */
function addClaim(claims: { [id: string]: Claim }, { path, after, branch: { device, sequence, by, when } }: OwnChange): string {
  let n = 1
  while (Object.hasOwn(claims, mintId(`claim${n}`, device, sequence))) n++
  const id = mintId(`claim${n}`, device, sequence)
  claims[id] = { about: path, says: after ?? null, how: 'assumed', source: `edit on device ${device}`, ...by !== undefined && { by }, ...when !== undefined && { when } }
  return id
}

function comparePaths(a: Path, b: Path): number {
  for (let i = 0; i < a.length && i < b.length; i++) {
    const order = compareIds(a[i], b[i])
    if (order !== 0) return order
  }
  return a.length - b.length
}
