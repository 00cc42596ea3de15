import { describe, expect, it } from 'vitest'
import { circuitOf, IDEAL, setting, solved } from '../builders/circuits.ts'
import { link, part, type RecordPlan } from '../builders/record.ts'

/** A block fed at way 1, with 6 Ω on each of its other ways. */
function block(ways: number, params = {}): RecordPlan {
  const others = Array.from({ length: ways - 1 }, (_, i) => i + 2)
  return {
    metals: ['body'], assume: IDEAL,
    parts: [part('battery', 'battery', { emfV: 12, ohm: 0 }), part('block', 'joint', { ways, ...params }), ...others.map((way) => part(`load${way}`, 'resistor', { ohm: 6 }))],
    wires: [
      link('feed', 'battery:+', 'block:1'), link('e', 'battery:-', 'body'),
      ...others.flatMap((way) => [link(`a${way}`, `block:${way}`, `load${way}:a`), link(`b${way}`, `load${way}:b`, 'body')]),
    ],
  }
}

describe('a joint', () => {
  it('joins its first way to every other', () => {
    const { wires } = solved(block(4))
    expect(wires.feed.amps).toBeCloseTo(6, 2)
    for (const way of [2, 3, 4]) expect(wires[`a${way}`].amps).toBeCloseTo(2, 3)
  })

  it('has as many terminals as ways, two by default', () => {
    const terminals = (plan: RecordPlan) => [...circuitOf(plan).network.wiring.parts.get('block')!.terminals.keys()]
    expect(terminals(block(3))).toEqual(['1', '2', '3'])
    expect(terminals({ parts: [part('block', 'joint')] })).toEqual(['1', '2'])
  })

  it('drops its ohms times its amps on each way', () => {
    const { elements } = solved(block(3, { ohm: 0.4 }))
    expect(elements['block.2'].volts).toBeCloseTo(12 * 0.4 / 6.4, 3)
  })

  it('loses one way when that comes loose', () => {
    const { wires } = solved(block(3), setting(), [{ kind: 'open', id: 'block.2' }])
    expect(wires.a2.amps).toBe(0)
    expect(wires.a3.amps).toBeCloseTo(2, 3)
  })
})
