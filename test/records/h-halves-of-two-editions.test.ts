// Letter h: a connector whose halves belong to different looms and editions.
import { expect, test } from 'vitest'
import { findZero, lampAmps } from './by-hand.ts'
import { openVehicle, readRecordFile, type OpenVehicle } from './open-vehicle.ts'

const record = readRecordFile(new URL('./h-halves-of-two-editions.json', import.meta.url))
const early = openVehicle(record, { year: 1959 })
const between = openVehicle(record, { year: 1961 })
const late = openVehicle(record, { year: 1965 })
const lightsAndBrake = { controls: { 'switches.lights': 'on', 'switches.brake': 'on' } }

interface Branch { readonly powerW: number; readonly ohm: number }
/** Feed, joint of the way and lead of the rear loom, one after the other. */
const tailBranch: Branch = { powerW: 5, ohm: 0.2 + 0.05 + 0.1 }
const stopBranch: Branch = { powerW: 21, ohm: 0.1 + 0.05 + 0.1 }
const reversingBranch: Branch = { powerW: 21, ohm: 0.15 + 0.05 + 0.1 }
/** All currents go through the battery, and back through the joint of way 3 and the earth wire. */
const sharedOhm = (joint: number) => 0.02 + joint + 0.06

/** By hand: the volts U that the shared ohms leave for the branches, each of which takes I with V + R·I(V) = U. */
function byHand(branches: readonly Branch[], jointOhm = 0.05): number[] {
  const amps = (at: number) => branches.map(({ powerW, ohm }) => {
    const lampV = findZero((v) => v + ohm * lampAmps(v, 12, powerW) - at, 0, at)
    return lampAmps(lampV, 12, powerW)
  })
  const left = findZero((u) => u + sharedOhm(jointOhm) * sum(amps(u)) - 12.6, 0, 12.6)
  return amps(left)
}
const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0)

/** Amps through a pair of ways that meet, from side a to side b, out of the volts on both. */
function jointAmps(vehicle: OpenVehicle, setting: typeof lightsAndBrake, mating: string): number {
  const { joins: [a, b], ohm } = vehicle.wiring.matings.get(mating)!
  const { voltages } = vehicle.solve(setting).solved
  return (voltages[a]! - voltages[b]!) / Number(ohm)
}

test('three ways meet three ways', () => {
  expect([...early.wiring.matings.values()].map(({ joins }) => joins.join(' '))).toEqual([
    'front-3:1 back-3:A', 'front-3:2 back-3:B', 'front-3:3 back-3:C',
  ])
  expect(early.wiring.unmatched).toEqual([])
})

test('the fourth way meets nothing before 1963', () => {
  expect(between.wiring.matings.size).toBe(3)
  expect(between.wiring.unmatched).toEqual([
    { half: 'front-4', title: 'Rear connector', way: '4', wires: ['w-reverse'], why: expect.stringContaining('back-3') },
    { half: 'tow-main', title: 'Tow bar connector', way: 'L', wires: ['w-tow'], why: expect.stringContaining('absent'), isAlone: true },
  ])
})

test('from 1963 only the absent half is left', () => {
  expect([...late.wiring.matings.keys()]).toEqual(['c-rear.1', 'c-rear.2', 'c-rear.3', 'c-rear.4'])
  expect(late.wiring.unmatched.map(({ half, way }) => `${half}:${way}`)).toEqual(['tow-main:L'])
})

test('an earlier rear loom leaves a way over', () => {
  const mixed = openVehicle(record, { year: 1965, exceptions: [{ item: 'rear-late', asOf: { year: 1959 } }] })
  expect([...mixed.wiring.looms.keys()]).toEqual(['main-late', 'rear-early'])
  expect(mixed.wiring.unmatched.map(({ half, way, wires }) => [half, way, ...wires])).toEqual([
    ['front-4', '4', 'w-reverse'], ['tow-main', 'L', 'w-tow'],
  ])
  const { lamps } = mixed.solve({ controls: { ...lightsAndBrake.controls, 'switches.gear': 'reverse' } }).solved
  expect(lamps.reversing.class).toBe('off')
  expect(lamps.stop.class).toBe('normal')
})

test('the joints carry what the lamps take', () => {
  const [tailA, stopA] = byHand([tailBranch, stopBranch])
  for (const vehicle of [early, between, late]) {
    expect(jointAmps(vehicle, lightsAndBrake, 'c-rear.1')).toBeCloseTo(tailA, 6)
    expect(jointAmps(vehicle, lightsAndBrake, 'c-rear.2')).toBeCloseTo(stopA, 6)
    // The return comes back from side b to side a.
    expect(jointAmps(vehicle, lightsAndBrake, 'c-rear.3')).toBeCloseTo(-(tailA + stopA), 6)
  }
  const { wires } = early.solve(lightsAndBrake).solved
  expect(wires['w-tail-early'].amps).toBeCloseTo(tailA, 6)
  expect(wires['r-tail-early'].amps).toBeCloseTo(tailA, 6)
  expect(wires['w-earth-early'].amps).toBeCloseTo(tailA + stopA, 6)
  // 0.42 + 1.74 A through 0.05 Ω: a tenth of a volt in the joint of the return.
  expect(0.05 * (tailA + stopA)).toBeCloseTo(0.108, 2)
})

test('the reversing lamp lights only with both halves', () => {
  const reverse = { controls: { ...lightsAndBrake.controls, 'switches.gear': 'reverse' } }
  const [tailA, stopA, reversingA] = byHand([tailBranch, stopBranch, reversingBranch])
  const { wires, lamps } = late.solve(reverse).solved
  expect(wires['w-reverse'].amps).toBeCloseTo(reversingA, 6)
  expect(wires['r-reverse'].amps).toBeCloseTo(reversingA, 6)
  expect(wires['w-earth-late'].amps).toBeCloseTo(tailA + stopA + reversingA, 6)
  expect(lamps.reversing.class).toBe('normal')
  // Between the two years the same wire is live up to the empty way, and carries nothing.
  const { solved } = between.solve(reverse)
  expect(solved.wires['w-reverse'].amps).toBeCloseTo(0, 9)
  expect(solved.voltages['front-4:4']).toBeCloseTo(solved.voltages['switches:B']!, 9)
  expect(solved.wires['w-tow'].amps).toBeCloseTo(0, 9)
})

test('a corroded way dims every lamp behind it', () => {
  const { wires } = early.solve(lightsAndBrake, { faults: [{ kind: 'ohms', id: 'c-rear.3', ohm: 0.5 }] }).solved
  const [tailA, stopA] = byHand([tailBranch, stopBranch], 0.05 + 0.5)
  expect(wires['w-tail-early'].amps).toBeCloseTo(tailA, 6)
  expect(wires['w-stop-early'].amps).toBeCloseTo(stopA, 6)
})

test('an open way darkens its lamp alone', () => {
  const { lamps, wires } = early.solve(lightsAndBrake, { faults: [{ kind: 'open', id: 'c-rear.2' }] }).solved
  expect(lamps.stop.class).toBe('off')
  expect(wires['w-tail-early'].amps).toBeCloseTo(byHand([tailBranch])[0], 6)
})

test('half the watts change the current of the joint', () => {
  const { voltages } = early.solve(lightsAndBrake, { faults: [{ kind: 'set', part: 'stop', param: ['powerW'], value: 10.5 }] }).solved
  const [, stopA] = byHand([tailBranch, { ...stopBranch, powerW: 10.5 }])
  expect((voltages['front-3:2']! - voltages['back-3:B']!) / 0.05).toBeCloseTo(stopA, 6)
})
