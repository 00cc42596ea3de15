import { describe, expect, it } from 'vitest'
import { IDEAL, setting, solved } from '../builders/circuits.ts'
import { link, part, type RecordPlan } from '../builders/record.ts'
import type { EngineState } from '../../src/circuit/index.ts'

/** A coil of 3 Ω whose other end the points earth. */
const ignition = (params = {}): RecordPlan => ({
  metals: ['body'], assume: IDEAL,
  parts: [part('battery', 'battery', { emfV: 12, ohm: 0 }), part('coil', 'coil', { primaryOhm: 3 }), part('points', 'breaker', params)],
  wires: [link('w1', 'battery:+', 'coil:15'), link('w2', 'coil:1', 'points:1'), link('w3', 'points:case', 'body'), link('e', 'battery:-', 'body')],
})
const amps = (engine: EngineState, params = {}) => solved(ignition(params), setting({}, { engine })).wires.w2.amps!

describe('a contact breaker', () => {
  it('is closed in an engine that stands so', () => {
    expect(amps('stopped')).toBeCloseTo(4, 3)
  })

  it('is open in an engine that stands so', () => {
    expect(amps('stopped-open')).toBe(0)
    expect(solved(ignition(), setting({}, { engine: 'stopped-open' })).voltages['points:1']).toBeCloseTo(12, 6)
  })

  it('counts as closed while the engine turns', () => {
    for (const engine of ['cranking', 'idle', 'cruise', 3000] as const) expect(amps(engine)).toBeCloseTo(4, 3)
  })

  it('drops the volts of its own resistance', () => {
    expect(amps('stopped', { ohm: 0.5 })).toBeCloseTo(12 / 3.5, 3)
  })
})
