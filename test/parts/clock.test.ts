import { describe, expect, it } from 'vitest'
import { IDEAL, setting, solved } from '../builders/circuits.ts'
import { link, part, type RecordPlan } from '../builders/record.ts'
import type { Fault } from '../../src/circuit/index.ts'
import type { Params } from '../../src/record/index.ts'

const on = (params: Params, batteryV = 12): RecordPlan => ({
  metals: ['body'], assume: IDEAL, parts: [part('battery', 'battery', { emfV: batteryV, ohm: 0 }), part('it', 'clock', params)],
  wires: [link('w1', 'battery:+', 'it:in'), link('w2', 'it:out', 'body'), link('e', 'battery:-', 'body')],
})
const at = (params: Params, batteryV = 12, faults: readonly Fault[] = []) => solved(on(params, batteryV), setting(), faults)
const wound = { type: 'wound', ratedA: 3 }

describe('a clock', () => {
  it('takes a little all the time', () => {
    expect(at({ ratedA: 0.01 }).elements.it.amps).toBeCloseTo(0.01, 3)
    expect(at({ ratedA: 0.005 }).elements.it.amps).toBeCloseTo(0.005, 3)
    expect(at({ ratedA: 0.01 }, 12, [{ kind: 'open', id: 'it' }]).elements.it.amps).toBe(0)
  })

  it('that winds itself takes nothing between its pulses', () => {
    const { phases, elements } = at(wound)
    expect(phases.it).toMatchObject({ cycle: ['ticking', 'winding'], rate: 'a pulse every few minutes' })
    expect(elements.it.amps).toBe(0)
    expect(phases.it.solutions![1].elements.it.amps).toBeCloseTo(3, 3)
  })

  it('on a weak battery stays in its pulse', () => {
    // 7.9 V is just under two thirds of 12 V: 7.9 / 4 Ω.
    expect(at(wound, 8.1).phases.it.cycle).toHaveLength(2)
    expect(at(wound, 7.9).phases.it.rests).toBe('winding')
    expect(at(wound, 7.9).elements.it.amps).toBeCloseTo(7.9 / 4, 3)
    expect(at({ ...wound, windsFromV: 4 }, 7.9).phases.it.cycle).toHaveLength(2)
  })

  it('with its contact stuck takes its pulse for ever, with a burnt one runs down', () => {
    expect(at(wound, 12, [{ kind: 'hold', part: 'it', state: '', value: 'winding' }]).elements.it.amps).toBeCloseTo(3, 3)
    expect(at(wound, 12, [{ kind: 'open', id: 'it' }]).phases.it.rests).toBe('winding')
  })

  it('leaves a gauge beside it where it stands', () => {
    // 0.5 Ω before both: 12 V over 0.5 + 100 Ω between the pulses, and they last next to no time.
    const { parts, wires, ...rest } = on(wound)
    const plan = {
      ...rest, parts: [...parts!, part('lead', 'resistor', { ohm: 0.5 }), part('gauge', 'voltmeter', { ohm: 100 })],
      wires: [link('w0', 'battery:+', 'lead:a'), link('w1', 'lead:b', 'it:in'), link('w3', 'lead:b', 'gauge:in'), link('w4', 'gauge:out', 'body'), ...wires!.filter(([id]) => id !== 'w1')],
    }
    expect(solved(plan).dials.gauge.shows).toBeCloseTo(12 * 100 / 100.5, 3)
  })
})
