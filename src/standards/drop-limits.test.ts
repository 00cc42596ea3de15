import { expect, test } from 'vitest'
import { starterCableLimit } from './drop-limits.ts'

// A6. US Army TM 10-3930-671-24: 0.20 V for each 100 A of a starter circuit; 200 A may lose 0.40 V, which 2.0 milliohms do.
test('A6: 200 A may lose 0.40 V', () => {
  expect(starterCableLimit(200)).toMatchObject({ source: 'tm-10-3930-671-24', status: 'read' })
  expect(starterCableLimit(200).maxV).toBeCloseTo(0.4, 9)
  expect(200 * 0.0021).toBeGreaterThan(starterCableLimit(200).maxV)
  expect(starterCableLimit(100).maxV).toBeCloseTo(0.2, 9)
})

test('a current of nothing is refused', () => {
  expect(() => starterCableLimit(0)).toThrow(/more than 0 A/)
  expect(() => starterCableLimit(NaN)).toThrow(RangeError)
})
