import { dropLimitRows, type DropLimitRow } from './drop-limit-rows.ts'
import type { Sourced } from './sources.ts'

/** Volts that a path may lose at a stated current, and how that is known. */
export interface DropAllowed extends Sourced {
  readonly maxV: number
}

const perHundredAmps = dropLimitRows.find(({ path }) => path === 'rule for starter circuits, per 100 A') as DropLimitRow

/** The most volts that a cable of a 12 V starter circuit may lose at this current: 0.20 V for each 100 A, as 2.0 milliohms do. */
export function starterCableLimit(currentA: number): DropAllowed {
  if (!(currentA > 0)) throw new RangeError(`a cranking current is more than 0 A, not ${currentA}`)
  const { maxV, source, status } = perHundredAmps
  return { maxV: (maxV * currentA) / 100, source, status }
}
