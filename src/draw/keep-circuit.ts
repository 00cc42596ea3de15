import type { Wiring } from '../record/index.ts'
import { findRoutes, type Routes } from './find-routes.ts'
import { climb, groupOf } from './group-paths.ts'
import type { EdgeEnd, GraphNode, PathGraph } from './path-graph.ts'
import type { Ranks } from './rank-nodes.ts'

/** The circuits that a vehicle's paths belong to, in order of name: those that the record lists parts of, and for the rest the nearest switch. */
export function listCircuits(wiring: Wiring, graph: PathGraph, ranks: Ranks): string[] {
  const listed = Object.keys(wiring.layout.circuits ?? {}).filter((name) => graph.nodes.some((node) => isListed(wiring, name, node)))
  const own = earthsOf(graph).filter((earth) => !isNamed(wiring, graph, climb(graph, ranks, earth))).map((earth) => groupOf(wiring, graph, ranks, earth))
  return [...new Set([...listed, ...own])].filter((name) => name !== 'earth' && name !== 'supply').sort()
}

/**
 * The graph of one circuit alone: its own parts, the way that feeds each end of them from the supply or leads it to earth, and the
 * battery. What else hangs on the same fuse, switch or splice is left out.
 */
export function keepCircuit(wiring: Wiring, graph: PathGraph, ranks: Ranks, circuit: string): PathGraph {
  const own = ownEnds(wiring, graph, ranks, circuit)
  const routes = findRoutes(graph, own)
  const nodes = graph.nodes.map((node, n) => ({ node, n })).filter(({ n }) => own.has(n) || n === graph.battery || routes.nodes.has(n))
  const edges = graph.edges.filter((edge) => routes.edges.has(edge) || edge.kind === 'rail' && nodes.some(({ n }) => n === edge.a.node) && nodes.some(({ n }) => n === edge.b.node))
  const cut = new Map(nodes.map(({ node, n }, index) => [n, { index, ...cutNode(node, endsOf(edges, n), own.get(n)) }]))
  const move = ({ node, end }: EdgeEnd): EdgeEnd => ({ node: cut.get(node)?.index ?? -1, end: cut.get(node)?.kept.indexOf(end) ?? -1 })
  return {
    ...graph,
    nodes: [...cut.values()].map(({ node }) => node),
    edges: edges.map((edge) => ({ ...edge, a: move(edge.a), b: move(edge.b) })),
    battery: graph.battery === null ? null : cut.get(graph.battery)?.index ?? null,
  }
}

// --- a circuit's own parts ---

/** An entry is a part, or one filament or element of it as `part.element`. */
function isListed({ layout: { circuits = {} } }: Wiring, circuit: string, { part }: GraphNode): boolean {
  return part !== undefined && (circuits[circuit] ?? []).some((entry) => entry.split('.')[0] === part.id)
}

function isNamed(wiring: Wiring, { nodes }: PathGraph, above: readonly number[]): boolean {
  return above.some((node) => Object.keys(wiring.layout.circuits ?? {}).some((name) => isListed(wiring, name, nodes[node])))
}

/** By node, the ends of the circuit's own parts. */
function ownEnds(wiring: Wiring, graph: PathGraph, ranks: Ranks, circuit: string): ReadonlyMap<number, ReadonlySet<number>> {
  const entries = wiring.layout.circuits?.[circuit] ?? []
  const own = new Map<number, ReadonlySet<number>>()
  graph.nodes.forEach((node, n) => { if (isListed(wiring, circuit, node)) own.set(n, listedEnds(node, entries)) })
  for (const n of unlistedNodes(wiring, graph, ranks, circuit)) if (!own.has(n)) own.set(n, new Set(graph.nodes[n].ends.keys()))
  return own
}

/** All ends of a part that is listed; of one whose elements are, theirs. */
function listedEnds({ part, elements, ends }: GraphNode, entries: readonly string[]): Set<number> {
  const chosen = elements.filter(({ id }) => entries.includes(`${part?.id}.${id}`))
  const shown = entries.includes(part?.id ?? '') || chosen.length === 0 ? elements : chosen
  return new Set([...ends.keys()].filter((end) => shown === elements || shown.some(({ from, to }) => from === ends[end].is || to === ends[end].is)))
}

/** What stands on the paths that no list names and that belong to this circuit, up to the switch that they are named after. */
function unlistedNodes(wiring: Wiring, graph: PathGraph, ranks: Ranks, circuit: string): number[] {
  return earthsOf(graph).flatMap((earth) => {
    const above = climb(graph, ranks, earth)
    if (isNamed(wiring, graph, above) || groupOf(wiring, graph, ranks, earth) !== circuit) return []
    const switched = above.findIndex((node) => graph.nodes[node].part?.title === circuit)
    return [earth, ...above.slice(0, switched < 0 ? above.length : switched + 1)].filter((node) => graph.nodes[node].kind === 'piece' && node !== graph.battery)
  })
}

function earthsOf(graph: PathGraph): number[] {
  return graph.nodes.flatMap(({ kind }, node) => kind === 'earth' ? [node] : [])
}

// --- what of a part is drawn ---

function endsOf(edges: Routes['edges'] | readonly PathGraph['edges'][number][], n: number): Set<number> {
  return new Set([...edges].flatMap(({ a, b }) => [...a.node === n ? [a.end] : [], ...b.node === n ? [b.end] : []]))
}

/** A part that is only passed keeps the ends that are wired here and the elements between them; a box with inner points stays whole. */
function cutNode(node: GraphNode, wired: ReadonlySet<number>, own: ReadonlySet<number> | undefined): { readonly node: GraphNode, readonly kept: readonly number[] } {
  const all = [...node.ends.keys()]
  const shown = (end: number) => wired.has(end) || own?.has(end) === true
  if (node.kind !== 'piece' || all.every(shown) || node.elements.some(({ from, to }) => `${from}${to}`.includes('~'))) return { node, kept: all }
  const kept = all.filter(shown), names = kept.map((end) => node.ends[end].is)
  const elements = node.elements.filter(({ from, to }) => names.includes(from) && names.includes(to))
  return { node: { ...node, ends: kept.map((end) => node.ends[end]), elements }, kept }
}
