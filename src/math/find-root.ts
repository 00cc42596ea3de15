export interface Root { readonly x: number; readonly f: number; readonly steps: number }

/**
 * A root of f between a and b, where f(a) and f(b) differ in sign, by false position with the Illinois
 * correction, or the tightest bracket's better end where f jumps across zero.
 */
export function findRoot(f: (x: number) => number, a: number, b: number, fa: number, fb: number, tolX: number, tolF: number): Root {
  let steps = 0
  let side = 0
  while (steps++ < 200) {
    if (Math.abs(b - a) <= tolX) break
    let x = (fa * b - fb * a) / (fa - fb)
    if (!(x > Math.min(a, b) && x < Math.max(a, b)) || steps % 8 === 0) x = (a + b) / 2
    const fx = f(x)
    if (Math.abs(fx) <= tolF) return { x, f: fx, steps }
    if (fx > 0 === fb > 0) {
      b = x; fb = fx
      if (side === -1) fa /= 2
      side = -1
    } else {
      a = x; fa = fx
      if (side === 1) fb /= 2
      side = 1
    }
  }
  const x = Math.abs(fa) < Math.abs(fb) ? a : b
  return { x, f: f(x), steps }
}

/** What a search near a guess goes by; `slope` is that of f, where one is known, and is kept up to date for the next search. */
export interface Near { readonly low: number; readonly high: number; readonly step: number; readonly tolF: number; slope?: number }

/**
 * A root of a rising f near `guess`, by secants that first widen a bracket around it; null where f has no root between `low`
 * and `high`, or is not a number there. The last x that f was asked for is the root.
 */
export function findRootNear(f: (x: number) => number, guess: number, near: Near): Root | null {
  const { low, high, step, tolF } = near
  let x = Math.min(high, Math.max(low, guess)), fx = f(x)
  // A known slope leads a little past the root, so that the bracket is narrow at once.
  let reach = near.slope === undefined ? step : Math.max(1e-9 * Math.abs(x), 1.2 * Math.abs(fx / near.slope))
  while (Math.abs(fx) > tolF) {
    const end = fx < 0 ? high : low
    if (Number.isNaN(fx) || x === end) return null
    const next = fx < 0 ? Math.min(high, x + reach) : Math.max(low, x - reach)
    const fNext = f(next)
    if (fNext !== fx) near.slope = Math.abs((fNext - fx) / (next - x))
    if (fx < 0 !== fNext < 0) return findRoot(f, x, next, fx, fNext, 1e-13 * Math.max(1, Math.abs(x)), tolF)
    x = next
    fx = fNext
    reach *= 4
  }
  return { x, f: fx, steps: 0 }
}
