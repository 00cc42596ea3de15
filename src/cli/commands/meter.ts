import { loadTask } from '../../tasks/index.ts'
import { mustOpen } from '../open-file.ts'
import type { Out } from '../out.ts'
import { ArgumentError, readArguments } from '../read-arguments.ts'
import { showAnswer } from '../show-answer.ts'

/** Reads a meter, or a lamp in series with the battery, on the vehicle in one setting. */
export async function meter(args: readonly string[], out: Out): Promise<number> {
  const asked = readArguments('meter', args)
  const { wiring } = await mustOpen(asked)
  const meterVehicle = await loadTask.meterVehicle()
  if (!asked.meter) throw new ArgumentError('say what to measure')
  const read = meterVehicle(wiring, asked, asked.meter, (said) => { out.progress(said) })
  if (!read.ok) throw new ArgumentError(read.refusal.sentence, read.refusal.valid)
  const { reading, isChained: _, ...under } = read.value
  out.print(asked.json ? JSON.stringify({ ...reading, ...under }, null, 2) : showAnswer(read.value, wiring, asked.allAssumed))
  return 0
}
