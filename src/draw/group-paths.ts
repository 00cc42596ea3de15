import type { Wiring } from '../record/index.ts'
import type { PathGraph } from './path-graph.ts'
import type { Ranks } from './rank-nodes.ts'

const GENERATORS = new Set(['dynamo', 'alternator', 'control-box'])

/**
 * What a path belongs to, in a word or two for the bracket below it: the circuit that the record's layout names, else
 * the nearest switch on the way up to the supply.
 */
export function groupOf(wiring: Wiring, graph: PathGraph, ranks: Ranks, earth: number): string {
  const above = climb(graph, ranks, earth)
  if (above.length === 0) return 'earth'
  if (graph.battery !== null && above.includes(graph.battery) && above.length <= 3) return 'supply'
  const parts = above.map((node) => graph.nodes[node].part).filter((part) => part !== undefined)
  const circuits = Object.entries(wiring.layout.circuits ?? {})
  const named = parts.map(({ id }) => circuits.find(([, ids]) => ids.includes(id))).find((circuit) => circuit !== undefined)
  if (named) return named[0]
  const nearest = parts.find(({ kind }) => kind === 'control' || kind === 'electromagnet' || GENERATORS.has(kind))
  if (nearest === undefined) return 'straight from the supply'
  return GENERATORS.has(nearest.kind) ? 'charging' : nearest.title
}

/** Nodes above, nearest first. */
export function climb(graph: PathGraph, ranks: Ranks, start: number): number[] {
  const found = [start]
  for (const node of found) {
    for (const { a, b } of graph.edges) {
      const other = a.node === node ? b.node : b.node === node ? a.node : null
      if (other !== null && ranks.layerOf[other] < ranks.layerOf[node] && !found.includes(other)) found.push(other)
    }
  }
  return found.slice(1)
}
