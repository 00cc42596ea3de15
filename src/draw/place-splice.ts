import type { Layout } from './layout.ts'
import type { SceneSplice, Spot } from './scene.ts'

/** A splice, a connector or a loose end with the bars that join it to wires beside it. */
export function placeSplice(layout: Layout, item: number): SceneSplice {
  const { graph, layers, places, stack } = layout
  const { node, layer } = layers.items[item]
  const { id, kind, text } = graph.nodes[node ?? 0]
  const [x, y] = [places.coreX[item][0], stack.centre[layer]]
  const bars: Spot[][] = []
  for (const left of [true, false]) {
    const beside = sidePorts(layout, item, left)
    if (beside.length < 2) continue
    const far = beside.map((port) => places.portX[port]).reduce((a, b) => left ? Math.min(a, b) : Math.max(a, b))
    bars.push([[x, y], [far, y]])
  }
  return { id, kind: kind as SceneSplice['kind'], at: [x, y], bars, text: kind === 'loose' ? text : '' }
}

/** Where a wire's line begins at a splice: at the dot itself when it is the only one on its side, else on the bar. */
export function spliceReach(layout: Layout, port: number): Spot[] {
  const { layers, places, stack } = layout
  const { item } = layers.ports[port]
  const [x, y] = [places.coreX[item][0], stack.centre[layers.items[item].layer]]
  const own = places.portX[port]
  if (own === x) return [[x, y]]
  return sidePorts(layout, item, own < x).length === 1 ? [[x, y], [own, y]] : [[own, y]]
}

function sidePorts({ layers, places }: Layout, item: number, left: boolean): number[] {
  const x = places.coreX[item][0]
  return [...layers.items[item].top, ...layers.items[item].bottom].filter((port) => left ? places.portX[port] < x : places.portX[port] > x)
}
