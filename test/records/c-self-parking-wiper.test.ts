// Letter c: a self-parking wiper of two speeds, without and with a brake to earth where the blades park.
import { describe, expect, test } from 'vitest'
import { prepareCircuit, type Fault } from '../../src/circuit/index.ts'
import { partKinds } from '../../src/parts/index.ts'
import { openVehicle, readRecordFile } from './open-vehicle.ts'

const record = readRecordFile(new URL('./c-self-parking-wiper.json', import.meta.url))
const unbraked = openVehicle(record, { year: 1960 })
const braked = openVehicle(record, { year: 1970 })
const editions = [['without a brake', unbraked], ['with a brake', braked]] as const

const CAM = ['parked', 'rising', 'across', 'returning']
const turned = (position: string) => ({ controls: { 'switch.turn': position } })
const holdCam = (position: string): Fault => ({ kind: 'hold', part: 'wiper', state: '', value: position })
const stall: Fault = { kind: 'hold', part: 'wiper', state: 'shaft', value: 'still' }

const EMF_V = 12.6, BATTERY_OHM = 0.05, CAM_OHM = 0.01
/** A running motor takes rated amps in proportion to its volts: 12 V / 2.5 A and 12 V / 3.75 A. Stalled it is its winding. */
const SLOW_OHM = 12 / 2.5, FAST_OHM = 12 / 3.75, SLOW_STALLED_OHM = 1.2, FAST_STALLED_OHM = 0.8

describe.each(editions)('%s', (_, vehicle) => {
  test('each speed takes its own amps', () => {
    const slowA = EMF_V / (BATTERY_OHM + SLOW_OHM), fastA = EMF_V / (BATTERY_OHM + FAST_OHM)
    const slow = vehicle.solve(turned('slow')).solved, fast = vehicle.solve(turned('fast')).solved
    expect(slow.wires['w-low'].amps).toBeCloseTo(slowA, 6)
    expect(slow.wires['w-high'].amps).toBe(0)
    expect(slow.wires['w-battery'].amps).toBeCloseTo(slowA, 6)
    expect(fast.wires['w-high'].amps).toBeCloseTo(fastA, 6)
    expect(fast.wires['w-low'].amps).toBe(0)
    expect(fast.voltages['wiper:53b']).toBeCloseTo(fastA * FAST_OHM, 6)
    expect([slowA, fastA].map((amps) => amps.toFixed(2))).toEqual(['2.60', '3.88'])
  })

  test('stalled it takes its winding\'s amps', () => {
    const slow = vehicle.solve(turned('slow'), { faults: [stall] }).solved, fast = vehicle.solve(turned('fast'), { faults: [stall] }).solved
    expect(slow.wires['w-low'].amps).toBeCloseTo(EMF_V / (BATTERY_OHM + SLOW_STALLED_OHM), 6)
    expect(fast.wires['w-high'].amps).toBeCloseTo(EMF_V / (BATTERY_OHM + FAST_STALLED_OHM), 6)
    expect(slow.phases.wiper).toEqual({ rests: 'parked' })
  })

  test.each(['slow', 'fast'])('at %s the cam goes round', (speed) => {
    const { solved } = vehicle.solve(turned(speed))
    const { cycle, rate, solutions } = solved.phases.wiper
    expect(cycle).toEqual(CAM)
    expect(rate).toBe('wiping')
    // The amps are the same all the way: the cam's contact reaches no brush while the switch is on.
    expect(solutions?.map(({ wires }) => wires['w-cam'].amps)).toEqual([0, 0, 0, 0])
    expect(new Set(solutions?.map(({ wires }) => wires['w-switch'].amps)).size).toBe(1)
  })

  test.each(CAM)('switched off at %s it parks', (position) => {
    for (const speed of ['slow', 'fast']) {
      const from = vehicle.solve({ ...turned(speed), phases: { wiper: position } }).condition
      const { solved } = vehicle.solve({ ...turned('off'), phases: { wiper: position } }, { from })
      expect(solved.phases.wiper.rests).toBe('parked')
      expect(solved.states['wiper.shaft']).toBe('still')
      expect(solved.wires['w-battery'].amps).toBeCloseTo(0, 9)
    }
    // Found there after the battery was off, it parks as soon as it has volts again.
    expect(vehicle.solve({ ...turned('off'), phases: { wiper: position } }).solved.phases.wiper.rests).toBe('parked')
  })

  test('on its way home the cam feeds the slow brush', () => {
    const { wires, elements, voltages } = vehicle.solve(turned('off'), { faults: [holdCam('across')] }).solved
    const amps = EMF_V / (BATTERY_OHM + CAM_OHM + SLOW_OHM)
    expect(wires['w-cam'].amps).toBeCloseTo(amps, 6)
    expect(wires['w-park'].amps).toBeCloseTo(amps, 6)
    expect(wires['w-low'].amps).toBeCloseTo(amps, 6)
    expect(wires['w-switch'].amps).toBeCloseTo(0, 9)
    expect(elements['wiper.park'].volts).toBeCloseTo(amps * CAM_OHM, 6)
    expect(voltages['wiper:53']).toBeCloseTo(amps * SLOW_OHM, 6)
  })

  test('with a dead cam contact it stops where it is', () => {
    const faults: Fault[] = [{ kind: 'open', id: 'wiper.park' }]
    for (const position of CAM) {
      const { solved } = vehicle.solve({ ...turned('off'), phases: { wiper: position } }, { faults })
      expect(solved.phases.wiper.rests).toBe(position)
    }
  })

  test('half the rated amps halve the running amps', () => {
    const faults: Fault[] = [{ kind: 'set', part: 'wiper', param: ['brushes', 'low', 'ratedA'], value: 1.25 }]
    expect(vehicle.solve(turned('slow'), { faults }).solved.wires['w-low'].amps).toBeCloseTo(EMF_V / (BATTERY_OHM + 2 * SLOW_OHM), 6)
    expect(vehicle.solve(turned('fast'), { faults }).solved.wires['w-high'].amps).toBeCloseTo(EMF_V / (BATTERY_OHM + FAST_OHM), 6)
  })
})

/** Amps from the park terminal to earth at the moment the motor, from running slowly, reaches its park position with the switch off. */
function brakeAmps(vehicle: typeof braked): number {
  const { condition } = vehicle.solve(turned('slow'))
  const circuit = prepareCircuit(vehicle.wiring, partKinds)
  circuit.solveFixed({ ...turned('off'), engine: 'stopped', battery: 'full', phases: {} }, { ...condition, states: ['coasting'], phases: ['parked'] })
  return -circuit.elementAmps(circuit.network.elementOf.get('wiper.low')!)
}

test('the brake turns the coasting motor\'s EMF into amps', () => {
  // Running, E = U − I·R with U = 4.8 Ω·I, I = 12.6 / 4.85 A and R = 1.2 Ω. Parked, E drives amps round through the
  // winding and the cam's contact. Without a brake there is no way round.
  const amps = EMF_V / (BATTERY_OHM + SLOW_OHM)
  const emf = amps * (SLOW_OHM - SLOW_STALLED_OHM)
  expect(brakeAmps(braked)).toBeCloseTo(emf / (SLOW_STALLED_OHM + CAM_OHM), 6)
  expect(brakeAmps(unbraked)).toBeCloseTo(0, 9)
  expect(emf).toBeCloseTo(9.35, 2)
})

test('only the braked one earths its park terminal', () => {
  const contacts = (vehicle: typeof braked) => Object.keys(vehicle.solve(turned('off')).solved.elements).filter((id) => id.startsWith('wiper.'))
  expect(contacts(unbraked)).toEqual(['wiper.low', 'wiper.high', 'wiper.park'])
  expect(contacts(braked)).toEqual(['wiper.low', 'wiper.high', 'wiper.park', 'wiper.brake'])
  // With the switch on, the park terminal meets nothing but the brake: it is earthed in one edition, floating in the other.
  const parked = { ...turned('slow'), phases: { wiper: 'parked' } }
  expect(braked.solve(parked, { faults: [stall] }).solved.voltages['wiper:31b']).toBe(0)
  expect(unbraked.solve(parked, { faults: [stall] }).solved.voltages['wiper:31b']).toBeNull()
})
