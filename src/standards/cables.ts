import { cableRows, type CableRow } from './cable-rows.ts'
import { nameKey, notFound, type NotFound } from './refusal.ts'

export type CableFound = ({ readonly ok: true } & CableRow) | NotFound

const cableByKey = new Map(
  cableRows.flatMap((row) => [row.id, ...row.names].map((name) => [nameKey(name), row] as const)),
)

/**
 * The kind of cable with this id or trade name ("FLRY-B", "GPT", "rubber-cotton"): its conductor table, wall, and the
 * conductor temperatures in C that its insulation bears. A name that is not in the table is refused with the nearest.
 */
export function findCable(name: string): CableFound {
  const row = cableByKey.get(nameKey(String(name)))
  return row ? { ok: true, ...row } : notFound(name, 'a known kind of cable', cableRows.flatMap((cable) => [cable.id, ...cable.names]))
}
