import {
  boatBundleRows, britishGroupingRows, bundleCurveRows, necBundleRows, type BundleCurveRow, type BundleFactorRow,
} from './derating-rows.ts'
import { interpolate } from './interpolate.ts'
import { notFound, type NotFound } from './refusal.ts'
import type { SourceId, Status } from './sources.ts'

export const bundleRules = ['mil-w-5088l', 'nec', 'uscg', 'bs7671'] as const

/** Whose factors: the aircraft curve, the NEC, the US Coast Guard (AC and 50 V and more), or BS 7671. They disagree strongly. */
export type BundleRule = (typeof bundleRules)[number]

/** What a single-cable rating is multiplied by, and whose factor that is. Assumed where the table ends at fewer wires. */
export interface BundleFactor {
  readonly factor: number
  readonly rule: BundleRule
  readonly source: SourceId
  readonly status: Status
  readonly assumed: boolean
  readonly why: string
}

export type BundleFactorFound = ({ readonly ok: true } & BundleFactor) | NotFound

const loadingsPct = [20, 40, 60, 80, 100] as const

const bands: Readonly<Record<Exclude<BundleRule, 'mil-w-5088l'>, readonly BundleFactorRow[]>> = {
  nec: necBundleRows, uscg: boatBundleRows, bs7671: britishGroupingRows,
}

/**
 * Factor of a bundle by the number of wires loaded together, for single-cable ratings only. The aircraft curve also wants
 * the share of the bundle's capacity in use, 20 to 100 %, and goes in straight lines between its columns. Refused beyond
 * the last row of a table.
 */
export function findBundleFactor(loadedWires: number, rule: BundleRule, loadingPct = 100): BundleFactorFound {
  checkWires(loadedWires)
  if (rule === 'mil-w-5088l') return onCurve(loadedWires, loadingPct)
  const rows = bands[rule]
  if (loadedWires < rows[0].fromWires) return found(1, rule, rows[0], loadedWires)
  const row = rows.find((row) => loadedWires <= (row.toWires ?? Infinity))
  return row ? found(row.factor, rule, row, loadedWires) : tooMany(loadedWires, rule, rows[rows.length - 1].fromWires)
}

/**
 * The lowest bundle factor that any table gives for this many wires loaded together. A table that ends at fewer wires still
 * bounds it: more wires never allow more, so its last row counts, and the answer is then marked assumed.
 */
export function lowestBundleFactor(loadedWires: number): BundleFactor {
  const factors = bundleRules.map((rule) => boundFactor(loadedWires, rule))
  return factors.reduce((lowest, each) => (each.factor < lowest.factor ? each : lowest))
}

function boundFactor(loadedWires: number, rule: BundleRule): BundleFactor {
  const most = mostWires(rule)
  const known = findBundleFactor(Math.min(loadedWires, most), rule)
  if (!known.ok) throw new RangeError(known.sentence)
  return loadedWires > most ? { ...known, assumed: true, why: `${known.why}, the last row of that table` } : known
}

function mostWires(rule: BundleRule): number {
  if (rule === 'mil-w-5088l') return bundleCurveRows[bundleCurveRows.length - 1].wires
  const last = bands[rule][bands[rule].length - 1]
  return last.toWires ?? Infinity
}

function onCurve(wires: number, loadingPct: number): BundleFactorFound {
  const row = bundleCurveRows.find((row) => row.wires === wires)
  if (!row) return tooMany(wires, 'mil-w-5088l', mostWires('mil-w-5088l'))
  if (!(loadingPct >= 20 && loadingPct <= 100)) return notFound(loadingPct, 'a loading of 20 to 100 %', loadingsPct.map(String))
  return found(interpolate(loadingsPct.map((x) => ({ x, y: row[`at${x}`] })), loadingPct), 'mil-w-5088l', row, wires)
}

function found(factor: number, rule: BundleRule, { source, status }: BundleCurveRow | BundleFactorRow, wires: number): BundleFactorFound {
  return { ok: true, factor, rule, source, status, assumed: false, why: `${wires} loaded wires by ${rule}` }
}

function tooMany(wires: number, rule: BundleRule, most: number): NotFound {
  return notFound(wires, `a number of wires that the ${rule} table reaches`, [String(most)])
}

function checkWires(wires: number): void {
  if (!(Number.isInteger(wires) && wires > 0)) throw new RangeError(`a bundle has a whole number of loaded wires, not ${wires}`)
}
