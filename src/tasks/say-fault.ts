import type { Fault } from '../circuit/index.ts'
import type { Wiring } from '../record/index.ts'

/** A fault that was laid on, as it is written and in words. */
export interface LaidFault { readonly fault: string; readonly said: string }

export function sayFault(fault: Fault, wiring: Wiring): string {
  const name = (id: string) => nameOf(id, wiring)
  switch (fault.kind) {
    case 'open': return `${name(fault.id)} is open`
    case 'ohms': return `${name(fault.id)} has ${fault.ohm} Ω more`
    case 'join': return `${name(fault.a)} touches ${name(fault.b)}`
    case 'swap': return `what belongs on ${name(fault.a)} and on ${name(fault.b)} is swapped`
    case 'set': return `${name(fault.part)} has ${fault.param.join('.')} ${fault.value}`
    case 'hold': return `${name(fault.part)}${fault.state === '' ? '' : `, ${fault.state},`} is held at ${fault.value}`
  }
}

/** An id with what people call it: `w3` stays `wire w3`, `left-wing-bolts` gets its title. */
function nameOf(id: string, { wires, parts, fixings, metals }: Wiring): string {
  if (wires.has(id)) return `wire ${id}`
  const [wire, end] = [id.slice(0, -2), id.slice(-2)]
  if (wires.has(wire) && (end === '.1' || end === '.2')) return `the ${end === '.1' ? 'first' : 'second'} end of wire ${wire}`
  const title = fixings.get(id)?.title ?? metals.get(id)?.title ?? parts.get(id.split(/[.:]/)[0])?.title
  return title === undefined ? id : `${id} (${title})`
}
