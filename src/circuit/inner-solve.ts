import { findRoot, SparseFactor, UnionFind } from '../math/index.ts'
import { BridgeUpdate, type Bridge } from './bridge-update.ts'
import type { LawTable } from './law-table.ts'
import type { Topology } from './topology.ts'

/** Arrays by node end with the reference, which is at 0 V and never floats. */
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

/** The elements under one state of their laws: plain conductances with the matrix they make, and those whose law has to be asked. */
class Sorted {
  /** The first `plain` entries hold the conductances and the ties, the first `curved` of `asked` the other elements. */
  plain = 0
  curved = 0
  readonly from: Int32Array
  readonly to: Int32Array
  readonly S: Float64Array
  readonly asked: Int32Array
  /** Values of the matrix of the plain ones. */
  readonly values: Float64Array
  private laws: LawTable | null = null
  private changes = -1

  constructor(private readonly topology: Topology, slots: number) {
    const most = topology.from.length + topology.nodes
    this.from = new Int32Array(most)
    this.to = new Int32Array(most)
    this.S = new Float64Array(most)
    this.asked = new Int32Array(topology.from.length)
    this.values = new Float64Array(slots)
  }

  isFor(laws: LawTable): boolean { return this.laws === laws && this.changes === laws.changes }

  sort(laws: LawTable, ties: readonly number[]): void {
    const { topology: { from, to, slots, nodes }, values } = this
    this.laws = laws
    this.changes = laws.changes
    this.plain = this.curved = 0
    values.fill(0)
    for (let e = 0; e < from.length; e++) {
      const S = laws.plainS[e], a = from[e], b = to[e]
      if (a === b || S === 0) continue
      if (S !== S) { this.asked[this.curved++] = e; continue }
      this.add(a, b, S)
      values[slots[3 * e]] += S
      values[slots[3 * e + 1]] += S
      values[slots[3 * e + 2]] -= S
    }
    for (const i of ties) { this.add(i, nodes, TIE_S); values[i] += TIE_S }
  }

  private add(from: number, to: number, S: number): void {
    const i = this.plain++
    this.from[i] = from
    this.to[i] = to
    this.S[i] = S
  }
}

interface Worst { readonly node: number; readonly amps: number }

/** Conductance that ties one node of each floating island to the reference. It closes no path, so it carries nothing and loads no reading. */
const TIE_S = 1e-3
const MOST_STEPS = 200
/** Kirchhoff's law holds to this many amps; */
const RESIDUAL_A = 1e-9
/** where currents are so large that rounding leaves more, to whatever a further step no longer betters below this. */
const ROUNDING_A = 1e-6
/** and no node would move by more than this, V. */
const STEP_V = 1e-9
/**
 * No law's slope changes faster than by this share of itself a volt: a diode's by 1/nVt, a cold filament's by less. After a
 * Newton step of δ the next is about CURVATURE·δ²/2.
 */
const CURVATURE = 40

/**
 * Node voltages with all states fixed. Each element's current never falls with its voltage, so the
 * solution is the minimum of a convex function and Newton's method with a line search always finds it.
 */
export class InnerSolver {
  private readonly factor: SparseFactor
  private readonly residual: Float64Array
  private readonly step: Float64Array
  private readonly trial: Float64Array
  /** As found when the laws had opened so often. */
  private islands: { readonly laws: LawTable; readonly openings: number; readonly found: Islands } | null = null
  private readonly sorted: Sorted

  constructor(readonly topology: Topology) {
    const n = topology.nodes
    this.factor = new SparseFactor(topology.analysis)
    this.sorted = new Sorted(topology, this.factor.values.length)
    this.residual = new Float64Array(n + 1)
    this.step = new Float64Array(n + 1)
    this.trial = new Float64Array(n + 1)
  }

  /** Solve from `start` (or from all zero); `isNear` says that it is a small step away. Null where a bridge joins a floating part: the network must then be analysed with it. */
  solve(laws: LawTable, bridges: readonly Bridge[] = [], start?: Float64Array, isNear = false): InnerResult | null {
    const volts = new Float64Array(this.topology.nodes + 1)
    if (start) volts.set(start)
    const { floating } = this.islandsOf(laws)
    if (bridges.some(({ from, to }) => floating[from] || floating[to])) return null
    let steps = 0
    let worst = this.fillResidual(laws, bridges, volts)
    const updates = new BridgeUpdate(bridges)
    let left = Infinity
    for (; steps < MOST_STEPS; steps++) {
      if (worst.amps <= RESIDUAL_A && steps > 0 && (left < STEP_V || this.oldStep(updates) < STEP_V)) break
      let size = this.newStep(updates)
      if (steps === 0 && !isNear && this.layChords(laws, volts)) size = this.newStep(updates)
      if (size < STEP_V && worst.amps <= RESIDUAL_A) break
      const before = worst.amps
      worst = this.lineSearch(laws, bridges, volts)
      left = CURVATURE / 2 * size * size
      if (!(worst.amps < before) && worst.amps < ROUNDING_A) break
    }
    const bridgeAmps = Float64Array.from(bridges, ({ from, to, ohm }) => (volts[from] - volts[to]) / ohm)
    return { volts, floating, worstNode: worst.node, worstA: worst.amps, steps, bridgeAmps }
  }

  /** Sets `step` to −J⁻¹·r by factors of the present slopes; answers its largest part, V. */
  private newStep(updates: BridgeUpdate): number {
    const pivot = this.factor.factorAndSolve(this.residual, this.step)
    if (pivot >= 0) throw new RangeError(`the matrix is not positive definite at node ${this.topology.analysis.rank[pivot]}`)
    return this.turnStep(updates)
  }

  /** The same by the factors of the step before, to tell whether to stop: a node behind a leak may be off by volts at a residual of nothing. */
  private oldStep(updates: BridgeUpdate): number {
    this.factor.solve(this.residual, this.step)
    return this.turnStep(updates)
  }

  private turnStep(updates: BridgeUpdate): number {
    const { step, topology: { nodes } } = this
    updates.correct(this.factor, step)
    let largest = 0
    for (let i = 0; i < nodes; i++) {
      const size = Math.abs(step[i])
      if (size > largest) largest = size
      step[i] = -step[i]
    }
    return largest
  }

  /**
   * A filament's current bends down, so its chord majorises it: with chords in place of tangents for the lamps that the step
   * would move far, one that was lit and is cut off goes dark in one step. False where none is moved far.
   */
  private layChords(laws: LawTable, volts: Float64Array): boolean {
    const { topology: { from, to, slots }, step, factor: { values }, sorted: { asked, curved } } = this
    let found = false
    for (let c = 0; c < curved; c++) {
      const e = asked[c], a = from[e], b = to[e]
      const more = laws.chordOverSlope(e, volts[a] - volts[b], step[a] - step[b])
      if (more === 0) continue
      found = true
      values[slots[3 * e]] += more
      values[slots[3 * e + 1]] += more
      values[slots[3 * e + 2]] -= more
    }
    return found
  }

  /** Move `volts` along the step: the whole of it, or to where the convex function's slope along it has nearly gone. */
  private lineSearch(laws: LawTable, bridges: readonly Bridge[], volts: Float64Array): Worst {
    const { residual, step, trial, topology: { nodes } } = this
    const slope0 = dot(residual, step, nodes)
    let worst: Worst = NOTHING
    const slopeAt = (t: number): number => {
      for (let i = 0; i < nodes; i++) trial[i] = volts[i] + t * step[i]
      worst = this.fillResidual(laws, bridges, trial)
      return dot(residual, step, nodes)
    }
    const slope1 = slopeAt(1)
    if (slope1 > -0.3 * slope0) findRoot(slopeAt, 0, 1, slope0, slope1, 1e-12, -0.1 * slope0)
    volts.set(trial)
    return worst
  }

  /** Kirchhoff's sums at `volts`, the matrix of slopes with them, and the worst node against its tolerance. */
  private fillResidual(laws: LawTable, bridges: readonly Bridge[], volts: Float64Array): Worst {
    const { residual, factor: { values }, sorted } = this
    if (!sorted.isFor(laws)) sorted.sort(laws, this.islandsOf(laws).ties)
    values.set(sorted.values)
    residual.fill(0)
    const { from, to, S, plain } = sorted
    for (let i = 0; i < plain; i++) {
      const a = from[i], b = to[i]
      const amps = S[i] * (volts[a] - volts[b])
      residual[a] += amps
      residual[b] -= amps
    }
    this.addCurved(laws, volts)
    for (const bridge of bridges) {
      const amps = (volts[bridge.from] - volts[bridge.to]) / bridge.ohm
      residual[bridge.from] += amps
      residual[bridge.to] -= amps
    }
    return this.worstNode()
  }

  private addCurved(laws: LawTable, volts: Float64Array): void {
    const { topology: { from, to, slots }, residual, factor: { values }, sorted: { asked, curved } } = this
    for (let c = 0; c < curved; c++) {
      const e = asked[c], a = from[e], b = to[e]
      laws.evaluate(e, volts[a] - volts[b])
      const { current, slope } = laws
      residual[a] += current
      residual[b] -= current
      values[slots[3 * e]] += slope
      values[slots[3 * e + 1]] += slope
      values[slots[3 * e + 2]] -= slope
    }
  }

  private worstNode(): Worst {
    const { residual, topology: { nodes } } = this
    let node = -1, amps = 0
    for (let i = 0; i < nodes; i++) {
      const size = Math.abs(residual[i])
      if (size > amps || size !== size) { node = i; amps = size }
    }
    return { node, amps }
  }

  private islandsOf(laws: LawTable): Islands {
    if (this.islands?.laws !== laws || this.islands.openings !== laws.openings) this.islands = { laws, openings: laws.openings, found: this.findIslands(laws) }
    return this.islands.found
  }

  /** Nodes that no conducting element joins to the reference, and one node of each island they form. */
  private findIslands(laws: LawTable): Islands {
    const { nodes, from, to } = this.topology
    const sets = new UnionFind(nodes + 1)
    for (let e = 0; e < from.length; e++) if (from[e] !== to[e] && !laws.isOpen(e)) sets.join(from[e], to[e])
    const earth = sets.find(nodes)
    const floating = new Uint8Array(nodes + 1)
    const ties: number[] = []
    for (let i = 0; i < nodes; i++) {
      const root = sets.find(i)
      if (root === earth) continue
      floating[i] = 1
      if (root === i) ties.push(i)
    }
    return { floating, ties, islandOf: (node) => sets.find(node) }
  }

  /** Ohms between two nodes with every source at rest and every filament cold; Infinity where nothing joins them. */
  restOhm(laws: LawTable, a: number, b: number): number {
    if (a === b) return 0
    const { topology: { from, to, slots, nodes }, factor: { values } } = this
    const { ties, islandOf } = this.findIslands(laws)
    if (islandOf(a) !== islandOf(b)) return Infinity
    values.fill(0)
    for (let e = 0; e < from.length; e++) {
      if (from[e] === to[e]) continue
      const S = laws.restSlope(e)
      values[slots[3 * e]] += S
      values[slots[3 * e + 1]] += S
      values[slots[3 * e + 2]] -= S
    }
    for (const i of ties) values[i] += TIE_S
    if (this.factor.factor() >= 0) return Infinity
    const x = new Float64Array(nodes + 1)
    x[a] = 1
    x[b] = -1
    x[nodes] = 0
    this.factor.solve(x, x)
    return x[a] - x[b]
  }
}

const NOTHING: Worst = { node: -1, amps: 0 }

function dot(a: Float64Array, b: Float64Array, n: number): number {
  let sum = 0
  for (let i = 0; i < n; i++) sum += a[i] * b[i]
  return sum
}
