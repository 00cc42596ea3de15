import { describe, expect, it } from 'vitest'
import { IDEAL, setting, solved } from '../builders/circuits.ts'
import { link, part, type RecordPlan } from '../builders/record.ts'
import type { Fault } from '../../src/circuit/index.ts'
import type { Params } from '../../src/record/index.ts'

/** A gauge on a battery with its sender: a control that a float moves from 240 Ω empty to 35 Ω full. */
const fuel = (params: Params, batteryV = 12, faults: readonly Fault[] = [], level = 100) => {
  const hasTwo = params.type === 'two-coil'
  const plan: RecordPlan = {
    metals: ['body'], assume: IDEAL,
    parts: [
      part('battery', 'battery', { emfV: batteryV, ohm: 0 }), part('it', 'gauge', params),
      part('tank', 'control', {
        axes: { float: { range: { from: 0, to: 100, unit: '%' }, rest: 0, movedBy: 'fuel' } },
        resistors: { track: { between: ['T', 'case'], axis: 'float', ohmAt: [[0, 240], [100, 35]] } },
      }),
    ],
    wires: [
      link('w1', 'battery:+', 'it:in'), link('w2', 'it:T', 'tank:T'), link('w3', 'tank:case', 'body'), link('e', 'battery:-', 'body'),
      ...hasTwo ? [link('w4', 'it:E', 'body')] : [],
    ],
  }
  return solved(plan, setting({ 'tank.float': level }), faults).dials.it
}
const SCALE = [[0, 0], [0.1, 50], [0.2, 150]] as const
const reads = (...args: Parameters<typeof fuel>) => fuel(...args).shows

describe.each(['bimetal', 'moving-coil'] as const)('a %s gauge', (type) => {
  it('reads by the amps through its sender', () => {
    // 12 V over 65 + 35 Ω: 0.12 A, a fifth of the way from 50 to 150; over 65 + 240 Ω: 39.3 mA.
    expect(reads({ type, ohm: 65, scale: SCALE, unit: 'litres' })).toBeCloseTo(70, 3)
    expect(fuel({ type, ohm: 65, scale: SCALE, unit: 'litres' }).unit).toBe('litres')
    expect(reads({ type, ohm: 65, scale: SCALE }, 12, [], 0)).toBeCloseTo(50 * (12 / 305) / 0.1, 3)
  })

  it('rises with the volts', () => {
    expect(reads({ type, ohm: 65, scale: SCALE }, 14)).toBeCloseTo(50 + 100 * 0.4, 3)
  })

  it('with half its ohms takes more', () => {
    expect(reads({ type, ohm: 32.5, scale: SCALE })).toBeCloseTo(50 + 100 * (12 / 67.5 - 0.1) / 0.1, 3)
  })

  it('with a broken sender wire reads its least, with an earthed one its most', () => {
    expect(reads({ type, ohm: 65, scale: SCALE }, 12, [{ kind: 'open', id: 'w2' }])).toBe(0)
    expect(reads({ type, ohm: 65, scale: SCALE }, 12, [{ kind: 'join', a: 'it:T', b: 'body' }])).toBeCloseTo(50 + 100 * (12 / 65 - 0.1) / 0.1, 2)
  })

  it('with an open winding is dead, with a loose nut reads low', () => {
    expect(reads({ type, ohm: 65, scale: SCALE }, 12, [{ kind: 'open', id: 'it.winding' }])).toBe(0)
    expect(reads({ type, ohm: 65, scale: SCALE }, 12, [{ kind: 'ohms', id: 'it.winding', ohm: 20 }])).toBeCloseTo(50, 3)
  })
})

describe('a two-coil gauge', () => {
  const two = { type: 'two-coil', ohm: 80, earthOhm: 60, unit: '%', scale: [[0, 0], [1, 100]] }

  it('sinks to the bottom where what reaches it is only the earth\'s own drop', () => {
    // 20 mV over 80 ohm and 60 ohm beside 35 ohm: 0.2 mA, of which the ratio alone would say more than a third of the scale.
    expect(reads(two, 0.02)).toBeLessThan(3)
    expect(reads(two, 12)).toBeCloseTo(100 * 35 / 95, 3)
  })

  it('reads the same on any volts', () => {
    // The sender of 35 Ω beside 60 Ω: of the first winding's amps 35/95 go through the second.
    for (const volts of [10, 12, 15]) expect(reads(two, volts)).toBeCloseTo(100 * 35 / 95, 3)
  })

  it('with half its second winding\'s ohms reads by the new share', () => {
    expect(reads({ ...two, earthOhm: 30 })).toBeCloseTo(100 * 35 / 65, 3)
  })

  it('with a broken sender wire reads its most, without its earth its least', () => {
    expect(reads(two, 12, [{ kind: 'open', id: 'w2' }])).toBeCloseTo(100, 3)
    for (const id of ['it:E', 'it.earth-winding']) expect(reads(two, 12, [{ kind: 'open', id }])).toBe(0)
  })

  it('without supply lies at its least', () => {
    expect(reads(two, 12, [{ kind: 'open', id: 'w1' }])).toBe(0)
  })
})
