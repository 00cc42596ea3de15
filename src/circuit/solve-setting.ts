import type { PartKind, Wiring } from '../record/index.ts'
import { Circuit } from './circuit.ts'
import { copyCondition, type Condition } from './condition.ts'
import { noteConductors } from './conductor-notes.ts'
import { layFaults } from './lay-faults.ts'
import { buildNetwork, type Network } from './network.ts'
import { walkPhases } from './phases.ts'
import { allPositions, brokenLimits } from './positions.ts'
import { readSolution } from './read-solution.ts'
import { noteSolution } from './setting-notes.ts'
import { restCondition, settle, type Settled } from './settle.ts'
import type { Fault, Setting, Solution, SolvedSetting } from './solved.ts'
import { findStanding } from './standing.ts'

/** A setting solved, with the condition in which it left the parts. */
export interface Solved { readonly solved: SolvedSetting; readonly condition: Condition }

export interface SolveOptions {
  /** Start from what another setting left; without it everything is at rest. With its setting, the controls move from there. */
  readonly from?: Condition
  readonly fromSetting?: Setting
  /** Leave out the search for other standing states. */
  readonly skipStanding?: boolean
  /** Told now and then how far the search for other standing states is. */
  readonly onProgress?: (said: string) => void
}

/** The circuit of a wiring, ready to be solved for any setting. Faults are laid on it, the wiring stays as it is. */
export function prepareCircuit(wiring: Wiring, kinds: readonly PartKind[], faults: readonly Fault[] = []): Circuit {
  const network = buildNetwork(wiring, kinds)
  return layFaults(new Circuit(network, { opened: new Set(), addedOhm: new Map(), bridges: [], held: new Map() }), kinds, faults)
}

/** What is truly live in a setting: voltages, amps, lamps, states, phases and other standing states. */
export function solveSetting(circuit: Circuit, setting: Setting, options: SolveOptions = {}): Solved {
  circuit.forget()
  const start = options.from ? startFrom(circuit, setting, options.from, options.fromSetting) : restCondition(circuit, setting)
  const walk = walkPhases(circuit, setting, start)
  const { settled } = walk
  const shown = readSolution(circuit, settled.condition)
  const conductors = noteConductors(circuit)
  const cycle = settled.outcome === 'chatters' ? settled.cycle.map((step) => stepSolution(circuit, setting, step)) : undefined
  const standing = options.skipStanding ? [] : findStanding(circuit, setting, settled, options.onProgress)
  const solved: SolvedSetting = {
    setting, positions: Object.fromEntries(allPositions(circuit.network, setting)), ...shown, outcome: settled.outcome, ...(cycle ? { cycle } : {}), phases: walk.phases, dials: walk.dials, standing,
    assumed: circuit.network.assumed, notes: [...walk.notes, ...conductors, ...noteTurned(circuit, settled.condition), ...noteSolution(circuit.network, setting, shown), ...doubtNotes(shown, settled), ...limitNotes(circuit.network, setting)],
  }
  return { solved, condition: settled.condition }
}

/** A generator whose field stands against the magnetism left in its iron has been turned by the battery, through a cut-out that closed on both their volts together. */
function noteTurned({ network: { machines, parts }, views }: Circuit, { emf }: Condition): string[] {
  return machines.filter(({ spec, part }, m) => spec.residual(views[part].now) * emf[m] < -TURNED_V2).map(({ part }) => {
    const { id, part: { title } } = parts[part]
    return `${title} (${id}) is magnetised against the battery: its cut-out closes on battery and generator volts together, which burns or welds the contacts; the battery then turns its field, and it gives as shown. Polarise it to the battery before the engine runs`
  })
}

/** Both EMFs are beyond a few tenths of a volt, V². */
const TURNED_V2 = 0.05

function stepSolution(circuit: Circuit, setting: Setting, condition: Condition) {
  circuit.solveFixed(setting, copyCondition(condition))
  return readSolution(circuit, condition)
}

/** What another setting left once the controls have moved on, but for phases that this setting names. */
function startFrom(circuit: Circuit, setting: Setting, from: Condition, fromSetting: Setting = setting): Condition {
  const moving = settle(circuit, betweenSettings(circuit.network, fromSetting, setting), from, TRAVEL_MS).condition
  circuit.network.phases.forEach(({ part }, i) => {
    const named = setting.phases[circuit.network.parts[part].id]
    if (named !== undefined) moving.phases[i] = named
  })
  return moving
}

/** Time a switch takes between two positions, ms; common practice, no source. */
const TRAVEL_MS = 20

/** The moment between two settings: an axis that moves joins both positions' rows, or none, as it is made. */
function betweenSettings(network: Network, from: Setting, to: Setting): Setting {
  const controls: Record<string, string | number> = { ...to.controls }
  for (const { id, spec } of network.axes) {
    const before = from.controls[id] ?? spec.rest, after = to.controls[id] ?? spec.rest
    if (before === after || spec.range) continue
    controls[id] = spec.makeBeforeBreak ? `${before}|${after}` : ''
  }
  return { ...to, controls }
}

/** Kirchhoff's law must hold to this many amps before an answer is given without a word. */
const DOUBT_A = 1e-6

/** What makes the answer itself doubtful. */
function doubtNotes({ balance: { node, worstA } }: Solution, { isEndless }: Settled): string[] {
  return [
    ...(worstA > DOUBT_A ? [`this answer did not converge: ${worstA} A are unaccounted for at ${node}`] : []),
    ...(isEndless ? ['the contacts did not come to rest or to a cycle; the last two steps are shown'] : []),
  ]
}

/** A sentence for each combination of positions that the record says cannot occur and this setting holds. */
function limitNotes(network: Network, setting: Setting): string[] {
  return brokenLimits(network, setting).map((id) => {
    const why = network.wiring.limits.get(id)?.why
    return `this combination cannot occur (limit ${id}${why ? `: ${why}` : ''})`
  })
}
