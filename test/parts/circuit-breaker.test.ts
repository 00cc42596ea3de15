import { describe, expect, it } from 'vitest'
import { circuitOf, IDEAL, onOff, setting, solved } from '../builders/circuits.ts'
import { link, part, type RecordPlan } from '../builders/record.ts'
import { solveSetting, type Fault } from '../../src/circuit/index.ts'
import type { Params } from '../../src/record/index.ts'

/** A breaker before a resistance that takes `amps` of 12 V beside the breaker's own ohms. */
const carrying = (amps: number, params: Params): RecordPlan => ({
  metals: ['body'], assume: IDEAL,
  parts: [part('battery', 'battery', { emfV: 12, ohm: 0 }), part('switch', 'control', onOff()), part('it', 'circuit-breaker', { ohm: 0, ...params }), part('load', 'resistor', { ohm: 12 / amps })],
  wires: [link('w1', 'battery:+', 'it:in'), link('w2', 'it:out', 'switch:a'), link('w3', 'switch:b', 'load:a'), link('w4', 'load:b', 'body'), link('e', 'battery:-', 'body')],
})
const on = setting({ 'switch.p': 'on' })
const at = (amps: number, params: Params, faults: readonly Fault[] = []) => solved(carrying(amps, params), on, faults)

describe('a circuit breaker', () => {
  it('carries its rating', () => {
    const { phases, elements } = at(20, { ratingA: 20 })
    expect(phases.it.rests).toBe('closed')
    expect(elements.it.amps).toBeCloseTo(20, 1)
  })

  it('that resets itself opens and closes as long as the overload lasts', () => {
    const { phases } = at(28, { ratingA: 20 })
    expect(phases.it).toMatchObject({ cycle: ['closed', 'open'], rate: 'opens and closes by its own heat' })
    expect(phases.it.solutions!.map(({ elements }) => elements.it.amps)).toEqual([expect.closeTo(28, 1), 0])
  })

  it('of half the rating opens at half the amps', () => {
    // 1.35 times the rating: 27 A and 13.5 A.
    expect([26, 28].map((amps) => at(amps, { ratingA: 20 }).phases.it.rests)).toEqual(['closed', undefined])
    expect([13, 14].map((amps) => at(amps, { ratingA: 10 }).phases.it.rests)).toEqual(['closed', undefined])
    expect([15, 17].map((amps) => at(amps, { ratingA: 10, tripA: 16 }).phases.it.rests)).toEqual(['closed', undefined])
  })

  it('that is reset by hand stays open, and says so', () => {
    const circuit = circuitOf(carrying(28, { ratingA: 20, resets: 'by hand' }))
    const tripped = solveSetting(circuit, on)
    expect(tripped.solved.states['it.strip']).toBe('tripped')
    expect(tripped.solved.notes).toContain('it (it) has tripped')
    const off = solveSetting(circuit, setting(), { from: tripped.condition, fromSetting: on })
    expect(solveSetting(circuit, on, { from: off.condition, fromSetting: setting() }).solved.elements.it.amps).toBe(0)
    // Its button pushed, it starts from rest again.
    expect(at(20, { ratingA: 20, resets: 'by hand' }).states['it.strip']).toBe('closed')
  })

  it('welded no longer opens, dirty loses volts, dead carries nothing', () => {
    expect(at(28, { ratingA: 20 }, [{ kind: 'hold', part: 'it', state: '', value: 'closed' }]).phases.it.rests).toBe('closed')
    expect(at(28, { ratingA: 20, resets: 'by hand' }, [{ kind: 'hold', part: 'it', state: 'strip', value: 'closed' }]).elements.it.amps).toBeCloseTo(28, 1)
    expect(at(10, { ratingA: 20 }, [{ kind: 'ohms', id: 'it', ohm: 0.3 }]).elements.load.volts).toBeCloseTo(12 * 1.2 / 1.5, 2)
    expect(at(10, { ratingA: 20 }, [{ kind: 'open', id: 'it' }]).elements.load.volts).toBe(0)
  })

  it('without a figure drops 0.15 V at its rating', () => {
    // Common practice, no source: 7.5 mΩ before 0.6 Ω.
    const { elements } = at(20, { ratingA: 20, ohm: 'unknown' })
    expect(elements.it.volts! / elements.it.amps!).toBeCloseTo(0.0075, 6)
  })
})
