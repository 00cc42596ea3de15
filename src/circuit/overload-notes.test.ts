import { describe, expect, test } from 'vitest'
import { onOff, setting, solved } from '../../test/builders/circuits.ts'
import { link, part, wire } from '../../test/builders/record.ts'
import type { RecordWire } from '../record/index.ts'
import type { Setting } from './solved.ts'

/** What is said of a wire that carries so many amps from a stiff 12 V battery through a switch. */
function notesOf(amps: number, more: Partial<RecordWire>, at: Partial<Setting> = {}, springs = false): readonly string[] {
  const { axes: { p }, rows } = onOff()
  return solved({
    metals: ['body'], assume: { jointOhm: 0, contactOhm: 0, wireOhm: 0 },
    parts: [part('battery', 'battery', { emfV: 12, ohm: 1e-4 }), part('switch', 'control', { axes: { p: { ...p, ...springs && { springsFrom: ['on'] } } }, rows }), part('load', 'resistor', { ohm: 12 / amps - 1e-4 })],
    wires: [wire('w1', 'battery:+', 'switch:a', { lengthMm: 1000, ...more }), link('w2', 'switch:b', 'load:a'), link('w3', 'load:b', 'body'), link('e', 'battery:-', 'body')],
  }, setting({ 'switch.p': 'on' }, at)).notes
}

test('a wire that burns is told with its figures, their sources and the time', () => {
  expect(notesOf(107, { sizeMm2: 1 })).toEqual([expect.stringMatching(
    /^wire w1 carries 107 A in 1 mm², where the most that any table gives one cable in free air is 17 A \(JIS .*\): it burns, its covering is spoilt within 2 s \(k²S²\/I², IEC 60364-4-43/)])
})

// k from 30 to 160 C is 143 A s^0.5/mm2 by IEC 60364-4-43: 5 s at 1 mm2 is 63.9 A.
test.each([[63, 'gets so hot'], [65, 'within 5 s']])('%d A in 1 mm² %s', (amps, said) => {
  expect(notesOf(amps, { sizeMm2: 1 })).toEqual([expect.stringContaining(said)])
})

// The JIS C 3406 sheet gives 0.85 mm2 16 A and 1.25 mm2 21 A; sqrt(130 / 40) of what lies between is 31.3 A.
test.each([[30.5, 0], [32, 1]])('%d A in 1 mm² is told %d times', (amps, times) => {
  expect(notesOf(amps, { sizeMm2: 1 })).toHaveLength(times)
})

describe('nothing is said of a wire', () => {
  test.each<[string, Partial<RecordWire>]>([['of no stated size', {}], ['of unknown size', { sizeMm2: 'unknown' }], ['without a covering', { sizeMm2: 1, colour: 'bare' }], ['large enough', { sizeMm2: 16 }]])('%s', (_name, more) => {
    expect(notesOf(107, more)).toEqual([])
  })

  test('that is merely hot while the engine is cranked or a spring is held', () => {
    const brief = (springs: boolean, at: Partial<Setting>) => notesOf(350, { sizeMm2: 35 }, at, springs)
    expect(brief(false, {})).toHaveLength(1)
    expect([brief(false, { engine: 'cranking' }), brief(true, {})]).toEqual([[], []])
  })
})

test('a wire that burns is told while the engine is cranked too', () => {
  expect(notesOf(350, { sizeMm2: 4 }, { engine: 'cranking' })).toEqual([expect.stringContaining('within 3 s')])
})
