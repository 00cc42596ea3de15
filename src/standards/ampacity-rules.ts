import {
  aircraftAmpacityRows, boatAmpacityRows, densityRows, densityRule, imperialAmpacityRows, wireChoiceRows,
  type AircraftAmpacityRow, type BoatAmpacityRow,
} from './ampacity-rows.ts'
import { awgAreaMm2, readAwg } from './awg.ts'
import type { ConductorTable } from './cable-rows.ts'
import { britishRows, jisRows } from './conductor-rows.ts'
import { interpolate } from './interpolate.ts'
import type { Sourced } from './sources.ts'
import { isSameStrands, readStrands, type Strands } from './strands.ts'

/** What a rule needs to know of a wire: its copper, the AWG number or strands it was given as, and what its insulation bears. */
export interface RatedWire {
  readonly areaMm2: number
  readonly awg?: number
  readonly strands?: Strands
  readonly limitC: number | null
}

/** Amps by one rule, the insulation temperature in C that they are for, and whether the size stood between rows. */
export interface Rated extends Sourced {
  readonly amps: number
  readonly insulationC: number | 'unknown'
  readonly between: boolean
}

/** A published way to rate a wire. Each is one entry in `ampacityRules`. */
export interface AmpacityRule {
  readonly title: string
  /** The conductor tables of the cables that it is for; null is a cable whose table is not known. */
  readonly conductors: readonly (ConductorTable | null)[]
  /** Whether it rates a cable alone, so that a bundle factor applies; tables of amps that do not say are taken to. */
  readonly single: boolean
  readonly ambientC: number | 'unknown'
  /** Undefined for a wire that the rule does not reach. */
  rate(wire: RatedWire): Rated | undefined
}

/** Where two areas are the same size, whether or not rounding says so. */
const sameArea = 0.01

/** Cables sold by mm2 or British strands, and cables of unknown kind: rubber and cotton are among these. */
const byArea: readonly (ConductorTable | null)[] = ['british', 'iso', 'iec-class-2', 'iec-class-5', null]

/** Every rule by its name. Rules for no cable in particular are asked by name, or where no other rule reaches a size. */
export const ampacityRules = {
  'british-cable': {
    title: 'British PVC cable', conductors: byArea, single: true, ambientC: 'unknown',
    rate: ({ areaMm2 }) => between(areaMm2, britishRows.map((row) => ({ ...row, amps: row.ratingA, insulationC: 70 }))),
  },
  'british-1950s': {
    title: 'British cable of the 1950s', conductors: ['british', null], single: true, ambientC: 'unknown',
    rate: ({ strands }) => {
      const row = strands && imperialAmpacityRows.find((row) => isSameStrands(strands, mustReadStrands(row.strands)))
      return row && { amps: row.ratingA, insulationC: 'unknown', between: false, source: row.source, status: row.status }
    },
  },
  'jis-av': {
    title: 'JIS C 3406 AV cable', conductors: ['jis'], single: true, ambientC: 'unknown',
    rate: ({ areaMm2 }) => between(areaMm2, jisRows.map((row) => ({ ...row, amps: row.limitA, insulationC: 80 }))),
  },
  'vehicle-current-density': {
    title: 'permissible continuous current by cross-section', conductors: byArea, single: true, ambientC: 'unknown',
    rate: ({ areaMm2 }) => between(areaMm2, densityRows.map((row) => ({ ...row, amps: row.currentA, insulationC: 'unknown' as const }))),
  },
  'cfr33-183-425-table-5': {
    title: '33 CFR 183.425 Table 5', conductors: ['sae', 'awg'], single: true, ambientC: 30, rate: byBoatTable,
  },
  'ac43-13-table-11-9': {
    title: 'AC 43.13-1B Table 11-9, in a bundle', conductors: ['aircraft'], single: false, ambientC: 70, rate: byAircraftTable,
  },
  'old-vehicle-wire-choice': {
    title: 'wire choice of older vehicles', conductors: [], single: false, ambientC: 'unknown',
    rate: ({ areaMm2 }) => {
      const row = wireChoiceRows.findLast((row) => row.belowA !== null && row.minMm2 <= areaMm2 + sameArea)
      return row && { amps: row.belowA ?? 0, insulationC: 'unknown', between: false, source: row.source, status: row.status }
    },
  },
  'current-density-rule': {
    title: '5 A for each mm2', conductors: [], single: false, ambientC: 'unknown',
    rate({ areaMm2 }) {
      const { densityAPerMm2, source, status } = densityRule.continuous
      return { amps: densityAPerMm2 * areaMm2, insulationC: 'unknown', between: false, source, status }
    },
  },
} as const satisfies Readonly<Record<string, AmpacityRule>>

export type AmpacityRuleName = keyof typeof ampacityRules

interface AreaRow extends Sourced {
  readonly areaMm2: number
  readonly amps: number
  readonly insulationC: number | 'unknown'
}

/** Amps at this area, in straight lines between rows of rising area; nothing beyond the first and last. */
function between(areaMm2: number, rows: readonly AreaRow[]): Rated | undefined {
  const upper = rows.find((row) => row.areaMm2 >= areaMm2 - sameArea)
  const lower = rows.findLast((row) => row.areaMm2 <= areaMm2 + sameArea)
  if (!upper || !lower) return undefined
  const { source, status } = upper.status === 'read' ? lower : upper
  const amps = upper === lower ? upper.amps : interpolate([lower, upper].map((row) => ({ x: row.areaMm2, y: row.amps })), areaMm2)
  return { amps, insulationC: upper.insulationC, between: upper !== lower, source, status }
}

function byBoatTable(wire: RatedWire): Rated | undefined {
  const columns = [60, 75, 80, 90, 105, 125, 200] as const
  const insulationC = columns.findLast((column) => column <= (wire.limitC ?? columns[0]))
  const row = gaugeRow(wire, boatAmpacityRows)
  return row && insulationC && inColumn(row, row[`by${insulationC}A`], insulationC, wire)
}

function byAircraftTable(wire: RatedWire): Rated | undefined {
  const columns = [105, 150, 200] as const
  const insulationC = columns.findLast((column) => column <= (wire.limitC ?? columns[0]))
  const row = gaugeRow(wire, aircraftAmpacityRows)
  return row && insulationC && inColumn(row, row[`by${insulationC}A`], insulationC, wire)
}

function inColumn(row: BoatAmpacityRow | AircraftAmpacityRow, amps: number, insulationC: number, wire: RatedWire): Rated {
  return { amps, insulationC, between: readAwg(row.awg) !== wire.awg, source: row.source, status: row.status }
}

/** The row of the wire's own gauge, else of the largest gauge with no more copper. */
function gaugeRow<Row extends { readonly awg: string }>({ awg, areaMm2 }: RatedWire, rows: readonly Row[]): Row | undefined {
  return rows.find((row) => readAwg(row.awg) === awg) ?? rows.findLast((row) => awgAreaMm2(readAwg(row.awg) ?? NaN) <= areaMm2 + sameArea)
}

function mustReadStrands(text: string): Strands {
  const strands = readStrands(text)
  if (!strands) throw new RangeError(`${text} in a rating table cannot be read as strands`)
  return strands
}
