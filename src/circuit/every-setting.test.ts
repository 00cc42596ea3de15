import { describe, expect, it } from 'vitest'
import { circuitOf, onOff } from '../../test/builders/circuits.ts'
import { fixing, part, wire, type RecordPlan } from '../../test/builders/record.ts'
import { coverTriples } from './cover-triples.ts'
import { planSweep, sweepSettings } from './every-setting.ts'
import { findTrunk } from './find-trunk.ts'

/** A key before everything, two lamps that share an earth, and a third on its own, each behind its switch. */
const plan: RecordPlan = {
  metals: ['chassis', 'wing'],
  parts: [
    part('battery', 'battery'), part('key', 'control', onOff()), ...['left', 'right', 'alone'].flatMap((id) => [part(id, 'lamp', { powerW: 21 }), part(`s-${id}`, 'control', onOff())]),
  ],
  wires: [
    wire('feed', 'battery:+', 'key:a', { ohm: 0.01 }), wire('strap', 'battery:-', 'chassis', { ohm: 0.001 }),
    ...['left', 'right', 'alone'].flatMap((id) => [
      wire(`f-${id}`, 'key:b', `s-${id}:a`, { ohm: 0.02 }), wire(`g-${id}`, `s-${id}:b`, `${id}:in`, { ohm: 0.02 }), wire(`e-${id}`, `${id}:out`, id === 'alone' ? 'chassis' : 'wing', { ohm: 0.02 }),
    ]),
  ],
  fixings: [fixing('bolts', 'wing', 'chassis', 0.1)],
}

describe('a sweep plan', () => {
  it('tries a travel wherever its resistance bends', () => {
    const dimmer = part('dimmer', 'control', {
      axes: { knob: { range: { from: 0, to: 100 }, rest: 0 } }, resistors: { track: { between: ['a', 'b'], axis: 'knob', ohmAt: [[0, 100], [25, 1], [50, 100], [100, 100]] } },
    })
    const circuit = circuitOf({ metals: ['body'], parts: [part('battery', 'battery'), part('lamp', 'lamp', { powerW: 21 }), dimmer], wires: [wire('f', 'battery:+', 'dimmer:a', { ohm: 0.01 }), wire('g', 'dimmer:b', 'lamp:in', { ohm: 0.01 }), wire('h', 'lamp:out', 'battery:-', { ohm: 0.01 })] })
    const amps = [...sweepSettings(circuit, planSweep(circuit))].map(({ setting }) => setting.controls['dimmer.knob'])
    expect(new Set(amps)).toEqual(new Set([0, 25, 50, 100]))
  })

  it('finds the trunk: what two loads in three hang on', () => {
    const { network } = circuitOf(plan)
    expect([...findTrunk(network)].map((e) => network.elements[e].id).sort()).toEqual(['bolts', 'feed', 'key.on', 'strap'])
  })

  it('groups controls that still share an element', () => {
    const shared = circuitOf({ ...plan, parts: [...plan.parts ?? [], part('more', 'lamp'), part('s-more', 'control', onOff())], wires: [...plan.wires ?? [],
      wire('f-more', 'key:b', 's-more:a', { ohm: 0.02 }), wire('g-more', 's-more:b', 'more:in', { ohm: 0.02 }), wire('e-more', 'more:out', 'chassis', { ohm: 0.02 })] })
    const { key, groups } = planSweep(shared)
    expect(key).toEqual(['key.p'])
    expect(groups.map(({ axes }) => [...axes].sort()).sort()).toEqual([['s-alone.p'], ['s-left.p', 's-right.p'], ['s-more.p']])
  })

  it('tries each group in full, with the key, and the others at rest and at their heaviest', () => {
    const circuit = circuitOf(plan)
    const swept = [...sweepSettings(circuit, planSweep(circuit))].map(({ setting }) => setting)
    expect(swept.some(({ controls }) => ['s-left.p', 's-right.p', 's-alone.p', 'key.p'].every((id) => controls[id] === 'on'))).toBe(true)
    expect(swept).toHaveLength(planSweep(circuit).count)
  })

  it('leaves out what the record says cannot occur', () => {
    const circuit = circuitOf({ ...plan, limits: { both: { never: { 's-left': ['on'], 's-right': ['on'] } } } })
    for (const { setting: { controls } } of sweepSettings(circuit, planSweep(circuit))) expect(controls['s-left.p'] === 'on' && controls['s-right.p'] === 'on').toBe(false)
  })

  it('can be stopped at any time', () => {
    const circuit = circuitOf(plan)
    let seen = 0
    for (const { outcome } of sweepSettings(circuit, planSweep(circuit))) {
      expect(outcome).toBe('rests')
      if (++seen === 3) break
    }
    expect(seen).toBe(3)
  })
})

describe('a cover of triples', () => {
  const steps = Array.from({ length: 9 }, (_, i) => ({ axis: `a${i}`, positions: i % 3 === 0 ? ['x', 'y', 'z'] : ['x', 'y'] }))

  it('holds every triple of positions in a few combinations', () => {
    const combinations = coverTriples(steps)
    const met = new Set<string>()
    for (const c of combinations) for (const a of steps) for (const b of steps) for (const d of steps) met.add([a, b, d].map(({ axis }) => `${axis}=${String(c[axis])}`).join(' '))
    for (const a of steps) for (const b of steps) for (const d of steps) {
      if (a.axis >= b.axis || b.axis >= d.axis) continue
      for (const p of a.positions) for (const q of b.positions) for (const r of d.positions) expect(met.has(`${a.axis}=${p} ${b.axis}=${q} ${d.axis}=${r}`)).toBe(true)
    }
    expect(combinations.length).toBeLessThan(60)
  })
})
