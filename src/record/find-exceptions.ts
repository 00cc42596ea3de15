import { COLLECTIONS, mapIn, type Collection } from './collections.ts'
import type { JsonObject } from './path.ts'
import type { Edition, Vehicle, WiringRecord } from './schema.ts'

/**
 * Which items are judged as of which other edition. An exception carries along whatever shares the role of the item it
 * names, and with a loom its wires, splices and connector halves. An item named by itself comes before one carried along.
 */
export function findExceptions(record: WiringRecord, vehicle: Vehicle): ReadonlyMap<string, Edition> {
  const carried = new Map<string, Edition>()
  const named = new Map<string, Edition>()
  for (const { item, asOf } of vehicle.exceptions ?? []) {
    const edition = layOver(vehicle, asOf)
    named.set(item, edition)
    const collection = COLLECTIONS.find((name) => Object.hasOwn(mapIn(record, name), item))
    if (!collection) continue
    const alike = shareRole(record, collection, item)
    const along = collection === 'looms' ? alike.flatMap((loom) => listOfLoom(record, loom)) : []
    for (const id of [...alike, ...along]) carried.set(id, edition)
  }
  return new Map([...carried, ...named])
}

/** What the other edition does not state is as in the vehicle, save the time: another year or number replaces both. */
function layOver({ year, serials, market, options }: Edition, asOf: Edition): Edition {
  const time = asOf.year !== undefined || asOf.serials ? { year: asOf.year, serials: asOf.serials } : { year, serials }
  return { ...time, market: asOf.market ?? market, options: { ...options, ...asOf.options } }
}

function shareRole(record: WiringRecord, collection: Collection, item: string): string[] {
  const map = mapIn(record, collection)
  const { role } = map[item] as JsonObject
  return role === undefined ? [item] : Object.keys(map).filter((id) => (map[id] as JsonObject).role === role)
}

function listOfLoom(record: WiringRecord, loom: string): string[] {
  return (['wires', 'splices', 'halves'] as const).flatMap((collection) => {
    const map = mapIn(record, collection)
    return Object.keys(map).filter((id) => (map[id] as JsonObject).loom === loom)
  })
}
