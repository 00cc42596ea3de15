import { describe, expect, it } from 'vitest'
import { circuitOf, IDEAL, onOff, setting, solved } from '../../test/builders/circuits.ts'
import { link, part, type RecordPlan } from '../../test/builders/record.ts'
import { solveSetting } from './solve-setting.ts'

/** The exciting terminal joined to the ignition feed without lamp or diode: once the alternator gives, it feeds the coil. */
const runsOn: RecordPlan = {
  metals: ['body'], assume: IDEAL,
  parts: [
    part('battery', 'battery', { emfV: 12.6, ohm: 0.01 }), part('key', 'control', onOff()), part('coil', 'coil', { primaryOhm: 3 }),
    part('points', 'breaker'), part('alternator', 'alternator'),
  ],
  wires: [
    link('w1', 'battery:+', 'key:a'), link('w2', 'key:b', 'coil:15'), link('w3', 'coil:1', 'points:1'), link('w4', 'points:case', 'body'),
    link('w5', 'key:b', 'alternator:D+'), link('w6', 'alternator:B+', 'battery:+'), link('w7', 'alternator:case', 'body'), link('e', 'battery:-', 'body'),
  ],
}

describe('other standing states', () => {
  it('an engine that feeds its own coil runs on with the key off', () => {
    const { elements, standing } = solved(runsOn, setting({}, { engine: 'cruise' }))
    expect(elements['coil.primary'].amps).toBeLessThan(0.1)
    expect(standing.map(({ name }) => name)).toEqual(['runs on'])
    expect(standing[0].elements['coil.primary'].amps).toBeGreaterThan(1)
  })

  it('is reached by switching off while it charges', () => {
    const circuit = circuitOf(runsOn)
    const on = setting({ 'key.p': 'on' }, { engine: 'cruise' }), off = setting({}, { engine: 'cruise' })
    const running = solveSetting(circuit, on)
    const after = solveSetting(circuit, off, { from: running.condition, fromSetting: on })
    expect(after.solved.elements['coil.primary'].amps).toBeGreaterThan(1)
  })

  it('are none where nothing can hold', () => {
    expect(solved(runsOn, setting({ 'key.p': 'on' })).standing).toEqual([])
  })
})
