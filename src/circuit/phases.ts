import type { Circuit } from './circuit.ts'
import { copyCondition, type Condition } from './condition.ts'
import { readSolution } from './read-solution.ts'
import { settle, type Settled } from './settle.ts'
import type { PhaseResult, Setting, Solution } from './solved.ts'

/** All combinations of phases that a setting goes through, and what becomes of each part. */
export interface PhaseWalk {
  /** Where it ends: each part in the phase it rests in, or in the brightest of its cycle. */
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
  const all = phases.map((_, i) => i)
  const reached = reachCombinations(circuit, setting, start, all)
  const results = reached.cut ? walkPairs(circuit, setting, start)
    : all.map((i) => phaseResult(circuit, setting, reached.combinations, i))
  const wanted = results.map(shownPhase)
  const shown = reached.combinations.get(wanted.join('|'))?.settled.condition ?? { ...start, phases: wanted }
  return {
    settled: settle(circuit, setting, shown),
    phases: Object.fromEntries(results.map((result, i) => [parts[phases[i].part].id, result])),
    notes: reached.cut ? [`phases were solved in pairs of parts: all combinations are more than ${MOST_COMBINATIONS}`] : [],
  }
}

/** Each part's phases together with those of every other part, two at a time: it cycles if it does with any of them. */
function walkPairs(circuit: Circuit, setting: Setting, start: Condition): PhaseResult[] {
  const { phases } = circuit.network
  const results: (PhaseResult | undefined)[] = phases.map(() => undefined)
  for (let i = 0; i < phases.length; i++) {
    for (let j = i + 1; j < phases.length; j++) {
      const { combinations } = reachCombinations(circuit, setting, start, [i, j])
      for (const one of [i, j]) if (!results[one]?.cycle) results[one] = phaseResult(circuit, setting, combinations, one)
    }
  }
  return results.map((result, i) => result ?? { rests: start.phases[i] })
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

/** The phase a part rests in, or the one of its cycle with the most light; the first of equals. */
function shownPhase({ rests, cycle = [], solutions = [] }: PhaseResult): string {
  if (rests !== undefined) return rests
  const light = solutions.map(({ lamps }) => Object.values(lamps).reduce((sum, lamp) => sum + lamp.light, 0))
  return cycle[light.indexOf(Math.max(...light))] ?? ''
}
