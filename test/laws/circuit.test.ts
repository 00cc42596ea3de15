import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { layFaults, prepareCircuit, rebuildWithFaults, solveSetting, type Circuit, type Fault } from '../../src/circuit/index.ts'
import { partKinds } from '../../src/parts/index.ts'
import { circuitOf, setting } from '../builders/circuits.ts'
import { randomVehicle, seededChance } from '../builders/random-vehicle.ts'

const seeds = fc.integer({ min: 1, max: 1_000_000 })

function solve(circuit: Circuit) {
  return solveSetting(circuit, setting(), { skipStanding: true }).solved
}

/** One to three faults on random wires, elements and points of a circuit. */
function randomFaults(circuit: Circuit, seed: number): Fault[] {
  const chance = seededChance(seed + 7)
  const pick = <T>(items: readonly T[]): T => items[Math.floor(chance() * items.length)]
  const { elements, points, wiring } = circuit.network
  const named = points.filter((point) => !point.includes(':~'))
  return Array.from({ length: 1 + Math.floor(chance() * 3) }, (): Fault => {
    const roll = chance()
    if (roll < 0.35) return { kind: 'open', id: pick(elements).id }
    if (roll < 0.65) return { kind: 'ohms', id: pick([...wiring.wires.keys()]), ohm: 0.1 + 5 * chance() }
    if (roll < 0.85) return { kind: 'join', a: pick(named), b: pick(named) }
    return { kind: 'swap', a: pick(named), b: pick(named) }
  })
}

describe('laws of generated networks', () => {
  it('currents into every node sum to zero', () => {
    fc.assert(fc.property(seeds, (seed) => {
      const { balance } = solve(circuitOf(randomVehicle(seed)))
      expect(balance.worstA).toBeLessThan(1e-8)
    }))
  })

  it('sources give what the rest takes', () => {
    fc.assert(fc.property(seeds, (seed) => {
      const { balance: { sourceW, lostW } } = solve(circuitOf(randomVehicle(seed)))
      expect(Math.abs(sourceW - lostW)).toBeLessThan(1e-6 * (1 + sourceW))
    }))
  })

  it('a fault laid on equals a network built with it', () => {
    fc.assert(fc.property(seeds, (seed) => {
      const sound = circuitOf(randomVehicle(seed))
      const faults = randomFaults(sound, seed)
      const laid = solve(layFaults(sound, partKinds, faults))
      const rebuilt = solve(rebuildWithFaults(sound, partKinds, faults))
      expect(laid.floating).toEqual(rebuilt.floating)
      for (const [point, volts] of Object.entries(laid.voltages)) {
        if (volts !== null) expect(Math.abs(volts - (rebuilt.voltages[point] as number))).toBeLessThan(1e-6)
      }
    }))
  })

  it('order and names of parts change no answer', () => {
    fc.assert(fc.property(seeds, (seed) => {
      const { wiring } = circuitOf(randomVehicle(seed)).network
      const turned = { ...wiring, parts: new Map([...wiring.parts].reverse()), wires: new Map([...wiring.wires].reverse()) }
      const one = solve(prepareCircuit(wiring, partKinds)), other = solve(prepareCircuit(turned, partKinds))
      for (const [point, volts] of Object.entries(one.voltages)) {
        if (volts !== null) expect(Math.abs(volts - (other.voltages[point] as number))).toBeLessThan(1e-6)
        else expect(other.voltages[point]).toBeNull()
      }
    }))
  })
})
