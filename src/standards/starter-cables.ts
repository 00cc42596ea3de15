import { notFound, type NotFound } from './refusal.ts'
import { starterCable } from './starter-cable-rows.ts'

/** Copper that a starter lead needs, and the trade size not below it, mm2. Always an assumption: no table was published. */
export type StarterCableFound =
  | { readonly ok: true; readonly areaMm2: number; readonly tradeMm2: number; readonly dropV: number; readonly assumed: true; readonly why: string }
  | NotFound

/** Sizes of starter cable that the trade keeps. */
const tradeSizesMm2 = [10, 16, 20, 25, 35, 50, 70, 95, 120]

/**
 * A = 0.0175 I L / U for one lead of a starter, L its length in metres; U is the drop allowed at 6 or 12 V. The earth path is
 * counted apart, and practice fits no less than 16 mm2 at 12 V and 25 mm2 at 6 V whatever the sum says.
 */
export function sizeStarterCable(systemV: number, currentA: number, lengthM: number): StarterCableFound {
  if (systemV !== 6 && systemV !== 12) return notFound(`${systemV} V`, 'a system with a known starter drop', ['6 V', '12 V'])
  const dropV = (systemV === 6 ? starterCable.drop6V : starterCable.drop12V).value
  const areaMm2 = (starterCable.resistivity.value * currentA * lengthM) / dropV
  const tradeMm2 = tradeSizesMm2.find((size) => size >= areaMm2)
  if (tradeMm2 === undefined) return notFound(`${areaMm2} mm2`, 'an area that a trade size reaches', tradeSizesMm2.map(String))
  return { ok: true, areaMm2, tradeMm2, dropV, assumed: true, why: `${starterCable.resistivity.value} ohm mm2/m, ${dropV} V over one lead` }
}
