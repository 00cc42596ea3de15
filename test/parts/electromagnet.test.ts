import { describe, expect, it } from 'vitest'
import { circuitOf, IDEAL, onOff, setting, solved } from '../builders/circuits.ts'
import { link, part, type RecordPlan } from '../builders/record.ts'
import { solveSetting } from '../../src/circuit/index.ts'
import type { Params } from '../../src/record/index.ts'

/** A relay behind a rheostat of 0 to 1000 Ω on a battery. */
const behindRheostat = (relay: Params, supply: RecordPlan['supply'] = '12-', emfV = 12): RecordPlan => ({
  supply, metals: ['body'], assume: IDEAL,
  parts: [
    part('battery', 'battery', { emfV, ohm: 0 }), part('relay', 'electromagnet', relay),
    part('knob', 'control', { axes: { ohm: { range: { from: 0, to: 1000 }, rest: 0 } }, resistors: { track: { between: ['a', 'b'], axis: 'ohm', ohmAt: [[0, 0], [1000, 1000]] } } }),
  ],
  wires: [link('w1', 'battery:+', 'knob:a'), link('w2', 'knob:b', 'relay:86'), link('w3', 'relay:85', 'body'), link('e', 'battery:-', 'body')],
})
const ohms = (ohm: number) => setting({ 'knob.ohm': ohm })
const armature = (plan: RecordPlan, ohm = 0) => solved(plan, ohms(ohm)).states['relay.armature']
const coil = (turns = 1000) => ({ windings: { coil: { from: '86', to: '85', ohm: 100, turns } }, pullAt: 80, releaseAt: 40 })

describe('an electromagnet', () => {
  it('pulls at its ampere-turns, by volts', () => {
    // 12 V over 100 Ω and 49 or 51 Ω: 80.5 and 79.5 ampere-turns.
    expect([armature(behindRheostat(coil()), 49), armature(behindRheostat(coil()), 51)]).toEqual(['pulled', 'released'])
  })

  it('with half its turns no longer pulls', () => {
    expect([armature(behindRheostat(coil(1000))), armature(behindRheostat(coil(500)))]).toEqual(['pulled', 'released'])
  })

  it('lets go lower than it pulls', () => {
    // From pulled: 41.4 ampere-turns at 190 Ω hold, 38.7 at 210 Ω do not.
    const circuit = circuitOf(behindRheostat(coil()))
    const pulled = solveSetting(circuit, ohms(0))
    const then = (ohm: number) => solveSetting(circuit, ohms(ohm), { from: pulled.condition, fromSetting: ohms(0) }).solved.states['relay.armature']
    expect([then(190), then(210)]).toEqual(['pulled', 'released'])
  })

  it('adds its windings with their direction', () => {
    const plan = (secondTurns: number): RecordPlan => behindRheostat({
      ...coil(), windings: { ...coil().windings, second: { from: '86', to: '85', ohm: 100, turns: secondTurns } },
    })
    // 120 ampere-turns of the first and as many, a quarter, or the same against them of the second.
    expect([1000, -250, -1000].map((turns) => armature(plan(turns)))).toEqual(['pulled', 'pulled', 'released'])
  })

  it('keeps a winding and a contact of one name apart', () => {
    const relay = { windings: { main: { from: '86', to: '85', ohm: 100, turns: 1000 } }, contacts: { main: { from: '30', to: '87' } }, pullAt: 80 }
    expect(armature(behindRheostat(relay))).toBe('pulled')
  })

  it('without figures pulls at two thirds of the volts', () => {
    for (const [supply, systemV] of [['6-', 6], ['12-', 12], ['24-', 24]] as const) {
      const at = (share: number) => armature(behindRheostat({}, supply, share * systemV))
      expect([at(0.65), at(0.68)]).toEqual(['released', 'pulled'])
    }
  })

  it('a solenoid of two windings lets go with the key', () => {
    // Released, the pull winding is fed backwards through the contact and undoes the hold winding: 12 V over 0.5 + 1 Ω both ways.
    const plan: RecordPlan = {
      metals: ['body'], assume: IDEAL,
      parts: [
        part('battery', 'battery', { emfV: 12, ohm: 0.01 }), part('key', 'control', onOff()), part('starter', 'resistor', { ohm: 0.1 }),
        part('relay', 'electromagnet', {
          windings: { pull: { from: '50', to: 'M', ohm: 0.5, turns: 200 }, hold: { from: '50', to: 'case', ohm: 1, turns: 200 } },
          contacts: { make: { from: '30', to: 'M', ohm: 0.001 } }, pullAt: 1500, releaseAt: 500,
        }),
      ],
      wires: [
        link('w1', 'battery:+', 'key:a'), link('w2', 'key:b', 'relay:50'), link('w3', 'battery:+', 'relay:30'), link('w4', 'relay:M', 'starter:a'),
        link('w5', 'starter:b', 'body'), link('w6', 'relay:case', 'body'), link('e', 'battery:-', 'body'),
      ],
    }
    const circuit = circuitOf(plan)
    const on = setting({ 'key.p': 'on' })
    const cranking = solveSetting(circuit, on)
    const released = solveSetting(circuit, setting(), { from: cranking.condition, fromSetting: on })
    expect([cranking, released].map(({ solved: at }) => at.states['relay.armature'])).toEqual(['pulled', 'released'])
    expect(released.solved.wires.w4.amps).toBe(0)
  })

  it('assumes no pull volts where its pull is stated', () => {
    const { assumed } = circuitOf(behindRheostat(coil())).network
    expect(assumed.map(({ path }) => path)).not.toContain('parts.relay.params.pullV')
  })
})
