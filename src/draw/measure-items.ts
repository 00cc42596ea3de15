import type { ElementSpec } from '../record/index.ts'
import type { Layers } from './layers.ts'
import type { Manner } from './manner.ts'
import { lineName, nameOf, NO_NAME, type Name } from './name-lines.ts'
import type { GraphNode, PathGraph } from './path-graph.ts'
import { LETTER } from './scene.ts'
import type { Core } from './symbols/symbol.ts'
import { symbolOf } from './symbols/table.ts'
import { textWidth } from './text-widths.ts'

/** Room left of a wire for its lettering, and right of it. */
export const WIRE_LEFT = 22
export const WIRE_RIGHT = 9
/** Above a symbol and its lettering for wires that lie along its end. */
export const BAR_ROOM = 14
/** Between a symbol and its name. */
export const NAME_GAP = 6

/** Below the supply rail, for its edge when it is live. */
const RAIL_ROOM = 8

/** How an item stands in its layer: its form, its size above and below the centre line, its lettering. */
export interface Measure {
  readonly form: 'pass' | 'rail' | 'earth' | 'junction' | 'inline' | 'comb' | 'box'
  readonly name: Name
  readonly core: Core | null
  /** Ends from left to right for a comb; for an inline symbol the end at the top, then the one at the bottom. */
  readonly ends: readonly number[]
  /** A comb's common end. */
  readonly hub: number
  readonly limbs: readonly ElementSpec[]
  /** From the cores of a comb to the bar at their common end. */
  readonly bar: number
  readonly up: number
  readonly down: number
}

const PASS: Omit<Measure, 'form'> = { name: NO_NAME, core: null, ends: [], hub: -1, limbs: [], bar: 0, up: 0, down: 0 }

export function measureItem(graph: PathGraph, layers: Layers, index: number, nearness: readonly (readonly number[])[], manner: Manner): Measure {
  const item = layers.items[index]
  if (item.node === null) return { form: 'pass', ...PASS }
  const node = graph.nodes[item.node]
  if (node.kind === 'earth') return { form: 'earth', ...PASS }
  if (node.kind === 'rail') return { form: 'rail', ...PASS, down: RAIL_ROOM }
  if (node.kind !== 'piece') return measureJunction(node, manner)
  const sides = endSides(layers, index, node.ends.length)
  const name = nameIn(graph, layers, index, manner)
  if (node.ends.length <= 2) return measureInline(node, name, sides, nearness[item.node], manner)
  const comb = readComb(node, name, sides, layers, index)
  return comb ?? measureBox(node, name, manner)
}

/** Pieces in one layer beyond which their names stand upright in a drawing of the whole. */
const CROWD = 4

function nameIn(graph: PathGraph, { items, rows }: Layers, index: number, manner: Manner): Name {
  const node = graph.nodes[items[index].node ?? 0]
  if (!manner.whole) return nameOf(node, manner.letter)
  const beside = rows[items[index].layer].filter((item) => items[item].node !== null)
  return lineName(node, beside.length > CROWD, manner)
}

interface EndSides { readonly top: number; readonly bottom: number }

/** How many wires leave each end upward and downward. */
function endSides(layers: Layers, index: number, count: number): EndSides[] {
  const item = layers.items[index]
  const leaving = (ports: readonly number[], end: number) => ports.filter((port) => layers.ports[port].end === end).length
  return Array.from({ length: count }, (_, end) => ({ top: leaving(item.top, end), bottom: leaving(item.bottom, end) }))
}

function measureJunction(node: GraphNode, manner: Manner): Measure {
  const name = node.kind === 'loose' ? nameOf(node, manner.letter) : NO_NAME
  const half = Math.max(10, name.height / 2 + 2)
  return { ...PASS, form: 'junction', name, up: half, down: half }
}

function measureInline(node: GraphNode, name: Name, sides: readonly EndSides[], nearness: readonly number[], manner: Manner): Measure {
  const ends = inlineOrder(sides, nearness)
  const core = symbolOf(node.part?.kind ?? '').core(node.elements[0])
  const crowded = (end: number | undefined, side: 'top' | 'bottom') => end !== undefined && (sides[end][side] > 1 || sides[end][side === 'top' ? 'bottom' : 'top'] > 0)
  const hasBar = sides.some((_, end) => crowded(end, end === ends[0] ? 'top' : 'bottom'))
  const marking = !manner.whole && symbolOf(node.part?.kind ?? '').marked ? LETTER + 4 : 0
  const half = Math.max(core.height / 2 + marking, hasBar ? Math.max(name.height / 2, core.height / 2 + marking) + BAR_ROOM : name.height / 2)
  return { ...PASS, form: 'inline', name, core, ends, limbs: node.elements.slice(0, 1), up: half + 3, down: half + 3 }
}

/** The end at the top first: where more wires already go the right way, else the one nearer the supply. */
function inlineOrder(sides: readonly EndSides[], nearness: readonly number[]): number[] {
  if (sides.length < 2) return sides.length === 0 ? [] : [0]
  const straight = (upper: number, lower: number) => sides[upper].top + sides[lower].bottom
  const [asIs, turned] = [straight(0, 1), straight(1, 0)]
  const firstUp = asIs === turned ? nearness[0] >= nearness[1] : asIs > turned
  return firstUp ? [0, 1] : [1, 0]
}

// --- a star of elements about one end: limbs side by side ---

function readComb(node: GraphNode, name: Name, sides: readonly EndSides[], layers: Layers, index: number): Measure | null {
  const symbol = symbolOf(node.part?.kind ?? '')
  if (symbol.whole || node.elements.length < 2) return null
  const hub = node.ends.findIndex(({ is }) => node.elements.every(({ from, to }) => from === is || to === is))
  if (hub < 0) return null
  const endOf = (is: string) => node.ends.findIndex((end) => end.is === is)
  const limbs = node.elements.map((element) => ({ element, end: endOf(element.from === node.ends[hub].is ? element.to : element.from) }))
  const distinct = new Set(limbs.map(({ end }) => end))
  if (distinct.size !== limbs.length || distinct.has(-1) || distinct.size + 1 !== node.ends.length) return null
  const hubTop = sides[hub].top > 0
  if (hubTop && sides[hub].bottom > 0) return null
  if (limbs.some(({ end }) => sides[end][hubTop ? 'top' : 'bottom'] > 0 || sides[end].top + sides[end].bottom > 1)) return null
  const order = layers.items[index][hubTop ? 'bottom' : 'top'].map((port) => layers.ports[port].end)
  // A limb without a wire stands right of those that have one.
  const placeOf = (end: number) => order.includes(end) ? order.indexOf(end) : order.length
  limbs.sort((a, b) => placeOf(a.end) - placeOf(b.end))
  return measureComb(node, name, hub, limbs, sides[hub].top + sides[hub].bottom > 1)
}

function measureComb(node: GraphNode, name: Name, hub: number, limbs: readonly { element: ElementSpec, end: number }[], isWide: boolean): Measure {
  const core = symbolOf(node.part?.kind ?? '').core(limbs[0].element)
  const bar = isWide ? Math.max(8, (name.height - core.height) / 2 + 5) : 8
  const half = Math.max(core.height / 2 + Math.max(LETTER + 6, bar + 3), name.height / 2 + 6)
  return { form: 'comb', name, core, ends: limbs.map(({ end }) => end), hub, limbs: limbs.map(({ element }) => element), bar, up: half, down: half }
}

// --- everything else: a box ---

/** Height of the row of markings in a box. */
const MARK_ROW = 18
/** The same where nothing is marked. */
const BARE_ROW = 8

function measureBox(node: GraphNode, name: Name, manner: Manner): Measure {
  const half = Math.max(boxHeight(node, manner) / 2 + 2, name.height / 2)
  return { ...PASS, form: 'box', name, up: half, down: half }
}

/** A row of markings above and below where ends are marked, and between them room for contacts or the letter. */
export function boxHeight(node: GraphNode, { whole }: Manner): number {
  const poles = symbolOf(node.part?.kind ?? '').contacts ? polesOf(node.elements).length : 0
  return 2 * (whole ? BARE_ROW : MARK_ROW) + (poles > 0 ? 12 + 12 * poles : 26)
}

/** Sets of ends that contacts can join. */
export function polesOf(elements: readonly ElementSpec[]): Set<string>[] {
  const poles: Set<string>[] = []
  for (const { from, to, does } of elements) {
    if (does !== 'contact' || from.startsWith('~') || to.startsWith('~')) continue
    const met = poles.filter((pole) => pole.has(from) || pole.has(to))
    const joined = new Set([from, to, ...met.flatMap((pole) => [...pole])])
    poles.splice(0, poles.length, ...poles.filter((pole) => !met.includes(pole)), joined)
  }
  return poles
}

/** Room for a marking beside a pin. */
export function markingWidth(marking: string): number {
  return textWidth(marking, LETTER)
}
