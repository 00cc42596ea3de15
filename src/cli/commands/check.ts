import { loadTask, type CheckedEditions, type OpenedVehicle } from '../../tasks/index.ts'
import { openFile, showRefusal } from '../open-file.ts'
import type { Out } from '../out.ts'
import { ArgumentError, readArguments, readVehicle, type Arguments } from '../read-arguments.ts'
import { showChecked, showEditions } from '../show-checked.ts'

/**
 * Reads a record and resolves it for one vehicle, or for every edition where no vehicle is described or not enough of it. 0: one
 * wiring for it, or for each edition; 1: a conflict, or a vehicle that is described and cannot be told all the same.
 */
export async function check(args: readonly string[], out: Out): Promise<number> {
  const asked = readArguments('check', args)
  const opened = await openFile(asked)
  if (!opened.ok && (opened.stage === 'record' || opened.problems.length > 0)) throw new ArgumentError(showRefusal(opened).join('\n'))
  const checked = await checkAll(opened, asked)
  if (checked) {
    out.print(asked.json ? JSON.stringify({ ok: checked.editions.every(({ ok }) => ok), record: opened.record.id, ...checked }, null, 2) : showEditions(opened.record, checked, isDescribed(asked)))
    return isDescribed(asked) || checked.editions.some(({ ok }) => !ok) ? 1 : 0
  }
  if (!opened.ok) {
    const { conflicts, cannotTell } = opened
    out.print(asked.json ? JSON.stringify({ ok: false, record: opened.record.id, conflicts, cannotTell }, null, 2) : showRefusal(opened).join('\n'))
    return 1
  }
  const one = { ok: true, ...(await loadTask.checkVehicle())(opened.wiring) } as const
  out.print(asked.json ? JSON.stringify({ ...one, record: opened.record.id }, null, 2) : showChecked(opened.record, one, asked.allAssumed))
  return 0
}

function isDescribed({ vehicle: { year, market, serials, options } }: Arguments): boolean {
  return year !== undefined || market !== undefined || serials.length + options.length > 0
}

/** Every edition, where nothing is said of the vehicle, or not enough, and the record has several; otherwise null. */
async function checkAll(opened: Exclude<OpenedVehicle, { stage: 'record' }>, { vehicle }: Arguments): Promise<CheckedEditions | null> {
  const { record } = opened
  const stated = readVehicle(vehicle, Object.keys(record.serials ?? {}))
  const isOpen = Object.keys(stated).length === 0 || (!opened.ok && opened.cannotTell.length > 0)
  if (!isOpen) return null
  const checked = (await loadTask.checkEditions())(record, stated)
  return checked.editions.length + checked.outside.length > 1 ? checked : null
}
