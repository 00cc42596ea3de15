import type { EdgeEnd, GraphEdge, GraphNode, PathGraph } from './path-graph.ts'

/** What the ways of some parts to the supply and to earth pass. */
export interface Routes { readonly nodes: ReadonlySet<number>; readonly edges: ReadonlySet<GraphEdge> }

type Goal = 'rail' | 'earth'
interface Step { readonly at: EdgeEnd; readonly by: GraphEdge | null; readonly before: Step | null }
interface Found { readonly goal: Goal; readonly last: Step }

/**
 * From each of these ends the shortest way, over wires and through contacts, fuses, splices and connectors, to the supply rail or to
 * an earth, whichever is nearer; from the end of a lamp or a motor that has none, one through other loads to the side that its
 * other end does not reach. Wires between the parts themselves belong to it.
 */
export function findRoutes(graph: PathGraph, own: ReadonlyMap<number, ReadonlySet<number>>): Routes {
  const leaving = edgesByEnd(graph)
  const nodes = new Set<number>(), edges = new Set<GraphEdge>()
  const keep = (found: Found | null): Goal | null => {
    for (let step: Step | null = found?.last ?? null; step; step = step.before) {
      nodes.add(step.at.node)
      if (step.by) edges.add(step.by)
    }
    return found?.goal ?? null
  }
  const sources: ReadonlyMap<number, ReadonlySet<number>> = graph.battery === null ? own : new Map([...own, [graph.battery, new Set(graph.nodes[graph.battery].ends.keys())]])
  for (const [node, ends] of sources) {
    const goals = [...ends].map((end) => ({ end, goal: keep(seek(graph, leaving, { node, end }, isConductor)) }))
    if (!graph.nodes[node].elements.some(isLoad)) continue
    const reached = goals.flatMap(({ goal }) => goal === null ? [] : [goal])
    for (const { end, goal } of goals) {
      if (goal === null && reached.length > 0) keep(seek(graph, leaving, { node, end }, () => true, reached.includes('rail') ? 'earth' : 'rail'))
    }
  }
  for (const edge of graph.edges) if (own.get(edge.a.node)?.has(edge.a.end) && own.get(edge.b.node)?.has(edge.b.end)) edges.add(edge)
  return { nodes, edges }
}

type Element = GraphNode['elements'][number]
const isLoad = ({ does }: Element) => does === 'load' || does === 'winding'
const isConductor = ({ does }: Element) => does === 'contact' || does === 'joint'

const nameOf = ({ node, end }: EdgeEnd) => `${node}.${end}`

function edgesByEnd({ edges }: PathGraph): ReadonlyMap<string, readonly GraphEdge[]> {
  const leaving = new Map<string, GraphEdge[]>()
  for (const edge of edges) for (const end of [edge.a, edge.b]) leaving.set(nameOf(end), [...leaving.get(nameOf(end)) ?? [], edge])
  return leaving
}

/** Breadth first from an end, out of its own part; null where no goal is reached. */
function seek(graph: PathGraph, leaving: ReadonlyMap<string, readonly GraphEdge[]>, start: EdgeEnd, passes: (element: Element) => boolean, wanted?: Goal): Found | null {
  const seen = new Set([nameOf(start)])
  const queue: Step[] = [{ at: start, by: null, before: null }]
  for (const step of queue) {
    const { kind } = graph.nodes[step.at.node]
    if (step.before && (kind === 'rail' || kind === 'earth')) {
      if (wanted === undefined || kind === wanted) return { goal: kind, last: step }
      continue
    }
    const put = (at: EdgeEnd, by: GraphEdge | null) => {
      if (seen.has(nameOf(at))) return
      seen.add(nameOf(at))
      queue.push({ at, by, before: step })
    }
    for (const edge of leaving.get(nameOf(step.at)) ?? []) if (edge.kind !== 'rail') put(sameEnd(edge.a, step.at) ? edge.b : edge.a, edge)
    if (step.at.node === start.node) continue
    for (const end of passable(graph.nodes[step.at.node], step.at.end, passes)) put({ node: step.at.node, end }, null)
  }
  return null
}

const sameEnd = (a: EdgeEnd, b: EdgeEnd) => a.node === b.node && a.end === b.end

/** The other ends of a node that one is joined to inside. */
function passable({ kind, ends, elements }: GraphNode, end: number, passes: (element: Element) => boolean): number[] {
  const others = [...ends.keys()].filter((other) => other !== end)
  if (kind !== 'piece') return others
  const reached = new Set([ends[end].is])
  const inside = elements.filter((element) => passes(element) && element.does !== 'source')
  for (let before = 0; before < reached.size;) {
    before = reached.size
    for (const { from, to } of inside) if (reached.has(from) !== reached.has(to)) reached.add(from).add(to)
  }
  return others.filter((other) => reached.has(ends[other].is))
}
