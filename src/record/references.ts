import { inIdOrder } from './compare-ids.ts'
import type { Collection } from './collections.ts'
import type { Path } from './path.ts'
import type { RecordLoom, RecordWire, WiringRecord } from './schema.ts'

/** One place in a record that names something else: an item by its id, or the point at which a wire or a fixing ends. */
export type Reference =
  | { readonly kind: 'item'; readonly at: Path; readonly id: string; readonly among: Collection }
  | { readonly kind: 'point'; readonly at: Path; readonly point: string }

/**
 * Everything that the wires, parts, looms and so on of a record point to. Reading checks that it exists at all,
 * resolving checks that it exists in one vehicle. Duties, limits and claims are not among it: see their own files.
 */
export function listReferences(record: WiringRecord): Reference[] {
  return [
    ...each(record.parts, 'parts', (part, at) => maybe([...at, 'place'], part.place, 'places')),
    ...each(record.splices, 'splices', (splice, at) => [
      ...maybe([...at, 'place'], splice.place, 'places'), ...maybe([...at, 'loom'], splice.loom, 'looms'),
    ]),
    ...each(record.connectors, 'connectors', (connector, at) => maybe([...at, 'place'], connector.place, 'places')),
    ...each(record.halves, 'halves', (half, at) => [
      item([...at, 'connector'], half.connector, 'connectors'), ...maybe([...at, 'loom'], half.loom, 'looms'),
    ]),
    ...each(record.wires, 'wires', listWireReferences),
    ...each(record.fixings, 'fixings', (fixing, at) => [
      ...fixing.joins.map((point, i) => pointAt([...at, 'joins', String(i)], point)), ...maybe([...at, 'place'], fixing.place, 'places'),
    ]),
    ...each(record.looms, 'looms', listLoomReferences),
    ...each(record.runs, 'runs', (run, at) => [
      item([...at, 'from'], run.from, 'places'), item([...at, 'to'], run.to, 'places'),
      ...items([...at, 'passages'], run.passages, 'passages'), ...maybe([...at, 'besideMetal'], run.besideMetal, 'metals'),
    ]),
  ]
}

function listWireReferences(wire: RecordWire, at: Path): Reference[] {
  const ends = wire.ends.flatMap((end, i): Reference[] => {
    const path = [...at, 'ends', String(i), 'at']
    return typeof end.at === 'string' ? [pointAt(path, end.at)] : maybe([...path, 'place'], end.at.place, 'places')
  })
  const loom = wire.loom === 'separate' ? [] : maybe([...at, 'loom'], wire.loom, 'looms')
  return [...ends, ...loom, ...items([...at, 'runs'], wire.runs, 'runs')]
}

function listLoomReferences(loom: RecordLoom, at: Path): Reference[] {
  return [
    ...inIdOrder(loom.points).flatMap(([id, point]) => maybe([...at, 'points', id, 'place'], point.place, 'places')),
    ...inIdOrder(loom.lies).flatMap(([id, lie]) => items([...at, 'lies', id, 'runs'], lie.runs, 'runs')),
  ]
}

function each<T>(
  map: Readonly<Record<string, T>> | undefined, collection: Collection, list: (entry: T, at: Path) => Reference[],
): Reference[] {
  return inIdOrder(map).flatMap(([id, entry]) => list(entry, [collection, id]))
}

function item(at: Path, id: string, among: Collection): Reference {
  return { kind: 'item', at, id, among }
}

function items(at: Path, ids: readonly string[] | undefined, among: Collection): Reference[] {
  return (ids ?? []).map((id, i) => item([...at, String(i)], id, among))
}

/** A place may be stated as unknown, and then points nowhere. */
function maybe(at: Path, id: string | undefined, among: Collection): Reference[] {
  return id === undefined || id === 'unknown' ? [] : [item(at, id, among)]
}

function pointAt(at: Path, point: string): Reference {
  return { kind: 'point', at, point }
}
