import { compareIds } from '../record/index.ts'
import type { Circuit } from './circuit.ts'
import { copyCondition, type Condition } from './condition.ts'
import { solveExcited } from './excite.ts'
import type { Network } from './network.ts'
import type { Setting } from './solved.ts'

/** How the inner states came to rest, or the conditions of the cycle that they run through. */
export interface Settled {
  readonly outcome: 'rests' | 'chatters'
  /** The resting condition, or the first of the cycle. */
  readonly condition: Condition
  readonly cycle: readonly Condition[]
  /** Given up after too many moves that led nowhere twice. */
  readonly isEndless: boolean
}

const MOST_MOVES = 2000

/** All states at rest, phases at their start, machines with residual magnetism only. */
export function restCondition(circuit: Circuit, setting: Setting): Condition {
  const { network, overlay } = circuit
  const condition: Condition = {
    states: network.states.map(({ id, spec }) => overlay.held.get(id) ?? spec.rest),
    kept: new Float64Array(network.states.length),
    phases: network.phases.map(({ part, spec }) => {
      const id = network.parts[part].id
      return overlay.held.get(id) ?? setting.phases[id] ?? spec.start
    }),
    emf: new Float64Array(network.machines.length),
    regulatorOhm: Float64Array.from(network.regulators, ({ spec }) => spec.closedOhm),
  }
  circuit.take(setting, condition)
  network.machines.forEach(({ spec, part }, m) => { condition.emf[m] = spec.residual(circuit.views[part].now) })
  return condition
}

/**
 * Let the states move one at a time, by their time to act, ties by id, until they rest, return to where they
 * were, or the time is over. Afterwards the circuit holds the solution of the answer's condition.
 */
export function settle(circuit: Circuit, setting: Setting, start: Condition, withinMs = Infinity): Settled {
  const condition = copyCondition(start)
  applyHolds(circuit, condition)
  limitExcitation(circuit, setting, condition)
  const seen = new Map<string, number>()
  const history: Condition[] = []
  const due = new Map<number, { value: string; inMs: number }>()
  let leftMs = withinMs
  for (let moves = 0; ; moves++) {
    solveExcited(circuit, setting, condition)
    collectDue(circuit, condition, due)
    const first = firstDue(circuit.network, due)
    if (!first || first.inMs > leftMs) {
      keepAtRest(circuit, condition)
      return { outcome: 'rests', condition, cycle: [], isEndless: false }
    }
    const key = keyOf(circuit.network, condition, due)
    const before = seen.get(key)
    if (before !== undefined || moves >= MOST_MOVES) return chatter(circuit, setting, history.slice(before ?? -2), before === undefined)
    seen.set(key, history.length)
    history.push(copyCondition(condition))
    leftMs -= first.inMs
    moveState(circuit, condition, due, first)
  }
}

function keepAtRest(circuit: Circuit, condition: Condition): void {
  circuit.network.states.forEach(({ part, spec }, i) => {
    if (spec.keepsAtRest) condition.kept[i] = spec.keepsAtRest(circuit.views[part], condition.states[i])
  })
}

/** A state or phase that is held is where it is held, whatever the condition came from. */
function applyHolds({ network: { states, phases, parts }, overlay: { held } }: Circuit, condition: Condition): void {
  states.forEach(({ id }, i) => { condition.states[i] = held.get(id) ?? condition.states[i] })
  phases.forEach(({ part }, i) => { condition.phases[i] = held.get(parts[part].id) ?? condition.phases[i] })
}

function chatter(circuit: Circuit, setting: Setting, cycle: readonly Condition[], isEndless: boolean): Settled {
  const condition = copyCondition(cycle[0])
  solveExcited(circuit, setting, condition)
  return { outcome: 'chatters', condition, cycle, isEndless }
}

/** A machine keeps its EMF from the setting before only as far as its present speed allows. */
function limitExcitation(circuit: Circuit, setting: Setting, condition: Condition): void {
  if (condition.emf.length === 0) return
  circuit.take(setting, condition)
  circuit.network.machines.forEach(({ spec, part }, m) => {
    const now = circuit.views[part].now
    const residual = spec.residual(now), most = spec.ceiling(now)
    const low = Math.min(residual, most), high = Math.max(residual, most)
    condition.emf[m] = Math.min(high, Math.max(low, condition.emf[m]))
  })
}

/** Which states want to move, and when; one that no longer wants to is forgotten. */
function collectDue(circuit: Circuit, condition: Condition, due: Map<number, { value: string; inMs: number }>): void {
  circuit.network.states.forEach(({ id, part, spec }, i) => {
    const held = circuit.overlay.held.has(id)
    const want = held ? null : spec.wants(circuit.views[part], condition.states[i])
    if (!want || want.value === condition.states[i]) { due.delete(i); return }
    const waiting = due.get(i)
    if (waiting?.value !== want.value) due.set(i, { value: want.value, inMs: want.afterMs })
  })
}

interface Due { readonly state: number; readonly value: string; readonly inMs: number }

/** The state that acts first, ties by id. */
function firstDue({ states }: Network, due: ReadonlyMap<number, { value: string; inMs: number }>): Due | undefined {
  return [...due].map(([state, move]) => ({ state, ...move }))
    .sort((a, b) => a.inMs - b.inMs || compareIds(states[a.state].id, states[b.state].id))[0]
}

/** One state moves; the others have that much less to wait. */
function moveState(circuit: Circuit, condition: Condition, due: Map<number, { value: string; inMs: number }>, move: Due): void {
  due.delete(move.state)
  for (const [i, { value, inMs }] of due) due.set(i, { value, inMs: inMs - move.inMs })
  const { spec, part } = circuit.network.states[move.state]
  const kept = spec.keeps?.(circuit.views[part], condition.states[move.state], move.value) ?? 0
  condition.states[move.state] = move.value
  condition.kept[move.state] = kept
}

function keyOf(network: Network, condition: Condition, due: ReadonlyMap<number, { value: string; inMs: number }>): string {
  const waits = [...due].sort(([i], [j]) => i - j).map(([i, { value, inMs }]) => `${network.states[i].id}>${value}@${inMs.toFixed(3)}`)
  const emf = Array.from(condition.emf, (e) => e.toPrecision(4))
  const kept = Array.from(condition.kept, (k) => k.toPrecision(4))
  return [condition.states.join(','), kept.join(','), emf.join(','), waits.join(',')].join('|')
}
