import type { Condition, SolvedSetting } from '../../src/circuit/index.ts'
import type { Wiring, WiringPart } from '../../src/record/index.ts'
import { wireOhm } from './wire-ohm.ts'

/** What the product found around the inner problem: it is given to the simulator as it stands. */
export interface Given {
  readonly solved: SolvedSetting
  readonly condition: Condition
  /** Names of the machines and regulating contacts, in the condition's order, as `part.id`. */
  readonly machines: readonly string[]
  readonly regulators: readonly string[]
  readonly engineRpm: number
}

/** The simulator's input for one solved setting, with the names that it uses for the product's points, wires and elements. */
export interface Netlist {
  readonly text: string
  /** Simulator node by point; points in a loop of conductors without resistance share one. */
  readonly nodeOf: ReadonlyMap<string, string>
  /** Simulator device by wire, `part` or `part.element`, each in the product's direction. */
  readonly deviceOf: ReadonlyMap<string, string>
  /** Wires in a loop of conductors without resistance: nobody can tell their amps. */
  readonly loops: ReadonlySet<string>
  /** Points without a way to the reference, by a search of its own. */
  readonly floating: ReadonlySet<string>
}

/** Twelve digits: what comes from a logarithm may differ in the last ones from one machine to another. */
const digits = (value: number) => String(Number(value.toPrecision(12)))

/** Below this a resistance joins its ends to one node. */
const NEARLY_ZERO = 1e-6
const MEGA = 1e9
/** The simulator's thermal voltage at its 27 °C, V. */
const SIMULATOR_VT = 300.15 * 8.617333262e-5

/**
 * Writes a network as the simulator reads it: nodes and two-ended elements, one a line. Numbers that the record does not state
 * are taken from what the product says it assumed; every law is written out here anew, from the design's words.
 */
export function writeNetlist(wiring: Wiring, given: Given): Netlist {
  const sheet = new Sheet(wiring, given)
  sheet.addZeros()
  for (const part of wiring.parts.values()) sheet.addPart(part)
  for (const wire of wiring.wires.values()) sheet.addWire(wire.id)
  for (const { id } of [...wiring.fixings.values(), ...wiring.matings.values()]) sheet.addJoin(id)
  return sheet.finish()
}

class Sheet {
  private readonly lines: string[] = []
  private named = 0
  private readonly pairs: [string, string][] = []
  private readonly nodes = new Map<string, string>()
  private readonly assumed: ReadonlyMap<string, unknown>
  private readonly devices = new Map<string, string>()
  private readonly loops = new Set<string>()
  private part!: WiringPart

  constructor(private readonly wiring: Wiring, private readonly given: Given) {
    this.assumed = new Map(given.solved.assumed.map(({ path, value }) => [path, value]))
  }

  finish(): Netlist {
    const reference = referenceOf(this.wiring, this.nodes)
    const floating = this.tieIslands(reference)
    const text = ['loomwright second opinion', ...this.lines, `Vref ${this.node(reference)} 0 0`,
      '.options reltol=1e-8 abstol=1e-10 vntol=1e-10 gmin=1e-15 itl1=2000', '.end'].join('\n')
    return { text, nodeOf: this.nodes, deviceOf: this.devices, loops: this.loops, floating }
  }

  /** One node of each island that nothing joins to the reference is tied to it: the simulator needs a way from everywhere. */
  private tieIslands(reference: string): Set<string> {
    const reached = this.spread(this.node(reference), new Set())
    const floating = new Set([...this.nodes].filter(([, node]) => !reached.has(node)).map(([point]) => point))
    for (const node of new Set(this.nodes.values())) {
      if (reached.has(node)) continue
      this.spread(node, reached)
      this.lines.push(`Rtie${this.lines.length} ${node} 0 1k`)
    }
    return floating
  }

  /** All nodes that hang together with one, added to those already reached. */
  private spread(from: string, reached: Set<string>): Set<string> {
    reached.add(from)
    for (let grew = true; grew;) {
      grew = false
      for (const [a, b] of this.pairs) {
        if (reached.has(a) === reached.has(b)) continue
        reached.add(a).add(b)
        grew = true
      }
    }
    return reached
  }

  /** Conductors without resistance: a source of 0 V tells the amps, but in a loop of them nothing can, so there the points share a node. */
  addZeros(): void {
    const wires = [...this.wiring.wires.keys()].map((id) => ({ id, ...this.wireFigures(id) }))
    const others = [...this.wiring.fixings.values(), ...this.wiring.matings.values()].map(({ id, joins: [from, to] }) => ({ id: '', from, to, ohm: this.joinOhm(id) }))
    const zeros = [...wires, ...others, ...this.straps()].filter(({ ohm }) => ohm < NEARLY_ZERO)
    const inLoop = zeros.filter((zero) => isJoined(zero.from, zero.to, zeros.filter((one) => one !== zero)))
    for (const { id, from, to } of inLoop) {
      this.loops.add(id)
      this.join(from, to)
    }
    for (const zero of zeros) if (!inLoop.includes(zero)) this.line('V', zero.from, zero.to, '0', zero.id)
  }

  /** Inside a control box without a current winding D is joined to the armature's rail. */
  private straps(): { id: string; from: string; to: string; ohm: number }[] {
    return [...this.wiring.parts.values()].filter(({ kind, params }) => kind === 'control-box' && params.limitA === undefined && params.current === undefined).map((part) => {
      this.part = part
      return { id: `${part.id}.strap`, from: this.point('D'), to: this.point('~a'), ohm: 0 }
    })
  }

  private join(a: string, b: string): void {
    const first = this.node(a), second = this.node(b)
    for (const [point, node] of this.nodes) if (node === second) this.nodes.set(point, first)
  }

  node(point: string): string {
    const known = this.nodes.get(point)
    if (known) return known
    const name = `n${++this.named}`
    this.nodes.set(point, name)
    return name
  }

  // --- numbers ---

  /** A number of the part's parameters, or what the product assumed for it. */
  private figure(...path: string[]): number {
    const stated = path.reduce<unknown>((at, key) => (at as Record<string, unknown> | undefined)?.[key], this.part.params)
    const value = typeof stated === 'number' ? stated : this.assumed.get(['parts', this.part.id, 'params', ...path].join('.'))
    if (typeof value !== 'number') throw new Error(`no figure ${path.join('.')} for part ${this.part.id}`)
    return value
  }

  private maybe(...path: string[]): number | undefined {
    try { return this.figure(...path) } catch { return undefined }
  }

  /** A fixing or a mating: as stated, or as assumed. */
  joinOhm(id: string): number {
    const stated = this.wiring.fixings.get(id)?.ohm ?? this.wiring.matings.get(id)?.ohm
    const value = typeof stated === 'number' ? stated : this.assumed.get(`fixings.${id}.ohm`) ?? this.assumed.get(`connectors.${id}.ohm`)
    return Number(value)
  }

  // --- elements ---

  /** One line of the input. `name` is the product's name of what it stands for: a wire, a fixing, `part` or `part.element`. */
  private line(kind: string, a: string, b: string, rest: string, name: string): void {
    const device = `${kind}${this.lines.length + 1}`
    this.lines.push(`${device} ${this.node(a)} ${this.node(b)} ${rest}`)
    this.pairs.push([this.node(a), this.node(b)])
    if (name) this.devices.set(name, device.toLowerCase())
  }

  private resistor(a: string, b: string, ohm: number, name: string): void {
    if (this.node(a) !== this.node(b)) this.line('R', a, b, digits(ohm), name)
  }

  /** A resistance between two ends of the part. */
  private ohms(a: string, b: string, ohm: number, element = ''): void {
    this.resistor(this.point(a), this.point(b), ohm, this.called(element))
  }

  private called(element: string): string { return element ? `${this.part.id}.${element}` : this.part.id }

  /** I = I0·u·(u² + e²)^−0.225, u = V/V0, e = c^(−1/0.45). */
  private filament(from: string, to: string, ratedV: number, ratedW: number, cold: number, element: string): void {
    const a = this.point(from), b = this.point(to)
    if (this.node(a) === this.node(b)) return
    const v = `V(${this.node(a)},${this.node(b)})/${ratedV}`
    const e2 = Math.pow(cold, -2 / 0.45)
    this.line('B', a, b, `I=${digits(ratedW / ratedV)}*(${v})*pow((${v})*(${v})+${digits(e2)},-0.225)`, this.called(element))
  }

  /** Conducts from its first end to its second, by the simulator's own junction; a nanosiemens beside it. `forwardV` at `ratedA` over junction and series resistance. */
  private diode(from: string, to: string, forwardV: number, ratedA: number, emission: number, ohm: number, element = ''): void {
    const a = this.point(from), b = this.point(to)
    const nvt = emission * 0.02585
    const is = ratedA / (Math.exp(Math.max(forwardV - ratedA * ohm, nvt) / nvt) - 1)
    if (this.node(a) === this.node(b)) return
    const model = `d${this.lines.length}`
    this.lines.push(`.model ${model} D(IS=${digits(is)} N=${digits(nvt / SIMULATOR_VT)} RS=${digits(Math.max(ohm, 1e-3))})`)
    this.line('D', a, b, model, this.called(element))
    this.resistor(a, b, MEGA, '')
  }

  /** An EMF that was found around the inner problem, behind its resistance. */
  private source(plus: string, minus: string, emf: number, ohm: number, element: string): void {
    const inner = `${this.point(plus)}~emf${this.lines.length}`
    this.line('V', inner, this.point(minus), digits(emf), '')
    this.resistor(this.point(plus), inner, Math.max(ohm, 1e-4), this.called(element))
  }

  private point(end: string): string {
    const terminal = [...this.part.terminals.values()].find(({ is }) => is === end)
    return `${this.part.id}:${terminal?.id ?? end}`
  }

  private state(id: string): string { return this.given.solved.states[`${this.part.id}.${id}`] }

  private wireFigures(id: string): { from: string; to: string; ohm: number } {
    const ends = this.wiring.wires.get(id)?.ends ?? []
    const [from, to] = ends.map(({ at }, i) => at ?? `${id}.${i + 1}`)
    const joints = ends.map(({ at, jointOhm }, i) => (at === null ? 0 : typeof jointOhm === 'number' ? jointOhm : Number(this.assumed.get(`wires.${id}.ends.${i}.jointOhm`))))
    return { from, to, ohm: wireOhm(this.wiring, id) + joints[0] + joints[1] }
  }

  addWire(id: string): void {
    const { from, to, ohm } = this.wireFigures(id)
    if (ohm >= NEARLY_ZERO) this.resistor(from, to, ohm, id)
  }

  addJoin(id: string): void {
    const [from, to] = (this.wiring.fixings.get(id) ?? this.wiring.matings.get(id))!.joins
    // The product does not report what flows through these.
    if (this.joinOhm(id) >= NEARLY_ZERO) this.resistor(from, to, this.joinOhm(id), '')
  }

  addPart(part: WiringPart): void {
    this.part = part
    const write = WRITERS[part.kind]
    if (!write) throw new Error(`the second opinion knows no ${part.kind}`)
    write(this)
  }

  // --- kinds ---

  static readonly battery = (s: Sheet): void => {
    const low = s.given.solved.setting.battery === 'low'
    const percent = s.figure('chargePercent'), cells = s.figure('cells'), tempC = s.figure('tempC')
    const charge = low ? Math.min(25, percent) : percent
    // Published rest volts of six cells by charge (a battery maker's table): 11.89, 12.06, 12.24, 12.45, 12.65 V.
    const rest = (p: number) => {
      const table = [11.89, 12.06, 12.24, 12.45, 12.65]
      const i = Math.min(3, Math.floor(p / 25))
      return (table[i] + (table[i + 1] - table[i]) * (p - 25 * i) / 25) * cells / 6
    }
    const stated = s.part.params.emfV
    const emf = typeof stated === 'number' ? stated - rest(100) + rest(charge) : rest(charge) + cells * 0.0002 * (tempC - 26.7)
    const added = Number(s.part.params.addedOhm ?? 0)
    const ohm = Math.max(1e-4, s.figure('ohm') * (low ? 3 : 1) * (1 + 0.01 * Math.max(0, 20 - tempC))) + added
    const counter = Math.max(emf, cells * s.figure('counterVPerCell'))
    const full = s.figure('chargeOhm')
    const chargeOhm = (charge === percent ? full : Math.min(full, 2.8 * cells / 6 / ampereHours(s.part, s.wiring.systemV))) + added
    const [plus, minus] = [s.point('+'), s.point('-')]
    const v = `V(${s.node(plus)},${s.node(minus)})`
    const gap = Math.min(0.01, 1 / ohm), e = digits(emf)
    s.line('B', plus, minus, `I=(${v}<=${e})?((${v}-${e})/${digits(ohm)}):((${v}<=${digits(counter)})?(${gap}*(${v}-${e})):(${digits(gap * (counter - emf))}+(${v}-${digits(counter)})/${digits(chargeOhm)}))`, s.part.id)
  }

  static readonly fuse = (s: Sheet): void => {
    const ways = s.part.params.ways as Record<string, { from: string; to: string }> | undefined
    if (!ways && s.state('element') !== 'blown') s.ohms('in', 'out', s.figure('ohm'))
    for (const [id, { from, to }] of Object.entries(ways ?? {})) if (s.state(id) !== 'blown') s.ohms(from, to, s.figure('ways', id, 'ohm'), id)
  }

  static readonly ammeter = (s: Sheet): void => s.ohms('in', 'out', s.figure('ohm'))
  static readonly resistor = (s: Sheet): void => s.ohms('a', 'b', s.figure('ohm'))
  static readonly coil = (s: Sheet): void => s.ohms('15', '1', s.figure('primaryOhm'), 'primary')
  static readonly horn = (s: Sheet): void => s.ohms('in', 'out', s.figure('ratedV') / s.figure('ratedA'))
  static readonly diode = (s: Sheet): void => s.diode('anode', 'cathode', s.figure('forwardV'), s.figure('ratedA'), 1.8, s.figure('ohm'))
  static readonly breaker = (s: Sheet): void => { if (s.given.solved.setting.engine !== 'stopped-open') s.ohms('1', 'case', s.figure('ohm')) }

  static readonly voltmeter = (s: Sheet): void => s.ohms('in', 'out', s.figure('ohm'))
  /** A steady one; a wound one would have a magnet of its own. */
  static readonly clock = (s: Sheet): void => s.ohms('in', 'out', s.figure('ratedV') / s.figure('ratedA'))
  /** Steady current does not pass it. */
  static readonly capacitor = (): void => undefined

  static readonly gauge = (s: Sheet): void => {
    s.ohms('in', 'T', s.figure('ohm'), 'winding')
    if (s.part.params.type === 'two-coil') s.ohms('T', 'E', s.figure('earthOhm'), 'earth-winding')
  }

  /** Its contact feeds the gauges and the heater of its own strip, which ends on its earth. */
  static readonly stabiliser = (s: Sheet): void => {
    s.ohms('I', 'E', s.figure('heaterOhm'), 'heater')
    if (s.given.solved.at[s.part.id] !== 'open') s.ohms('B', 'I', s.figure('contactOhm'), 'contact')
  }

  static readonly joint = (s: Sheet): void => {
    const ways = typeof s.part.params.ways === 'number' ? s.part.params.ways : 2
    for (let way = 2; way <= ways; way++) s.ohms('1', String(way), s.figure('ohm'), ways === 2 ? '' : String(way))
  }

  static readonly lamp = (s: Sheet): void => {
    const filaments = s.part.params.filaments as Record<string, { from?: string; to?: string }> | undefined
    for (const [id, { from, to }] of Object.entries(filaments ?? { '': {} as { from?: string; to?: string } })) {
      const path = id ? ['filaments', id] : []
      const ratedV = s.maybe(...path, 'ratedV') ?? s.figure('ratedV')
      s.filament(from ?? (id || 'in'), to ?? 'out', ratedV, s.figure(...path, 'powerW'), s.maybe(...path, 'coldRatio') ?? s.figure('coldRatio'), id)
    }
  }

  static readonly led = (s: Sheet): void => {
    const [v, a, f] = [s.figure('ratedV'), s.figure('ratedA'), s.figure('forwardV')]
    s.diode('in', 'out', v, a, 2, Math.max(0, (v - f) / a))
    if (s.part.params.bridge === true) s.diode('out', 'in', v, a, 2, Math.max(0, (v - f) / a), 'back')
  }

  /** Running: rated volts over rated amps; still: the winding; coasting is over once everything rests. */
  private brush(from: string, ratedV: number, ratedA: number, stalledOhm: number, element: string): void {
    this.ohms(from, 'out', this.state('shaft') === 'running' ? ratedV / ratedA : stalledOhm, element)
  }

  static readonly motor = (s: Sheet): void => {
    const brushes = s.part.params.brushes as Record<string, unknown> | undefined
    for (const id of Object.keys(brushes ?? { in: {} })) {
      const path = brushes ? ['brushes', id] : []
      s.brush(id, s.figure('ratedV'), s.figure(...path, 'ratedA'), s.figure(...path, 'stalledOhm'), brushes ? id : '')
    }
  }

  static readonly wiper = (s: Sheet): void => {
    for (const id of Object.keys((s.part.params.brushes as Record<string, unknown> | undefined) ?? { low: {} })) {
      s.brush(id, s.figure('ratedV'), s.figure('brushes', id, 'ratedA'), s.figure('brushes', id, 'stalledOhm'), id)
    }
    const first = ((s.part.params.camPositions as string[] | undefined) ?? ['parked'])[0]
    const parked = s.given.solved.at[s.part.id] === first
    if (!parked) s.ohms('feed', 'park', s.figure('parkOhm'), 'park')
    else if (s.part.params.brakes === true) s.ohms('park', 'out', s.figure('parkOhm'), 'brake')
  }

  static readonly control = (s: Sheet): void => {
    const { axes, rows = {}, resistors = {} } = s.part.params as {
      axes: Record<string, { rest: string | number; follows?: Record<string, string> }>
      rows?: Record<string, { when: Record<string, string[]>; joins: string[] }>
      resistors?: Record<string, { between: [string, string]; axis: string; ohmAt: [number, number][] }>
    }
    const mode = s.given.engineRpm === 0 ? 'stopped' : s.given.engineRpm <= s.wiring.engine.crankingRpm ? 'cranking' : 'running'
    const at = (axis: string) => s.given.solved.setting.controls[`${s.part.id}.${axis}`] ?? axes[axis].follows?.[mode] ?? axes[axis].rest
    for (const [id, { when, joins }] of Object.entries(rows)) {
      if (!Object.entries(when).every(([axis, positions]) => positions.includes(String(at(axis))))) continue
      for (const to of joins.slice(1)) s.ohms(joins[0], to, s.figure('rows', id, 'ohm'), joins.length === 2 ? id : `${id}.${to}`)
    }
    for (const [id, { between, axis, ohmAt }] of Object.entries(resistors)) {
      const sorted = [...ohmAt].sort(([a], [b]) => a - b), x = Number(at(axis))
      const k = sorted.findIndex(([p]) => p >= x)
      const [a, b] = k <= 0 ? [sorted.at(k === 0 ? 0 : -1)!, sorted.at(k === 0 ? 0 : -1)!] : [sorted[k - 1], sorted[k]]
      s.ohms(between[0], between[1], a[0] === b[0] ? a[1] : a[1] + (b[1] - a[1]) * (x - a[0]) / (b[0] - a[0]), id)
    }
  }

  static readonly electromagnet = (s: Sheet): void => {
    const { windings, contacts } = s.part.params as {
      windings?: Record<string, { from: string; to: string }>; contacts?: Record<string, { from: string; to: string; closed?: string }>
    }
    const wound = windings ?? { coil: { from: '86', to: '85' } }
    for (const [id, { from, to }] of Object.entries(wound)) s.ohms(from, to, s.figure('windings', id, 'ohm'), id)
    for (const [id, { from, to, closed = 'pulled' }] of Object.entries(contacts ?? { make: { from: '30', to: '87' } as { from: string; to: string; closed?: string } })) {
      if (s.state('armature') === closed) s.ohms(from, to, s.figure('contacts', id, 'ohm'), id in wound ? `${id}-contact` : id)
    }
  }

  static readonly flasher = (s: Sheet): void => {
    if (s.given.solved.at[s.part.id] === 'lit') s.ohms('49', '49a', s.figure('contactOhm'), 'contact')
    if (s.part.params.type !== 'bimetal') s.ohms('49', '49a', s.figure('darkOhm'), 'wire')
    if (s.state('telltale') === 'made') s.ohms('49', 'C', s.figure('contactOhm'), 'telltale')
  }

  private emf(machine: string): number { return this.given.condition.emf[this.given.machines.indexOf(`${this.part.id}.${machine}`)] }
  private regulatorOhm(): number { return this.given.condition.regulatorOhm[this.given.regulators.indexOf(`${this.part.id}.regulator`)] }

  static readonly dynamo = (s: Sheet): void => {
    s.source('D', 'case', s.emf('armature'), s.figure('armatureOhm'), 'armature')
    if (s.part.params.fieldTo === 'D') s.ohms('D', 'F', s.figure('fieldOhm'), 'field')
    else s.ohms('F', 'case', s.figure('fieldOhm'), 'field')
  }

  /** D – (current winding) – ~a – cut-out contact – ~b – series windings – ~c – A; fine windings from ~a to E; the regulating contact from D to F. */
  static readonly controlBox = (s: Sheet): void => {
    const raw = s.part.params as Record<string, { windings?: Record<string, { from: string; to: string }> } | undefined> & { regulates?: string }
    const hasLimit = raw.limitA !== undefined || raw.current !== undefined
    const usual: Record<string, Record<string, { from: string; to: string }>> = {
      voltage: { shunt: { from: '~a', to: 'E' }, series: { from: '~c', to: 'A' } }, cutout: { shunt: { from: '~a', to: 'E' }, series: { from: '~b', to: '~c' } },
      ...(hasLimit ? { current: { series: { from: 'D', to: '~a' } } } : {}),
    }
    for (const [bobbin, made] of Object.entries(usual)) {
      for (const [id, { from, to }] of Object.entries(raw[bobbin]?.windings ?? made)) s.ohms(from, to, s.figure(bobbin, 'windings', id, 'ohm'), `${bobbin}-${id}`)
    }
    if (s.state('cutout') !== 'open') s.ohms('~a', '~b', s.figure('cutoutContactOhm'), 'cutout-contact')
    const [from, to] = raw.regulates === 'F-E' ? ['F', 'E'] : ['D', 'F']
    s.ohms(from, to, s.regulatorOhm(), 'regulator')
  }

  /** Behind two junctions an EMF and a reactance that grows with speed; field diodes to D+; the rotor through its regulator to the case. */
  static readonly alternator = (s: Sheet): void => {
    const rotor = s.figure('rotorOhm'), rated = s.figure('ratedA'), volts = s.figure('ratedV')
    const n = Math.max(1, s.given.engineRpm * s.figure('ratio')), n0 = s.figure('cutInRpm')
    const fullV = volts + 1.5
    const limit = (rated + volts / rotor) / (1.004 - n0 / s.figure('fullOutputRpm'))
    s.source('~s', 'case', s.emf('stator'), Math.max(1e-3, fullV * n / n0 / limit), 'stator')
    const fieldA = s.figure('setV') / rotor
    for (const [end, amps, element] of [['B+', rated, 'main-diodes'], ['D+', fieldA, 'field-diodes']] as const) {
      const [a, b] = s.wiring.earth === 'positive' ? [end, '~s'] : ['~s', end]
      s.diode(a, b, 1.5, amps, 3, 0.1 / amps, element)
    }
    if (s.part.params.regulator === 'separate') return s.ohms('DF', 'case', rotor, 'rotor')
    s.ohms('D+', '~rotor', rotor, 'rotor')
    s.ohms('~rotor', 'case', s.regulatorOhm(), 'regulator')
  }
}

const WRITERS: Readonly<Record<string, (sheet: Sheet) => void>> = {
  'battery': Sheet.battery, 'fuse': Sheet.fuse, 'ammeter': Sheet.ammeter, 'resistor': Sheet.resistor, 'coil': Sheet.coil, 'horn': Sheet.horn, 'diode': Sheet.diode,
  'breaker': Sheet.breaker, 'joint': Sheet.joint, 'lamp': Sheet.lamp, 'led': Sheet.led, 'motor': Sheet.motor, 'wiper': Sheet.wiper, 'control': Sheet.control,
  'voltmeter': Sheet.voltmeter, 'clock': Sheet.clock, 'capacitor': Sheet.capacitor, 'gauge': Sheet.gauge, 'stabiliser': Sheet.stabiliser,
  'electromagnet': Sheet.electromagnet, 'flasher': Sheet.flasher, 'dynamo': Sheet.dynamo, 'control-box': Sheet.controlBox, 'alternator': Sheet.alternator,
}

/** Whether these conductors lead from one point to the other. */
function isJoined(from: string, to: string, conductors: readonly { from: string; to: string }[]): boolean {
  const reached = new Set([from])
  for (let before = 0; before < reached.size;) {
    before = reached.size
    for (const { from: a, to: b } of conductors) {
      if (reached.has(a)) reached.add(b)
      if (reached.has(b)) reached.add(a)
    }
  }
  return reached.has(to)
}

/** The ends that each control can join. */
function contactsOf({ parts }: Wiring): string[][] {
  return [...parts.values()].flatMap(({ id, params }) => Object.values((params.rows ?? {}) as Record<string, { joins?: string[] }>)
    .flatMap(({ joins: [first, ...others] = [] }) => others.map((other) => [`${id}:${first}`, `${id}:${other}`])))
}

function ampereHours({ params }: WiringPart, systemV: number): number {
  return typeof params.capacityAh === 'number' ? params.capacityAh : systemV === 6 ? 85 : 50
}

/** The metal nearest to the earthed post, by number of joins from it; an isolator in the earth lead is one of them. */
function referenceOf(wiring: Wiring, nodes: ReadonlyMap<string, string>): string {
  const battery = [...wiring.parts.values()].find(({ kind }) => kind === 'battery')
  const earthed = wiring.earth === 'positive' ? '+' : '-'
  let rim = battery ? [`${battery.id}:${[...battery.terminals.values()].find(({ is }) => is === earthed)?.id ?? earthed}`] : []
  const seen = new Set(rim)
  const pairs = [...[...wiring.wires.values()].map(({ ends }) => ends.map(({ at }) => at ?? '')), ...[...wiring.fixings.values(), ...wiring.matings.values()].map(({ joins }) => [...joins]), ...contactsOf(wiring)]
  while (rim.length) {
    const metal = rim.find((point) => wiring.metals.has(point))
    if (metal) return metal
    rim = pairs.flatMap(([a, b]) => [[a, b], [b, a]]).filter(([a, b]) => rim.includes(a) && !seen.has(b)).map(([, b]) => b)
    rim.forEach((point) => seen.add(point))
  }
  const [first] = [...wiring.metals.keys()].filter((metal) => nodes.has(metal))
  return first
}
