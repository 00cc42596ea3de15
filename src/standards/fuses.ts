import { awgName, readAwg } from './awg.ts'
import {
  britishFuseRows, britishToAmericanRows, fuseBandRows, fuseColourRows, fuseDropRows, fuseKinds, wireProtectorRows,
  type BritishToAmericanRow, type FuseBandRow, type FuseKind, type PrintedMeans, type WireProtectorRow,
} from './fuse-rows.ts'
import { nameKey, notFound, type NotFound } from './refusal.ts'
import type { SourceId, Status } from './sources.ts'

/**
 * A fuse by its kind and printed amps: what the print means, what it carries for ever, what blows it in time and at once, its
 * colours, and the most ohms of its element. 'unknown' where nobody published it.
 */
export interface Fuse {
  readonly kind: FuseKind
  readonly printedA: number
  readonly printedMeans: PrintedMeans
  readonly continuousA: number | 'unknown'
  readonly blowA: number | 'unknown'
  readonly blowAtOnceA: number | 'unknown'
  readonly colours: readonly string[]
  readonly maxElementOhm: number | 'unknown'
  readonly source: SourceId
  readonly status: Status
  /** True where a rating that no table prints follows the rule of its neighbours. */
  readonly assumed: boolean
}

export type FuseFound = ({ readonly ok: true } & Fuse) | NotFound

/** Seconds that a fuse lasts, at least and at most, at a multiple of its printed amps; 'unknown' on a side without a limit. */
export interface MeltingBand {
  readonly minS: number | 'unknown'
  readonly maxS: number | 'unknown'
  readonly rows: readonly FuseBandRow[]
}

export type MeltingBandFound = ({ readonly ok: true } & MeltingBand) | NotFound

const kindByKey = new Map(
  Object.entries(fuseKinds).flatMap(([kind, row]) => [kind, ...row.names].map((name) => [nameKey(name), kind as FuseKind] as const)),
)

/** A printed British rating is twice what the fuse carries, in every row of the table. */
const britishShare = 0.5

/** A fuse by its kind ("blade", "torpedo", "British") and the amps printed on it; an unknown kind is refused with the nearest. */
export function findFuse(kindName: string, printedA: number): FuseFound {
  const kind = kindByKey.get(nameKey(String(kindName)))
  if (!kind) return notFound(kindName, 'a known kind of fuse', kindNames())
  if (!(printedA > 0 && Number.isFinite(printedA))) return notFound(printedA, 'amps printed on a fuse', [])
  return kind === 'british-glass' ? british(printedA) : { ok: true, ...byBands(kind, printedA) }
}

/**
 * How long a fuse lasts at `multiple` times its printed amps. Between two printed multiples it lasts no longer than at the
 * lower and no shorter than at the higher; where makers differ at one multiple, the wider limits count. Both sides are
 * 'unknown' for torpedo and British fuses, whose curves nobody published.
 */
export function findMeltingBand(kindName: string, printedA: number, multiple: number): MeltingBandFound {
  const fuse = findFuse(kindName, printedA)
  if (!fuse.ok) return fuse
  if (!(multiple > 0)) return notFound(multiple, 'a multiple of the printed amps', [])
  const rows = bandRows(fuse.kind, printedA)
  const below = rows.filter((row) => row.multiple <= multiple)
  const above = rows.filter((row) => row.multiple >= multiple)
  const mins = above.flatMap((row) => row.minS ?? [])
  const maxs = multiplesOf(below).flatMap((each) => longest(below, each) ?? [])
  return {
    ok: true, rows,
    minS: mins.length > 0 ? Math.max(...mins) : 'unknown',
    maxS: maxs.length > 0 ? Math.min(...maxs) : 'unknown',
  }
}

export type AmericanFuseFound = ({ readonly ok: true } & BritishToAmericanRow) | NotFound

/** The American fuse that an old catalogue puts in place of a British one, by the amps printed on the British. Advice only. */
export function findAmericanFuse(britishA: number): AmericanFuseFound {
  const row = britishToAmericanRows.find((row) => row.britishA === britishA)
  return row ? { ok: true, ...row } : notFound(britishA, 'a British rating of that catalogue', britishToAmericanRows.map((each) => String(each.britishA)))
}

export type WireProtectorFound = ({ readonly ok: true } & WireProtectorRow) | NotFound

/** The largest breaker and fuse in amps for an aircraft wire of this AWG size, AC 43.13-1B Table 11-3. */
export function findWireProtector(awg: string): WireProtectorFound {
  const n = readAwg(String(awg))
  const row = wireProtectorRows.find((row) => readAwg(row.awg) === n)
  return row ? { ok: true, ...row } : notFound(awg, 'an AWG size of that chart', wireProtectorRows.map((each) => awgName(readAwg(each.awg) ?? 0)))
}

function british(printedA: number): FuseFound {
  const rows = britishFuseRows.filter((row) => row.printedA === printedA)
  const { printed, source, status } = fuseKinds['british-glass']
  return {
    ok: true, kind: 'british-glass', printedA, printedMeans: printed,
    continuousA: rows[0]?.continuousA ?? printedA * britishShare, blowA: printedA, blowAtOnceA: rows[0]?.atOnceA ?? 'unknown',
    colours: rows.map((row) => row.colour), maxElementOhm: 'unknown', source, status, assumed: rows.length === 0,
  }
}

function byBands(kind: FuseKind, printedA: number): Fuse {
  const { printed, source, status } = fuseKinds[kind]
  const blows = bandRows(kind, printedA).find((row) => row.maxS !== null)
  return {
    kind, printedA, printedMeans: printed,
    continuousA: printed === 'continuous' ? printedA : 'unknown', blowA: blows ? blows.multiple * printedA : 'unknown', blowAtOnceA: 'unknown',
    colours: fuseColourRows.filter((row) => row.kinds.includes(kind) && row.ratingA === printedA).map((row) => row.colour),
    maxElementOhm: elementOhm(kind, printedA), source, status, assumed: false,
  }
}

/** R = U / I at the rating, of the largest drop that the standard allows. */
function elementOhm(kind: FuseKind, printedA: number): number | 'unknown' {
  const row = fuseDropRows.find((row) => row.kind === kind && printedA >= row.fromA && printedA <= row.toA)
  return row ? row.maxDropMv / 1000 / printedA : 'unknown'
}

function bandRows(kind: FuseKind, printedA: number): readonly FuseBandRow[] {
  return fuseBandRows.filter((row) => row.kinds.includes(kind) && printedA >= (row.fromA ?? 0) && printedA <= (row.toA ?? Infinity))
}

function multiplesOf(rows: readonly FuseBandRow[]): number[] {
  return [...new Set(rows.map((row) => row.multiple))]
}

/** The longest time of the rows at one multiple, null where none limits it. */
function longest(rows: readonly FuseBandRow[], multiple: number): number | null {
  const times = rows.filter((row) => row.multiple === multiple).flatMap((row) => row.maxS ?? [])
  return times.length > 0 ? Math.max(...times) : null
}

function kindNames(): string[] {
  return Object.entries(fuseKinds).flatMap(([kind, row]) => [kind, ...row.names])
}
