import { describe, expect, it } from 'vitest'
import { circuitOf, IDEAL, setting, solved } from '../builders/circuits.ts'
import { link, part, type RecordPlan } from '../builders/record.ts'
import { solveSetting, type SolvedSetting } from '../../src/circuit/index.ts'
import type { Params } from '../../src/record/index.ts'

/** A dynamo that turns 1.5 times with the engine, its control box, a battery and a load of `loadOhm`. */
function charging(box: Params, loadOhm: number, dynamo: Params = {}): RecordPlan {
  return {
    metals: ['body'], assume: IDEAL, engine: { engine: { crankingRpm: 150, idleRpm: 600, cruiseRpm: 2500 } },
    parts: [
      part('dynamo', 'dynamo', { ratio: 1.5, ...dynamo }), part('box', 'control-box', box), part('load', 'resistor', { ohm: loadOhm }),
      part('battery', 'battery', { emfV: 12.6, ohm: 0.01 }),
    ],
    wires: [
      link('d', 'dynamo:D', 'box:D'), link('f', 'dynamo:F', 'box:F'), link('c', 'dynamo:case', 'body'), link('ground', 'box:E', 'body'),
      link('w1', 'box:A', 'load:a'), link('w2', 'load:b', 'body'), link('w3', 'battery:+', 'box:A'), link('e', 'battery:-', 'body'),
    ],
  }
}
const cruise = setting({}, { engine: 'cruise' }), idle = setting({}, { engine: 'idle' })
const ampsOf = (at: SolvedSetting, id: string) => at.elements[id].amps!
/** 1000 turns of 60 Ω from D to E, as the box makes its shunts; at the set volts they give the pull. */
const PER_VOLT = 1000 / 60

describe('the regulator of a control box', () => {
  it('holds the ampere-turns of its bobbin at their pull', () => {
    for (const loadOhm of [1e6, 10, 2]) {
      const at = solved(charging({ setV: 14.3, compensationV: 0 }, loadOhm), cruise)
      expect(Math.abs(1000 * ampsOf(at, 'box.voltage-shunt') / (14.3 * PER_VOLT) - 1)).toBeLessThan(1e-4)
      expect(at.voltages['box:D']).toBeCloseTo(14.3, 3)
    }
  })

  it('gives up volts for amps with series turns', () => {
    // 1.5 V less at 20 A: shunt and series together come to the pull of 14.3 V.
    const at = solved(charging({ setV: 14.3, compensationV: 1.5, ratedA: 20 }, 2), cruise)
    const turns = 1000 * ampsOf(at, 'box.voltage-shunt') + 1.5 * PER_VOLT / 20 * ampsOf(at, 'box.voltage-series')
    expect(Math.abs(turns / (14.3 * PER_VOLT) - 1)).toBeLessThan(1e-4)
    expect(at.voltages['box:D']).toBeCloseTo(14.3 - 1.5 * ampsOf(at, 'box.voltage-series') / 20, 3)
  })

  it('limits the amps with a third bobbin', () => {
    const at = solved(charging({ limitA: 12 }, 0.7), cruise)
    expect(Math.abs(ampsOf(at, 'box.current-series') / 12 - 1)).toBeLessThan(1e-4)
    expect(at.voltages['box:D']).toBeLessThan(14.3)
  })

  it('limits to the rated amps where the limit is not known', () => {
    const at = solved(charging({ limitA: 'unknown', ratedA: 12 }, 0.7), cruise)
    expect(ampsOf(at, 'box.current-series')).toBeCloseTo(12, 2)
  })

  it('regulates a field that begins at D the same', () => {
    const at = solved(charging({ regulates: 'F-E', setV: 14.3, compensationV: 0 }, 10, { fieldTo: 'D' }), cruise)
    expect(at.voltages['box:D']).toBeCloseTo(14.3, 3)
  })

  it('works at its set volts with windings of its own', () => {
    const windings = { shunt: { from: 'D', to: 'E', ohm: 40, turns: 2000 } }
    const at = solved(charging({ setV: 14.3, compensationV: 0, voltage: { windings } }, 10), cruise)
    expect(at.voltages['box:D']).toBeCloseTo(14.3, 3)
  })
})

describe('the cut-out of a control box', () => {
  /** A supply on D instead of a dynamo. */
  const closesAt = (emfV: number) => solved({
    metals: ['body'], assume: IDEAL, parts: [part('battery', 'battery', { emfV, ohm: 0 }), part('box', 'control-box')],
    wires: [link('d', 'battery:+', 'box:D'), link('ground', 'box:E', 'body'), link('e', 'battery:-', 'body')],
  }).states['box.cutout']

  // US Army TM 5-3820-233-35/1: a cut-out of a 12 V set closes satisfactorily at 12.8 V.
  it('closes at 12.8 V', () => {
    expect([closesAt(12.7), closesAt(12.9)]).toEqual(['open', 'closed'])
  })

  it('opens on reverse current from cruise to idle', () => {
    const circuit = circuitOf(charging({}, 1e6))
    const charged = solveSetting(circuit, cruise)
    const slowed = solveSetting(circuit, idle, { from: charged.condition, fromSetting: cruise })
    expect(charged.solved.states['box.cutout']).toBe('closed')
    expect(slowed.solved.states['box.cutout']).toBe('open')
    expect(slowed.solved.voltages['box:D']).toBeLessThan(12)
  })

  it('holds against a smaller reverse current', () => {
    const circuit = circuitOf(charging({ reverseA: 3 }, 1e6))
    const charged = solveSetting(circuit, cruise)
    const slowed = solveSetting(circuit, setting({}, { engine: 700 }), { from: charged.condition, fromSetting: cruise })
    expect(slowed.solved.states['box.cutout']).toBe('closed')
    expect(ampsOf(slowed.solved, 'box.cutout-contact')).toBeLessThan(-1)
    expect(ampsOf(slowed.solved, 'box.cutout-contact')).toBeGreaterThan(-3)
  })

  it('stays open, and the dynamo unchecked, without its earth', () => {
    const at = solved(charging({}, 1e6), cruise, [{ kind: 'open', id: 'ground' }])
    expect(at.states['box.cutout']).toBe('open')
    expect(at.voltages['box:D']).toBeGreaterThan(20)
  })
})
