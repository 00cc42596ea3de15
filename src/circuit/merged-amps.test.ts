import { describe, expect, it } from 'vitest'
import { mergedAmps } from './merged-amps.ts'

describe('amps through merged elements', () => {
  it('follow from what flows out at the points of a tree', () => {
    // 0 –e7– 1 –e8– 2, with 5 A going out at 2, 2 A out at 1 and 7 A in at 0.
    const amps = mergedAmps(3, [{ element: 7, from: 0, to: 1 }, { element: 8, from: 2, to: 1 }], Float64Array.of(-7, 2, 5))
    expect([amps.get(7), amps.get(8)]).toEqual([7, -5])
  })

  it('are undetermined on a loop and only there', () => {
    const edges = [{ element: 0, from: 0, to: 1 }, { element: 1, from: 1, to: 2 }, { element: 2, from: 2, to: 1 }, { element: 3, from: 2, to: 3 }]
    const amps = mergedAmps(4, edges, Float64Array.of(-4, 0, 0, 4))
    expect(amps.get(0)).toBe(4)
    expect(amps.get(3)).toBe(4)
    expect(amps.get(1)).toBeNaN()
    expect(amps.get(2)).toBeNaN()
  })

  it('of an element whose two ends are one point are undetermined', () => {
    expect(mergedAmps(1, [{ element: 0, from: 0, to: 0 }], Float64Array.of(0)).get(0)).toBeNaN()
  })
})
