import { describe, expect, it } from 'vitest'
import { circuitOf, IDEAL, onOff, setting, solved } from '../builders/circuits.ts'
import { link, part, type RecordPlan } from '../builders/record.ts'
import { settle, solveSetting, type Fault, type Setting, type Solved } from '../../src/circuit/index.ts'
import type { Params } from '../../src/record/index.ts'

/** A module fed by a battery through a rheostat of 0 to 1000 Ω, its contact before a resistance of 10 Ω; loads of its own are stated. */
const behindRheostat = (params: Params): RecordPlan => ({
  metals: ['body'], assume: IDEAL,
  parts: [
    part('battery', 'battery', { emfV: 12, ohm: 0 }), part('it', 'module', params), part('load', 'resistor', { ohm: 10 }),
    part('knob', 'control', { axes: { ohm: { range: { from: 0, to: 1000 }, rest: 0 } }, resistors: { track: { between: ['a', 'b'], axis: 'ohm', ohmAt: [[0, 0], [1000, 1000]] } } }),
  ],
  wires: [
    link('w1', 'battery:+', 'knob:a'), link('w2', 'knob:b', 'it:15'), link('w3', 'it:31', 'body'), link('w4', 'battery:+', 'it:30'), link('w5', 'it:87', 'load:a'),
    link('w6', 'load:b', 'body'), link('e', 'battery:-', 'body'),
  ],
})
const feeling = (more: object = {}, states: object = STATES): Params => ({
  inputs: { fed: { from: '15', to: '31', aboveV: 6, ohm: 100, ...more } }, contacts: { out: { from: '30', to: '87' } }, states,
})
const STATES = { rest: { next: [{ when: ['fed'], to: 'on' }] }, on: { closed: ['out'], next: [{ unless: ['fed'], to: 'rest' }] } }
const ohms = (ohm: number) => setting({ 'knob.ohm': ohm })
const stateOf = (params: Params, ohm = 0, faults: readonly Fault[] = []) => solved(behindRheostat(params), ohms(ohm), faults).states['it.state']
const loadA = (params: Params, ohm = 0, faults: readonly Fault[] = []) => solved(behindRheostat(params), ohms(ohm), faults).elements.load.amps

describe('a module', () => {
  it('closes in a state what the state names', () => {
    expect(loadA(feeling())).toBeCloseTo(1.2, 3)
    expect(loadA(feeling(), 1000)).toBe(0)
  })

  it('feels volts from its figure on', () => {
    // 12 V over 100 Ω and 99 or 101 Ω: 6.03 and 5.97 V; half the figure: 3 V at 300 Ω.
    expect([stateOf(feeling(), 99), stateOf(feeling(), 101)]).toEqual(['on', 'rest'])
    expect([stateOf(feeling({ aboveV: 3 }), 299), stateOf(feeling({ aboveV: 3 }), 301)]).toEqual(['on', 'rest'])
  })

  it('lets an input go lower than it takes it', () => {
    // Four fifths of 6 V are 4.8 V, at 150 Ω.
    const circuit = circuitOf(behindRheostat(feeling()))
    const on = solveSetting(circuit, ohms(0))
    const then = (ohm: number) => solveSetting(circuit, ohms(ohm), { from: on.condition, fromSetting: ohms(0) }).solved.states['it.state']
    expect([then(145), then(155)]).toEqual(['on', 'rest'])
  })

  it('loads its supply by what its inputs take', () => {
    expect(solved(behindRheostat(feeling()), ohms(100)).elements['it.fed-input'].amps).toBeCloseTo(0.06, 3)
    expect(solved(behindRheostat(feeling({ ohm: 50 })), ohms(100)).elements['it.fed-input'].amps).toBeCloseTo(0.08, 3)
  })

  it('takes a load of its own', () => {
    expect(solved(behindRheostat({ ...feeling(), loads: { lamp: { from: '15', to: '31', ohm: 60 } } })).elements['it.lamp'].amps).toBeCloseTo(0.2, 3)
  })

  it('goes from state to state by its delays', () => {
    // A buzzer of 8 s: it sounds for that time and is silent afterwards.
    const states = { rest: { next: [{ when: ['fed'], to: 'sounds' }] }, sounds: { closed: ['out'], next: [{ afterMs: 8000, to: 'done' }] }, done: { next: [{ unless: ['fed'], to: 'rest' }] } }
    const circuit = circuitOf(behindRheostat(feeling({}, states)))
    const rest = solveSetting(circuit, ohms(1000)).condition
    const after = (ms: number) => { settle(circuit, ohms(0), rest, ms); return circuit.elementAmps(circuit.network.elementOf.get('load')!) }
    expect([after(100), after(7900), after(8100)]).toEqual([expect.closeTo(1.2, 3), expect.closeTo(1.2, 3), 0])
  })

  it('remembers the order of what was done', () => {
    // The seat before the belt: only from `seated` does the belt lead on.
    const params: Params = {
      inputs: { seat: { from: 's', to: '31', ohm: 1000 }, belt: { from: 'b', to: '31', ohm: 1000 } }, contacts: { start: { from: '30', to: '87' } },
      states: {
        empty: { next: [{ when: ['seat'], unless: ['belt'], to: 'seated' }], tells: 'forbids starting' },
        seated: { next: [{ unless: ['seat'], to: 'empty' }, { when: ['belt'], to: 'ready' }] },
        ready: { closed: ['start'], next: [{ unless: ['seat'], to: 'empty' }] },
      },
    }
    const circuit = circuitOf({
      metals: ['body'], assume: IDEAL,
      parts: [part('battery', 'battery', { emfV: 12, ohm: 0 }), part('it', 'module', params), part('seat', 'control', onOff()), part('belt', 'control', onOff())],
      wires: [
        link('w1', 'battery:+', 'seat:a'), link('w2', 'seat:b', 'it:s'), link('w3', 'battery:+', 'belt:a'), link('w4', 'belt:b', 'it:b'),
        link('w5', 'it:31', 'body'), link('e', 'battery:-', 'body'),
      ],
    })
    const steps = (...order: readonly (readonly [seat: string, belt: string])[]) => {
      let last: { setting: Setting; solved: Solved } | undefined
      for (const [seat, belt] of order) {
        const at = setting({ 'seat.p': seat, 'belt.p': belt })
        last = { setting: at, solved: solveSetting(circuit, at, last ? { from: last.solved.condition, fromSetting: last.setting } : {}) }
      }
      return last!.solved.solved
    }
    expect(steps(['off', 'off'], ['on', 'off'], ['on', 'on']).states['it.state']).toBe('ready')
    expect(steps(['off', 'off'], ['off', 'on'], ['on', 'on']).states['it.state']).toBe('empty')
    expect(steps(['off', 'off'], ['off', 'on'], ['on', 'on']).notes).toContain('it (it) forbids starting')
  })

  it('that feels the engine closes while it turns', () => {
    const params: Params = { inputs: { turns: {} }, contacts: { out: { from: '30', to: '87' } }, states: { rest: { next: [{ when: ['turns'], to: 'on' }] }, on: { closed: ['out'], next: [{ unless: ['turns'], to: 'rest' }] } } }
    const plan = behindRheostat({ ...params, loads: { supply: { from: '15', to: '31', ohm: 100 } } })
    const at = (engine: 'stopped' | 'idle') => solved(plan, setting({}, { engine })).states['it.state']
    expect([at('stopped'), at('idle')]).toEqual(['rest', 'on'])
  })

  it('of which nothing is stated closes 30 to 87 while 15 is fed', () => {
    expect(loadA({})).toBeCloseTo(1.2, 3)
  })

  it('with a dead contact or stuck does not do its work', () => {
    expect(loadA(feeling(), 0, [{ kind: 'open', id: 'it.out' }])).toBe(0)
    expect(loadA(feeling(), 0, [{ kind: 'hold', part: 'it', state: 'state', value: 'rest' }])).toBe(0)
    expect(loadA(feeling(), 1000, [{ kind: 'hold', part: 'it', state: 'state', value: 'on' }])).toBeCloseTo(1.2, 3)
    const loaded = { ...feeling(), loads: { lamp: { from: '15', to: '31', ohm: 60 } } }
    expect(solved(behindRheostat(loaded), setting(), [{ kind: 'open', id: 'it.lamp' }]).elements['it.lamp'].amps).toBe(0)
  })
})
