import { prepareCircuit, type Circuit } from '../src/circuit/index.ts'
import { partKinds } from '../src/parts/index.ts'
import type { Wiring } from '../src/record/index.ts'
import { makeRecord, mustResolve, part, wire } from '../test/builders/record.ts'
import { seededChance } from '../test/builders/random-vehicle.ts'

/**
 * A vehicle of `lamps` lamps, each behind its own switch and on its own earth wire, fed through a tree of splices: about five
 * points and four wires a lamp. Two switches in three are on.
 */
export function lampWiring(lamps: number, seed = 3): Wiring {
  const chance = seededChance(seed)
  const parts = [part('battery', 'battery', { emfV: 12.6, ohm: 0.01 })]
  const wires = [wire('feed', 'battery:+', 'root', { ohm: 0.002 }), wire('strap', 'battery:-', 'body', { ohm: 0.001 })]
  const splices: Record<string, object> = { root: {} }
  for (let i = 0; i < lamps; i++) {
    const from = i < 6 ? 'root' : `s${Math.floor(chance() * i)}`
    splices[`s${i}`] = {}
    parts.push(part(`lamp${i}`, 'lamp', { powerW: 5 + 16 * chance() }), part(`switch${i}`, 'control', {
      axes: { p: { positions: ['off', 'on'], rest: i % 3 === 0 ? 'off' : 'on' } }, rows: { on: { when: { p: ['on'] }, joins: ['a', 'b'] } },
    }))
    wires.push(
      wire(`a${i}`, from, `s${i}`, { ohm: 0.01 }), wire(`b${i}`, `s${i}`, `switch${i}:a`, { ohm: 0.01 }),
      wire(`c${i}`, `switch${i}:b`, `lamp${i}:in`, { ohm: 0.02 }), wire(`d${i}`, `lamp${i}:out`, 'body', { ohm: 0.01 }),
    )
  }
  return mustResolve(makeRecord({ metals: ['body'], parts, wires, splices, assume: { jointOhm: 0 } }), {}, partKinds)
}

export function lampCircuit(lamps: number): Circuit {
  return prepareCircuit(lampWiring(lamps), partKinds)
}
