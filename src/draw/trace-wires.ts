import type { Layout } from './layout.ts'
import { pieceReach } from './place-piece.ts'
import { spliceReach } from './place-splice.ts'
import { LEVEL_GAP } from './letter-wires.ts'
import { LETTER, type SceneWire, type Spot } from './scene.ts'
import { textWidth } from './text-widths.ts'
import { wireColour } from './wire-colours.ts'
import { lineWidth, wireLabel } from './wire-label.ts'

/** Every wire and fixing as one line, from its first end to its second. */
export function traceWires(layout: Layout): SceneWire[] {
  return layout.graph.edges.map((edge, index) => {
    const wire = layout.wiring.wires.get(edge.id)
    const fixing = layout.wiring.fixings.get(edge.id)
    const home = layout.stack.labels.get(edge.id)
    const width = wire ? lineWidth(wire) : 1.8
    const points = tracePoints(layout, index)
    return {
      id: edge.id, kind: wire ? 'wire' : edge.kind, points,
      colour: wire ? wireColour(wire) : { base: '', tracers: [], letters: '', words: '' }, width,
      label: wire && home ? labelAt(wireLabel(wire), layout.places.portX[home.port], home, width) : null,
      ends: wire ? [wire.ends[0].at, wire.ends[1].at] : fixing ? [fixing.joins[0], fixing.joins[1]] : [null, null],
    }
  })
}

function labelAt(text: string, x: number, { y, upright }: { readonly y: number, readonly upright: boolean }, width: number): NonNullable<SceneWire['label']> {
  return { text, upright, at: upright ? [x - width / 2 - 8.5, y] : [x + LEVEL_GAP + textWidth(text, LETTER) / 2, y + 4] }
}

function tracePoints(layout: Layout, edge: number): Spot[] {
  const { layers, places, stack } = layout
  const chain = layers.chains[edge]
  const points: Spot[] = [...endSpots(layout, chain[0])]
  layers.links.forEach((link, index) => {
    if (link.edge !== edge) return
    let x = places.portX[link.upper]
    for (const step of stack.routes[link.channel].get(index)?.steps ?? []) {
      const y = stack.trackY[link.channel][step.track]
      points.push([x, y], [step.x, y])
      x = step.x
    }
  })
  points.push(...[...endSpots(layout, chain[chain.length - 1])].reverse())
  const simple = simplify(points)
  return startsAtFirst(layout, edge) ? simple : simple.reverse()
}

/** The spots at which a line begins: where it meets its node, from the node outward. */
function endSpots(layout: Layout, port: number): Spot[] {
  const { graph, layers } = layout
  const { item, side } = layers.ports[port]
  const { node } = layers.items[item]
  const kind = node === null ? 'piece' : graph.nodes[node].kind
  if (kind === 'splice' || kind === 'mating' || kind === 'loose') return spliceReach(layout, port)
  return pieceReach(layout, item, port, side)
}

function startsAtFirst({ graph, layers }: Layout, edge: number): boolean {
  const first = layers.ports[layers.chains[edge][0]]
  return layers.items[first.item].node === graph.edges[edge].a.node && first.end === graph.edges[edge].a.end
}

/** Without points that lie on the straight between their neighbours. */
function simplify(points: readonly Spot[]): Spot[] {
  return points.filter(([x, y], i) => {
    const before = points[i - 1]
    const after = points[i + 1]
    if (!before || !after) return true
    return !((before[0] === x && after[0] === x) || (before[1] === y && after[1] === y))
  })
}
