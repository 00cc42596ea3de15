import { describe, expect, test } from 'vitest'
import { flashRatePerMin } from './flash-rate.ts'
import { flasherFigures } from './flasher-rows.ts'

function cycles(...onOff: readonly (readonly [number, number])[]) {
  return onOff.map(([onMs, offMs]) => ({ onMs, offMs }))
}

function isWithin(rate: number, { minPerMin, maxPerMin }: { minPerMin: number; maxPerMin: number }): boolean {
  return rate >= minPerMin && rate <= maxPerMin
}

describe('published examples', () => {
  // NHTSA interpretation 01931ztv, SAE J945: 136.8 a minute, above 120, though three cycles in 1.5 s count 120.
  test('an uneven pattern that fails', () => {
    const rate = flashRatePerMin(cycles([160, 200], [160, 200], [160, 620]))
    expect(Math.abs(rate - 136.8)).toBeLessThanOrEqual(0.1)
    expect(isWithin(rate, flasherFigures.variableLoadUs)).toBe(false)
  })

  // NHTSA interpretation GF006498: 107.9 a minute, within the specified rate.
  test('an uneven pattern that passes', () => {
    const rate = flashRatePerMin(cycles([200, 250], [200, 250], [200, 850]))
    expect(Math.abs(rate - 107.9)).toBeLessThanOrEqual(0.1)
    expect(isWithin(rate, flasherFigures.variableLoadUs)).toBe(true)
  })

  // StVZO section 54, the UK inspection manual 1.5, the Swiss VTS art. 79; NHTSA 01931ztv for the fixed-load flasher.
  test('limits of the rate', () => {
    for (const country of [flasherFigures.germany, flasherFigures.unitedKingdom, flasherFigures.switzerland]) {
      expect([59, 60, 120, 121].map((rate) => isWithin(rate, country))).toEqual([false, true, true, false])
    }
    expect(isWithin(85, flasherFigures.fixedLoadUs)).toBe(false)
  })
})

test('no cycle has no rate', () => {
  expect(() => flashRatePerMin([])).toThrow(RangeError)
})
