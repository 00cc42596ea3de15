import { loadTask } from '../../tasks/index.ts'
import { mustOpen } from '../open-file.ts'
import type { Out } from '../out.ts'
import { ArgumentError, readArguments } from '../read-arguments.ts'
import { showSolved } from '../show-solved.ts'

/** Solves one setting, or a chain of them, and prints what is truly live. */
export async function solve(args: readonly string[], out: Out): Promise<number> {
  const asked = readArguments('solve', args)
  const { wiring } = await mustOpen(asked)
  const solveVehicle = await loadTask.solveVehicle()
  const solved = solveVehicle(wiring, asked, (said) => { out.progress(said) })
  if (!solved.ok) throw new ArgumentError(solved.refusal.sentence, solved.refusal.valid)
  const { steps } = solved.value
  if (asked.json) out.print(JSON.stringify(steps.length > 1 ? { steps } : steps[0], null, 2))
  else out.print(steps.map((step, i) => showSolved(step, wiring, { isChained: i > 0, allAssumed: asked.allAssumed })).join('\n\n════════\n\n'))
  return 0
}
