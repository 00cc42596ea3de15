// Letter g: an alternator excited through its warning lamp; another bulb, an LED, a resistor and a diode in its place.
import { expect, test } from 'vitest'
import { diodeVolts, findZero, lampAmps } from './by-hand.ts'
import { openVehicle, readRecordFile, type OpenVehicle } from './open-vehicle.ts'

const record = readRecordFile(new URL('./g-alternator-warning-lamp.json', import.meta.url))
const bulb = openVehicle(record, { year: 1966 })
const otherBulb = openVehicle(record, { year: 1972 })
const led = openVehicle(record, { year: 1980 })
const ledAndResistor = openVehicle(record, { year: 1980, options: { resistor: true } })
const bulbAndDiode = openVehicle(record, { year: 1966, options: { diode: true } })
const keyOn = { controls: { 'key.turn': 'on' } }
const noBulb = { faults: [{ kind: 'open', id: 'lamp' }] } as const

// As the record states them.
const EMF_V = 12.6, BATTERY_OHM = 0.1, COUNTER_V = 6 * 2.25, LOADS_OHM = 16
const ROTOR_OHM = 3.2, SET_V = 14.2, RATED_V = 14, RATED_A = 35, CUT_IN_RPM = 1050, FULL_RPM = 6000, EXCITING_A = 0.1
const IDLE_RPM = 2 * 800
/** The built-in regulator's contact while it is closed, and a field diode's and a main diode's figures: of the kind, not of the record. */
const CLOSED_OHM = 0.05
const FIELD_DIODE = { forwardV: 1.5, ratedA: SET_V / ROTOR_OHM, emission: 3, ohm: 0.1 / (SET_V / ROTOR_OHM) }
const MAIN_DIODE = { forwardV: 1.5, ratedA: RATED_A, emission: 3, ohm: 0.1 / RATED_A }

/** By hand, engine stopped: V over the feed, through which I(V) goes on through the rotor's 3.25 Ω; post P = 12.6 − R0·(P/Rloads + I). */
function restByHand(feedAmps: (volts: number) => number) {
  const postV = (amps: number) => (EMF_V - BATTERY_OHM * amps) / (1 + BATTERY_OHM / LOADS_OHM)
  const feedV = findZero((v) => v + feedAmps(v) * (ROTOR_OHM + CLOSED_OHM) - postV(feedAmps(v)), 0, EMF_V)
  const amps = feedAmps(feedV)
  return { amps, feedV, dPlusV: amps * (ROTOR_OHM + CLOSED_OHM), postV: postV(amps) }
}
const bulbAmps = (powerW: number) => (volts: number) => lampAmps(volts, 12, powerW)
/** 2 V over the diode at 20 mA, the rest of 12 V over its series resistor of 500 Ω. */
const ledAmps = (volts: number) => findZero((i) => diodeVolts(i, { forwardV: 12, ratedA: 0.02, emission: 2, ohm: 500 }) - volts, 0, 1)

// EMF = E0·(n/n0)·((1 + s)·x/(x + s) + 0.004), x = If/If0, behind E0·(n/n0)/Is, Is = (rated + field amps)/(1.004 − n0/n1).
const E0 = RATED_V + 1.5, FIELD_A = RATED_V / ROTOR_OHM, MOST_A = (RATED_A + FIELD_A) / (1.004 - CUT_IN_RPM / FULL_RPM)
const emf = (s: number, amps: number, rpm: number) => E0 * rpm / CUT_IN_RPM * ((1 + s) * amps / (amps + s * FIELD_A) + 0.004)
const inside = (rpm: number) => E0 * rpm / CUT_IN_RPM / MOST_A

/**
 * How far the EMF stays above what the field circuit takes, at its least, on the way up: with I through the lamp and Id
 * through the field diodes, EMF(I + Id) − (I + Id)·Rrotor − Vdiode(Id) − Z·Id. Positive all the way: the field builds up.
 */
function headroom(s: number, lampA: number, rpm: number): number {
  const ids = Array.from({ length: 1000 }, (_, k) => 10 ** (-9 + 9 * k / 1000))
  return Math.min(...ids.map((id) => emf(s, lampA + id, rpm) - (lampA + id) * (ROTOR_OHM + CLOSED_OHM) - diodeVolts(id, FIELD_DIODE) - inside(rpm) * id))
}
/** s such that 0.10 A just lets the field build up at idle. */
const knee = findZero((s) => -headroom(s, EXCITING_A, IDLE_RPM), 0.02, 50)

/** By hand, charging with D+ held at 14.2 V: the field diodes carry If − Ilamp from the stator, the main diodes all the rest. */
function chargingByHand(rpm: number, powerW: number) {
  const lampA = (postV: number) => Math.sign(postV - SET_V) * lampAmps(Math.abs(postV - SET_V), 12, powerW)
  // The battery takes charge above 13.5 V; below that next to nothing: 0.01 S from its 12.6 V on.
  const taken = (postV: number) => postV / LOADS_OHM + 0.01 * (COUNTER_V - EMF_V) + (postV - COUNTER_V) / BATTERY_OHM + lampA(postV)
  const post = (statorV: number) => findZero((p) => p + diodeVolts(Math.max(0, taken(p)), MAIN_DIODE) - statorV, COUNTER_V, statorV)
  const at = (diodeA: number) => {
    const statorV = SET_V + diodeVolts(diodeA, FIELD_DIODE)
    const postV = post(statorV)
    return { postV, fieldA: diodeA + lampA(postV), outA: taken(postV), emfV: statorV + inside(rpm) * (diodeA + taken(postV)) }
  }
  return at(findZero((diodeA) => emf(knee, at(diodeA).fieldA, rpm) - at(diodeA).emfV, 0.05, FIELD_A))
}

const isCharging = (vehicle: OpenVehicle, engine: 'idle' | 'cruise' | number, faults: Parameters<OpenVehicle['solve']>[1] = {}) =>
  vehicle.solve({ ...keyOn, engine }, faults).solved.voltages['alternator:D+']! > 10

test('the lamp is lit at rest and excites the rotor', () => {
  const byHand = restByHand(bulbAmps(2.2))
  const { lamps, voltages, elements, standing } = bulb.solve(keyOn).solved
  expect(lamps.lamp.volts).toBeCloseTo(byHand.feedV, 5)
  expect(lamps.lamp.class).toBe('normal')
  expect(voltages['alternator:D+']).toBeCloseTo(byHand.dPlusV, 5)
  expect(voltages['battery:+']).toBeCloseTo(byHand.postV, 5)
  expect(elements['alternator.rotor'].amps).toBeCloseTo(byHand.amps, 6)
  expect(byHand.amps).toBeCloseTo(0.1826, 4)
  expect(standing).toEqual([])
})

test('excited at idle it charges and the lamp is out', () => {
  const byHand = chargingByHand(IDLE_RPM, 2.2)
  const { lamps, voltages, wires, standing } = bulb.solve({ ...keyOn, engine: 'idle' }).solved
  expect(voltages['alternator:D+']).toBeCloseTo(SET_V, 4)
  // Within 10 mV and 100 mA: how the EMF bends with the field shows there only by a few millivolts of a diode.
  expect(Math.abs(voltages['battery:+']! - byHand.postV)).toBeLessThan(0.01)
  expect(Math.abs(wires['w-output'].amps! - byHand.outA)).toBeLessThan(0.1)
  expect(Math.abs(lamps.lamp.volts - Math.abs(SET_V - byHand.postV))).toBeLessThan(0.01)
  expect(lamps.lamp.class).toBe('off')
  expect(standing).toEqual([])
})

test('without the bulb both states stand at idle', () => {
  const { voltages, wires, standing } = bulb.solve({ ...keyOn, engine: 'idle' }, noBulb).solved
  // Residual magnetism gives E0·(n/n0)·0.004 = 15.5 x 1600/1050 x 0.004 = 0.094 V, far below what two junctions let through.
  expect(voltages['alternator:D+']).toBeCloseTo(0, 3)
  expect(Math.abs(wires['w-output'].amps!)).toBeLessThan(1e-3)
  // The battery alone feeds the loads: 12.6 V x 16/16.1.
  expect(voltages['battery:+']).toBeCloseTo(12.6 * 16 / 16.1, 4)
  expect(standing.map(({ name }) => name)).toEqual(['holds once made'])
  const held = chargingByHand(IDLE_RPM, 1e-6)
  expect(standing[0].voltages['alternator:D+']).toBeCloseTo(SET_V, 4)
  expect(Math.abs(standing[0].voltages['battery:+']! - held.postV)).toBeLessThan(0.01)
})

test('once excited it holds without the bulb', () => {
  const running = bulb.solve({ ...keyOn, engine: 'idle' }).condition
  const after = bulb.solve({ ...keyOn, engine: 'idle' }, { ...noBulb, from: running })
  expect(after.solved.voltages['alternator:D+']).toBeCloseTo(SET_V, 4)
  expect(after.solved.standing.map(({ voltages }) => Math.round(voltages['alternator:D+']!))).toEqual([0])
  const stopped = bulb.solve(keyOn, { ...noBulb, from: after.condition })
  expect(stopped.solved.voltages['alternator:D+']).toBeCloseTo(0, 6)
  expect(stopped.solved.standing).toEqual([])
})

test('another bulb gives more exciting current', () => {
  const byHand = restByHand(bulbAmps(3))
  const { elements, lamps } = otherBulb.solve(keyOn).solved
  expect(elements['alternator.rotor'].amps).toBeCloseTo(byHand.amps, 6)
  expect(lamps.lamp.volts).toBeCloseTo(byHand.feedV, 5)
  expect(byHand.amps).toBeCloseTo(0.246, 3)
  expect(isCharging(otherBulb, 'idle')).toBe(true)
})

test('half the watts give half the current', () => {
  const { elements } = bulb.solve(keyOn, { faults: [{ kind: 'set', part: 'lamp', param: ['powerW'], value: 1.1 }] }).solved
  expect(elements['alternator.rotor'].amps).toBeCloseTo(restByHand(bulbAmps(1.1)).amps, 6)
  expect(elements['alternator.rotor'].amps).toBeLessThan(EXCITING_A)
})

test('less than its exciting current does not excite it', () => {
  const ofWatts = (value: number) => ({ faults: [{ kind: 'set', part: 'lamp', param: ['powerW'], value }] } as const)
  // At idle 0.10 A is needed: 1.3 W give 0.108 A, 1.1 W give 0.092 A.
  expect(isCharging(bulb, 'idle', ofWatts(1.3))).toBe(true)
  expect(isCharging(bulb, 'idle', ofWatts(1.1))).toBe(false)
  // The 0.18 A of 2.2 W are enough from about 590 rpm of the engine on.
  const beginsAt = findZero((rpm) => headroom(knee, restByHand(bulbAmps(2.2)).amps, rpm), 400, 4000) / 2
  expect(isCharging(bulb, 1.05 * beginsAt)).toBe(true)
  expect(isCharging(bulb, 0.95 * beginsAt)).toBe(false)
})

test('an LED alone lights and charges late', () => {
  const byHand = restByHand(ledAmps)
  const { lamps, elements } = led.solve(keyOn).solved
  expect(elements['alternator.rotor'].amps).toBeCloseTo(byHand.amps, 6)
  expect(byHand.amps).toBeCloseTo(0.0207, 3)
  expect(lamps.led.class).toBe('normal')
  expect(isCharging(led, 'idle')).toBe(false)
  expect(led.solve({ ...keyOn, engine: 'idle' }).solved.standing.map(({ name }) => name)).toEqual(['holds once made'])
  expect(isCharging(led, 'cruise')).toBe(true)
})

test('68 ohm beside the LED excite it at idle', () => {
  // Both hang between the post and D+: at volts V the resistor takes V/68 and the LED its own.
  const byHand = restByHand((volts) => volts / 68 + ledAmps(volts))
  const { elements } = ledAndResistor.solve(keyOn).solved
  expect(elements.beside.amps).toBeCloseTo(byHand.feedV / 68, 6)
  expect(elements.led.amps).toBeCloseTo(ledAmps(byHand.feedV), 6)
  expect(elements['alternator.rotor'].amps).toBeCloseTo(byHand.amps, 6)
  expect(isCharging(ledAndResistor, 'idle')).toBe(true)
  const { lamps } = ledAndResistor.solve({ ...keyOn, engine: 'idle' }).solved
  expect(lamps.led.class).toBe('off')
})

test('a diode towards D+ lets the lamp work', () => {
  const valve = { forwardV: 0.8, ratedA: 1, emission: 1.8, ohm: 0.05 }
  /** The bulb's share of V, the rest of which the diode keeps back at the same current. */
  const bulbShare = (volts: number) => findZero((u) => u + diodeVolts(lampAmps(u, 12, 2.2), valve) - volts, 0, volts)
  const byHand = restByHand((volts) => lampAmps(bulbShare(volts), 12, 2.2))
  const { elements, lamps } = bulbAndDiode.solve(keyOn).solved
  expect(elements['alternator.rotor'].amps).toBeCloseTo(byHand.amps, 6)
  expect(lamps.lamp.volts).toBeCloseTo(bulbShare(byHand.feedV), 5)
  expect(lamps.lamp.class).toBe('normal')
  expect(isCharging(bulbAndDiode, 'idle')).toBe(true)
  expect(bulbAndDiode.solve({ ...keyOn, engine: 'idle' }).solved.lamps.lamp.class).toBe('off')
})

test('a reversed diode keeps it dark and nothing charges', () => {
  const reversed = { faults: [{ kind: 'swap', a: 'valve:anode', b: 'valve:cathode' }] } as const
  expect(bulbAndDiode.solve(keyOn, reversed).solved.lamps.lamp.class).toBe('off')
  expect(isCharging(bulbAndDiode, 'idle', reversed)).toBe(false)
  expect(bulbAndDiode.solve({ ...keyOn, engine: 'idle' }, reversed).solved.lamps.lamp.class).toBe('off')
})
