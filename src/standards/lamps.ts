import {
  britishLampRows, categoryRows, coldFilament, sealedBeamRows, tradeNumberRows, type Filament, type SealedBeamRow, type TradeNumberRow,
} from './lamp-rows.ts'
import { nameKey, notFound, type NotFound } from './refusal.ts'
import type { Sourced } from './sources.ts'

/**
 * One filament: cap volts and watts (`nominal`), and the volts, watts and lumens it is tested at. `powerIs` says whether
 * the watts are the largest allowed, a nominal with a tolerance, or volts x amps of the design. Null where not known.
 */
export interface LampFilament extends Sourced {
  readonly lamp: string
  readonly filament: Filament
  readonly nominalV: number | null
  readonly nominalW: number | null
  readonly testV: number | null
  readonly powerW: number | null
  readonly powerIs: 'max' | 'nominal' | 'design' | null
  readonly powerTolPct: number | null
  readonly fluxLm: number | null
  readonly fluxTolPct: number | null
  readonly cap: string | null
  readonly use: string | null
}

export type LampFound = { readonly ok: true; readonly lamp: string; readonly filaments: readonly LampFilament[] } | NotFound

const untested = { testV: null, powerW: null, powerIs: null, powerTolPct: null, fluxLm: null, fluxTolPct: null }

/** Every filament of every lamp table. */
const filaments: readonly LampFilament[] = [
  ...categoryRows,
  ...tradeNumberRows.map(fromTradeNumber),
  ...sealedBeamRows.flatMap(fromSealedBeam),
  ...britishLampRows.map((row) => ({ ...untested, ...row })),
]

/** The names that `findLamp` knows, in table order. */
export const lampNames: readonly string[] = [...new Set(filaments.map((row) => row.lamp))]

/**
 * The filaments of a lamp by its category or number ("P21/5W", "1157", "380", "6012"), of all volts or of those wanted.
 * A lamp that is not in the tables, or not at those volts or with that filament, is refused with the nearest that is.
 */
export function findLamp(name: string, wanted: { readonly voltsV?: number; readonly filament?: Filament } = {}): LampFound {
  const { voltsV, filament } = wanted
  const named = filaments.filter((row) => nameKey(row.lamp) === nameKey(String(name)))
  if (named.length === 0) return notFound(name, 'a known lamp', lampNames)
  const lamp = named[0].lamp
  const atVolts = named.filter((row) => voltsV === undefined || row.nominalV === null || row.nominalV === voltsV)
  const made = named.map((row) => `${lamp} ${row.nominalV} V`)
  if (atVolts.length === 0) return notFound(`${lamp} ${voltsV} V`, 'a lamp that is made', made)
  const found = atVolts.filter((row) => filament === undefined || row.filament === filament)
  if (found.length === 0) return notFound(filament, `a filament of lamp ${lamp}`, atVolts.map((row) => row.filament))
  return { ok: true, lamp, filaments: found }
}

/** Lumens from mean spherical candlepower: 4 pi x cp. */
export function lumensFromCandlepower(candlepower: number): number {
  return coldFilament.lumensPerCandlepower.value * candlepower
}

function fromTradeNumber(row: TradeNumberRow): LampFilament {
  const { lamp, filament, nominalV, fluxLm, cap, source, status, note } = row
  return {
    lamp, filament, nominalV, nominalW: null, testV: row.designV, powerW: row.designV * row.designA, powerIs: 'design',
    powerTolPct: null, fluxLm, fluxTolPct: null, cap, use: null, source, status, note,
  }
}

function fromSealedBeam(row: SealedBeamRow): LampFilament[] {
  const { lamp, nominalV, source, status, note } = row
  const beam = { ...untested, lamp, nominalV, cap: null, use: 'headlamp', source, status, note }
  const main: LampFilament = { ...beam, filament: 'main', nominalW: row.mainW }
  return row.dips ? [main, { ...beam, filament: 'dipped', nominalW: row.dippedW }] : [main]
}
