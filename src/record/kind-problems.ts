import { inIdOrder } from './compare-ids.ts'
import { nearest } from './nearest.ts'
import type { PartKind } from './part-kind.ts'
import { makeProblem, type Problem } from './problem.ts'
import type { Params, RecordPart } from './schema.ts'

/** What the kinds find wrong inside parts of the right shape: with the common parameters alone, and with each set laid over them. */
export function findKindProblems(parts: Readonly<Record<string, RecordPart>>, kinds: readonly PartKind[]): Problem[] {
  const byName = new Map(kinds.map((kind) => [kind.kind, kind]))
  return inIdOrder(parts).flatMap(([id, part]) => {
    const kind = byName.get(part.kind)
    return kind?.check ? checkPart(kind, id, part) : []
  })
}

function checkPart(kind: PartKind, id: string, { params = {}, paramSets = {} }: RecordPart): Problem[] {
  const own = problemsOf(kind, params, ['parts', id, 'params'])
  if (own.length > 0) return own
  return inIdOrder(paramSets).flatMap(([set, { params: laid }]) => problemsOf(kind, { ...params, ...laid }, ['parts', id, 'paramSets', set, 'params']))
}

function problemsOf(kind: PartKind, params: Params, at: readonly string[]): Problem[] {
  return (kind.check?.(params) ?? []).map(({ path, expected, received, valid }) => makeProblem([...at, ...path], expected, valid ? JSON.stringify(received) : received, valid && (() => nearest(received, valid))))
}
