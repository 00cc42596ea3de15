// Letter b: a starter solenoid that must let go when the key is released, and one rewound with its pull winding the
// other way round; its second contact by-passes the ballast while it cranks.
import { expect, test } from 'vitest'
import type { Fault } from '../../src/circuit/index.ts'
import { openVehicle, readRecordFile } from './open-vehicle.ts'

const record = readRecordFile(new URL('./b-starter-solenoid.json', import.meta.url))
const rightWay = openVehicle(record, { year: 1962 })
const reversed = openVehicle(record, { year: 1970 })

const start = { controls: { 'key.turn': 'start' }, engine: 'cranking' } as const
const released = { controls: { 'key.turn': 'run' }, engine: 'cranking' } as const
const running = { controls: { 'key.turn': 'run' }, engine: 'idle' } as const
const holdArmature = (value: string): Fault => ({ kind: 'hold', part: 'solenoid', state: 'armature', value })
const openBypass: Fault = { kind: 'open', id: 'solenoid.bypass' }

const EMF_V = 12.6, BATTERY_OHM = 0.01
const PULL_OHM = 1.2, HOLD_OHM = 0.8, TURNS = 200, COIL_OHM = 1.5, BALLAST_OHM = 1.5
/** Starter: 0.03 Ω while it stands, 12 V / 150 A while it turns. */
const STALLED_OHM = 0.03, TURNING_OHM = 12 / 150

/** By hand: volts at the battery with these resistances side by side on it, U = E / (1 + R·Σ1/Ri). */
const busVolts = (...ohms: readonly number[]) => EMF_V / (1 + BATTERY_OHM * ohms.reduce((sum, ohm) => sum + 1 / ohm, 0))

/** Ampere-turns of the solenoid as solved, with the turns of the edition. */
function ampereTurns(vehicle: typeof rightWay, setting: typeof start | typeof released, armature: string, pullTurns: number): number {
  const { elements } = vehicle.solve(setting, { faults: [holdArmature(armature)] }).solved
  return pullTurns * elements['solenoid.pull'].amps! + TURNS * elements['solenoid.hold'].amps!
}

test('both windings pull it in', () => {
  // Before the contacts make: hold winding 0.8 Ω to earth, pull winding to earth through the standing starter.
  const pullPath = PULL_OHM + STALLED_OHM
  const bus = busVolts(HOLD_OHM, pullPath, BALLAST_OHM + COIL_OHM)
  const holdA = bus / HOLD_OHM, pullA = bus / pullPath
  // 200 x 15.4 A + 200 x 10.0 A = 5077: well above 900. The other way round 200 x (15.4 − 10.0) = 1075: just above it.
  expect(ampereTurns(rightWay, start, 'released', TURNS)).toBeCloseTo(TURNS * (holdA + pullA), 4)
  expect(ampereTurns(reversed, start, 'released', -TURNS)).toBeCloseTo(TURNS * (holdA - pullA), 4)
  expect(TURNS * (holdA + pullA)).toBeCloseTo(5077, 0)
  expect(TURNS * (holdA - pullA)).toBeCloseTo(1075, 0)
  // The starter takes only the pull winding's amps: 0.30 V, too little to turn it.
  const { elements, states } = rightWay.solve(start, { faults: [holdArmature('released')] }).solved
  expect(elements.starter.volts).toBeCloseTo(pullA * STALLED_OHM, 6)
  expect(states['starter.shaft']).toBe('still')
})

test('while it cranks the hold winding holds alone', () => {
  // Contacts made: 50 and M are both on the battery, so the pull winding has no volts.
  const bus = busVolts(TURNING_OHM, HOLD_OHM, COIL_OHM)
  for (const vehicle of [rightWay, reversed]) {
    const { solved } = vehicle.solve(start)
    expect(solved.outcome).toBe('rests')
    expect(solved.states).toMatchObject({ 'solenoid.armature': 'pulled', 'starter.shaft': 'running' })
    expect(solved.voltages['solenoid:30']).toBeCloseTo(bus, 6)
    expect(solved.elements['solenoid.pull'].amps).toBeCloseTo(0, 9)
    expect(solved.elements['solenoid.hold'].amps).toBeCloseTo(bus / HOLD_OHM, 6)
    expect(solved.wires['w-starter'].amps).toBeCloseTo(bus / TURNING_OHM, 5)
  }
  expect(bus).toBeCloseTo(11.01, 2)
  expect(TURNS * bus / HOLD_OHM).toBeGreaterThan(500)
})

// Key released, contacts still made: M feeds backwards through the pull winding to 50 and on through the hold winding to
// earth, one current through both. Ballast and by-pass lie side by side, so the coil is straight on the battery.
const seriesBus = busVolts(TURNING_OHM, PULL_OHM + HOLD_OHM, COIL_OHM)
const seriesA = seriesBus / (PULL_OHM + HOLD_OHM)

test('the same current cancels in equal windings', () => {
  const { elements } = rightWay.solve(released, { faults: [holdArmature('pulled')] }).solved
  expect(elements['solenoid.pull'].amps).toBeCloseTo(-seriesA, 6)
  expect(elements['solenoid.hold'].amps).toBeCloseTo(seriesA, 6)
  // 200 x −5.54 A + 200 x 5.54 A = 0; with the pull winding's turns reversed −200 x −5.54 A + 200 x 5.54 A = 2217.
  expect(ampereTurns(rightWay, released, 'pulled', TURNS)).toBeCloseTo(0, 6)
  expect(ampereTurns(reversed, released, 'pulled', -TURNS)).toBeCloseTo(2 * TURNS * seriesA, 4)
  expect(2 * TURNS * seriesA).toBeCloseTo(2217, 0)
})

test('released from cranking it lets go', () => {
  for (const setting of [released, running]) {
    const { solved } = rightWay.solve(setting, { from: rightWay.solve(start).condition })
    expect(solved.outcome).toBe('rests')
    expect(solved.states).toMatchObject({ 'solenoid.armature': 'released', 'starter.shaft': 'still' })
    expect(solved.wires['w-starter'].amps).toBeCloseTo(0, 9)
    expect(solved.standing).toEqual([])
  }
})

test('with the pull winding reversed it holds', () => {
  const { solved } = reversed.solve(released, { from: reversed.solve(start).condition })
  expect(solved.outcome).toBe('rests')
  expect(solved.states).toMatchObject({ 'solenoid.armature': 'pulled', 'starter.shaft': 'running' })
  expect(solved.voltages['solenoid:50']).toBeCloseTo(seriesA * HOLD_OHM, 6)
  expect(solved.wires['w-starter'].amps).toBeCloseTo(seriesBus / TURNING_OHM, 5)
  expect(solved.elements['solenoid.main'].amps).toBeCloseTo(seriesBus / TURNING_OHM + seriesA, 5)
  // Switched off it goes on in the same way, its contacts feeding both the windings and the coil.
  const off = reversed.solve({ engine: 'cranking' }, { from: reversed.solve(start).condition }).solved
  expect(off.states['solenoid.armature']).toBe('pulled')
  expect(off.elements['coil.primary'].volts).toBeCloseTo(seriesBus, 6)
})

test('from rest the reversed one only could hold', () => {
  const { solved } = reversed.solve(released)
  expect(solved.states['solenoid.armature']).toBe('released')
  expect(solved.standing.map(({ name, states }) => [name, states['solenoid.armature']])).toEqual([['holds once made', 'pulled']])
})

test('half the pull turns no longer cancel', () => {
  // 200 x 5.54 A − 100 x 5.54 A = 554: above the release at 500, so it holds; at 600 it would let go.
  expect((TURNS - TURNS / 2) * seriesA).toBeCloseTo(554, 0)
  const half: Fault = { kind: 'set', part: 'solenoid', param: ['windings', 'pull', 'turns'], value: 100 }
  const releaseAt = (value: number): Fault => ({ kind: 'set', part: 'solenoid', param: ['releaseAt'], value })
  const afterRelease = (faults: Fault[]) => rightWay.solve(released, { faults, from: rightWay.solve(start, { faults }).condition }).solved.states['solenoid.armature']
  expect(afterRelease([half])).toBe('pulled')
  expect(afterRelease([half, releaseAt(550)])).toBe('pulled')
  expect(afterRelease([half, releaseAt(560)])).toBe('released')
})

test('a thick pull winding reversed chatters', () => {
  // At 0.4 Ω it outweighs the hold winding: 200 x (15.1 − 28.1) A = −2600 pulls it in against the hold winding. With the
  // contacts made only the hold winding's turns are left, and they point the other way.
  const bus = busVolts(HOLD_OHM, 0.4 + STALLED_OHM, BALLAST_OHM + COIL_OHM)
  const net = TURNS * (bus / HOLD_OHM - bus / (0.4 + STALLED_OHM))
  expect(net).toBeLessThan(-900)
  const thick: Fault = { kind: 'set', part: 'solenoid', param: ['windings', 'pull', 'ohm'], value: 0.4 }
  expect(reversed.solve(start, { faults: [thick] }).solved.outcome).toBe('chatters')
  expect(rightWay.solve(start, { faults: [thick] }).solved.outcome).toBe('rests')
})

test('the by-pass gives the coil full volts', () => {
  const coilV = (faults: Fault[]) => rightWay.solve(start, { faults }).solved.elements['coil.primary'].volts
  // Cranking with it: the coil is beside the starter. Without it: the coil has half, 1.5 Ω of 1.5 + 1.5.
  const withIt = busVolts(TURNING_OHM, HOLD_OHM, COIL_OHM)
  const without = busVolts(TURNING_OHM, HOLD_OHM, BALLAST_OHM + COIL_OHM) * COIL_OHM / (BALLAST_OHM + COIL_OHM)
  expect(coilV([])).toBeCloseTo(withIt, 6)
  expect(coilV([openBypass])).toBeCloseTo(without, 6)
  expect([withIt, without].map((volts) => volts.toFixed(2))).toEqual(['11.01', '5.52'])
})

test('while running the coil has half the volts', () => {
  const from = rightWay.solve(start).condition
  const byHand = busVolts(BALLAST_OHM + COIL_OHM) * COIL_OHM / (BALLAST_OHM + COIL_OHM)
  for (const faults of [[], [openBypass]]) {
    const { elements } = rightWay.solve(running, { faults, from }).solved
    expect(elements['coil.primary'].volts).toBeCloseTo(byHand, 6)
    expect(elements['coil.primary'].amps).toBeCloseTo(byHand / COIL_OHM, 6)
  }
  expect(byHand).toBeCloseTo(6.28, 2)
  // A solenoid that holds keeps the by-pass made: twice the amps for which the coil is meant.
  const held = reversed.solve(running, { from: reversed.solve(start).condition }).solved
  expect(held.elements['coil.primary'].volts).toBeCloseTo(seriesBus, 6)
  expect(held.elements.ballast.amps).toBeCloseTo(0, 9)
})

test('with the points open the coil takes nothing', () => {
  const { elements } = rightWay.solve({ controls: { 'key.turn': 'run' }, engine: 'stopped-open' }).solved
  expect(elements['coil.primary'].amps).toBe(0)
})
