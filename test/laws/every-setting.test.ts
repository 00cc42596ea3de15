import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { noteExtremes, planSweep, prepareCircuit, restCondition, settle, sweepSettings, type Circuit, type Extremes } from '../../src/circuit/index.ts'
import { isPossible } from '../../src/circuit/positions.ts'
import { partKinds } from '../../src/parts/index.ts'
import { readRecord, resolveVehicle } from '../../src/record/index.ts'
import { circuitOf } from '../builders/circuits.ts'
import { randomFleet } from '../builders/random-fleet.ts'
import { randomSetting } from '../builders/random-setting.ts'
import { seededChance } from '../builders/random-vehicle.ts'
import { WARDEN_OPTIONS, WARDEN_YEARS, wardenCircuit } from '../builders/warden.ts'

const isLong = import.meta.env.MODE === 'long'
/** Whole settings tried by chance against each sweep; the long tests try what the design asks for. */
const TRIALS = isLong ? 20_000 : 150
const SHARE = 0.02

function demo(year: number): Circuit {
  const read = readRecord(readFileSync(new URL('../../examples/vehicles/tessarby-errand.json', import.meta.url), 'utf8'), partKinds)
  if (!read.ok) throw new Error('the demo cannot be read')
  const resolved = resolveVehicle(read.record, { year }, partKinds)
  if (!resolved.ok) throw new Error('the demo cannot be resolved')
  return prepareCircuit(resolved.wiring, partKinds)
}

function sweep(circuit: Circuit): Extremes {
  const extremes: Extremes = new Map()
  for (const { setting } of sweepSettings(circuit, planSweep(circuit))) noteExtremes(circuit, setting, extremes)
  return extremes
}

/** Figures of random settings that lie more than 2 % beyond what the sweep found. */
function worseByChance(circuit: Circuit, extremes: Extremes, seed: number): string[] {
  const chance = seededChance(seed)
  const beyond = new Map<string, string>()
  for (let trial = 0; trial < TRIALS; trial++) {
    const setting = randomSetting(circuit, chance)
    if (!isPossible(circuit.network, setting)) continue
    settle(circuit, setting, restCondition(circuit, setting))
    const own: Extremes = new Map()
    noteExtremes(circuit, setting, own)
    for (const [key, { value }] of own) {
      if (followsSender(circuit, key)) continue
      const found = extremes.get(key)?.value ?? -Infinity
      const room = Math.max(SHARE * Math.abs(found), 0.002)
      if (value > found + room) beyond.set(key, `${key}: ${value} by chance, ${found} in the sweep, at ${JSON.stringify(setting)}`)
    }
  }
  return [...beyond.values()]
}

/** The least volts of a gauge or a sender say where the float stands, and a sweep tries three places of it. */
function followsSender({ network }: Circuit, key: string): boolean {
  const kind = key.startsWith('least ') ? network.wiring.parts.get(key.slice('least '.length).split('.')[0])?.kind : undefined
  return kind === 'gauge' || kind === 'control'
}

describe('a sweep stands for every setting', () => {
  it('in the phases too in which a flasher lights its lamps', () => {
    const extremes = sweep(demo(1961))
    // Two turn lamps of 26.5 W at 13.5 V, near 12 V: 3.7 A and more; dark, the hot wire lets 0.7 A through. A low battery that cranks leaves the lamps 8.7 V.
    expect(extremes.get('amps l14')!.value).toBeGreaterThan(3.5)
    expect(-extremes.get('least turn-left')!.value).toBeGreaterThan(8)
  })

  it.each([1954, 1961])('of the demo vehicle of %s', (year) => {
    const circuit = demo(year)
    expect(worseByChance(circuit, sweep(circuit), year)).toEqual([])
  }, 600_000)

  // A sweep of the main demo vehicle takes ten seconds: for the long tests only.
  it.runIf(isLong).each(WARDEN_YEARS)('of the main demo vehicle of %s, with all its options', (year) => {
    const circuit = wardenCircuit(year, WARDEN_OPTIONS)
    expect(worseByChance(circuit, sweep(circuit), year)).toEqual([])
  }, 600_000)

  it.each(Array.from({ length: isLong ? 10 : 3 }, (_, i) => i + 1))('of generated vehicle %s', (seed) => {
    const circuit = circuitOf(randomFleet(seed))
    expect(worseByChance(circuit, sweep(circuit), seed)).toEqual([])
  }, 600_000)
})
