import type { EdgeEnd, GraphEdge, PathGraph } from './path-graph.ts'
import type { Ranks } from './rank-nodes.ts'

/** What takes up room in a layer: a node, or a wire on its way through. */
export interface Item { readonly layer: number; readonly node: number | null; readonly edge: number | null; readonly top: readonly number[]; readonly bottom: readonly number[] }

/** One place at which one wire leaves an item. */
interface Port { readonly item: number; readonly side: 'top' | 'bottom'; readonly end: number; readonly edge: number }

/** One wire's way through one channel, from port to port; channel c lies under layer c. */
export interface Link { readonly edge: number; readonly channel: number; readonly upper: number; readonly lower: number; readonly turn: 'none' | 'below' | 'above' }

export interface Layers {
  readonly items: readonly Item[]
  readonly ports: readonly Port[]
  readonly links: readonly Link[]
  /** Items from left to right in each layer. */
  readonly rows: readonly (readonly number[])[]
  /** The ports of an edge from its upper node downward, with the items passed on the way. */
  readonly chains: readonly (readonly number[])[]
}

interface Draft { readonly items: { layer: number, node: number | null, edge: number | null, top: number[], bottom: number[] }[]; readonly ports: Port[]; readonly links: Link[]; readonly chains: number[][] }

/** Nodes and passing wires by layer, with a port of its own for every wire end. Rows come in order of id. */
export function layOutLayers(graph: PathGraph, ranks: Ranks): Layers {
  const draft: Draft = { items: [], ports: [], links: [], chains: [] }
  graph.nodes.forEach((_, node) => draft.items.push({ layer: ranks.layerOf[node], node, edge: null, top: [], bottom: [] }))
  graph.edges.forEach((edge, index) => addChain(draft, ranks, edge, index))
  const rows: number[][] = Array.from({ length: ranks.layers }, () => [])
  draft.items.forEach(({ layer }, item) => rows[layer].push(item))
  return { ...draft, rows }
}

function addChain(draft: Draft, ranks: Ranks, { a, b }: GraphEdge, edge: number): void {
  const [from, to] = [ranks.layerOf[a.node], ranks.layerOf[b.node]]
  if (from === to) {
    draft.chains.push(addTurn(draft, a, b, edge, from, from === ranks.layers - 1))
    return
  }
  const [up, down] = from < to ? [a, b] : [b, a]
  const chain = [addPort(draft, up.node, 'bottom', up.end, edge)]
  for (let layer = Math.min(from, to) + 1; layer < Math.max(from, to); layer++) {
    const item = draft.items.push({ layer, node: null, edge, top: [], bottom: [] }) - 1
    chain.push(addPort(draft, item, 'top', 0, edge), addPort(draft, item, 'bottom', 0, edge))
  }
  chain.push(addPort(draft, down.node, 'top', down.end, edge))
  for (let i = 0; i + 1 < chain.length; i += 2) {
    draft.links.push({ edge, channel: Math.min(from, to) + i / 2, upper: chain[i], lower: chain[i + 1], turn: 'none' })
  }
  draft.chains.push(chain)
}

/** A wire between two ends of one layer turns back in the channel below it; at the earth rail, above it. */
function addTurn(draft: Draft, a: EdgeEnd, b: EdgeEnd, edge: number, layer: number, last: boolean): number[] {
  const side = last ? 'top' : 'bottom'
  const chain = [addPort(draft, a.node, side, a.end, edge), addPort(draft, b.node, side, b.end, edge)]
  draft.links.push({ edge, channel: last ? layer - 1 : layer, upper: chain[0], lower: chain[1], turn: last ? 'above' : 'below' })
  return chain
}

function addPort(draft: Draft, item: number, side: 'top' | 'bottom', end: number, edge: number): number {
  const port = draft.ports.push({ item, side, end, edge }) - 1
  draft.items[item][side].push(port)
  return port
}
