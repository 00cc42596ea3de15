/** The strands of a conductor: how many, how thick each, and whether the thickness was given in inches. */
export interface Strands {
  readonly count: number
  readonly strandMm: number
  readonly imperial: boolean
}

const written = /^(\d{1,4})\s*[/x×*]\s*(?:(\d{1,4})\s*[/x×*]\s*)?(\d*[.,]?\d+)\s*(mm|in|inch|")?$/i

/** A thicker "strand" is a wire-gauge number (23/36), which no table here covers. */
const thickestStrandMm = 5

/**
 * Strands as people write them: 28/0.30, 14/.012, 14/012, 16x0.20, 7/12/0.45 (bundles of strands). Without a unit a strand
 * below 0.05, or below 0.1 with three decimals, is in inches. Null when it cannot be read.
 */
export function readStrands(text: string): Strands | null {
  const match = written.exec(text.trim())
  if (!match) return null
  const figure = match[3].replace(',', '.')
  const digits = /^0\d{2,}$/.test(figure) ? `.${figure}` : figure
  const thickness = Number(digits)
  const imperial = match[4] ? !/mm/i.test(match[4]) : isInches(digits)
  const strandMm = imperial ? thickness * 25.4 : thickness
  const count = Number(match[1]) * Number(match[2] ?? 1)
  return count > 0 && strandMm > 0 && strandMm <= thickestStrandMm ? { count, strandMm, imperial } : null
}

function isInches(digits: string): boolean {
  const thickness = Number(digits)
  const decimals = digits.split('.')[1]?.length ?? 0
  return thickness < 0.05 || (thickness < 0.1 && decimals >= 3)
}

/** Copper area in mm2: n x pi/4 x d^2. */
export function strandsAreaMm2(strands: Strands): number {
  return strands.count * (Math.PI / 4) * strands.strandMm ** 2
}

export function isSameStrands(a: Strands, b: Strands): boolean {
  return a.count === b.count && a.imperial === b.imperial && Math.abs(a.strandMm - b.strandMm) < 0.0005
}
