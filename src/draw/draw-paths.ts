import type { Wiring } from '../record/index.ts'
import { groupOf } from './group-paths.ts'
import { keepCircuit, listCircuits } from './keep-circuit.ts'
import type { Layout, Sheet } from './layout.ts'
import { layOutLayers, type Layers } from './layers.ts'
import { READ, type Manner } from './manner.ts'
import { letterFlat } from './letter-flat.ts'
import { measureItem, type Measure } from './measure-items.ts'
import { earthLines } from './name-lines.ts'
import { mirrorLayers, orderLayers } from './order-layers.ts'
import { buildPathGraph, type Models, type PathGraph } from './path-graph.ts'
import { placeItems, type Nudge, type Places } from './place-items.ts'
import { placePiece } from './place-piece.ts'
import { placeSplice } from './place-splice.ts'
import { rankNodes } from './rank-nodes.ts'
import { LETTER, LINE, type PathGroup, type PathNumber, type Rail, type Scene, type SceneMark, type ScenePiece, type SceneSplice } from './scene.ts'
import { routeChannels, stackLayers } from './stack-layers.ts'
import { textWidth, wrapText } from './text-widths.ts'
import { traceWires } from './trace-wires.ts'
import { labelLength, wireLabel } from './wire-label.ts'

const MARGIN = { left: 34, right: 12, top: 16, bottom: 12 }

/**
 * The wiring as a path drawing: supply rail above, earth rail below, one numbered path a column. It needs nothing but
 * the wiring; `layout.order` may give a hint for the columns. The same wiring gives the same scene. With a circuit of
 * the scene's own list it draws the paths of that circuit alone.
 */
export function drawPaths(wiring: Wiring, models: Models, sheet: Sheet = { width: 0, height: 0 }, circuit: string | null = null, manner: Manner = READ): Scene {
  const all = buildPathGraph(wiring, models)
  const ranksOfAll = rankNodes(all)
  const circuits = listCircuits(wiring, all, ranksOfAll)
  const graph = circuit === null || !circuits.includes(circuit) ? all : keepCircuit(wiring, all, ranksOfAll, circuit)
  const ranks = graph === all ? ranksOfAll : rankNodes(graph)
  const letters = graph.edges.map(({ id }) => {
    const wire = wiring.wires.get(id)
    return wire && !manner.whole ? labelLength(wireLabel(wire)) : 0
  })
  const placed = (layers: Layers): Placed => {
    const measures = layers.items.map((_, item) => measureItem(graph, layers, item, ranks.nearness, manner))
    return { layers, measures, places: placeWithoutClash(graph, layers, measures, letters, manner, sheet.width - marginLeft(manner) - MARGIN.right) }
  }
  const hints = wiring.layout.order ?? []
  const ordered = placed(orderLayers(graph, layOutLayers(graph, ranks), hints))
  const mirrored = manner.mirrored ?? (hints.length === 0 && supplySpot(graph, ordered) > 0.5) ? placed(mirrorLayers(graph, ordered.layers)) : ordered
  const isBetter = manner.mirrored ?? supplySpot(graph, mirrored) < supplySpot(graph, ordered)
  const { layers, measures, places } = isBetter ? mirrored : ordered
  const stack = stackLayers({ manner, wiring, graph, ranks, layers, measures, places }, sheet.height - MARGIN.top - MARGIN.bottom - FOOT)
  const scene = shift({ ...composeScene({ manner, wiring, graph, ranks, layers, measures, places, stack }), circuits, mirrored: isBetter }, marginLeft(manner), MARGIN.top * manner.letter / LETTER)
  return !manner.whole ? letterFlat(scene, wiring) : scene
}

interface Placed { readonly layers: Layers; readonly measures: readonly Measure[]; readonly places: Places }

/** Layers in which the parts stand that everything else hangs from. */
const FIRST_LAYERS = 4

/** How far right those parts stand on the whole, from 0 beside the battery to 1: a sheet is opened at its top left. */
function supplySpot({ battery }: PathGraph, { layers: { rows, items }, places }: Placed): number {
  const spots = rows.slice(1, FIRST_LAYERS).flatMap((row) => row.filter((item) => items[item].node !== null && items[item].node !== battery).map((item) => places.edgeX[item]?.[0] ?? places.coreX[item][0]))
  return spots.reduce((sum, x) => sum + x, 0) / Math.max(1, spots.length) / places.width
}

/** Room for the markings of the rails. */
function marginLeft({ letter }: Manner): number {
  return MARGIN.left * letter / LETTER
}

/** From line to line of lettering of one size. */
function lineOf({ letter }: Manner): number {
  return LINE * letter / LETTER
}

const TRIES = 6

/** Columns set further apart wherever two wires would otherwise have to dodge one another. */
function placeWithoutClash(graph: PathGraph, layers: Layers, measures: readonly Measure[], letters: readonly number[], manner: Manner, width: number): Places {
  let nudges: Nudge[] = []
  let best: { readonly places: Places, readonly clashes: number } | null = null
  for (let i = 0; i < TRIES; i++) {
    const places = placeItems(graph, layers, measures, letters, manner, width, nudges)
    if (places === null) break
    const clashes = routeChannels(layers, places).flatMap((channel) => channel.clashes)
    if (best === null || clashes.length < best.clashes) best = { places, clashes: clashes.length }
    if (clashes.length === 0) break
    nudges = [...nudges, ...clashes.slice(0, 1).map(([a, b]) => nudgeFor(layers, places, a, b))]
  }
  if (best === null) throw new RangeError('expected columns without any nudge')
  return best.places
}

/** Upper column of one wire and lower column of the other, kept apart on the side where they already are. */
function nudgeFor({ links }: Layers, { portX }: Places, a: number, b: number): Nudge {
  const [upper, lower] = [links[a].upper, links[b].lower]
  return portX[upper] <= portX[lower] ? { left: upper, right: lower } : { left: lower, right: upper }
}

/** Room below the earth rail: earth symbols, path numbers, brackets with up to three lines. */
const FOOT = 110

function composeScene(layout: Layout): Omit<Scene, 'circuits' | 'mirrored'> {
  const { manner, graph, layers, places, stack } = layout
  const line = lineOf(manner)
  const earthY = stack.centre[stack.centre.length - 1]
  const paths = numberPaths(layout, earthY)
  const groups = bracketPaths(layout, paths, earthY)
  const splices: SceneSplice[] = []
  const pieces: ScenePiece[] = []
  layers.items.forEach(({ node }, item) => {
    if (node === null) return
    if (graph.nodes[node].kind === 'piece') pieces.push(placePiece(layout, item, pathNear(paths, places, item)))
    else if (graph.nodes[node].kind !== 'rail' && graph.nodes[node].kind !== 'earth') splices.push(placeSplice(layout, item))
  })
  const below = Math.max(earthY + 26 + line, ...groups.map(({ y, lines }) => y + 8 + lines.length * line))
  const foot = { lines: legendOf(layout), at: [0, below + line + 8] as const }
  return {
    width: Math.max(LEGEND_ROOM, places.width), height: foot.at[1] + (foot.lines.length - 1) * line + line / 2, foot, letter: manner.letter,
    rails: drawRails(layout, earthY), wires: traceWires(layout), pieces, splices, marks: drawEarths(layout, earthY), paths, groups,
  }
}

/** How the drawing is to be read, in lines as wide as the drawing. */
function legendOf({ manner, graph, places }: Layout): string[] {
  const named = graph.nodes.some(({ kind, text }) => kind === 'earth' && text !== '')
  const lamps = graph.nodes.some(({ model }) => (model?.lamps ?? []).length > 0)
  const said = [
    ...lamps ? ['Beside a lamp: per cent of its rated volts.'] : [],
    ...!manner.whole ? ['Beside a wire: its id where there is room, colour letters, size.'] : [],
    'Live is in full colour with an amber edge, the wider the more amps; not live is thin and pale.',
    ...named && !manner.whole ? [`Earth without a name: ${graph.commonMetal}.`] : [],
  ]
  return said.flatMap((sentence) => wrapText(sentence, LETTER, Math.max(LEGEND_ROOM, places.width) / manner.letter * LETTER))
}

const LEGEND_ROOM = 260

function pathNear(paths: readonly PathNumber[], places: Places, item: number): number {
  const x = places.coreX[item][0] ?? places.edgeX[item]?.[0] ?? 0
  return paths.reduce((near, path) => Math.abs(path.x - x) < Math.abs(near.x - x) ? path : near, paths[0] ?? { number: 1, x: 0, y: 0 }).number
}

function drawRails({ graph, stack, places, wiring }: Layout, earthY: number): Rail[] {
  const [plus, minus] = wiring.earth === 'positive' ? ['−', '+'] : ['+', '−']
  const rails: Rail[] = []
  if (graph.nodes.some(({ kind }) => kind === 'rail')) rails.push({ marking: `30 ${plus}`, y: stack.centre[0], x0: 0, x1: places.width, point: graph.supplyPoint })
  if (graph.nodes.some(({ kind }) => kind === 'earth')) rails.push({ marking: `31 ${minus}`, y: earthY, x0: 0, x1: places.width, point: null })
  return rails
}

function drawEarths({ manner, graph, layers, places }: Layout, y: number): SceneMark[] {
  return layers.rows[layers.rows.length - 1].flatMap((item) => {
    const { node } = layers.items[item]
    if (node === null || graph.nodes[node].kind !== 'earth') return []
    return [{ id: graph.nodes[node].id, kind: 'earth' as const, at: [places.coreX[item][0], y] as const, lines: earthLines(graph.nodes[node].text, manner) }]
  })
}

// --- path numbers and the brackets below them ---

function numberPaths({ manner, graph, layers, places }: Layout, earthY: number): PathNumber[] {
  const most = Math.max(0, ...graph.nodes.map(({ kind, text }) => kind === 'earth' ? earthLines(text, manner).length : 0))
  const earths = layers.rows[layers.rows.length - 1].filter((item) => graph.nodes[layers.items[item].node ?? 0].kind === 'earth')
  return earths.map((item, index) => ({ number: index + 1, x: places.coreX[item][0], y: earthY + 14 + lineOf(manner) * (most + 1) }))
}

function bracketPaths({ manner, wiring, graph, ranks, layers, places }: Layout, paths: readonly PathNumber[], earthY: number): PathGroup[] {
  const earths = layers.rows[layers.rows.length - 1].filter((item) => graph.nodes[layers.items[item].node ?? 0].kind === 'earth')
  const names = earths.map((item) => groupOf(wiring, graph, ranks, layers.items[item].node ?? 0))
  const runs: { name: string, from: number, to: number }[] = []
  names.forEach((name, i) => {
    if (runs.length > 0 && runs[runs.length - 1].name === name) runs[runs.length - 1].to = i
    else runs.push({ name, from: i, to: i })
  })
  const y = (paths[0]?.y ?? earthY + 20) + 10
  return runs.map(({ name, from, to }, index) => {
    if (manner.whole) return { lines: [], x0: 0, x1: 0, y }
    const x0 = index === 0 ? 0 : (paths[from].x + paths[from - 1].x) / 2 + 5
    const x1 = index === runs.length - 1 ? places.width : (paths[to].x + paths[to + 1].x) / 2 - 5
    return { lines: fitLines(name, x1 - x0), x0: Math.max(x0, paths[from].x - 40), x1: Math.min(x1, paths[to].x + 40), y }
  }).map((group) => ({ ...group, lines: group.lines.every((line) => textWidth(line, LETTER) <= group.x1 - group.x0 + 8) ? group.lines : fitLines(group.lines.join(' '), group.x1 - group.x0) }))
}

/** A name too long for its bracket, even broken at its spaces, is left to the list of paths. */
function fitLines(name: string, room: number): string[] {
  const lines = wrapText(name, LETTER, room)
  return lines.length <= 3 && lines.every((line) => textWidth(line, LETTER) <= room) ? lines : []
}

// --- margins ---

function shift(scene: Scene, dx: number, dy: number): Scene {
  const move = ([x, y]: readonly [number, number]) => [x + dx, y + dy] as const
  return {
    circuits: scene.circuits, mirrored: scene.mirrored, letter: scene.letter, width: scene.width + dx + MARGIN.right, height: scene.height + dy + MARGIN.bottom,
    rails: scene.rails.map((rail) => ({ ...rail, y: rail.y + dy, x0: rail.x0 + dx, x1: rail.x1 + dx })),
    wires: scene.wires.map((wire) => ({ ...wire, points: wire.points.map(move), label: wire.label && { ...wire.label, at: move(wire.label.at) } })),
    pieces: scene.pieces.map((piece) => ({
      ...piece,
      cores: piece.cores.map((core) => ({ ...core, x: core.x + dx, top: core.top + dy, bottom: core.bottom + dy })),
      box: piece.box && { ...piece.box, x: piece.box.x + dx, y: piece.box.y + dy },
      pins: piece.pins.map((pin) => ({ ...pin, at: move(pin.at) })),
      leads: piece.leads.map((lead) => ({ ...lead, points: lead.points.map(move) })),
      name: { ...piece.name, at: move(piece.name.at) },
    })),
    splices: scene.splices.map((splice) => ({ ...splice, at: move(splice.at), bars: splice.bars.map((bar) => bar.map(move)) })),
    marks: scene.marks.map((mark) => ({ ...mark, at: move(mark.at) })),
    paths: scene.paths.map((path) => ({ ...path, x: path.x + dx, y: path.y + dy })),
    foot: { ...scene.foot, at: move(scene.foot.at) },
    groups: scene.groups.map((group) => ({ ...group, x0: group.x0 + dx, x1: group.x1 + dx, y: group.y + dy })),
  }
}
