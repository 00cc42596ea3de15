import { link, part, wire, type RecordPlan } from './record.ts'
import { seededChance } from './random-vehicle.ts'

/** Two to seven relays whose coils and contacts, of both kinds, lie between a few random nodes: some hold themselves, some chatter. */
export function randomRelays(seed: number): RecordPlan {
  const chance = seededChance(seed)
  const pick = (n: number) => Math.floor(chance() * n)
  const relays = 2 + pick(6), nodes = 2 + pick(4)
  const node = () => { const at = pick(nodes + 2); return at === nodes ? 'body' : at === nodes + 1 ? 'battery:+' : `n${at}` }
  const parts = [part('battery', 'battery', { emfV: 12.6, ohm: 0.02 })]
  const wires = [link('e', 'battery:-', 'body')]
  for (let i = 0; i < relays; i++) {
    parts.push(part(`r${i}`, 'electromagnet', {
      windings: { coil: { from: '86', to: '85', ohm: 40 + 60 * chance(), turns: 1000 } }, pullAt: 60 + 40 * chance(), releaseAt: 20 + 30 * chance(),
      contacts: { make: { from: '30', to: '87', ohm: 0.01 }, ...chance() < 0.4 ? { rest: { from: '30', to: '87a', ohm: 0.01, closed: 'released' } } : {} },
    }), part(`load${i}`, 'resistor', { ohm: 5 + 40 * chance() }))
    wires.push(wire(`a${i}`, `r${i}:86`, node(), { ohm: 0.05 }), wire(`b${i}`, `r${i}:85`, chance() < 0.7 ? 'body' : node(), { ohm: 0.05 }))
    wires.push(wire(`c${i}`, `r${i}:30`, chance() < 0.7 ? 'battery:+' : node(), { ohm: 0.05 }), wire(`d${i}`, `r${i}:87`, node(), { ohm: 0.05 }))
    wires.push(wire(`l${i}`, `load${i}:a`, node(), { ohm: 0.05 }), wire(`m${i}`, `load${i}:b`, 'body', { ohm: 0.05 }))
  }
  return { metals: ['body'], parts, wires, splices: Object.fromEntries(Array.from({ length: nodes }, (_, i) => [`n${i}`, {}])), assume: { jointOhm: 0 } }
}
