import fc from 'fast-check'
import { expect, test } from 'vitest'
import { countSlips, nearest } from './nearest.ts'

test('slips are counted', () => {
  expect([countSlips('lamp', 'lamp'), countSlips('lmap', 'lamp'), countSlips('lamps', 'lamp'), countSlips('', 'abc'), countSlips('kitten', 'sitting')]).toEqual([0, 1, 1, 3, 3])
})

test('the nearest name is the one with the fewest slips, if there are few', () => {
  expect(nearest('batery', ['lamp', 'battery', 'battery2'])).toBe('battery')
  expect(nearest('w2', ['horn', 'switch'])).toBeUndefined()
  expect(nearest('Lamp', ['lamp'])).toBe('lamp')
})

test('slips are the same in both directions', () => {
  const word = fc.string({ unit: fc.constantFrom('a', 'b', 'c'), maxLength: 8 })
  fc.assert(fc.property(word, word, (a, b) => {
    expect(countSlips(a, b)).toBe(countSlips(b, a))
    expect(countSlips(a, b) === 0).toBe(a === b)
  }))
})
