import { notFound, type NotFound } from './refusal.ts'
import type { Sourced } from './sources.ts'
import { markingRows, renamedRows, type MarkingRow, type RenamedRow } from './terminal-marking-rows.ts'

/** A present name of an older marking, at one sort of part (`at`), or anywhere where that is null. */
export interface NewerName extends Sourced {
  readonly marking: string
  readonly at: string | null
}

/** One meaning of a marking in one convention, with the names it had before and has now where they differ. */
export interface MarkingMeaning extends Omit<MarkingRow, 'olderNames'> {
  readonly old: boolean
  readonly older: readonly string[]
  readonly newer: readonly NewerName[]
}

export type MarkingFound = { readonly ok: true; readonly marking: string; readonly meanings: readonly MarkingMeaning[] } | NotFound

export type SameMarkingFound = { readonly ok: true; readonly marking: string; readonly newer: readonly NewerName[] } | NotFound

/** Every marking that `describeMarking` knows, in table order. */
export const markingNames: readonly string[] = [
  ...new Set([...markingRows.map((row) => row.marking), ...renamedRows.map((row) => row.old)]),
]

/**
 * What a terminal marking means: every meaning in DIN 72552 and in British and American practice. The same letter often
 * means different things, so a caller that knows the convention must choose. Unknown markings are refused with the nearest.
 */
export function describeMarking(marking: string): MarkingFound {
  const name = knownName(String(marking))
  if (name === null) return notFound(marking, 'a known terminal marking', markingNames)
  const rows = markingRows.filter((row) => row.marking === name)
  const renamed = rows.some((row) => row.convention === 'DIN') ? [] : renamedRows.filter((row) => row.old === name)
  return { ok: true, marking: name, meanings: [...renamed.flatMap(asOlderName), ...rows.map(withNames)] }
}

/** What an older DIN marking is called now ("54d" is 53 at a wiper); a marking that kept its name answers with itself. */
export function sameMarking(old: string): SameMarkingFound {
  const name = knownName(String(old))
  if (name === null) return notFound(old, 'a known terminal marking', markingNames)
  const newer = renamedRows.filter((row) => row.old === name).map(newerName)
  const kept = markingRows.filter((row) => row.marking === name).slice(0, 1)
  const itself = kept.map(({ at, source, status }) => ({ marking: name, at, source, status }))
  return { ok: true, marking: name, newer: newer.length > 0 ? newer : itself }
}

/** Capital and small letters may both be in use, so an exact match goes first. */
function knownName(marking: string): string | null {
  const key = markingKey(marking)
  const exact = markingNames.find((name) => markingKey(name) === key)
  return exact ?? markingNames.find((name) => markingKey(name).toLowerCase() === key.toLowerCase()) ?? null
}

function markingKey(marking: string): string {
  return marking.replace(/\s/g, '').replace(/[−–]/g, '-')
}

function withNames({ olderNames = [], ...row }: MarkingRow): MarkingMeaning {
  const renames = row.convention === 'DIN' ? renamedRows.filter((other) => other.old !== other.newer) : []
  const older = renames.filter((other) => other.newer === row.marking).map((other) => other.old)
  const newer = renames.filter((other) => other.old === row.marking).map(newerName)
  return { ...row, old: row.old ?? false, older: [...new Set([...olderNames, ...older])], newer }
}

function asOlderName(renamed: RenamedRow): MarkingMeaning[] {
  const { old, newer, at, source, status, note } = renamed
  return markingRows.filter((row) => row.convention === 'DIN' && row.marking === newer).map((row) => ({
    ...withNames(row), marking: old, at, meaning: `older name of ${newer}: ${row.meaning}`, old: true, older: [], newer: [newerName(renamed)],
    source, status, note,
  }))
}

function newerName({ newer, at, source, status, note }: RenamedRow): NewerName {
  return { marking: newer, at, source, status, note }
}
