import { UnionFind } from '../math/index.ts'
import type { Circuit } from './circuit.ts'
import type { NetElement } from './network.ts'

/** Share of its rated volts at which a load is fed: a lamp glows faintly. */
const FED = 0.1
/** Volts from which a person calls a point live whatever feeds it. */
const LIVE_V = 1

/**
 * Points of the present solution that closed conductors alone join neither to a source nor to the reference, and at which no load
 * or winding is fed. Current passes there all the same: with the dipped beam on, the drop of the earth wire sends some through the
 * cold main filaments into a wire that a person calls dead.
 */
export function findStray(circuit: Circuit): string[] {
  const { network: { points, elements, reference }, laws, overlay } = circuit
  const joined = new UnionFind(points.length)
  elements.forEach(({ from, to, does }, e) => { if (isConductor(does) && laws.open[e] === 0) joined.join(from, to) })
  for (const { from, to } of overlay.bridges) joined.join(from, to)
  const known = new Set([joined.find(reference)])
  for (const element of elements) if (element.does === 'source' || isFed(circuit, element)) known.add(joined.find(element.from)).add(joined.find(element.to))
  return points.filter((name, point) => !name.includes(':~') && !circuit.isFloating(point) && Math.abs(circuit.pointVolts(point)) < LIVE_V && !known.has(joined.find(point)))
}

const isConductor = (does: NetElement['does']) => does !== 'source' && does !== 'load' && does !== 'winding'

function isFed(circuit: Circuit, { from, to, does, spec }: NetElement): boolean {
  return (does === 'load' || does === 'winding') && Math.abs(circuit.pointVolts(from) - circuit.pointVolts(to)) >= FED * (spec?.ratedV ?? circuit.network.wiring.systemV)
}
