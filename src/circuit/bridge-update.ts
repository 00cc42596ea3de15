import { solveDense, type SparseFactor } from '../math/index.ts'

/** A resistance laid between two nodes of an analysed network without analysing it again: a change of rank one. */
export interface Bridge { readonly from: number; readonly to: number; readonly ohm: number }

/**
 * Sherman, Morrison and Woodbury: (J + U·G·Uᵀ)⁻¹ from the factors of J, with one column of U and one conductance a bridge.
 * The reference is the last node, at 0 V whatever happens.
 */
export class BridgeUpdate {
  constructor(private readonly bridges: readonly Bridge[]) {}

  /** x holds J⁻¹·r; afterwards (J + U·G·Uᵀ)⁻¹·r. */
  correct(factor: SparseFactor, x: Float64Array): void {
    const { bridges } = this
    const k = bridges.length
    if (k === 0) return
    const reference = x.length - 1
    const columns = bridges.map(({ from, to }) => {
      const u = new Float64Array(x.length)
      u[from] += 1
      u[to] -= 1
      u[reference] = 0
      factor.solve(u, u)
      return u
    })
    const S = new Float64Array(k * k)
    const across = (v: Float64Array, { from, to }: Bridge) => v[from] - v[to]
    x[reference] = 0
    for (let i = 0; i < k; i++) for (let j = 0; j < k; j++) S[i * k + j] = across(columns[j], bridges[i]) + (i === j ? bridges[i].ohm : 0)
    const y = solveDense(S, Float64Array.from(bridges, (bridge) => across(x, bridge)))
    if (!y) throw new RangeError('the bridges of this network contradict one another')
    for (let j = 0; j < k; j++) for (let i = 0; i < reference; i++) x[i] -= columns[j][i] * y[j]
  }
}
