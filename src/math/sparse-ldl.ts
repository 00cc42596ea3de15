/**
 * LDLᵀ of sparse symmetric positive definite matrices that keep their pattern while their values change.
 * The pattern is analysed once; factoring and solving then touch typed arrays only.
 */
export interface SparseAnalysis {
  readonly size: number
  /** order[k] is the row eliminated k-th, rank its inverse. */
  readonly order: Int32Array
  readonly rank: Int32Array
  /** Upper triangle of the permuted matrix by columns: rows `row[start[k]] … row[start[k+1]−1]` of column k, diagonal last. */
  readonly start: Int32Array
  readonly row: Int32Array
  /** Pattern of L by columns, rows ascending. */
  readonly factorStart: Int32Array
  readonly factorRow: Int32Array
  /** Columns of L that reach row k, ascending. */
  readonly reachStart: Int32Array
  readonly reach: Int32Array
  /** Where the value of entry (i, j) lives; diagonal for i = j. */
  slotOf(i: number, j: number): number
}

/** Analyse the pattern of a symmetric matrix whose off-diagonal entries are the pairs (a[p], b[p]); the diagonal is always there. */
export function analyseSparse(size: number, a: ArrayLike<number>, b: ArrayLike<number>): SparseAnalysis {
  const neighbours = adjacency(size, a, b)
  const order = minimumDegreeOrder(neighbours.map((set) => new Set(set)))
  const rank = new Int32Array(size)
  for (let k = 0; k < size; k++) rank[order[k]] = k
  const columns = upperColumns(neighbours, order, rank)
  const slots = new Map<number, number>()
  for (let k = 0; k < size; k++) {
    for (let p = columns.start[k]; p < columns.start[k + 1]; p++) slots.set(columns.row[p] * size + k, p)
  }
  return {
    size, order, rank, ...columns, ...factorPattern(size, columns.start, columns.row),
    slotOf(i, j) {
      const low = Math.min(rank[i], rank[j]), high = Math.max(rank[i], rank[j])
      const slot = slots.get(low * size + high)
      if (slot === undefined) throw new RangeError(`no entry (${i}, ${j}) in the analysed pattern`)
      return slot
    },
  }
}

function adjacency(size: number, a: ArrayLike<number>, b: ArrayLike<number>): Set<number>[] {
  const neighbours = Array.from({ length: size }, () => new Set<number>())
  for (let p = 0; p < a.length; p++) {
    if (a[p] === b[p] || a[p] < 0 || b[p] < 0) continue
    neighbours[a[p]].add(b[p])
    neighbours[b[p]].add(a[p])
  }
  return neighbours
}

/** Greedy minimum degree; ties go to the smaller index, so the order is the same every time. */
function minimumDegreeOrder(graph: Set<number>[]): Int32Array {
  const size = graph.length
  const order = new Int32Array(size)
  const buckets: Set<number>[] = []
  const bucket = (degree: number) => (buckets[degree] ??= new Set())
  for (let i = 0; i < size; i++) bucket(graph[i].size).add(i)
  let lowest = 0
  for (let k = 0; k < size; k++) {
    while (!buckets[lowest]?.size) lowest++
    const pivot = buckets[lowest].values().next().value as number
    buckets[lowest].delete(pivot)
    order[k] = pivot
    eliminate(graph, pivot, bucket)
    lowest = Math.max(0, lowest - 1)
  }
  return order
}

function eliminate(graph: Set<number>[], pivot: number, bucket: (degree: number) => Set<number>): void {
  const around = [...graph[pivot]]
  for (const i of around) bucket(graph[i].size).delete(i)
  for (const i of around) {
    graph[i].delete(pivot)
    for (const j of around) if (j !== i) graph[i].add(j)
  }
  for (const i of around) bucket(graph[i].size).add(i)
  graph[pivot].clear()
}

function upperColumns(neighbours: readonly Set<number>[], order: Int32Array, rank: Int32Array) {
  const size = order.length
  const start = new Int32Array(size + 1)
  const rows: number[] = []
  for (let k = 0; k < size; k++) {
    const above = [...neighbours[order[k]]].map((i) => rank[i]).filter((r) => r < k).sort((x, y) => x - y)
    rows.push(...above, k)
    start[k + 1] = rows.length
  }
  return { start, row: Int32Array.from(rows) }
}

/** Row k of L is what the elimination tree reaches from the entries of column k of the upper triangle. */
function factorPattern(size: number, start: Int32Array, row: Int32Array) {
  const parent = new Int32Array(size).fill(-1)
  const seen = new Int32Array(size).fill(-1)
  const counts = new Int32Array(size)
  const reaches: number[] = []
  const reachStart = new Int32Array(size + 1)
  for (let k = 0; k < size; k++) {
    seen[k] = k
    const found: number[] = []
    for (let p = start[k]; p < start[k + 1]; p++) {
      for (let i = row[p]; seen[i] !== k; i = parent[i]) {
        if (parent[i] === -1) parent[i] = k
        seen[i] = k
        counts[i]++
        found.push(i)
      }
    }
    reaches.push(...found.sort((x, y) => x - y))
    reachStart[k + 1] = reaches.length
  }
  const reach = Int32Array.from(reaches)
  return { reachStart, reach, ...factorColumns(size, counts, reachStart, reach) }
}

function factorColumns(size: number, counts: Int32Array, reachStart: Int32Array, reach: Int32Array) {
  const factorStart = new Int32Array(size + 1)
  for (let k = 0; k < size; k++) factorStart[k + 1] = factorStart[k] + counts[k]
  const factorRow = new Int32Array(factorStart[size])
  const filled = new Int32Array(size)
  for (let k = 0; k < size; k++) {
    for (let p = reachStart[k]; p < reachStart[k + 1]; p++) {
      const i = reach[p]
      factorRow[factorStart[i] + filled[i]++] = k
    }
  }
  return { factorStart, factorRow }
}

/** Numeric factors of one analysed matrix; refilled in place by each `factor`. */
export class SparseFactor {
  readonly analysis: SparseAnalysis
  /** Values of the upper triangle, in the slots of the analysis: the caller fills them. */
  readonly values: Float64Array
  private readonly lower: Float64Array
  private readonly diagonal: Float64Array
  private readonly work: Float64Array
  private readonly filled: Int32Array

  constructor(analysis: SparseAnalysis) {
    this.analysis = analysis
    this.values = new Float64Array(analysis.row.length)
    this.lower = new Float64Array(analysis.factorRow.length)
    this.diagonal = new Float64Array(analysis.size)
    this.work = new Float64Array(analysis.size)
    this.filled = new Int32Array(analysis.size)
  }

  /** Factor the present values. Answers the row of the first pivot that is not positive, or −1 when all are. */
  factor(): number {
    const { size, start, row, factorStart, factorRow, reachStart, reach, order } = this.analysis
    const { values, lower, diagonal, work: y, filled } = this
    filled.fill(0)
    y.fill(0)
    for (let k = 0; k < size; k++) {
      const last = start[k + 1] - 1
      for (let p = start[k]; p < last; p++) y[row[p]] = values[p]
      let d = values[last]
      for (let p = reachStart[k]; p < reachStart[k + 1]; p++) {
        const i = reach[p]
        const yi = y[i]
        y[i] = 0
        const from = factorStart[i], to = from + filled[i]++
        for (let q = from; q < to; q++) y[factorRow[q]] -= lower[q] * yi
        const lki = yi / diagonal[i]
        d -= lki * yi
        lower[to] = lki
      }
      if (!(d > 0)) return order[k]
      diagonal[k] = d
    }
    return -1
  }

  /** Solve A·x = b with the present factors; x may be b itself. */
  solve(b: Float64Array, x: Float64Array): void {
    const { size, order, factorStart, factorRow } = this.analysis
    const { lower, diagonal, work: y } = this
    for (let k = 0; k < size; k++) y[k] = b[order[k]]
    for (let k = 0; k < size; k++) {
      const yk = y[k]
      for (let p = factorStart[k]; p < factorStart[k + 1]; p++) y[factorRow[p]] -= lower[p] * yk
    }
    for (let k = size - 1; k >= 0; k--) {
      let yk = y[k] / diagonal[k]
      for (let p = factorStart[k]; p < factorStart[k + 1]; p++) yk -= lower[p] * y[factorRow[p]]
      y[k] = yk
    }
    for (let k = 0; k < size; k++) x[order[k]] = y[k]
    y.fill(0)
  }
}
