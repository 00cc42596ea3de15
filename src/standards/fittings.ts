import { grommetRows, sleeveRows, type GrommetRow, type SleeveRow } from './covering-rows.ts'
import { grommetRules } from './fitting-rule-rows.ts'
import { ferruleColourRows } from './ferrule-rows.ts'
import { baNutRows, metricNutRows, unifiedNutRows, whitworthNutRows } from './nut-rows.ts'
import { nameKey, notFound, type NotFound } from './refusal.ts'
import type { Sourced } from './sources.ts'
import { bladeRows, bulletRows, insulatedTerminalRows, ringHoleRows, tubeLugRows, type RingHoleRow } from './terminal-rows.ts'

export const fittingKinds = ['insulated terminal', 'blade', 'bullet', 'tube lug', 'ferrule'] as const

export type FittingKind = (typeof fittingKinds)[number]

/** Something crimped or soldered on a wire's end, and the copper it takes, mm2; least and most are one for a single size. */
export interface Fitting extends Sourced {
  readonly kind: FittingKind
  readonly name: string
  readonly minMm2: number
  readonly maxMm2: number
}

export type FittingsFound = { readonly ok: true; readonly fittings: readonly Fitting[] } | NotFound

export type FittingFound = ({ readonly ok: true } & Fitting) | NotFound

/** Every fitting with a wire range. A pre-insulated terminal, ring, fork, blade, bullet or butt splice, goes by its colour. */
export const fittings: readonly Fitting[] = [
  ...insulatedTerminalRows.map(({ colour, awg, minMm2, maxMm2, ...known }) => fitting('insulated terminal', `${colour}, AWG ${awg}`, minMm2, maxMm2, known)),
  ...bladeRows.map(({ widthMm, thicknessMm, minMm2, maxMm2, ...known }) => fitting('blade', `blade ${widthMm} x ${thicknessMm}`, minMm2, maxMm2, known)),
  ...bulletRows.map(({ name, minMm2, maxMm2, ...known }) => fitting('bullet', name, minMm2, maxMm2, known)),
  ...tubeLugRows.map(({ mm2, studs, ...known }) => fitting('tube lug', `lug ${mm2}, ${studs}`, mm2, mm2, known)),
  ...ferruleColourRows.map(({ mm2, din, ...known }) => fitting('ferrule', `ferrule ${mm2}, ${din} by DIN`, mm2, mm2, known)),
]

/** Areas of AWG sizes are rounded in the tables by up to this share. */
const rounding = 0.02

/**
 * The fittings that take a wire of this copper area, of one kind or of all. Refused where none does, with those of the nearest
 * range: 3 mm2 falls between the blue and the yellow pre-insulated terminals.
 */
export function findFittings(mm2: number, kind?: FittingKind): FittingsFound {
  const some = fittings.filter((each) => kind === undefined || each.kind === kind)
  const found = some.filter((each) => mm2 >= each.minMm2 * (1 - rounding) && mm2 <= each.maxMm2 * (1 + rounding))
  if (found.length > 0) return { ok: true, fittings: found }
  const nearest = some.toSorted((a, b) => outside(a, mm2) - outside(b, mm2)).slice(0, 3).map((each) => each.name)
  return { ...notFound(`${mm2} mm2`, `a size that a ${kind ?? 'fitting'} takes`, []), nearest }
}

/** A fitting by its name ("blade 6.3 x 0.8") and the wire it takes; an unknown one is refused with the nearest names. */
export function findFitting(name: string): FittingFound {
  const found = fittings.find((each) => nameKey(each.name) === nameKey(String(name)))
  return found ? { ok: true, ...found } : notFound(name, 'a known fitting', fittings.map((each) => each.name))
}

export type RingHoleFound = ({ readonly ok: true } & RingHoleRow) | NotFound

/** The hole in mm of a ring for a stud: "M5", "No. 10", "2BA", "1/4 in". */
export function findRingHole(stud: string): RingHoleFound {
  const row = ringHoleRows.find((row) => row.studs.some((known) => nameKey(known) === nameKey(String(stud))))
  return row ? { ok: true, ...row } : notFound(stud, 'a known stud', ringHoleRows.flatMap((each) => each.studs))
}

/** One spanner that may fit a nut, mm across the flats, and by which standard or pattern. */
export interface NutSpanner extends Sourced {
  readonly pattern: string
  readonly flatsMm: number
}

export type NutFound = { readonly ok: true; readonly spanners: readonly NutSpanner[] } | NotFound

/** The spanners for a nut by its thread ("M10", "1/4", "2BA", "1/4 BSF"), all patterns: an M10 nut is 17 mm by DIN and 16 by ISO. */
export function findNut(thread: string): NutFound {
  const named = nuts().filter((nut) => nameKey(nut.thread) === nameKey(String(thread)))
  if (named.length === 0) return notFound(thread, 'a known thread', nuts().map((nut) => nut.thread))
  return { ok: true, spanners: named.map(({ pattern, flatsMm, source, status, note }) => ({ pattern, flatsMm, source, status, note })) }
}

/** A grommet, and whether its bore is within the 15 % over the bundle that practice allows. */
export type GrommetFound = ({ readonly ok: true; readonly isSnug: boolean } & GrommetRow) | NotFound

/** The smallest grommet whose bore passes a bundle of this diameter in mm. Common practice; makers differ by 1 to 2 mm. */
export function findGrommet(bundleMm: number): GrommetFound {
  const row = grommetRows.find((row) => row.boreMm >= bundleMm)
  if (!row) return notFound(`${bundleMm} mm`, 'a bundle that a grommet passes', grommetRows.map((each) => `bore ${each.boreMm} mm`))
  return { ok: true, ...row, isSnug: row.boreMm <= bundleMm * grommetRules.boreOverBundle.value }
}

/** A sleeve and the bore of it to take, mm. */
export type SleeveFound = { readonly ok: true; readonly boreMm: number; readonly sleeve: SleeveRow } | NotFound

/** Least bore over bundle diameter for a sleeve: the lower end of 1.1 to 1.25, common practice. */
const leastSleeveRatio = 1.1

/** The smallest bore of a sleeve ("PVC sleeve, soft, black") that goes over a bundle of this diameter in mm: 1.1 times it or more. */
export function findSleeve(name: string, bundleMm: number): SleeveFound {
  const sleeve = sleeveRows.find((row) => nameKey(row.name) === nameKey(String(name)))
  if (!sleeve) return notFound(name, 'a known sleeve', sleeveRows.map((each) => each.name))
  const boreMm = sleeve.sizesMm.find((size) => size >= bundleMm * leastSleeveRatio)
  return boreMm === undefined ? notFound(`${bundleMm} mm`, `a bundle that ${sleeve.name} goes over`, sleeve.sizesMm.map(String)) : { ok: true, boreMm, sleeve }
}

function fitting(kind: FittingKind, name: string, minMm2: number, maxMm2: number, { source, status, note }: Sourced): Fitting {
  return { kind, name, minMm2, maxMm2, source, status, note }
}

function outside({ minMm2, maxMm2 }: Fitting, mm2: number): number {
  return Math.max(minMm2 - mm2, mm2 - maxMm2)
}

function nuts(): (NutSpanner & { readonly thread: string })[] {
  return [
    ...metricNutRows.flatMap(({ thread, dinFlatsMm, isoFlatsMm, ...known }) => [
      { ...known, thread, pattern: 'DIN 934', flatsMm: dinFlatsMm }, { ...known, thread, pattern: 'ISO 4032', flatsMm: isoFlatsMm },
    ]),
    ...unifiedNutRows,
    ...baNutRows.map((row) => ({ ...row, pattern: 'BA' })),
    ...whitworthNutRows.flatMap((row) => row.threads.map((thread) => ({ ...row, thread, pattern: 'Whitworth, post-war' }))),
  ]
}
