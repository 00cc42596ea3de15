import type { Assumption } from '../record/index.ts'

/** Assumptions of the same value for the same reason in one line, with how often; empty where nothing was assumed. */
export function showAssumed(assumed: readonly Assumption[]): string {
  const groups = new Map<string, { count: number; path: string }>()
  for (const { path, value, why, source } of assumed) {
    const shown = typeof value === 'number' ? Number(value.toPrecision(4)) : String(value)
    const key = `${path.split('.').at(-1) ?? path} ${shown}: ${why} (${source})`
    const group = groups.get(key)
    groups.set(key, { count: (group?.count ?? 0) + 1, path: group?.path ?? path })
  }
  if (groups.size === 0) return ''
  const lines = [...groups].map(([key, { count, path }]) => `  ${key}, ${count === 1 ? `at ${path}` : `at ${count} places, first ${path}`}`)
  return ['Assumed, because the record does not say:', ...lines].join('\n')
}
