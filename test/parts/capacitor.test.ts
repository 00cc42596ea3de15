import { describe, expect, it } from 'vitest'
import { IDEAL, setting, solved } from '../builders/circuits.ts'
import { link, part, type RecordPlan } from '../builders/record.ts'
import { circuitOf } from '../builders/circuits.ts'
import { readOhms, type Fault } from '../../src/circuit/index.ts'

/** A coil of 3 Ω with its points, and a condenser beside them. */
const plan: RecordPlan = {
  metals: ['body'], assume: IDEAL,
  parts: [part('battery', 'battery', { emfV: 12, ohm: 0 }), part('coil', 'coil', { primaryOhm: 3 }), part('points', 'breaker'), part('it', 'capacitor', { microF: 0.2 })],
  wires: [
    link('w1', 'battery:+', 'coil:15'), link('w2', 'coil:1', 'points:1'), link('w3', 'it:in', 'points:1'), link('w4', 'points:case', 'body'),
    link('w5', 'it:case', 'body'), link('e', 'battery:-', 'body'),
  ],
}
const standing = setting({}, { engine: 'stopped-open' })
const at = (faults: readonly Fault[] = []) => solved(plan, standing, faults)

describe('a capacitor', () => {
  it('lets no steady current pass', () => {
    const { elements, voltages } = at()
    expect(elements.it.amps).toBe(0)
    expect(voltages['points:1']).toBeCloseTo(12, 6)
  })

  it('shorted feeds the coil past its open points', () => {
    const shorted = at([{ kind: 'join', a: 'it:in', b: 'it:case' }])
    expect(shorted.elements['coil.primary'].amps).toBeCloseTo(4, 3)
    expect(shorted.voltages['points:1']).toBeCloseTo(0, 3)
  })

  it('open reads as a good one does', () => {
    const good = at(), open = at([{ kind: 'open', id: 'it' }])
    expect(open.voltages).toEqual(good.voltages)
  })

  it('reads no ohms where it stands alone', () => {
    const circuit = circuitOf({ metals: ['body'], parts: [part('it', 'capacitor')], wires: [link('w', 'it:case', 'body')] })
    const point = (name: string) => circuit.network.pointOf.get(name)!
    expect(readOhms(circuit, setting(), point('it:in'), point('body')).ohm).toBeNull()
  })
})
