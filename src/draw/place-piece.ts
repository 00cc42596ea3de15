import type { Layout } from './layout.ts'
import { boxHeight, NAME_GAP, type Measure } from './measure-items.ts'
import type { GraphNode } from './path-graph.ts'
import { isStraight } from './place-items.ts'
import type { PieceCore, PieceLead, ScenePiece, ScenePin, Spot } from './scene.ts'
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
    name: { lines: measure.name.lines, upright: measure.name.upright, isLine: measure.name.isLine, at: nameSpot(layout, item, measure, cy) },
  }
}

function nameSpot({ places }: Layout, item: number, measure: Measure, cy: number): Spot {
  const edge = places.edgeX[item]
  const cores = places.coreX[item]
  const right = edge ? edge[1] : cores[cores.length - 1] + (measure.core?.half ?? 0)
  return [right + NAME_GAP, measure.name.upright ? cy + measure.name.height / 2 - 2 : cy - measure.name.height / 2]
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
  const marked = !layout.manner.whole && (symbolOf(node.part?.kind ?? '').marked || measure.form === 'comb')
  const pin = (end: number, core: PieceCore, side: 'top' | 'bottom'): ScenePin[] => {
    const found = node.ends[end]
    if (!found) return []
    return [{ terminal: found.terminal, is: found.is, marking: found.marking, at: [core.x, side === 'top' ? core.top : core.bottom], side, showMarking: marked }]
  }
  if (measure.form === 'inline') return [...pin(measure.ends[0], cores[0], 'top'), ...pin(measure.ends[1], cores[0], 'bottom')]
  const limbSide = hubSide(layout, item, measure) === 'top' ? 'bottom' : 'top'
  return measure.ends.flatMap((end, index) => pin(end, cores[index], limbSide))
}

function leadsOf(layout: Layout, item: number, measure: Measure, cores: readonly PieceCore[]): PieceLead[] {
  return measure.form === 'comb' ? combLeads(layout, item, measure, cores) : inlineLeads(layout, item, measure, cores[0])
}

type Side = 'top' | 'bottom'

/** Wires are in their own colour up to the symbol; ink is only what holds several of them to one end. */
function inlineLeads(layout: Layout, item: number, measure: Measure, core: PieceCore): PieceLead[] {
  return (['top', 'bottom'] as const).flatMap((side) => {
    const straight = straightPorts(layout, item, measure, side)
    const odd = oddPorts(layout, item, measure, side)
    const tip = side === 'top' ? core.top : core.bottom
    const bars = straight.length > 1 ? [[[core.x, tip], [core.x, barY(layout, item, side)]] as Spot[], ...barsOf(layout, item, straight, side)] : []
    return [...leadsAt(layout, item, straight[0], bars), ...odd.flatMap((port) => leadsAt(layout, item, port, [roundLead(layout, item, port, core, side, goesRound(layout, item, measure, side))]))]
  })
}

function leadsAt({ graph, layers }: Layout, item: number, port: number | undefined, lines: readonly (readonly Spot[])[]): PieceLead[] {
  if (port === undefined) return []
  const { point } = graph.nodes[layers.items[item].node ?? 0].ends[layers.ports[port].end]
  return lines.map((points) => ({ points, point, element: null }))
}

function straightPorts({ layers }: Layout, item: number, measure: Measure, side: Side): number[] {
  return layers.items[item][side].filter((port) => isStraight(measure, layers.ports[port].end, side))
}

function oddPorts({ layers }: Layout, item: number, measure: Measure, side: Side): number[] {
  return layers.items[item][side].filter((port) => !isStraight(measure, layers.ports[port].end, side))
}

/** A bar of ink on each side of the core where several wires meet it; a single one runs up to the core itself. */
function barsOf(layout: Layout, item: number, ports: readonly number[], side: Side): Spot[][] {
  const [core] = layout.places.coreX[item]
  const y = barY(layout, item, side)
  return [-1, 1].flatMap((way) => {
    const beside = ports.map((port) => layout.places.portX[port]).filter((x) => (x - core) * way > 0)
    return beside.length < 2 ? [] : [[[core, y], [way < 0 ? Math.min(...beside) : Math.max(...beside), y]] as Spot[]]
  })
}

/** How far beyond a core a lead turns back; clear of the marking where there is one. */
const ROUND = 9
const ROUND_MARKED = 24

function isMarked({ manner, graph, layers }: Layout, item: number): boolean {
  return !manner.whole && symbolOf(graph.nodes[layers.items[item].node ?? 0].part?.kind ?? '').marked
}

/** Height at which a wire that leaves an end against its side turns round the symbol. */
function roundY(layout: Layout, item: number, { top, bottom }: Pick<PieceCore, 'top' | 'bottom'>, side: Side): number {
  const round = isMarked(layout, item) ? ROUND_MARKED : ROUND
  return side === 'top' ? bottom + round : top - round
}

/** Whether a wire has the way round the symbol to itself. */
function goesRound(layout: Layout, item: number, measure: Measure, side: Side): boolean {
  const other = side === 'top' ? 'bottom' : 'top'
  return oddPorts(layout, item, measure, side).length === 1 && oddPorts(layout, item, measure, other).length === 0 && straightPorts(layout, item, measure, other).length < 2
}

/** From the far end of the core round its left side to a port; where the wire is alone there it does that itself. */
function roundLead(layout: Layout, item: number, port: number, core: PieceCore, side: Side, isAlone: boolean): Spot[] {
  const tip = side === 'top' ? core.bottom : core.top
  const out = roundY(layout, item, core, side)
  const x = layout.places.portX[port]
  return isAlone ? [[core.x, tip], [core.x, out]] : [[core.x, tip], [core.x, out], [x, out], [x, barY(layout, item, side)]]
}

function barY({ layers, measures, stack }: Layout, item: number, side: Side): number {
  const cy = stack.centre[layers.items[item].layer]
  return side === 'top' ? cy - measures[item].up + 3 : cy + measures[item].down - 3
}

/** All limbs meet in a bar at the common end. */
function combLeads(layout: Layout, item: number, measure: Measure, cores: readonly PieceCore[]): PieceLead[] {
  const side = hubSide(layout, item, measure)
  const y = side === 'top' ? cores[0].top - measure.bar : cores[0].bottom + measure.bar
  const { point } = layout.graph.nodes[layout.layers.items[item].node ?? 0].ends[measure.hub]
  const hubX = layout.layers.items[item][side].filter((port) => layout.layers.ports[port].end === measure.hub).map((port) => layout.places.portX[port])
  const all = [...cores.map(({ x }) => x), ...hubX]
  return [
    ...cores.map(({ x, top, bottom, element }): PieceLead => ({ points: [[x, side === 'top' ? top : bottom], [x, y]], point, element: element?.id ?? null })),
    { points: [[Math.min(...all), y], [Math.max(...all), y]], point, element: null },
  ]
}

function hubSide({ layers }: Layout, item: number, { hub }: Measure): 'top' | 'bottom' {
  return layers.items[item].top.some((port) => layers.ports[port].end === hub) ? 'top' : 'bottom'
}

// --- boxes ---

function boxOf({ places, manner }: Layout, item: number, node: GraphNode, cy: number): NonNullable<ScenePiece['box']> {
  const [x0, x1] = places.edgeX[item] ?? [0, 0]
  const h = boxHeight(node, manner)
  return { x: x0, y: cy - h / 2, w: x1 - x0, h }
}

function boxPins(layout: Layout, item: number, node: GraphNode, cy: number): ScenePin[] {
  const { layers, places } = layout
  const half = boxHeight(node, layout.manner) / 2
  const pin = (end: number, x: number, side: 'top' | 'bottom', showMarking: boolean): ScenePin => {
    const { terminal, is, marking } = node.ends[end]
    return { terminal, is, marking, at: [x, side === 'top' ? cy - half : cy + half], side, showMarking: showMarking && !layout.manner.whole }
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

/** The spots at which a wire's line begins at its item, from the item outward. */
export function pieceReach(layout: Layout, item: number, port: number, side: Side): Spot[] {
  const { layers, measures, places, stack } = layout
  const measure = measures[item]
  const x = places.portX[port]
  if (measure.form !== 'inline') return [[x, portY(layout, item, port, side)]]
  const y = barY(layout, item, side)
  const [core] = places.coreX[item]
  const straight = straightPorts(layout, item, measure, side)
  if (straight.includes(port)) {
    if (straight.length === 1) return [[x, tipY(layout, item, side)]]
    const beside = straight.filter((other) => (places.portX[other] - core) * (x - core) > 0)
    return beside.length === 1 ? [[core, y], [x, y]] : [[x, y]]
  }
  if (!goesRound(layout, item, measure, side)) return [[x, y]]
  const cy = stack.centre[layers.items[item].layer]
  const half = (measure.core?.height ?? 0) / 2
  const out = roundY(layout, item, { top: cy - half, bottom: cy + half }, side)
  return [[core, out], [x, out], [x, y]]
}

function tipY({ layers, measures, stack }: Layout, item: number, side: Side): number {
  return stack.centre[layers.items[item].layer] + (side === 'top' ? -1 : 1) * (measures[item].core?.height ?? 0) / 2
}

/** Height at which a wire meets an item that is not in line. */
function portY(layout: Layout, item: number, port: number, side: Side): number {
  const { manner, layers, measures, stack, graph } = layout
  const measure = measures[item]
  const cy = stack.centre[layers.items[item].layer]
  const sign = side === 'top' ? -1 : 1
  if (measure.form === 'box') return cy + sign * boxHeight(graph.nodes[layers.items[item].node ?? 0], manner) / 2
  return measure.form === 'comb' ? tipY(layout, item, side) + sign * (layers.ports[port].end === measure.hub ? measure.bar : 0) : cy
}
