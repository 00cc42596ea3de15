import { ENGINE_STATES } from '../record/index.ts'
import type { Circuit } from './circuit.ts'
import { copyCondition, type Condition } from './condition.ts'
import { coverTriples, type AxisSteps } from './cover-triples.ts'
import { noteExtremes, type Extremes } from './extremes.ts'
import { findTrunk } from './find-trunk.ts'
import { groupControls } from './group-controls.ts'
import type { NetAxis } from './network.ts'
import { isPossible } from './positions.ts'
import { restCondition, settle } from './settle.ts'
import type { EngineState, Setting } from './solved.ts'

/** What is going to be tried: the trunk, the groups of controls, and how many settings that makes. */
export interface SweepPlan {
  readonly trunk: readonly string[]
  readonly key: readonly string[]
  readonly groups: readonly SweptGroup[]
  /** Settings that the plan comes to, before impossible ones are left out and extremes are climbed. */
  readonly count: number
}

export interface SweptGroup {
  readonly axes: readonly string[]
  /** All combinations of its positions, or of more than 400 only such that every triple of positions occurs. */
  readonly coverage: 'every' | 'covered'
  readonly combinations: readonly Controls[]
}

type Controls = Readonly<Record<string, string | number>>

/** One setting that has been solved, or one moment of it where parts go through phases; until the next is asked for, the circuit holds its solution. */
export interface Swept { readonly setting: Setting; readonly condition: Condition; readonly outcome: 'rests' | 'chatters'; readonly group: number }

const MOST_IN_FULL = 400
const BATTERIES = ['full', 'low'] as const

/** The sweep that stands for every setting of a circuit. Groups are computed from the network, never listed. */
export function planSweep(circuit: Circuit): SweepPlan {
  const { network } = circuit
  const trunk = findTrunk(network)
  const { key, groups } = groupControls(network, trunk)
  const axisOf = new Map(network.axes.map((axis) => [axis.id, axis]))
  const axesOf = (ids: readonly string[]) => ids.map((id) => axisOf.get(id) as NetAxis)
  const swept = (groups.length ? groups : [[]]).map((axes): SweptGroup => {
    const steps = axesOf(axes).map(stepsOf)
    const size = steps.reduce((product, { positions }) => product * positions.length, 1)
    return size <= MOST_IN_FULL ? { axes, coverage: 'every', combinations: allCombinations(steps) } : { axes, coverage: 'covered', combinations: coverTriples(steps) }
  })
  const keys = allCombinations(axesOf(key).map(stepsOf)).length
  const each = keys * engineStates(circuit).length * BATTERIES.length * (swept.length > 1 ? 2 : 1)
  return {
    trunk: [...trunk].map((e) => network.elements[e].id), key, groups: swept,
    count: swept.reduce((sum, { combinations }) => sum + combinations.length * each, 0),
  }
}

function stepsOf({ id, spec }: NetAxis): AxisSteps {
  const { range } = spec
  if (!range) return { axis: id, positions: spec.positions }
  return { axis: id, positions: [...new Set([range.from, (range.from + range.to) / 2, range.to, ...spec.bends ?? []])].sort((a, b) => a - b) }
}

function allCombinations(steps: readonly AxisSteps[]): Controls[] {
  return steps.reduce<Controls[]>((sofar, { axis, positions }) =>
    sofar.flatMap((controls) => positions.map((position) => ({ ...controls, [axis]: position }))), [{}])
}

/** A vehicle in which nothing turns has no engine to run. */
function engineStates({ network }: Circuit): readonly EngineState[] {
  return network.hasEngine ? ENGINE_STATES : ['stopped']
}

/**
 * Solves the settings of the plan one by one, each from rest: every group through its combinations, with each key position,
 * engine state and state of the battery, the other groups once at rest and once at their heaviest; from the extremes of a group
 * that was only covered it climbs on by single changes. Whoever asks may stop at any time; the next setting is solved when it
 * is asked for.
 */
export function* sweepSettings(circuit: Circuit, plan: SweepPlan): Generator<Swept, void, undefined> {
  const axisOf = new Map(circuit.network.axes.map((axis) => [axis.id, stepsOf(axis)]))
  const keySteps = plan.key.map((id) => axisOf.get(id) as AxisSteps)
  const keys = allCombinations(keySteps), engines = engineStates(circuit)
  const heaviest = plan.groups.map((group) => findHeaviest(circuit, group, keys))
  for (const [g, group] of plan.groups.entries()) {
    const others: Controls = Object.assign({}, ...heaviest.filter((_, other) => other !== g))
    const loads = plan.groups.length > 1 ? [{}, others] : [{}]
    const extremes: Extremes = new Map()
    for (const engine of engines) for (const battery of BATTERIES) for (const key of keys) for (const beside of loads) {
      for (const combination of group.combinations) {
        for (const swept of sweepMoments(circuit, { controls: { ...beside, ...key, ...combination }, engine, battery, phases: {} }, g)) {
          if (group.coverage === 'covered') noteExtremes(circuit, swept.setting, extremes)
          yield swept
        }
      }
    }
    const steps = [...keySteps, ...group.axes.map((id) => axisOf.get(id) as AxisSteps)]
    if (group.coverage === 'covered') yield* climbExtremes(circuit, g, extremes, (setting) => neighbours(setting, steps, engines))
  }
}

/**
 * A setting settled from rest; then, one part after another, the phases that it goes through from there while the others stand
 * where they were: a flasher's lamps are lit in its second phase. Each moment is a setting of its own, which names the phase.
 */
function* sweepMoments(circuit: Circuit, setting: Setting, group: number): Generator<Swept, void, undefined> {
  const { network, overlay, views } = circuit
  if (!isPossible(network, setting)) return
  const first = settle(circuit, setting, restCondition(circuit, setting))
  const nexts = network.phases.map(({ spec, part }, i) => (overlay.held.has(network.parts[part].id) ? null : spec.next(views[part], first.condition.phases[i])))
  yield { setting, condition: first.condition, outcome: first.outcome, group }
  for (const [i, { spec, part }] of network.phases.entries()) {
    const { id } = network.parts[part]
    const seen = new Set([first.condition.phases[i]])
    for (let next = nexts[i], from = first.condition; next !== null && !seen.has(next);) {
      seen.add(next)
      const moment: Setting = { ...setting, phases: { ...setting.phases, [id]: next } }
      const start = copyCondition(from)
      start.phases[i] = next
      const { condition, outcome } = settle(circuit, moment, start)
      const after = spec.next(views[part], condition.phases[i])
      yield { setting: moment, condition, outcome, group }
      from = condition
      next = after
    }
  }
}

/**
 * From each setting that holds an extreme, every single change; where that raises an extreme, on from there. Rises of less than
 * CLIMBED are noted, but not climbed from: every load that is switched off raises the volts of all others by a trace.
 */
function* climbExtremes(circuit: Circuit, group: number, extremes: Extremes, near: (setting: Setting) => Setting[]): Generator<Swept, void, undefined> {
  const climbedTo = new Map<string, number>(), tried = new Set<string>()
  for (;;) {
    const risen = [...extremes].filter(([key, { value }]) => isRisen(value, climbedTo.get(key)))
    if (risen.length === 0) return
    for (const [key, { value }] of risen) climbedTo.set(key, value)
    for (const start of new Map(risen.map(([, { setting }]) => [JSON.stringify(setting), setting])).values()) {
      for (const setting of near(start)) {
        const name = JSON.stringify(setting)
        if (tried.has(name)) continue
        tried.add(name)
        for (const swept of sweepMoments(circuit, setting, group)) {
          noteExtremes(circuit, swept.setting, extremes)
          yield swept
        }
      }
    }
  }
}

/** Share by which an extreme must have risen to be climbed from again. */
const CLIMBED = 5e-4

function isRisen(value: number, before: number | undefined): boolean {
  return before === undefined || value > before + CLIMBED * Math.abs(before) + 1e-9
}

/** Every setting that differs in one control, in the engine or in the battery. */
function neighbours(setting: Setting, steps: readonly AxisSteps[], engines: readonly EngineState[]): Setting[] {
  return [
    ...steps.flatMap(({ axis, positions }) => positions.filter((position) => position !== setting.controls[axis])
      .map((position) => ({ ...setting, controls: { ...setting.controls, [axis]: position } }))),
    ...engines.filter((engine) => engine !== setting.engine).map((engine) => ({ ...setting, engine })),
    ...BATTERIES.filter((battery) => battery !== setting.battery).map((battery) => ({ ...setting, battery })),
  ]
}

/** The positions of a group that, with nothing else on, take most from the battery. */
function findHeaviest(circuit: Circuit, group: SweptGroup, keys: readonly Controls[]): Controls {
  let heaviest: Controls = {}, most = -1
  for (const key of keys) for (const combination of group.combinations) {
    const setting: Setting = { controls: { ...key, ...combination }, engine: 'stopped', battery: 'full', phases: {} }
    if (!isPossible(circuit.network, setting)) continue
    settle(circuit, setting, restCondition(circuit, setting))
    const amps = batteryAmps(circuit)
    if (amps > most + 1e-9) { most = amps; heaviest = combination }
  }
  return heaviest
}

function batteryAmps(circuit: Circuit): number {
  const { parts } = circuit.network
  return parts.filter(({ posts }) => posts)
    .reduce((sum, { elements }) => sum + [...elements.values()].reduce((own, e) => own + Math.abs(circuit.elementAmps(e)), 0), 0)
}
