import { inIdOrder } from './compare-ids.ts'
import { COLLECTIONS, mapIn } from './collections.ts'
import type { Edit } from './edit.ts'
import type { WiringRecord } from './schema.ts'

/** The edits that take an item out with the claims about its values. What still points to it makes them be refused. */
export function editsToRemove(record: WiringRecord, id: string): Edit[] {
  const collection = COLLECTIONS.find((name) => Object.hasOwn(mapIn(record, name), id))
  if (!collection) throw new RangeError(`nothing has the id ${id} in record ${record.id}`)
  const claims = inIdOrder(record.claims).filter(([, { about }]) => about[0] === collection && about[1] === id && about.length > 2)
  return [...claims.map(([claim]): Edit => ({ kind: 'remove', path: ['claims', claim] })), { kind: 'remove', path: [collection, id] }]
}
