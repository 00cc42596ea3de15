/** Straight lines between points [x, y], flat beyond the ends; the points may stand in any order. */
export function interpolate(points: readonly (readonly [number, number])[], x: number): number {
  const rising = [...points].sort(([a], [b]) => a - b)
  const after = rising.findIndex(([at]) => at >= x)
  if (after === 0) return rising[0][1]
  if (after < 0) return rising[rising.length - 1][1]
  const [x0, y0] = rising[after - 1], [x1, y1] = rising[after]
  return y0 + (y1 - y0) * (x - x0) / (x1 - x0)
}
