/** One of the two unknowns of a pair: where it may lie, the step by which slopes are first measured, and the most that it may move at once. */
export interface Unknown { readonly low: number; readonly high: number; readonly step: number; readonly most: number }

type Two = readonly [number, number]

/** Evaluations after which the search gives up. */
const MOST = 24
/** Steps after which slopes are measured anew: corrected ones grow stale where f bends. */
const FRESH = 5

/**
 * Both unknowns at which both values of f vanish, near a start: Newton's method, J·s = −f, whose slopes J each step corrects by
 * what it met, J += f(x + s)·sᵀ/(s·s) (Broyden, 1965), in units of the unknowns' own steps. Answers true with f last asked at the
 * pair, both values within `tol`; false where it does not get there or is led beyond an unknown's range.
 */
export function findPairNear(f: (x: number, y: number) => Two, start: Two, unknowns: readonly [Unknown, Unknown], tol: Two): boolean {
  const [ux, uy] = unknowns
  let [x, y] = start
  let at = f(x, y)
  let xx = 0, xy = 0, yx = 0, yy = 0
  for (let asked = 1, step = 0; !isWithin(at, tol); step++) {
    if (asked >= MOST || !Number.isFinite(at[0] + at[1])) return false
    if (step % FRESH === 0) {
      const alongX = f(x + ux.step, y), alongY = f(x, y + uy.step)
      xx = alongX[0] - at[0]; yx = alongX[1] - at[1]
      xy = alongY[0] - at[0]; yy = alongY[1] - at[1]
      asked += 2
    }
    const det = xx * yy - xy * yx
    let sx = (xy * at[1] - yy * at[0]) / det, sy = (yx * at[0] - xx * at[1]) / det
    const limit = Math.min(1, ux.most / Math.abs(sx * ux.step), uy.most / Math.abs(sy * uy.step))
    sx *= limit
    sy *= limit
    x += sx * ux.step
    y += sy * uy.step
    if (!(x >= ux.low && x <= ux.high && y >= uy.low && y <= uy.high)) return false
    // What the slopes foretold is −f as far as the step was not cut short.
    const [f0, f1] = at
    at = f(x, y)
    asked++
    const miss0 = at[0] - (1 - limit) * f0, miss1 = at[1] - (1 - limit) * f1, size = sx * sx + sy * sy
    xx += miss0 * sx / size; xy += miss0 * sy / size
    yx += miss1 * sx / size; yy += miss1 * sy / size
  }
  return true
}

function isWithin([a, b]: Two, [tolA, tolB]: Two): boolean {
  return Math.abs(a) <= tolA && Math.abs(b) <= tolB
}
