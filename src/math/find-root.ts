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
