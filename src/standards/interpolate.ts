export interface Point {
  readonly x: number
  readonly y: number
}

/** y at `x` on the straight pieces between points of rising x; beyond the ends the last piece goes on. */
export function interpolate(points: readonly Point[], x: number): number {
  const above = points.findIndex((point) => point.x >= x)
  const upper = Math.max(1, above < 0 ? points.length - 1 : above)
  const a = points[upper - 1]
  const b = points[upper]
  return a.y + ((b.y - a.y) * (x - a.x)) / (b.x - a.x)
}
