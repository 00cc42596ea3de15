import { findStray } from './find-stray.ts'
import type { Circuit } from './circuit.ts'
import type { Condition } from './condition.ts'
import { lampResult } from './lamp-result.ts'
import type { NetElement, Network } from './network.ts'
import type { Balance, ElementResult, LampResult, Solution, WireResult } from './solved.ts'

/** The present solution of a circuit as plain data. */
export function readSolution(circuit: Circuit, condition: Condition): Solution {
  const { network } = circuit
  const { states, phases, parts } = network
  const voltages = readVoltages(circuit)
  return {
    voltages,
    wires: readWires(circuit),
    lamps: readLamps(circuit),
    elements: readElements(circuit),
    states: Object.fromEntries(states.map(({ id }, i) => [id, condition.states[i]])),
    at: Object.fromEntries(phases.map(({ part }, i) => [parts[part].id, condition.phases[i]])),
    floating: Object.keys(voltages).filter((point) => voltages[point] === null),
    stray: findStray(circuit),
    balance: readBalance(circuit),
  }
}

/** Figures are given to a nanovolt and a nanoampere, so that the way to a solution leaves no trace in it. */
export const tidy = (value: number): number => Math.round(value * 1e9) / 1e9 + 0
/** What is undetermined is null. */
export const known = (value: number): number | null => (Number.isNaN(value) ? null : tidy(value))

const isInner = (point: string) => point.includes(':~')

function readVoltages(circuit: Circuit): Record<string, number | null> {
  const voltages: Record<string, number | null> = {}
  circuit.network.points.forEach((name, point) => {
    if (!isInner(name)) voltages[name] = voltsAt(circuit, point)
  })
  return voltages
}

function readWires(circuit: Circuit): Record<string, WireResult> {
  const { wiring, elements, elementOf } = circuit.network
  const wires: Record<string, WireResult> = {}
  for (const id of wiring.wires.keys()) {
    const e = elementOf.get(id) as number
    const { from, to } = elements[e]
    wires[id] = { amps: known(circuit.elementAmps(e)), dropV: dropAcross(circuit, elements[e]), volts: [voltsAt(circuit, from), voltsAt(circuit, to)] }
  }
  return wires
}

function voltsAt(circuit: Circuit, point: number): number | null {
  return circuit.isFloating(point) ? null : tidy(circuit.pointVolts(point))
}

function dropAcross(circuit: Circuit, { from, to }: { from: number; to: number }): number | null {
  if (circuit.isFloating(from) || circuit.isFloating(to)) return null
  return tidy(circuit.pointVolts(from) - circuit.pointVolts(to))
}

function readElements(circuit: Circuit): Record<string, ElementResult> {
  const elements: Record<string, ElementResult> = {}
  circuit.network.elements.forEach((element, e) => {
    if (element.part < 0) return
    elements[element.id] = { volts: dropAcross(circuit, element), amps: known(circuit.elementAmps(e)) }
  })
  return elements
}

function readLamps(circuit: Circuit): Record<string, LampResult> {
  const lamps: Record<string, LampResult> = {}
  for (const { id, element, beside, spec } of circuit.network.lamps) {
    // A lamp with an end that floats has no volts across it: nothing flows, and the end takes those of the other.
    const volts = Math.abs(dropAcross(circuit, circuit.network.elements[element]) ?? 0)
    const amps = [element, ...beside].reduce((sum, e) => sum + Math.abs(circuit.elementAmps(e)), 0)
    lamps[id] = lampResult(tidy(volts), spec.ratedV, circuit.laws.open[element] === 1 ? 0 : lightOf(spec, amps))
  }
  return lamps
}

/** Light of a lamp that follows its current; undefined for a filament. */
function lightOf({ ratedA }: { readonly ratedA?: number }, amps: number): number | undefined {
  return ratedA === undefined ? undefined : Math.abs(amps) / ratedA
}

/** What sources give and what everything else takes, W; all are sums over elements of volts times amps. */
function readBalance(circuit: Circuit): Balance {
  const { network, inner: { worstNode, worstA }, topology: { nodeOf } } = circuit
  const sums = { sourceW: 0, loadW: 0, wiresW: 0, insideW: 0, chargeW: 0 }
  const takers = network.elements.map(takerOf(network))
  const count = (watts: number, taker: Taker) => { if (watts < 0) sums.sourceW -= watts; else sums[taker] += watts }
  network.elements.forEach(({ from, to }, e) => {
    if (nodeOf[from] !== nodeOf[to]) count((circuit.pointVolts(from) - circuit.pointVolts(to)) * circuit.elementAmps(e), takers[e])
  })
  for (const { from, to, ohm } of circuit.overlay.bridges) count((circuit.pointVolts(from) - circuit.pointVolts(to)) ** 2 / ohm, 'wiresW')
  const { sourceW, loadW, wiresW, insideW, chargeW } = sums
  return {
    node: network.points[nodeOf.indexOf(Math.max(worstNode, 0))] ?? '', worstA, sourceW: tidy(sourceW), lostW: tidy(loadW + wiresW + insideW + chargeW),
    loadW: tidy(loadW), wiresW: tidy(wiresW), insideW: tidy(insideW), chargeW: tidy(chargeW),
  }
}

type Taker = 'loadW' | 'wiresW' | 'insideW' | 'chargeW'

/** Under which heading the power that an element takes is counted. */
function takerOf({ parts }: Network): (element: NetElement) => Taker {
  const isSource = parts.map(({ model }) => model.elements.some(({ does }) => does === 'source'))
  return ({ does, part }) => {
    if (does === 'source') return part >= 0 && parts[part].posts ? 'chargeW' : 'insideW'
    if (part >= 0 && isSource[part]) return 'insideW'
    return does === 'load' || does === 'winding' ? 'loadW' : 'wiresW'
  }
}
