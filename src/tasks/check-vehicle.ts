import { buildNetwork } from '../circuit/index.ts'
import { partKinds } from '../parts/index.ts'
import type { Assumption, ShortedBattery, UnmatchedWay, Wiring } from '../record/index.ts'

/** What a person should look at in a wiring that resolved, and every value that solving it would have to assume. */
export interface CheckedWiring {
  readonly shorted: readonly ShortedBattery[]
  readonly unjoined: readonly string[]
  readonly unmatched: readonly UnmatchedWay[]
  readonly assumed: readonly Assumption[]
}

export function checkVehicle(wiring: Wiring): CheckedWiring {
  const { shorted, unjoined, unmatched } = wiring
  return { shorted, unjoined, unmatched, assumed: buildNetwork(wiring, partKinds).assumed }
}
