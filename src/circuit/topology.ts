import { analyseSparse, UnionFind, type SparseAnalysis } from '../math/index.ts'
import { findChains, type Chain } from './find-chains.ts'

/** An element as the inner solve sees it: two points. */
export interface Ends { readonly from: number; readonly to: number }

/**
 * Points merged over zero-ohm elements into nodes, chains of plain elements into links, and the analysed pattern of
 * the links' matrix. Nodes with a row come first, in the order of elimination; then the reference; then the nodes inside
 * chains. Made once for each set of zero-ohm elements.
 */
export interface Topology {
  /** Nodes that have a row; also the number of the reference's node. */
  readonly rows: number
  /** All nodes. */
  readonly size: number
  readonly nodeOf: Int32Array
  readonly links: Links
  readonly analysis: SparseAnalysis
}

/** Chains as arrays: link l runs from node `from[l]` to `to[l]` over the elements `element[start[l]] … element[start[l+1]−1]`. */
export interface Links {
  readonly from: Int32Array
  readonly to: Int32Array
  readonly start: Int32Array
  readonly element: Int32Array
  /** The node behind each element but the last of its link, there −1. */
  readonly inner: Int32Array
  /** Slots of each link in the matrix: from-from, to-to, from-to; the one that is never read where an end is the reference. */
  readonly slots: Int32Array
}

/** Merge the elements marked in `isMerged`, chain those for which `mayChain` holds, and analyse what remains. */
export function mergePoints(
  points: number, reference: number, elements: readonly Ends[], isMerged: Uint8Array, mayChain: (element: number) => boolean,
): Topology {
  const sets = new UnionFind(points)
  elements.forEach(({ from, to }, i) => { if (isMerged[i]) sets.join(from, to) })
  const { numberOf, last } = numberSets(points, reference, sets)
  const at = (side: 'from' | 'to') => Int32Array.from(elements, (element) => numberOf[element[side]])
  const chains = findChains(at('from'), at('to'), last, mayChain)
  return layOut(chains, numberOf, last)
}

/** Points that are one get one number; the reference gets the last. */
function numberSets(points: number, reference: number, sets: UnionFind): { numberOf: Int32Array; last: number } {
  const numberOf = new Int32Array(points)
  const numbers = new Map<number, number>()
  const earth = sets.find(reference)
  for (let point = 0; point < points; point++) {
    const root = sets.find(point)
    if (root !== earth && !numbers.has(root)) numbers.set(root, numbers.size)
    numberOf[point] = numbers.get(root) ?? -1
  }
  const last = numbers.size
  return { numberOf: numberOf.map((number) => (number < 0 ? last : number)), last }
}

function layOut(chains: readonly Chain[], numberOf: Int32Array, last: number): Topology {
  const inner = new Set(chains.flatMap((chain) => chain.inner))
  const rowOf = new Int32Array(last + 1).fill(-1)
  let rows = 0
  for (let node = 0; node < last; node++) if (!inner.has(node)) rowOf[node] = rows++
  const analysis = analyseSparse(rows, chains.map(({ from }) => rowOf[from]), chains.map(({ to }) => rowOf[to]))
  let next = rows
  const final = new Int32Array(last + 1)
  final[last] = next++
  for (let node = 0; node < last; node++) final[node] = rowOf[node] < 0 ? next++ : analysis.rank[rowOf[node]]
  return { rows, size: last + 1, nodeOf: numberOf.map((node) => final[node]), analysis, links: makeLinks(chains, rowOf, final, analysis) }
}

function makeLinks(chains: readonly Chain[], rowOf: Int32Array, final: Int32Array, analysis: SparseAnalysis): Links {
  const start = new Int32Array(chains.length + 1)
  chains.forEach(({ elements }, l) => { start[l + 1] = start[l] + elements.length })
  return {
    from: Int32Array.from(chains, ({ from }) => final[from]), to: Int32Array.from(chains, ({ to }) => final[to]), start,
    element: Int32Array.from(chains.flatMap(({ elements }) => elements)),
    inner: Int32Array.from(chains.flatMap(({ inner }) => [...inner.map((node) => final[node]), -1])),
    slots: slotsOf(chains, rowOf, analysis),
  }
}

function slotsOf(chains: readonly Chain[], rowOf: Int32Array, analysis: SparseAnalysis): Int32Array {
  const none = analysis.size + analysis.row.length
  const slots = new Int32Array(chains.length * 3).fill(none)
  chains.forEach(({ from, to }, l) => {
    const a = rowOf[from], b = rowOf[to]
    if (a === b) return
    if (a >= 0) slots[3 * l] = analysis.slotOf(a, a)
    if (b >= 0) slots[3 * l + 1] = analysis.slotOf(b, b)
    if (a >= 0 && b >= 0) slots[3 * l + 2] = analysis.slotOf(a, b)
  })
  return slots
}
