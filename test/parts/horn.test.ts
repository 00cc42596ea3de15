import { describe, expect, it } from 'vitest'
import { IDEAL, onOff, setting, solved } from '../builders/circuits.ts'
import { link, part, type RecordPlan } from '../builders/record.ts'
import type { Params } from '../../src/record/index.ts'

/** A horn that its button earths. */
const withButton = (params: Params, emfV: number, supply: RecordPlan['supply'] = '12-'): RecordPlan => ({
  supply, metals: ['body'], assume: IDEAL,
  parts: [part('battery', 'battery', { emfV, ohm: 0 }), part('horn', 'horn', params), part('button', 'control', onOff())],
  wires: [link('w1', 'battery:+', 'horn:in'), link('w2', 'horn:out', 'button:a'), link('w3', 'button:b', 'body'), link('e', 'battery:-', 'body')],
})
const pressed = setting({ 'button.p': 'on' })
const amps = (params: Params, emfV: number, supply?: RecordPlan['supply']) => solved(withButton(params, emfV, supply), pressed).wires.w2.amps!

describe('a horn', () => {
  it('takes its rated amps at its rated volts', () => {
    expect(amps({ ratedA: 6, ratedV: 12 }, 12)).toBeCloseTo(6, 3)
  })

  it('takes amps in proportion to its volts', () => {
    expect(amps({ ratedA: 6, ratedV: 12 }, 9)).toBeCloseTo(4.5, 3)
  })

  it('without figures takes 48 W on any supply', () => {
    for (const [systemV, supply] of [[6, '6-'], [12, '12-'], [24, '24-']] as const) expect(systemV * amps({}, systemV, supply)).toBeCloseTo(48, 0)
  })

  it('is live at both ends until the button earths it', () => {
    const { voltages } = solved(withButton({}, 12))
    expect([voltages['horn:in'], voltages['horn:out']]).toEqual([12, 12])
  })
})
