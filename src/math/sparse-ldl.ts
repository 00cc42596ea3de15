/**
 * LDLᵀ of sparse symmetric positive definite matrices that keep their pattern while their values change.
 * The pattern is analysed once; factoring and solving then touch typed arrays only. Vectors are in the order
 * of elimination: entry `rank[i]` belongs to row i.
 */
export interface SparseAnalysis {
  readonly size: number
  /** order[k] is the row eliminated k-th, rank its inverse. */
  readonly order: Int32Array
  readonly rank: Int32Array
  /** Pattern of L by columns: rows `row[start[k]] … row[start[k+1]−1]` of column k, ascending, the diagonal left out. */
  readonly start: Int32Array
  readonly row: Int32Array
  /** For each column and each pair of its entries p < q: the place in L of the entry (row q, row p), which they change. */
  readonly target: Int32Array
  /** Where the value of entry (i, j) lives, by rows of the caller: the diagonal first, then L's pattern. */
  slotOf(i: number, j: number): number
}

/** Analyse the pattern of a symmetric matrix whose off-diagonal entries are the pairs (a[p], b[p]); the diagonal is always there. */
export function analyseSparse(size: number, a: ArrayLike<number>, b: ArrayLike<number>): SparseAnalysis {
  const neighbours = adjacency(size, a, b)
  const order = minimumDegreeOrder(neighbours.map((set) => new Set(set)))
  const rank = new Int32Array(size)
  for (let k = 0; k < size; k++) rank[order[k]] = k
  const { start, row } = factorPattern(neighbours, order, rank)
  return {
    size, order, rank, start, row, target: listTargets(size, start, row),
    slotOf(i, j) {
      const low = Math.min(rank[i], rank[j]), high = Math.max(rank[i], rank[j])
      if (low === high) return low
      const p = row.subarray(start[low], start[low + 1]).indexOf(high)
      if (p < 0) throw new RangeError(`no entry (${i}, ${j}) in the analysed pattern`)
      return size + start[low] + p
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

/** Greedy minimum degree; ties go to the one that has had its degree longest, so the order is the same every time. */
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

/** Row k of L is what the elimination tree reaches from the neighbours of row k that come before it. */
function factorPattern(neighbours: readonly Set<number>[], order: Int32Array, rank: Int32Array) {
  const size = order.length
  const parent = new Int32Array(size).fill(-1)
  const seen = new Int32Array(size).fill(-1)
  const columns: number[][] = Array.from({ length: size }, () => [])
  for (let k = 0; k < size; k++) {
    seen[k] = k
    for (const neighbour of neighbours[order[k]]) {
      if (rank[neighbour] > k) continue
      for (let i = rank[neighbour]; seen[i] !== k; i = parent[i]) {
        if (parent[i] === -1) parent[i] = k
        seen[i] = k
        columns[i].push(k)
      }
    }
  }
  const start = new Int32Array(size + 1)
  for (let k = 0; k < size; k++) start[k + 1] = start[k] + columns[k].length
  return { start, row: Int32Array.from(columns.flat()) }
}

function listTargets(size: number, start: Int32Array, row: Int32Array): Int32Array {
  const targets: number[] = []
  const place = new Int32Array(size)
  for (let k = 0; k < size; k++) {
    for (let p = start[k]; p < start[k + 1] - 1; p++) {
      const column = row[p]
      for (let r = start[column]; r < start[column + 1]; r++) place[row[r]] = r
      for (let q = p + 1; q < start[k + 1]; q++) targets.push(place[row[q]])
    }
  }
  return Int32Array.from(targets)
}

/** Numeric factors of one analysed matrix; refilled in place by each `factor`. */
export class SparseFactor {
  /** Values in the slots of the analysis, which the caller fills; one more, at the end, is never read: for what belongs to no entry. */
  readonly values: Float64Array
  private readonly lower: Float64Array
  private readonly diagonal: Float64Array
  private readonly diagonalValues: Float64Array
  private readonly lowerValues: Float64Array
  private readonly unused: Float64Array

  constructor(readonly analysis: SparseAnalysis) {
    const { size, row } = analysis
    this.values = new Float64Array(size + row.length + 1)
    this.diagonalValues = this.values.subarray(0, size)
    this.lowerValues = this.values.subarray(size, size + row.length)
    this.lower = new Float64Array(row.length)
    this.diagonal = new Float64Array(size)
    this.unused = new Float64Array(size)
  }

  /** Factor the present values. Answers the row of the first pivot that is not positive, or −1 when all are. */
  factor(): number {
    return this.eliminate(this.unused)
  }

  /** The same, and solve A·x = b with the factors in one walk over the columns. */
  factorAndSolve(b: Float64Array, x: Float64Array): number {
    if (x !== b) x.set(b)
    const pivot = this.eliminate(x)
    if (pivot < 0) this.substituteBack(x)
    return pivot
  }

  private eliminate(x: Float64Array): number {
    const { size, start, row, target, order } = this.analysis
    const { lower, diagonal } = this
    diagonal.set(this.diagonalValues)
    lower.set(this.lowerValues)
    let u = 0
    for (let k = 0; k < size; k++) {
      const d = diagonal[k]
      if (!(d > 0)) return order[k]
      const inverse = 1 / d, xk = x[k]
      diagonal[k] = inverse
      const end = start[k + 1]
      for (let p = start[k]; p < end; p++) {
        const i = row[p]
        const aik = lower[p], lik = aik * inverse
        diagonal[i] -= lik * aik
        x[i] -= lik * xk
        for (let q = p + 1; q < end; q++) lower[target[u++]] -= lik * lower[q]
        lower[p] = lik
      }
    }
    return -1
  }

  /** Solve A·x = b with the present factors, both in the order of elimination; x may be b itself. */
  solve(b: Float64Array, x: Float64Array): void {
    const { analysis: { size, start, row }, lower } = this
    if (x !== b) x.set(b)
    for (let k = 0; k < size; k++) {
      const xk = x[k]
      for (let p = start[k]; p < start[k + 1]; p++) x[row[p]] -= lower[p] * xk
    }
    this.substituteBack(x)
  }

  private substituteBack(x: Float64Array): void {
    const { analysis: { size, start, row }, lower, diagonal } = this
    for (let k = size - 1; k >= 0; k--) {
      let xk = x[k] * diagonal[k]
      for (let p = start[k]; p < start[k + 1]; p++) xk -= lower[p] * x[row[p]]
      x[k] = xk
    }
  }
}
