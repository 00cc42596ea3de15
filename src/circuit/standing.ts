import type { Circuit } from './circuit.ts'
import { copyCondition, type Condition } from './condition.ts'
import { readSolution } from './read-solution.ts'
import { restCondition, settle, type Settled } from './settle.ts'
import { engineRpm } from './positions.ts'
import type { Setting, StandingState } from './solved.ts'

interface Start { readonly from: string; readonly begin: () => Condition }

/** With so many two-state parts or fewer every combination is tried, so that none is missed. */
const MOST_ENUMERATED = 12

/**
 * Other standing states of the setting. With few contacts they are sought from every combination of them, with
 * more from all made, each made alone, and what every setting one control away leaves behind; and from machines
 * fully excited. Only resting states count.
 */
export function findStanding(circuit: Circuit, setting: Setting, main: Main, onProgress?: (said: string) => void): StandingState[] {
  const search = seekStanding(circuit, setting, main)
  let step = search.next()
  for (; !step.done; step = search.next()) onProgress?.(step.value)
  return step.value
}

/** What the states are other than: as the setting was settled. */
type Main = Pick<Settled, 'outcome' | 'condition'>

/**
 * The same search, start by start, with a word on how far it is: whoever asks may do something else in between, or leave it. The
 * circuit must not be solved otherwise meanwhile; at the end it holds the main solution again.
 */
export function* seekStanding(circuit: Circuit, setting: Setting, main: Main): Generator<string, StandingState[], undefined> {
  const { network } = circuit
  const couldHold = network.states.some(({ spec }) => spec.made !== undefined) || network.machines.length > 0
  if (!couldHold) return []
  const known = main.outcome === 'rests' ? [main.condition] : []
  const found: { condition: Condition; state: StandingState }[] = []
  settle(circuit, setting, main.condition)
  const mainRunsOn = coilAmps(circuit, setting) > RUNS_ON_A
  const starts = startsFor(circuit, setting, main)
  for (const [i, { from, begin }] of starts.entries()) {
    yield `other standing states, start ${i + 1} of ${starts.length}`
    const settled = settle(circuit, setting, begin())
    if (settled.outcome !== 'rests') continue
    if ([...known, ...found.map((one) => one.condition)].some((other) => isSame(other, settled.condition))) continue
    const name = !mainRunsOn && coilAmps(circuit, setting) > RUNS_ON_A ? RUNS_ON : HOLDS
    found.push({ condition: settled.condition, state: { ...name, from, ...readSolution(circuit, settled.condition) } })
  }
  settle(circuit, setting, main.condition)
  return found.map((one) => one.state)
}

const RUNS_ON = { name: 'runs on', said: 'the engine runs on, because its ignition coil stays fed' }
const HOLDS = { name: 'holds once made', said: 'what was made before holds itself' }

/** Coil current above which an engine that turns goes on running, A. Common practice, no source. */
export const RUNS_ON_A = 1

function coilAmps(circuit: Circuit, setting: Setting): number {
  const { elements, wiring } = circuit.network
  if (engineRpm(setting.engine, wiring.engine) === 0) return 0
  const coils = elements.flatMap(({ spec }, e) => (spec?.sparks ? [e] : []))
  return Math.max(0, ...coils.map((e) => Math.abs(circuit.elementAmps(e))))
}

function startsFor(circuit: Circuit, setting: Setting, main: Main): Start[] {
  const { network } = circuit
  const rest = restCondition(circuit, setting)
  rest.phases.splice(0, rest.phases.length, ...main.condition.phases)
  const makeable = network.states.flatMap(({ id, spec }, i) => (spec.made === undefined || circuit.overlay.held.has(id) ? [] : [{ i, id, made: spec.made }]))
  const make = (items: typeof makeable, excited: boolean): Condition => {
    const condition = copyCondition(rest)
    for (const { i, made } of items) condition.states[i] = made
    if (excited) network.machines.forEach(({ spec, part }, m) => { condition.emf[m] = spec.ceiling(circuit.views[part].now) })
    return condition
  }
  const excitements = network.machines.length ? [false, true] : [false]
  const named = (items: typeof makeable, excited: boolean): Start => ({
    from: [...items.map(({ id }) => `${id} made`), ...(excited ? ['generator excited'] : [])].join(', ') || 'all at rest', begin: () => make(items, excited),
  })
  if (makeable.length <= MOST_ENUMERATED) {
    return excitements.flatMap((excited) => subsetsOf(makeable).map((items) => named(items, excited)))
  }
  return [
    named([], false), ...excitements.flatMap((excited) => [named(makeable, excited), named([], excited)]),
    ...makeable.map((item) => named([item], false)), ...neighbourStarts(circuit, setting, rest, main),
  ]
}

/** Every subset, the smaller ones first. */
function subsetsOf<T>(items: readonly T[]): T[][] {
  const all = Array.from({ length: 2 ** items.length }, (_, bits) => items.filter((_, i) => bits >> i & 1))
  return all.sort((a, b) => a.length - b.length)
}

function neighbourStarts(circuit: Circuit, setting: Setting, rest: Condition, main: Main): Start[] {
  return circuit.network.axes.flatMap(({ id, spec }) => spec.positions.flatMap((position) => {
    if (setting.controls[id] === position) return []
    const neighbour = { ...setting, controls: { ...setting.controls, [id]: position } }
    const begin = () => {
      const { condition } = settle(circuit, neighbour, rest)
      condition.phases.splice(0, condition.phases.length, ...main.condition.phases)
      return condition
    }
    return [{ from: `after ${id} at ${position}`, begin }]
  }))
}

function isSame(a: Condition, b: Condition): boolean {
  return a.states.every((state, i) => state === b.states[i])
    && a.emf.every((emf, m) => Math.abs(emf - b.emf[m]) <= 0.01 * Math.max(Math.abs(emf), Math.abs(b.emf[m]), 0.1))
}
