import type { Now, View } from '../record/index.ts'
import type { Condition } from './condition.ts'
import type { Network } from './network.ts'

/** What a setting says to every part. */
export interface Ambient { readonly engineRpm: number; readonly pointsOpen: boolean; readonly battery: 'full' | 'low' }

/** What the parts may ask of a circuit held open. */
interface Held {
  readonly network: Network
  readonly present: { readonly condition: Condition }
  readonly ambient: Ambient
  elementAmps(element: number): number
  pointVolts(point: number): number
}

/** What the laws of one part read. */
export class PartNow implements Now {
  askedMachine = false
  /** Whether the setting has changed for this part since its laws were last read; whoever reads them says so. */
  isStale = true
  /** Nothing inside it moves by itself: its laws hang on the setting alone. */
  readonly isStill: boolean
  private readonly positions = new Map<string, string | number>()
  private readonly stateOf: ReadonlyMap<string, number>
  private readonly machineOf: ReadonlyMap<string, number>
  private readonly regulatorOf: ReadonlyMap<string, number>
  private readonly phaseAt: number

  constructor(private readonly circuit: Held, private readonly part: number) {
    const { states, machines, regulators, phases } = circuit.network
    const index = (items: readonly { part: number; spec: { id: string } }[]) =>
      new Map(items.flatMap((item, i) => (item.part === part ? [[item.spec.id, i] as const] : [])))
    this.stateOf = index(states)
    this.machineOf = index(machines)
    this.regulatorOf = index(regulators)
    this.phaseAt = phases.findIndex((phase) => phase.part === part)
    this.isStill = this.stateOf.size + this.machineOf.size + this.regulatorOf.size === 0 && this.phaseAt < 0
  }

  moveAxis(axis: string, position: string | number): void {
    if (this.positions.get(axis) === position) return
    this.positions.set(axis, position)
    this.isStale = true
  }

  get engineRpm(): number { return this.circuit.ambient.engineRpm }
  get pointsOpen(): boolean { return this.circuit.ambient.pointsOpen }
  get battery(): 'full' | 'low' { return this.circuit.ambient.battery }
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

/** What the rules of one part read of the last solution. */
export class PartView implements View {
  constructor(private readonly circuit: Held, private readonly part: number, readonly now: Now) {}

  amps(element: string): number {
    return this.circuit.elementAmps(mustFind(this.circuit.network.parts[this.part].elements, element))
  }

  volts(from: string, to: string): number {
    const { ends } = this.circuit.network.parts[this.part]
    return this.circuit.pointVolts(mustFind(ends, from)) - this.circuit.pointVolts(mustFind(ends, to))
  }
}

function mustFind(map: ReadonlyMap<string, number>, id: string): number {
  const index = map.get(id)
  if (index === undefined) throw new RangeError(`the part has no inner item ${id}`)
  return index
}
