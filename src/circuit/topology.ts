import { analyseSparse, UnionFind, type SparseAnalysis } from '../math/index.ts'

/** An element as the inner solve sees it: two points. */
export interface Ends { readonly from: number; readonly to: number }

/**
 * Points merged over zero-ohm elements into nodes, and the analysed pattern of their matrix. The reference's
 * node is −1: it has no row. Made once for each set of zero-ohm elements.
 */
export interface Topology {
  readonly nodes: number
  /** Node of each point; −1 for the reference. */
  readonly nodeOf: Int32Array
  readonly from: Int32Array
  readonly to: Int32Array
  readonly isMerged: Uint8Array
  readonly analysis: SparseAnalysis
  /** Slots of each element in the matrix, −1 where an end is the reference: from-from, to-to, from-to. */
  readonly slots: Int32Array
  readonly diagonal: Int32Array
}

/** Merge the elements marked in `isMerged` and analyse what remains. */
export function mergePoints(points: number, reference: number, elements: readonly Ends[], isMerged: Uint8Array): Topology {
  const sets = new UnionFind(points)
  elements.forEach(({ from, to }, i) => { if (isMerged[i]) sets.join(from, to) })
  const nodeOf = numberNodes(points, reference, sets)
  const from = Int32Array.from(elements, (element) => nodeOf[element.from])
  const to = Int32Array.from(elements, (element) => nodeOf[element.to])
  const nodes = nodeOf.reduce((most, node) => Math.max(most, node), -1) + 1
  const analysis = analyseSparse(nodes, from, to)
  const diagonal = Int32Array.from({ length: nodes }, (_, i) => analysis.slotOf(i, i))
  return { nodes, nodeOf, from, to, isMerged, analysis, slots: slotsOf(from, to, diagonal, analysis), diagonal }
}

function numberNodes(points: number, reference: number, sets: UnionFind): Int32Array {
  const nodeOf = new Int32Array(points)
  const numbers = new Map<number, number>([[sets.find(reference), -1]])
  for (let point = 0; point < points; point++) {
    const root = sets.find(point)
    if (!numbers.has(root)) numbers.set(root, numbers.size - 1)
    nodeOf[point] = numbers.get(root) as number
  }
  return nodeOf
}

function slotsOf(from: Int32Array, to: Int32Array, diagonal: Int32Array, analysis: SparseAnalysis): Int32Array {
  const slots = new Int32Array(from.length * 3).fill(-1)
  for (let e = 0; e < from.length; e++) {
    const a = from[e], b = to[e]
    if (a === b) continue
    if (a >= 0) slots[3 * e] = diagonal[a]
    if (b >= 0) slots[3 * e + 1] = diagonal[b]
    if (a >= 0 && b >= 0) slots[3 * e + 2] = analysis.slotOf(a, b)
  }
  return slots
}
