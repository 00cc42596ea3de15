// What the hand calculations need: a root by halving, and the two laws that no one turns round by hand. Written from
// the design's formulas; nothing here comes from the code that is tested.

/** The x between low and high at which f, negative at `low` and positive at `high`, is zero. */
export function findZero(f: (x: number) => number, low: number, high: number): number {
  if (!(f(low) <= 0 && f(high) >= 0)) throw new RangeError(`no sign change from ${low} to ${high}: ${f(low)}, ${f(high)}`)
  for (let step = 0; step < 200; step++) {
    const middle = (low + high) / 2
    if (f(middle) <= 0) low = middle
    else high = middle
  }
  return (low + high) / 2
}

/** I = I0·u·(u² + e²)^−0.225, u = V/V0, I0 = P/V0, e = c^(−1/0.45), c the hot over the cold resistance. */
export function lampAmps(volts: number, ratedV: number, powerW: number, coldRatio = 12): number {
  const u = volts / ratedV
  const e = coldRatio ** (-1 / 0.45)
  return powerW / ratedV * u * (u ** 2 + e ** 2) ** -0.225
}

/** Volts of a diode at a current: V = n·Vt·ln(1 + I/Is) + I·R, with Is such that it has `forwardV` in all at `ratedA`. */
export function diodeVolts(amps: number, { forwardV, ratedA, emission, ohm }: DiodeFigures): number {
  const nVt = emission * 0.02585
  const saturationA = ratedA / (Math.exp((forwardV - ratedA * ohm) / nVt) - 1)
  return nVt * Math.log(1 + amps / saturationA) + amps * ohm
}

export interface DiodeFigures { readonly forwardV: number; readonly ratedA: number; readonly emission: number; readonly ohm: number }
