import { loadTask, type MeterReading } from '../../tasks/index.ts'
import { mustOpen } from '../open-file.ts'
import type { Out } from '../out.ts'
import { ArgumentError, readArguments } from '../read-arguments.ts'
import { figure } from '../table.ts'

/** Reads a meter, or a lamp in series with the battery, on the vehicle in one setting. */
export async function meter(args: readonly string[], out: Out): Promise<number> {
  const asked = readArguments('meter', args)
  const { wiring } = await mustOpen(asked)
  const meterVehicle = await loadTask.meterVehicle()
  if (!asked.meter) throw new ArgumentError('say what to measure')
  const read = meterVehicle(wiring, asked, asked.meter, (said) => { out.progress(said) })
  if (!read.ok) throw new ArgumentError(read.refusal.sentence, read.refusal.valid)
  out.print(asked.json ? JSON.stringify(read.value, null, 2) : showReading(read.value))
  return 0
}

function showReading(reading: MeterReading): string {
  switch (reading.kind) {
    case 'volts': {
      const bare = reading.withoutMeterV
      const ghost = bare === null ? ' One of the two points floats without the meter: this may be a ghost reading.'
        : Math.abs(bare - reading.volts) > 0.05 ? ` Without the meter: ${figure(bare, 3)} V.` : ''
      return `${figure(reading.volts, 3)} V from ${reading.from} to ${reading.to}, with a meter of ${reading.meterOhm} Ω.${ghost}`
    }
    case 'amps': return reading.amps === null ? `The amps in ${reading.wire} are undetermined: it lies in a loop of zero-ohm wires.` : `${figure(reading.amps, 4)} A in ${reading.wire}, positive from its first end to its second.`
    case 'ohms': return reading.ohm === null ? `No path from ${reading.from} to ${reading.to}.` : `${Number(reading.ohm.toPrecision(4))} Ω from ${reading.from} to ${reading.to}, battery off, filaments cold.`
    case 'series-lamp': {
      const lit = Object.entries(reading.lamps).filter(([, lamp]) => lamp.class !== 'off').map(([id, lamp]) => `${id} ${figure(lamp.percent, 0)} %`)
      return `The series lamp of ${reading.watts} W is ${reading.lamp.class}: ${figure(reading.lamp.volts, 2)} V over it, ${figure(reading.amps, 3)} A.${lit.length ? ` Lit behind it: ${lit.join(', ')}.` : ''}`
    }
  }
}
