// A record kept beside its test, opened for one vehicle and solved as the product does it.
//
//   const early = openVehicle(readRecordFile(new URL('./i-splice.json', import.meta.url)), { year: 1955 })
//   early.solve({ controls: { 'switch.pull': 'on' } }).solved.wires['w-feed'].amps
import { readFileSync } from 'node:fs'
import { prepareCircuit, solveSetting, type Condition, type Fault, type Setting, type Solved } from '../../src/circuit/index.ts'
import { partKinds } from '../../src/parts/index.ts'
import { readRecord, type Vehicle, type Wiring, type WiringRecord } from '../../src/record/index.ts'
import { mustResolve } from '../builders/record.ts'

export interface OpenVehicle {
  readonly wiring: Wiring
  /** What is not named is at rest, with the engine stopped and the battery full. */
  solve(setting?: Partial<Setting>, more?: { readonly faults?: readonly Fault[]; readonly from?: Condition }): Solved
}

/** Throws with every conflict where the record gives no wiring for this vehicle. */
export function openVehicle(record: WiringRecord, vehicle: Vehicle): OpenVehicle {
  const wiring = mustResolve(record, vehicle, partKinds)
  return {
    wiring,
    solve: (setting = {}, { faults = [], from } = {}) => {
      const whole: Setting = { controls: {}, engine: 'stopped', battery: 'full', phases: {}, ...setting }
      return solveSetting(prepareCircuit(wiring, partKinds, faults), whole, { ...from && { from } })
    },
  }
}

/** Throws with every problem where the file is no record. */
export function readRecordFile(file: URL): WiringRecord {
  return readRecordText(readFileSync(file, 'utf8'))
}

/** The same from the text of a record. */
export function readRecordText(text: string): WiringRecord {
  const read = readRecord(text, partKinds)
  if (read.ok) return read.record
  throw new Error(`the record has problems:\n${read.problems.map(({ sentence }) => sentence).join('\n')}`)
}
