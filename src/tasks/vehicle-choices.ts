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

/** A span and a year in it that stands for all of it. */
export interface YearChoice { readonly said: string; readonly year: number }

/** Spans of years for which the record gives no wiring are left out, unless it gives none for any. */
export function readChoices(record: WiringRecord): VehicleChoices {
  const all = listChoices(record)
  const years = all.years.filter(({ year }) => resolveVehicle(record, { ...firstVehicle(all), year }, partKinds).ok)
  return years.length > 0 ? { ...all, years } : all
}

function listChoices(record: WiringRecord): VehicleChoices {
  return {
    years: sayYears(record),
    markets: Object.entries(record.markets ?? {}).map(([id, { title }]) => ({ id, title })),
    options: Object.entries(record.options ?? {}).map(([id, { title, usual }]) => ({ id, title, usual: usual ?? false })),
    serials: Object.entries(record.serials ?? {}).map(([id, { title }]) => ({ id, title })),
  }
}

/** The vehicle that is shown first: the earliest span, the first market, options as they usually are. */
export function firstVehicle({ years, markets, options }: VehicleChoices): Vehicle {
  return {
    ...years.length > 0 && { year: years[0].year },
    ...markets.length > 0 && { market: markets[0].id },
    ...options.length > 0 && { options: Object.fromEntries(options.map(({ id, usual }) => [id, usual])) },
  }
}

/** The record's spans of years, each said and with a year that stands for it; none where no year makes a difference. */
function sayYears(record: WiringRecord): YearChoice[] {
  const { years } = listEditions(record)
  if (years.length < 2) return []
  return years.map(({ from, to }) => {
    if (from === undefined) return { said: `before ${(to ?? 0) + 1}`, year: to ?? 0 }
    if (to === undefined) return { said: `${from} and later`, year: from }
    return { said: from === to ? String(from) : `${from} to ${to}`, year: from }
  })
}
