import type { Item, Layers, Link } from './layers.ts'
import type { GraphEdge, PathGraph } from './path-graph.ts'

const SWEEPS = 24

/**
 * The same layers with items and ports in an order that crosses few wires: means of neighbours, layer by layer, down
 * and up, then swaps of neighbours as long as they help. The battery stays on the left. `hints` are ids from left to right.
 */
export function orderLayers(graph: PathGraph, layers: Layers, hints: readonly string[]): Layers {
  const links = linksByChannel(layers)
  let rows = startingRows(graph, layers, hints)
  let best = rows
  let fewest = Infinity
  for (let sweep = 0; sweep < SWEEPS && fewest > 0; sweep++) {
    rows = sweepRows(graph, layers, rows, sweep % 2 === 0)
    const crossings = countAll(layers, links, rows)
    if (crossings < fewest) [fewest, best] = [crossings, rows]
  }
  return withPortOrder({ ...layers, rows: swapNeighbours(graph, layers, links, best) })
}

/** The same layers from right to left, the battery still on the left: as many crossings, another place for the supply. */
export function mirrorLayers(graph: PathGraph, layers: Layers): Layers {
  const rows = layers.rows.map((row) => [...row].reverse())
  for (const row of rows) keepBatteryLeft(graph, layers, row)
  return withPortOrder({ ...layers, rows })
}

// --- where to begin: depth first from the left, so that what belongs together stands together ---

function startingRows(graph: PathGraph, layers: Layers, hints: readonly string[]): number[][] {
  const beside = layers.items.map((): number[] => [])
  for (const { upper, lower } of layers.links) {
    const [a, b] = [layers.ports[upper].item, layers.ports[lower].item]
    beside[a].push(b)
    beside[b].push(a)
  }
  const rank = (item: number) => hintRank(graph, layers.items[item], hints)
  const seen = new Set<number>()
  const walk = (item: number): void => {
    if (seen.has(item)) return
    seen.add(item)
    for (const next of [...beside[item]].sort((a, b) => rank(a) - rank(b) || a - b)) walk(next)
  }
  const all = layers.items.map((_, item) => item)
  for (const item of all.sort((a, b) => rank(a) - rank(b) || layers.items[a].layer - layers.items[b].layer || a - b)) walk(item)
  const place = new Map([...seen].map((item, index) => [item, index]))
  return layers.rows.map((row) => [...row].sort((a, b) => (place.get(a) ?? 0) - (place.get(b) ?? 0)))
}

function hintRank(graph: PathGraph, item: Item, hints: readonly string[]): number {
  if (item.node === null) return hints.length
  if (item.node === graph.battery) return -1
  const { id, part } = graph.nodes[item.node]
  const found = hints.findIndex((hint) => hint === id || hint === part?.id)
  return found < 0 ? hints.length : found
}

// --- sweeps by the mean of the neighbours ---

function sweepRows(graph: PathGraph, layers: Layers, rows: readonly (readonly number[])[], down: boolean): number[][] {
  const next = rows.map((row) => [...row])
  const side = down ? 'top' : 'bottom'
  for (let i = 1; i < next.length; i++) {
    const layer = down ? i : next.length - 1 - i
    const spots = portSpots(layers, next)
    const mean = new Map(next[layer].map((item, index) => [item, meanOf(layers, item, side, spots) ?? index]))
    next[layer].sort((a, b) => (mean.get(a) ?? 0) - (mean.get(b) ?? 0))
    keepBatteryLeft(graph, layers, next[layer])
  }
  return next
}

function keepBatteryLeft(graph: PathGraph, layers: Layers, row: number[]): void {
  const own = row.filter((item) => isBatterys(graph, layers, item))
  if (own.length > 0) row.splice(0, row.length, ...own, ...row.filter((item) => !own.includes(item)))
}

/** The battery itself, and its ways to the two rails. */
function isBatterys(graph: PathGraph, layers: Layers, item: number): boolean {
  const { node, edge } = layers.items[item]
  if (graph.battery === null) return false
  if (node === graph.battery) return true
  if (edge !== null) return leadsToRail(graph, graph.edges[edge])
  return node !== null && graph.edges.some((one) => (one.a.node === node || one.b.node === node) && leadsToRail(graph, one))
}

function leadsToRail({ nodes, battery }: PathGraph, { a, b }: GraphEdge): boolean {
  const other = a.node === battery ? b.node : b.node === battery ? a.node : null
  return other !== null && (nodes[other].kind === 'rail' || nodes[other].kind === 'earth')
}

type Spots = readonly number[]

/** Where each port lies in its layer: the item's place and a fraction for the port's own place on its side. */
function portSpots(layers: Layers, rows: readonly (readonly number[])[]): Spots {
  const place = new Array<number>(layers.items.length).fill(0)
  for (const row of rows) row.forEach((item, index) => { place[item] = index / Math.max(1, row.length) * 100 })
  const spots = layers.ports.map(({ item }) => place[item])
  layers.items.forEach((item) => {
    for (const side of [item.top, item.bottom]) {
      const row = rows[item.layer].length
      sortPorts(layers, side, spots).forEach((port, index) => { spots[port] += (index + 1) / (side.length + 1) / Math.max(1, row) * 100 })
    }
  })
  return spots
}

function meanOf(layers: Layers, item: number, side: 'top' | 'bottom', spots: Spots): number | null {
  const facing = farPorts(layers)
  const own = layers.items[item][side].map((port) => spots[facing[port]]).filter((spot) => spot !== undefined)
  return own.length === 0 ? null : own.reduce((sum, spot) => sum + spot, 0) / own.length / 100 * layers.rows[layers.items[item].layer].length
}

const facingOf = new WeakMap<readonly Link[], number[]>()

/** For each port, the port at the other end of its link. */
function farPorts({ links, ports }: Layers): number[] {
  const known = facingOf.get(links)
  if (known) return known
  const facing = new Array<number>(ports.length)
  for (const { upper, lower } of links) [facing[upper], facing[lower]] = [lower, upper]
  facingOf.set(links, facing)
  return facing
}

/** Ports of one side by where their wires go, those of one end together. */
function sortPorts(layers: Layers, side: readonly number[], spots: Spots): number[] {
  const facing = farPorts(layers)
  const means = new Map<number, number>()
  for (const end of new Set(side.map((port) => layers.ports[port].end))) {
    const own = side.filter((port) => layers.ports[port].end === end)
    means.set(end, own.reduce((sum, port) => sum + spots[facing[port]], 0) / own.length)
  }
  const endOf = (port: number) => layers.ports[port].end
  return [...side].sort((a, b) => endOf(a) === endOf(b)
    ? spots[facing[a]] - spots[facing[b]] || a - b
    : (means.get(endOf(a)) ?? 0) - (means.get(endOf(b)) ?? 0) || endOf(a) - endOf(b))
}

function withPortOrder(layers: Layers): Layers {
  const spots = portSpots(layers, layers.rows)
  const items = layers.items.map((item) => ({ ...item, top: sortPorts(layers, item.top, spots), bottom: sortPorts(layers, item.bottom, spots) }))
  return { ...layers, items }
}

// --- crossings ---

function linksByChannel(layers: Layers): Link[][] {
  const channels: Link[][] = layers.rows.map(() => [])
  for (const link of layers.links) if (link.turn === 'none') channels[link.channel].push(link)
  return channels
}

function countAll(layers: Layers, channels: readonly (readonly Link[])[], rows: readonly (readonly number[])[]): number {
  const spots = portSpots(layers, rows)
  return channels.reduce((sum, links) => sum + countCrossings(links, spots), 0)
}

function countCrossings(links: readonly Link[], spots: Spots): number {
  let crossings = 0
  for (let i = 0; i < links.length; i++) {
    for (let j = 0; j < i; j++) {
      if ((spots[links[i].upper] - spots[links[j].upper]) * (spots[links[i].lower] - spots[links[j].lower]) < 0) crossings++
    }
  }
  return crossings
}

const ROUNDS = 6

function swapNeighbours(graph: PathGraph, layers: Layers, channels: readonly (readonly Link[])[], start: readonly (readonly number[])[]): number[][] {
  const rows = start.map((row) => [...row])
  let now = countAll(layers, channels, rows)
  for (let round = 0, better = true; better && round < ROUNDS; round++) {
    better = false
    for (const row of rows) {
      for (let i = 0; i + 1 < row.length; i++) {
        if (isBatterys(graph, layers, row[i]) || isBatterys(graph, layers, row[i + 1])) continue
        [row[i], row[i + 1]] = [row[i + 1], row[i]]
        const then = countAll(layers, channels, rows)
        if (then < now) [now, better] = [then, true]
        else [row[i], row[i + 1]] = [row[i + 1], row[i]]
      }
    }
  }
  return rows
}
