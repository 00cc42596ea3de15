import { describe, expect, it } from 'vitest'
import { IDEAL, solved } from '../builders/circuits.ts'
import { link, part, type RecordPlan } from '../builders/record.ts'
import type { Params } from '../../src/record/index.ts'
import { ignition, partDefaults } from '../../src/standards/index.ts'

/** A coil with its second end on the body, through a ballast where one is given. */
function fed(params: Params, emfV: number, supply: RecordPlan['supply'] = '12-', ballastOhm = 0): RecordPlan {
  return {
    supply, metals: ['body'], assume: IDEAL,
    parts: [part('battery', 'battery', { emfV, ohm: 0 }), part('ballast', 'resistor', { ohm: ballastOhm }), part('coil', 'coil', params)],
    wires: [link('w1', 'battery:+', 'ballast:a'), link('w2', 'ballast:b', 'coil:15'), link('w3', 'coil:1', 'body'), link('e', 'battery:-', 'body')],
  }
}
const ohm = (params: Params, emfV: number, supply?: RecordPlan['supply']) => emfV / solved(fed(params, emfV, supply)).wires.w3.amps!

describe('an ignition coil', () => {
  it('takes its volts over its ohms', () => {
    expect(solved(fed({ primaryOhm: 3 }, 12)).wires.w3.amps).toBeCloseTo(4, 3)
    expect(solved(fed({ primaryOhm: 3 }, 9.6)).wires.w3.amps).toBeCloseTo(3.2, 3)
  })

  it('shares the volts with its ballast', () => {
    // 13.5 V over a ballast of 1.6 Ω and a coil of 1.5 Ω.
    const { voltages } = solved(fed({ primaryOhm: 1.5 }, 13.5, '12-', 1.6))
    expect(voltages['coil:15']).toBeCloseTo(13.5 * 1.5 / 3.1, 3)
  })

  it('without figures lies in the usual ranges', () => {
    // Common practice, no source: 2.8 to 3.5 Ω on 12 V, 1.3 to 1.8 Ω with a ballast, 1 to 1.6 Ω on 6 V.
    const usual = [[{}, '12-', ignition.plainCoil12V], [{ ballasted: true }, '12-', ignition.ballastedCoil], [{}, '6-', ignition.coil6V]] as const
    for (const [params, supply, { minOhm, maxOhm }] of usual) {
      expect(ohm(params, 6, supply)).toBeGreaterThanOrEqual(minOhm)
      expect(ohm(params, 6, supply)).toBeLessThanOrEqual(maxOhm)
    }
  })

  it('without figures has those of the table', () => {
    expect(ohm({}, 12)).toBeCloseTo(partDefaults.plainCoil12Ohm.value, 2)
    expect(ohm({}, 6, '6-')).toBeCloseTo(partDefaults.coil6Ohm.value, 2)
  })
})
