import { describe, expect, it } from 'vitest'
import { IDEAL, setting, solved } from '../builders/circuits.ts'
import { link, part, type RecordPlan } from '../builders/record.ts'
import type { Params } from '../../src/record/index.ts'

/** An alternator that turns with the engine, a battery, and a feed to D+ through `feedOhm`; engine speed is its own speed. */
function charging(params: Params, battery: Params, feedOhm: number): RecordPlan {
  return {
    metals: ['body'], assume: IDEAL,
    parts: [
      part('machine', 'alternator', { ratio: 1, cutInRpm: 1000, fullOutputRpm: 6000, ratedV: 14, ratedA: 35, ...params }),
      part('battery', 'battery', battery), part('feed', 'resistor', { ohm: feedOhm }),
    ],
    wires: [
      link('out', 'machine:B+', 'battery:+'), link('w1', 'battery:+', 'feed:a'), link('w2', 'feed:b', 'machine:D+'),
      link('w3', 'machine:case', 'body'), link('e', 'battery:-', 'body'),
    ],
  }
}

/** A battery that keeps its posts at these volts, whatever flows. */
const stiff = (emfV: number) => ({ emfV, ohm: 0, counterVPerCell: 1, chargeOhm: 1e-4 })
const at = (engine: number) => setting({}, { engine })
/** Ohms in the feed of D+ that let this current into the rotor of 3.2 Ω, less the battery's 12.6 V. */
const feedFor = (amps: number) => 12.6 / amps - 3.2

describe('an alternator', () => {
  it('holds its set volts under light load', () => {
    const { voltages, wires } = solved(charging({ setV: 14.2 }, { emfV: 12.6, ohm: 0.01, counterVPerCell: 2.4 }, 60), at(3000))
    expect(voltages['machine:D+']).toBeCloseTo(14.2, 5)
    expect(wires.out.amps).toBeLessThan(1)
  })

  it('gives its rated amps at full-output speed', () => {
    const { amps } = solved(charging({ setV: 16 }, stiff(14), 60), at(6000)).wires.out
    expect(Math.abs(amps! / 35 - 1)).toBeLessThan(0.03)
  })

  it('limits its own current at any speed', () => {
    // Is = 35 A/(1 − 1000/6000) = 42 A: the output curve Is·(1 − n0/n) tends to it.
    for (const rpm of [6000, 9000, 15000]) {
      expect(solved(charging({ setV: 16 }, stiff(12), 60), at(rpm)).wires.out.amps).toBeLessThan(42)
    }
  })

  it('gives nothing below its cut-in speed', () => {
    const below = solved(charging({}, stiff(14), 60), at(950))
    expect(Math.abs(below.wires.out.amps!)).toBeLessThan(0.01)
    expect(solved(charging({ setV: 16 }, stiff(14), 60), at(1300)).wires.out.amps).toBeGreaterThan(2)
  })

  it('begins to charge with its exciting current', () => {
    const amps = (exciting: number) => solved(charging({ excitingA: 0.1, excitedAtRpm: 1500 }, { emfV: 12.6, ohm: 0.01 }, feedFor(exciting)), at(1500)).wires.out.amps
    expect(amps(0.115)).toBeGreaterThan(2)
    expect(amps(0.085)).toBeLessThan(0.01)
  })

  it('begins at a higher speed with less exciting current', () => {
    const amps = (rpm: number) => solved(charging({ excitingA: 0.1, excitedAtRpm: 1500 }, { emfV: 12.6, ohm: 0.01 }, feedFor(0.02)), at(rpm)).wires.out.amps
    expect(amps(1500)).toBeLessThan(0.01)
    expect(amps(6000)).toBeGreaterThan(2)
  })

  it('feeds D+ as high as its output', () => {
    const standing = solved(charging({}, { emfV: 12.6, ohm: 0.01 }, 60), at(0)).voltages
    const charged = solved(charging({}, { emfV: 12.6, ohm: 0.01 }, 60), at(3000)).voltages
    // Standing, D+ is what the rotor drops of the feed: 12.6 V·3.2/(60 + 3.2), and the 0.05 Ω of the regulator.
    expect(standing['machine:D+']).toBeCloseTo(12.6 * 3.25 / 63.25, 2)
    expect(Math.abs(charged['machine:D+']! - charged['machine:B+']!)).toBeLessThan(0.3)
  })

  it('is held by a separate regulator that feeds its rotor', () => {
    // The box's voltage bobbin, 1000 turns of 60 Ω, works at 14.3 V between D and E: at D+ through what it switches to DF.
    const plan: RecordPlan = {
      metals: ['body'], assume: IDEAL,
      parts: [
        part('battery', 'battery', { emfV: 12.6, ohm: 0.01 }), part('machine', 'alternator', { regulator: 'separate', ratio: 1 }), part('lamp', 'lamp', { powerW: 3 }),
        part('box', 'control-box', { setV: 14.3, compensationV: 0, fieldResistorOhm: 1e4 }), part('load', 'resistor', { ohm: 2 }),
      ],
      wires: [
        link('e', 'battery:-', 'body'), link('out', 'machine:B+', 'battery:+'), link('c', 'machine:case', 'body'), link('wl', 'battery:+', 'lamp:in'), link('d', 'lamp:out', 'machine:D+'),
        link('bd', 'machine:D+', 'box:D'), link('bf', 'box:F', 'machine:DF'), link('be', 'box:E', 'body'), link('l1', 'battery:+', 'load:a'), link('l2', 'load:b', 'body'),
      ],
    }
    const charging = solved(plan, at(5000))
    expect(charging.voltages['machine:D+']).toBeCloseTo(14.3, 3)
    expect(charging.elements['machine.rotor'].amps).toBeGreaterThan(0.1)
  })
})
