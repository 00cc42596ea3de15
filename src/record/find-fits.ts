import { isObject, type Path } from './path.ts'
import type { Condition, Fits, WiringRecord } from './schema.ts'

/** One `fits` of the record, with the path at which it stands. */
export interface PlacedFits { readonly at: Path; readonly fits: Fits }

/**
 * Every `fits` of the record, those inside parameters among them, and every `madeFor`. What only claims or drawings
 * hold is passed over: there the word means nothing.
 */
export function findFits(record: WiringRecord): PlacedFits[] {
  const found: PlacedFits[] = []
  for (const [key, value] of Object.entries(record)) {
    if (key !== 'claims' && key !== 'layout') look(value, [key], found)
  }
  return found
}

function look(value: unknown, path: Path, found: PlacedFits[]): void {
  if (Array.isArray(value)) value.forEach((entry, i) => look(entry, [...path, String(i)], found))
  else if (isObject(value)) {
    for (const [key, entry] of Object.entries(value)) {
      const isCondition = (key === 'fits' || key === 'madeFor') && Array.isArray(entry) && path.length > 1
      if (isCondition) found.push({ at: [...path, key], fits: entry as readonly Condition[] })
      else look(entry, [...path, key], found)
    }
  }
}
