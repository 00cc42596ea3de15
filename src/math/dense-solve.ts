/** Solve the small dense system A·x = b by elimination with row pivoting; A is row-major and is not changed. Null where A is singular. */
export function solveDense(A: Float64Array, b: Float64Array): Float64Array | null {
  const n = b.length
  const m = A.slice(), x = b.slice()
  for (let k = 0; k < n; k++) {
    const pivot = largestBelow(m, n, k)
    if (m[pivot * n + k] === 0) return null
    if (pivot !== k) swapRows(m, x, n, k, pivot)
    for (let i = k + 1; i < n; i++) {
      const f = m[i * n + k] / m[k * n + k]
      if (f === 0) continue
      for (let j = k; j < n; j++) m[i * n + j] -= f * m[k * n + j]
      x[i] -= f * x[k]
    }
  }
  for (let k = n - 1; k >= 0; k--) {
    for (let j = k + 1; j < n; j++) x[k] -= m[k * n + j] * x[j]
    x[k] /= m[k * n + k]
  }
  return x
}

function largestBelow(m: Float64Array, n: number, k: number): number {
  let best = k
  for (let i = k + 1; i < n; i++) if (Math.abs(m[i * n + k]) > Math.abs(m[best * n + k])) best = i
  return best
}

function swapRows(m: Float64Array, x: Float64Array, n: number, i: number, j: number): void {
  for (let c = 0; c < n; c++) [m[i * n + c], m[j * n + c]] = [m[j * n + c], m[i * n + c]]
  ;[x[i], x[j]] = [x[j], x[i]]
}
