import { describe, expect, it } from 'vitest'
import { IDEAL, setting, solved } from '../builders/circuits.ts'
import { link, part, type RecordPlan } from '../builders/record.ts'

/** A battery, an ammeter, and 3 Ω behind it. */
const behind = (params = {}): RecordPlan => ({
  metals: ['body'], assume: IDEAL,
  parts: [part('battery', 'battery', { emfV: 12, ohm: 0 }), part('meter', 'ammeter', params), part('load', 'resistor', { ohm: 3 })],
  wires: [link('w1', 'battery:+', 'meter:in'), link('w2', 'meter:out', 'load:a'), link('w3', 'load:b', 'body'), link('e', 'battery:-', 'body')],
})

describe('an ammeter', () => {
  it('reads what the loads take', () => {
    expect(solved(behind({ ohm: 0 })).elements.meter.amps).toBeCloseTo(4, 3)
    expect(solved(behind()).dials.meter).toEqual({ shows: expect.closeTo(12 / 3.002, 3) as number, unit: 'A' })
  })

  it('reads negative when its ends change places', () => {
    const swapped = solved(behind({ ohm: 0.01 }), setting(), [{ kind: 'swap', a: 'meter:in', b: 'meter:out' }])
    expect(swapped.elements.meter.amps).toBeCloseTo(-12 / 3.01, 3)
    expect(swapped.dials.meter.shows).toBeCloseTo(-12 / 3.01, 3)
  })

  it('drops its ohms times its amps', () => {
    expect(solved(behind({ ohm: 0.01 })).elements.meter.volts).toBeCloseTo(0.01 * 12 / 3.01, 4)
    expect(solved(behind()).elements.meter.volts).toBeCloseTo(0.002 * 12 / 3.002, 4)
  })

  it('takes everything with it when burnt through', () => {
    expect(solved(behind(), setting(), [{ kind: 'open', id: 'meter' }]).wires.w3.amps).toBe(0)
  })
})
