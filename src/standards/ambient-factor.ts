import { britishAmbientRows, engineSpaceRows } from './derating-rows.ts'
import { notFound, type NotFound } from './refusal.ts'
import type { SourceId, Status } from './sources.ts'

/** Which rule gives the factor: the square root of the temperature left, or a printed table. */
export type AmbientRule = 'square-root' | 'bs7671' | 'engine-space'

export type AmbientFactorFound =
  | { readonly ok: true; readonly factor: number; readonly source: SourceId; readonly status: Status; readonly why: string }
  | NotFound

/** The temperatures in C: what the conductor may reach and what surrounds it, and the same two that its rating is for. */
export interface Warmth {
  readonly limitC: number
  readonly ambientC: number
  readonly ratedAtC: number
  /** Left out, the limit itself. */
  readonly ratedLimitC?: number
}

/** The temperature in C of 70 C PVC at which BS 7671 prints its factors. */
const britishLimitC = 70
const engineSpaceC = 50

/**
 * Ambient factor of a current rating, I(Ta) = I(Tref) x sqrt((Tmax - Ta) / (Tmax - Tref)), common practice without a source
 * of its own; or the row of a printed table. Refused at or above the limit of the insulation, where a wire may carry nothing.
 */
export function findAmbientFactor(warmth: Warmth, rule: AmbientRule = 'square-root'): AmbientFactorFound {
  if (rule === 'bs7671') return byBritishTable(warmth)
  if (rule === 'engine-space') return byEngineSpace(warmth)
  const { limitC, ambientC, ratedAtC, ratedLimitC = limitC } = warmth
  if (!(ratedAtC < ratedLimitC)) throw new RangeError(`a rating at ${ratedAtC} C needs insulation that bears more, not ${ratedLimitC} C`)
  if (!(ambientC < limitC)) return notFound(`${ambientC} C`, `an ambient below the ${limitC} C that the insulation bears`, [])
  const why = `ambient ${ambientC} C against ${ratedAtC} C, insulation ${limitC} C`
  return { ok: true, factor: Math.sqrt((limitC - ambientC) / (ratedLimitC - ratedAtC)), source: 'common-practice', status: 'common practice', why }
}

function byBritishTable({ limitC, ambientC, ratedAtC }: Warmth): AmbientFactorFound {
  const row = britishAmbientRows.find((row) => row.ambientC === ambientC)
  if (row && limitC === britishLimitC && ratedAtC === 30) return { ok: true, factor: row.factor, source: row.source, status: row.status, why: `BS 7671 at ${ambientC} C` }
  return notFound(ambientC, `an ambient of the table for 70 C PVC rated at 30 C`, britishAmbientRows.map((row) => String(row.ambientC)))
}

function byEngineSpace({ limitC, ambientC }: Warmth): AmbientFactorFound {
  const row = engineSpaceRows.find((row) => row.insulationC === limitC)
  if (row && ambientC === engineSpaceC) return { ok: true, factor: row.factor, source: row.source, status: row.status, why: `engine space of ${ambientC} C, insulation ${limitC} C` }
  return notFound(limitC, `an insulation temperature of the table for an engine space of ${engineSpaceC} C`, engineSpaceRows.map((row) => String(row.insulationC)))
}
