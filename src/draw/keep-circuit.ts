import type { Wiring } from '../record/index.ts'
import { climb, groupOf } from './group-paths.ts'
import type { PathGraph } from './path-graph.ts'
import type { Ranks } from './rank-nodes.ts'

/** The circuits that a vehicle's paths belong to, in order of name. */
export function listCircuits(wiring: Wiring, graph: PathGraph, ranks: Ranks): string[] {
  return [...new Set(earthsOf(graph).map((earth) => groupOf(wiring, graph, ranks, earth)))].filter((name) => name !== 'earth' && name !== 'supply').sort()
}

/** The graph with the paths of one circuit alone: everything on the way from the supply to its earths, and the battery. */
export function keepCircuit(wiring: Wiring, graph: PathGraph, ranks: Ranks, circuit: string): PathGraph {
  const wanted = earthsOf(graph).filter((earth) => [circuit, 'supply'].includes(groupOf(wiring, graph, ranks, earth)))
  const named = wiring.layout.circuits?.[circuit] ?? []
  const listed = graph.nodes.flatMap(({ part }, node) => part && named.includes(part.id) ? [node] : [])
  const kept = new Set([...wanted, ...listed].flatMap((node) => [node, ...climb(graph, ranks, node), ...earthsBelow(graph, node)]))
  const order = [...kept].sort((a, b) => a - b)
  const place = new Map(order.map((node, index) => [node, index]))
  const move = ({ node, end }: { readonly node: number, readonly end: number }) => ({ node: place.get(node) ?? -1, end })
  return {
    ...graph,
    nodes: order.map((node) => graph.nodes[node]),
    edges: graph.edges.filter(({ a, b }) => kept.has(a.node) && kept.has(b.node)).map((edge) => ({ ...edge, a: move(edge.a), b: move(edge.b) })),
    battery: graph.battery === null ? null : place.get(graph.battery) ?? null,
  }
}

/** The earth connections that a node stands on directly. */
function earthsBelow({ nodes, edges }: PathGraph, node: number): number[] {
  const beside = edges.flatMap(({ a, b }) => a.node === node ? [b.node] : b.node === node ? [a.node] : [])
  return beside.filter((other) => nodes[other].kind === 'earth')
}

function earthsOf(graph: PathGraph): number[] {
  return graph.nodes.flatMap(({ kind }, node) => kind === 'earth' ? [node] : [])
}
