import { groupUnmatched } from '../record/index.ts'
import type { Picked } from './live-facts.ts'
import type { LiveVehicle } from './live-vehicle.ts'
import { sayPoint } from './say-point.ts'

/** Something about the wiring, in whatever setting, that a person should look at, and the things that it is about; a quiet one can wait, as a socket with nothing plugged in. */
export interface Check { readonly said: string; readonly why: string; readonly picks: readonly { readonly pick: Picked; readonly said: string }[]; readonly isQuiet?: true }

/** What is short-circuited, and what nothing is joined to. */
export function listChecks({ wiring }: LiveVehicle): Check[] {
  const { shorted, unjoined, unmatched } = wiring
  const pickOf = (id: string): Picked => ({ kind: wiring.wires.has(id) ? 'wire' : wiring.parts.has(id.split(':')[0]) ? 'part' : 'splice', id: id.split(':')[0] })
  return [
    ...shorted.map(({ part, through }): Check => ({
      said: `${wiring.parts.get(part)?.title ?? part} is short-circuited, from post to post with no load between, through`, why: '',
      picks: through.filter((id) => !wiring.fixings.has(id)).map((id) => ({ pick: pickOf(id), said: wiring.wires.has(id) ? `wire ${id}` : sayPoint(wiring, id) })),
    })),
    ...unjoined.length === 0 ? [] : [{
      said: 'Nothing is joined to', why: 'unused, or a wire or an earth is missing', picks: unjoined.map((point) => ({ pick: pickOf(point), said: sayPoint(wiring, point) })),
    }],
    ...groupUnmatched(unmatched).map(({ title, ways, wires, why, isAlone }): Check => ({
      said: isAlone ? `${title}: nothing is plugged in or joined to it` : `${title}, ${ways.length === 1 ? 'way' : 'ways'} ${ways.join(', ')}: nothing meets ${ways.length === 1 ? 'it' : 'them'}`,
      why: isAlone ? '' : why, ...isAlone && { isQuiet: true }, picks: wires.map((id) => ({ pick: pickOf(id), said: `wire ${id}` })),
    })),
  ]
}
