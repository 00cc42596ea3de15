import { partKinds } from '../parts/index.ts'
import { resolveVehicle, type Vehicle, type WiringRecord } from '../record/index.ts'

/** What must be known of a vehicle before its record resolves, as lists to choose from. */
export interface VehicleChoices {
  /** Spans of years between which the record changes; empty where it does not. */
  readonly years: readonly YearSpan[]
  readonly markets: readonly { readonly id: string; readonly title: string }[]
  readonly options: readonly { readonly id: string; readonly title: string; readonly usual: boolean }[]
  readonly serials: readonly { readonly id: string; readonly title: string }[]
}

/** A span and a year in it that stands for all of it. */
export interface YearSpan { readonly said: string; readonly year: number }

/** Spans of years for which the record gives no wiring are left out, unless it gives none for any. */
export function readChoices(record: WiringRecord): VehicleChoices {
  const all = listChoices(record)
  const years = all.years.filter(({ year }) => resolveVehicle(record, { ...firstVehicle(all), year }, partKinds).ok)
  return years.length > 0 ? { ...all, years } : all
}

function listChoices(record: WiringRecord): VehicleChoices {
  return {
    years: spansBetween(yearSteps(record)),
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

/** The first years of all spans: every `from`, and the year after every `to`. */
function yearSteps(value: unknown): number[] {
  if (Array.isArray(value)) return value.flatMap(yearSteps)
  if (typeof value !== 'object' || value === null) return []
  return Object.entries(value).flatMap(([key, inner]) => key === 'years' ? stepsOf(inner as { from?: number, to?: number }) : yearSteps(inner))
}

function stepsOf({ from, to }: { readonly from?: number, readonly to?: number }): number[] {
  return [...from === undefined ? [] : [from], ...to === undefined ? [] : [to + 1]]
}

function spansBetween(steps: readonly number[]): YearSpan[] {
  const starts = [...new Set(steps)].sort((a, b) => a - b)
  if (starts.length === 0) return []
  const between = starts.slice(1).map((next, i) => ({
    said: starts[i] === next - 1 ? String(starts[i]) : `${starts[i]} to ${next - 1}`, year: starts[i],
  }))
  const last = starts[starts.length - 1]
  return [{ said: `before ${starts[0]}`, year: starts[0] - 1 }, ...between, { said: `${last} and later`, year: last }]
}
