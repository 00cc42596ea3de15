import { sayAssumed, type AssumedLine, type Assumption } from '../record/index.ts'

/** So many places of one assumption are named where not all are asked for. */
const NAMED_PLACES = 3

/**
 * What was assumed, alike values together under the source that they are from; empty where nothing was. In short: what bears on
 * the answer, and the first places of each; with `all`, everything and every place.
 */
export function showAssumed(assumed: readonly (Assumption & { readonly bears?: boolean })[], all: boolean): string {
  const shown = all ? assumed : assumed.filter(({ bears }) => bears !== false)
  if (assumed.length === 0) return ''
  const left = assumed.length - shown.length
  const apart = left === 0 ? '' : `; ${left} more of what carries no current here: add --all-assumed`
  return [`Assumed, because the record does not say${apart}:`, ...listBySource(sayAssumed(shown), all)].join('\n')
}

function listBySource(lines: readonly AssumedLine[], all: boolean): string[] {
  const sources = new Set(lines.map(({ source }) => source))
  return [...sources].flatMap((source) => [
    `  From ${source}:`,
    ...lines.filter((line) => line.source === source).map(({ what, where }) => `    ${what} – ${showPlaces(where, all)}`),
  ])
}

function showPlaces(where: readonly string[], all: boolean): string {
  const named = all ? where : where.slice(0, NAMED_PLACES)
  const rest = where.length - named.length
  return `at ${named.join(', ')}${rest > 0 ? ` and ${rest} more` : ''}`
}
