import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { solveDense } from './dense-solve.ts'
import { analyseSparse, SparseFactor } from './sparse-ldl.ts'

interface Branch { readonly a: number; readonly b: number; readonly g: number }

/** A connected resistor network on `size` nodes beside the reference, by its seed's branches. */
const networks = fc.integer({ min: 1, max: 40 }).chain((size) => fc.record({
  size: fc.constant(size),
  branches: fc.array(fc.record({ a: fc.integer({ min: -1, max: size - 1 }), b: fc.integer({ min: -1, max: size - 1 }), g: fc.double({ min: 1e-3, max: 1e3, noNaN: true }) }), { maxLength: 3 * size }),
  currents: fc.array(fc.double({ min: -10, max: 10, noNaN: true }), { minLength: size, maxLength: size }),
}))

function fill(size: number, branches: readonly Branch[], add: (i: number, j: number, g: number) => void): void {
  for (let i = 0; i < size; i++) add(i, i, 0.5)
  for (const { a, b, g } of branches) {
    if (a === b) continue
    if (a >= 0) add(a, a, g)
    if (b >= 0) add(b, b, g)
    if (a >= 0 && b >= 0) { add(a, b, -g); add(b, a, -g) }
  }
}

describe('sparse LDL', () => {
  it('agrees with dense elimination on generated networks', () => {
    fc.assert(fc.property(networks, ({ size, branches, currents }) => {
      const analysis = analyseSparse(size, branches.map(({ a }) => a), branches.map(({ b }) => b))
      const factor = new SparseFactor(analysis)
      const dense = new Float64Array(size * size)
      fill(size, branches, (i, j, g) => {
        dense[i * size + j] += g
        if (analysis.rank[i] <= analysis.rank[j]) factor.values[analysis.slotOf(i, j)] += g
      })
      expect(factor.factor()).toBe(-1)
      const x = new Float64Array(size)
      factor.solve(Float64Array.from(analysis.order, (row) => currents[row]), x)
      const expected = solveDense(dense, Float64Array.from(currents)) as Float64Array
      for (let i = 0; i < size; i++) expect(Math.abs(x[analysis.rank[i]] - expected[i])).toBeLessThan(1e-9 * (1 + Math.abs(expected[i])))
    }))
  })

  it('names the row of a pivot that is not positive', () => {
    const analysis = analyseSparse(2, [0], [1])
    const factor = new SparseFactor(analysis)
    factor.values[analysis.slotOf(0, 0)] = 1
    factor.values[analysis.slotOf(1, 1)] = 1
    factor.values[analysis.slotOf(0, 1)] = -1
    expect(factor.factor()).toBeGreaterThanOrEqual(0)
  })

  it('keeps a chain free of fill', () => {
    const n = 50
    const analysis = analyseSparse(n, Array.from({ length: n - 1 }, (_, i) => i), Array.from({ length: n - 1 }, (_, i) => i + 1))
    expect(analysis.row.length).toBe(n - 1)
  })
})
