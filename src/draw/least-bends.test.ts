import fc from 'fast-check'
import { expect, test } from 'vitest'
import { placeColumns, type Apart, type Wish } from './least-bends.ts'

const cost = (x: readonly number[], wishes: readonly Wish[]) => wishes.reduce((sum, { a, b, weight }) => sum + weight * Math.abs(x[a] - x[b]), 0)
const holds = (x: readonly number[], apart: readonly Apart[]) => apart.every(({ left, right, apart: d }) => x[right] - x[left] >= d - 0.02)

test('two wires that can both be straight are', () => {
  const x = placeColumns(4, [{ left: 0, right: 1, apart: 10 }, { left: 2, right: 3, apart: 30 }], [{ a: 0, b: 2, weight: 1 }, { a: 1, b: 3, weight: 1 }])!
  expect(x[0]).toBe(x[2])
  expect(x[1]).toBe(x[3])
})

test('of two wishes the heavier one is granted', () => {
  const x = placeColumns(3, [{ left: 0, right: 1, apart: 20 }], [{ a: 0, b: 2, weight: 1 }, { a: 1, b: 2, weight: 5 }])!
  expect(x[1]).toBe(x[2])
})

test('distances in a ring give nothing', () => {
  expect(placeColumns(2, [{ left: 0, right: 1, apart: 1 }, { left: 1, right: 0, apart: 1 }], [])).toBeNull()
})

const small = fc.record({
  apart: fc.array(fc.tuple(fc.nat(3), fc.nat(3), fc.integer({ min: 1, max: 3 })), { maxLength: 4 }),
  wishes: fc.array(fc.tuple(fc.nat(3), fc.nat(3), fc.integer({ min: 1, max: 4 })), { maxLength: 5 }),
})

test('no other whole columns keep the distances at less cost', () => {
  fc.assert(fc.property(small, (plan) => {
    const apart = plan.apart.filter(([a, b]) => a < b).map(([left, right, d]) => ({ left, right, apart: d }))
    const wishes = plan.wishes.map(([a, b, weight]) => ({ a, b, weight }))
    const found = placeColumns(4, apart, wishes)!
    expect(holds(found, apart)).toBe(true)
    let least = Infinity
    for (let code = 0; code < 10 ** 4; code++) {
      const x = [code % 10, Math.floor(code / 10) % 10, Math.floor(code / 100) % 10, Math.floor(code / 1000)]
      if (holds(x, apart)) least = Math.min(least, cost(x, wishes))
    }
    expect(cost(found, wishes)).toBeCloseTo(least, 6)
  }), { numRuns: 40 })
})
