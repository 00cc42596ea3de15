import { inIdOrder } from './compare-ids.ts'
import { clash, holds, party, type Resolving } from './resolving.ts'
import type { RecordLoom, WiringRecord } from './schema.ts'
import type { WiringLoom } from './wiring.ts'

type Looms = NonNullable<WiringRecord['looms']>

/**
 * The looms with only those ways of lying that hold for this vehicle. Where a branch lies is a matter of the body, so it
 * is judged by the vehicle itself even where the loom is of another edition.
 */
export function keepFittingLies(resolving: Resolving, looms: Looms | undefined): Looms {
  return Object.fromEntries(inIdOrder(looms).map(([id, loom]) => {
    const lies = inIdOrder(loom.lies).filter(([lieId, { fits }]) => holds(resolving, fits, ['looms', id, 'lies', lieId], resolving.vehicle))
    return [id, { ...loom, lies: Object.fromEntries(lies) }]
  }))
}

/** The looms of this vehicle, each branch with the runs that it lies on; one branch in two places is a conflict. */
export function resolveLooms(resolving: Resolving, kept: WiringRecord): ReadonlyMap<string, WiringLoom> {
  return new Map(inIdOrder(kept.looms).map(([id, loom]) =>
    [id, { id, title: loom.title, points: loom.points, branches: loom.branches, lies: resolveLies(resolving, id, loom) }]))
}

function resolveLies(resolving: Resolving, loomId: string, { lies = {} }: RecordLoom): ReadonlyMap<string, readonly string[]> {
  const at = ['looms', loomId, 'lies']
  const byBranch = new Map<string, string>()
  const runs = new Map<string, readonly string[]>()
  for (const [id, lie] of inIdOrder(lies)) {
    const other = byBranch.get(lie.branch)
    if (other !== undefined) {
      const parties = [party([...at, other], lies[other].fits), party([...at, id], lie.fits)]
      clash(resolving, [...at, id], 'one branch in two places', `${other} and ${id} both say where the branch ${lie.branch} lies`, parties)
    }
    byBranch.set(lie.branch, id)
    runs.set(lie.branch, lie.runs)
  }
  return runs
}
