import { partKinds } from '../parts/index.ts'
import {
  readRecord, resolveVehicle, type CannotTell, type Conflict, type Problem, type Vehicle, type Wiring, type WiringRecord,
} from '../record/index.ts'

/** A record read and resolved for one vehicle, or all that stands in the way. */
export type OpenedVehicle =
  | { readonly ok: true; readonly record: WiringRecord; readonly wiring: Wiring }
  | { readonly ok: false; readonly stage: 'record'; readonly problems: readonly Problem[]; readonly count: number }
  | {
    readonly ok: false; readonly stage: 'vehicle'; readonly record: WiringRecord
    readonly problems: readonly Problem[]; readonly conflicts: readonly Conflict[]; readonly cannotTell: readonly CannotTell[]
  }

/** Reads a record's text and resolves it for one vehicle, which may be described once the record is known. */
export function openVehicle(text: string, describe: (record: WiringRecord) => Vehicle): OpenedVehicle {
  const read = readRecord(text, partKinds)
  if (!read.ok) return { ok: false, stage: 'record', problems: read.problems, count: read.count }
  const { record } = read
  const resolved = resolveVehicle(record, describe(record), partKinds)
  if (resolved.ok) return { ok: true, record, wiring: resolved.wiring }
  const { problems, conflicts, cannotTell } = resolved
  return { ok: false, stage: 'vehicle', record, problems, conflicts, cannotTell }
}
