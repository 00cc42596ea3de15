import { faultRows, type FaultRow } from './fault-rows.ts'
import { nameKey, notFound, type NotFound } from './refusal.ts'

export type FaultFound = ({ readonly ok: true } & FaultRow) | NotFound

/** A fault of the table by its id ("blown-fuse") or its name; one that is not there is refused with the nearest ids. */
export function findFault(name: string): FaultFound {
  const key = nameKey(String(name))
  const row = faultRows.find((row) => nameKey(row.id) === key || nameKey(row.name) === key)
  return row ? { ok: true, ...row } : notFound(name, 'a known fault', faultRows.map((each) => each.id))
}
