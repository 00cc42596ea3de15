// Records and wirings readable in one line a part and a wire:
//
//   const record = makeRecord({
//     parts: [part('battery', 'battery'), part('switch', 'control', { axes: … }), part('lamp', 'lamp', { powerW: 21 })],
//     metals: ['body'],
//     wires: [
//       wire('w1', 'battery:+', 'switch:30', { sizeMm2: 2.5, lengthMm: 800 }),
//       link('w2', 'switch:56', 'lamp:58'),                     // no resistance, no joints
//     ],
//     fixings: [fixing('f1', 'battery:-', 'body', 0)],
//   })
//   const wiring = mustResolve(record, { year: 1965 }, partKinds)
//
// The supply is 12 V, negative earth, unless `supply` says otherwise (`supply: '6+'` is 6 V, positive earth).
// Any other collection (`splices`, `looms`, `connectors`, `duties` …) is given as in the record, a map by id.
import {
  resolveVehicle, type Fits, type PartKind, type RecordPart, type RecordWire, type Vehicle, type Wiring, type WireEnd, type WiringRecord,
} from '../../src/record/index.ts'

type Fixing = NonNullable<WiringRecord['fixings']>[string]
type Named<T> = readonly [id: string, entry: T]

export interface RecordPlan extends Partial<Omit<WiringRecord, 'parts' | 'wires' | 'fixings' | 'metals' | 'supply'>> {
  readonly supply?: WiringRecord['supply'] | '6-' | '6+' | '12-' | '12+' | '24-' | '24+'
  readonly parts?: readonly Named<RecordPart>[]
  readonly metals?: readonly string[] | WiringRecord['metals']
  readonly wires?: readonly Named<RecordWire>[]
  readonly fixings?: readonly Named<Fixing>[]
}

/** A record with what the plan names, and a supply of 12 V with negative earth. */
export function makeRecord({ supply = '12-', parts = [], metals, wires, fixings, ...rest }: RecordPlan): WiringRecord {
  return {
    format: 'loomwright-record', version: 1, id: 'test', title: 'Test vehicle', ...rest,
    supply: typeof supply === 'string' ? { supply: readSupply(supply) } : supply,
    ...metals && { metals: isList(metals) ? Object.fromEntries(metals.map((id) => [id, { title: id }])) : metals },
    parts: Object.fromEntries(parts),
    ...wires && { wires: Object.fromEntries(wires) },
    ...fixings && { fixings: Object.fromEntries(fixings) },
  }
}

/** One part; its title is its id unless `more` says otherwise. */
export function part(id: string, kind: string, params?: RecordPart['params'], more: Partial<RecordPart> = {}): Named<RecordPart> {
  return [id, { kind, title: id, ...params && { params }, ...more }]
}

/** A wire between two points; `more` is the rest of the wire as in the record. */
export function wire(id: string, from: string, to: string, more: Partial<RecordWire> = {}): Named<RecordWire> {
  return [id, { ends: [{ at: from }, { at: to }], ...more }]
}

/** A wire without resistance and without joints: its ends are one node. */
export function link(id: string, from: string, to: string, more: Partial<RecordWire> = {}): Named<RecordWire> {
  const end = (at: string): WireEnd => ({ at, jointOhm: 0 })
  return [id, { ends: [end(from), end(to)], ohm: 0, ...more }]
}

/** How a part's case, or another metal, sits on a metal. */
export function fixing(id: string, point: string, metal: string, ohm?: number, more: Partial<Fixing> = {}): Named<Fixing> {
  return [id, { joins: [point, metal], ...ohm !== undefined && { ohm }, ...more }]
}

/** `fits` for a span of years. */
export function years(from?: number, to?: number): Fits {
  return [{ years: { ...from !== undefined && { from }, ...to !== undefined && { to } } }]
}

/** The wiring of one vehicle; throws with every conflict where there is none. */
export function mustResolve(record: WiringRecord, vehicle: Vehicle, kinds: readonly PartKind[]): Wiring {
  const resolved = resolveVehicle(record, vehicle, kinds)
  if (resolved.ok) return resolved.wiring
  const sentences = [...resolved.problems, ...resolved.conflicts, ...resolved.cannotTell].map(({ sentence }) => sentence)
  throw new Error(`the record does not resolve:\n${sentences.join('\n')}`)
}

function readSupply(text: string): WiringRecord['supply'][string] {
  return { systemV: Number(text.slice(0, -1)) as 6 | 12 | 24, earth: text.endsWith('+') ? 'positive' : 'negative' }
}

function isList(value: readonly string[] | object): value is readonly string[] {
  return Array.isArray(value)
}
