import { describe, expect, it } from 'vitest'
import { IDEAL, solved } from '../builders/circuits.ts'
import { link, part, type RecordPlan } from '../builders/record.ts'
import type { Params } from '../../src/record/index.ts'

/** An LED lamp on a battery that keeps its volts, the right way round or not. */
const lit = (params: Params, emfV: number, reversed = false): RecordPlan => ({
  metals: ['body'], assume: IDEAL,
  parts: [part('battery', 'battery', { emfV, ohm: 0 }), part('lamp', 'led', { ratedV: 12, ratedA: 0.02, forwardV: 2, ...params })],
  wires: [link('w1', 'battery:+', reversed ? 'lamp:out' : 'lamp:in'), link('w2', reversed ? 'lamp:in' : 'lamp:out', 'body'), link('e', 'battery:-', 'body')],
})
const amps = (params: Params, emfV: number, reversed = false) => solved(lit(params, emfV, reversed)).wires.w1.amps!

describe('an LED lamp', () => {
  it('takes its rated amps at its rated volts', () => {
    expect(amps({}, 12)).toBeCloseTo(0.02, 6)
    expect(solved(lit({}, 12)).lamps.lamp.class).toBe('normal')
  })

  it('takes at half its volts what its resistor lets by', () => {
    // 10 V over the resistor at 20 mA make it 500 Ω; 6 V less the junction's 2 V + 2·25.85 mV·ln(I/20 mA).
    const i = amps({}, 6)
    expect(i).toBeCloseTo((6 - (2 + 2 * 0.02585 * Math.log(i / 0.02))) / 500, 6)
    expect(i).toBeCloseTo(0.008, 3)
  })

  it('is dark below its forward volts', () => {
    expect(solved(lit({}, 1.5)).lamps.lamp.class).toBe('off')
  })

  it('is dark the wrong way round', () => {
    expect(solved(lit({}, 12, true)).lamps.lamp.class).toBe('off')
    expect(amps({}, 12, true)).toBeLessThan(1e-6)
  })

  it('with a bridge lights either way round', () => {
    expect(amps({ bridge: true }, 12, true)).toBeCloseTo(0.02, 6)
    expect(solved(lit({ bridge: true }, 12)).lamps.lamp.class).toBe('normal')
    expect(solved(lit({ bridge: true }, 12, true)).lamps.lamp.class).toBe('normal')
  })
})
