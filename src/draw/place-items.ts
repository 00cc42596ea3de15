import type { Layers, Link } from './layers.ts'
import type { Manner } from './manner.ts'
import { placeColumns, type Apart, type Wish } from './least-bends.ts'
import { markingWidth, NAME_GAP, WIRE_LEFT, WIRE_RIGHT, type Measure } from './measure-items.ts'
import type { GraphNode, PathGraph } from './path-graph.ts'
import { CLEAR } from './route-channel.ts'
import { earthLines } from './name-lines.ts'
import { symbolOf } from './symbols/table.ts'

/** x of every port, of every core and of every box edge. */
export interface Places {
  readonly portX: readonly number[]
  readonly coreX: readonly (readonly number[])[]
  /** Left and right edge of a box item. */
  readonly edgeX: readonly (readonly [number, number] | null)[]
  /** Pins of a box that no wire meets: end to x. */
  readonly idleX: readonly ReadonlyMap<number, number>[]
  readonly width: number
}

/** Room left and right of a wire, and whether the ends of the symbols are marked. */
interface Rooms { readonly wireLeft: number; readonly wireRight: number; readonly marked: boolean }

const OPEN: Rooms = { wireLeft: WIRE_LEFT, wireRight: WIRE_RIGHT, marked: true }
const CLOSE: Rooms = { wireLeft: 9, wireRight: 9, marked: false }

/** From wire to wire. */
const pitchOf = ({ wireLeft, wireRight }: Rooms) => wireLeft + wireRight

interface Border { readonly column: number; readonly room: number }
interface Draft extends Rooms {
  readonly manner: Manner
  count: number
  readonly apart: Apart[]
  readonly wishes: Wish[]
  /** Columns that a wire joins across a channel. */
  readonly runs: { readonly a: number, readonly b: number }[]
  /** Left of all columns, and right of all. */
  borders: readonly [number, number]
  readonly port: number[]
  readonly cores: number[][]
  readonly edges: ([number, number] | null)[]
  readonly idle: Map<number, number>[]
  readonly lefts: Border[][]
  readonly rights: Border[][]
}

/** Free room between two neighbours in a layer. */
const GAP = 8

/** Two ports that must stand clear of one another although they are in different layers. */
export interface Nudge { readonly left: number; readonly right: number }

/**
 * Columns in which most wires run straight, stretched to the width of the sheet; null where the nudges contradict one
 * another. `letters` is the length of each edge's lettering, 0 where it has none.
 */
export function placeItems(graph: PathGraph, layers: Layers, measures: readonly Measure[], letters: readonly number[], manner: Manner, sheetWidth: number, nudges: readonly Nudge[] = []): Places | null {
  const draft: Draft = { ...manner.whole ? CLOSE : OPEN, manner, count: 0, apart: [], wishes: [], runs: [], borders: [0, 0], port: [], cores: [], edges: [], idle: [], lefts: [], rights: [] }
  layers.items.forEach((_, item) => addItem(draft, graph, layers, measures[item], item))
  for (const row of layers.rows) keepApart(draft, row)
  for (const { upper, lower, turn, edge } of layers.links) {
    draft.wishes.push({ a: draft.port[upper], b: draft.port[lower], weight: wishWeight(graph, layers, upper, lower) * (turn === 'none' ? 1 : 0.3) * (graph.edges[edge].kind === 'rail' ? 20 : 1) })
    if (turn === 'none') draft.runs.push({ a: draft.port[upper], b: draft.port[lower] })
  }
  for (const link of layers.links) if (link.turn !== 'none') widenTurn(draft, layers, link, letters[link.edge])
  addBorders(draft)
  for (const { left, right } of nudges) draft.apart.push({ left: draft.port[left], right: draft.port[right], apart: CLEAR + 1 })
  const straight = solveColumns(draft, STRAIGHT)
  if (straight === null) return null
  const places = spread(draft, straight, sheetWidth)
  const narrow = places.width <= sheetWidth ? null : solveColumns(draft, NARROW)
  return narrow === null ? places : spread(draft, narrow, sheetWidth)
}

/** How heavily the width of the whole drawing weighs against its bends: on a sheet with room to spare, and on one too narrow. */
const STRAIGHT = 0.5
const NARROW = 8
/** A step aside no longer than this is made straight, whatever it costs in width. */
const KINK = 20

/** Columns for one weight of the width, found once more with the short steps aside straightened where that can be. */
function solveColumns(draft: Draft, widthWeight: number): number[] | null {
  const wishes = [...draft.wishes, widthWish(draft, widthWeight)]
  const x = placeColumns(draft.count, draft.apart, wishes)
  if (x === null) return null
  const kinks = draft.runs.filter(({ a, b }) => x[a] !== x[b] && Math.abs(x[a] - x[b]) <= KINK)
  if (kinks.length === 0) return x
  return placeColumns(draft.count, [...draft.apart, ...kinks.flatMap(({ a, b }) => [{ left: a, right: b, apart: 0 }, { left: b, right: a, apart: 0 }])], wishes) ?? x
}

/** A wire that turns back in one channel is lettered beside its first port, before the next wire. */
function widenTurn(draft: Draft, { ports, rows, items }: Layers, { upper, lower }: Link, letters: number): void {
  const row = rows[items[ports[upper].item].layer]
  const placeOf = (port: number) => row.indexOf(ports[port].item)
  const first = placeOf(upper) <= placeOf(lower) ? upper : lower
  const next = row[placeOf(first) + 1]
  if (letters === 0 || next === undefined) return
  for (const { column } of draft.lefts[next]) draft.apart.push({ left: draft.port[first], right: column, apart: letters + 20 })
}

function addBorders(draft: Draft): void {
  const inner = draft.count
  const [left, right] = [newColumn(draft), newColumn(draft)]
  for (let column = 0; column < inner; column++) draft.apart.push({ left, right: column, apart: 0 }, { left: column, right, apart: 0 })
  draft.borders = [left, right]
}

function widthWish({ borders: [a, b] }: Draft, weight: number): Wish {
  return { a, b, weight }
}

/** A bend in a passing wire is the worst, one beside a rail is second. */
function wishWeight(graph: PathGraph, layers: Layers, upper: number, lower: number): number {
  const passing = [upper, lower].filter((port) => layers.items[layers.ports[port].item].node === null).length
  return [2, 3, 8][passing]
}

function addItem(draft: Draft, graph: PathGraph, layers: Layers, measure: Measure, item: number): void {
  const { node } = layers.items[item]
  draft.cores[item] = []
  draft.edges[item] = null
  draft.idle[item] = new Map()
  draft.lefts[item] = []
  draft.rights[item] = []
  if (measure.form === 'box' && node !== null) addBox(draft, graph.nodes[node], layers, measure, item)
  else if (measure.form === 'comb' && node !== null) addComb(draft, graph.nodes[node], layers, measure, item)
  else addColumn(draft, node === null ? null : graph.nodes[node], layers, measure, item)
}

function newColumn(draft: Draft): number {
  return draft.count++
}

// --- one core with bars of ports ---

function addColumn(draft: Draft, node: GraphNode | null, layers: Layers, measure: Measure, item: number): void {
  const core = newColumn(draft)
  draft.cores[item] = [core]
  const half = measure.core?.half ?? 0
  const marking = draft.marked && node?.part && symbolOf(node.part.kind).marked ? Math.max(...node.ends.map((end) => markingWidth(end.marking)), 0) + 12 : 0
  const below = node?.kind === 'earth' ? Math.max(draft.manner.letter * 1.3, ...earthLines(node.text, draft.manner).map(markingWidth)) / 2 + 3 : 0
  draft.lefts[item].push({ column: core, room: Math.max(draft.wireLeft, half + 4, marking, below) })
  draft.rights[item].push({ column: core, room: Math.max(draft.wireRight, half + 4, below, measure.name.width > 0 ? half + NAME_GAP + measure.name.width + 4 : 0) })
  for (const side of ['top', 'bottom'] as const) {
    const ports = layers.items[item][side]
    const straight = ports.filter((port) => isStraight(measure, layers.ports[port].end, side))
    addBar(draft, item, core, straight)
    addOdd(draft, item, core, ports.filter((port) => !straight.includes(port)), straight, Math.max(half, marking) + 12)
  }
}

/** Whether a wire leaves an end on that end's own side. Whatever is not in line has no sides. */
export function isStraight(measure: Measure, end: number, side: 'top' | 'bottom'): boolean {
  return measure.form !== 'inline' || measure.ends[side === 'top' ? 0 : 1] === end
}

/** A single port stands on the core's line; several stand in a row that reaches over it. */
function addBar(draft: Draft, item: number, core: number, ports: readonly number[]): void {
  if (ports.length === 1) draft.port[ports[0]] = core
  if (ports.length < 2) return
  const columns = ports.map((port) => draft.port[port] = newColumn(draft))
  draft.apart.push(...inRow(columns, pitchOf(draft)), { left: columns[0], right: core, apart: 0 }, { left: core, right: columns[columns.length - 1], apart: 0 })
  for (const column of columns) draft.wishes.push({ a: core, b: column, weight: 0.5 })
  borderRow(draft, item, columns)
}

/** Wires that leave an end against its side go round the symbol on the left. */
function addOdd(draft: Draft, item: number, core: number, ports: readonly number[], straight: readonly number[], room: number): void {
  if (ports.length === 0) return
  const columns = ports.map((port) => draft.port[port] = newColumn(draft))
  const last = columns[columns.length - 1]
  draft.apart.push(...inRow(columns, pitchOf(draft)), { left: last, right: core, apart: Math.max(room, pitchOf(draft)) })
  if (straight.length > 0) draft.apart.push({ left: last, right: draft.port[straight[0]], apart: pitchOf(draft) })
  draft.wishes.push({ a: last, b: core, weight: 0.5 })
  borderRow(draft, item, columns)
}

function inRow(columns: readonly number[], apart: number): Apart[] {
  return columns.slice(1).map((right, i) => ({ left: columns[i], right, apart }))
}

function borderRow(draft: Draft, item: number, columns: readonly number[]): void {
  draft.lefts[item].push({ column: columns[0], room: draft.wireLeft })
  draft.rights[item].push({ column: columns[columns.length - 1], room: draft.wireRight })
}

// --- limbs side by side ---

function addComb(draft: Draft, node: GraphNode, layers: Layers, measure: Measure, item: number): void {
  const half = measure.core?.half ?? 0
  const marks = measure.ends.map((end) => (draft.marked ? markingWidth(node.ends[end].marking) : 0) + 12)
  const cores = measure.ends.map(() => newColumn(draft))
  draft.cores[item] = cores
  cores.slice(1).forEach((right, i) => draft.apart.push({ left: cores[i], right, apart: Math.max(2 * half + 10, pitchOf(draft), marks[i + 1] + draft.wireRight) }))
  for (const side of ['top', 'bottom'] as const) {
    const ports = layers.items[item][side]
    const isHub = ports.some((port) => layers.ports[port].end === measure.hub)
    if (isHub) addHub(draft, item, cores, ports)
    else for (const port of ports) draft.port[port] = cores[measure.ends.indexOf(layers.ports[port].end)]
  }
  cores.slice(1).forEach((b, i) => draft.wishes.push({ a: cores[i], b, weight: 1 }))
  draft.lefts[item].push({ column: cores[0], room: Math.max(draft.wireLeft, half + 4, marks[0]) })
  draft.rights[item].push({ column: cores[cores.length - 1], room: half + NAME_GAP + measure.name.width + 4 })
}

function addHub(draft: Draft, item: number, cores: readonly number[], ports: readonly number[]): void {
  const columns = ports.map((port) => draft.port[port] = ports.length === 1 ? cores[Math.floor((cores.length - 1) / 2)] : newColumn(draft))
  if (columns.length < 2) return
  draft.apart.push(...inRow(columns, pitchOf(draft)), { left: cores[0], right: columns[0], apart: 0 })
  borderRow(draft, item, columns)
}

// --- boxes ---

function addBox(draft: Draft, node: GraphNode, layers: Layers, measure: Measure, item: number): void {
  const [left, right] = [newColumn(draft), newColumn(draft)]
  draft.edges[item] = [left, right]
  draft.apart.push({ left, right, apart: 48 })
  draft.wishes.push({ a: left, b: right, weight: 0.2 })
  const wired = new Set([...layers.items[item].top, ...layers.items[item].bottom].map((port) => layers.ports[port].end))
  const idle = node.ends.map((_, end) => end).filter((end) => !wired.has(end))
  addPins(draft, node, layers, item, layers.items[item].top, [], left, right)
  addPins(draft, node, layers, item, layers.items[item].bottom, idle, left, right)
  draft.lefts[item].push({ column: left, room: 6 })
  draft.rights[item].push({ column: right, room: NAME_GAP + measure.name.width + 4 })
}

function addPins(draft: Draft, node: GraphNode, layers: Layers, item: number, ports: readonly number[], idle: readonly number[], left: number, right: number): void {
  const pins = [...ports.map((port) => ({ port, end: layers.ports[port].end })), ...idle.map((end) => ({ port: -1, end }))]
  let before = left
  let room = 14
  pins.forEach(({ port, end }, index) => {
    const column = newColumn(draft)
    if (port < 0) draft.idle[item].set(end, column)
    else draft.port[port] = column
    draft.apart.push({ left: before, right: column, apart: room })
    before = column
    room = pins[index + 1]?.end === end ? pitchOf(draft) : Math.max(pitchOf(draft), (draft.marked ? markingWidth(node.ends[end].marking) : 0) + 16)
  })
  if (pins.length > 0) draft.apart.push({ left: before, right, apart: Math.max(12, room - 8) })
  if (ports.length > 0) borderRow(draft, item, ports.map((port) => draft.port[port]))
}

// --- neighbours ---

function keepApart(draft: Draft, row: readonly number[]): void {
  row.slice(1).forEach((item, i) => {
    for (const a of draft.rights[row[i]]) {
      for (const b of draft.lefts[item]) {
        draft.apart.push({ left: a.column, right: b.column, apart: a.room + b.room + (draft.edges[item] || draft.edges[row[i]] ? GAP : 1) })
      }
    }
    draft.wishes.push({ a: draft.rights[row[i]][0].column, b: draft.lefts[item][0].column, weight: 0.02 })
  })
}

/** Widest stretch of the columns: beyond it a sheet looks empty rather than airy. */
const MOST_SPREAD = 2.2

function spread(draft: Draft, x: readonly number[], sheetWidth: number): Places {
  const left = Math.max(0, ...draft.lefts.flat().map(({ column, room }) => room - x[column]))
  const tail = (k: number) => Math.max(...draft.rights.flat().map(({ column, room }) => x[column] * k + room)) + left
  const reach = Math.max(...x, 1)
  const k = Math.min(MOST_SPREAD, Math.max(1, (sheetWidth - tail(1) + reach) / reach))
  const at = (column: number) => Math.round((left + x[column] * k) * 2) / 2
  return {
    portX: draft.port.map(at),
    coreX: draft.cores.map((cores) => cores.map(at)),
    edgeX: draft.edges.map((edges) => edges ? [at(edges[0]), at(edges[1])] as const : null),
    idleX: draft.idle.map((idle) => new Map([...idle].map(([end, column]) => [end, at(column)]))),
    width: tail(k),
  }
}
