import type { Layout } from './layout.ts'
import type { Link } from './layers.ts'
import { symbolOf } from './symbols/table.ts'
import { boxHeight, WIRE_LEFT } from './measure-items.ts'
import { isStraight } from './place-items.ts'
import { CHANNEL_EDGE, TRACK, type RoutedChannel } from './route-channel.ts'
import { labelLength, wireLabel } from './wire-label.ts'

/** The straight stretch along which a wire is lettered. */
export interface Home {
  readonly id: string
  readonly port: number
  readonly layer: number
  /** How far the stretch reaches up into the layer above the channel, and down from the channel's edge; null inside a layer. */
  readonly over: number
  readonly to: number | null
  /** Whether the stretch grows with the whole channel, not only with the room before its tracks. */
  readonly stretches: boolean
  /** Lettered along the wire, or level on its right. */
  readonly upright: boolean
}

interface Candidate extends Home { readonly lacks: number }
type Unstacked = Omit<Layout, 'stack'>

/**
 * A straight stretch for the letters of every wire: where it passes a layer high enough, else in the channel that must
 * be opened the least for it. `zones` is the height by which each channel is opened above its tracks.
 */
export function findHomes(layout: Unstacked, channels: readonly RoutedChannel[], ups: readonly number[], downs: readonly number[]): { readonly homes: readonly Home[], readonly zones: readonly number[] } {
  const zones = channels.map(() => 0)
  const homes: Home[] = []
  const wanting = layout.graph.edges.flatMap((_, edge) => {
    const found = candidatesOf(layout, channels, ups, downs, edge)
    return found.length === 0 ? [] : [found]
  })
  const least = (candidates: readonly Candidate[]) => Math.min(...candidates.map(({ lacks }) => lacks))
  for (const candidates of [...wanting].sort((a, b) => a.length - b.length || least(b) - least(a))) {
    const cost = (one: Candidate) => one.to === null ? -1 : Math.max(0, one.lacks - zones[one.layer])
    const best = candidates.reduce((a, b) => cost(b) < cost(a) ? b : a)
    homes.push(best)
    if (best.to !== null) zones[best.layer] = Math.max(zones[best.layer], best.lacks)
  }
  return { homes, zones }
}

function candidatesOf(layout: Unstacked, channels: readonly RoutedChannel[], ups: readonly number[], downs: readonly number[], edge: number): Candidate[] {
  const { wiring, graph, layers } = layout
  const wire = wiring.wires.get(graph.edges[edge].id)
  if (graph.edges[edge].kind !== 'wire' || !wire) return []
  const length = labelLength(wireLabel(wire))
  const chain = layers.chains[edge]
  const inside = chain.flatMap((port): Candidate[] => {
    const { node, layer } = layers.items[layers.ports[port].item]
    return node === null && ups[layer] + downs[layer] >= length ? [{ id: wire.id, port, layer, over: 0, to: null, stretches: false, upright: true, lacks: 0 }] : []
  })
  const between = layers.links.flatMap((link, index) => {
    if (link.edge !== edge || link.turn !== 'none') return []
    const channel = channels[link.channel]
    return [channelCandidate(layout, channel, ups, downs, index, length, wire.id), ...levelCandidate(layout, channel, index, length, wire.id)]
  })
  return [...inside, ...between]
}

/** The stretch from the wire's upper port down to the first track that comes across its letters, or to its lower port. */
function channelCandidate(layout: Unstacked, channel: RoutedChannel, ups: readonly number[], downs: readonly number[], index: number, length: number, id: string): Candidate {
  const { layers, places } = layout
  const link = layers.links[index]
  const x = places.portX[link.upper]
  const first = firstTrackAcross(layout, channel, link.channel, index, x - WIRE_LEFT, x)
  const over = freeInBand(layout, link.upper, downs[link.channel])
  const through = CHANNEL_EDGE * 2 + channel.tracks * TRACK + freeInBand(layout, link.lower, ups[link.channel + 1])
  const to = first === null ? through : CHANNEL_EDGE + first * TRACK + 1
  return { id, port: link.upper, layer: link.channel, over, to, stretches: first === null, upright: true, lacks: Math.max(0, length - over - to) }
}

/** From a wire to the letters that stand level on its right, clear of its live edge. */
export const LEVEL_GAP = 10
/** Height that level letters need. */
const LEVEL_ROOM = 18

/** Right of the wire, where no other wire comes down through the letters: a low channel is enough for them. */
function levelCandidate(layout: Unstacked, channel: RoutedChannel, index: number, length: number, id: string): Candidate[] {
  const { layers, places } = layout
  const link = layers.links[index]
  const x = places.portX[link.upper]
  const right = x + LEVEL_GAP + length
  const isCrossed = layers.links.some((other) => other.channel === link.channel && other !== link && standsWithin(places, other, x + 0.1, right + WIRE_LEFT))
  if (isCrossed || right > places.width) return []
  const first = firstTrackAcross(layout, channel, link.channel, index, x, right)
  const to = first === null ? CHANNEL_EDGE * 2 + channel.tracks * TRACK : CHANNEL_EDGE + first * TRACK - 4
  return [{ id, port: link.upper, layer: link.channel, over: 0, to, stretches: first === null, upright: false, lacks: Math.max(0, LEVEL_ROOM - to) }]
}

function standsWithin({ portX }: Unstacked['places'], { upper, lower, turn }: Link, from: number, to: number): boolean {
  const columns = turn === 'above' ? [] : turn === 'below' ? [portX[upper], portX[lower]] : [portX[upper]]
  return columns.some((x) => x > from && x < to)
}

/** The highest track, its own or another's, that runs through the room for the letters from one x to another. */
function firstTrackAcross({ layers, places }: Unstacked, channel: RoutedChannel, at: number, own: number, x0: number, x1: number): number | null {
  let first: number | null = null
  layers.links.forEach((link, index) => {
    if (link.channel !== at) return
    let from = places.portX[link.upper]
    for (const step of channel.byLink.get(index)?.steps ?? []) {
      const [left, right] = [Math.min(from, step.x) - 8, Math.max(from, step.x) + 8]
      if ((index === own || (left < x1 && right > x0)) && (first === null || step.track < first)) first = step.track
      from = step.x
    }
  })
  return first
}

/** How far a wire runs on, clear at its left, inside the layer where it ends. */
function freeInBand({ manner, graph, layers, measures }: Unstacked, port: number, half: number): number {
  const { item } = layers.ports[port]
  const { node } = layers.items[item]
  const measure = measures[item]
  if (node === null) return half
  if (measure.form === 'box') return half - boxHeight(graph.nodes[node], manner) / 2 - 1
  if (measure.form === 'rail') return half - measure.down
  if (measure.form !== 'inline' || symbolOf(graph.nodes[node].part?.kind ?? '').marked) return half - measure.up
  const { top, bottom } = layers.items[item]
  const straight = [...top, ...bottom].every((other) => isStraight(measure, layers.ports[other].end, layers.ports[other].side))
  const alone = layers.items[item][layers.ports[port].side].length === 1
  return alone && straight ? half - (measure.core?.height ?? 0) / 2 - 1 : half - measure.up
}
