import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { copyCondition, restCondition, solveSetting } from '../../src/circuit/index.ts'
import { circuitOf, setting } from '../builders/circuits.ts'
import { randomRelays } from '../builders/random-relays.ts'

const seeds = fc.integer({ min: 1, max: 1_000_000 })

/** Every combination of armatures in which none wants to move, by trying them all. */
function standingByTrial(seed: number): string[] {
  const circuit = circuitOf(randomRelays(seed)), at = setting()
  const rest = restCondition(circuit, at)
  const { states } = circuit.network
  const combinations = Array.from({ length: 2 ** states.length }, (_, bits) => states.map(({ spec }, i) => spec.values[bits >> i & 1]))
  return combinations.filter((values) => {
    const condition = { ...copyCondition(rest), states: values }
    circuit.solveFixed(at, condition)
    return states.every(({ part, spec }, i) => spec.wants(circuit.views[part], values[i]) === null)
  }).map((values) => values.join(',')).sort()
}

describe('laws of generated relay networks', () => {
  it('the standing states found are all that there are', () => {
    let several = 0
    fc.assert(fc.property(seeds, (seed) => {
      const { solved } = solveSetting(circuitOf(randomRelays(seed)), setting())
      const found = [...solved.outcome === 'rests' ? [solved] : [], ...solved.standing].map(({ states }) => Object.values(states).join(',')).sort()
      const tried = standingByTrial(seed)
      if (tried.length > 1) several++
      expect(found).toEqual(tried)
    }))
    expect(several).toBeGreaterThan(0)
  })

  it('a chatter returns to its first step', () => {
    fc.assert(fc.property(seeds, (seed) => {
      const { outcome, cycle = [] } = solveSetting(circuitOf(randomRelays(seed)), setting(), { skipStanding: true }).solved
      expect(outcome === 'chatters').toBe(cycle.length > 0)
      if (cycle.length) expect(new Set(cycle.map(({ states }) => JSON.stringify(states))).size).toBeGreaterThan(1)
    }))
  })
})
