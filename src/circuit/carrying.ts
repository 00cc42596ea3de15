import type { Assumption, Wiring } from '../record/index.ts'
import type { Network } from './network.ts'
import type { Solution } from './solved.ts'

/** Below this an assumed resistance moves no reading: 1 mA over 1 Ω is a millivolt, A. */
const LEAST_A = 1e-3
/** The same current over a sound fixing of 1 mΩ, V. */
const LEAST_V = 1e-6

/**
 * What carries current in any of these solutions, by id: parts, wires, fixings, and the pairs of ways that meet. A battery
 * counts whatever it gives, since its volts stand behind every reading.
 */
export function listCarrying({ wiring, parts }: Network, solutions: readonly Solution[]): ReadonlySet<string> {
  const batteries = parts.filter(({ posts }) => posts).map(({ id }) => id)
  return new Set([...batteries, ...solutions.flatMap((solution) => carryingIn(wiring, solution))])
}

function carryingIn({ fixings, matings }: Wiring, { wires, elements, voltages }: Solution): string[] {
  const flowing = (results: Readonly<Record<string, { readonly amps: number | null }>>) =>
    Object.keys(results).filter((id) => Math.abs(results[id].amps ?? 0) > LEAST_A)
  const joins = [...fixings.values(), ...matings.values()].filter(({ joins: [a, b] }) => Math.abs((voltages[a] ?? 0) - (voltages[b] ?? 0)) > LEAST_V)
  return [...flowing(wires), ...flowing(elements).map((id) => id.split('.')[0]), ...joins.map(({ id }) => id)]
}

/** Whether an assumption bears on an answer in which only these carry current; what is assumed of the vehicle as a whole does. */
export function bearsOn({ path }: Assumption, carrying: ReadonlySet<string>): boolean {
  const [collection, id, way] = path.split('.')
  switch (collection) {
    case 'parts':
    case 'wires':
    case 'fixings': return carrying.has(id)
    case 'connectors': return carrying.has(`${id}.${way}`)
    // A duty says what should work, and moves nothing.
    case 'duties': return false
    default: return true
  }
}
