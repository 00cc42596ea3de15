import { describe, expect, it } from 'vitest'
import { circuitOf, IDEAL, setting } from '../builders/circuits.ts'
import { link, part, type RecordPlan } from '../builders/record.ts'
import { settle, solveSetting, type Fault } from '../../src/circuit/index.ts'
import type { Params } from '../../src/record/index.ts'

/** A wiper with its switch: on joins the feed to the brush, off joins the park switch to the brush. */
const wiping = (params: Params = {}): RecordPlan => ({
  metals: ['body'], assume: IDEAL,
  parts: [
    part('battery', 'battery', { emfV: 12, ohm: 0 }), part('motor', 'wiper', params),
    part('knob', 'control', {
      axes: { p: { positions: ['off', 'on', 'fast'], rest: 'off' } },
      rows: { park: { when: { p: ['off'] }, joins: ['31b', '53'] }, low: { when: { p: ['on'] }, joins: ['53a', '53'] }, high: { when: { p: ['fast'] }, joins: ['53a', '53b'] } },
    }),
  ],
  wires: [
    link('w1', 'battery:+', 'motor:feed'), link('w2', 'battery:+', 'knob:53a'), link('w3', 'knob:53', 'motor:low'), link('w4', 'motor:park', 'knob:31b'),
    link('w5', 'motor:out', 'body'), link('e', 'battery:-', 'body'),
  ],
})
const on = setting({ 'knob.p': 'on' }), off = setting()
const offAt = (phase: string) => setting({}, { phases: { motor: phase } })

/** Switched off with the blades at `phase`. */
function switchOff(params: Params, phase: string, faults: readonly Fault[] = []) {
  const circuit = circuitOf(wiping(params), faults)
  return solveSetting(circuit, offAt(phase), { from: solveSetting(circuit, on).condition, fromSetting: on }).solved
}

describe('a wiper', () => {
  it('goes round its cam while it is on', () => {
    const { phases, elements } = solveSetting(circuitOf(wiping({ brushes: { low: { ratedA: 3 } } })), on).solved
    expect(phases.motor).toMatchObject({ cycle: ['parked', 'rising', 'across', 'returning'], rate: 'wiping' })
    expect(elements['motor.low'].amps).toBeCloseTo(3, 2)
  })

  it('parks wherever it is switched off', () => {
    for (const phase of ['rising', 'across', 'returning']) {
      const { phases, states, wires } = switchOff({}, phase)
      expect(phases.motor.rests).toBe('parked')
      expect(states['motor.shaft']).toBe('still')
      expect(wires.w5.amps).toBe(0)
    }
  })

  it('stops where it is with a dead park switch', () => {
    const { phases, states } = switchOff({}, 'across', [{ kind: 'open', id: 'motor.park' }])
    expect(phases.motor.rests).toBe('across')
    expect(states['motor.shaft']).toBe('still')
  })

  it('brakes through its park switch once parked', () => {
    // For a moment it runs on: 12 V less the winding's drop of 3 V, over the winding's 1 Ω and the contact's 0.1 Ω.
    const params = { brakes: true, parkOhm: 0.1, ratedV: 12, brushes: { low: { ratedA: 3, stalledOhm: 1 } } }
    const circuit = circuitOf(wiping(params))
    settle(circuit, off, { ...solveSetting(circuit, on).condition, phases: ['parked'] }, 20)
    const brake = circuit.elementAmps(circuit.network.elementOf.get('motor.brake')!)
    expect(brake).toBeCloseTo((12 - 3 * 1) / 1.1, 1)
  })

  it('of two speeds takes more on its high brush', () => {
    const plan = wiping({ brushes: { low: { ratedA: 3 }, high: { ratedA: 4 } } })
    const circuit = circuitOf({ ...plan, wires: [...plan.wires!, link('w6', 'knob:53b', 'motor:high')] })
    expect(solveSetting(circuit, setting({ 'knob.p': 'fast' })).solved.wires.w5.amps).toBeCloseTo(4, 2)
  })
})
