/** Why a look-up found nothing: what came, what was expected, the nearest names that exist, and it all in one sentence. */
export interface NotFound {
  readonly ok: false
  readonly received: string
  readonly expected: string
  readonly nearest: readonly string[]
  readonly sentence: string
}

/** Longer input is cut: it is a pasted text, not a name. */
const longestName = 40

export function notFound(received: unknown, expected: string, names: readonly string[]): NotFound {
  const shown = String(received).slice(0, longestName)
  const nearest = nearestNames(shown, names)
  const hint = nearest.length > 0 ? `; the nearest are ${nearest.join(', ')}` : ''
  return { ok: false, received: shown, expected, nearest, sentence: `"${shown}" is not ${expected}${hint}.` }
}

/** The three names that take the fewest changed letters to reach from `wanted`, nearest first, ties in table order. */
function nearestNames(wanted: string, names: readonly string[]): readonly string[] {
  return [...new Set(names)]
    .map((name) => ({ name, changes: lettersChanged(nameKey(wanted), nameKey(name)) }))
    .sort((a, b) => a.changes - b.changes)
    .slice(0, 3)
    .map(({ name }) => name)
}

/** How names are compared: without spaces, dashes and case. */
export function nameKey(name: string): string {
  return name.toLowerCase().replace(/[\s\-–_]/g, '')
}

/** Levenshtein distance, one row of the table at a time. */
function lettersChanged(from: string, to: string): number {
  let row = Array.from({ length: to.length + 1 }, (_, column) => column)
  for (let i = 1; i <= from.length; i++) {
    const next = [i]
    for (let j = 1; j <= to.length; j++) {
      const same = from[i - 1] === to[j - 1] ? 0 : 1
      next[j] = Math.min(row[j] + 1, next[j - 1] + 1, row[j - 1] + same)
    }
    row = next
  }
  return row[to.length]
}
