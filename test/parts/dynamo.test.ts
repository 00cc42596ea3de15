import { describe, expect, it } from 'vitest'
import { IDEAL, setting, solved } from '../builders/circuits.ts'
import { link, part, type RecordPlan } from '../builders/record.ts'
import type { Params } from '../../src/record/index.ts'

const NAMEPLATE = { ratio: 1, ratedV: 12, ratedA: 20, cutInRpm: 1100, fullOutputRpm: 1800 }

/** A dynamo with its field on its own armature and nothing else to feed; the engine's speed is its own. */
const alone = (params: Params, supply: RecordPlan['supply'] = '12-'): RecordPlan => ({
  supply, metals: ['body'], assume: IDEAL, parts: [part('machine', 'dynamo', { ...NAMEPLATE, ...params })],
  wires: [link('f', 'machine:D', 'machine:F'), link('c', 'machine:case', 'body')],
})
const openV = (params: Params, rpm: number, supply?: RecordPlan['supply']) => solved(alone(params, supply), setting({}, { engine: rpm })).voltages['machine:D']!

/** Cut-in volts of a 12 V set: 12.8 V in US Army TM 5-3820-233-35/1. */
const CUT_IN_V = 12.8

describe('a dynamo', () => {
  it.each([[12, '12-'], [6, '6-']] as const)('of %s V reaches its cut-in volts at cut-in speed', (ratedV, supply) => {
    expect(Math.abs(openV({ ratedV }, 1100, supply) / (CUT_IN_V * ratedV / 12) - 1)).toBeLessThan(0.05)
  })

  it.each([[12, 20, '12-'], [6, 28, '6-'], [6, 2, '6-']] as const)('of %s V and %s A gives them at full-output speed', (ratedV, ratedA, supply) => {
    // Into a battery that holds the regulated volts, 14.3 V on 12 V (the same manual), the field on the armature.
    const { parts, wires, ...rest } = alone({ ratedV, ratedA }, supply)
    const plan = {
      ...rest, parts: [...parts!, part('battery', 'battery', { emfV: 14.3 * ratedV / 12, ohm: 0, counterVPerCell: 1, chargeOhm: 1e-4 })],
      wires: [...wires!, link('out', 'machine:D', 'battery:+'), link('e', 'battery:-', 'body')],
    }
    expect(Math.abs(solved(plan, setting({}, { engine: 1800 })).wires.out.amps! / ratedA - 1)).toBeLessThan(0.03)
  })

  it('does not build up far below its cut-in speed', () => {
    expect(openV({}, 0)).toBeCloseTo(0, 6)
    expect(openV({}, 400)).toBeLessThan(0.2 * CUT_IN_V)
  })

  it('reversed builds up the other way', () => {
    expect(openV({ residual: 'reversed' }, 1100)).toBeCloseTo(-openV({}, 1100), 6)
  })

  it('without residual magnetism gives nothing', () => {
    const { voltages, standing } = solved(alone({ residual: 'none' }), setting({}, { engine: 1100 }))
    expect(voltages['machine:D']).toBeCloseTo(0, 6)
    // Once polarised it would hold.
    expect(standing[0].voltages['machine:D']).toBeGreaterThan(0.8 * CUT_IN_V)
  })

  it('with its field on D waits for F to be earthed', () => {
    const plan = (earthed: boolean): RecordPlan => ({ ...alone({ fieldTo: 'D' }), wires: [link('c', 'machine:case', 'body'), ...(earthed ? [link('f', 'machine:F', 'body')] : [])] })
    const volts = (earthed: boolean) => solved(plan(earthed), setting({}, { engine: 1100 })).voltages['machine:D']!
    expect(volts(false)).toBeLessThan(0.1 * CUT_IN_V)
    expect(volts(true)).toBeCloseTo(openV({}, 1100), 6)
  })
})
