import { inIdOrder } from './compare-ids.ts'
import { mergeBranches, type Undecided } from './merge-edits.ts'
import type { Job } from './job-schema.ts'
import type { PartKind } from './part-kind.ts'
import { isObject, isSameJson, type Json } from './path.ts'

/** One device's copy of a job, with the device's name and its last running number. */
export interface JobBranch { readonly device: string; readonly sequence: number; readonly job: Job }

/** The merged job, the facts of its record that a person must decide, and the fields of the job on which the copies differ. */
export interface MergedJob { readonly job: Job; readonly undecided: readonly Undecided[]; readonly differing: readonly string[] }

/**
 * Merges copies of a job that have grown from one base. Survey entries, readings, photos and ticks are only ever added,
 * so theirs is a union; the record merges fact by fact; a field or an alteration changed in two ways stays as it was.
 */
export function mergeJobs(base: Job, branches: readonly JobBranch[], kinds: readonly PartKind[]): MergedJob {
  const jobs = branches.map(({ job }) => job)
  const { record, undecided } = mergeBranches(base.record, branches.map(({ device, sequence, job }) => ({ device, sequence, record: job.record })), kinds)
  const fields = (['title', 'about', 'base', 'vehicle'] as const).map((key) => ({ key, ...pick(base[key], jobs.map((job) => job[key])) }))
  const alterations = mergeAlterations(base, jobs)
  const job: Job = {
    ...base,
    ...Object.fromEntries(fields.map(({ key, value }) => [key, value])),
    record,
    alterations: alterations.merged,
    ...Object.fromEntries((['survey', 'readings', 'photos', 'progress'] as const).map((key) => [key, unite<unknown>([base, ...jobs].map((one) => one[key]))])),
  }
  const differing = [...fields.filter(({ differs }) => differs).map(({ key }) => key), ...alterations.differing]
  return { job: withoutAbsent(job), undecided, differing }
}

/** What the copies made of a value: the base's where none or two of them changed it in different ways. */
function pick<T>(base: T, copies: readonly T[]): { readonly value: T; readonly differs: boolean } {
  const changed = copies.filter((copy) => !isSameJson(copy, base))
  if (changed.length === 0) return { value: base, differs: false }
  const agree = changed.every((copy) => isSameJson(copy, changed[0]))
  return agree ? { value: changed[0], differs: false } : { value: base, differs: true }
}

function mergeAlterations(base: Job, jobs: readonly Job[]): { readonly merged: Job['alterations']; readonly differing: readonly string[] } {
  const ids = new Set([base, ...jobs].flatMap(({ alterations }) => Object.keys(alterations ?? {})))
  const picked = [...ids].map((id) => ({ id, ...pick(base.alterations?.[id], jobs.map(({ alterations }) => alterations?.[id])) }))
  const kept = picked.flatMap(({ id, value }) => value ? [[id, value] as const] : [])
  return { merged: kept.length === 0 ? undefined : Object.fromEntries(kept), differing: picked.filter(({ differs }) => differs).map(({ id }) => `alterations.${id}`) }
}

/** Every entry of every copy. Should two copies hold different entries under one id, both stay, in an order that no copy decides. */
function unite<T>(maps: readonly (Readonly<Record<string, T>> | undefined)[]): Record<string, T> | undefined {
  const byId = new Map<string, Map<string, T>>()
  for (const [id, entry] of maps.flatMap((map) => inIdOrder(map))) {
    const versions = byId.get(id) ?? new Map<string, T>()
    byId.set(id, versions.set(stableText(entry as unknown as Json), entry))
  }
  const united: { [id: string]: T } = {}
  for (const [id, versions] of byId) united[id] = firstOf(versions)[1]
  for (const [id, versions] of byId) {
    const [first] = firstOf(versions)
    for (const [text, entry] of versions) if (text !== first) united[`${id.slice(0, 31)}-${hash(text)}`] = entry
  }
  return Object.keys(united).length === 0 ? undefined : united
}

function firstOf<T>(versions: ReadonlyMap<string, T>): [string, T] {
  return [...versions].sort(([a], [b]) => a < b ? -1 : 1)[0]
}

function stableText(value: Json): string {
  return JSON.stringify(value, (_key, inner: Json) => isObject(inner) ? Object.fromEntries(inIdOrder(inner)) : inner)
}

/** FNV-1a, 32 bits: tells the few versions of one entry apart. */
function hash(text: string): string {
  let h = 0x811c9dc5
  for (let i = 0; i < text.length; i++) h = Math.imul(h ^ text.charCodeAt(i), 0x01000193) >>> 0
  return h.toString(36)
}

function withoutAbsent(job: Job): Job {
  return Object.fromEntries(Object.entries(job).filter(([, value]) => value !== undefined)) as unknown as Job
}
