import { COLLECTIONS, mapIn } from './collections.ts'
import { inIdOrder } from './compare-ids.ts'
import { showPath, valueAt, type JsonObject, type Path } from './path.ts'
import { listReferences } from './references.ts'
import { assume, clash, party, type Resolving } from './resolving.ts'
import type { Fits, RecordWire, WireEnd, WiringRecord } from './schema.ts'
import type { Wiring, WiringEnd, WiringFixing, WiringPart, WiringWire } from './wiring.ts'

type Parts = ReadonlyMap<string, WiringPart>

/** Something that is pointed to and not in this vehicle, with its own condition. */
interface Absent { readonly what: string; readonly of: Path; readonly fits?: Fits; readonly owner: string }

/**
 * The wires and fixings of this vehicle. Whatever points to a thing, or to a terminal, that is not in the vehicle is a
 * conflict; but where one of the two is there by exception, its end hangs loose and a fixing is left out, and that is
 * written down.
 */
export function checkPresence(resolving: Resolving, kept: WiringRecord, parts: Parts): Pick<Wiring, 'wires' | 'fixings'> {
  const loose = new Map<string, Absent>()
  for (const reference of listReferences(kept)) {
    const absent = reference.kind === 'item' ? findAbsentItem(resolving, kept, reference.id) : findAbsentPoint(resolving, kept, parts, reference.point)
    if (!absent) continue
    const [collection, id] = reference.at
    const isExcepted = reference.kind === 'point' && (resolving.exceptions.has(id) || resolving.exceptions.has(absent.owner))
    if (isExcepted) loose.set(showPath(reference.at), absent)
    else {
      const parties = [party([collection, id], valueAt(kept, [collection, id, 'fits']) as Fits | undefined), party(absent.of, absent.fits)]
      clash(resolving, reference.at, 'not in this vehicle', `it points to ${absent.what}, which is not in this vehicle`, parties)
    }
  }
  return {
    wires: new Map(inIdOrder(kept.wires).map(([id, wire]) => [id, makeWire(resolving, id, wire, loose)])),
    fixings: new Map(inIdOrder(kept.fixings).flatMap(([id, fixing]) => isLeftOut(resolving, id, loose) ? [] : [[id, makeFixing(id, fixing)] as const])),
  }
}

function findAbsentItem(resolving: Resolving, kept: WiringRecord, id: string): Absent | undefined {
  const collection = COLLECTIONS.find((name) => Object.hasOwn(mapIn(resolving.record, name), id))
  if (!collection) throw new RangeError(`nothing has the id ${id} in record ${resolving.record.id}`)
  if (Object.hasOwn(mapIn(kept, collection), id) || isOpen(resolving, [collection, id])) return undefined
  const { fits } = mapIn(resolving.record, collection)[id] as JsonObject
  return { what: id, of: [collection, id], fits: fits as unknown as Fits | undefined, owner: id }
}

function findAbsentPoint(resolving: Resolving, kept: WiringRecord, parts: Parts, point: string): Absent | undefined {
  const colon = point.indexOf(':')
  const owner = colon < 0 ? point : point.slice(0, colon)
  const absent = findAbsentItem(resolving, kept, owner)
  if (absent || colon < 0) return absent && { ...absent, what: point }
  const part = parts.get(owner)
  const end = point.slice(colon + 1)
  if (!part || part.terminals.has(end) || isOpen(resolving, ['parts', owner, 'terminals', end])) return undefined
  const declared = valueAt(resolving.record, ['parts', owner, 'terminals', end]) as { fits?: Fits } | undefined
  return declared ? { what: point, of: ['parts', owner, 'terminals', end], fits: declared.fits, owner }
    : { what: point, of: ['parts', owner], fits: resolving.record.parts[owner].fits, owner }
}

/** What cannot be told is reported as that, and is no reason for a conflict. */
function isOpen({ cannotTell }: Resolving, path: Path): boolean {
  return cannotTell.some(({ at }) => path.length === at.length && at.every((key, i) => key === path[i]))
}

function makeWire(resolving: Resolving, id: string, wire: RecordWire, loose: ReadonlyMap<string, Absent>): WiringWire {
  const { ends: [first, second], fits: _fits, note: _note, ...rest } = wire
  const end = (i: number, stated: WireEnd) => makeEnd(resolving, ['wires', id, 'ends', String(i)], stated, loose)
  return { id, ...rest, ends: [end(0, first), end(1, second)] }
}

function makeEnd(resolving: Resolving, at: Path, { at: stated, ...rest }: WireEnd, loose: ReadonlyMap<string, Absent>): WiringEnd {
  if (typeof stated !== 'string') return { ...rest, at: null, state: stated.state, place: stated.place }
  const absent = loose.get(showPath([...at, 'at']))
  if (!absent) return { ...rest, at: stated, state: 'joined' }
  const why = `${absent.what} is not in this vehicle, so this end of a wire that is there by exception, or met it, joins nothing`
  assume(resolving, { path: showPath(at), value: 'loose', why, source: 'the vehicle' })
  const place = valueAt(resolving.record, ['parts', absent.owner, 'place']) as string | undefined
  return { ...rest, at: null, state: 'loose', ...place !== undefined && { place } }
}

function makeFixing(id: string, { joins, title, ohm }: NonNullable<WiringRecord['fixings']>[string]): WiringFixing {
  return { id, joins, ...title !== undefined && { title }, ...ohm !== undefined && { ohm } }
}

function isLeftOut(resolving: Resolving, id: string, loose: ReadonlyMap<string, Absent>): boolean {
  const absent = ['0', '1'].map((i) => loose.get(showPath(['fixings', id, 'joins', i]))).find((found) => found !== undefined)
  if (absent) assume(resolving, { path: `fixings.${id}`, value: 'left out', why: `${absent.what} is not in this vehicle`, source: 'the vehicle' })
  return absent !== undefined
}
