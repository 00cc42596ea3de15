import { describe, expect, it } from 'vitest'
import type { Law } from '../record/index.ts'
import { LawTable } from './law-table.ts'

function currentOf(law: Law, volts: number): number {
  const laws = new LawTable(1)
  laws.set(0, law)
  laws.evaluate(0, volts)
  return laws.current
}

const bulb: Law = { kind: 'filament', ratedV: 13.5, ratedW: 26.5, coldRatio: 12 }
const diode: Law = { kind: 'diode', forwardV: 0.8, ratedA: 1, emission: 1.8, ohm: 0.05 }
const battery: Law = { kind: 'battery', emfV: 12.6, ohm: 0.01, counterV: 13.5, chargeOhm: 0.25 }
const every: readonly Law[] = [bulb, diode, battery, { kind: 'source', emfV: 10, ohm: 0.2 }, { kind: 'resistor', ohm: 3 }, { kind: 'open' }]

describe('laws of elements', () => {
  it('never fall with the voltage, and slope as they rise', () => {
    for (const law of every) {
      const laws = new LawTable(1)
      laws.set(0, law)
      for (let v = -20; v < 20; v += 0.0625) {
        const h = 1e-6
        laws.evaluate(0, v - h); const below = laws.current
        laws.evaluate(0, v + h); const above = laws.current
        laws.evaluate(0, v)
        expect(above).toBeGreaterThanOrEqual(below)
        if (law.kind !== 'battery') expect(laws.slope).toBeCloseTo((above - below) / (2 * h), 4)
      }
    }
  })

  // lamps.json figures: P21W takes 26.5 W at 13.5 V (from memory of UN Regulation 37); at 12.0 V by the exponent
  // 0.55 of the Standard Handbook for Electrical Engineers, 11th ed. 1978: 1.840 A.
  it('gives a P21W 1.84 A at 12 V', () => {
    expect(Math.abs(currentOf(bulb, 12) / 1.84 - 1)).toBeLessThan(0.02)
  })

  it('makes a cold filament a twelfth of the hot one', () => {
    const cold = 1e-6 / currentOf(bulb, 1e-6)
    expect(13.5 ** 2 / 26.5 / cold).toBeCloseTo(12, 3)
  })

  it('is the same backwards for a filament', () => {
    expect(currentOf(bulb, -7)).toBeCloseTo(-currentOf(bulb, 7), 12)
  })

  it('gives a diode its rated amps at its forward volts', () => {
    expect(currentOf(diode, 0.8)).toBeCloseTo(1, 6)
    expect(Math.abs(currentOf(diode, -12))).toBeLessThan(1e-6)
  })

  it('charges a battery only above its counter-voltage', () => {
    expect(currentOf(battery, 12.5)).toBeCloseTo(-10, 9)
    expect(currentOf(battery, 13.4)).toBeCloseTo(0.01 * 0.8, 9)
    expect(currentOf(battery, 13.7)).toBeCloseTo(0.01 * 0.9 + 0.2 / 0.25, 9)
  })
})
