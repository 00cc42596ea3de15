import { compareIds } from './compare-ids.ts'
import { findFits } from './find-fits.ts'
import type { Path } from './path.ts'
import type { WiringRecord } from './schema.ts'
import { compareSerials, placeSerial } from './serial-order.ts'

/** Years over which no year makes a difference; without `from` or `to` it is open. `begins` and `ends` are the `fits` with a border at its start. */
export interface YearSpan { readonly from?: number; readonly to?: number; readonly begins: readonly Path[]; readonly ends: readonly Path[] }

/** A number in a series at which something begins, or after which it ends. */
export interface SerialBorder { readonly series: string; readonly serial: string; readonly side: 'from' | 'to'; readonly at: readonly Path[] }

/** All that makes one vehicle of the record differ from another: the editions are the combinations of it. */
export interface Editions {
  readonly years: readonly YearSpan[]
  readonly serials: readonly SerialBorder[]
  readonly markets: readonly string[]
  readonly options: readonly string[]
}

/** The borders that the record's `fits` draw between vehicles, and the markets and options that any of them asks for. */
export function listEditions(record: WiringRecord): Editions {
  const placed = findFits(record).filter(({ at }) => at[at.length - 1] === 'fits')
  const conditions = placed.flatMap(({ at, fits }) => fits.map((condition, i) => ({ at: [...at, String(i)], condition })))
  const named = (list: (condition: (typeof conditions)[number]['condition']) => readonly string[]) =>
    [...new Set(conditions.flatMap(({ condition }) => list(condition)))].sort(compareIds)
  return {
    years: listYearSpans(conditions.map(({ at, condition: { years = {} } }) => ({ at, ...years }))),
    serials: listSerialBorders(record, conditions.flatMap(({ at, condition: { serials } }) => serials ? [{ at, ...serials }] : [])),
    markets: named(({ markets = [] }) => markets),
    options: named(({ with: wanted = [], without = [] }) => [...wanted, ...without]),
  }
}

function listYearSpans(spans: readonly { readonly at: Path; readonly from?: number; readonly to?: number }[]): YearSpan[] {
  const starts = new Set(spans.flatMap(({ from, to }) => [...from === undefined ? [] : [from], ...to === undefined ? [] : [to + 1]]))
  const years = [undefined, ...[...starts].sort((a, b) => a - b)]
  return years.map((from, i) => {
    const next = years[i + 1]
    return {
      ...from !== undefined && { from }, ...next !== undefined && { to: next - 1 },
      begins: from === undefined ? [] : spans.filter((span) => span.from === from).map(({ at }) => at),
      ends: from === undefined ? [] : spans.filter((span) => span.to === from - 1).map(({ at }) => at),
    }
  })
}

type Span = NonNullable<NonNullable<WiringRecord['parts'][string]['fits']>[number]['serials']> & { readonly at: Path }

function listSerialBorders(record: WiringRecord, spans: readonly Span[]): SerialBorder[] {
  const borders = new Map<string, { readonly series: string, readonly serial: string, readonly side: 'from' | 'to', readonly at: Path[] }>()
  for (const { at, series, from, to } of spans) {
    for (const [side, serial] of [['from', from], ['to', to]] as const) {
      if (serial === undefined) continue
      const key = JSON.stringify([series, side, serial])
      const border = borders.get(key) ?? { series, serial, side, at: [] }
      border.at.push(at)
      borders.set(key, border)
    }
  }
  return [...borders.values()].sort((a, b) => compareIds(a.series, b.series) || compareBorders(record, a, b))
}

/** A border before a number comes before the border after it. */
function compareBorders(record: WiringRecord, a: Omit<SerialBorder, 'at'>, b: Omit<SerialBorder, 'at'>): number {
  const series = record.serials?.[a.series]
  const [left, right] = [a, b].map(({ serial }) => series && placeSerial(serial, series))
  const order = left && right ? compareSerials(left, right) : compareIds(a.serial, b.serial)
  return order || compareIds(a.side, b.side)
}
