import { awgAreaMm2, mm2PerCircularMil, readAwg } from './awg.ts'
import type { ConductorTable, Wall } from './cable-rows.ts'
import {
  aircraftRows, awgRows, britishRows, iecRows, imperialRows, isoRows, jisRows, saeDiameterRows, saeRows, type IecRow,
} from './conductor-rows.ts'
import { partDefaults } from './part-default-rows.ts'
import type { SourceId, Status } from './sources.ts'
import { readStrands, type Strands } from './strands.ts'

/** One conductor of one published table, in the same units whichever table it came from; resistance at 20 C. */
export interface TableConductor {
  readonly table: ConductorTable
  readonly label: string
  readonly sizeMm2?: number
  readonly awg?: number
  readonly strands: readonly Strands[]
  readonly areaMm2: number
  readonly ohmPerM: number | null
  readonly diametersMm: Readonly<Partial<Record<Wall, number | null>>>
  readonly source: SourceId
  readonly status: Status
  /** What was assumed where the table leaves something out. */
  readonly assumption?: string
}

const metresPer1000Ft = 304.8

/** Every conductor of every table. */
export const tableConductors: readonly TableConductor[] = [
  ...british(), ...iso(), ...japanese(), ...imperial(), ...iec('iec-class-5'), ...iec('iec-class-2'), ...solidAwg(), ...sae(),
  ...aircraft(),
]

/** R = 0.0172 ohm mm2/m x 1.08 / area, for British strands in inches, whose resistance nobody published. */
export function imperialOhmPerM(areaMm2: number): number {
  return (partDefaults.imperialResistivityOhmMm2PerM.value * partDefaults.imperialStrandFactor.value) / areaMm2
}

function iso(): TableConductor[] {
  return isoRows.map((row) => ({
    table: 'iso', label: `ISO 6722, ${row.sizeMm2} mm2`, sizeMm2: row.sizeMm2, strands: allStrands(row.strandsB, row.strandsA),
    areaMm2: row.sizeMm2, ohmPerM: row.ohmPerKm / 1000, diametersMm: { thick: row.thickMaxMm, thin: row.thinMaxMm },
    source: row.source, status: row.status,
  }))
}

function iec(table: 'iec-class-5' | 'iec-class-2'): TableConductor[] {
  const ohmPerKm = (row: IecRow) => (table === 'iec-class-5' ? row.class5OhmPerKm : row.class2OhmPerKm)
  return iecRows.filter((row) => ohmPerKm(row) !== null).map((row) => ({
    table, label: `IEC 60228 ${table.slice('iec-'.length).replace('-', ' ')}, ${row.sizeMm2} mm2`, sizeMm2: row.sizeMm2, strands: [],
    areaMm2: row.sizeMm2, ohmPerM: (ohmPerKm(row) ?? 0) / 1000, diametersMm: {}, source: row.source, status: row.status,
  }))
}

function japanese(): TableConductor[] {
  return jisRows.map((row) => ({
    table: 'jis', label: `JIS C 3406 AV, ${row.sizeMm2} mm2`, sizeMm2: row.sizeMm2, strands: allStrands(row.strands),
    areaMm2: row.areaMm2, ohmPerM: row.ohmPerKm / 1000, diametersMm: { av: row.maxMm }, source: row.source, status: row.status,
  }))
}

function british(): TableConductor[] {
  return britishRows.map((row) => ({
    table: 'british', label: `British PVC cable, ${row.strands}`, sizeMm2: row.areaMm2, strands: allStrands(row.strands),
    areaMm2: row.areaMm2, ohmPerM: row.ohmPerM, diametersMm: {}, source: row.source, status: row.status,
  }))
}

function imperial(): TableConductor[] {
  return imperialRows.map((row) => ({
    table: 'british', label: `British imperial cable, ${row.strands}`, strands: allStrands(row.strands),
    areaMm2: row.areaMm2, ohmPerM: imperialOhmPerM(row.areaMm2), diametersMm: {}, source: row.source, status: row.status,
    assumption: 'resistance 0.0172 x 1.08 / area',
  }))
}

function solidAwg(): TableConductor[] {
  return awgRows.map((row) => ({
    table: 'awg', label: `solid copper, AWG ${row.awg}`, awg: knownAwg(row.awg), strands: [],
    areaMm2: awgAreaMm2(knownAwg(row.awg)), ohmPerM: row.ohmPer1000Ft / metresPer1000Ft, diametersMm: {},
    source: row.source, status: row.status,
  }))
}

function aircraft(): TableConductor[] {
  return aircraftRows.map((row) => ({
    table: 'aircraft', label: `aircraft copper wire, AWG ${row.awg}`, awg: knownAwg(row.awg), strands: [],
    areaMm2: row.circularMils * mm2PerCircularMil, ohmPerM: row.ohmPer1000Ft / metresPer1000Ft, diametersMm: {},
    source: row.source, status: row.status,
  }))
}

/** SAE gauges have published areas or published diameters or both, and no published resistance. */
function sae(): TableConductor[] {
  const gauges = [...new Set([...saeDiameterRows, ...saeRows].map((row) => row.awg))]
  return gauges.map((gauge) => {
    const area = saeRows.find((row) => row.awg === gauge)
    const outside = saeDiameterRows.find((row) => row.awg === gauge)
    const n = knownAwg(gauge)
    return {
      table: 'sae', label: `SAE gauge ${gauge}`, awg: n, strands: [], areaMm2: area?.areaMm2 ?? awgAreaMm2(n), ohmPerM: null,
      diametersMm: { gpt: outside?.gptMaxMm, twp: outside?.twpMaxMm, gxl: outside?.gxlMm },
      source: area?.source ?? 'astm-b258', status: area?.status ?? 'read',
      assumption: area ? undefined : 'area of the AWG size, no SAE area was found',
    }
  })
}

function allStrands(...texts: readonly (string | null)[]): Strands[] {
  return texts.map((text) => (text === null ? null : readStrands(text))).filter((strands) => strands !== null)
}

function knownAwg(text: string): number {
  const n = readAwg(text)
  if (n === null) throw new RangeError(`${text} in a conductor table is not an AWG size`)
  return n
}
