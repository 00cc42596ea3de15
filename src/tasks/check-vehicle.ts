import { buildNetwork } from '../circuit/index.ts'
import { partKinds } from '../parts/index.ts'
import type { Assumption, Overlap, ShortedBattery, UnmatchedWay, Wiring } from '../record/index.ts'

/** What a person should look at in a wiring that resolved, and every value that solving it would have to assume. */
export interface CheckedWiring {
  readonly supply: string
  readonly counts: Readonly<Record<'parts' | 'wires' | 'splices' | 'looms', number>>
  readonly shorted: readonly ShortedBattery[]
  readonly overlapping: readonly Overlap[]
  readonly unjoined: readonly string[]
  /** Of these, the ends of batteries and generators: without them nothing works. */
  readonly cutOff: readonly string[]
  readonly unmatched: readonly UnmatchedWay[]
  readonly assumed: readonly Assumption[]
}

export function checkVehicle(wiring: Wiring): CheckedWiring {
  const { systemV, earth, parts, wires, splices, looms, shorted, overlapping, unjoined, unmatched } = wiring
  const network = buildNetwork(wiring, partKinds)
  const sources = new Set(network.parts.filter(({ model }) => model.elements.some(({ does }) => does === 'source')).map(({ id }) => id))
  return {
    supply: `${systemV} V, ${earth === 'none' ? 'insulated return' : `${earth} earth`}`,
    counts: { parts: parts.size, wires: wires.size, splices: splices.size, looms: looms.size },
    shorted, overlapping, unjoined, cutOff: unjoined.filter((point) => sources.has(point.split(':')[0])), unmatched, assumed: network.assumed,
  }
}
