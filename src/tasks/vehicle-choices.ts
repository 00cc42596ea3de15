import { partKinds } from '../parts/index.ts'
import { listEditions, resolveVehicle, type Vehicle, type WiringRecord } from '../record/index.ts'

/** What must be known of a vehicle before its record resolves, as lists to choose from. */
export interface VehicleChoices {
  /** Spans of years between which the record changes; empty where it does not. */
  readonly years: readonly YearChoice[]
  readonly markets: readonly { readonly id: string; readonly title: string }[]
  readonly options: readonly { readonly id: string; readonly title: string; readonly usual: boolean }[]
  readonly serials: readonly { readonly id: string; readonly title: string }[]
}

/** A span, a year in it that stands for all of it, and whether its wiring fits together. */
export interface YearChoice { readonly said: string; readonly year: number; readonly from?: number; readonly to?: number; readonly fits: boolean }

/** Spans of years for which no supply is meant are left out, unless none is meant for any: nothing was built then. */
export function readChoices(record: WiringRecord): VehicleChoices {
  const all = listChoices(record)
  const judged = all.years.flatMap((span) => {
    const clashes = clashesIn(record, { ...firstVehicle(all), year: span.year })
    return clashes.includes('no supply') ? [] : [{ ...span, fits: clashes.length === 0 }]
  })
  return judged.length > 0 ? { ...all, years: judged } : all
}

/** What keeps a vehicle from having one wiring, though all of it is known. */
function clashesIn(record: WiringRecord, vehicle: Vehicle): string[] {
  const resolved = resolveVehicle(record, vehicle, partKinds)
  return resolved.ok ? [] : resolved.conflicts.map(({ what }) => what)
}

function listChoices(record: WiringRecord): VehicleChoices {
  return {
    years: sayYears(record),
    markets: Object.entries(record.markets ?? {}).map(([id, { title }]) => ({ id, title })),
    options: Object.entries(record.options ?? {}).map(([id, { title, usual }]) => ({ id, title, usual: usual ?? false })),
    serials: Object.entries(record.serials ?? {}).map(([id, { title }]) => ({ id, title })),
  }
}

/** The vehicle that is shown first: the earliest span that fits together, the first market, options as they usually are. */
export function firstVehicle({ years, markets, options }: VehicleChoices): Vehicle {
  const span = years.find(({ fits }) => fits) ?? years.at(0)
  return {
    ...span && { year: span.year },
    ...markets.length > 0 && { market: markets[0].id },
    ...options.length > 0 && { options: Object.fromEntries(options.map(({ id, usual }) => [id, usual])) },
  }
}

/** The record's spans of years, each said and with a year that stands for it; none where no year makes a difference. */
function sayYears(record: WiringRecord): YearChoice[] {
  const { years } = listEditions(record)
  if (years.length < 2) return []
  return years.map(({ from, to }) => ({
    said: saySpan(from, to), year: from ?? to ?? 0, fits: true, ...from !== undefined && { from }, ...to !== undefined && { to },
  }))
}

function saySpan(from: number | undefined, to: number | undefined): string {
  if (from === undefined) return `before ${(to ?? 0) + 1}`
  if (to === undefined) return `${from} and later`
  return from === to ? String(from) : `${from} to ${to}`
}
