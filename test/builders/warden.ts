import { readFileSync } from 'node:fs'
import { prepareCircuit, type Circuit } from '../../src/circuit/index.ts'
import { partKinds } from '../../src/parts/index.ts'
import { readRecord, type Vehicle, type Wiring, type WiringRecord } from '../../src/record/index.ts'
import { mustResolve } from './record.ts'

export const WARDEN_TEXT = readFileSync(new URL('../../examples/vehicles/ullenscombe-warden.json', import.meta.url), 'utf8')

/** A year of each of the main demo vehicle's editions. */
export const WARDEN_YEARS = [1950, 1956, 1961, 1966] as const
export type WardenYear = typeof WARDEN_YEARS[number]

export const WARDEN_OPTIONS = ['lead-lamp', 'pump-panel', 'search', 'second-battery', 'two-tone'] as const
export type WardenOption = typeof WARDEN_OPTIONS[number]

/** The record of the main demo vehicle, a light fire tender. */
export function readWarden(): WiringRecord {
  const read = readRecord(WARDEN_TEXT, partKinds)
  if (read.ok) return read.record
  throw new Error(read.problems.map(({ sentence }) => sentence).join('\n'))
}

/** A tender of that year with these options and no others. */
export function wardenOf(year: WardenYear, options: readonly WardenOption[] = []): Vehicle {
  return { year, options: Object.fromEntries(WARDEN_OPTIONS.map((option) => [option, options.includes(option)])) }
}

export function wardenWiring(year: WardenYear, options: readonly WardenOption[] = []): Wiring {
  return mustResolve(readWarden(), wardenOf(year, options), partKinds)
}

export function wardenCircuit(year: WardenYear, options: readonly WardenOption[] = []): Circuit {
  return prepareCircuit(wardenWiring(year, options), partKinds)
}
