import { readFileSync } from 'node:fs'
import { noteExtremes, planSweep, prepareCircuit, sweepSettings, type Extremes } from '../../src/circuit/index.ts'
import { partKinds } from '../../src/parts/index.ts'
import { readRecord, resolveVehicle } from '../../src/record/index.ts'
import type { Question } from '../question.ts'

/** Every setting of the small demo vehicle, both editions together, with the extremes of every wire and load noted. */
export const allSettingsDemo = allSettings('all-settings-demo', 'examples/vehicles/tessarby-errand.json', [1954, 1961])

/** Every setting of the main demo vehicle as it was last built. */
export const allSettingsMain = allSettings('all-settings-main', 'examples/vehicles/ullenscombe-warden.json', [1966])

function allSettings(name: string, file: string, years: readonly number[]): Question {
  return {
    name,
    ask() {
      const value = years.reduce((seconds, year) => seconds + sweepSeconds(file, year), 0)
      return [{ name, value, unit: 's', goal: 3, better: 'lower' }]
    },
  }
}

function sweepSeconds(file: string, year: number): number {
  const read = readRecord(readFileSync(file, 'utf8'), partKinds)
  if (!read.ok) throw new Error(`${file} cannot be read`)
  const resolved = resolveVehicle(read.record, { year }, partKinds)
  if (!resolved.ok) throw new Error(`${file} cannot be resolved for ${year}`)
  const circuit = prepareCircuit(resolved.wiring, partKinds)
  const started = performance.now()
  const extremes: Extremes = new Map()
  for (const { setting } of sweepSettings(circuit, planSweep(circuit))) noteExtremes(circuit, setting, extremes)
  if (extremes.size < 100) throw new Error('the sweep noted next to nothing')
  return (performance.now() - started) / 1000
}
