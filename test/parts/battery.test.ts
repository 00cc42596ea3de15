import { describe, expect, it } from 'vitest'
import { IDEAL, setting, solved } from '../builders/circuits.ts'
import { link, part, type RecordPlan } from '../builders/record.ts'
import type { Params } from '../../src/record/index.ts'
import { internalMohm } from '../../src/standards/index.ts'

type Supply = RecordPlan['supply']

/** A battery on a resistance. */
const loaded = (params: Params, ohm: number, supply: Supply = '12-'): RecordPlan => ({
  supply, metals: ['body'], assume: IDEAL, parts: [part('battery', 'battery', params), part('load', 'resistor', { ohm })],
  wires: [link('w1', 'battery:+', 'load:a'), link('w2', 'load:b', 'body'), link('e', 'battery:-', 'body')],
})
/** Volts at the posts with nothing to speak of taken. */
const restV = (params: Params, supply: Supply = '12-') => solved(loaded(params, 1e9, supply)).voltages['battery:+']!
const low = setting({}, { battery: 'low' })

/** Internal resistance by two loads: from E = V + I·r. */
function innerOhm(params: Params, supply: Supply = '12-'): number {
  const volts = solved(loaded(params, 1, supply)).voltages['battery:+']!
  return (restV(params, supply) - volts) / volts
}

describe('a battery', () => {
  // A battery maker's table of charge and rest volts at 80 °F (26.7 °C).
  it.each([[100, 12.65], [75, 12.45], [50, 12.24], [25, 12.06], [0, 11.89]])('at %s per cent charge rests at %s V', (chargePercent, volts) => {
    expect(restV({ chargePercent, tempC: 26.7 })).toBeCloseTo(volts, 6)
    expect(restV({ chargePercent, tempC: 26.7 }, '6-')).toBeCloseTo(volts / 2, 6)
    expect(restV({ chargePercent, tempC: 26.7 }, '24-')).toBeCloseTo(volts * 2, 6)
  })

  it('rests a little lower in the cold', () => {
    // 0.2 mV a kelvin and cell, six cells, 26.7 K; from memory of battery handbooks.
    expect(restV({ tempC: 0 })).toBeCloseTo(12.65 - 0.0002 * 6 * 26.7, 6)
  })

  it('low is a quarter charged behind three times the resistance', () => {
    const plan = loaded({ tempC: 26.7, ohm: 0.01 }, 0.5)
    expect(solved(plan).wires.w1.amps).toBeCloseTo(12.65 / 0.51, 6)
    expect(solved(plan, low).wires.w1.amps).toBeCloseTo(12.06 / 0.53, 6)
  })

  it('takes charge only above its counter-voltage', () => {
    // A stiffer supply of 13.2 or 14.5 V behind 0.1 Ω; the battery stands against it with 13.5 V, and takes charge behind
    // 0.25 Ω; not stated, behind what 50 Ah take when full: 11 Ω·Ah (common practice, no source).
    const charger = (emfV: number, more: Params = { chargeOhm: 0.25 }) => solved({
      ...loaded({ emfV: 12.65, ohm: 0.01 }, 1e9),
      parts: [part('battery', 'battery', { emfV: 12.65, ohm: 0.01, ...more }), part('charger', 'battery', { emfV, ohm: 0.1 })],
      wires: [link('w1', 'charger:+', 'battery:+'), link('w2', 'charger:-', 'body'), link('e', 'battery:-', 'body')],
    }).wires.w1.amps!
    expect(charger(13.2)).toBeLessThan(0.01)
    expect(charger(14.5)).toBeCloseTo(1 / 0.35, 1)
    expect(charger(14.5, { capacityAh: 50 })).toBeCloseTo(1 / (0.1 + 11 / 50), 1)
  })

  it('has the resistance of a healthy battery of its size', () => {
    // Common practice, no source: 4 to 10 mΩ for 12 V and 40 to 60 Ah, 2 to 6 mΩ for 6 V and 70 to 100 Ah.
    for (const [capacityAh, cells, supply] of [[50, 6, '12-'], [85, 3, '6-']] as const) {
      const { lowMohm, highMohm } = internalMohm(cells, capacityAh)
      expect(innerOhm({ capacityAh }, supply)).toBeGreaterThan(lowMohm / 1000)
      expect(innerOhm({ capacityAh }, supply)).toBeLessThan(highMohm / 1000)
    }
  })

  it('has twice the resistance with twice the cells', () => {
    expect(innerOhm({ capacityAh: 50 }, '24-') / innerOhm({ capacityAh: 50 })).toBeCloseTo(2, 3)
  })
})
