import { COLLECTIONS, mapIn } from './collections.ts'
import { inIdOrder } from './compare-ids.ts'
import { nearest } from './nearest.ts'
import { isObject, type Path } from './path.ts'
import { makeProblem, saidProblem, showNames, showValue, type Problem } from './problem.ts'
import { vehicleSchema, type Edition, type Vehicle, type WiringRecord } from './schema.ts'
import { placeSerial } from './serial-order.ts'
import { checkShape } from './shape-problems.ts'

/** What a description of a vehicle names that the record does not know, with the names that it does. */
export function findVehicleProblems(vehicle: Vehicle, record: WiringRecord): Problem[] {
  const { problems } = checkShape(vehicle, vehicleSchema)
  if (problems.length > 0) return [...problems]
  const exceptions = (vehicle.exceptions ?? []).flatMap(({ item, asOf }, i) => [
    ...findItemProblem(['exceptions', String(i), 'item'], item, record), ...findEditionProblems(['exceptions', String(i), 'asOf'], asOf, record),
  ])
  return [...findEditionProblems([], vehicle, record), ...exceptions]
}

function findEditionProblems(at: Path, { market, options, serials }: Edition, record: WiringRecord): Problem[] {
  const names = (map: object | undefined) => inIdOrder(map as Readonly<Record<string, unknown>>).map(([id]) => id)
  return [
    ...market === undefined ? [] : findNameProblem([...at, 'market'], market, names(record.markets), 'market'),
    ...names(options).flatMap((option) => findNameProblem([...at, 'options', option], option, names(record.options), 'option')),
    ...inIdOrder(serials).flatMap(([id, serial]) => [
      ...findNameProblem([...at, 'serials', id], id, names(record.serials), 'serial series'),
      ...findSerialProblem([...at, 'serials', id], id, serial, record),
    ]),
  ]
}

function findNameProblem(at: Path, name: string, names: readonly string[], word: string): Problem[] {
  if (names.includes(name)) return []
  const expected = names.length === 0 ? `no ${word}: the record has none` : `${/^[aeiou]/.test(word) ? 'an' : 'a'} ${word} of the record: ${showNames(names)}`
  return [makeProblem(at, expected, showValue(name), () => nearest(name, names))]
}

function findSerialProblem(at: Path, id: string, serial: string, record: WiringRecord): Problem[] {
  const series = record.serials && Object.hasOwn(record.serials, id) ? record.serials[id] : undefined
  if (!series?.prefixes || placeSerial(serial, series)) return []
  const prefixes = `${showNames(series.prefixes)} and a number`
  return [saidProblem(at, prefixes, showValue(serial), `${serial} is no number of this series, which has ${prefixes}`)]
}

/** Only what can have its own condition can be of another edition. */
function findItemProblem(at: Path, item: string, record: WiringRecord): Problem[] {
  const collections = COLLECTIONS.filter((name) => !['serials', 'markets', 'options', 'supply', 'engine', 'limits', 'claims'].includes(name))
  const ids = collections.flatMap((collection) => Object.keys(mapIn(record, collection)))
  if (ids.includes(item)) return []
  const some = collections.filter((collection) => isObject(record[collection])).join(', ')
  return [makeProblem(at, `the id of something in ${some}`, showValue(item), () => nearest(item, ids))]
}
