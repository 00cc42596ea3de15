import type { Assumption, Default, Wiring, WiringEnd, WiringFixing, WiringWire } from '../record/index.ts'
import { DEFAULT_LENGTH_MM, measureWires, type WireRoute } from '../routes/index.ts'
import { findConductor, nameSource, partDefaults, type Conductor, type ConductorSize, type PartDefault } from '../standards/index.ts'

/** A plain resistance between two points: a wire with its two joints, a fixing, or two ways that meet. */
export interface JoinElement { readonly id: string; readonly from: string; readonly to: string; readonly ohm: number }

/** A wire's copper: its ohms at 20 °C without joints, its length and area where they are known, and on whose word the ohms are. */
export interface WireConductor { readonly ohm: number; readonly lengthMm: number | null; readonly areaMm2: number | null; readonly source: string }

/** A wire's joint at one end, ohm, and on whose word; none where the end is loose or unknown. */
export interface WireJoint { readonly ohm: number; readonly source: string }

/** The copper of one wire of a wiring and the joints at its two ends, as the network counts them. */
export function describeConductor(wiring: Wiring, wire: WiringWire): WireConductor & { readonly joints: readonly [WireJoint | null, WireJoint | null] } {
  const conductor = conductorOf(wiring, wire, measureWires(wiring).get(wire.id) as WireRoute, [])
  const usual = usualJoint(wiring, conductor.areaMm2)
  const jointAt = ({ at, jointOhm }: WiringEnd): WireJoint | null => {
    if (at === null) return null
    return typeof jointOhm === 'number' ? { ohm: jointOhm, source: 'the record' } : { ohm: usual.value, source: usual.source }
  }
  return { ...conductor, joints: [jointAt(wire.ends[0]), jointAt(wire.ends[1])] }
}

const PRACTICE = 'common practice, no source'
/** Size taken for a wire of which nothing is known, mm². */
const DEFAULT_MM2 = 1

/** All resistances of a wiring that belong to no part. What had to be assumed is added to `assumed`. */
export function joinElements(wiring: Wiring, assumed: Assumption[]): JoinElement[] {
  const routes = measureWires(wiring)
  const onMetal = recordOr(wiring.assume.fixingOhm, wiring, partDefaults.fixingMohm)
  const take = (value: number | 'unknown' | undefined, fallback: Default, path: string): number => {
    if (typeof value === 'number') return value
    assumed.push({ path, ...fallback })
    return fallback.value
  }
  const fixing = ({ id, joins: [from, to], ohm }: WiringFixing, fallback: Default, path: string): JoinElement =>
    ({ id, from, to, ohm: take(ohm, fallback, `${path}.${id}.ohm`) })
  const wire = (one: WiringWire): JoinElement => {
    const { ohm, areaMm2 } = conductorOf(wiring, one, routes.get(one.id) as WireRoute, assumed)
    const atEnd = usualJoint(wiring, areaMm2)
    const joints = one.ends.map((end, i) => (end.at === null ? 0 : take(end.jointOhm, atEnd, `wires.${one.id}.ends.${i}.jointOhm`)))
    return { id: one.id, from: endPoint(one, 0), to: endPoint(one, 1), ohm: ohm + joints[0] + joints[1] }
  }
  return [
    ...[...wiring.wires.values()].map(wire),
    ...[...wiring.fixings.values()].map((one) => fixing(one, onMetal, 'fixings')),
    ...[...wiring.matings.values()].map((one) => fixing(one, usualJoint(wiring, null), 'connectors')),
  ]
}

/** What the record's owner assumes, or the general default. */
function recordOr(value: number | undefined, { assume }: Wiring, usual: PartDefault): Default {
  return value === undefined ? { value: usual.value / 1000, why: usual.item, source: nameSource(usual.source) } : { value, why: assume.why ?? 'assumed throughout', source: 'the record' }
}

/** The point at which an end of a wire sits; an end that is loose or unknown is a point of its own, `wire.1` or `wire.2`. */
export function endPoint(wire: { readonly id: string; readonly ends: readonly WiringEnd[] }, end: 0 | 1): string {
  return wire.ends[end].at ?? `${wire.id}.${end + 1}`
}

/** A heavy lug has more face than a crimp of loom wire: above this size its default falls as the copper grows. Common practice, no source. */
const LOOM_MM2 = 6

/** The joint of an end of which nothing is stated; what the record's owner assumes holds for every size. */
function usualJoint(wiring: Wiring, areaMm2: number | null): Default {
  const joint = recordOr(wiring.assume.jointOhm, wiring, partDefaults.jointMohm)
  return areaMm2 === null || wiring.assume.jointOhm !== undefined ? joint : { ...joint, value: joint.value * Math.min(1, LOOM_MM2 / areaMm2) }
}

/** Ohms of a wire's conductor at 20 °C, as measured, else from its stated size and its length; its copper, null where only the ohms are stated. */
function conductorOf(wiring: Wiring, wire: WiringWire, route: WireRoute, assumed: Assumption[]): WireConductor {
  const { lengthMm } = route
  if (typeof wire.ohm === 'number') return { ohm: wire.ohm, lengthMm, areaMm2: typeof wire.sizeMm2 === 'number' ? wire.sizeMm2 : null, source: 'the record' }
  if (wiring.assume.wireOhm !== undefined) return { ohm: wiring.assume.wireOhm, lengthMm, areaMm2: null, source: 'the record' }
  assumed.push(...route.assumed)
  const found = copperOf(wire, assumed)
  const source = nameSource(found.source)
  assumed.push({ path: `wires.${wire.id}.ohmPerM`, value: found.ohmPerM, why: found.why, source })
  return { ohm: found.ohmPerM * (lengthMm ?? DEFAULT_LENGTH_MM) / 1000, lengthMm, areaMm2: found.areaMm2, source }
}

/** The row of the tables for a wire's size and cable, or for the default size where its own cannot be read. */
function copperOf(wire: WiringWire, assumed: Assumption[]): Conductor {
  const cable = cableOf(wire, assumed)
  const found = findConductor(sizeOf(wire, assumed), cable)
  if (found.ok) return found
  assumed.push({ path: `wires.${wire.id}.sizeMm2`, value: DEFAULT_MM2, why: found.sentence, source: PRACTICE })
  const usual = findConductor({ mm2: DEFAULT_MM2 }, cable)
  if (!usual.ok) throw new RangeError(usual.sentence)
  return usual
}

function cableOf({ id, cable }: WiringWire, assumed: Assumption[]): string | undefined {
  if (cable !== 'unknown') return cable
  assumed.push({ path: `wires.${id}.cable`, value: 'any of this size', why: 'stated as unknown', source: PRACTICE })
  return undefined
}

function sizeOf(wire: WiringWire, assumed: Assumption[]): ConductorSize {
  const stated = statedSize(wire)
  if (stated) return stated
  const isStated = wire.sizeMm2 === 'unknown' || wire.copperDiameterMm === 'unknown'
  assumed.push({ path: `wires.${wire.id}.sizeMm2`, value: DEFAULT_MM2, why: isStated ? 'stated as unknown' : 'no size is stated', source: PRACTICE })
  return { mm2: DEFAULT_MM2 }
}

/** A wire's size as the record gives it, null where it gives none. */
export function statedSize({ sizeMm2, sizeAwg, sizeStrands, copperDiameterMm }: WiringWire): ConductorSize | null {
  if (typeof sizeMm2 === 'number') return { mm2: sizeMm2 }
  if (sizeAwg !== undefined) return { awg: sizeAwg }
  if (sizeStrands !== undefined) return { strands: sizeStrands }
  return typeof copperDiameterMm === 'number' ? { diameterMm: copperDiameterMm } : null
}
