import { UnionFind } from '../math/index.ts'
import { LOGGED, type LawTable } from './law-table.ts'
import type { Topology } from './topology.ts'

/** Conductance that ties one node of each floating island to the reference. It closes no path, so it carries nothing and loads no reading. */
export const TIE_S = 1e-3

/** Nodes that no conducting element joins to the reference, and one row of each island that has one. */
export interface Islands { readonly floating: Uint8Array; readonly ties: readonly number[]; islandOf(node: number): number }

interface KnownIslands { readonly open: Uint32Array; readonly islands: Islands }
const MOST_KNOWN = 500

/**
 * The links of a topology under one state of their laws: plain conductances with the matrix they make, and those whose
 * law has to be asked. What is kept follows the changes of the laws; it is the same as if it were gathered anew.
 */
export class SortedLinks {
  /** Conductance of each link, 0 where it is open, runs back to its own node, or has to be asked. */
  readonly S: Float64Array
  /** The links that have to be asked are the first `curved` of `asked`; `askedElement` is what they are. */
  curved = 0
  readonly asked: Int32Array
  readonly askedElement: Int32Array
  /** Values of the matrix of the plain ones, without the ties of floating islands. */
  readonly values: Float64Array
  islands: Islands = { floating: new Uint8Array(0), ties: [], islandOf: (node) => node }
  /** Conductance of each link over its elements; NaN where its law has to be asked. */
  private readonly linkS: Float64Array
  /** Link of each element, −1 for those that are in none. */
  private readonly linkOf: Int32Array
  /** Links at each row, ascending: `atRow[rowStart[r]] … atRow[rowStart[r+1]−1]`. */
  private readonly rowStart: Int32Array
  private readonly atRow: Int32Array
  /** Links of more than one element. */
  private readonly chains: Int32Array
  private laws: LawTable | null = null
  private changes = -1
  /** What was found before, by its mark. */
  private readonly known = new Map<number, KnownIslands>()

  constructor(private readonly topology: Topology, slots: number, elements: number) {
    const { rows, links: { from, to, start, element } } = topology
    const links = from.length
    this.S = new Float64Array(links)
    this.asked = new Int32Array(links)
    this.askedElement = new Int32Array(links)
    this.linkS = new Float64Array(links)
    this.values = new Float64Array(slots)
    this.linkOf = new Int32Array(elements).fill(-1)
    const atRow: number[][] = Array.from({ length: rows + 1 }, () => [])
    for (let l = 0; l < links; l++) {
      for (let p = start[l]; p < start[l + 1]; p++) this.linkOf[element[p]] = l
      if (from[l] !== to[l]) { atRow[from[l]].push(l); atRow[to[l]].push(l) }
    }
    this.rowStart = new Int32Array(rows + 2)
    atRow.forEach((own, r) => { this.rowStart[r + 1] = this.rowStart[r] + own.length })
    this.atRow = Int32Array.from(atRow.flat())
    this.chains = Int32Array.from(start.subarray(0, links).keys()).filter((l) => start[l + 1] - start[l] > 1)
  }

  /** Bring everything up to date with the laws. */
  sort(laws: LawTable): void {
    if (this.laws === laws && this.changes === laws.changes) return
    if (this.laws !== laws || !this.follow(laws)) this.gather(laws)
    this.laws = laws
    this.changes = laws.changes
    this.islands = this.islandsOf(laws)
  }

  /** Take over the elements that have changed; false where that would not be enough. */
  private follow(laws: LawTable): boolean {
    if (laws.changes - this.changes > LOGGED) return false
    for (let c = this.changes; c < laws.changes; c++) {
      const link = this.linkOf[laws.changed[c % LOGGED]]
      if (link < 0) continue
      const S = this.conductance(link, laws)
      if (S !== S || this.linkS[link] !== this.linkS[link]) return false
      this.linkS[link] = S
      this.refresh(link)
    }
    return true
  }

  private gather(laws: LawTable): void {
    const { topology: { links: { from, to, slots, start, element } }, values, linkS, S } = this
    this.curved = 0
    values.fill(0)
    for (let l = 0; l < linkS.length; l++) {
      const own = linkS[l] = this.conductance(l, laws)
      const isAsked = own !== own
      S[l] = isAsked || from[l] === to[l] ? 0 : own
      if (isAsked && from[l] !== to[l]) {
        this.askedElement[this.curved] = element[start[l]]
        this.asked[this.curved++] = l
      }
      values[slots[3 * l]] += S[l]
      values[slots[3 * l + 1]] += S[l]
      values[slots[3 * l + 2]] -= S[l]
    }
  }

  /** One link has another conductance: the entries that it is part of are summed anew, in the same order. */
  private refresh(link: number): void {
    const { topology: { rows, links: { from, to, slots } }, values, S } = this
    const a = from[link], b = to[link]
    if (a === b) return
    S[link] = this.linkS[link]
    if (a < rows) values[a] = this.sumAt(a)
    if (b < rows) values[b] = this.sumAt(b)
    if (a < rows && b < rows) values[slots[3 * link + 2]] = this.sumAt(a, slots[3 * link + 2])
  }

  private sumAt(row: number, slot?: number): number {
    const { rowStart, atRow, S, topology: { links: { slots } } } = this
    let sum = 0
    for (let p = rowStart[row]; p < rowStart[row + 1]; p++) {
      const l = atRow[p]
      if (slot === undefined) sum += S[l]
      else if (slots[3 * l + 2] === slot) sum -= S[l]
    }
    return sum
  }

  /** Conductances in a row: 1/S is the sum of 1/Sᵢ. */
  private conductance(link: number, { plainS, plainOhm }: LawTable): number {
    const { start, element } = this.topology.links
    const first = start[link], end = start[link + 1]
    if (end - first === 1) return plainS[element[first]]
    let ohm = 0
    for (let p = first; p < end; p++) ohm += plainOhm[element[p]]
    if (ohm !== ohm) throw new RangeError('an element whose law has to be asked stands inside a chain')
    return 1 / ohm
  }

  /** Conductance of a link with every source at rest and every filament cold. */
  restConductance(link: number, laws: LawTable): number {
    const S = this.linkS[link]
    return S === S ? S : laws.restSlope(this.topology.links.element[this.topology.links.start[link]])
  }

  private islandsOf(laws: LawTable): Islands {
    const open = new Uint32Array(laws.open.buffer)
    const known = this.known.get(laws.openMark)
    if (known && isSame(known.open, open)) return known.islands
    const islands = this.findIslands(laws)
    if (this.known.size >= MOST_KNOWN) this.known.clear()
    this.known.set(laws.openMark, { open: open.slice(), islands })
    return islands
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
    for (const l of this.chains) {
      if (this.linkS[l] === 0) this.fillOpen(l, volts, laws)
      else this.fillClosed(l, volts, laws)
    }
  }

  private fillClosed(link: number, volts: Float64Array, { plainOhm }: LawTable): void {
    const { from, to, start, element, inner } = this.topology.links
    let v = volts[from[link]]
    const amps = this.linkS[link] * (v - volts[to[link]])
    for (let p = start[link]; inner[p] >= 0; p++) {
      v -= amps * plainOhm[element[p]]
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

function isSame(a: Uint32Array, b: Uint32Array): boolean {
  if (a.length !== b.length) return false
  for (let i = 0; i < a.length; i++) if (a[i] !== b[i]) return false
  return true
}
