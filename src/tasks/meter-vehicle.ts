import { METER_OHM, readOhms, readSeriesLamp, readSolution, readVolts, type LampResult, type Setting } from '../circuit/index.ts'
import type { Wiring } from '../record/index.ts'
import { refuseForm, refuseName, type Read } from './refusal.ts'
import { solveVehicle, type SolvedSteps, type SolveWords } from './solve-vehicle.ts'

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

/** Reads a meter on the vehicle in a chain of settings, with the faults laid on it. */
export function meterVehicle(wiring: Wiring, words: SolveWords, meter: MeterWords, onProgress?: (said: string) => void): Read<MeterReading> {
  const solved = solveVehicle(wiring, words, onProgress)
  return solved.ok ? readMeter(solved.value, meter) : solved
}

function readMeter(solved: SolvedSteps, meter: MeterWords): Read<MeterReading> {
  const { circuit, settings, steps } = solved
  const setting = settings[settings.length - 1]
  switch (meter.kind) {
    case 'amps': {
      const { wires } = steps[steps.length - 1]
      if (!Object.hasOwn(wires, meter.wire)) return refuseName('wire', meter.wire, Object.keys(wires))
      return { ok: true, value: { ...meter, amps: wires[meter.wire].amps } }
    }
    case 'series-lamp': {
      if (![...circuit.network.wiring.parts.values()].some(({ kind }) => kind === 'battery')) return refuseForm('this vehicle has no battery to put a lamp before')
      if (!(meter.watts > 0 && meter.watts <= 1000)) return refuseForm('the series lamp takes watts above 0 and up to 1000')
      const { lamp, amps, circuit: behind, condition: rest } = readSeriesLamp(circuit, setting, meter.watts)
      return { ok: true, value: { ...meter, lamp, amps, lamps: readSolution(behind, rest).lamps } }
    }
    default: return readBetween(solved, setting, meter)
  }
}

function readBetween({ circuit, condition }: SolvedSteps, setting: Setting, meter: Extract<MeterWords, { from: string }>): Read<MeterReading> {
  const { pointOf, points } = circuit.network
  for (const name of [meter.from, meter.to]) {
    if (!pointOf.has(name)) return refuseName('point', name, points.filter((point) => !point.includes(':~')))
  }
  const from = pointOf.get(meter.from) as number, to = pointOf.get(meter.to) as number
  if (meter.kind === 'ohms') return { ok: true, value: { ...meter, ohm: readOhms(circuit, setting, from, to) } }
  const meterOhm = meter.meterOhm ?? METER_OHM
  if (!(meterOhm >= 1 && meterOhm <= 1e12)) return refuseForm('the meter takes a resistance from 1 to 1e12 ohm')
  return { ok: true, value: { ...meter, meterOhm, ...readVolts(circuit, setting, condition, from, to, meterOhm) } }
}
