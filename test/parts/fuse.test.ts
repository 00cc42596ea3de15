import { describe, expect, it } from 'vitest'
import { circuitOf, IDEAL, onOff, setting, solved } from '../builders/circuits.ts'
import { link, part, type RecordPlan } from '../builders/record.ts'
import { solveSetting } from '../../src/circuit/index.ts'
import type { Params } from '../../src/record/index.ts'

/** A fuse before a resistance that takes `amps` of 12 V. */
const carrying = (amps: number, params: Params, assume: RecordPlan['assume'] = IDEAL): RecordPlan => ({
  metals: ['body'], assume,
  parts: [part('battery', 'battery', { emfV: 12, ohm: 0 }), part('switch', 'control', onOff()), part('link', 'fuse', params), part('load', 'resistor', { ohm: 12 / amps })],
  wires: [link('w1', 'battery:+', 'link:in'), link('w2', 'link:out', 'switch:a'), link('w3', 'switch:b', 'load:a'), link('w4', 'load:b', 'body'), link('e', 'battery:-', 'body')],
})
const on = setting({ 'switch.p': 'on' })
const element = (amps: number, params: Params) => solved(carrying(amps, params), on).states['link.element']

describe('a fuse', () => {
  // ISO 8820-3 as quoted by its makers: 110 % holds for 100 hours, 135 % opens within half an hour.
  it('of a continuous rating blows above 135 per cent', () => {
    expect([11, 13.4, 13.7].map((amps) => element(amps, { ratingA: 10, ratingMeans: 'continuous' }))).toEqual(['whole', 'whole', 'blown'])
  })

  // A table of British fuses: the printed 35 A is what blows it if sustained, 17.5 A what it carries.
  it('of a blow rating blows at its print', () => {
    expect([17.5, 34.5, 35.5].map((amps) => element(amps, { ratingA: 35, ratingMeans: 'blow' }))).toEqual(['whole', 'whole', 'blown'])
  })

  it('goes by its blow figure where that is stated', () => {
    expect([element(19, { ratingA: 10, blowA: 20 }), element(21, { ratingA: 10, blowA: 20 })]).toEqual(['whole', 'blown'])
  })

  it('once blown stays blown', () => {
    const circuit = circuitOf(carrying(20, { ratingA: 10 }))
    const blown = solveSetting(circuit, on)
    const after = solveSetting(circuit, setting(), { from: blown.condition, fromSetting: on })
    expect(after.solved.states['link.element']).toBe('blown')
    expect(after.solved.voltages['link:out']).toBeNull()
  })

  it('has clips, and an element by its rating', () => {
    // Common practice, no source: 3 mΩ and 80 mV at the rated amps; at 8 A of a fuse of 8 A 24 mV + 80 mV.
    const { elements } = solved(carrying(8, { ratingA: 8 }, { ...IDEAL, fuseOhm: undefined }), on)
    expect(elements.link.volts! / elements.link.amps!).toBeCloseTo(0.013, 6)
  })
})
