import { showFits } from './fits.ts'
import { showPath, valueAt } from './path.ts'
import type { Resolving } from './resolving.ts'
import type { Fits, WiringRecord } from './schema.ts'
import type { Overlap, Wiring, WiringWire } from './wiring.ts'

/** Wires, and fixings, that join the same two points in this vehicle because the editions of two of them share its year. */
export function findOverlaps(resolving: Resolving, { wires, fixings }: Pick<Wiring, 'wires' | 'fixings'>): Overlap[] {
  const wired = [...wires.values()].flatMap(({ id, ends: [{ at: from }, { at: to }] }) => from === null || to === null ? [] : [{ id, joins: [from, to] as const }])
  return [...findAmong(resolving, 'wires', wired), ...findAmong(resolving, 'fixings', [...fixings.values()]), ...findTwice(resolving.record, [...wires.values()])]
}

/** Wires that nothing tells apart: same ends, colour, size and vehicles, and no note on either. Two in parallel on purpose differ in colour or bear a note. */
function findTwice({ wires: all = {} }: WiringRecord, wires: readonly WiringWire[]): Overlap[] {
  const known = new Map<string, string>()
  return wires.flatMap(({ id, ends, colour }) => {
    const { sizeMm2, sizeAwg, sizeStrands, fits, note } = new Map(Object.entries(all)).get(id) ?? {}
    if (note !== undefined || colour === undefined || colour === 'unknown' || ends.some(({ at }) => at === null)) return []
    const look = JSON.stringify([ends.map(({ at }) => at).sort(), colour, sizeMm2, sizeAwg, sizeStrands, fits])
    const before = known.get(look)
    known.set(look, before ?? id)
    return before === undefined ? [] : [{ items: [before, id] as const, sentence: `${showPath(['wires', before])} and ${showPath(['wires', id])} join the same two points in the same colour and size: if the wire was entered twice, take one out; if two lie side by side, say so in a note` }]
  })
}

interface Joining { readonly id: string; readonly joins: readonly [string, string] }

function findAmong(resolving: Resolving, collection: 'wires' | 'fixings', joining: readonly Joining[]): Overlap[] {
  const byEnds = new Map<string, string[]>()
  for (const { id, joins } of joining) {
    const key = [...joins].sort().join(' ')
    byEnds.set(key, [...byEnds.get(key) ?? [], id])
  }
  return [...byEnds.values()].flatMap((ids) => {
    const inTime = [...ids].sort((a, b) => beginOf(resolving.record, a) - beginOf(resolving.record, b))
    return inTime.slice(1).flatMap((late, i) => {
      const early = inTime[i], shared = sharedYears(resolving, early, late)
      return shared === null ? [] : [{ items: [early, late] as const, sentence: sayOverlap(resolving.record, collection, [early, late], shared) }]
    })
  })
}

/** The first year of an item; what has no years comes last. */
function beginOf(record: WiringRecord, id: string): number {
  return spansOf(fitsOf(record, id)).reduce((first, { from }) => Math.min(first, from), 9999)
}

function sayOverlap(record: WiringRecord, collection: 'wires' | 'fixings', ids: readonly string[], shared: string): string {
  const [first, second] = ids.map((id) => showPath([collection, id]))
  const [early, late] = ids.map((id) => showFits(fitsOf(record, id)))
  return `${first} and ${second} join the same two points, and both are in the vehicles of ${shared} (the first is for ${early}, the second for ${late}): `
    + 'if they are two editions of one, let the earlier end the year before the later begins'
}

/**
 * The years that two items share although each has years before or after the other, in words: so it looks where one was
 * meant to follow the other. Null where they do not, as with two in parallel, or where this vehicle is of no such year.
 */
export function sharedYears({ record, vehicle: { year } }: Resolving, first: string, second: string): string | null {
  if (year === undefined) return null
  for (const one of spansOf(fitsOf(record, first))) {
    for (const other of spansOf(fitsOf(record, second))) {
      const [early, late] = one.from < other.from ? [one, other] : [other, one]
      if (early.from < late.from && early.to < late.to && late.from <= year && year <= early.to) return showFits([{ years: { from: late.from, to: early.to } }])
    }
  }
  return null
}

function spansOf(fits: Fits = []): { readonly from: number; readonly to: number }[] {
  return fits.flatMap(({ years }) => years ? [{ from: years.from ?? -Infinity, to: years.to ?? Infinity }] : [])
}

/** The condition of a wire or a fixing. */
export function fitsOf({ wires, fixings }: WiringRecord, id: string): Fits | undefined {
  return valueAt(wires, [id, 'fits']) as Fits | undefined ?? valueAt(fixings, [id, 'fits']) as Fits | undefined
}
