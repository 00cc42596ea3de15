import { describe, expect, it } from 'vitest'
import { circuitOf, IDEAL, setting, solved } from '../builders/circuits.ts'
import { link, part, type RecordPlan } from '../builders/record.ts'
import type { Params } from '../../src/record/index.ts'

/** A lamp on a battery that keeps its volts, fed at the ends named. */
const lit = (params: Params, emfV: number, ends: readonly string[] = ['in'], supply: RecordPlan['supply'] = '12-'): RecordPlan => ({
  supply, metals: ['body'], assume: IDEAL,
  parts: [part('battery', 'battery', { emfV, ohm: 0 }), part('lamp', 'lamp', params)],
  wires: [...ends.map((end) => link(`w-${end}`, 'battery:+', `lamp:${end}`)), link('earth', 'lamp:out', 'body'), link('e', 'battery:-', 'body')],
})
const amps = (params: Params, emfV: number) => solved(lit(params, emfV)).wires.earth.amps!
const bulb = { powerW: 24, ratedV: 12 }

/** I = I0·u·(u² + e²)^−0.225 with e = 12^(−1/0.45), for a bulb of 2 A. */
const byHand = (u: number) => 2 * u * (u * u + 12 ** (-2 / 0.45)) ** -0.225

describe('a filament lamp', () => {
  it('takes its watts at its rated volts', () => {
    expect(amps(bulb, 12)).toBeCloseTo(2, 3)
    expect(solved(lit(bulb, 12)).lamps.lamp).toMatchObject({ percent: expect.closeTo(100, 2), class: 'normal' })
  })

  it('takes two thirds of its amps at half its volts', () => {
    // 0.5^0.55 = 0.683 of 2 A.
    expect(amps(bulb, 6)).toBeCloseTo(byHand(0.5), 3)
    expect(amps(bulb, 6) / 2).toBeCloseTo(0.683, 2)
    expect(amps(bulb, 0.12)).toBeCloseTo(byHand(0.01), 3)
  })

  it('of half the watts takes half the amps', () => {
    for (const volts of [12, 6, 1]) expect(amps({ ...bulb, powerW: 12 }, volts) / amps(bulb, volts)).toBeCloseTo(0.5, 3)
  })

  // A site on lamp technology: 1 % less volts is about 3.5 % less light.
  it('loses light with a high power of its volts', () => {
    expect(Math.abs(1 - solved(lit(bulb, 11.88)).lamps.lamp.light - 0.035)).toBeLessThan(0.003)
  })

  // Directive 97/24/EC annex 15, P21/5W: 25 W and 6 W at 13.5 V; 26 W and 6 W at 6.75 V.
  it.each([['12-', 13.5, 1.852, 0.444], ['6-', 6.75, 3.852, 0.889]] as const)('of a known category on %s has its test figures', (supply, volts, stopA, tailA) => {
    const { elements, lamps } = solved(lit({ bulb: 'P21/5W', filaments: { stop: {}, tail: {} } }, volts, ['stop', 'tail'], supply))
    expect(elements['lamp.stop'].amps).toBeCloseTo(stopA, 2)
    expect(elements['lamp.tail'].amps).toBeCloseTo(tailA, 2)
    expect(lamps['lamp.tail'].percent).toBeCloseTo(100, 1)
  })

  it('feeds from one filament into the other without its earth', () => {
    const plan = lit({ ratedV: 12, filaments: { stop: { powerW: 21 }, tail: { powerW: 5 } } }, 12, ['stop'])
    const { elements } = solved({ ...plan, wires: [...plan.wires!, link('other', 'lamp:tail', 'body')] }, setting(), [{ kind: 'open', id: 'earth' }])
    expect(elements['lamp.stop'].amps).toBeCloseTo(-elements['lamp.tail'].amps!, 6)
    expect(elements['lamp.stop'].volts! - elements['lamp.tail'].volts!).toBeCloseTo(12, 3)
    expect(Math.abs(elements['lamp.tail'].volts!)).toBeGreaterThan(11)
  })

  it('goes by stated volts before a table', () => {
    const { lamps } = solved(lit({ bulb: 'P21/5W', ratedV: 12, filaments: { stop: { powerW: 21 } } }, 12, ['stop']))
    expect(lamps['lamp.stop'].percent).toBeCloseTo(100, 1)
  })

  it('says that its watts are assumed where nobody states them', () => {
    const { assumed } = circuitOf(lit({}, 12)).network
    expect(assumed.find(({ path }) => path === 'parts.lamp.params.powerW')).toMatchObject({ value: 5, source: 'common practice, no source' })
  })
})
