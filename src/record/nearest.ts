/** The candidate fewest typing slips away from what was written, if it is near enough to be what was meant. */
export function nearest(written: string, candidates: Iterable<string>): string | undefined {
  const limit = Math.max(1, Math.min(4, Math.floor(written.length / 2)))
  let best: string | undefined
  let fewest = limit + 1
  for (const candidate of candidates) {
    if (Math.abs(candidate.length - written.length) >= fewest) continue
    const slips = countSlips(written.toLowerCase(), candidate.toLowerCase())
    if (slips < fewest) [best, fewest] = [candidate, slips]
  }
  return best
}

/**
 * Letters left out, put in, changed or swapped with their neighbour (optimal string alignment):
 * d(i,j) = min(d(i−1,j) + 1, d(i,j−1) + 1, d(i−1,j−1) + [aᵢ ≠ bⱼ], d(i−2,j−2) + 1 where two letters are swapped).
 */
export function countSlips(a: string, b: string): number {
  let before: number[] = []
  let above = Array.from({ length: b.length + 1 }, (_, j) => j)
  for (let i = 1; i <= a.length; i++) {
    const row = [i]
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1]
      row[j] = Math.min(above[j] + 1, row[j - 1] + 1, above[j - 1] + (same ? 0 : 1))
      const swapped = i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]
      if (swapped) row[j] = Math.min(row[j], before[j - 2] + 1)
    }
    before = above
    above = row
  }
  return above[b.length]
}
