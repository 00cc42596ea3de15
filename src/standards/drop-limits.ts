import { dropLimitRows, type DropCircuit, type DropLimitRow } from './drop-limit-rows.ts'
import { notFound, type NotFound } from './refusal.ts'
import type { Sourced } from './sources.ts'

/** Volts that a path may lose at a stated current, and how that is known. */
export interface DropAllowed extends Sourced {
  readonly maxV: number
}

/** The strictest limit of a class at these volts, with every row of it, strictest first: sources differ. */
export type DropLimitFound =
  | { readonly ok: true; readonly maxV: number; readonly limits: readonly DropLimitRow[] }
  | NotFound

const perHundredAmps = dropLimitRows.find(({ path }) => path === 'rule for starter circuits, per 100 A') as DropLimitRow

/** The most volts that a cable of a 12 V starter circuit may lose at this current: 0.20 V for each 100 A, as 2.0 milliohms do. */
export function starterCableLimit(currentA: number): DropAllowed {
  if (!(currentA > 0)) throw new RangeError(`a cranking current is more than 0 A, not ${currentA}`)
  const { maxV, source, status } = perHundredAmps
  return { maxV: (maxV * currentA) / 100, source, status }
}

/**
 * The most volts that a class of circuit may lose in a system of 6, 12 or 24 V (or 14, 28, 115, 200 V on aircraft). Refused
 * with the classes known at those volts where no limit was found: one of 12 V is never halved or doubled.
 */
export function findDropLimit(systemV: number, circuit: DropCircuit): DropLimitFound {
  const atVolts = dropLimitRows.filter((row) => row.systemsV.includes(systemV))
  const limits = atVolts.filter((row) => row.circuit === circuit).toSorted((a, b) => a.maxV - b.maxV)
  if (limits.length === 0) return notFound(circuit, `a class with a known limit at ${systemV} V`, atVolts.map((row) => row.circuit))
  return { ok: true, maxV: limits[0].maxV, limits }
}
