import { describe, expect, it } from 'vitest'
import { circuitOf, IDEAL, onOff, setting, solved } from '../builders/circuits.ts'
import { link, part, type RecordPlan } from '../builders/record.ts'
import { settle, solveSetting, type Fault } from '../../src/circuit/index.ts'
import type { Params } from '../../src/record/index.ts'

/** A motor behind a switch, its brush `end` fed. */
const switched = (params: Params, emfV: number, end = 'in', supply: RecordPlan['supply'] = '12-'): RecordPlan => ({
  supply, metals: ['body'], assume: IDEAL,
  parts: [part('battery', 'battery', { emfV, ohm: 0 }), part('switch', 'control', onOff()), part('fan', 'motor', params)],
  wires: [link('w1', 'battery:+', 'switch:a'), link('w2', 'switch:b', `fan:${end}`), link('w3', 'fan:out', 'body'), link('e', 'battery:-', 'body')],
})
const on = setting({ 'switch.p': 'on' })
const fan = { ratedV: 12, ratedA: 4, stalledOhm: 0.8 }
const stalled: Fault = { kind: 'hold', part: 'fan', state: 'shaft', value: 'still' }
const amps = (plan: RecordPlan, faults: readonly Fault[] = []) => solved(plan, on, faults).wires.w3.amps!

describe('a motor', () => {
  it('runs at its rated amps, in proportion to its volts', () => {
    expect(amps(switched(fan, 12))).toBeCloseTo(4, 3)
    expect(amps(switched(fan, 9))).toBeCloseTo(3, 3)
  })

  it('held still takes the amps of its winding', () => {
    expect(amps(switched(fan, 12), [stalled])).toBeCloseTo(12 / 0.8, 1)
    // Without a figure four times the running amps.
    expect(amps(switched({ ratedA: 4 }, 12), [stalled])).toBeCloseTo(16, 1)
  })

  it('does not turn on a tenth of its volts', () => {
    expect(solved(switched(fan, 1.1), on).states['fan.shaft']).toBe('still')
    expect(solved(switched(fan, 1.3), on).states['fan.shaft']).toBe('running')
  })

  it('runs on for a moment when let go, then stands', () => {
    const circuit = circuitOf(switched(fan, 12))
    const running = solveSetting(circuit, on)
    const moment = settle(circuit, setting(), running.condition, 20)
    expect(moment.condition.states[0]).toBe('coasting')
    // What 12 V leave after the winding's drop at the rated amps: 12 − 0.8·4.
    expect(circuit.pointVolts(circuit.network.pointOf.get('fan:in')!)).toBeCloseTo(8.8, 3)
    expect(solveSetting(circuit, setting(), { from: running.condition, fromSetting: on }).solved.states['fan.shaft']).toBe('still')
  })

  it('of two speeds takes the amps of the brush that is fed', () => {
    const two = { ratedV: 12, brushes: { low: { ratedA: 3 }, high: { ratedA: 5 } } }
    expect([amps(switched(two, 12, 'low')), amps(switched(two, 12, 'high'))]).toEqual([expect.closeTo(3, 3), expect.closeTo(5, 3)])
  })

  it('without figures takes 48 W on any supply', () => {
    for (const [systemV, supply] of [[6, '6-'], [12, '12-'], [24, '24-']] as const) expect(systemV * amps(switched({}, systemV, 'in', supply))).toBeCloseTo(48, 0)
  })
})
