import { compareIds } from './compare-ids.ts'
import type { WiringRecord } from './schema.ts'

export type SerialSeries = NonNullable<WiringRecord['serials']>[string]

/** A serial number with its place in the order of its series. */
export interface PlacedSerial { readonly prefix: number; readonly number: string }

/**
 * The place of a number in its series; undefined when it is not of the series. With prefixes, a number is one of them
 * and then digits, spaces and hyphens between passed over; without, any text, ordered with its digits as numbers.
 */
export function placeSerial(serial: string, series: SerialSeries): PlacedSerial | undefined {
  if (!series.prefixes) return serial.trim() === '' ? undefined : { prefix: 0, number: serial.trim().toUpperCase() }
  const plain = strip(serial)
  const places = placesOf(series.prefixes)
  let found: PlacedSerial | undefined
  // A prefix may end in digits itself: of those that leave a number, the first in the list is meant.
  for (let cut = plain.length - 1; cut >= 0 && isNumber(plain[cut]); cut--) {
    const prefix = places.get(plain.slice(0, cut))
    if (prefix !== undefined && (found === undefined || prefix < found.prefix)) found = { prefix, number: plain.slice(cut) }
  }
  return found
}

const known = new WeakMap<readonly string[], ReadonlyMap<string, number>>()

/** The place of each prefix in its list, found once: a record asks for its few series a thousand times. */
function placesOf(prefixes: readonly string[]): ReadonlyMap<string, number> {
  const places = known.get(prefixes) ?? new Map(prefixes.map((prefix, i) => [strip(prefix), i] as const).reverse())
  known.set(prefixes, places)
  return places
}

/** Below zero when a comes before b. */
export function compareSerials(a: PlacedSerial, b: PlacedSerial): number {
  return a.prefix - b.prefix || compareNumbers(a.number, b.number)
}

/** 007 and 7 are the same number. */
function compareNumbers(a: string, b: string): number {
  return compareIds(a.replace(/\d+/g, trimZeros), b.replace(/\d+/g, trimZeros))
}

function trimZeros(digits: string): string {
  return digits.replace(/^0+(?=\d)/, '')
}

function isNumber(text: string): boolean {
  return /^\d+$/.test(text)
}

function strip(text: string): string {
  return text.replace(/[\s-]/g, '').toUpperCase()
}
