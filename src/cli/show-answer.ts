import { nameOf, type Wiring } from '../record/index.ts'
import type { MeterAnswer, MeterReading } from '../tasks/index.ts'
import { showAssumed } from './show-assumed.ts'
import { showLit } from './show-lit.ts'
import { showNotes, showSetting } from './show-setting.ts'
import { figure } from './table.ts'

/** What a meter reads, and all that the reading rests on. */
export function showAnswer(answer: MeterAnswer, wiring: Wiring, allAssumed: boolean): string {
  const { reading, moved, notes, assumed, isChained } = answer
  const states = Object.entries(moved).map(([id, value]) => `${nameOf(id, wiring)} ${value}`)
  const under = [showSetting(answer, wiring, isChained), showNotes(notes), states.length ? `Not at rest: ${states.join(', ')}.` : '']
  return [showReading(reading), under.filter((line) => line !== '').join('\n'), showAssumed(assumed, allAssumed)].filter((section) => section !== '').join('\n\n')
}

function showReading(reading: MeterReading): string {
  switch (reading.kind) {
    case 'volts': {
      const bare = reading.withoutMeterV
      const ghost = bare === null ? ' One of the two points floats without the meter: this may be a ghost reading.'
        : Math.abs(bare - reading.volts) > 0.05 ? ` Without the meter: ${figure(bare, 3)} V.` : ''
      return `${figure(reading.volts, 3)} V from ${reading.from} to ${reading.to}, with a meter of ${showOhms(reading.meterOhm)}.${ghost}`
    }
    case 'amps': return reading.amps === null ? `The amps in ${reading.wire} are undetermined: it lies in a loop of zero-ohm wires.` : `${figure(reading.amps, 4)} A in ${reading.wire}, positive from its first end to its second.`
    case 'ohms': return reading.ohm === null ? `No path from ${reading.from} to ${reading.to}.` : `${Number(reading.ohm.toPrecision(4))} Ω from ${reading.from} to ${reading.to}, battery off, filaments cold.`
    case 'series-lamp': {
      const lit = showLit(reading.lamps)
      return `The series lamp of ${reading.watts} W is ${reading.lamp.class}: ${figure(reading.lamp.volts, 2)} V over it, ${figure(reading.amps, 3)} A.${lit && ` Lit behind it: ${lit}.`}`
    }
  }
}

const showOhms = (ohm: number) => ohm >= 1e6 ? `${ohm / 1e6} MΩ` : ohm >= 1e3 ? `${ohm / 1e3} kΩ` : `${ohm} Ω`
