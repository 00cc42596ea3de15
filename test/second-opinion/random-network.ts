import { link, part, wire, type RecordPlan } from '../builders/record.ts'

/** A linear congruential generator: chance of its own for these networks. */
function chanceOf(seed: number): () => number {
  let state = (seed * 2654435761) % 4294967296
  return () => (state = (state * 1664525 + 1013904223) % 4294967296) / 4294967296
}

/**
 * Network number `seed`: lamps, LEDs, diodes, resistors, motors and now and then a second battery, strung between splices and
 * two metals by wires of 5 mΩ to 0.3 Ω and some of none; the higher the number modulo 60, the larger, up to some 300 nodes.
 */
export function randomNetwork(seed: number): RecordPlan {
  const chance = chanceOf(seed)
  const pick = <T>(items: readonly T[]): T => items[Math.floor(chance() * items.length)]
  const count = 3 + Math.floor((seed % 60) * 1.6), nodes = 2 + Math.floor(count / 2)
  const parts = [part('battery', 'battery', { emfV: 12.6, ohm: 0.01 + 0.03 * chance() })]
  const wires = [wire('feed', 'battery:+', 'n0', { ohm: 0.002 }), wire('strap', 'battery:-', 'chassis', { ohm: 0.001 }), wire('bond', 'engine', 'chassis', { ohm: 0.003 })]
  if (seed % 5 === 0) {
    parts.push(part('second', 'battery', { emfV: 12.4, ohm: 0.03 }))
    wires.push(wire('feed2', 'second:+', 'n1', { ohm: 0.05 }), wire('strap2', 'second:-', 'engine', { ohm: 0.002 }))
  }
  for (let i = 1; i < nodes; i++) if (chance() < 0.7) wires.push(wire(`t${i}`, `n${Math.floor(chance() * i)}`, `n${i}`, { ohm: 0.005 + 0.3 * chance() }))
  for (let i = 0; i < count; i++) {
    const [made, a, b] = pick<() => [ReturnType<typeof part>, string, string]>([
      () => [part(`p${i}`, 'lamp', { powerW: 2 + 50 * chance() }), 'in', 'out'], () => [part(`p${i}`, 'lamp', { powerW: 2 + 50 * chance(), coldRatio: 8 + 7 * chance() }), 'in', 'out'],
      () => [part(`p${i}`, 'lamp', { powerW: 21 }), 'in', 'out'], () => [part(`p${i}`, 'resistor', { ohm: 0.5 + 40 * chance() }), 'a', 'b'], () => [part(`p${i}`, 'diode', {}), 'anode', 'cathode'],
      () => [part(`p${i}`, 'led', { ratedA: 0.02 + 0.1 * chance() }), 'in', 'out'], () => [part(`p${i}`, 'motor', { ratedA: 1 + 6 * chance() }), 'in', 'out'],
    ])()
    parts.push(made)
    const ends = [`n${Math.floor(chance() * nodes)}`, pick(['chassis', 'engine', 'chassis', `n${Math.floor(chance() * nodes)}`])]
    ;[a, b].forEach((end, k) => { wires.push((chance() < 0.1 ? link : (id: string, x: string, y: string) => wire(id, x, y, { ohm: 0.005 + 0.2 * chance() }))(`w${i}${k}`, `p${i}:${end}`, ends[k])) })
  }
  return { metals: ['chassis', 'engine'], parts, wires, splices: Object.fromEntries(Array.from({ length: nodes }, (_, i) => [`n${i}`, {}])), assume: { jointOhm: 0 } }
}
