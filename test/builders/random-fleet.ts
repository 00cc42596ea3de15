import { fixing, part, wire, type RecordPlan } from './record.ts'
import { seededChance } from './random-vehicle.ts'

/**
 * A plausible small vehicle by chance: battery, ammeter, key, two fuses, lighting switch with dip, brake, horn, blower, a relay,
 * and five to nine lamps on three metals of which two are joined to the chassis by a shared fixing each.
 */
export function randomFleet(seed: number): RecordPlan {
  const chance = seededChance(seed)
  const pick = <T>(items: readonly T[]): T => items[Math.floor(chance() * items.length)]
  const ohm = () => 0.005 + 0.04 * chance()
  const metal = () => pick(['chassis', 'wing', 'nose'])
  const onOff = (a: string, b: string) => ({ axes: { p: { positions: ['off', 'on'], rest: 'off' } }, rows: { on: { when: { p: ['on'] }, joins: [a, b] } } })
  const parts = [
    part('battery', 'battery', { capacityAh: 50 }), part('ammeter', 'ammeter'), part('key', 'control', onOff('30', '15')),
    part('fuse-a', 'fuse', { ratingA: 25 }), part('fuse-b', 'fuse', { ratingA: 25 }),
    part('lights', 'control', {
      axes: { pull: { positions: ['0', '1', '2'], rest: '0' }, dip: { positions: ['dip', 'main'], rest: 'dip' } },
      rows: { tail: { when: { pull: ['1', '2'] }, joins: ['30', '58'] }, dip: { when: { pull: ['2'], dip: ['dip'] }, joins: ['30', '56b'] }, main: { when: { pull: ['2'], dip: ['main'] }, joins: ['30', '56a'] } },
    }),
    part('brake', 'control', onOff('15', '54')), part('horn-button', 'control', onOff('30', '86')), part('blower-switch', 'control', onOff('15', 'b')),
    part('horn-relay', 'electromagnet'), part('horn', 'horn'), part('blower', 'motor', { ratedA: 3 + 4 * chance() }),
  ]
  const wires = [
    wire('w1', 'battery:+', 'ammeter:in', { ohm: 0.002 }), wire('w2', 'ammeter:out', 'key:30', { ohm: ohm() }), wire('w3', 'ammeter:out', 'lights:30', { ohm: ohm() }),
    wire('w4', 'key:15', 'fuse-a:in', { ohm: ohm() }), wire('w5', 'ammeter:out', 'fuse-b:in', { ohm: ohm() }), wire('w6', 'fuse-a:out', 'brake:15', { ohm: ohm() }),
    wire('w7', 'fuse-b:out', 'horn-button:30', { ohm: ohm() }), wire('w8', 'horn-button:86', 'horn-relay:86', { ohm: ohm() }), wire('w9', 'horn-relay:85', metal(), { ohm: ohm() }),
    wire('w10', 'fuse-b:out', 'horn-relay:30', { ohm: ohm() }), wire('w11', 'horn-relay:87', 'horn:in', { ohm: ohm() }), wire('w12', 'horn:out', metal(), { ohm: ohm() }),
    wire('w13', 'fuse-a:out', 'blower-switch:15', { ohm: ohm() }), wire('w14', 'blower-switch:b', 'blower:in', { ohm: ohm() }), wire('w15', 'blower:out', metal(), { ohm: ohm() }),
    wire('strap', 'battery:-', 'chassis', { ohm: 0.001 }),
  ]
  const lamps = 5 + Math.floor(chance() * 5)
  for (let i = 0; i < lamps; i++) {
    const feed = pick(['lights:58', 'lights:56a', 'lights:56b', 'brake:54', 'fuse-a:out'])
    parts.push(part(`lamp${i}`, 'lamp', { powerW: pick([5, 10, 21, 45]) }))
    wires.push(wire(`f${i}`, feed, `lamp${i}:in`, { ohm: ohm() }), wire(`g${i}`, `lamp${i}:out`, metal(), { ohm: ohm() }))
  }
  return {
    metals: ['chassis', 'wing', 'nose'], parts, wires,
    fixings: [fixing('wing-bolts', 'wing', 'chassis', 0.02 + 0.2 * chance()), fixing('nose-bolts', 'nose', 'chassis', 0.02 + 0.2 * chance())],
  }
}
