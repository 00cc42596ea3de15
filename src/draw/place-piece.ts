import type { Layout } from './layout.ts'
import { boxHeight, NAME_GAP, type Measure } from './measure-items.ts'
import type { GraphNode } from './path-graph.ts'
import { isStraight } from './place-items.ts'
import type { PieceCore, ScenePiece, ScenePin, Spot } from './scene.ts'
import { symbolOf } from './symbols/table.ts'

/** A part, or one piece of it, with its cores, pins, leads and name. */
export function placePiece(layout: Layout, item: number, path: number): ScenePiece {
  const { graph, layers, measures, stack } = layout
  const node = graph.nodes[layers.items[item].node ?? 0]
  const measure = measures[item]
  if (!node.part) throw new RangeError(`expected a part at ${node.id}`)
  const cy = stack.centre[layers.items[item].layer]
  const form = measure.form as ScenePiece['form']
  const cores = form === 'box' ? [] : coresOf(layout, item, node, measure, cy)
  return {
    id: node.id, part: node.part, model: node.model, form, symbol: node.part.kind, elements: node.elements, cores, path,
    box: form === 'box' ? boxOf(layout, item, node, cy) : null,
    pins: form === 'box' ? boxPins(layout, item, node, cy) : corePins(layout, item, node, measure, cores),
    leads: form === 'box' ? [] : leadsOf(layout, item, measure, cores),
    name: { lines: measure.name.lines, at: nameSpot(layout, item, measure, cy) },
  }
}

function nameSpot({ places }: Layout, item: number, measure: Measure, cy: number): Spot {
  const edge = places.edgeX[item]
  const cores = places.coreX[item]
  const right = edge ? edge[1] : cores[cores.length - 1] + (measure.core?.half ?? 0)
  return [right + NAME_GAP, cy - measure.name.height / 2]
}

// --- symbols with cores ---

function coresOf({ places }: Layout, item: number, node: GraphNode, measure: Measure, cy: number): PieceCore[] {
  const half = (measure.core?.height ?? 0) / 2
  return places.coreX[item].map((x, index) => ({ x, top: cy - half, bottom: cy + half, element: measure.limbs[index], upper: upperEnd(node, measure, index) }))
}

function upperEnd(node: GraphNode, measure: Measure, index: number): string {
  if (measure.form === 'inline') return node.ends[measure.ends[0]]?.is ?? ''
  return node.ends[measure.ends[index]]?.is ?? ''
}

/** Markings stand left of the leads, above and below the core. */
function corePins(layout: Layout, item: number, node: GraphNode, measure: Measure, cores: readonly PieceCore[]): ScenePin[] {
  const marked = symbolOf(node.part?.kind ?? '').marked || measure.form === 'comb'
  const pin = (end: number, core: PieceCore, side: 'top' | 'bottom'): ScenePin[] => {
    const found = node.ends[end]
    if (!found) return []
    return [{ terminal: found.terminal, is: found.is, marking: found.marking, at: [core.x, side === 'top' ? core.top : core.bottom], side, showMarking: marked }]
  }
  if (measure.form === 'inline') return [...pin(measure.ends[0], cores[0], 'top'), ...pin(measure.ends[1], cores[0], 'bottom')]
  const limbSide = hubSide(layout, item, measure) === 'top' ? 'bottom' : 'top'
  return measure.ends.flatMap((end, index) => pin(end, cores[index], limbSide))
}

function leadsOf(layout: Layout, item: number, measure: Measure, cores: readonly PieceCore[]): Spot[][] {
  return measure.form === 'comb' ? combLeads(layout, item, measure, cores) : inlineLeads(layout, item, measure, cores[0])
}

function inlineLeads(layout: Layout, item: number, measure: Measure, core: PieceCore): Spot[][] {
  const leads: Spot[][] = []
  for (const side of ['top', 'bottom'] as const) {
    const ports = layout.layers.items[item][side]
    const tip = side === 'top' ? core.top : core.bottom
    const straight = ports.filter((port) => isStraight(measure, layout.layers.ports[port].end, side))
    if (straight.length > 1) leads.push([[core.x, tip], [core.x, barY(layout, item, side)]], barOf(layout, item, straight, side))
    for (const port of ports) if (!straight.includes(port)) leads.push(roundLead(layout, item, port, core, side))
  }
  return leads
}

function barOf(layout: Layout, item: number, ports: readonly number[], side: 'top' | 'bottom'): Spot[] {
  const x = ports.map((port) => layout.places.portX[port])
  return [[Math.min(...x), barY(layout, item, side)], [Math.max(...x), barY(layout, item, side)]]
}

/** How far beyond a core a lead turns back; clear of the marking where there is one. */
const ROUND = 7
const ROUND_MARKED = 19

function isMarked({ graph, layers }: Layout, item: number): boolean {
  return symbolOf(graph.nodes[layers.items[item].node ?? 0].part?.kind ?? '').marked
}

/** From the far end of the core round its left side to a port. */
function roundLead(layout: Layout, item: number, port: number, core: PieceCore, side: 'top' | 'bottom'): Spot[] {
  const x = layout.places.portX[port]
  const tip = side === 'top' ? core.bottom : core.top
  const round = isMarked(layout, item) ? ROUND_MARKED : ROUND
  const out = side === 'top' ? tip + round : tip - round
  return [[core.x, tip], [core.x, out], [x, out], [x, barY(layout, item, side)]]
}

function barY({ layers, measures, stack }: Layout, item: number, side: 'top' | 'bottom'): number {
  const cy = stack.centre[layers.items[item].layer]
  return side === 'top' ? cy - measures[item].up + 3 : cy + measures[item].down - 3
}

/** All limbs meet in a bar at the common end. */
function combLeads(layout: Layout, item: number, measure: Measure, cores: readonly PieceCore[]): Spot[][] {
  const side = hubSide(layout, item, measure)
  const y = side === 'top' ? cores[0].top - measure.bar : cores[0].bottom + measure.bar
  const hubX = layout.layers.items[item][side].filter((port) => layout.layers.ports[port].end === measure.hub).map((port) => layout.places.portX[port])
  const all = [...cores.map(({ x }) => x), ...hubX]
  return [...cores.map(({ x, top, bottom }): Spot[] => [[x, side === 'top' ? top : bottom], [x, y]]), [[Math.min(...all), y], [Math.max(...all), y]]]
}

function hubSide({ layers }: Layout, item: number, { hub }: Measure): 'top' | 'bottom' {
  return layers.items[item].top.some((port) => layers.ports[port].end === hub) ? 'top' : 'bottom'
}

// --- boxes ---

function boxOf({ places }: Layout, item: number, node: GraphNode, cy: number): NonNullable<ScenePiece['box']> {
  const [x0, x1] = places.edgeX[item] ?? [0, 0]
  const h = boxHeight(node)
  return { x: x0, y: cy - h / 2, w: x1 - x0, h }
}

function boxPins(layout: Layout, item: number, node: GraphNode, cy: number): ScenePin[] {
  const { layers, places } = layout
  const half = boxHeight(node) / 2
  const pin = (end: number, x: number, side: 'top' | 'bottom', showMarking: boolean): ScenePin => {
    const { terminal, is, marking } = node.ends[end]
    return { terminal, is, marking, at: [x, side === 'top' ? cy - half : cy + half], side, showMarking }
  }
  const wired = (['top', 'bottom'] as const).flatMap((side) => {
    const ports = layers.items[item][side]
    return ports.map((port, index) => {
      const { end } = layers.ports[port]
      return pin(end, places.portX[port], side, index + 1 === ports.length || layers.ports[ports[index + 1]].end !== end)
    })
  })
  return [...wired, ...[...places.idleX[item]].map(([end, x]) => pin(end, x, 'bottom', true))]
}

/** Height at which a wire meets its item. */
export function portY(layout: Layout, item: number, port: number, side: 'top' | 'bottom'): number {
  const { layers, measures, stack, graph } = layout
  const measure = measures[item]
  const cy = stack.centre[layers.items[item].layer]
  const sign = side === 'top' ? -1 : 1
  const node = graph.nodes[layers.items[item].node ?? 0]
  if (measure.form === 'box') return cy + sign * boxHeight(node) / 2
  const tip = (measure.core?.height ?? 0) / 2
  if (measure.form === 'comb') return cy + sign * (layers.ports[port].end === measure.hub ? tip + measure.bar : tip)
  if (measure.form !== 'inline') return cy
  const { end } = layers.ports[port]
  const straight = layers.items[item][side].filter((other) => isStraight(measure, layers.ports[other].end, side))
  return isStraight(measure, end, side) && straight.length === 1 ? cy + sign * tip : barY(layout, item, side)
}
