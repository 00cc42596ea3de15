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

/**
 * A root of a rising f near `guess`, by secants that first widen a bracket around it from `step` on; null where f has no root
 * between `low` and `high`, or is not a number there. The last x that f was asked for is the root.
 */
export function findRootNear(f: (x: number) => number, guess: number, step: number, low: number, high: number, tolF: number): Root | null {
  let x = Math.min(high, Math.max(low, guess)), fx = f(x)
  const isRoot = () => Math.abs(fx) <= tolF
  for (let reach = Math.abs(step); !isRoot(); reach *= 4) {
    const end = fx < 0 ? high : low
    if (Number.isNaN(fx) || x === end) return null
    const next = fx < 0 ? Math.min(high, x + reach) : Math.max(low, x - reach)
    const fNext = f(next)
    if (fx < 0 !== fNext < 0) return findRoot(f, x, next, fx, fNext, 1e-13 * Math.max(1, Math.abs(x)), tolF)
    x = next
    fx = fNext
  }
  return { x, f: fx, steps: 0 }
}
