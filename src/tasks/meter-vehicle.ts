import { listCarrying, METER_OHM, readOhms, readSeriesLamp, readSolution, readVolts, type LampResult, type Setting, type Solution } from '../circuit/index.ts'
import type { Wiring } from '../record/index.ts'
import { refuseForm, refuseName, type Read } from './refusal.ts'
import type { LaidFault } from './say-fault.ts'
import { solveVehicle, weighAssumed, type SolvedStep, type SolvedSteps, type SolveWords, type WeighedAssumption } from './solve-vehicle.ts'

export type MeterWords =
  | { readonly kind: 'volts'; readonly from: string; readonly to: string; readonly meterOhm?: number }
  | { readonly kind: 'amps'; readonly wire: string }
  | { readonly kind: 'ohms'; readonly from: string; readonly to: string }
  | { readonly kind: 'series-lamp'; readonly watts: number }

/** What the meter shows, in the last of the settings. */
export type MeterReading =
  | { readonly kind: 'volts'; readonly from: string; readonly to: string; readonly meterOhm: number; readonly volts: number; readonly amps: number; readonly withoutMeterV: number | null }
  | { readonly kind: 'amps'; readonly wire: string; readonly amps: number | null }
  /** null: nothing joins the two points. */
  | { readonly kind: 'ohms'; readonly from: string; readonly to: string; readonly ohm: number | null }
  | { readonly kind: 'series-lamp'; readonly watts: number; readonly amps: number; readonly lamp: LampResult; readonly lamps: Readonly<Record<string, LampResult>> }

/** A reading and what it rests on: the setting, the faults laid on, what moved by itself, what was assumed. */
export interface MeterAnswer {
  readonly reading: MeterReading
  readonly setting: Setting
  readonly faults: readonly LaidFault[]
  readonly followed: SolvedStep['followed']
  /** Whether other settings came before. */
  readonly isChained: boolean
  /** By `part.state`: what is not at rest while the meter is read; with the battery off, nothing. */
  readonly moved: Readonly<Record<string, string>>
  readonly notes: readonly string[]
  readonly assumed: readonly WeighedAssumption[]
}

/** Reads a meter on the vehicle in a chain of settings, with the faults laid on it. */
export function meterVehicle(wiring: Wiring, words: SolveWords, meter: MeterWords, onProgress?: (said: string) => void): Read<MeterAnswer> {
  const solved = solveVehicle(wiring, words, onProgress)
  if (!solved.ok) return solved
  const read = readMeter(solved.value, meter)
  if (!read.ok) return read
  const { steps, circuit } = solved.value
  const { setting, faults, followed, notes } = steps[steps.length - 1]
  const { states, carrying, ...reading } = read.value
  const moved = circuit.network.states.flatMap(({ id, spec }) => states[id] === undefined || states[id] === spec.rest ? [] : [[id, states[id]]])
  return {
    ok: true, value: {
      reading, setting, faults, followed, isChained: steps.length > 1, moved: Object.fromEntries(moved) as Record<string, string>,
      notes: isAsSolved(meter) ? notes : [], assumed: weighAssumed(circuit, carrying),
    },
  }
}

/** Ohms and the series lamp are read on another circuit than the one solved: battery off, or a lamp before it. */
const isAsSolved = ({ kind }: MeterWords) => kind === 'volts' || kind === 'amps'

/** The states that held while the meter was read, and what carried current then. */
type Under = { readonly states: Solution['states']; readonly carrying: ReadonlySet<string> }

function readMeter(solved: SolvedSteps, meter: MeterWords): Read<MeterReading & Under> {
  const { circuit, settings, steps } = solved
  const setting = settings[settings.length - 1]
  switch (meter.kind) {
    case 'amps': {
      const solved = steps[steps.length - 1], { wires, states } = solved
      if (!Object.hasOwn(wires, meter.wire)) return refuseName('wire', meter.wire, Object.keys(wires), circuit.network.wiring.leftOut)
      return { ok: true, value: { ...meter, amps: wires[meter.wire].amps, states, carrying: listCarrying(circuit, [solved]) } }
    }
    case 'series-lamp': {
      if (!circuit.network.parts.some(({ posts }) => posts)) return refuseForm('this vehicle has no battery to put a lamp before')
      if (!(meter.watts > 0 && meter.watts <= 1000)) return refuseForm('the series lamp takes watts above 0 and up to 1000')
      const { lamp, amps, circuit: behind, condition: rest } = readSeriesLamp(circuit, setting, meter.watts)
      const solution = readSolution(behind, rest), { lamps, states } = solution
      return { ok: true, value: { ...meter, lamp, amps, lamps, states, carrying: listCarrying(behind, [solution]) } }
    }
    default: return readBetween(solved, setting, meter)
  }
}

function readBetween({ circuit, condition, steps }: SolvedSteps, setting: Setting, asked: Extract<MeterWords, { from: string }>): Read<MeterReading & Under> {
  const { pointOf, points, wiring } = circuit.network
  const laid = new Set(steps[steps.length - 1].faults.map(({ fault }) => fault))
  const meter = { ...asked, from: endPoint(wiring, asked.from, laid), to: endPoint(wiring, asked.to, laid) }
  for (const name of [meter.from, meter.to]) {
    if (!pointOf.has(name)) return refuseName('point', name, points.filter((point) => !point.includes(':~')), wiring.leftOut)
  }
  const from = pointOf.get(meter.from) as number, to = pointOf.get(meter.to) as number
  if (meter.kind === 'ohms') return { ok: true, value: { ...meter, ...readOhms(circuit, setting, from, to), states: {} } }
  const meterOhm = meter.meterOhm ?? METER_OHM
  if (!(meterOhm >= 1 && meterOhm <= 1e12)) return refuseForm('the meter takes a resistance from 1 to 1e12 ohm')
  const { metered, ...reading } = readVolts(circuit, setting, condition, from, to, meterOhm)
  return { ok: true, value: { ...meter, meterOhm, ...reading, states: metered.states, carrying: listCarrying(circuit, [metered]) } }
}

/** A point; or `wire.1`, `wire.2` for an end of a wire: where it sits or, taken off by a fault, what its other end still sits on. */
function endPoint({ wires }: Wiring, name: string, laid: ReadonlySet<string>): string {
  const [, id, number] = /^(.+)\.([12])$/.exec(name) ?? []
  const ends = id === undefined ? undefined : wires.get(id)?.ends
  if (!ends) return name
  const end = Number(number) - 1
  return (laid.has(`open:${name}`) ? ends[1 - end].at : ends[end].at) ?? name
}
