import { inIdOrder } from './compare-ids.ts'
import { jobSchema, type Job } from './job-schema.ts'
import { nearest } from './nearest.ts'
import { DEEPEST_NESTING, parseJson } from './parse-json.ts'
import type { PartKind } from './part-kind.ts'
import { isObject, type Path } from './path.ts'
import { makeProblem, refuse, showValue, underPath, type Problem, type Refused } from './problem.ts'
import { findNewerVersion, findRecordProblems } from './read-record.ts'
import { checkShape } from './shape-problems.ts'
import type { Schema } from './schema-walk.ts'
import { tidy } from './tidy.ts'
import { findVehicleProblems } from './vehicle-problems.ts'
import { anyKind, writeValue } from './write-record.ts'

export type ReadJob = { readonly ok: true; readonly job: Job } | Refused

const canonicalJobSchema: Schema = jobSchema([anyKind])

/** The job as its one canonical text, with the record in it as `writeRecord` writes it. */
export function writeJob(job: Job): string {
  return `${writeValue(tidy(job, canonicalJobSchema), canonicalJobSchema, '')}\n`
}

/** Reads a job from its text: the whole of it with its record and vehicle, or every problem that it has. */
export function readJob(text: string, kinds: readonly PartKind[]): ReadJob {
  // The record in it may be as deep as a record by itself.
  const parsed = parseJson(text, DEEPEST_NESTING + 10)
  if (!parsed.ok) return refuse([parsed.problem])
  const problems = [...parsed.problems, ...findJobProblems(parsed.value, kinds)]
  if (problems.length > 0) return refuse(problems)
  return { ok: true, job: tidy(parsed.value, canonicalJobSchema) as Job }
}

/** Everything that keeps a value from being a job. */
function findJobProblems(document: unknown, kinds: readonly PartKind[]): Problem[] {
  const newer = findNewerVersion(document, 'loomwright-job')
  if (newer) return [newer]
  const shape = checkShape(document, canonicalJobSchema).problems.filter(({ path }) => path[0] !== 'record' || path.length === 1)
  const record = isObject(document) && isObject(document.record) ? document.record : undefined
  const inRecord = record ? findRecordProblems(record, kinds).map((problem) => underPath(['record'], problem)) : []
  const problems = [...shape, ...inRecord]
  if (problems.length > 0) return problems
  const job = document as Job
  return [...findVehicleProblems(job.vehicle, job.record).map((problem) => underPath(['vehicle'], problem)), ...findEntryProblems(job)]
}

/** Photos that are not there, and corrections of no entry. What was measured where is history, and need not be in the record any more. */
function findEntryProblems({ survey, readings, photos }: Job): Problem[] {
  const photoIds = Object.keys(photos ?? {})
  return (['survey', 'readings'] as const).flatMap((collection) => {
    const entries = inIdOrder<{ readonly photos?: readonly string[], readonly corrects?: string }>(collection === 'survey' ? survey : readings)
    const ids = entries.map(([id]) => id)
    return entries.flatMap(([id, entry]) => [
      ...(entry.photos ?? []).flatMap((photo, i) => findNameProblem([collection, id, 'photos', String(i)], photo, photoIds, 'the id of a photo')),
      ...entry.corrects === undefined ? [] : findNameProblem([collection, id, 'corrects'], entry.corrects, ids, 'the id of another entry'),
    ])
  })
}

function findNameProblem(at: Path, name: string, names: readonly string[], expected: string): Problem[] {
  return names.includes(name) ? [] : [makeProblem(at, expected, showValue(name), () => nearest(name, names))]
}
