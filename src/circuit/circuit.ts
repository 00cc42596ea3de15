import type { Now, View } from '../record/index.ts'
import { LawTable, LEAST_OHM } from './law-table.ts'
import { InnerSolver, type Bridge, type InnerResult } from './inner-solve.ts'
import { mergedAmps } from './merged-amps.ts'
import type { Network } from './network.ts'
import type { Overlay } from './overlay.ts'
import { mergePoints, type Topology } from './topology.ts'
import { engineRpm, positionsOf } from './positions.ts'
import type { Setting } from './solved.ts'

/** Everything inside the parts that moves or is found around the inner solve. Arrays are in the network's order. */
export interface Condition {
  readonly states: string[]
  /** A number kept by each state, for example the EMF of a coasting motor. */
  readonly kept: Float64Array
  readonly phases: string[]
  /** EMF of each machine, V. */
  readonly emf: Float64Array
  /** Mean resistance of each regulating contact, ohm. */
  readonly regulatorOhm: Float64Array
}

export function copyCondition(c: Condition): Condition {
  return {
    states: [...c.states], kept: c.kept.slice(), phases: [...c.phases],
    emf: c.emf.slice(), regulatorOhm: c.regulatorOhm.slice(),
  }
}

/**
 * A network held open for solving: analysed patterns, numeric laws and the last solution. It is
 * workspace; every answer depends on the network, the setting and the condition alone.
 */
export class Circuit {
  readonly laws: LawTable
  readonly views: readonly View[]
  private readonly nows: readonly PartNow[]
  private readonly solvers: Map<string, InnerSolver>
  private readonly isMerged: Uint8Array
  /** The merged elements as text; null once one has come or gone. */
  private mergedKey: string | null = null
  private readonly moving: readonly number[]
  private readonly bridgeLaws: number
  /** Moving elements whose law reads a machine's EMF or a regulating contact. */
  private excited: number[] = []
  private setting: Setting | null = null
  private condition: Condition | null = null
  private solver: InnerSolver | null = null
  private result: InnerResult | null = null
  private merged: Map<number, number> | null = null
  private bridged: readonly Bridge[] = []

  /** `sharedWith` lends its analysed patterns: the other network must have the same points and elements. */
  constructor(readonly network: Network, readonly overlay: Overlay, sharedWith?: Circuit) {
    const { elements, parts } = network
    this.bridgeLaws = elements.length
    this.laws = new LawTable(elements.length + overlay.bridges.length)
    this.isMerged = new Uint8Array(elements.length + overlay.bridges.length)
    this.solvers = sharedWith ? sharedWith.solvers : new Map<string, InnerSolver>()
    this.nows = parts.map((_, part) => new PartNow(this, part))
    this.views = this.nows.map((now, part) => new PartView(this, part, now))
    this.moving = elements.flatMap(({ law }, e) => (typeof law === 'function' ? [e] : []))
    elements.forEach(({ law }, e) => { if (typeof law !== 'function') this.setLaw(e, law) })
    overlay.bridges.forEach(({ ohm }, i) => this.laws.set(this.bridgeLaws + i, { kind: 'resistor', ohm }))
  }

  private setLaw(e: number, law: Parameters<LawTable['set']>[1]): void {
    const added = this.overlay.addedOhm.get(e) ?? 0
    const actual = this.overlay.opened.has(e) ? { kind: 'open' as const } : law
    this.laws.set(e, actual, added)
    const merged = actual.kind === 'resistor' && actual.ohm + added < LEAST_OHM ? 1 : 0
    if (merged !== this.isMerged[e]) this.mergedKey = null
    this.isMerged[e] = merged
  }

  /** Solve with the states, phases and machine excitations of the condition as they are. */
  solveFixed(setting: Setting, condition: Condition): void {
    this.take(setting, condition)
    this.excited = this.moving.filter((e) => this.moveLaw(e))
    this.run(false)
  }

  /** Let the laws read this setting and condition, without solving yet. */
  take(setting: Setting, condition: Condition): void {
    const rpm = engineRpm(setting.engine, this.network.wiring.engine)
    if (setting !== this.setting) for (const now of this.nows) now.read(setting, rpm)
    this.setting = setting
    this.condition = condition
  }

  /** The same after nothing but EMFs and regulating contacts of the present condition have changed. */
  solveExcitation(): void {
    for (const e of this.excited) this.moveLaw(e)
    this.run(true)
  }

  /** Read a moving law anew; answers whether it asked for a machine's figures. */
  private moveLaw(e: number): boolean {
    const { law, part } = this.network.elements[e]
    if (typeof law !== 'function') return false
    const now = this.nows[part]
    now.askedMachine = false
    this.setLaw(e, law(now))
    return now.askedMachine
  }

  private run(isNear: boolean): void {
    const last = this.result, lastSolver = this.solver
    this.merged = null
    let solver = this.solverFor(false)
    this.bridged = this.nodeBridges(solver.topology)
    const start = solver === lastSolver ? last?.volts : undefined
    let result = solver.solve(this.laws, this.bridged, start, isNear)
    if (!result) {
      solver = this.solverFor(true)
      this.bridged = []
      result = solver.solve(this.laws)
    }
    this.solver = solver
    this.result = result
  }

  /** Forget the last solution, so that the next solve starts from nothing. */
  forget(): void {
    this.result = null
    this.solver = null
  }

  private solverFor(withBridges: boolean): InnerSolver {
    const { network, overlay, isMerged } = this
    this.mergedKey ??= keyOfMerged(isMerged)
    const merged = withBridges ? isMerged : isMerged.subarray(0, this.bridgeLaws)
    const key = this.mergedKey + (withBridges ? overlay.bridges.map((b) => `;${b.from}-${b.to}`).join('') : '')
    let solver = this.solvers.get(key)
    if (!solver) {
      const ends = withBridges ? [...network.elements, ...overlay.bridges] : network.elements
      solver = new InnerSolver(mergePoints(network.points.length, network.reference, ends, Uint8Array.from(merged)))
      if (this.solvers.size > MOST_PATTERNS) this.solvers.clear()
      this.solvers.set(key, solver)
    }
    return solver
  }

  private nodeBridges({ nodeOf }: Topology): Bridge[] {
    return this.overlay.bridges.map(({ from, to, ohm }) => ({ from: nodeOf[from], to: nodeOf[to], ohm }))
      .filter(({ from, to }) => from !== to)
  }

  get topology(): Topology { return this.solved.solver.topology }
  get inner(): InnerResult { return this.solved.result }

  private get solved(): { solver: InnerSolver; result: InnerResult } {
    if (!this.solver || !this.result) throw new RangeError('this circuit has not been solved yet')
    return { solver: this.solver, result: this.result }
  }

  /** Volts of a point against the reference, whether it floats or not. */
  pointVolts(point: number): number {
    const node = this.topology.nodeOf[point]
    return node < 0 ? 0 : this.inner.volts[node]
  }

  isFloating(point: number): boolean {
    const node = this.topology.nodeOf[point]
    return node >= 0 && this.inner.floating[node] === 1
  }

  /** Amps from the element's first end to its second; NaN where a loop of zeros leaves it undetermined. */
  elementAmps(e: number): number {
    if (this.isMerged[e]) return (this.merged ??= this.findMerged()).get(e) ?? NaN
    const { from, to } = this.ends(e)
    this.laws.evaluate(e, this.pointVolts(from) - this.pointVolts(to))
    return this.laws.current
  }

  private ends(e: number) {
    return e < this.bridgeLaws ? this.network.elements[e] : this.overlay.bridges[e - this.bridgeLaws]
  }

  private findMerged(): Map<number, number> {
    const { network: { points }, isMerged } = this
    const out = new Float64Array(points.length)
    const edges: { element: number; from: number; to: number }[] = []
    const flow = ({ from, to }: { from: number; to: number }, amps: number) => { out[from] += amps; out[to] -= amps }
    for (let e = 0; e < isMerged.length; e++) {
      const ends = this.ends(e)
      if (isMerged[e]) edges.push({ element: e, from: ends.from, to: ends.to })
      else flow(ends, this.elementAmps(e))
    }
    return mergedAmps(points.length, edges, out)
  }

  /** Ohms between two points with the battery's EMF gone and every filament cold. */
  restOhm(a: number, b: number): number {
    const solver = this.solverFor(this.overlay.bridges.length > 0)
    return solver.restOhm(this.laws, solver.topology.nodeOf[a], solver.topology.nodeOf[b])
  }

  /** The condition and setting under which the laws now read. */
  get present(): { setting: Setting; condition: Condition } {
    if (!this.setting || !this.condition) throw new RangeError('this circuit has no setting yet')
    return { setting: this.setting, condition: this.condition }
  }
}

const MOST_PATTERNS = 200

function keyOfMerged(merged: Uint8Array): string {
  const ones: number[] = []
  merged.forEach((one, e) => { if (one) ones.push(e) })
  return ones.join(',')
}

/** What the laws of one part read. */
class PartNow implements Now {
  engineRpm = 0
  pointsOpen = false
  battery: 'full' | 'low' = 'full'
  askedMachine = false
  private positions: ReadonlyMap<string, string | number> = new Map()
  private readonly stateOf: ReadonlyMap<string, number>
  private readonly machineOf: ReadonlyMap<string, number>
  private readonly regulatorOf: ReadonlyMap<string, number>
  private readonly phaseAt: number

  constructor(private readonly circuit: Circuit, private readonly part: number) {
    const { states, machines, regulators, phases } = circuit.network
    const index = (items: readonly { part: number; spec: { id: string } }[]) =>
      new Map(items.flatMap((item, i) => (item.part === part ? [[item.spec.id, i] as const] : [])))
    this.stateOf = index(states)
    this.machineOf = index(machines)
    this.regulatorOf = index(regulators)
    this.phaseAt = phases.findIndex((phase) => phase.part === part)
  }

  read(setting: Setting, rpm: number): void {
    const { network } = this.circuit
    const part = network.parts[this.part]
    if (part.model.axes) this.positions = positionsOf(part, setting, network.wiring.engine)
    this.engineRpm = rpm
    this.pointsOpen = setting.engine === 'stopped-open'
    this.battery = setting.battery
  }

  private get condition(): Condition { return this.circuit.present.condition }
  get phase(): string { return this.condition.phases[this.phaseAt] ?? '' }
  state(id: string): string { return this.condition.states[mustFind(this.stateOf, id)] }
  kept(id: string): number { return this.condition.kept[mustFind(this.stateOf, id)] }
  emf(id: string): number {
    this.askedMachine = true
    return this.condition.emf[mustFind(this.machineOf, id)]
  }

  regulatorOhm(id: string): number {
    this.askedMachine = true
    return this.condition.regulatorOhm[mustFind(this.regulatorOf, id)]
  }

  position(axis: string): string | number {
    const position = this.positions.get(axis)
    if (position === undefined) throw new RangeError(`no axis ${axis} in part ${this.circuit.network.parts[this.part].id}`)
    return position
  }
}

function mustFind(map: ReadonlyMap<string, number>, id: string): number {
  const index = map.get(id)
  if (index === undefined) throw new RangeError(`the part has no inner item ${id}`)
  return index
}

/** What the rules of one part read of the last solution. */
class PartView implements View {
  constructor(private readonly circuit: Circuit, private readonly part: number, readonly now: Now) {}

  amps(element: string): number {
    return this.circuit.elementAmps(mustFind(this.circuit.network.parts[this.part].elements, element))
  }

  volts(from: string, to: string): number {
    const { ends } = this.circuit.network.parts[this.part]
    return this.circuit.pointVolts(mustFind(ends, from)) - this.circuit.pointVolts(mustFind(ends, to))
  }
}
