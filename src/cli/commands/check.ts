import { ArgumentError, readArguments } from '../read-arguments.ts'
import { openFile, showRefusal } from '../open-file.ts'
import type { Out } from '../out.ts'

/** Reads a record and resolves it for one vehicle. 0: both went well; 1: the vehicle has a conflict or cannot be told. */
export async function check(args: readonly string[], out: Out): Promise<number> {
  const asked = readArguments('check', args)
  const opened = await openFile(asked)
  if (!opened.ok && opened.stage === 'record') throw new ArgumentError(showRefusal(opened).join('\n'))
  if (!opened.ok && opened.problems.length) throw new ArgumentError(showRefusal(opened).join('\n'))
  if (asked.json) {
    const { ok } = opened
    out.print(JSON.stringify(ok
      ? { ok, record: opened.record.id, unmatched: opened.wiring.unmatched, assumed: opened.wiring.assumed }
      : { ok, record: opened.record.id, conflicts: opened.conflicts, cannotTell: opened.cannotTell }, null, 2))
    return ok ? 0 : 1
  }
  if (!opened.ok) {
    out.print(showRefusal(opened).join('\n'))
    return 1
  }
  const { record, wiring } = opened
  out.print([
    `${record.title}: read, and resolved without conflict.`,
    `${wiring.systemV} V, ${wiring.earth === 'none' ? 'insulated return' : `${wiring.earth} earth`}; ${wiring.parts.size} parts, ${wiring.wires.size} wires, ${wiring.splices.size} splices, ${wiring.looms.size} looms.`,
    ...wiring.unmatched.map(({ half, way, wires, why }) => `Way ${half}:${way} meets nothing: ${why}${wires.length ? ` (wires ${wires.join(', ')})` : ''}.`),
    ...wiring.assumed.map(({ path, value, why, source }) => `Assumed ${path} = ${String(value)}: ${why} (${source}).`),
  ].join('\n'))
  return 0
}
