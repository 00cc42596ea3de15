import { describe, expect, it } from 'vitest'
import { circuitOf, IDEAL, onOff, setting, solved } from '../builders/circuits.ts'
import { link, part, type RecordPlan } from '../builders/record.ts'
import { solveSetting, type Fault } from '../../src/circuit/index.ts'
import type { Params } from '../../src/record/index.ts'

/** A control between the battery and the body, its terminals `a` and `b`. */
const across = (params: Params): RecordPlan => ({
  metals: ['body'], assume: IDEAL,
  parts: [part('battery', 'battery', { emfV: 12, ohm: 0 }), part('load', 'resistor', { ohm: 10 }), part('knob', 'control', params)],
  wires: [link('w1', 'battery:+', 'load:a'), link('w2', 'load:b', 'knob:a'), link('w3', 'knob:b', 'body'), link('e', 'battery:-', 'body')],
})
const amps = (params: Params, position: string | number) => solved(across(params), setting({ 'knob.p': position })).wires.w3.amps!

describe('a stepped control', () => {
  it('joins a row in its positions only', () => {
    const params = { axes: { p: { positions: ['off', 'side', 'head'], rest: 'off' } }, rows: { lit: { when: { p: ['side', 'head'] }, joins: ['a', 'b'] } } }
    expect(['off', 'side', 'head'].map((position) => amps(params, position) > 1)).toEqual([false, true, true])
  })

  it('makes a row where every axis agrees', () => {
    const axis = { positions: ['off', 'on'], rest: 'off' }
    const plan = across({ axes: { p: axis, q: axis }, rows: { both: { when: { p: ['on'], q: ['on'] }, joins: ['a', 'b'] } } })
    const lit = (p: string, q: string) => solved(plan, setting({ 'knob.p': p, 'knob.q': q })).wires.w3.amps! > 1
    expect([lit('off', 'off'), lit('on', 'off'), lit('off', 'on'), lit('on', 'on')]).toEqual([false, false, false, true])
  })

  it('loses volts in its contact', () => {
    const plan = { ...across(onOff()), assume: { ...IDEAL, contactOhm: 0.5 } }
    expect(solved(plan, setting({ 'knob.p': 'on' })).elements['knob.on'].volts).toBeCloseTo(12 * 0.5 / 10.5, 3)
  })

  it('fails dirty, dead or stuck', () => {
    const at = (position: string, fault: Fault) => solved(across(onOff()), setting({ 'knob.p': position }), [fault]).wires.w3.amps!
    expect(at('on', { kind: 'ohms', id: 'knob.on', ohm: 0.5 })).toBeCloseTo(12 / 10.5, 3)
    expect(at('on', { kind: 'open', id: 'knob.on' })).toBe(0)
    expect(at('off', { kind: 'join', a: 'knob:a', b: 'knob:b' })).toBeCloseTo(1.2, 3)
  })

  it('tells what springs back, and what moves it', () => {
    const plan = across({ axes: { p: { positions: ['off', 'run', 'start'], rest: 'run', springsFrom: ['start'], movedBy: 'passenger' } }, rows: { on: { when: { p: ['run'] }, joins: ['a', 'b'] } } })
    expect(circuitOf(plan).network.axes[0].spec).toMatchObject({ rest: 'run', springsFrom: ['start'], movedBy: 'passenger' })
  })

  it('follows the engine unless it is set', () => {
    const params = {
      axes: { p: { positions: ['none', 'up'], rest: 'none', movedBy: 'oil pressure', follows: { stopped: 'none', cranking: 'none', running: 'up' } } },
      rows: { made: { when: { p: ['none'] }, joins: ['a', 'b'] } },
    }
    const lit = (engine: 'stopped' | 'cranking' | 'idle') => solved(across(params), setting({}, { engine })).wires.w3.amps! > 1
    expect([lit('stopped'), lit('cranking'), lit('idle')]).toEqual([true, true, false])
    expect(solved(across(params), setting({ 'knob.p': 'none' }, { engine: 'idle' })).wires.w3.amps).toBeGreaterThan(1)
  })
})

describe('a continuous control', () => {
  const sender = (ohmAt: readonly (readonly number[])[]) => ({ axes: { p: { range: { from: 0, to: 10 }, rest: 0 } }, resistors: { track: { between: ['a', 'b'], axis: 'p', ohmAt } } })
  const points = [[0, 10], [5, 20], [10, 90]]

  it('goes straight between its points', () => {
    for (const [x, ohm] of [[0, 10], [2.5, 15], [5, 20], [6, 34], [10, 90]]) expect(amps(sender(points), x)).toBeCloseTo(12 / (10 + ohm), 3)
  })

  it('does not care in which order its points are written', () => {
    expect(amps(sender([...points].reverse()), 2.5)).toBeCloseTo(12 / 25, 3)
  })
})

describe('a control that is moved', () => {
  /** A relay holds itself through a control that feeds it in both of its positions; a button makes it first. */
  const latching = (makeBeforeBreak: boolean): RecordPlan => ({
    metals: ['body'], assume: IDEAL,
    parts: [
      part('battery', 'battery', { emfV: 12, ohm: 0.01 }), part('button', 'control', onOff()), part('relay', 'electromagnet'),
      part('knob', 'control', { axes: { p: { positions: ['left', 'right'], rest: 'left', makeBeforeBreak } }, rows: { left: { when: { p: ['left'] }, joins: ['a', 'b'] }, right: { when: { p: ['right'] }, joins: ['a', 'b'] } } }),
    ],
    wires: [
      link('w1', 'battery:+', 'knob:a'), link('w2', 'knob:b', 'relay:30'), link('w3', 'relay:30', 'button:a'), link('w4', 'button:b', 'relay:86'),
      link('w5', 'relay:87', 'relay:86'), link('w6', 'relay:85', 'body'), link('e', 'battery:-', 'body'),
    ],
  })

  it.each([[true, 'pulled'], [false, 'released']])('that makes before it breaks, %s, leaves a latched relay %s', (makeBeforeBreak, state) => {
    const circuit = circuitOf(latching(makeBeforeBreak))
    const pressed = setting({ 'button.p': 'on' }), left = setting(), right = setting({ 'knob.p': 'right' })
    const made = solveSetting(circuit, pressed)
    const held = solveSetting(circuit, left, { from: made.condition, fromSetting: pressed })
    expect(held.solved.states['relay.armature']).toBe('pulled')
    const moved = solveSetting(circuit, right, { from: held.condition, fromSetting: left })
    expect(moved.solved.states['relay.armature']).toBe(state)
  })
})
