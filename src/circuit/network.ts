import { innerId } from '../record/index.ts'
import type {
  Assumption, AxisSpec, Default, DialSpec, ElementSpec, LampSpec, Law, MachineSpec, Now, PartKind, PartModel, PhaseSpec, RegulatorSpec,
  StateSpec, Wiring, WiringPart,
} from '../record/index.ts'
import { joinElements } from './join-elements.ts'

/** A two-ended element of the network; ends are indexes of points. */
export interface NetElement {
  readonly id: string
  readonly from: number
  readonly to: number
  readonly law: Law | ((now: Now) => Law)
  readonly does: ElementSpec['does'] | 'wire'
  /** Index of the part in `parts`, −1 for wires, fixings and matings. */
  readonly part: number
  readonly spec?: ElementSpec
}

/** Its law is a resistance or open, whatever happens. */
export function isPlain({ law, does }: NetElement): boolean {
  if (typeof law === 'function') return does === 'contact' || does === 'joint'
  return law.kind === 'resistor' || law.kind === 'open'
}

export interface NetState { readonly id: string; readonly part: number; readonly spec: StateSpec }
export interface NetPhase { readonly part: number; readonly spec: PhaseSpec }
export interface NetMachine { readonly part: number; readonly spec: MachineSpec }
export interface NetRegulator { readonly part: number; readonly spec: RegulatorSpec }
export interface NetLamp { readonly id: string; readonly element: number; readonly beside: readonly number[]; readonly spec: LampSpec }
export interface NetDial { readonly id: string; readonly part: number; readonly spec: DialSpec }
export interface NetAxis { readonly id: string; readonly part: number; readonly spec: AxisSpec }

export interface NetPart {
  readonly id: string
  readonly part: WiringPart
  readonly model: PartModel
  readonly elements: ReadonlyMap<string, number>
  /** Point of each of the kind's ends. */
  readonly ends: ReadonlyMap<string, number>
  /** Points of a battery's posts. */
  readonly posts?: { readonly plus: number; readonly minus: number }
}

/** The wiring as points and elements, before any setting. */
export interface Network {
  readonly wiring: Wiring
  readonly points: readonly string[]
  readonly pointOf: ReadonlyMap<string, number>
  /** The point that reads 0 V. */
  readonly reference: number
  readonly elements: readonly NetElement[]
  readonly elementOf: ReadonlyMap<string, number>
  readonly parts: readonly NetPart[]
  readonly partOf: ReadonlyMap<string, number>
  readonly states: readonly NetState[]
  readonly phases: readonly NetPhase[]
  readonly machines: readonly NetMachine[]
  readonly regulators: readonly NetRegulator[]
  readonly lamps: readonly NetLamp[]
  readonly dials: readonly NetDial[]
  readonly axes: readonly NetAxis[]
  /** Whether anything in it turns with the engine or follows it. */
  readonly hasEngine: boolean
  readonly assumed: readonly Assumption[]
}

/** The network of a wiring: every wire with its joints, every fixing and mating, and the elements of every part. */
export function buildNetwork(wiring: Wiring, kinds: readonly PartKind[]): Network {
  const draft = new NetworkDraft(wiring)
  const kindOf = new Map(kinds.map((kind) => [kind.kind, kind]))
  for (const metal of wiring.metals.keys()) draft.point(metal)
  for (const splice of wiring.splices.keys()) draft.point(splice)
  for (const part of wiring.parts.values()) {
    const kind = kindOf.get(part.kind)
    if (!kind) throw new RangeError(`no part kind ${part.kind} for part ${part.id}`)
    draft.addPart(part, kind)
  }
  for (const { id, from, to, ohm } of joinElements(wiring, draft.assumed)) {
    draft.addElement({ id, from: draft.point(from), to: draft.point(to), law: { kind: 'resistor', ohm }, does: 'wire', part: -1 })
  }
  return draft.finish()
}

class NetworkDraft {
  readonly assumed: Assumption[] = []
  private readonly points: string[] = []
  private readonly pointOf = new Map<string, number>()
  private readonly elements: NetElement[] = []
  private readonly elementOf = new Map<string, number>()
  private readonly parts: NetPart[] = []

  constructor(private readonly wiring: Wiring) {
    this.assumed.push(...wiring.assumed)
  }

  point(name: string): number {
    const known = this.pointOf.get(name)
    if (known !== undefined) return known
    this.pointOf.set(name, this.points.length)
    return this.points.push(name) - 1
  }

  addElement(element: NetElement): number {
    this.elementOf.set(element.id, this.elements.length)
    return this.elements.push(element) - 1
  }

  addPart(part: WiringPart, kind: PartKind): void {
    const model = kind.build(part, this.contextFor(part))
    const ends = new Map<string, number>()
    for (const terminal of part.terminals.values()) ends.set(terminal.is, this.point(`${part.id}:${terminal.id}`))
    const inner = (end: string) => {
      if (!ends.has(end)) ends.set(end, this.point(`${part.id}:${end}`))
      return ends.get(end) as number
    }
    const index = this.parts.length
    const elements = new Map<string, number>()
    for (const spec of model.elements) {
      elements.set(spec.id, this.addElement({
        id: innerId(part.id, spec.id), from: inner(spec.from), to: inner(spec.to), law: spec.law, does: spec.does, part: index, spec,
      }))
    }
    const posts = kind.posts && { plus: inner(kind.posts.plus), minus: inner(kind.posts.minus) }
    this.parts.push({ id: part.id, part, model, elements, ends, ...posts && { posts } })
  }

  private contextFor(part: WiringPart) {
    const { wiring, assumed } = this
    const stated = (path: readonly (string | number)[]) => path.reduce<unknown>((at, key) => (at as Record<string, unknown> | undefined)?.[key], part.params)
    return {
      systemV: wiring.systemV, earth: wiring.earth, engine: wiring.engine, assume: wiring.assume,
      number(path: readonly (string | number)[], otherwise: Default | (() => Default)): number {
        const value = stated(path)
        if (typeof value === 'number') return value
        const fallback = typeof otherwise === 'function' ? otherwise() : otherwise
        assumed.push({
          path: ['parts', part.id, 'params', ...path].join('.'), value: fallback.value,
          why: value === 'unknown' ? `stated as unknown: ${fallback.why}` : fallback.why, source: fallback.source,
        })
        return fallback.value
      },
      choice<T extends string | boolean>(key: string | readonly string[], usual: T, why: string): T {
        const path = typeof key === 'string' ? [key] : key
        const value = stated(path)
        if (value !== undefined && value !== 'unknown') return value as T
        assumed.push({
          path: ['parts', part.id, 'params', ...path].join('.'), value: usual, why: value === 'unknown' ? `stated as unknown: ${why}` : why, source: 'common practice, no source',
        })
        return usual
      },
      note(assumption: Assumption) { assumed.push({ ...assumption, path: `parts.${part.id}.${assumption.path}` }) },
    }
  }

  finish(): Network {
    const { wiring, points, pointOf, elements, elementOf, parts, assumed } = this
    const of = <S, T>(pick: (model: PartModel) => readonly S[] | undefined, make: (spec: S, part: number) => T): T[] =>
      parts.flatMap(({ model }, part) => (pick(model) ?? []).map((spec) => make(spec, part)))
    const hasEngine = parts.some(({ model }) => model.turns === true || model.axes?.some(({ follows }) => follows) || model.elements.some(({ sparks }) => sparks))
    return {
      wiring, points, pointOf, elements, elementOf, parts, hasEngine,
      assumed: hasEngine ? assumed : assumed.filter(({ path }) => !path.startsWith('engine.')),
      reference: findReference(wiring, pointOf, elements, parts),
      partOf: new Map(parts.map(({ id }, i) => [id, i])),
      states: of((m) => m.states, (spec, part) => ({ id: `${parts[part].id}.${spec.id}`, part, spec })),
      phases: of((m) => (m.phase ? [m.phase] : []), (spec, part) => ({ spec, part })),
      machines: of((m) => m.machines, (spec, part) => ({ spec, part })),
      regulators: of((m) => m.regulators, (spec, part) => ({ spec, part })),
      lamps: of((m) => m.lamps, (spec, part) => ({
        id: innerId(parts[part].id, spec.id), element: parts[part].elements.get(spec.element) as number,
        beside: (spec.beside ?? []).map((one) => parts[part].elements.get(one) as number), spec,
      })),
      dials: of((m) => m.dials, (spec, part) => ({ id: spec.id ? `${parts[part].id}.${spec.id}` : parts[part].id, part, spec })),
      axes: of((m) => m.axes, (spec, part) => ({ id: `${parts[part].id}.${spec.id}`, part, spec })),
    }
  }
}

/** The points of the first battery's posts, by which of them is earthed; with neither, the negative one counts as that. */
export interface Posts { readonly live: number; readonly earthed: number }

export function batteryPosts({ parts, wiring }: Pick<Network, 'parts' | 'wiring'>): Posts | null {
  const posts = parts.find((part) => part.posts)?.posts
  if (!posts) return null
  const { plus, minus } = posts
  return wiring.earth === 'positive' ? { live: minus, earthed: plus } : { live: plus, earthed: minus }
}

/**
 * The metal that carries the battery's earth lead: the metal nearest to the earthed post by number of
 * elements. Without one (insulated return) the post itself; without a battery the first metal, else the first point.
 */
function findReference(wiring: Wiring, pointOf: ReadonlyMap<string, number>, elements: readonly NetElement[], parts: readonly NetPart[]): number {
  const posts = batteryPosts({ parts, wiring })
  const [firstMetal] = wiring.metals.keys()
  if (!posts) return firstMetal === undefined ? 0 : pointOf.get(firstMetal) as number
  const post = posts.earthed
  if (wiring.earth === 'none') return post
  const metals = new Set([...wiring.metals.keys()].map((id) => pointOf.get(id) as number))
  return nearest(post, metals, elements) ?? post
}

function nearest(start: number, goals: ReadonlySet<number>, elements: readonly NetElement[]): number | null {
  const outside = elements.filter((element) => element.spec?.does !== 'source' && element.spec?.does !== 'load')
  const seen = new Set([start])
  let rim = [start]
  while (rim.length) {
    for (const point of rim) if (goals.has(point)) return point
    const next: number[] = []
    for (const { from, to } of outside) {
      for (const [a, b] of [[from, to], [to, from]]) {
        if (rim.includes(a) && !seen.has(b)) { seen.add(b); next.push(b) }
      }
    }
    rim = next
  }
  return null
}
