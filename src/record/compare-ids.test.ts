import fc from 'fast-check'
import { expect, test } from 'vitest'
import { compareIds } from './compare-ids.ts'

test('digits count as numbers', () => {
  expect(['w10', 'w2', 'w02', 'w1', 'W1', '15/54', '30', 'D+', 'D', '9'].sort(compareIds)).toEqual(['9', '15/54', '30', 'D', 'D+', 'W1', 'w1', 'w02', 'w2', 'w10'])
})

test('it is one order of all ids', () => {
  const id = fc.string({ unit: fc.constantFrom('a', 'b', '0', '1', '2', '-'), maxLength: 6 })
  fc.assert(fc.property(id, id, id, (a, b, c) => {
    expect(Math.sign(compareIds(a, b))).toBe(-Math.sign(compareIds(b, a)) + 0)
    expect(compareIds(a, b) === 0).toBe(a === b)
    if (compareIds(a, b) <= 0 && compareIds(b, c) <= 0) expect(compareIds(a, c)).toBeLessThanOrEqual(0)
  }), { numRuns: 1000 })
})
