import { describe, expect, it } from 'vitest'
import { findRoot } from './find-root.ts'
import { UnionFind } from './union-find.ts'

describe('findRoot', () => {
  it('finds the root of a smooth function', () => {
    const { x } = findRoot((v) => v ** 3 - 2, 0, 2, -2, 6, 1e-14, 1e-14)
    expect(x).toBeCloseTo(2 ** (1 / 3), 10)
  })

  it('closes in on a jump', () => {
    const { x } = findRoot((v) => (v < 0.3 ? -1 : 1), 0, 1, -1, 1, 1e-12, 1e-12)
    expect(x).toBeCloseTo(0.3, 10)
  })
})

describe('UnionFind', () => {
  it('names a set by its smallest member', () => {
    const sets = new UnionFind(5)
    sets.join(4, 2)
    sets.join(2, 3)
    expect([0, 1, 2, 3, 4].map((i) => sets.find(i))).toEqual([0, 1, 2, 2, 2])
  })
})
