/**
 * The order of ids everywhere: digits count as numbers, so w2 comes before w10; everything else by character code.
 * Ids that differ only in leading zeros keep one fixed order too.
 */
export function compareIds(a: string, b: string): number {
  const left = a.match(/\d+|\D+/g) ?? []
  const right = b.match(/\d+|\D+/g) ?? []
  for (let i = 0; i < left.length && i < right.length; i++) {
    const order = compareChunks(left[i], right[i])
    if (order !== 0) return order
  }
  return left.length - right.length || compareText(a, b)
}

/** The same things in the order of their ids. */
export function inIdOrder<T>(map: Readonly<Record<string, T>> | undefined): [string, T][] {
  return Object.entries(map ?? {}).sort(([a], [b]) => compareIds(a, b))
}

function compareChunks(a: string, b: string): number {
  if (!isDigits(a) || !isDigits(b)) return compareText(a, b)
  const left = a.replace(/^0+/, '')
  const right = b.replace(/^0+/, '')
  return left.length - right.length || compareText(left, right)
}

function isDigits(chunk: string): boolean {
  return chunk >= '0' && chunk < ':'
}

function compareText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0
}
