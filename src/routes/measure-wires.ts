import type { Assumption, Wiring, WiringLoom, WiringWire } from '../record/index.ts'

/** A wire's length and where it lies. */
export interface WireRoute {
  /** Length as it counts for resistance: as stated, else as made, else as the body needs it; null where nothing tells. */
  readonly lengthMm: number | null
  /** From the branches' own lengths and the tails; null where the loom or the wire does not state them all. */
  readonly madeMm: number | null
  /** Along the runs of the body that its branches lie on, with the tails; null where they are not all known. */
  readonly neededMm: number | null
  readonly branches: readonly string[]
  readonly runs: readonly string[]
  readonly assumed: readonly Assumption[]
}

/** The route and length of every wire of a wiring, by wire. */
export function measureWires(wiring: Wiring): ReadonlyMap<string, WireRoute> {
  return new Map([...wiring.wires.values()].map((wire) => [wire.id, measureWire(wiring, wire)]))
}

function measureWire(wiring: Wiring, wire: WiringWire): WireRoute {
  const loom = wire.loom === undefined ? undefined : wiring.looms.get(wire.loom)
  const branches = loom ? walkLoom(loom, wire.ends[0].leaves, wire.ends[1].leaves) : []
  const runs = loom ? branches?.flatMap((branch) => loom.lies.get(branch) ?? []) ?? [] : wire.runs ?? []
  const tails = sum(wire.ends.map((end) => (typeof end.tailMm === 'number' ? end.tailMm : 0)))
  const madeMm = loom && branches ? plus(tails, sum(branches.map((b) => stated(loom.branches[b].lengthMm)))) : null
  const lies = !loom || branches?.every((branch) => loom.lies.has(branch))
  const neededMm = lies && runs.length ? plus(tails, sum(runs.map((run) => stated(wiring.runs.get(run)?.lengthMm)))) : null
  const given = stated(wire.lengthMm)
  const lengthMm = given ?? madeMm ?? neededMm
  const assumed = lengthMm === null ? [{
    path: `wires.${wire.id}.lengthMm`, value: DEFAULT_LENGTH_MM, why: 'no length is stated and no route gives one', source: 'common practice, no source',
  }] : []
  const tailsAssumed = given === null && lengthMm !== null ? unknownTails(wire) : []
  return { lengthMm, madeMm, neededMm, branches: branches ?? [], runs, assumed: [...assumed, ...tailsAssumed] }
}

function unknownTails({ id, ends }: WiringWire): Assumption[] {
  return ends.flatMap(({ tailMm }, end) => (tailMm === 'unknown'
    ? [{ path: `wires.${id}.ends.${end}.tailMm`, value: 0, why: 'the tail is stated as unknown and counted as none', source: 'common practice, no source' }] : []))
}

/** Length taken for a wire of which nothing is known, mm. */
export const DEFAULT_LENGTH_MM = 1000

const stated = (value: number | 'unknown' | undefined): number | null => (typeof value === 'number' ? value : null)
const plus = (a: number | null, b: number | null) => (a === null || b === null ? null : a + b)
const sum = (values: readonly (number | null)[]): number | null => values.reduce<number | null>(plus, 0)

/** The branches between two points of a loom's tree, in order; null where a point is not given or not reached. */
function walkLoom(loom: WiringLoom, from: string | undefined, to: string | undefined): string[] | null {
  if (from === undefined || to === undefined) return null
  const came = new Map<string, { branch: string; from: string } | null>([[from, null]])
  const queue = [from]
  for (let at = queue.shift(); at !== undefined; at = queue.shift()) {
    if (at === to) return unwind(came, to)
    for (const [branch, ends] of Object.entries(loom.branches)) {
      const next = ends.from === at ? ends.to : ends.to === at ? ends.from : undefined
      if (next === undefined || came.has(next)) continue
      came.set(next, { branch, from: at })
      queue.push(next)
    }
  }
  return null
}

function unwind(came: ReadonlyMap<string, { branch: string; from: string } | null>, to: string): string[] {
  const branches: string[] = []
  for (let step = came.get(to); step; step = came.get(step.from)) branches.unshift(step.branch)
  return branches
}
