import { loadTask, type CheckedWiring, type OpenedVehicle } from '../../tasks/index.ts'
import { ArgumentError, readArguments } from '../read-arguments.ts'
import { openFile, showRefusal } from '../open-file.ts'
import type { Out } from '../out.ts'
import { showAssumed } from '../show-assumed.ts'

/** Reads a record and resolves it for one vehicle. 0: both went well; 1: the vehicle has a conflict or cannot be told. */
export async function check(args: readonly string[], out: Out): Promise<number> {
  const asked = readArguments('check', args)
  const opened = await openFile(asked)
  if (!opened.ok && opened.stage === 'record') throw new ArgumentError(showRefusal(opened).join('\n'))
  if (!opened.ok && opened.problems.length) throw new ArgumentError(showRefusal(opened).join('\n'))
  if (!opened.ok) {
    const { conflicts, cannotTell } = opened
    out.print(asked.json ? JSON.stringify({ ok: false, record: opened.record.id, conflicts, cannotTell }, null, 2) : showRefusal(opened).join('\n'))
    return 1
  }
  const checkVehicle = await loadTask.checkVehicle()
  const checked = checkVehicle(opened.wiring)
  out.print(asked.json ? JSON.stringify({ ok: true, record: opened.record.id, ...checked }, null, 2) : showChecked(opened, checked, asked.allAssumed))
  return 0
}

function showChecked({ record, wiring }: Extract<OpenedVehicle, { ok: true }>, { shorted, unjoined, unmatched, assumed }: CheckedWiring, allAssumed: boolean): string {
  const earth = wiring.earth === 'none' ? 'insulated return' : `${wiring.earth} earth`
  const lines = [
    `${record.title}: read, and resolved without conflict.`,
    `${wiring.systemV} V, ${earth}; ${[
      count(wiring.parts.size, 'part'), count(wiring.wires.size, 'wire'), count(wiring.splices.size, 'splice'), count(wiring.looms.size, 'loom'),
    ].join(', ')}.`,
    ...shorted.map(({ part, through }) => `Look at this: ${part} is short-circuited, from post to post through ${through.join(', ')} with no load between.`),
    ...unjoined.length ? [`Nothing is joined to ${unjoined.join(', ')}: unused, or a wire or an earth is missing.`] : [],
    ...unmatched.map(({ half, way, wires, why }) => `Way ${half}:${way} meets nothing: ${why}${wires.length ? ` (wires ${wires.join(', ')})` : ''}.`),
  ]
  return [lines.join('\n'), showAssumed(assumed, allAssumed)].filter((section) => section !== '').join('\n\n')
}

const count = (n: number, noun: string) => `${n} ${noun}${n === 1 ? '' : 's'}`
