import { partKinds } from '../parts/index.ts'
import { resolveVehicle, type CannotTell, type Conflict, type Vehicle, type WiringRecord } from '../record/index.ts'
import { checkVehicle, type CheckedWiring } from './check-vehicle.ts'
import { listSpecimens, type Specimen } from './list-specimens.ts'

/** One edition of a record by the vehicle that stands for it: what to look at in its wiring, or why it has none. */
export type CheckedEdition = Specimen & (
  | { readonly ok: true } & CheckedWiring
  | { readonly ok: false; readonly conflicts: readonly Conflict[]; readonly cannotTell: readonly CannotTell[] }
)

export interface CheckedEditions {
  readonly editions: readonly CheckedEdition[]
  /** Years before the first supply and after the last: of these the record has no vehicle, and nothing is checked. */
  readonly outside: readonly Specimen['span'][]
  readonly rule: string
  readonly leftOut: number
}

/** Checks one vehicle for each edition of the record that agrees with what is stated. */
export function checkEditions(record: WiringRecord, stated: Vehicle): CheckedEditions {
  const { specimens, rule, leftOut } = listSpecimens(record, stated)
  const checked = passImpossible(specimens.map((specimen) => checkSpecimen(record, specimen)))
  const first = checked.findIndex(hasSupply), last = checked.findLastIndex(hasSupply)
  if (first < 0) return { editions: checked, outside: [], rule, leftOut }
  const begin = checked.findIndex(({ span }) => span === checked[first].span), end = checked.findLastIndex(({ span }) => span === checked[last].span)
  const outside = [...checked.slice(0, begin), ...checked.slice(end + 1)]
  return { editions: checked.slice(begin, end + 1), outside: [...new Set(outside.map(({ span }) => span))], rule, leftOut }
}

function checkSpecimen(record: WiringRecord, specimen: Specimen): CheckedEdition {
  const resolved = resolveVehicle(record, specimen.vehicle, partKinds)
  if (resolved.ok) return { ...specimen, ok: true, ...checkVehicle(resolved.wiring) }
  if (resolved.problems.length > 0) throw new Error(`a vehicle made up from the record's own words is refused: ${resolved.problems[0].sentence}`)
  return { ...specimen, ok: false, conflicts: resolved.conflicts, cannotTell: resolved.cannotTell }
}

/** A year and a number that give no wiring are of no vehicle, as long as each gives one with another of the other. */
function passImpossible(checked: readonly CheckedEdition[]): CheckedEdition[] {
  const sound = checked.filter(({ ok }) => ok)
  return checked.filter((one) => {
    const alike = sound.filter(({ variant }) => variant === one.variant)
    return one.ok || !alike.some(({ span }) => span === one.span) || !alike.some(({ numbers }) => numbers === one.numbers)
  })
}

function hasSupply(edition: CheckedEdition): boolean {
  return edition.ok || !edition.conflicts.some(({ what }) => what === 'no supply')
}
