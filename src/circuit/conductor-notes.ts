import { Ways } from '../record/index.ts'
import type { Circuit } from './circuit.ts'
import { batteryPosts, type NetElement, type NetPart, type Network } from './network.ts'

/** Less than this is nobody's current: what leaks through diodes and meters, A. */
const NOTHING_A = 1e-6

/**
 * What the conductors themselves make of the present solution of a circuit: a battery joined from post to post with no load
 * between, turned round or without its earth lead, loops without resistance whose currents nothing determines, and a setting in which nothing flows at all.
 */
export function noteConductors(circuit: Circuit): string[] {
  return [...noteShorts(circuit), ...noteEarthLead(circuit), ...noteLoops(circuit), ...noteStillness(circuit)]
}

function noteShorts(circuit: Circuit): string[] {
  const { network } = circuit
  const batteries = network.parts.filter(({ posts }) => posts)
  if (batteries.length === 0) return []
  const ways = listConducting(circuit)
  return batteries.flatMap((battery) => {
    const through = battery.posts && ways.find(battery.posts.plus, (point) => point === battery.posts?.minus)
    return through ? [sayShort(circuit, battery, through)] : []
  })
}

/** A short that is in the wiring itself is said with the vehicles that its wires are for, and what to do. */
function sayShort(circuit: Circuit, { id, part, elements }: NetPart, through: readonly string[]): string {
  const amps = Math.max(...[...elements.values()].map((e) => Math.abs(circuit.elementAmps(e))))
  const inWiring = circuit.network.wiring.shorted.find((short) => short.part === id)
  if (inWiring) return `${inWiring.sentence} (${amps.toFixed(0)} A)`
  const way = through.length > 0 ? `through ${through.join(', ')}` : 'at one point'
  return `${part.title} (${id}) is short-circuited, from post to post ${way} with no load between: ${amps.toFixed(0)} A`
}

/**
 * A battery whose earthed post joins no metal has no way back through the body; volts are then counted from that post. Where its live
 * post is on the metal instead, it is the wrong way round.
 */
function noteEarthLead(circuit: Circuit): string[] {
  const { network } = circuit
  const { points, reference, wiring } = network
  const posts = batteryPosts(network)
  if (!posts || wiring.earth === 'none' || wiring.metals.size === 0) return []
  // Where loads are on, the whole of the battery's volts stand between the post and the metal it should be on.
  const isJoined = reference !== posts.earthed && !circuit.isFloating(posts.earthed) && Math.abs(circuit.pointVolts(posts.earthed)) <= 0.9 * wiring.systemV
  if (isJoined) return []
  const isTurned = listConducting(circuit).find(posts.live, (point) => wiring.metals.has(points[point])) !== null
  if (isTurned) return [`the battery is the wrong way round: ${points[posts.live]} leads to metal, on a vehicle with its ${wiring.earth} pole earthed; take its leads off, the earthed one first, and turn it before anything is started`]
  return [`${points[posts.earthed]} leads to no metal, so nothing that is earthed there has a way back to the battery`]
}

/** A way with more than this in one place is a bad joint or a leak, and no short circuit, ohm; common practice, no source. */
const MOST_OHM = 1

/** Everything that conducts well in this solution and is there to conduct: wires, fixings, closed contacts, and points that touch. */
function listConducting({ network: { elements, points }, laws, overlay }: Circuit): Ways<number> {
  const ways = new Ways<number>()
  elements.forEach(({ id, from, to, does }, e) => { if (isConductor(does) && laws.plainS[e] >= 1 / MOST_OHM) ways.join(from, to, id) })
  for (const { from, to, ohm } of overlay.bridges) if (ohm <= MOST_OHM) ways.join(from, to, `the touch of ${points[from]} and ${points[to]}`)
  return ways
}

const isConductor = (does: NetElement['does']) => does === 'wire' || does === 'contact' || does === 'joint'

function noteLoops(circuit: Circuit): string[] {
  const loose = circuit.network.elements.filter((_, e) => Number.isNaN(circuit.elementAmps(e))).map(({ id }) => id)
  return loose.length === 0 ? [] : [`the amps of ${loose.join(', ')} are undetermined: they lie in loops of conductors without resistance`]
}

/** The one note on a solution that is no bad news: everything is switched off. */
export const STILL_NOTE = 'no current flows in this setting: every way from a source is open'

function noteStillness(circuit: Circuit): string[] {
  const { network } = circuit
  if (!hasSource(network)) return ['nothing is live: this vehicle has no battery and nothing else that gives current']
  const flows = network.elements.some(({ part }, e) => part >= 0 && Math.abs(circuit.elementAmps(e)) > NOTHING_A)
  return flows ? [] : [STILL_NOTE]
}

const hasSource = ({ elements }: Network) => elements.some(({ does }) => does === 'source')
