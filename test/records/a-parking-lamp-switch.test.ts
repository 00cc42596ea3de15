// Letter a: a pull switch whose second position drops the parking lamps, and the edition in which their wire sits on R.
import { expect, test } from 'vitest'
import { findZero, lampAmps } from './by-hand.ts'
import { openVehicle, readRecordFile } from './open-vehicle.ts'

const record = readRecordFile(new URL('./a-parking-lamp-switch.json', import.meta.url))
const before = openVehicle(record, { year: 1952 })
const after = openVehicle(record, { year: 1960 })
const pulled = (position: string) => ({ controls: { 'switch.pull': position } })

const EMF_V = 12, BATTERY_OHM = 0.005, CONTACT_OHM = 0.01

/**
 * By hand: the watts that hang on each live terminal of the switch, all of 12 V bulbs. Every terminal is fed from B through
 * a contact of its own, V = VB − 0.01·I(V), and the battery leaves VB = 12 − 0.005·ΣI.
 */
function feedByHand(watts: readonly number[]) {
  const terminal = (vB: number, powerW: number) => findZero((v) => v + CONTACT_OHM * lampAmps(v, 12, powerW) - vB, 0, vB)
  const total = (vB: number) => watts.reduce((sum, powerW) => sum + lampAmps(terminal(vB, powerW), 12, powerW), 0)
  const vB = findZero((v) => v + BATTERY_OHM * total(v) - EMF_V, 0, EMF_V)
  const terminals = watts.map((powerW) => terminal(vB, powerW))
  return { vB, volts: terminals, amps: terminals.map((v, i) => lampAmps(v, 12, watts[i])), total: total(vB) }
}

/** Which lamps are of normal brightness; the others must be off. */
function litLamps(vehicle: typeof before, position: string) {
  const { lamps } = vehicle.solve(pulled(position)).solved
  for (const { class: seen } of Object.values(lamps)) expect(['off', 'normal']).toContain(seen)
  return Object.keys(lamps).filter((id) => lamps[id].class === 'normal')
}

const heads = ['head-left', 'head-right'], parks = ['park-left', 'park-right'], tails = ['tail-left', 'tail-right']

test('on P the parking lamps go out with the headlamps', () => {
  expect(litLamps(before, '0')).toEqual([])
  expect(litLamps(before, '1')).toEqual([...parks, ...tails])
  expect(litLamps(before, '2')).toEqual([...heads, ...tails])
})

test('on R the parking lamps stay lit', () => {
  expect(litLamps(after, '0')).toEqual([])
  expect(litLamps(after, '1')).toEqual([...parks, ...tails])
  expect(litLamps(after, '2')).toEqual([...heads, ...parks, ...tails])
})

test('only the front wire differs between the editions', () => {
  const ids = (vehicle: typeof before) => [...vehicle.wiring.wires.keys()]
  expect(ids(before).filter((id) => !ids(after).includes(id))).toEqual(['w-front-p'])
  expect(ids(after).filter((id) => !ids(before).includes(id))).toEqual(['w-front-r'])
  expect(after.wiring.wires.get('w-front-r')?.role).toBe(before.wiring.wires.get('w-front-p')?.role)
})

test('volts and amps before are those by hand', () => {
  // Position 1: P carries 2 x 5 W, R carries 2 x 5 W.
  const parking = before.solve(pulled('1')).solved
  const [p, r] = feedByHand([10, 10]).amps
  expect(parking.wires['w-front-p'].amps).toBeCloseTo(p, 6)
  expect(parking.elements['switch.parking.P'].amps).toBeCloseTo(p, 6)
  expect(parking.elements['switch.parking.R'].amps).toBeCloseTo(r, 6)
  expect(parking.elements['switch.driving.R'].amps).toBe(0)
  expect(parking.voltages['switch:H']).toBe(0)
  // Position 2: H carries 2 x 45 W, R carries 2 x 5 W, P nothing.
  const driving = before.solve(pulled('2')).solved
  const byHand = feedByHand([90, 10])
  expect(driving.voltages['switch:B']).toBeCloseTo(byHand.vB, 6)
  expect(driving.voltages['switch:H']).toBeCloseTo(byHand.volts[0], 6)
  expect(driving.voltages['switch:R']).toBeCloseTo(byHand.volts[1], 6)
  expect(driving.voltages['switch:P']).toBe(0)
  expect(driving.wires['w-head'].amps).toBeCloseTo(byHand.amps[0], 6)
  expect(driving.wires['w-rear'].amps).toBeCloseTo(byHand.amps[1], 6)
  expect(driving.wires['w-battery'].amps).toBeCloseTo(byHand.total, 6)
})

test('R then carries 0.83 A more', () => {
  // 2 x 5 W / 12 V = 0.833 A. With the drop in battery and contact both lamps' volts are a little less, by the lamp law.
  const contactA = (vehicle: typeof before) => vehicle.solve(pulled('2')).solved.elements['switch.driving.R'].amps!
  const more = contactA(after) - contactA(before)
  expect(more).toBeCloseTo(2 * 5 / 12, 2)
  const beforeA = feedByHand([90, 10]).amps[1], afterA = feedByHand([90, 20]).amps[1]
  expect(contactA(before)).toBeCloseTo(beforeA, 6)
  expect(contactA(after)).toBeCloseTo(afterA, 6)
  expect(more).toBeCloseTo(afterA - beforeA, 6)
  // What R gives parts between the tail lamps and the moved wire.
  const { wires, voltages } = after.solve(pulled('2')).solved
  expect(wires['w-front-r'].amps).toBeCloseTo(afterA / 2, 6)
  expect(wires['w-rear'].amps).toBeCloseTo(afterA / 2, 6)
  expect(voltages['switch:B']! - voltages['switch:R']!).toBeCloseTo(CONTACT_OHM * afterA, 6)
})

test('the capped P is live without a load', () => {
  const { voltages, elements } = after.solve(pulled('1')).solved
  const [r] = feedByHand([20]).amps
  expect(elements['switch.parking.P'].amps).toBeCloseTo(0, 9)
  expect(voltages['switch:P']).toBeCloseTo(EMF_V - BATTERY_OHM * r, 6)
  expect(elements['switch.parking.R'].amps).toBeCloseTo(r, 6)
  expect(after.solve(pulled('2')).solved.voltages['switch:P']).toBeNull()
})

test('half the watts in front add half as much', () => {
  const halves = parks.map((part) => ({ kind: 'set' as const, part, param: ['powerW'], value: 2.5 }))
  const { elements } = after.solve(pulled('2'), { faults: halves }).solved
  const [, beforeA] = feedByHand([90, 10]).amps, [, afterA] = feedByHand([90, 15]).amps
  expect(elements['switch.driving.R'].amps).toBeCloseTo(afterA, 6)
  expect(afterA - beforeA).toBeCloseTo(2.5 * 2 / 12, 2)
})

test('P joined to H lights the headlamps with the parking lamps', () => {
  const joined = { kind: 'join' as const, a: 'switch:P', b: 'switch:H' }
  expect(before.solve(pulled('1'), { faults: [joined] }).solved.lamps['head-left'].class).toBe('normal')
  expect(before.solve(pulled('1')).solved.lamps['head-left'].class).toBe('off')
})

test('P joined to B never goes out', () => {
  const joined = { kind: 'join' as const, a: 'switch:P', b: 'switch:B' }
  expect(before.solve(pulled('0'), { faults: [joined] }).solved.lamps['park-left'].class).toBe('normal')
})
