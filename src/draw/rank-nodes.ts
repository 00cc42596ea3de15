import type { GraphNode, PathGraph } from './path-graph.ts'

/** Each node's layer: 0 is the supply rail, the last one the earth rail. */
export interface Ranks {
  readonly layerOf: readonly number[]
  readonly layers: number
  /** For each end of each node, how near it is to the supply: 1 on the rail, 0 on earth. */
  readonly nearness: readonly (readonly number[])[]
}

/**
 * Layers from the wiring alone. With one ohm in every wire and every element and all contacts closed, volts fall from
 * the supply to earth, so the highest volts at a node say what stands above what. Loads sink as low as they can, everything
 * else rises.
 */
export function rankNodes(graph: PathGraph): Ranks {
  const nearness = solveNearness(graph)
  const order = orderByNearness(graph, nearness)
  const place = new Array<number>(graph.nodes.length)
  order.forEach((node, index) => { place[node] = index })
  const { above, below } = neighboursOf(graph, place)
  const depth = longestFrom(graph, order, above)
  const height = longestFrom(graph, [...order].reverse(), below)
  const most = Math.max(2, ...order.filter((node) => !isRail(graph.nodes[node])).map((node) => depth[node] + height[node]))
  const layerOf = new Array<number>(graph.nodes.length).fill(0)
  for (const node of order) layerOf[node] = layerFor(graph.nodes[node], node)
  return { layerOf, layers: most + 1, nearness }

  function layerFor(item: GraphNode, node: number): number {
    if (item.kind === 'rail') return 0
    if (item.kind === 'earth') return most
    const asHigh = Math.max(1, ...above[node].map((up) => layerOf[up] + 1))
    // The battery stands right under the rail that it feeds, where a person looks for it.
    return node !== graph.battery && sinks(item, above[node].length, below[node].length) ? Math.max(asHigh, most - Math.max(1, height[node])) : asHigh
  }
}

function isRail(node: GraphNode): boolean {
  return node.kind === 'rail' || node.kind === 'earth'
}

function sinks(node: GraphNode, above: number, below: number): boolean {
  if (node.kind === 'splice') return below >= above
  if (node.kind === 'loose') return false
  return node.elements.some(({ does }) => does === 'load' || does === 'winding' || does === 'source')
}

function orderByNearness(graph: PathGraph, nearness: readonly (readonly number[])[]): number[] {
  const joined = graph.nodes.map(() => new Set<number>())
  for (const { a, b } of graph.edges) {
    joined[a.node].add(a.end)
    joined[b.node].add(b.end)
  }
  const highest = graph.nodes.map(({ kind }, node) => {
    if (kind === 'rail') return 2
    if (kind === 'earth') return -1
    const ends = joined[node].size > 0 ? [...joined[node]] : nearness[node].map((_, end) => end)
    return Math.max(0, ...ends.map((end) => nearness[node][end]))
  })
  const byId = (a: number, b: number) => graph.nodes[a].id < graph.nodes[b].id ? -1 : 1
  return graph.nodes.map((_, node) => node).sort((a, b) => highest[b] - highest[a] || byId(a, b))
}

function neighboursOf(graph: PathGraph, place: readonly number[]): { above: number[][], below: number[][] } {
  const above = graph.nodes.map((): number[] => [])
  const below = graph.nodes.map((): number[] => [])
  for (const { a, b } of graph.edges) {
    if (a.node === b.node) continue
    const [up, down] = place[a.node] < place[b.node] ? [a.node, b.node] : [b.node, a.node]
    if (graph.nodes[up].kind === graph.nodes[down].kind && isRail(graph.nodes[up])) continue
    above[down].push(up)
    below[up].push(down)
  }
  return { above, below }
}

/** Longest chain from a rail to each node, in the given order; what hangs free begins as if at a rail. */
function longestFrom(graph: PathGraph, order: readonly number[], before: readonly (readonly number[])[]): number[] {
  const longest = new Array<number>(graph.nodes.length).fill(0)
  for (const node of order) longest[node] = Math.max(isRail(graph.nodes[node]) ? 0 : 1, ...before[node].map((other) => longest[other] + 1))
  return longest
}

// --- volts in a network of equal resistances ---

function solveNearness(graph: PathGraph): number[][] {
  const index = new Map<string, number>()
  const at = (key: string) => index.get(key) ?? (index.set(key, index.size), index.size - 1)
  const pairs: (readonly [number, number])[] = graph.edges.map(({ a, b }) => [at(`${a.node} ${a.end}`), at(`${b.node} ${b.end}`)])
  graph.nodes.forEach((node, n) => pairs.push(...innerPairs(node, n, n === graph.battery).map(([a, b]) => [at(a), at(b)] as const)))
  graph.nodes.forEach((node, n) => node.ends.forEach((_, end) => at(`${n} ${end}`)))
  const fixed = new Array<number>(index.size).fill(Number.NaN)
  graph.nodes.forEach(({ kind }, n) => {
    if (kind === 'rail') fixed[at(`${n} 0`)] = 1
    if (kind === 'earth') fixed[at(`${n} 0`)] = 0
  })
  const volts = relax(pairs, fixed)
  return graph.nodes.map((node, n) => node.ends.map((_, end) => volts[at(`${n} ${end}`)]))
}

function innerPairs(node: GraphNode, n: number, isBattery: boolean): (readonly [string, string])[] {
  if (isBattery) return []
  const key = (is: string) => {
    const end = node.ends.findIndex((one) => one.is === is)
    return end < 0 ? `${n} ${is}` : `${n} ${end}`
  }
  if (node.elements.length > 0) return node.elements.map(({ from, to }) => [key(from), key(to)] as const)
  return node.ends.slice(1).map((_, end) => [`${n} 0`, `${n} ${end + 1}`] as const)
}

const SWEEPS = 400

/** Gauss-Seidel on equal resistances with a slight leak to 0, so that what hangs free has volts too. */
function relax(pairs: readonly (readonly [number, number])[], fixed: readonly number[]): number[] {
  const beside = fixed.map((): number[] => [])
  for (const [a, b] of pairs) {
    if (a === b) continue
    beside[a].push(b)
    beside[b].push(a)
  }
  const volts = fixed.map((value) => Number.isNaN(value) ? 0.5 : value)
  for (let sweep = 0; sweep < SWEEPS; sweep++) {
    for (let i = 0; i < volts.length; i++) {
      if (!Number.isNaN(fixed[i])) continue
      let sum = 0
      for (const other of beside[i]) sum += volts[other]
      volts[i] = sum / (beside[i].length + 1e-6)
    }
  }
  return volts
}
