// Scenario S8: what the warning lamp, an LED and a resistor beside it give the rotor of an alternator that stands.
import { expect, test } from 'vitest'
import { openVehicle, readRecordFile, type OpenVehicle } from '../records/open-vehicle.ts'

const record = readRecordFile(new URL('../records/g-alternator-warning-lamp.json', import.meta.url))
const bulb = openVehicle(record, { year: 1966 })
const led = openVehicle(record, { year: 1980 })
const ledAndResistor = openVehicle(record, { year: 1980, options: { resistor: true } })
const withDiode = openVehicle(record, { year: 1966, options: { diode: true } })

const keyOn = { controls: { 'key.turn': 'on' } }
/** The scenario's 12.6 V: a stiff battery with nothing else on it. */
const stiff = [{ kind: 'set', part: 'battery', param: ['ohm'], value: 0 }, { kind: 'open', id: 'loads' }] as const
const standing = (vehicle: OpenVehicle) => vehicle.solve(keyOn, { faults: stiff }).solved
const charges = (vehicle: OpenVehicle, more: Parameters<OpenVehicle['solve']>[1] = {}) =>
  vehicle.solve({ ...keyOn, engine: 'idle' }, more).solved.voltages['battery:+']! > 13.5

test('the lamp gives 0.183 A', () => {
  const { elements, lamps } = standing(bulb)
  expect(Math.abs(elements['alternator.rotor'].amps! - 0.183)).toBeLessThan(0.001)
  expect(lamps.lamp.class).toBe('normal')
  expect(charges(bulb)).toBe(true)
})

test('an LED alone gives 0.02 A and is late or never', () => {
  expect(standing(led).elements['alternator.rotor'].amps).toBeCloseTo(0.02, 2)
  expect(charges(led)).toBe(false)
})

test('68 ohm carry 0.177 A and 2.1 W, plus the LED', () => {
  const { elements } = standing(ledAndResistor)
  const { volts, amps } = elements.beside
  // 12.6 V/(68 + 3.2) Ω is 0.177 A; the LED's own 0.02 A raises D+ by 0.06 V, which takes 1 mA from it.
  expect(Math.abs(amps! - 0.177)).toBeLessThan(0.002)
  expect(volts! * amps!).toBeCloseTo(2.1, 1)
  expect(elements['alternator.rotor'].amps! - amps!).toBeCloseTo(0.02, 2)
  expect(charges(ledAndResistor)).toBe(true)
})

test('a diode towards D+ lets the lamp work', () => {
  expect(standing(withDiode).lamps.lamp.class).toBe('normal')
  expect(charges(withDiode)).toBe(true)
})

test('reversed it keeps the lamp dark and nothing charges', () => {
  const reversed = { kind: 'swap', a: 'valve:anode', b: 'valve:cathode' } as const
  expect(withDiode.solve(keyOn, { faults: [...stiff, reversed] }).solved.lamps.lamp.class).toBe('off')
  expect(charges(withDiode, { faults: [reversed] })).toBe(false)
})
