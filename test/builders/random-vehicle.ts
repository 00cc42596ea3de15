import { link, part, wire, type RecordPlan } from './record.ts'

/** A seeded source of chance: mulberry32. */
export function seededChance(seed: number): () => number {
  let state = seed >>> 0
  return () => {
    state = (state + 0x6d2b79f5) >>> 0
    let t = Math.imul(state ^ (state >>> 15), state | 1)
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61)
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296
  }
}

/** A vehicle of up to `most` lamps, resistors, diodes, switches and motors between random nodes, some nodes hanging loose. */
export function randomVehicle(seed: number, most = 14): RecordPlan {
  const chance = seededChance(seed)
  const pick = (n: number) => Math.floor(chance() * n)
  const count = 3 + pick(most), nodes = 2 + pick(count)
  const parts = [part('battery', 'battery', { emfV: 12.6, ohm: 0.01 + 0.05 * chance() })]
  const wires = [wire('wb', 'battery:+', 'n0', { ohm: 0.002 }), wire('we', 'battery:-', 'body', { ohm: 0.001 })]
  for (let i = 0; i < count; i++) {
    const [id, made, ends] = randomPart(`p${i}`, chance)
    parts.push(made)
    ends.forEach((end, k) => {
      const at = pick(nodes + 2)
      const to = at >= nodes ? 'body' : `n${at}`
      const join = chance() < 0.2 ? link : (name: string, a: string, b: string) => wire(name, a, b, { ohm: 0.005 + 0.2 * chance() })
      wires.push(join(`w${i}x${k}`, `${id}:${end}`, to))
    })
  }
  return {
    metals: ['body'], parts, wires, assume: { jointOhm: 0, contactOhm: 0.01 },
    splices: Object.fromEntries(Array.from({ length: nodes }, (_, i) => [`n${i}`, {}])),
  }
}

function randomPart(id: string, chance: () => number): [string, ReturnType<typeof part>, readonly string[]] {
  const roll = chance()
  if (roll < 0.5) return [id, part(id, 'lamp', { powerW: 2 + 50 * chance() }), ['in', 'out']]
  if (roll < 0.7) return [id, part(id, 'resistor', { ohm: 0.5 + 40 * chance() }), ['a', 'b']]
  if (roll < 0.8) return [id, part(id, 'diode', {}), ['anode', 'cathode']]
  if (roll < 0.9) return [id, part(id, 'motor', { ratedA: 1 + 5 * chance() }), ['in', 'out']]
  return [id, part(id, 'control', { axes: { p: { positions: ['off', 'on'], rest: chance() < 0.5 ? 'off' : 'on' } }, rows: { on: { when: { p: ['on'] }, joins: ['a', 'b'] } } }), ['a', 'b']]
}
