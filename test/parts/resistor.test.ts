import { describe, expect, it } from 'vitest'
import { circuitOf, IDEAL, solved } from '../builders/circuits.ts'
import { link, part, type RecordPlan } from '../builders/record.ts'
import type { Params } from '../../src/record/index.ts'

const across = (params: Params, emfV: number, supply: RecordPlan['supply'] = '12-'): RecordPlan => ({
  supply, metals: ['body'], assume: IDEAL, parts: [part('battery', 'battery', { emfV, ohm: 0 }), part('heater', 'resistor', params)],
  wires: [link('w1', 'battery:+', 'heater:a'), link('w2', 'heater:b', 'body'), link('e', 'battery:-', 'body')],
})
const amps = (params: Params, emfV: number, supply?: RecordPlan['supply']) => solved(across(params, emfV, supply)).wires.w2.amps!

describe('a resistor', () => {
  it('follows its ohms', () => {
    expect(amps({ ohm: 4 }, 12)).toBeCloseTo(3, 3)
    expect(amps({ ohm: 4 }, 6)).toBeCloseTo(1.5, 3)
  })

  it('has the ohms of its watts at its rated volts', () => {
    // A heater of 6 V and 24 W is 1.5 Ω: 4 A there, 9.2 A on 13.8 V.
    expect(amps({ powerW: 24, ratedV: 6 }, 6)).toBeCloseTo(4, 2)
    expect(amps({ powerW: 24, ratedV: 6 }, 13.8)).toBeCloseTo(9.2, 2)
    expect(amps({ powerW: 24 }, 6, '6-')).toBeCloseTo(4, 2)
  })

  it('goes by ohms where both are stated', () => {
    expect(amps({ ohm: 2, powerW: 24 }, 12)).toBeCloseTo(6, 2)
  })

  it('does not say "from watts" where no watts are stated', () => {
    const why = (params: Params) => circuitOf(across(params, 12)).network.assumed.find(({ path }) => path === 'parts.heater.params.ohm')!.why
    expect(why({ powerW: 24 })).toMatch('from watts')
    expect(why({})).not.toMatch('from watts')
  })
})
