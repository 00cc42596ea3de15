import { describe, expect, it } from 'vitest'
import { IDEAL, setting, solved } from '../builders/circuits.ts'
import { link, part, type RecordPlan } from '../builders/record.ts'
import type { Fault } from '../../src/circuit/index.ts'

/** A voltmeter of 200 Ω on 12 V. */
const plan = (params = {}): RecordPlan => ({
  metals: ['body'], assume: IDEAL, parts: [part('battery', 'battery', { emfV: 12, ohm: 0 }), part('it', 'voltmeter', params)],
  wires: [link('w1', 'battery:+', 'it:in'), link('w2', 'it:out', 'body'), link('e', 'battery:-', 'body')],
})
const at = (params = {}, faults: readonly Fault[] = []) => solved(plan(params), setting(), faults)

describe('a voltmeter', () => {
  it('shows the volts between its nuts', () => {
    expect(at({ ohm: 200 }).dials.it).toEqual({ shows: expect.closeTo(12, 3) as number, unit: 'V' })
    expect(at({ ohm: 200 }).elements.it.amps).toBeCloseTo(0.06, 3)
  })

  it('of half the ohms takes twice the amps and shows the same', () => {
    expect(at({ ohm: 100 }).elements.it.amps).toBeCloseTo(0.12, 3)
    expect(at({ ohm: 100 }).dials.it.shows).toBeCloseTo(12, 3)
  })

  it('with ohms more inside shows less, open nothing', () => {
    expect(at({ ohm: 200 }, [{ kind: 'ohms', id: 'it', ohm: 100 }]).dials.it.shows).toBeCloseTo(8, 3)
    expect(at({ ohm: 200 }, [{ kind: 'open', id: 'it' }]).dials.it.shows).toBe(0)
  })
})
