// A battery with loads side by side on it, written out as a record, read again and opened as from a file:
//
//   onBattery({ emfV: 12, ohm: 0.01 }, [resistor('starter', 0.05)], 0.09).solve().solved.elements.starter.amps
import { expect } from 'vitest'
import { writeRecord, type Params, type RecordPart } from '../../src/record/index.ts'
import { openVehicle, readRecordText, type OpenVehicle } from '../records/open-vehicle.ts'
import { fixing, link, makeRecord, part, wire, type RecordPlan } from './record.ts'

export type Load = readonly [id: string, part: RecordPart]

export const battery = (params: Params): Load => part('battery', 'battery', params)
export const resistor = (id: string, ohm: number): Load => part(id, 'resistor', { ohm })
export const lamp = (id: string, powerW: number, ratedV: number): Load => part(id, 'lamp', { powerW, ratedV, coldRatio: 12 })
/** A lamp by its category or trade number, with the filaments that it is wired for. */
export const bulb = (id: string, name: string, more: Params = {}): Load => part(id, 'lamp', { bulb: name, ...more })
/** A wire of these ohms, with nothing more in its joints. */
export const ohms = (id: string, from: string, to: string, ohm: number) =>
  wire(id, from, to, { ends: [{ at: from, jointOhm: 0 }, { at: to, jointOhm: 0 }], ohm })

/** The plan as a record on a body, opened for its one vehicle. */
export function openPlan(plan: RecordPlan): OpenVehicle {
  const engine = { speeds: { crankingRpm: 150, idleRpm: 700, cruiseRpm: 2500 } }
  return openVehicle(readRecordText(writeRecord(makeRecord({ engine, metals: ['body'], ...plan }))), {})
}

/** Resistors and lamps of one filament on a battery, through a wire `w-feed` of some ohms. */
export function onBattery(batteryParams: Params, loads: readonly Load[], feedOhm = 0): OpenVehicle {
  return openPlan({
    parts: [battery(batteryParams), ...loads], splices: { feed: {} },
    wires: [ohms('w-feed', 'battery:+', 'feed', feedOhm), ...loads.map(([id, load]) => link(`w-${id}`, 'feed', `${id}:${endsOf(load)[0]}`))],
    fixings: [fixing('f-battery', 'battery:-', 'body', 0), ...loads.map(([id, load]) => fixing(`f-${id}`, `${id}:${endsOf(load)[1]}`, 'body', 0))],
  })
}

const endsOf = ({ kind }: RecordPart) => (kind === 'lamp' ? ['in', 'out'] : ['a', 'b'])

export function expectWithin(value: number | null | undefined, expected: number, percent: number) {
  expect(typeof value, `${value}, expected ${expected}`).toBe('number')
  expect(Math.abs(value! - expected), `${value}, expected ${expected} within ${percent} %`).toBeLessThanOrEqual(Math.abs(expected) * percent / 100)
}
