import { analyseSparse, UnionFind, type SparseAnalysis } from '../math/index.ts'

/** An element as the inner solve sees it: two points. */
export interface Ends { readonly from: number; readonly to: number }

/**
 * Points merged over zero-ohm elements into nodes, numbered in the order in which their matrix is eliminated, and
 * its analysed pattern. The reference's node comes after all others and has no row. Made once for each set of
 * zero-ohm elements.
 */
export interface Topology {
  /** Nodes that have a row; also the number of the reference's node. */
  readonly nodes: number
  readonly nodeOf: Int32Array
  readonly from: Int32Array
  readonly to: Int32Array
  readonly analysis: SparseAnalysis
  /** Slots of each element in the matrix: from-from, to-to, from-to; the one that is never read where an end is the reference. */
  readonly slots: Int32Array
}

/** Merge the elements marked in `isMerged` and analyse what remains. */
export function mergePoints(points: number, reference: number, elements: readonly Ends[], isMerged: Uint8Array): Topology {
  const sets = new UnionFind(points)
  elements.forEach(({ from, to }, i) => { if (isMerged[i]) sets.join(from, to) })
  const { rowOf, nodes } = numberRows(points, reference, sets)
  const analysis = analyseSparse(nodes, elements.map(({ from }) => rowOf[from]), elements.map(({ to }) => rowOf[to]))
  const nodeOf = rowOf.map((row) => (row < 0 ? nodes : analysis.rank[row]))
  return {
    nodes, nodeOf, analysis, slots: slotsOf(elements, rowOf, analysis),
    from: Int32Array.from(elements, ({ from }) => nodeOf[from]), to: Int32Array.from(elements, ({ to }) => nodeOf[to]),
  }
}

/** Points that are one get one row; the reference gets −1. */
function numberRows(points: number, reference: number, sets: UnionFind): { rowOf: Int32Array; nodes: number } {
  const rowOf = new Int32Array(points)
  const numbers = new Map<number, number>([[sets.find(reference), -1]])
  for (let point = 0; point < points; point++) {
    const root = sets.find(point)
    if (!numbers.has(root)) numbers.set(root, numbers.size - 1)
    rowOf[point] = numbers.get(root) as number
  }
  return { rowOf, nodes: numbers.size - 1 }
}

function slotsOf(elements: readonly Ends[], rowOf: Int32Array, analysis: SparseAnalysis): Int32Array {
  const none = analysis.size + analysis.row.length
  const slots = new Int32Array(elements.length * 3).fill(none)
  elements.forEach(({ from, to }, e) => {
    const a = rowOf[from], b = rowOf[to]
    if (a === b) return
    if (a >= 0) slots[3 * e] = analysis.slotOf(a, a)
    if (b >= 0) slots[3 * e + 1] = analysis.slotOf(b, b)
    if (a >= 0 && b >= 0) slots[3 * e + 2] = analysis.slotOf(a, b)
  })
  return slots
}
