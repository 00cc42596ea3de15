import type { View } from '../record/index.ts'
import type { Circuit } from './circuit.ts'
import { copyCondition, type Condition } from './condition.ts'
import { known, readSolution } from './read-solution.ts'
import { settle, type Settled } from './settle.ts'
import type { DialResult, PhaseResult, Setting, Solution } from './solved.ts'

/** All combinations of phases that a setting goes through, and what becomes of each part. */
export interface PhaseWalk {
  /** Where it ends: each part in the phase it rests in, or in the brightest of its cycle. */
  readonly settled: Settled
  readonly phases: Readonly<Record<string, PhaseResult>>
  /** What each needle shows, over whole cycles where their shares are known. */
  readonly dials: Readonly<Record<string, DialResult>>
  readonly notes: readonly string[]
}

const MOST_COMBINATIONS = 256

interface Combination {
  readonly settled: Settled
  readonly solution: Solution
  /** For each phase of the network, in order: the phase that follows, or null at rest. */
  readonly next: readonly (string | null)[]
}

/** Go through the phases that follow one another from the start, in combination where several parts run at once. */
export function walkPhases(circuit: Circuit, setting: Setting, start: Condition): PhaseWalk {
  const { phases, parts } = circuit.network
  if (phases.length === 0) {
    const settled = settle(circuit, setting, start)
    return { settled, phases: {}, dials: readDials(circuit, []), notes: [] }
  }
  const all = phases.map((_, i) => i)
  const reached = reachCombinations(circuit, setting, start, all)
  const results = reached.cut ? walkPairs(circuit, setting, start)
    : all.map((i) => followPhases(circuit, setting, reached.combinations, i))
  const wanted = results.map(({ result }) => shownPhase(result))
  const shown = reached.combinations.get(wanted.join('|'))?.settled.condition ?? { ...start, phases: wanted }
  const settled = settle(circuit, setting, shown)
  return {
    settled, dials: readDials(circuit, results.map(({ swayFrom }, i) => swayFrom?.(wanted[i]) ?? [])),
    phases: Object.fromEntries(results.map(({ result }, i) => [parts[phases[i].part].id, result])),
    notes: reached.cut ? [`phases were solved in pairs of parts: all combinations are more than ${MOST_COMBINATIONS}`] : [],
  }
}

/** Each part's phases together with those of every other part, two at a time: it cycles if it does with any of them. */
function walkPairs(circuit: Circuit, setting: Setting, start: Condition): Followed[] {
  const { phases } = circuit.network
  const results: (Followed | undefined)[] = phases.map(() => undefined)
  for (let i = 0; i < phases.length; i++) {
    for (let j = i + 1; j < phases.length; j++) {
      const { combinations } = reachCombinations(circuit, setting, start, [i, j])
      for (const one of [i, j]) if (!results[one]?.result.cycle) results[one] = followPhases(circuit, setting, combinations, one)
    }
  }
  return results.map((found, i) => found ?? { result: { rests: start.phases[i] } })
}

function reachCombinations(circuit: Circuit, setting: Setting, start: Condition, moving: readonly number[]) {
  const combinations = new Map<string, Combination>()
  const queue: Condition[] = [start]
  for (let condition = queue.shift(); condition; condition = queue.shift()) {
    const key = condition.phases.join('|')
    if (combinations.has(key)) continue
    if (combinations.size >= MOST_COMBINATIONS) return { combinations, cut: true }
    const combination = solveCombination(circuit, setting, condition)
    combinations.set(key, combination)
    for (const i of moving) {
      const next = combination.next[i]
      if (next === null) continue
      const following = copyCondition(combination.settled.condition)
      following.phases[i] = next
      queue.push(following)
    }
  }
  return { combinations, cut: false }
}

function solveCombination(circuit: Circuit, setting: Setting, condition: Condition): Combination {
  const settled = settle(circuit, setting, condition)
  const { phases, parts } = circuit.network
  const next = phases.map(({ spec, part }, i) =>
    (circuit.overlay.held.has(parts[part].id) ? null : spec.next(circuit.views[part], settled.condition.phases[i])))
  return { settled, solution: readSolution(circuit, settled.condition), next }
}

/** What becomes of one part's phases, and by how much each dial's mean over its cycle lies above what moves the dial in a phase. */
interface Followed { readonly result: PhaseResult; readonly swayFrom?: (phase: string) => number[] }

/** Follow one part's phases, the others where they were: it comes to rest, or back to a phase it had. */
function followPhases(circuit: Circuit, setting: Setting, combinations: ReadonlyMap<string, Combination>, index: number): Followed {
  const [first] = combinations.values()
  const seen: Combination[] = []
  let at: Combination | undefined = first
  while (at && !seen.includes(at)) {
    seen.push(at)
    const next = at.next[index]
    if (next === null) return { result: { rests: at.settled.condition.phases[index] } }
    const phases = [...at.settled.condition.phases]
    phases[index] = next
    at = combinations.get(phases.join('|'))
  }
  const cycle = at ? seen.slice(seen.indexOf(at)) : seen.slice(-1)
  const names = cycle.map(({ settled }) => settled.condition.phases[index])
  const { rate, swayFrom } = timeCycle(circuit, setting, cycle, index)
  return { result: { cycle: names, ...(rate === undefined ? {} : { rate }), solutions: cycle.map(({ solution }) => solution) }, swayFrom }
}

/** How fast a cycle is, and what it does to the dials, as far as the part can tell. */
function timeCycle(circuit: Circuit, setting: Setting, cycle: readonly Combination[], index: number): { rate?: string; swayFrom?: Followed['swayFrom'] } {
  const { spec, part } = circuit.network.phases[index]
  if (!spec.rate && !spec.shares) return {}
  const moves = new Map<string, number[]>()
  const readings = new Map(cycle.map(({ settled }) => {
    settle(circuit, setting, settled.condition)
    const phase = settled.condition.phases[index]
    moves.set(phase, dialMoves(circuit))
    return [phase, recordView(circuit, part)] as const
  }))
  const shares = spec.shares?.(readings)
  return { rate: spec.rate?.(readings), ...(shares && { swayFrom: (phase: string) => meanSway(moves, shares, phase) }) }
}

function meanSway(moves: ReadonlyMap<string, readonly number[]>, shares: ReadonlyMap<string, number>, phase: string): number[] {
  const from = moves.get(phase) ?? []
  return from.map((move, d) => [...moves].reduce((sum, [name, each]) => sum + (shares.get(name) ?? 0) * (each[d] - move), 0))
}

function dialMoves({ network, views }: Circuit): number[] {
  return network.dials.map(({ part, spec }) => spec.moves(views[part]))
}

/** Every needle at what moves it now, and at what the cycles add to that on the mean. */
function readDials(circuit: Circuit, sways: readonly (readonly number[])[]): Record<string, DialResult> {
  const moves = dialMoves(circuit)
  return Object.fromEntries(circuit.network.dials.map(({ id, spec }, d) => {
    const mean = sways.reduce((sum, sway) => sum + (sway[d] ?? 0), moves[d])
    return [id, { shows: known(spec.shows(mean)), unit: spec.unit }]
  }))
}

/** A view that keeps the amps of its moment: the circuit moves on to the next phase. */
function recordView(circuit: Circuit, part: number): View {
  const view = circuit.views[part]
  const amps = new Map((circuit.network.parts[part].model.elements).map(({ id }) => [id, view.amps(id)]))
  return { ...view, now: view.now, amps: (id: string) => amps.get(id) ?? NaN, volts: () => { throw new RangeError('a rate reads amps only') } }
}

/** The phase a part rests in, or the one of its cycle with the most light; the first of those that give about as much. */
function shownPhase({ rests, cycle = [], solutions = [] }: PhaseResult): string {
  if (rests !== undefined) return rests
  const light = solutions.map(({ lamps }) => Object.values(lamps).reduce((sum, lamp) => sum + lamp.light, 0))
  const most = Math.max(...light)
  return cycle[light.findIndex((one) => one >= most * (1 - SAME_LIGHT))] ?? ''
}

/** Lamps that only feel another part's load over the battery's leads do not choose what is shown. */
const SAME_LIGHT = 0.02
