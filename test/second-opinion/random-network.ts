import { link, part, wire, type RecordPlan } from '../builders/record.ts'

/** A linear congruential generator: chance of its own for these networks. */
function chanceOf(seed: number): () => number {
  let state = (seed * 2654435761) % 4294967296
  return () => (state = (state * 1664525 + 1013904223) % 4294967296) / 4294967296
}

const SUPPLIES = ['12-', '12+', '6+', '24-', '6-'] as const

/**
 * Network number `seed`: lamps, LEDs, diodes, resistors, switches, motors and now and then a second battery, strung between
 * splices and two metals by wires of 5 mΩ to 0.3 Ω and some of none; the higher the number modulo 60, the larger, up to 300
 * nodes. On 6, 12 or 24 V, with either pole on the metals.
 */
export function randomNetwork(seed: number): RecordPlan {
  const chance = chanceOf(seed)
  const pick = <T>(items: readonly T[]): T => items[Math.floor(chance() * items.length)]
  const count = 3 + Math.floor((seed % 60) * 1.9), nodes = 2 + Math.floor(count / 2)
  const supply = SUPPLIES[Math.floor(seed / 60) % SUPPLIES.length], cells = Number.parseInt(supply) / 2
  const [live, earthed] = supply.endsWith('+') ? ['-', '+'] : ['+', '-']
  const parts = [part('battery', 'battery', { emfV: 2.1 * cells, ohm: 0.01 + 0.03 * chance() })]
  const wires = [wire('feed', `battery:${live}`, 'n0', { ohm: 0.002 }), wire('strap', `battery:${earthed}`, 'chassis', { ohm: 0.001 }), wire('bond', 'engine', 'chassis', { ohm: 0.003 })]
  if (seed % 5 === 0) {
    parts.push(part('second', 'battery', { emfV: 2.07 * cells, ohm: 0.03 }))
    wires.push(wire('feed2', `second:${live}`, 'n1', { ohm: 0.05 }), wire('strap2', `second:${earthed}`, 'engine', { ohm: 0.002 }))
  }
  // Two ways without resistance side by side: nobody can tell how their current divides.
  if (seed % 7 === 0) wires.push(link('u1', 'n0', 'n1'), link('u2', 'n1', 'n0'))
  for (let i = 1; i < nodes; i++) if (chance() < 0.7) wires.push(wire(`t${i}`, `n${Math.floor(chance() * i)}`, `n${i}`, { ohm: 0.005 + 0.3 * chance() }))
  for (let i = 0; i < count; i++) {
    const [made, a, b] = randomPart(`p${i}`, chance)
    parts.push(made)
    const ends = [`n${Math.floor(chance() * nodes)}`, pick(['chassis', 'engine', 'chassis', `n${Math.floor(chance() * nodes)}`])]
    if (live === '-') ends.reverse()
    for (const [k, end] of [a, b].entries()) {
      const join = chance() < 0.1 ? link : (id: string, x: string, y: string) => wire(id, x, y, { ohm: 0.005 + 0.2 * chance() })
      wires.push(join(`w${i}${k}`, `p${i}:${end}`, ends[k]))
    }
  }
  return { supply, metals: ['chassis', 'engine'], parts, wires, splices: Object.fromEntries(Array.from({ length: nodes }, (_, i) => [`n${i}`, {}])), assume: { jointOhm: 0 } }
}

/** A part with its first and its second end. */
function randomPart(id: string, chance: () => number): [ReturnType<typeof part>, string, string] {
  switch (Math.floor(chance() * 9)) {
    case 0: return [part(id, 'lamp', { powerW: 2 + 50 * chance(), coldRatio: 8 + 7 * chance() }), 'in', 'out']
    case 1: return [part(id, 'lamp', { powerW: 21 }), 'out', 'in']
    case 2: return [part(id, 'resistor', { ohm: 0.5 + 40 * chance() }), 'a', 'b']
    case 3: return [part(id, 'diode', {}), 'anode', 'cathode']
    case 4: return [part(id, 'led', { ratedA: 0.02 + 0.1 * chance(), bridge: chance() < 0.2 }), 'in', 'out']
    case 5: return [part(id, 'motor', { ratedA: 1 + 6 * chance() }), 'in', 'out']
    case 6: return [part(id, 'control', { axes: { p: { positions: ['off', 'on'], rest: chance() < 0.5 ? 'off' : 'on' } }, rows: { on: { when: { p: ['on'] }, joins: ['a', 'b'] } } }), 'a', 'b']
    default: return [part(id, 'lamp', { powerW: 2 + 50 * chance() }), 'in', 'out']
  }
}
