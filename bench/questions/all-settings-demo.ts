import { readFileSync } from 'node:fs'
import { noteExtremes, planSweep, prepareCircuit, sweepSettings, type Extremes } from '../../src/circuit/index.ts'
import { partKinds } from '../../src/parts/index.ts'
import { readRecord, resolveVehicle } from '../../src/record/index.ts'
import type { Figure, Question } from '../question.ts'

/** Every setting of the demo vehicle, both editions together, with the extremes of every wire and load noted. */
export const allSettingsDemo: Question = {
  name: 'all-settings-demo',
  ask(): Figure[] {
    const read = readRecord(readFileSync('examples/vehicles/tessarby-errand.json', 'utf8'), partKinds)
    if (!read.ok) throw new Error('the demo cannot be read')
    let seconds = 0
    for (const year of [1954, 1961]) {
      const resolved = resolveVehicle(read.record, { year }, partKinds)
      if (!resolved.ok) throw new Error('the demo cannot be resolved')
      const circuit = prepareCircuit(resolved.wiring, partKinds)
      const started = performance.now()
      const extremes: Extremes = new Map()
      for (const { setting } of sweepSettings(circuit, planSweep(circuit))) noteExtremes(circuit, setting, extremes)
      seconds += (performance.now() - started) / 1000
      if (extremes.size < 100) throw new Error('the sweep noted next to nothing')
    }
    return [{ name: 'all-settings-demo', value: seconds, unit: 's', goal: 3, better: 'lower' }]
  },
}
