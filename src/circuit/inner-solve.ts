import { findRoot, SparseFactor } from '../math/index.ts'
import { BridgeUpdate, type Bridge } from './bridge-update.ts'
import type { LawTable } from './law-table.ts'
import { SortedLinks, TIE_S } from './sorted-links.ts'
import type { Topology } from './topology.ts'

/** Arrays are by node; the reference is at 0 V and never floats. */
export interface InnerResult {
  /** Voltage of each node, V. */
  readonly volts: Float64Array
  /** 1 where no path leads from the node to the reference. */
  readonly floating: Uint8Array
  readonly worstNode: number
  readonly worstA: number
  readonly steps: number
}

interface Worst { readonly node: number; readonly amps: number }

const MOST_STEPS = 200
/** Share by which a diagonal grows where digits run out. */
const TRACE = 1e-12
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
  /** Volts, amps and slopes of the links whose law is asked. */
  private readonly across: Float64Array
  private readonly currents: Float64Array
  private readonly slopes: Float64Array
  private readonly sorted: SortedLinks

  constructor(readonly topology: Topology, elements: number) {
    const n = topology.rows
    this.factor = new SparseFactor(topology.analysis)
    this.sorted = new SortedLinks(topology, this.factor.values.length, elements)
    this.residual = new Float64Array(n + 1)
    this.step = new Float64Array(n + 1)
    this.trial = new Float64Array(n + 1)
    this.across = new Float64Array(topology.links.from.length)
    this.currents = new Float64Array(topology.links.from.length)
    this.slopes = new Float64Array(topology.links.from.length)
  }

  /** Solve from `start` (or from all zero); `isNear` says that it is a small step away. Null where a bridge joins a floating part: the network must then be analysed with it. */
  solve(laws: LawTable, bridges: readonly Bridge[] = [], start?: Float64Array, isNear = false): InnerResult | null {
    const volts = new Float64Array(this.topology.size)
    if (start) volts.set(start)
    this.sorted.sort(laws)
    const { floating } = this.sorted.islands
    if (bridges.some(({ from, to }) => floating[from] || floating[to])) return null
    let steps = 0
    let worst = this.fillResidual(laws, bridges, volts)
    const updates = new BridgeUpdate(bridges)
    let left = Infinity
    for (; steps < MOST_STEPS; steps++) {
      if (worst.amps <= RESIDUAL_A && steps > 0 && (left < STEP_V || this.oldStep(updates) < STEP_V)) break
      let size = this.newStep(updates)
      if (steps === 0 && !isNear && this.layChords(laws, volts)) size = this.newStep(updates)
      if (size === null) break
      if (size < STEP_V && worst.amps <= RESIDUAL_A) break
      const before = worst.amps
      worst = this.lineSearch(laws, bridges, volts)
      left = CURVATURE / 2 * size * size
      if (!(worst.amps < before) && worst.amps < ROUNDING_A) break
    }
    this.sorted.fillInner(volts, laws)
    return { volts, floating, worstNode: worst.node, worstA: worst.amps, steps }
  }

  /**
   * Sets `step` to −J⁻¹·r by factors of the present slopes; answers its largest part, V. Conductances of more than fifteen
   * orders of magnitude at one node can leave a pivot of nothing, for want of digits: then J has every diagonal a trace
   * larger, which shortens the step and moves no solution. Null where even that is no use; the residual tells what is wrong.
   */
  private newStep(updates: BridgeUpdate): number | null {
    if (this.factor.factorAndSolve(this.residual, this.step) >= 0) {
      for (let i = 0; i < this.topology.rows; i++) this.factor.values[i] *= 1 + TRACE
      if (this.factor.factorAndSolve(this.residual, this.step) >= 0) return null
    }
    return this.turnStep(updates)
  }

  /** The same by the factors of the step before, to tell whether to stop: a node behind a leak may be off by volts at a residual of nothing. */
  private oldStep(updates: BridgeUpdate): number {
    this.factor.solve(this.residual, this.step)
    return this.turnStep(updates)
  }

  private turnStep(updates: BridgeUpdate): number {
    const { step, topology: { rows } } = this
    updates.correct(this.factor, step)
    step[rows] = 0
    let largest = 0
    for (let i = 0; i < rows; i++) {
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
    const { topology: { links: { from, to, slots } }, step, factor: { values }, sorted: { asked, askedElement, curved } } = this
    let found = false
    for (let c = 0; c < curved; c++) {
      const l = asked[c], a = from[l], b = to[l]
      const more = laws.chordOverSlope(askedElement[c], volts[a] - volts[b], step[a] - step[b])
      if (more === 0) continue
      found = true
      values[slots[3 * l]] += more
      values[slots[3 * l + 1]] += more
      values[slots[3 * l + 2]] -= more
    }
    return found
  }

  /** Move `volts` along the step: the whole of it, or to where the convex function's slope along it has nearly gone. */
  private lineSearch(laws: LawTable, bridges: readonly Bridge[], volts: Float64Array): Worst {
    const { residual, step, trial, topology: { rows } } = this
    const slope0 = dot(residual, step, rows)
    let worst: Worst = NOTHING
    const slopeAt = (t: number): number => {
      for (let i = 0; i < rows; i++) trial[i] = volts[i] + t * step[i]
      worst = this.fillResidual(laws, bridges, trial)
      return dot(residual, step, rows)
    }
    const slope1 = slopeAt(1)
    if (slope1 > -0.3 * slope0) findRoot(slopeAt, 0, 1, slope0, slope1, 1e-12, -0.1 * slope0)
    volts.set(trial)
    return worst
  }

  /** Kirchhoff's sums at `volts`, the matrix of slopes with them, and the worst node against its tolerance. */
  private fillResidual(laws: LawTable, bridges: readonly Bridge[], volts: Float64Array): Worst {
    const { topology: { links: { from, to } }, residual, factor: { values }, sorted: { S, values: plain, islands: { ties } } } = this
    values.set(plain)
    residual.fill(0)
    for (let l = 0; l < S.length; l++) {
      if (S[l] === 0) continue
      const a = from[l], b = to[l]
      const amps = S[l] * (volts[a] - volts[b])
      residual[a] += amps
      residual[b] -= amps
    }
    for (const i of ties) {
      residual[i] += TIE_S * volts[i]
      values[i] += TIE_S
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
    const { topology: { links: { from, to, slots } }, residual, factor: { values }, sorted: { asked, askedElement, curved }, across, currents, slopes } = this
    for (let c = 0; c < curved; c++) across[c] = volts[from[asked[c]]] - volts[to[asked[c]]]
    laws.evaluateMany(curved, askedElement, across, currents, slopes)
    for (let c = 0; c < curved; c++) {
      const l = asked[c], a = from[l], b = to[l], current = currents[c], slope = slopes[c]
      residual[a] += current
      residual[b] -= current
      values[slots[3 * l]] += slope
      values[slots[3 * l + 1]] += slope
      values[slots[3 * l + 2]] -= slope
    }
  }

  private worstNode(): Worst {
    const { residual, topology: { rows } } = this
    let node = -1, amps = 0
    for (let i = 0; i < rows; i++) {
      const size = Math.abs(residual[i])
      if (size > amps || size !== size) { node = i; amps = size }
    }
    return { node, amps }
  }

  /**
   * Volts of the nodes that have a row, and of the reference, while one ampere goes in at one of them and out at another, with
   * every source at rest and every filament cold; null where nothing joins the two.
   */
  restVolts(laws: LawTable, a: number, b: number): Float64Array | null {
    if (a === b) return new Float64Array(this.topology.size)
    const { topology: { rows, size, links: { from, to, slots } }, factor: { values }, sorted } = this
    sorted.sort(laws)
    const { ties, islandOf } = sorted.islands
    if (islandOf(a) !== islandOf(b)) return null
    values.fill(0)
    for (let l = 0; l < from.length; l++) {
      if (from[l] === to[l]) continue
      const S = sorted.restConductance(l, laws)
      values[slots[3 * l]] += S
      values[slots[3 * l + 1]] += S
      values[slots[3 * l + 2]] -= S
    }
    for (const i of ties) values[i] += TIE_S
    if (this.factor.factor() >= 0) return null
    const x = new Float64Array(size)
    x[a] = 1
    x[b] = -1
    x[rows] = 0
    this.factor.solve(x, x)
    return x
  }
}

const NOTHING: Worst = { node: -1, amps: 0 }

function dot(a: Float64Array, b: Float64Array, n: number): number {
  let sum = 0
  for (let i = 0; i < n; i++) sum += a[i] * b[i]
  return sum
}
