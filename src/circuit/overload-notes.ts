import type { Wiring, WiringWire } from '../record/index.ts'
import { ampacityRules, findAmbientFactor, findAmpacity, findConductor, nameSource, shortTimeK, shortTimeRows, type AmpacityRuleName } from '../standards/index.ts'
import { statedSize } from './join-elements.ts'
import type { Network } from './network.ts'
import { engineMode, positionsOf } from './positions.ts'
import type { Setting, Solution } from './solved.ts'

/** Copper of a wire, the most that any table of single cables lets it carry, A, and which; 0 where no table reaches its size. */
interface Bearing { readonly areaMm2: number; readonly mostA: number; readonly said: string }

/** Less than this spoils no wire of any table, A. */
const HARMLESS_A = 5
/** The temperatures of short-time ratings: warmed through at its limit, and what spoils the covering at once. */
const PVC = shortTimeRows.find(({ insulation }) => insulation === 'PVC 70 C') as (typeof shortTimeRows)[number]
const AMBIENT_C = 30
/** Beyond this no short-time rating holds, as heat then leaves the wire. */
const SHORT_S = 5
/** A rise goes with the square of the amps: this many times the rating, and PVC settles where it is spoilt at once, 1.80. */
const SPOILS = mustFindFactor()

/**
 * Wires whose present current spoils their covering, with the figure and its source: within seconds by the short-time law
 * of copper, t = (k S / I)², or for good by the rating of one cable in free air. The latter is not said while the engine is
 * cranked or a spring-loaded control is held, which nobody does for the minutes that it takes. A bare wire has nothing to spoil.
 */
export function noteOverloads(network: Network, setting: Setting, { wires }: Solution): string[] {
  const over = Object.entries(wires).filter(([, { amps }]) => Math.abs(amps ?? 0) > HARMLESS_A)
  if (over.length === 0) return []
  const isBrief = engineMode(setting.engine, network.wiring.engine) === 'cranking' || holdsSpring(network, setting)
  return over.flatMap(([id, { amps }]) => sayOverload(network.wiring, id, Math.abs(amps ?? 0), isBrief))
}

function holdsSpring({ parts, wiring }: Network, setting: Setting): boolean {
  return parts.some((part) => {
    const at = positionsOf(part, setting, wiring.engine)
    return (part.model.axes ?? []).some(({ id, springsFrom = [] }) => springsFrom.includes(String(at.get(id))))
  })
}

function sayOverload(wiring: Wiring, id: string, amps: number, isBrief: boolean): string[] {
  const bearing = bearingOf(wiring, id)
  if (!bearing) return []
  const seconds = (shortTimeK(AMBIENT_C, PVC.endC) * bearing.areaMm2 / amps) ** 2
  const carries = `wire ${id} carries ${amps.toFixed(0)} A in ${Number(bearing.areaMm2.toFixed(2))} mm²`
  const against = bearing.mostA > 0 ? `, where the most that any table gives one cable in free air is ${bearing.mostA.toFixed(0)} A (${bearing.said})` : ''
  if (seconds <= SHORT_S) return [`${carries}${against}: it burns, its covering is spoilt within ${Math.ceil(seconds)} s (k²S²/I², ${nameSource(PVC.source)})`]
  return !isBrief && bearing.mostA > 0 && amps > SPOILS * bearing.mostA ? [`${carries}${against}: it gets so hot that its covering is spoilt`] : []
}

const known = new WeakMap<Wiring['wires'], Map<string, Bearing | null>>()

/** Found once for each wire of a wiring that ever carries much; null where its size is not stated. */
function bearingOf({ wires }: Wiring, id: string): Bearing | null {
  const found = known.get(wires) ?? new Map<string, Bearing | null>()
  known.set(wires, found)
  if (!found.has(id)) found.set(id, findBearing(wires.get(id) as WiringWire))
  return found.get(id) ?? null
}

function findBearing(wire: WiringWire): Bearing | null {
  const size = statedSize(wire)
  const cable = wire.cable === 'unknown' ? undefined : wire.cable
  const conductor = size && wire.colour !== 'bare' ? findConductor(size, cable) : null
  if (!size || !conductor?.ok) return null
  const single = (Object.keys(ampacityRules) as AmpacityRuleName[]).filter((rule) => ampacityRules[rule].single)
  const ratings = single.map((rule) => findAmpacity({ size, ...cable !== undefined && { cable }, rule })).filter((one) => one.ok)
  const most = ratings.sort((a, b) => b.amps - a.amps).at(0)
  return { areaMm2: conductor.areaMm2, mostA: most?.amps ?? 0, said: most ? `${ampacityRules[most.rule].title}; ${nameSource(most.source)}` : '' }
}

function mustFindFactor(): number {
  const found = findAmbientFactor({ limitC: PVC.endC, ambientC: AMBIENT_C, ratedAtC: AMBIENT_C, ratedLimitC: PVC.startC })
  if (!found.ok) throw new RangeError(found.sentence)
  return found.factor
}
