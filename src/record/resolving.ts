import { inIdOrder } from './compare-ids.ts'
import { judgeFits, showFits } from './fits.ts'
import { isSameJson, showPath, type Path } from './path.ts'
import type { Edition, Fits, WiringRecord } from './schema.ts'
import type { Assumption } from './wiring.ts'

/** What stands in the way of a wiring: where, what kind of conflict, in a sentence, and for which vehicles each thing in it is meant. */
export interface Conflict {
  readonly at: Path
  readonly what: ConflictKind
  readonly sentence: string
  /** The things that clash; without `fits` a thing is meant for every vehicle. */
  readonly fits: readonly { readonly of: string; readonly fits?: Fits }[]
}

export type ConflictKind =
  | 'same role' | 'several supplies' | 'no supply' | 'several engine rows' | 'not in this vehicle' | 'same end twice'
  | 'two halves on one side' | 'one branch in two places' | 'parameter set twice' | 'wrong parameters' | 'battery reversed'

/** A condition that the vehicle's description leaves open, and what to find out. */
export interface CannotTell { readonly at: Path; readonly ask: readonly string[]; readonly sentence: string }

/** A record on its way to a wiring: what stays, and the books that are filled as it goes. */
export interface Resolving {
  readonly record: WiringRecord
  readonly vehicle: Edition
  /** Items judged as of another edition, with that edition. */
  readonly exceptions: ReadonlyMap<string, Edition>
  readonly conflicts: Conflict[]
  readonly cannotTell: CannotTell[]
  readonly assumed: Assumption[]
}

/** Whether a condition holds, by the edition of the item it belongs to; what cannot be told is written down and counts as no. */
export function holds(resolving: Resolving, fits: Fits | undefined, at: Path, edition: Edition): boolean {
  const { answer, ask, assumed } = judgeFits(fits, edition, resolving.record)
  for (const assumption of assumed) assume(resolving, assumption)
  if (answer === 'cannot tell') {
    const sentence = `${showPath(at)}: cannot tell whether it belongs to this vehicle; ${ask.join('; ')}.`
    resolving.cannotTell.push({ at, ask, sentence })
  }
  return answer === 'yes'
}

/** The edition by which an item is judged: its exception's, or the vehicle's own. */
export function editionOf({ exceptions, vehicle }: Resolving, id: string): Edition {
  return exceptions.get(id) ?? vehicle
}

export function assume({ assumed }: Resolving, assumption: Assumption): void {
  if (!assumed.some((known) => known.path === assumption.path && isSameJson(known.value, assumption.value))) assumed.push(assumption)
}

/** One of the things in a conflict, with its condition if it has one. */
export function party(of: Path, fits: Fits | undefined): Conflict['fits'][number] {
  return fits ? { of: showPath(of), fits } : { of: showPath(of) }
}

/** What to do about a conflict. */
const REMEDIES: Readonly<Record<ConflictKind, string>> = {
  'same role': 'let one end before the other begins, or give them two roles',
  'several supplies': 'let the years of one end before those of the other begin',
  'no supply': 'describe a vehicle that the record is for, or let a supply be for this one too',
  'several engine rows': 'let the years of one end before those of the other begin',
  'not in this vehicle': 'let both be for the same vehicles, or put this where it leads in this one',
  'same end twice': 'let one end before the other begins, or correct which end it is',
  'two halves on one side': 'let one end before the other begins, or put it on the other side',
  'one branch in two places': 'let one end before the other begins',
  'parameter set twice': 'state it in one of the two for these vehicles',
  'wrong parameters': 'correct the value, or for which vehicles it is meant',
  'battery reversed': 'turn the battery round, or correct the supply',
}

export function clash({ conflicts }: Resolving, at: Path, what: ConflictKind, said: string, parties: Conflict['fits']): void {
  const shown = parties.map(({ of, fits }) => `${of} is for ${showFits(fits)}`).join(', ')
  conflicts.push({ at, what, sentence: `${showPath(at)}: ${said}${shown === '' ? '' : ` (${shown})`}: ${REMEDIES[what]}.`, fits: parties })
}

/** The items of a map that are meant for this vehicle. */
export function keepFitting<T extends { readonly fits?: Fits }>(
  resolving: Resolving, map: Readonly<Record<string, T>> | undefined, at: Path,
): Record<string, T> {
  const kept = inIdOrder(map).filter(([id, entry]) => holds(resolving, entry.fits, [...at, id], editionOf(resolving, id)))
  return Object.fromEntries(kept)
}
