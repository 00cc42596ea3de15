import type { PartKind, Wiring } from '../record/index.ts'
import { Circuit } from './circuit.ts'
import { buildNetwork, isPlain, type Network } from './network.ts'
import type { Overlay } from './overlay.ts'
import type { Fault } from './solved.ts'

/** Two bare ends pressed together, ohm; common practice, no source. */
export const TOUCH_OHM = 1e-4

/**
 * The same circuit with faults laid on it, one after the other. Opens, added ohms and joins are changes of low rank that
 * share the analysed pattern; a changed parameter builds the part's laws anew on the same pattern. Ends that are swapped,
 * and a resistance before a filament, which needs a point of its own, give a network that is analysed anew.
 */
export function layFaults(circuit: Circuit, kinds: readonly PartKind[], faults: readonly Fault[]): Circuit {
  if (faults.length === 0) return circuit
  const wiring = faults.reduce((w, fault) => (fault.kind === 'set' ? setParameter(w, fault) : w), circuit.network.wiring)
  const network = wiring === circuit.network.wiring ? circuit.network : buildNetwork(wiring, kinds)
  const draft = new OverlayDraft(network)
  for (const fault of faults) draft.lay(fault)
  const same = draft.network === circuit.network || hasSameShape(draft.network, circuit.network)
  return new Circuit(draft.network, draft.overlay(), same ? circuit : undefined)
}

function hasSameShape(a: Network, b: Network): boolean {
  return a.points.length === b.points.length && a.elements.length === b.elements.length && a.reference === b.reference
    && a.elements.every((element, e) => element.from === b.elements[e].from && element.to === b.elements[e].to && isPlain(element) === isPlain(b.elements[e]))
}

function setParameter(wiring: Wiring, { part, param, value }: Extract<Fault, { kind: 'set' }>): Wiring {
  const found = wiring.parts.get(part)
  if (!found) throw new RangeError(`no part ${part} in this vehicle`)
  const parts = new Map(wiring.parts)
  parts.set(part, { ...found, params: setIn(found.params, param, value) as typeof found.params })
  return { ...wiring, parts }
}

/** A copy of nested data with one value set at a path; what is missing on the way is made. */
export function setIn(data: unknown, [key, ...rest]: readonly string[], value: unknown): object {
  const inner = (data as Record<string, unknown> | undefined)?.[key]
  return { ...(data as object | undefined), [key]: rest.length ? setIn(inner, rest, value) : value }
}

class OverlayDraft {
  private readonly opened = new Set<number>()
  private readonly addedOhm = new Map<number, number>()
  private readonly bridges: { from: number; to: number; ohm: number }[] = []
  private readonly held = new Map<string, string>()

  constructor(public network: Network) {}

  overlay(): Overlay {
    const { opened, addedOhm, bridges, held } = this
    return { opened, addedOhm, bridges, held }
  }

  lay(fault: Fault): void {
    switch (fault.kind) {
      case 'open': for (const e of this.elementsOf(fault.id)) this.opened.add(e); return
      case 'ohms': return this.addOhms(fault.id, fault.ohm)
      case 'join': this.bridges.push({ from: this.point(fault.a), to: this.point(fault.b), ohm: Math.max(fault.ohm ?? TOUCH_OHM, TOUCH_OHM) }); return
      case 'swap': return this.swap(this.point(fault.a), this.point(fault.b))
      case 'hold': this.held.set(heldId(fault), fault.value); return
      case 'set': return
    }
  }

  /** By element, by wire end (`wire.1`), by part (all its elements), or every wire and fixing at a point. */
  private elementsOf(id: string): number[] {
    const { elementOf, pointOf, elements, partOf, parts } = this.network
    const wire = id.replace(/\.[12]$/, '')
    const whole = elementOf.get(id) ?? (this.network.wiring.wires.has(wire) ? elementOf.get(wire) : undefined)
    if (whole !== undefined) return [whole]
    const part = partOf.get(id)
    if (part !== undefined) return [...parts[part].elements.values()]
    const point = pointOf.get(id)
    if (point === undefined) throw new RangeError(`no element ${id} in this vehicle`)
    return elements.flatMap((element, e) => (element.part < 0 && (element.from === point || element.to === point) ? [e] : []))
  }

  private addOhms(id: string, ohm: number): void {
    for (const e of this.elementsOf(id)) {
      const { law } = this.network.elements[e]
      if (typeof law === 'function' || law.kind !== 'filament') this.addedOhm.set(e, (this.addedOhm.get(e) ?? 0) + ohm)
      else this.network = withSeriesOhm(this.network, e, ohm)
    }
  }

  private point(name: string): number {
    const point = this.network.pointOf.get(name)
    if (point === undefined) throw new RangeError(`no point ${name} in this vehicle`)
    return point
  }

  /** Every wire and fixing at one point goes to the other: the network has other ends there, and is analysed anew. */
  private swap(a: number, b: number): void {
    const other = (point: number) => (point === a ? b : point === b ? a : point)
    const elements = this.network.elements.map((element) =>
      (element.part < 0 ? { ...element, from: other(element.from), to: other(element.to) } : element))
    this.network = { ...this.network, elements }
  }
}

/** A state's id, or a part's where its phase is held. */
function heldId({ part, state }: Extract<Fault, { kind: 'hold' }>): string {
  return state === '' ? part : `${part}.${state}`
}

/** The network with a resistance between the element's second end and where it was joined. */
function withSeriesOhm(network: Network, e: number, ohm: number): Network {
  const element = network.elements[e]
  const name = `${element.id}:~fault`
  const point = network.points.length
  const elements = [...network.elements]
  elements[e] = { ...element, to: point }
  elements.push({ id: `${element.id}~ohm`, from: point, to: element.to, law: { kind: 'resistor', ohm }, does: 'joint', part: -1 })
  return {
    ...network, elements, points: [...network.points, name],
    pointOf: new Map([...network.pointOf, [name, point]]),
    elementOf: new Map([...network.elementOf, [`${element.id}~ohm`, elements.length - 1]]),
  }
}
