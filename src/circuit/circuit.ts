import type { View } from '../record/index.ts'
import type { Bridge } from './bridge-update.ts'
import type { Condition } from './condition.ts'
import { LawTable, LEAST_OHM } from './law-table.ts'
import { InnerSolver, type InnerResult } from './inner-solve.ts'
import { mergedAmps } from './merged-amps.ts'
import { isPlain, type NetAxis, type Network } from './network.ts'
import type { Overlay } from './overlay.ts'
import { PartNow, PartView, type Ambient } from './part-now.ts'
import { mergePoints, type Topology } from './topology.ts'
import { engineRpm, positionOf } from './positions.ts'
import type { Setting } from './solved.ts'

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
  /** The solver that passes over chains, while the merged elements stay the same. */
  private chained: InnerSolver | null = null
  /** Elements whose law is asked for, by the part they are of. */
  private readonly moving: readonly Moving[]
  private readonly axisOf: ReadonlyMap<string, NetAxis>
  /** Axes that follow the engine wherever they are not set. */
  private readonly following: readonly NetAxis[]
  /** Axes that may not be at rest. */
  private displaced: NetAxis[]
  ambient: Ambient = { engineRpm: 0, pointsOpen: false, battery: 'full' }
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
    const { elements, parts, axes } = network
    this.axisOf = new Map(axes.map((axis) => [axis.id, axis]))
    this.following = axes.filter(({ spec }) => spec.follows)
    this.displaced = [...axes]
    this.bridgeLaws = elements.length
    this.laws = new LawTable(elements.length + overlay.bridges.length)
    this.isMerged = new Uint8Array(elements.length + overlay.bridges.length)
    this.solvers = sharedWith ? sharedWith.solvers : new Map<string, InnerSolver>()
    this.nows = parts.map((_, part) => new PartNow(this, part))
    this.views = this.nows.map((now, part) => new PartView(this, part, now))
    this.moving = parts.flatMap(({ elements: own }, part) => {
      const asked = [...own.values()].filter((e) => typeof elements[e].law === 'function')
      return asked.length > 0 ? [{ now: this.nows[part], elements: asked }] : []
    })
    elements.forEach(({ law }, e) => { if (typeof law !== 'function') this.setLaw(e, law) })
    overlay.bridges.forEach(({ ohm }, i) => this.laws.set(this.bridgeLaws + i, { kind: 'resistor', ohm }))
  }

  private setLaw(e: number, law: Parameters<LawTable['set']>[1]): void {
    const added = this.overlay.addedOhm.get(e) ?? 0
    const actual = this.overlay.opened.has(e) ? { kind: 'open' as const } : law
    this.laws.set(e, actual, added)
    const merged = actual.kind === 'resistor' && actual.ohm + added < LEAST_OHM ? 1 : 0
    if (merged !== this.isMerged[e]) this.mergedKey = this.chained = null
    this.isMerged[e] = merged
  }

  /** Solve with the states, phases and machine excitations of the condition as they are. */
  solveFixed(setting: Setting, condition: Condition): void {
    this.take(setting, condition)
    this.excited = []
    for (const { now, elements } of this.moving) {
      if (now.isStill && !now.isStale) continue
      now.isStale = false
      for (const e of elements) if (this.moveLaw(e)) this.excited.push(e)
    }
    this.run(false)
  }

  /** Let the laws read this setting and condition, without solving yet. */
  take(setting: Setting, condition: Condition): void {
    if (setting !== this.setting) this.readSetting(setting)
    this.setting = setting
    this.condition = condition
  }

  /** Tells the parts what has changed since the setting before: most axes rest in most settings. */
  private readSetting(setting: Setting): void {
    const { network: { wiring }, ambient } = this
    const rpm = engineRpm(setting.engine, wiring.engine), pointsOpen = setting.engine === 'stopped-open'
    if (rpm !== ambient.engineRpm || pointsOpen !== ambient.pointsOpen || setting.battery !== ambient.battery) {
      this.ambient = { engineRpm: rpm, pointsOpen, battery: setting.battery }
      for (const now of this.nows) now.isStale = true
    }
    const move = ({ id, part, spec }: NetAxis) => { this.nows[part].moveAxis(spec.id, positionOf(id, spec, setting, wiring.engine)) }
    for (const axis of this.displaced) move(axis)
    this.displaced = [...this.following]
    for (const id in setting.controls) {
      const axis = this.axisOf.get(id)
      if (axis) this.displaced.push(axis)
    }
    for (const axis of this.displaced) move(axis)
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
    let solver = this.chained ??= this.solverFor('chains')
    this.bridged = this.nodeBridges(solver.topology)
    if (this.bridged.some(({ from, to }) => !hasRow(from, solver) || !hasRow(to, solver))) {
      solver = this.solverFor('points')
      this.bridged = this.nodeBridges(solver.topology)
    }
    const start = solver === lastSolver ? last?.volts : undefined
    let result = solver.solve(this.laws, this.bridged, start, isNear)
    if (!result) {
      solver = this.solverFor('bridged')
      this.bridged = []
      result = solver.solve(this.laws)
    }
    this.solver = solver
    this.result = result
  }

  /** Forget the last solution and setting, so that the next solve starts from nothing. */
  forget(): void {
    this.setting = null
    this.result = null
    this.solver = null
  }

  /** The analysed pattern: with chains passed over, with every point, or with every point and the bridges as elements. */
  private solverFor(pattern: 'chains' | 'points' | 'bridged'): InnerSolver {
    const { network, overlay, isMerged } = this
    this.mergedKey ??= keyOfMerged(isMerged)
    const isBridged = pattern === 'bridged'
    const key = `${pattern} ${this.mergedKey}${isBridged ? overlay.bridges.map((b) => `;${b.from}-${b.to}`).join('') : ''}`
    let solver = this.solvers.get(key)
    if (!solver) {
      const ends = isBridged ? [...network.elements, ...overlay.bridges] : network.elements
      const merged = Uint8Array.from(isBridged ? isMerged : isMerged.subarray(0, this.bridgeLaws))
      const mayChain = (e: number) => pattern === 'chains' && isPlain(network.elements[e])
      solver = new InnerSolver(mergePoints(network.points.length, network.reference, ends, merged, mayChain), ends.length)
      if (this.solvers.size > MOST_PATTERNS) this.solvers.clear()
      this.solvers.set(key, solver)
    }
    return solver
  }

  private nodeBridges({ nodeOf }: Topology): Bridge[] {
    return this.overlay.bridges.length === 0 ? NO_BRIDGES : this.overlay.bridges.map(({ from, to, ohm }) => ({ from: nodeOf[from], to: nodeOf[to], ohm }))
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
    return this.inner.volts[this.topology.nodeOf[point]]
  }

  isFloating(point: number): boolean {
    return this.inner.floating[this.topology.nodeOf[point]] === 1
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

  /**
   * Ohms between two points with the battery's EMF gone and every filament cold, and the share of an ohmmeter's current that
   * goes through an element; null where nothing joins the two.
   */
  restTest(a: number, b: number): { readonly ohm: number; share(element: number): number } | null {
    const solver = this.solverFor(this.overlay.bridges.length > 0 ? 'bridged' : 'points')
    const { nodeOf } = solver.topology
    const volts = solver.restVolts(this.laws, nodeOf[a], nodeOf[b])
    if (!volts) return null
    const between = (from: number, to: number) => volts[nodeOf[from]] - volts[nodeOf[to]]
    return {
      ohm: between(a, b),
      share: (e) => {
        const { from, to } = this.ends(e)
        return this.isMerged[e] ? 0 : Math.abs(between(from, to)) * this.laws.restSlope(e)
      },
    }
  }

  /** The condition and setting under which the laws now read. */
  get present(): { setting: Setting; condition: Condition } {
    if (!this.setting || !this.condition) throw new RangeError('this circuit has no setting yet')
    return { setting: this.setting, condition: this.condition }
  }
}

const MOST_PATTERNS = 200
const NO_BRIDGES: Bridge[] = []

interface Moving { readonly now: PartNow; readonly elements: readonly number[] }

function hasRow(node: number, { topology: { rows } }: InnerSolver): boolean {
  return node <= rows
}

function keyOfMerged(merged: Uint8Array): string {
  const ones: number[] = []
  merged.forEach((one, e) => { if (one) ones.push(e) })
  return ones.join(',')
}
