import { describe, expect, it } from 'vitest'
import { IDEAL, setting, solved } from '../builders/circuits.ts'
import { link, part, type RecordPlan } from '../builders/record.ts'
import type { Fault } from '../../src/circuit/index.ts'
import type { Params } from '../../src/record/index.ts'

/** A stabiliser on a battery of these volts, with a bimetal gauge of 65 Ω and a sender of 35 Ω on it: 0.1 A at 10 V. */
const gauges = (batteryV: number, params: Params = {}, supply: RecordPlan['supply'] = '12-'): RecordPlan => ({
  supply, metals: ['body'], assume: IDEAL,
  parts: [
    part('battery', 'battery', { emfV: batteryV, ohm: 0 }), part('it', 'stabiliser', params),
    part('fuel', 'gauge', { ohm: 65, scale: [[0, 0], [0.2, 200]] }), part('sender', 'resistor', { ohm: 35 }),
  ],
  wires: [
    link('w1', 'battery:+', 'it:B'), link('w2', 'it:I', 'fuel:in'), link('w3', 'fuel:T', 'sender:a'), link('w4', 'sender:b', 'body'),
    link('case', 'it:E', 'body'), link('e', 'battery:-', 'body'),
  ],
})
const at = (plan: RecordPlan, faults: readonly Fault[] = []) => solved(plan, setting(), faults)
/** The needle stands at a thousand times the amps. */
const reads = (plan: RecordPlan, faults: readonly Fault[] = []) => at(plan, faults).dials.fuel.shows

describe('a stabiliser', () => {
  it('pulses, and the gauge reads as at its steady volts whatever the battery has', () => {
    for (const batteryV of [10.5, 12, 14.4]) {
      const { phases, dials } = at(gauges(batteryV))
      expect(phases.it.cycle).toEqual(['closed', 'open'])
      expect(dials.fuel.shows).toBeCloseTo(1000 * 10 / 100, 3)
    }
  })

  it('shows its pulse while it is closed', () => {
    const { elements, phases } = at(gauges(12))
    expect(elements['fuel.winding'].amps).toBeCloseTo(12 / 100, 6)
    expect(phases.it.solutions!.map(({ elements: one }) => one['fuel.winding'].amps)).toEqual([expect.closeTo(0.12, 6), 0])
  })

  it('below its volts passes what there is', () => {
    expect(at(gauges(9)).phases.it.rests).toBe('closed')
    expect(reads(gauges(9))).toBeCloseTo(90, 3)
  })

  it('at half its set volts halves the reading', () => {
    expect(reads(gauges(12, { setV: 5 }))).toBeCloseTo(50, 3)
  })

  it('of a 24 V system holds twice the volts', () => {
    expect(reads(gauges(24, {}, '24-'))).toBeCloseTo(200, 3)
  })

  // The published fault list: gauges read full, or drift together, once the stabiliser's earth is lost.
  it.each([
    ['without its earth', { kind: 'open', id: 'it:E' }], ['with its contact welded', { kind: 'hold', part: 'it', state: '', value: 'closed' }],
    ['with an open heater', { kind: 'open', id: 'it.heater' }],
  ] as const)('%s lets every gauge read high', (_, fault) => {
    expect(reads(gauges(14.4), [fault])).toBeCloseTo(144, 3)
  })

  it('holds its reading while turn lamps flash', () => {
    const { parts, wires, ...rest } = gauges(12)
    const flashing = { ...rest, parts: [...parts!, part('flasher', 'flasher'), part('lamp', 'lamp', { powerW: 42 })], wires: [...wires!, link('f1', 'battery:+', 'flasher:49'), link('f2', 'flasher:49a', 'lamp:in'), link('f3', 'lamp:out', 'body')] }
    expect(at(flashing).phases.flasher.cycle).toEqual(['dark', 'lit'])
    expect(reads(flashing)).toBeCloseTo(100, 2)
  })

  it('with its contact burnt away leaves the gauges dead', () => {
    expect(reads(gauges(12), [{ kind: 'open', id: 'it.contact' }])).toBe(0)
  })
})
