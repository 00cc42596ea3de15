import { awgAreaMm2, awgName, readAwg } from './awg.ts'
import type { CableRow, ConductorTable, Wall } from './cable-rows.ts'
import { findCable } from './cables.ts'
import { imperialOhmPerM, tableConductors, type TableConductor } from './conductor-table.ts'
import { copperOhmPerM } from './copper.ts'
import { isoOhmPerM } from './iso-law.ts'
import { notFound, type NotFound } from './refusal.ts'
import type { SourceId, Status } from './sources.ts'
import { isSameStrands, readStrands, strandsAreaMm2 } from './strands.ts'

/** A size as given. With several, the most exact one counts: strands, then AWG, then mm2, then a measured diameter. */
export interface ConductorSize {
  readonly mm2?: number
  readonly awg?: string
  readonly strands?: string
  /** Measured over the bare copper. */
  readonly diameterMm?: number
}

/** Copper area, ohms a metre at 20 C, the outside diameter where one was published, and how all that is known. */
export interface Conductor {
  readonly areaMm2: number
  readonly ohmPerM: number
  readonly diameterMm: number | null
  readonly source: SourceId
  readonly status: Status
  readonly assumed: boolean
  readonly why: string
}

export type ConductorFound = ({ readonly ok: true } & Conductor) | NotFound

const largestMm2 = 500
const thickestMm = 30
const awgTables: readonly (ConductorTable | null)[] = ['awg', 'sae', 'aircraft']

/**
 * Area, resistance at 20 C and outside diameter of a conductor from its size and, when known, its kind of cable: the row of
 * that cable's table, else a value by the ISO 6722 law by size, marked assumed. Without a cable, mm2 is read in the ISO
 * 6722 table with a thick wall, AWG as solid copper. A size that cannot be read is refused with the nearest valid names.
 */
export function findConductor(size: ConductorSize, cable?: string): ConductorFound {
  if (cable === undefined) return bySize(size, null)
  const kind = findCable(cable)
  if (kind.ok) return bySize(size, kind)
  const found = bySize(size, null)
  return found.ok ? { ...found, assumed: true, why: `${found.why}; cable ${kind.sentence}` } : found
}

function bySize(size: ConductorSize, cable: CableRow | null): ConductorFound {
  if (size.strands !== undefined) return byStrands(String(size.strands), cable)
  if (size.awg !== undefined) return byAwg(String(size.awg), cable)
  if (size.mm2 !== undefined) return byMm2(size.mm2, cable)
  if (size.diameterMm !== undefined) return byDiameter(size.diameterMm)
  return notFound('', 'a size in mm2, AWG, strands or measured copper diameter', [])
}

function byStrands(text: string, cable: CableRow | null): ConductorFound {
  const strands = readStrands(text)
  if (strands === null) return notFound(text, 'a number of strands and their thickness', strandNames())
  const same = tableConductors.filter((row) => row.strands.some((made) => isSameStrands(made, strands)))
  const stated = same.find((row) => row.table === cable?.conductors)
  if (stated) return fromTable(stated, cable)
  const other = same.find((row) => row.ohmPerM !== null) ?? same[0]
  if (other) return fromTable(other, cable)
  const areaMm2 = strandsAreaMm2(strands)
  if (!strands.imperial) return byIsoLaw(areaMm2, `${text} is in no table`)
  const why = `${text} is in no table; resistance 0.0172 x 1.08 / area of the strands`
  return assumed(areaMm2, imperialOhmPerM(areaMm2), { source: 'imperial-strands', status: 'common practice', why })
}

function byAwg(text: string, cable: CableRow | null): ConductorFound {
  const n = readAwg(text)
  if (n === null) return notFound(text, 'an AWG size', awgNames())
  const table = cable && awgTables.includes(cable.conductors) ? cable.conductors : 'awg'
  const row = tableConductors.find((row) => row.awg === n && row.table === table)
  if (row) return fromTable(row, cable)
  const areaMm2 = awgAreaMm2(n)
  const why = `AWG ${awgName(n)} is in no table for this cable; area by the AWG formula, solid copper`
  return assumed(areaMm2, copperOhmPerM(areaMm2), { source: 'astm-b258', status: 'read', why })
}

function byMm2(mm2: number, cable: CableRow | null): ConductorFound {
  if (!isWithin(mm2, largestMm2)) return notFound(mm2, `an area of copper from 0 to ${largestMm2} mm2`, isoNames())
  const table = cable?.conductors ?? 'iso'
  const row = tableConductors.find((row) => row.sizeMm2 === mm2 && row.table === table)
  return row ? fromTable(row, cable) : byIsoLaw(mm2, `${mm2} mm2 is not a size of ${cable?.conductors ? cable.id : 'ISO 6722'} cable`)
}

function byDiameter(copperMm: number): ConductorFound {
  if (!isWithin(copperMm, thickestMm)) return notFound(copperMm, `a copper diameter from 0 to ${thickestMm} mm`, [])
  const areaMm2 = (Math.PI / 4) * copperMm ** 2
  const why = `measured copper diameter ${copperMm} mm taken as solid copper`
  return assumed(areaMm2, copperOhmPerM(areaMm2), { source: 'copper-org-2001', status: 'read', why })
}

function fromTable(row: TableConductor, cable: CableRow | null): ConductorFound {
  const foreign = cable !== null && cable.conductors !== null && cable.conductors !== row.table
  const reasons = [
    row.label,
    foreign ? `not a size of ${cable.id} cable` : undefined,
    row.assumption,
    row.ohmPerM === null ? `no published resistance, ${isoOhmPerM(row.areaMm2).why}` : undefined,
  ].filter((reason) => reason !== undefined)
  return {
    ok: true, areaMm2: row.areaMm2, ohmPerM: row.ohmPerM ?? isoOhmPerM(row.areaMm2).value, diameterMm: outsideMm(row, cable),
    source: row.source, status: row.status, assumed: reasons.length > 1, why: reasons.join('; '),
  }
}

/** Old cable has a thick wall, so a cable nobody stated is read with one. */
function outsideMm(row: TableConductor, cable: CableRow | null): number | null {
  const own: Wall | undefined = row.table === 'jis' ? 'av' : row.table === 'iso' ? 'thick' : undefined
  const wall = cable ? cable.wall : own
  return (wall && row.diametersMm[wall]) ?? null
}

function byIsoLaw(areaMm2: number, reason: string): ConductorFound {
  const { value, source, status, why } = isoOhmPerM(areaMm2)
  return assumed(areaMm2, value, { source, status, why: `${reason}; ${why}` })
}

function assumed(areaMm2: number, ohmPerM: number, known: Pick<Conductor, 'source' | 'status' | 'why'>): ConductorFound {
  return { ok: true, areaMm2, ohmPerM, diameterMm: null, assumed: true, ...known }
}

/** Sizes come from files, where a number may be anything. */
function isWithin(size: number, largest: number): boolean {
  return Number.isFinite(size) && size > 0 && size <= largest
}

function strandNames(): string[] {
  return tableConductors.filter((row) => row.table === 'british').map((row) => row.label.split(', ')[1])
}

function awgNames(): string[] {
  return tableConductors.filter((row) => row.table === 'awg').map((row) => awgName(row.awg ?? 0))
}

function isoNames(): string[] {
  return tableConductors.filter((row) => row.table === 'iso').map((row) => String(row.sizeMm2))
}
