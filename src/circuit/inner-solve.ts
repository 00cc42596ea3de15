import { findRoot, solveDense, SparseFactor, UnionFind } from '../math/index.ts'
import type { LawTable } from './law-table.ts'
import type { Topology } from './topology.ts'

/** A resistance laid between two nodes of an analysed network without analysing it again: a change of rank one. */
export interface Bridge { readonly from: number; readonly to: number; readonly ohm: number }

export interface InnerResult {
  /** Voltage of each node, V. */
  readonly volts: Float64Array
  /** 1 where no path leads from the node to the reference. */
  readonly floating: Uint8Array
  readonly worstNode: number
  readonly worstA: number
  readonly steps: number
  /** Amps through each bridge, from its first end to its second. */
  readonly bridgeAmps: Float64Array
}

interface Islands { readonly floating: Uint8Array; readonly ties: readonly number[]; islandOf(node: number): number }

/** Conductance that ties one node of each floating island to the reference. It closes no path, so it carries nothing and loads no reading. */
const TIE_S = 1e-3
const MOST_STEPS = 200
/** Share by which a diagonal grows where digits run out. */
const TRACE = 1e-12
/** Kirchhoff's law holds to this many amps, or to this share of the largest current at the node. */
const RESIDUAL_A = 1e-9
const RESIDUAL_SHARE = 1e-12
/** and no node would move by more than this, V. */
const STEP_V = 1e-9

/**
 * Node voltages with all states fixed. Each element's current never falls with its voltage, so the
 * solution is the minimum of a convex function and Newton's method with a line search always finds it.
 */
export class InnerSolver {
  private readonly factor: SparseFactor
  private readonly residual: Float64Array
  private readonly largest: Float64Array
  private readonly step: Float64Array
  private readonly trial: Float64Array
  /** Which nodes float, as found for these laws when they had opened so often. */
  private islands: { readonly laws: LawTable; readonly openings: number; readonly found: Islands } | null = null

  constructor(readonly topology: Topology) {
    const n = topology.nodes
    this.factor = new SparseFactor(topology.analysis)
    this.residual = new Float64Array(n)
    this.largest = new Float64Array(n)
    this.step = new Float64Array(n)
    this.trial = new Float64Array(n)
  }

  /** Solve from `start` (or from all zero); `isNear` says that it is a small step away. Null where a bridge joins a floating part: the network must then be analysed with it. */
  solve(laws: LawTable, bridges: readonly Bridge[] = [], start?: Float64Array, isNear = false): InnerResult | null {
    const n = this.topology.nodes
    const volts = start ? start.slice() : new Float64Array(n)
    const { floating, ties } = this.islandsOf(laws)
    if (bridges.some((bridge) => isFloating(floating, bridge.from) || isFloating(floating, bridge.to))) return null
    let steps = 0
    // A filament's current bends down: its chord majorises it, so a lamp that was lit and is cut off goes dark in one step.
    laws.chords = !isNear
    let worst = this.fillResidual(laws, ties, bridges, volts)
    laws.chords = false
    const updates = new BridgeUpdate(bridges, n)
    for (; steps < MOST_STEPS; steps++) {
      if (worst.over <= 1 && steps > 0 && this.stepSize(updates) < STEP_V) break
      if (!this.factorise()) break
      if (this.stepSize(updates) < STEP_V && worst.over <= 1) break
      for (let i = 0; i < n; i++) this.step[i] = -this.step[i]
      const before = worst.over
      worst = this.lineSearch(laws, ties, bridges, volts)
      if (!(worst.over < before) && worst.amps < 1e-6) break
    }
    const bridgeAmps = Float64Array.from(bridges, (b) => (at(volts, b.from) - at(volts, b.to)) / b.ohm)
    return { volts, floating, worstNode: worst.node, worstA: worst.amps, steps, bridgeAmps }
  }

  /**
   * Factors the slopes. Conductances of more than fifteen orders of magnitude at one node can leave a pivot of nothing, for
   * want of digits: then with every diagonal a trace larger, which shortens the step and moves no solution. False where even
   * that is no use; the residual tells what is then wrong with the answer.
   */
  private factorise(): boolean {
    if (this.factor.factor() < 0) return true
    const { values } = this.factor
    for (const slot of this.topology.diagonal) values[slot] *= 1 + TRACE
    return this.factor.factor() < 0
  }

  /** The step that the present factors give, and its largest part, V: a node behind a leak may be off by volts at a residual of nothing. */
  private stepSize(updates: BridgeUpdate): number {
    this.factor.solve(this.residual, this.step)
    updates.correct(this.factor, this.step)
    let largest = 0
    for (let i = 0; i < this.step.length; i++) largest = Math.max(largest, Math.abs(this.step[i]))
    return largest
  }

  /** Move `volts` along the step: the whole of it, or to where the convex function's slope along it has nearly gone. */
  private lineSearch(laws: LawTable, ties: readonly number[], bridges: readonly Bridge[], volts: Float64Array) {
    const { residual, step, trial } = this
    const slope0 = dot(residual, step)
    let worst = { node: -1, amps: 0, over: 0 }
    const slopeAt = (t: number): number => {
      for (let i = 0; i < volts.length; i++) trial[i] = volts[i] + t * step[i]
      worst = this.fillResidual(laws, ties, bridges, trial)
      return dot(residual, step)
    }
    const slope1 = slopeAt(1)
    if (slope1 > -0.3 * slope0) findRoot(slopeAt, 0, 1, slope0, slope1, 1e-12, -0.1 * slope0)
    volts.set(trial)
    return worst
  }

  /** Kirchhoff's sums at `volts`, the matrix of slopes with them, and the worst node against its tolerance. */
  private fillResidual(laws: LawTable, ties: readonly number[], bridges: readonly Bridge[], volts: Float64Array) {
    const { topology: { from, to, slots, diagonal }, residual, largest } = this
    const values = this.factor.values
    residual.fill(0)
    largest.fill(0)
    values.fill(0)
    const { plainS } = laws
    for (let e = 0; e < from.length; e++) {
      const a = from[e], b = to[e]
      if (a === b) continue
      const v = (a < 0 ? 0 : volts[a]) - (b < 0 ? 0 : volts[b])
      let slope = plainS[e], amps = slope * v
      if (slope !== slope) {
        laws.evaluate(e, v)
        slope = laws.slope
        amps = laws.current
      } else if (slope === 0) continue
      const size = Math.abs(amps)
      if (a >= 0) {
        residual[a] += amps
        if (size > largest[a]) largest[a] = size
        values[slots[3 * e]] += slope
      }
      if (b >= 0) {
        residual[b] -= amps
        if (size > largest[b]) largest[b] = size
        values[slots[3 * e + 1]] += slope
        if (a >= 0) values[slots[3 * e + 2]] -= slope
      }
    }
    for (const bridge of bridges) this.addBridge(bridge, volts)
    for (const i of ties) {
      residual[i] += TIE_S * volts[i]
      values[diagonal[i]] += TIE_S
    }
    return this.worstNode()
  }

  private addBridge({ from, to, ohm }: Bridge, volts: Float64Array): void {
    const amps = (at(volts, from) - at(volts, to)) / ohm
    if (from >= 0) { this.residual[from] += amps; this.largest[from] = Math.max(this.largest[from], Math.abs(amps)) }
    if (to >= 0) { this.residual[to] -= amps; this.largest[to] = Math.max(this.largest[to], Math.abs(amps)) }
  }

  private worstNode(): { node: number; amps: number; over: number } {
    let node = -1, amps = 0, over = 0
    for (let i = 0; i < this.residual.length; i++) {
      const size = Math.abs(this.residual[i])
      const ratio = size / Math.max(RESIDUAL_A, RESIDUAL_SHARE * this.largest[i])
      if (ratio > over || Number.isNaN(ratio)) { node = i; amps = size; over = ratio }
    }
    return { node, amps, over }
  }

  private islandsOf(laws: LawTable): Islands {
    if (this.islands?.laws !== laws || this.islands.openings !== laws.openings) this.islands = { laws, openings: laws.openings, found: this.findIslands(laws) }
    return this.islands.found
  }

  /** Nodes that no conducting element joins to the reference, and one node of each island they form. */
  private findIslands(laws: LawTable): Islands {
    const { nodes, from, to } = this.topology
    const sets = new UnionFind(nodes + 1)
    for (let e = 0; e < from.length; e++) if (from[e] !== to[e] && !laws.isOpen(e)) sets.join(from[e] + 1, to[e] + 1)
    const floating = new Uint8Array(nodes)
    const ties: number[] = []
    for (let i = 0; i < nodes; i++) {
      const root = sets.find(i + 1)
      if (root === 0) continue
      floating[i] = 1
      if (root === i + 1) ties.push(i)
    }
    return { floating, ties, islandOf: (node) => sets.find(node + 1) }
  }

  /** Ohms between two nodes with every source at rest and every filament cold; Infinity where nothing joins them. */
  restOhm(laws: LawTable, a: number, b: number): number {
    if (a === b) return 0
    const { topology: { from, to, slots, diagonal, nodes }, factor: { values } } = this
    const { ties, islandOf } = this.findIslands(laws)
    if (islandOf(a) !== islandOf(b)) return Infinity
    values.fill(0)
    for (let e = 0; e < from.length; e++) {
      if (from[e] === to[e]) continue
      const g = laws.restSlope(e)
      for (let end = 0; end < 3; end++) {
        const slot = slots[3 * e + end]
        if (slot >= 0) values[slot] += end === 2 ? -g : g
      }
    }
    for (const i of ties) values[diagonal[i]] += TIE_S
    if (!this.factorise()) return Infinity
    const x = new Float64Array(nodes)
    if (a >= 0) x[a] = 1
    if (b >= 0) x[b] = -1
    this.factor.solve(x, x)
    return at(x, a) - at(x, b)
  }
}

/** Sherman, Morrison and Woodbury: (J + U·G·Uᵀ)⁻¹ from the factors of J, with one column of U and one conductance a bridge. */
class BridgeUpdate {
  constructor(private readonly bridges: readonly Bridge[], private readonly nodes: number) {}

  /** x holds J⁻¹·r; afterwards (J + U·G·Uᵀ)⁻¹·r. */
  correct(factor: SparseFactor, x: Float64Array): void {
    const { bridges, nodes } = this
    const k = bridges.length
    if (k === 0) return
    const columns = bridges.map(({ from, to }) => {
      const u = new Float64Array(nodes)
      if (from >= 0) u[from] += 1
      if (to >= 0) u[to] -= 1
      factor.solve(u, u)
      return u
    })
    const S = new Float64Array(k * k)
    const across = (v: Float64Array, { from, to }: Bridge) => at(v, from) - at(v, to)
    for (let i = 0; i < k; i++) for (let j = 0; j < k; j++) S[i * k + j] = across(columns[j], bridges[i]) + (i === j ? bridges[i].ohm : 0)
    const y = solveDense(S, Float64Array.from(bridges, (bridge) => across(x, bridge)))
    if (!y) throw new RangeError('the bridges of this network contradict one another')
    for (let j = 0; j < k; j++) for (let i = 0; i < nodes; i++) x[i] -= columns[j][i] * y[j]
  }
}

const at = (volts: Float64Array, node: number) => (node < 0 ? 0 : volts[node])
const isFloating = (floating: Uint8Array, node: number) => (node < 0 ? 0 : floating[node])

function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0
  for (let i = 0; i < a.length; i++) sum += a[i] * b[i]
  return sum
}
