import { describe, expect, it } from 'vitest'
import { circuitOf, IDEAL, onOff, setting, solved } from '../builders/circuits.ts'
import { link, part, type RecordPlan } from '../builders/record.ts'
import { solveSetting, type Fault } from '../../src/circuit/index.ts'
import type { Params } from '../../src/record/index.ts'

/** A fuse before a resistance that takes `amps` of 12 V. */
const carrying = (amps: number, params: Params, assume: RecordPlan['assume'] = IDEAL): RecordPlan => ({
  metals: ['body'], assume,
  parts: [part('battery', 'battery', { emfV: 12, ohm: 0 }), part('switch', 'control', onOff()), part('link', 'fuse', params), part('load', 'resistor', { ohm: 12 / amps })],
  wires: [link('w1', 'battery:+', 'link:in'), link('w2', 'link:out', 'switch:a'), link('w3', 'switch:b', 'load:a'), link('w4', 'load:b', 'body'), link('e', 'battery:-', 'body')],
})
const on = setting({ 'switch.p': 'on' })
const element = (amps: number, params: Params) => solved(carrying(amps, params), on).states['link.element']

describe('a fuse', () => {
  // ISO 8820-3 as quoted by its makers: 110 % holds for 100 hours, 135 % opens within half an hour.
  it('of a continuous rating blows above 135 per cent', () => {
    expect([11, 13.4, 13.7].map((amps) => element(amps, { ratingA: 10, ratingMeans: 'continuous' }))).toEqual(['whole', 'whole', 'blown'])
  })

  // A table of British fuses: the printed 35 A is what blows it if sustained, 17.5 A what it carries.
  it('of a blow rating blows at its print', () => {
    expect([17.5, 34.5, 35.5].map((amps) => element(amps, { ratingA: 35, ratingMeans: 'blow' }))).toEqual(['whole', 'whole', 'blown'])
  })

  it('goes by its blow figure where that is stated', () => {
    expect([element(19, { ratingA: 10, blowA: 20 }), element(21, { ratingA: 10, blowA: 20 })]).toEqual(['whole', 'blown'])
  })

  it('once blown stays blown', () => {
    const circuit = circuitOf(carrying(20, { ratingA: 10 }))
    const blown = solveSetting(circuit, on)
    const after = solveSetting(circuit, setting(), { from: blown.condition, fromSetting: on })
    expect(after.solved.states['link.element']).toBe('blown')
    expect(after.solved.voltages['link:out']).toBeNull()
  })

  // a table of British three-rating fuses: carried, printed (what blows it if sustained), at once.
  it.each([[12.5, 25, 30], [17.5, 35, 40], [30, 60, 75]])('of %s A continuous is printed %s A', (carriedA, printedA, atOnceA) => {
    expect([carriedA, printedA - 0.5, printedA + 0.5, atOnceA].map((amps) => element(amps, { ratingA: printedA, ratingMeans: 'blow' }))).toEqual(['whole', 'whole', 'blown', 'blown'])
    expect(printedA).toBe(2 * carriedA)
  })

  it('has clips, and an element by its rating', () => {
    // Common practice, no source: 3 mΩ and 80 mV at the rated amps; at 8 A of a fuse of 8 A 24 mV + 80 mV.
    const { elements } = solved(carrying(8, { ratingA: 8 }, { ...IDEAL, fuseOhm: undefined }), on)
    expect(elements.link.volts! / elements.link.amps!).toBeCloseTo(0.013, 6)
  })
})

describe('a box of fuses', () => {
  /** Two fuses on one bar, the first with 24 A on it, the second with 6 A. */
  const box = (params: Params): RecordPlan => ({
    metals: ['body'], assume: IDEAL,
    parts: [part('battery', 'battery', { emfV: 12, ohm: 0 }), part('box', 'fuse', params), part('horn', 'resistor', { ohm: 0.5 }), part('lamps', 'resistor', { ohm: 2 })],
    wires: [
      link('w1', 'battery:+', 'box:bar'), link('w2', 'box:2', 'horn:a'), link('w3', 'box:4', 'lamps:a'), link('w4', 'horn:b', 'body'), link('w5', 'lamps:b', 'body'),
      link('e', 'battery:-', 'body'),
    ],
  })
  const ways = (first: object, second: object) => ({ first: { from: 'bar', to: '2', ...first }, second: { from: 'bar', to: '4', ...second } })
  const at = (params: Params, faults: readonly Fault[] = []) => solved(box(params), setting(), faults)

  it('blows the overloaded one alone, and says which', () => {
    const { elements, states, notes } = at({ ways: ways({ ratingA: 15 }, { ratingA: 8 }) })
    expect(states).toEqual({ 'box.first-element': 'blown', 'box.second-element': 'whole' })
    expect([elements['box.first'].amps, elements['box.second'].amps]).toEqual([0, expect.closeTo(6, 2)])
    expect(notes).toContain('box (box) has blown its fuse first')
  })

  it('takes a figure that a way leaves out from beside them', () => {
    // 24 A: carried by 20 A continuous (27 A), not by a printed 20 A that is the blow figure.
    expect(at({ ratingA: 20, ways: ways({}, {}) }).states['box.first-element']).toBe('whole')
    expect(at({ ratingA: 20, ratingMeans: 'blow', ways: ways({}, {}) }).states['box.first-element']).toBe('blown')
    expect(at({ ratingA: 20, ratingMeans: 'blow', ways: ways({ ratingMeans: 'continuous' }, {}) }).states['box.first-element']).toBe('whole')
  })

  it('with dirty clips of one loses volts there only', () => {
    const { elements } = at({ ratingA: 35, ways: ways({}, {}) }, [{ kind: 'ohms', id: 'box.second', ohm: 0.3 }])
    expect(elements.lamps.volts).toBeCloseTo(12 * 2 / 2.3, 1)
    expect(elements.horn.volts).toBeCloseTo(12, 1)
  })

  it('has the ends that its ways name', () => {
    expect(at({ ways: ways({}, {}) }).voltages).toMatchObject({ 'box:bar': expect.closeTo(12, 1) as number, 'box:2': expect.any(Number) as number, 'box:4': expect.any(Number) as number })
  })
})
