import type { ElementSpec, PartModel, Wiring, WiringPart } from '../record/index.ts'
import { symbolOf } from './symbols/table.ts'

/** One end of a node: the point of the wiring it stands for. */
interface GraphEnd { readonly point: string; readonly terminal: string; readonly is: string; readonly marking: string }

/** What stands in the drawing as one thing: a part or a piece of one, a splice, a connection to a rail. */
export interface GraphNode {
  readonly id: string
  readonly kind: 'piece' | 'splice' | 'mating' | 'loose' | 'rail' | 'earth'
  readonly part?: WiringPart
  readonly model?: PartModel
  readonly elements: readonly ElementSpec[]
  readonly ends: readonly GraphEnd[]
  readonly text: string
}

export interface EdgeEnd { readonly node: number; readonly end: number }

/** A wire, a fixing, or the battery's own hold on the supply rail. */
export interface GraphEdge { readonly id: string; readonly kind: 'wire' | 'fixing' | 'rail'; readonly a: EdgeEnd; readonly b: EdgeEnd }

export interface PathGraph {
  readonly nodes: readonly GraphNode[]
  readonly edges: readonly GraphEdge[]
  /** The battery that stands between the rails, if there is one. */
  readonly battery: number | null
  /** The battery's post that the supply rail stands for. */
  readonly supplyPoint: string | null
  /** The metal on which most stands: its earth symbols carry no name. */
  readonly commonMetal: string
}

export type Models = ReadonlyMap<string, PartModel>

interface Draft { readonly nodes: GraphNode[]; readonly edges: GraphEdge[]; readonly at: Map<string, EdgeEnd> }

/**
 * The wiring as nodes and edges of a path drawing. Every wire end at the battery's live post hangs from a rail node of
 * its own, every one at a metal stands on an earth node of its own, so that both rails can be as long as the sheet.
 */
export function buildPathGraph(wiring: Wiring, models: Models): PathGraph {
  const draft: Draft = { nodes: [], edges: [], at: new Map() }
  for (const part of wiring.parts.values()) addPart(draft, part, models.get(part.id))
  for (const splice of wiring.splices.values()) addJunction(draft, splice.id, 'splice', [splice.id])
  for (const mating of wiring.matings.values()) addJunction(draft, mating.id, 'mating', mating.joins)
  const supply = findSupply(wiring, models)
  for (const wire of wiring.wires.values()) addEdge(draft, wiring, supply, wire.id, 'wire', wire.ends.map(({ at, state }) => ({ at, state })))
  for (const fixing of wiring.fixings.values()) {
    if (fixing.joins.every((point) => wiring.metals.has(point))) continue
    addEdge(draft, wiring, supply, fixing.id, 'fixing', fixing.joins.map((at) => ({ at, state: 'joined' })))
  }
  const battery = supply === null ? undefined : draft.at.get(supply.live)
  if (supply !== null && battery) addEdge(draft, wiring, supply, 'rail-30', 'rail', [{ at: null, state: 'rail' }, { at: `own ${supply.live}`, state: 'joined' }])
  return trimIdleEnds(dropUnjoined(unnameCommon({ nodes: draft.nodes, edges: draft.edges, battery: battery?.node ?? null, supplyPoint: supply?.live ?? null, commonMetal: '' })))
}

/** The battery's posts, and the metal that carries its earth lead. */
interface Supply { readonly live: string; readonly back: string | null; readonly metal: string | null }

function findSupply(wiring: Wiring, models: Models): Supply | null {
  const batteries = [...wiring.parts.values()].filter(({ kind }) => kind === 'battery')
  const supplies = batteries.map((part) => postsOf(wiring, part, models.get(part.id))).filter((found) => found !== null)
  return supplies.find(({ metal }) => metal !== null) ?? supplies[0] ?? null
}

function postsOf(wiring: Wiring, part: WiringPart, model: PartModel | undefined): Supply | null {
  const source = model?.elements.find(({ does }) => does === 'source')
  const terminals = [...part.terminals.values()]
  const from = terminals.find(({ is }) => is === (source?.from ?? '+'))
  const to = terminals.find(({ is }) => is === (source?.to ?? '-'))
  const [live, back] = wiring.earth === 'positive' ? [to, from] : [from, to]
  if (!live) return null
  const backPoint = back ? `${part.id}:${back.id}` : null
  return { live: `${part.id}:${live.id}`, back: backPoint, metal: backPoint === null ? null : earthOf(wiring, backPoint) }
}

/** The metal at the other end of a wire or fixing from this point. */
function earthOf(wiring: Wiring, point: string): string | null {
  const joins = [...wiring.wires.values()].map(({ ends }) => ends.map(({ at }) => at))
  const fixed = [...wiring.fixings.values()].map(({ joins: points }) => points as readonly (string | null)[])
  const found = [...joins, ...fixed].filter((points) => points.includes(point)).flat()
  return found.find((at) => at !== null && wiring.metals.has(at)) ?? null
}

function addPart(draft: Draft, part: WiringPart, model: PartModel | undefined): void {
  for (const [index, piece] of splitPart(part, model).entries()) {
    const node = draft.nodes.length
    const id = index === 0 ? part.id : `${part.id}/${index + 1}`
    const ends = piece.terminals.map((terminal) => part.terminals.get(terminal)).filter((found) => found !== undefined)
      .map((terminal) => ({ point: `${part.id}:${terminal.id}`, terminal: terminal.id, is: terminal.is, marking: terminal.marking }))
    draft.nodes.push({ id, kind: 'piece', part, model, elements: piece.elements, ends, text: part.title })
    ends.forEach(({ point }, end) => draft.at.set(point, { node, end }))
  }
}

interface Piece { readonly terminals: readonly string[]; readonly elements: readonly ElementSpec[] }

/** A part whose symbol allows it is drawn detached: one piece for each set of ends that its elements join. */
function splitPart(part: WiringPart, model: PartModel | undefined): Piece[] {
  const terminals = [...part.terminals.keys()]
  const elements = model?.elements ?? []
  if (symbolOf(part.kind).whole || elements.length === 0) return [{ terminals, elements }]
  const setOf = joinEnds(elements)
  const byIs = new Map([...part.terminals.values()].map(({ id, is }) => [id, setOf(is)]))
  const sets = [...new Set(terminals.map((terminal) => byIs.get(terminal)))].filter((set) => elements.some(({ from }) => setOf(from) === set))
  const pieces = sets.map((set) => ({
    terminals: terminals.filter((terminal) => byIs.get(terminal) === set),
    elements: elements.filter(({ from }) => setOf(from) === set),
  }))
  if (pieces.length === 0) return [{ terminals, elements }]
  const rest = terminals.filter((terminal) => !sets.includes(byIs.get(terminal)))
  return pieces.map((piece, index) => index === 0 ? { ...piece, terminals: [...piece.terminals, ...rest] } : piece)
}

/** For each end, the first of the ends that elements join it to. */
function joinEnds(elements: readonly ElementSpec[]): (end: string) => string {
  const up = new Map<string, string>()
  const top = (end: string): string => {
    const above = up.get(end)
    return above === undefined ? end : top(above)
  }
  for (const { from, to } of elements) {
    const [a, b] = [top(from), top(to)]
    if (a !== b) up.set(b, a)
  }
  return top
}

function addJunction(draft: Draft, id: string, kind: 'splice' | 'mating', points: readonly string[]): void {
  const node = draft.nodes.length
  draft.nodes.push({ id, kind, elements: [], ends: points.map((point) => endAt(point)), text: '' })
  points.forEach((point, end) => draft.at.set(point, { node, end }))
}

interface Reach { readonly at: string | null; readonly state: string }

function addEdge(draft: Draft, wiring: Wiring, supply: Supply | null, id: string, kind: GraphEdge['kind'], reaches: readonly Reach[]): void {
  const [a, b] = reaches.map((reach, index) => findEnd(draft, wiring, supply, `${id}.${index}`, reach))
  draft.edges.push({ id, kind, a, b })
}

function findEnd(draft: Draft, wiring: Wiring, supply: Supply | null, key: string, { at, state }: Reach): EdgeEnd {
  if (state === 'rail') return addSingle(draft, `30.${key}`, 'rail', '')
  if (at === null) return addSingle(draft, key, 'loose', state === 'loose' ? 'loose end' : 'end not known')
  if (at.startsWith('own ')) return draft.at.get(at.slice(4)) ?? addSingle(draft, key, 'loose', '')
  if (supply !== null && at === supply.live) return addSingle(draft, `30.${key}`, 'rail', '')
  if (supply !== null && wiring.metals.size === 0 && at === supply.back && wiring.earth === 'none') return addSingle(draft, `31.${key}`, 'earth', '')
  const metal = wiring.metals.get(at)
  if (metal) return addSingle(draft, `31.${key}`, 'earth', metal.title)
  const known = draft.at.get(at)
  if (known) return known
  const open = addSingle(draft, at, 'loose', 'meets nothing')
  draft.at.set(at, open)
  return open
}

function addSingle(draft: Draft, id: string, kind: 'rail' | 'earth' | 'loose', text: string): EdgeEnd {
  draft.nodes.push({ id, kind, elements: [], ends: [endAt(id)], text })
  return { node: draft.nodes.length - 1, end: 0 }
}

function endAt(point: string): GraphEnd {
  return { point, terminal: point, is: point, marking: '' }
}

/** Takes the name off the earth symbols of the metal that has most of them. */
function unnameCommon(graph: PathGraph): PathGraph {
  const count = new Map<string, number>()
  for (const { kind, text } of graph.nodes) if (kind === 'earth') count.set(text, (count.get(text) ?? 0) + 1)
  const [commonMetal] = [...count].reduce((most, one) => one[1] > most[1] ? one : most, ['', 0] as const)
  return { ...graph, commonMetal, nodes: graph.nodes.map((node) => node.kind === 'earth' && node.text === commonMetal ? { ...node, text: '' } : node) }
}

/** Splices and matings that no wire of this vehicle reaches are left out; a part is drawn even so. */
function dropUnjoined(graph: PathGraph): PathGraph {
  const used = new Set(graph.edges.flatMap(({ a, b }) => [a.node, b.node]))
  const keep = graph.nodes.map(({ kind }, node) => kind === 'piece' || used.has(node))
  const moved = keep.map((kept, node) => kept ? keep.slice(0, node).filter(Boolean).length : -1)
  const move = (end: EdgeEnd): EdgeEnd => ({ ...end, node: moved[end.node] })
  return {
    ...graph,
    nodes: graph.nodes.filter((_, node) => keep[node]),
    edges: graph.edges.map((edge) => ({ ...edge, a: move(edge.a), b: move(edge.b) })),
    battery: graph.battery === null ? null : moved[graph.battery],
  }
}

/** A part of many ends of which only two are wired, with an element between those, is drawn as one of two ends. */
function trimIdleEnds(graph: PathGraph): PathGraph {
  const wired = graph.nodes.map(() => new Set<number>())
  for (const { a, b } of graph.edges) {
    wired[a.node].add(a.end)
    wired[b.node].add(b.end)
  }
  const trims = graph.nodes.map((node, n) => trimNode(node, wired[n]))
  const move = ({ node, end }: EdgeEnd): EdgeEnd => ({ node, end: trims[node]?.kept.indexOf(end) ?? end })
  return {
    ...graph,
    nodes: graph.nodes.map((node, n) => trims[n]?.node ?? node),
    edges: graph.edges.map((edge) => ({ ...edge, a: move(edge.a), b: move(edge.b) })),
  }
}

function trimNode(node: GraphNode, wired: ReadonlySet<number>): { readonly node: GraphNode, readonly kept: readonly number[] } | null {
  if (node.kind !== 'piece' || node.ends.length < 3 || wired.size !== 2) return null
  const kept = [...wired].sort((a, b) => a - b)
  const [a, b] = kept.map((end) => node.ends[end].is)
  const elements = node.elements.filter(({ from, to }) => (from === a && to === b) || (from === b && to === a))
  return elements.length === 0 ? null : { node: { ...node, ends: kept.map((end) => node.ends[end]), elements }, kept }
}
