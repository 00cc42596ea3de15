import type { Assumption, WiringFixing } from '../record/index.ts'
import type { Circuit } from './circuit.ts'
import type { Solution } from './solved.ts'

/** Below this an assumed resistance moves no reading: 1 mA over 1 Ω is a millivolt, A. */
const LEAST_A = 1e-3
/** The same current over a sound fixing of 1 mΩ, V. */
const LEAST_V = 1e-6

/**
 * What carries current in any of these solutions, by id: parts, wires, fixings, and the pairs of ways that meet. A battery
 * counts whatever it gives, since its volts stand behind every reading.
 */
export function listCarrying({ network, overlay: { opened } }: Pick<Circuit, 'network' | 'overlay'>, solutions: readonly Solution[]): ReadonlySet<string> {
  const { wiring: { fixings, matings }, parts, elementOf } = network
  const batteries = parts.filter(({ posts }) => posts).map(({ id }) => id)
  const closed = [...fixings.values(), ...matings.values()].filter(({ id }) => !opened.has(elementOf.get(id) as number))
  return new Set([...batteries, ...solutions.flatMap((solution) => carryingIn(closed, solution))])
}

function carryingIn(fixings: readonly WiringFixing[], { wires, elements, voltages }: Solution): string[] {
  const flowing = (results: Readonly<Record<string, { readonly amps: number | null }>>) =>
    Object.keys(results).filter((id) => Math.abs(results[id].amps ?? 0) > LEAST_A)
  const joins = fixings.filter(({ joins: [a, b] }) => Math.abs((voltages[a] ?? 0) - (voltages[b] ?? 0)) > LEAST_V)
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
