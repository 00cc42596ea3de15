import { describe, expect, it } from 'vitest'
import { IDEAL, solved } from '../builders/circuits.ts'
import { link, part, type RecordPlan } from '../builders/record.ts'

/** A diode before a resistance, its anode or its cathode towards the battery. */
const before = (ohm: number, emfV: number, first: 'anode' | 'cathode' = 'anode', params = {}): RecordPlan => ({
  metals: ['body'], assume: IDEAL,
  parts: [part('battery', 'battery', { emfV, ohm: 0 }), part('valve', 'diode', params), part('load', 'resistor', { ohm })],
  wires: [
    link('w1', 'battery:+', `valve:${first}`), link('w2', first === 'anode' ? 'valve:cathode' : 'valve:anode', 'load:a'),
    link('w3', 'load:b', 'body'), link('e', 'battery:-', 'body'),
  ],
})

describe('a diode', () => {
  it('keeps back its forward volts at its rated amps', () => {
    // 12 V less 0.8 V over 11.2 Ω: 1 A.
    const { elements } = solved(before(11.2, 12, 'anode', { forwardV: 0.8, ratedA: 1 }))
    expect(elements.valve.amps).toBeCloseTo(1, 3)
    expect(elements.valve.volts).toBeCloseTo(0.8, 3)
  })

  it('keeps back a little less at a tenth of the amps', () => {
    // Junction 1.8·25.85 mV·ln 10 = 0.107 V less, and a tenth of the 0.05 V in its leads.
    const { elements } = solved(before(112, 12, 'anode', { forwardV: 0.8, ratedA: 1, ohm: 0.05 }))
    const amps = elements.valve.amps!
    expect(elements.valve.volts).toBeCloseTo(0.75 + 1.8 * 0.02585 * Math.log(amps) + 0.05 * amps, 4)
  })

  it('lets next to nothing back', () => {
    expect(solved(before(11.2, 12, 'cathode')).elements.load.amps).toBeLessThan(1e-6)
  })

  it('is no way through below half its forward volts', () => {
    expect(solved(before(1, 0.4)).elements.load.amps).toBeLessThan(1e-3)
  })
})
