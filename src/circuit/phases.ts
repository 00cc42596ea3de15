import { copyCondition, type Circuit, type Condition } from './circuit.ts'
import { readSolution } from './read-solution.ts'
import { settle, type Settled } from './settle.ts'
import type { PhaseResult, Setting, Solution } from './solved.ts'

/** All combinations of phases that a setting goes through, and what becomes of each part. */
export interface PhaseWalk {
  /** The first combination of those it ends in: a resting one, or the first of the cycle in which something is fed. */
  readonly settled: Settled
  readonly phases: Readonly<Record<string, PhaseResult>>
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
  if (phases.length === 0) return { settled: settle(circuit, setting, start), phases: {}, notes: [] }
  const reached = reachCombinations(circuit, setting, start, phases.map((_, i) => i))
  const notes: string[] = []
  let walks = phases.map((_, i) => ({ combinations: reached.combinations, index: i }))
  if (reached.cut) {
    notes.push(`phases were solved part by part: their combinations are more than ${MOST_COMBINATIONS}`)
    walks = phases.map((_, i) => ({ combinations: reachCombinations(circuit, setting, start, [i]).combinations, index: i }))
  }
  const results = walks.map(({ combinations, index }) => phaseResult(circuit, setting, combinations, index))
  const last = pickShown(reached.combinations, results.map((r) => r.rests ?? r.cycle?.[0] ?? ''))
  const settled = settle(circuit, setting, last.settled.condition)
  return { settled, phases: Object.fromEntries(results.map((result, i) => [parts[phases[i].part].id, result])), notes }
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

/** Follow one part's phases, the others where they were: it comes to rest, or back to a phase it had. */
function phaseResult(circuit: Circuit, setting: Setting, combinations: ReadonlyMap<string, Combination>, index: number): PhaseResult {
  const [first] = combinations.values()
  const seen: Combination[] = []
  let at: Combination | undefined = first
  while (at && !seen.includes(at)) {
    seen.push(at)
    const next = at.next[index]
    if (next === null) return { rests: at.settled.condition.phases[index] }
    const phases = [...at.settled.condition.phases]
    phases[index] = next
    at = combinations.get(phases.join('|'))
  }
  const cycle = at ? seen.slice(seen.indexOf(at)) : seen.slice(-1)
  const names = cycle.map(({ settled }) => settled.condition.phases[index])
  const rate = rateOf(circuit, setting, cycle, index)
  return { cycle: names, ...(rate === undefined ? {} : { rate }), solutions: cycle.map(({ solution }) => solution) }
}

function rateOf(circuit: Circuit, setting: Setting, cycle: readonly Combination[], index: number): string | undefined {
  const { spec, part } = circuit.network.phases[index]
  if (!spec.rate) return undefined
  const readings = new Map(cycle.map(({ settled }) => {
    settle(circuit, setting, settled.condition)
    return [settled.condition.phases[index], recordView(circuit, part)] as const
  }))
  return spec.rate(readings)
}

/** A view that keeps the amps of its moment: the circuit moves on to the next phase. */
function recordView(circuit: Circuit, part: number) {
  const view = circuit.views[part]
  const amps = new Map((circuit.network.parts[part].model.elements).map(({ id }) => [id, view.amps(id)]))
  return { ...view, now: view.now, amps: (id: string) => amps.get(id) ?? NaN, volts: () => { throw new RangeError('a rate reads amps only') } }
}

function pickShown(combinations: ReadonlyMap<string, Combination>, wanted: readonly string[]): Combination {
  const [first] = combinations.values()
  return combinations.get(wanted.join('|')) ?? first
}
