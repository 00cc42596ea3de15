import { UnionFind } from '../math/index.ts'
import type { LawTable } from './law-table.ts'
import type { Topology } from './topology.ts'

/** Conductance that ties one node of each floating island to the reference. It closes no path, so it carries nothing and loads no reading. */
export const TIE_S = 1e-3

/** Nodes that no conducting element joins to the reference, and one row of each island that has one. */
export interface Islands { readonly floating: Uint8Array; readonly ties: readonly number[]; islandOf(node: number): number }

/**
 * The links of a topology under one state of their laws: plain conductances with the matrix they make, and those whose
 * law has to be asked. Sorted anew only when a plain law has changed.
 */
export class SortedLinks {
  /** The first `plain` entries of `from`, `to` and `S` are conductances and ties, the first `curved` of `asked` the other links. */
  plain = 0
  curved = 0
  readonly from: Int32Array
  readonly to: Int32Array
  readonly S: Float64Array
  readonly asked: Int32Array
  /** Values of the matrix of the plain ones. */
  readonly values: Float64Array
  islands: Islands = { floating: new Uint8Array(0), ties: [], islandOf: (node) => node }
  /** Conductance of each link; NaN where its law has to be asked. */
  private readonly linkS: Float64Array
  private laws: LawTable | null = null
  private changes = -1
  private openings = -1

  constructor(private readonly topology: Topology, slots: number) {
    const links = topology.links.from.length, most = links + topology.rows
    this.from = new Int32Array(most)
    this.to = new Int32Array(most)
    this.S = new Float64Array(most)
    this.asked = new Int32Array(links)
    this.linkS = new Float64Array(links)
    this.values = new Float64Array(slots)
  }

  /** Bring everything up to date with the laws. */
  sort(laws: LawTable): void {
    if (this.laws === laws && this.changes === laws.changes) return
    const openings = this.laws === laws ? this.openings : -1
    this.laws = laws
    this.changes = laws.changes
    this.openings = laws.openings
    this.gather(laws)
    if (openings !== laws.openings) this.islands = this.findIslands(laws)
    for (const i of this.islands.ties) { this.add(i, this.topology.rows, TIE_S); this.values[i] += TIE_S }
  }

  private gather(laws: LawTable): void {
    const { topology: { links: { from, to, slots } }, values, linkS } = this
    this.plain = this.curved = 0
    values.fill(0)
    for (let l = 0; l < linkS.length; l++) {
      const S = linkS[l] = this.conductance(l, laws), a = from[l], b = to[l]
      if (S === 0 || a === b) continue
      if (S !== S) { this.asked[this.curved++] = l; continue }
      this.add(a, b, S)
      values[slots[3 * l]] += S
      values[slots[3 * l + 1]] += S
      values[slots[3 * l + 2]] -= S
    }
  }

  /** Conductances in a row: 1/S is the sum of 1/Sᵢ. */
  private conductance(link: number, { plainS }: LawTable): number {
    const { start, element } = this.topology.links
    const first = start[link], end = start[link + 1]
    if (end - first === 1) return plainS[element[first]]
    let ohm = 0
    for (let p = first; p < end; p++) ohm += 1 / plainS[element[p]]
    if (ohm !== ohm) throw new RangeError('an element whose law has to be asked stands inside a chain')
    return 1 / ohm
  }

  /** Conductance of a link with every source at rest and every filament cold. */
  restConductance(link: number, laws: LawTable): number {
    const S = this.linkS[link]
    return S === S ? S : laws.restSlope(this.topology.links.element[this.topology.links.start[link]])
  }

  private add(from: number, to: number, S: number): void {
    const i = this.plain++
    this.from[i] = from
    this.to[i] = to
    this.S[i] = S
  }

  private findIslands(laws: LawTable): Islands {
    const { topology: { rows, size, links: { from, to, start } }, linkS } = this
    const sets = new UnionFind(size)
    for (let l = 0; l < linkS.length; l++) {
      if (linkS[l] !== 0) sets.join(from[l], to[l])
      if (start[l + 1] - start[l] > 1) this.joinInner(l, sets, laws)
    }
    const earth = sets.find(rows)
    const floating = new Uint8Array(size)
    const ties: number[] = []
    for (let node = 0; node < size; node++) {
      const root = sets.find(node)
      if (root === earth) continue
      floating[node] = 1
      // The smallest of an island stands for it, and rows come before the nodes inside chains.
      if (root === node && node < rows) ties.push(node)
    }
    return { floating, ties, islandOf: (node) => sets.find(node) }
  }

  private joinInner(link: number, sets: UnionFind, { plainS }: LawTable): void {
    const { from, to, start, element, inner } = this.topology.links
    for (let p = start[link], before = from[link]; p < start[link + 1]; p++) {
      const after = inner[p] < 0 ? to[link] : inner[p]
      if (plainS[element[p]] !== 0) sets.join(before, after)
      before = after
    }
  }

  /** Give the nodes inside chains their volts: along a chain they fall with the resistance, at an open place each side keeps its own. */
  fillInner(volts: Float64Array, laws: LawTable): void {
    const { linkS, topology: { links: { start } } } = this
    for (let l = 0; l < linkS.length; l++) {
      if (start[l + 1] - start[l] === 1) continue
      if (linkS[l] === 0) this.fillOpen(l, volts, laws)
      else this.fillClosed(l, volts, laws)
    }
  }

  private fillClosed(link: number, volts: Float64Array, { plainS }: LawTable): void {
    const { from, to, start, element, inner } = this.topology.links
    let v = volts[from[link]]
    const amps = this.linkS[link] * (v - volts[to[link]])
    for (let p = start[link]; inner[p] >= 0; p++) {
      v -= amps / plainS[element[p]]
      volts[inner[p]] = v
    }
  }

  private fillOpen(link: number, volts: Float64Array, { plainS }: LawTable): void {
    const { from, to, start, element, inner } = this.topology.links
    const isOpen = (p: number) => plainS[element[p]] === 0
    let first = start[link], last = start[link + 1] - 1
    for (; !isOpen(first); first++) volts[inner[first]] = volts[from[link]]
    for (; !isOpen(last); last--) volts[inner[last - 1]] = volts[to[link]]
    for (let p = first; p < last; p++) volts[inner[p]] = 0
  }
}
