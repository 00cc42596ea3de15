import { describe, expect, it } from 'vitest'
import { findPairNear, type Unknown } from './find-pair-near.ts'

const free: Unknown = { low: -100, high: 100, step: 0.01, most: 1 }

describe('findPairNear', () => {
  it('finds where two curves cross', () => {
    let last = [0, 0]
    const found = findPairNear((x, y) => { last = [x, y]; return [x * x + y * y - 25, x * y - 12] }, [3.5, 3.6], [free, free], [1e-10, 1e-10])
    expect(found).toBe(true)
    expect(last[0]).toBeCloseTo(3, 9)
    expect(last[1]).toBeCloseTo(4, 9)
  })

  it('asks a line few times', () => {
    let asked = 0
    expect(findPairNear((x, y) => { asked++; return [2 * x + y - 3, x - y] }, [0, 0], [free, free], [1e-9, 1e-9])).toBe(true)
    expect(asked).toBeLessThanOrEqual(6)
  })

  it('gives up where there is no crossing, and outside the range', () => {
    expect(findPairNear((x, y) => [x * x + 1, y], [2, 2], [free, free], [1e-9, 1e-9])).toBe(false)
    expect(findPairNear((x, y) => [x - 5, y], [0, 0], [{ ...free, high: 4 }, free], [1e-9, 1e-9])).toBe(false)
    expect(findPairNear(() => [NaN, 0], [0, 0], [free, free], [1e-9, 1e-9])).toBe(false)
  })
})
