/** An edge of the graph of merged elements. */
interface Edge { readonly element: number; readonly from: number; readonly to: number }

/**
 * Amps through zero-ohm elements: their ends are one node, so the currents follow from Kirchhoff's law at
 * the points alone. `injected` is the sum of all other currents that flow out of each point, A. An element
 * in a loop of zeros has no determined current and gets NaN.
 */
export function mergedAmps(points: number, edges: readonly Edge[], injected: Float64Array): Map<number, number> {
  const at: Edge[][] = Array.from({ length: points }, () => [])
  for (const edge of edges) {
    at[edge.from].push(edge)
    if (edge.to !== edge.from) at[edge.to].push(edge)
  }
  const walk = walkForest(points, at)
  const amps = new Map<number, number>()
  const needed = injected.slice()
  for (const point of walk.order.reverse()) {
    const edge = walk.parent[point]
    if (!edge) continue
    const up = edge.from === point ? edge.to : edge.from
    amps.set(edge.element, edge.to === point ? needed[point] : -needed[point])
    needed[up] += needed[point]
  }
  for (const edge of edges) if (walk.inLoop.has(edge) || !amps.has(edge.element)) amps.set(edge.element, NaN)
  return amps
}

interface Walk { readonly order: number[]; readonly parent: (Edge | undefined)[]; readonly inLoop: ReadonlySet<Edge> }

/** A spanning forest breadth first, and every edge that lies on a loop. */
function walkForest(points: number, at: readonly Edge[][]): Walk {
  const order: number[] = []
  const parent: (Edge | undefined)[] = new Array<Edge | undefined>(points)
  const depth = new Int32Array(points).fill(-1)
  const across = new Set<Edge>()
  for (let root = 0; root < points; root++) {
    if (depth[root] >= 0 || at[root].length === 0) continue
    depth[root] = 0
    for (const queue = [root]; queue.length;) {
      const point = queue.shift() as number
      order.push(point)
      for (const edge of at[point]) {
        const next = edge.from === point ? edge.to : edge.from
        if (edge === parent[point]) continue
        if (depth[next] >= 0) { across.add(edge); continue }
        depth[next] = depth[point] + 1
        parent[next] = edge
        queue.push(next)
      }
    }
  }
  return { order, parent, inLoop: loopsOf(across, parent, depth) }
}

/** Each edge outside the forest closes a loop with the two paths up to where they meet. */
function loopsOf(across: ReadonlySet<Edge>, parent: readonly (Edge | undefined)[], depth: Int32Array): Set<Edge> {
  const inLoop = new Set<Edge>(across)
  for (const edge of across) {
    let a = edge.from, b = edge.to
    while (a !== b) {
      const lower = depth[a] >= depth[b] ? a : b
      const up = parent[lower] as Edge
      inLoop.add(up)
      const next = up.from === lower ? up.to : up.from
      if (lower === a) a = next
      else b = next
    }
  }
  return inLoop
}
