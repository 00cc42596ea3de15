import type { Fault } from '../../src/circuit/index.ts'
import type { Wiring, WiringWire } from '../../src/record/index.ts'

/** Ohms of two bare ends pressed together, as the product lays them. */
const TOUCH = 1e-4

/**
 * A wiring with the faults written into its wires and parts, one after the other: what a network built anew starts from. Points
 * that touch go last: they touch as points, whatever wires are taken off them.
 */
export function editWiring(wiring: Wiring, faults: readonly Fault[]): Wiring {
  const touching = faults.filter(({ kind }) => kind === 'join')
  return [...faults.filter(({ kind }) => kind !== 'join'), ...touching].reduce(editOnce, wiring)
}

function editOnce(wiring: Wiring, fault: Fault): Wiring {
  switch (fault.kind) {
    case 'open': return withWire(wiring, fault.id, ({ ends, ...wire }) => ({ ...wire, ends: [{ ...ends[0], at: null, state: 'loose', jointOhm: 0 }, ends[1]] }))
    case 'ohms': return withWire(wiring, fault.id, (wire) => ({ ...wire, ohm: Number(wire.ohm) + fault.ohm }))
    case 'join': {
      const id = `touch${wiring.wires.size}`
      const end = (at: string) => ({ at, state: 'joined' as const, jointOhm: 0 })
      return { ...wiring, wires: new Map([...wiring.wires, [id, { id, ends: [end(fault.a), end(fault.b)], ohm: TOUCH }]]) }
    }
    case 'swap': {
      const turn = (at: string | null) => (at === fault.a ? fault.b : at === fault.b ? fault.a : at)
      return { ...wiring, wires: new Map([...wiring.wires].map(([id, wire]) => [id, { ...wire, ends: [{ ...wire.ends[0], at: turn(wire.ends[0].at) }, { ...wire.ends[1], at: turn(wire.ends[1].at) }] }])) }
    }
    case 'set': {
      const part = wiring.parts.get(fault.part)!
      return { ...wiring, parts: new Map([...wiring.parts, [part.id, { ...part, params: { ...part.params, [fault.param[0]]: fault.value } }]]) }
    }
    default: throw new Error(`a wiring has no place for ${fault.kind}`)
  }
}

function withWire(wiring: Wiring, id: string, change: (wire: WiringWire) => WiringWire): Wiring {
  const wire = wiring.wires.get(id)
  if (!wire) throw new Error(`no wire ${id}`)
  return { ...wiring, wires: new Map([...wiring.wires].map(([other, one]) => [other, other === id ? change(one) : one])) }
}
