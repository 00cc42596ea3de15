import { loadTask, type OpenedVehicle } from '../tasks/index.ts'
import { ArgumentError, readVehicle, type Arguments } from './read-arguments.ts'
import { readText } from './read-file.ts'

/** The record of a file, resolved for the vehicle that the arguments describe. */
export async function openFile({ file, vehicle }: Arguments): Promise<OpenedVehicle> {
  const text = readText(file)
  const openVehicle = await loadTask.openVehicle()
  return openVehicle(text, (record) => readVehicle(vehicle, Object.keys(record.serials ?? {})))
}

/** All that keeps a record or a vehicle from being opened, as lines. */
export function showRefusal(opened: Extract<OpenedVehicle, { ok: false }>): string[] {
  if (opened.stage === 'record') {
    const more = opened.count > opened.problems.length ? [`… and ${opened.count - opened.problems.length} more`] : []
    return [`The record cannot be read: ${opened.count} problem${opened.count === 1 ? '' : 's'}.`, ...opened.problems.map(({ sentence }) => sentence), ...more]
  }
  return [
    ...(opened.problems.length ? ['The vehicle is not described in this record\'s words.'] : []), ...opened.problems.map(({ sentence }) => sentence),
    ...(opened.conflicts.length ? [`${opened.conflicts.length} in conflict:`] : []), ...opened.conflicts.map(({ sentence }) => sentence),
    ...(opened.cannotTell.length ? showOpen(opened.cannotTell) : []),
  ]
}

const NAMED_OPEN = 3

/** What cannot be told, by what would tell it. */
function showOpen(cannotTell: Extract<OpenedVehicle, { stage: 'vehicle' }>['cannotTell']): string[] {
  const byAsk = new Map<string, string[]>()
  for (const { at, ask } of cannotTell) byAsk.set(ask.join('; '), [...byAsk.get(ask.join('; ')) ?? [], at.join('.')])
  return [
    `${cannotTell.length} cannot be told of this vehicle:`,
    ...[...byAsk].map(([ask, paths]) => `  ${ask}: it decides ${paths.slice(0, NAMED_OPEN).join(', ')}${paths.length > NAMED_OPEN ? ` and ${paths.length - NAMED_OPEN} more` : ''}.`),
    'Describe the vehicle with --year, --serial, --market or --option.',
  ]
}

/** The opened vehicle, or an error with everything that stands in the way. */
export async function mustOpen(args: Arguments): Promise<Extract<OpenedVehicle, { ok: true }>> {
  const opened = await openFile(args)
  if (!opened.ok) throw new ArgumentError(showRefusal(opened).join('\n'))
  return opened
}
