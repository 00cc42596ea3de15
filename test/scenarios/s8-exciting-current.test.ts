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
/** What begins the charge at idle. */
const EXCITING_A = 0.1
const charges = (vehicle: OpenVehicle, more: Parameters<OpenVehicle['solve']>[1] = {}, engine: 'idle' | 'cruise' = 'idle') =>
  vehicle.solve({ ...keyOn, engine }, more).solved.voltages['battery:+']! > 13.5

test('the lamp gives 0.183 A', () => {
  const { elements, lamps, wires, voltages } = standing(bulb)
  expect(Math.abs(elements['alternator.rotor'].amps! - 0.183)).toBeLessThan(0.001)
  expect(Math.abs(wires['w-exciting'].amps! - 0.183)).toBeLessThan(0.001)
  // 0.183 A through 3.2 Ω lift D+ to 0.59 V; the lamp has the rest of 12.6 V, all but its rated volts.
  expect(voltages['alternator:D+']).toBeCloseTo(0.59, 1)
  expect(lamps.lamp.volts).toBeCloseTo(12, 1)
  expect(Math.abs(lamps.lamp.light - 1)).toBeLessThan(0.02)
  expect(lamps.lamp.class).toBe('normal')
  expect(charges(bulb)).toBe(true)
})

test('an LED alone gives 0.02 A and is late or never', () => {
  expect(standing(led).elements['alternator.rotor'].amps).toBeCloseTo(0.02, 2)
  expect(charges(led)).toBe(false)
  expect(charges(led, {}, 'cruise')).toBe(true)
})

test('68 ohm carry 0.177 A and 2.1 W, plus the LED', () => {
  const { elements } = standing(ledAndResistor)
  const { volts, amps } = elements.beside
  // 12.6 V/(68 + 3.2) Ω is 0.177 A; the LED's own 0.02 A raises D+ by 0.06 V, which takes 1 mA from it.
  expect(Math.abs(amps! - 0.177)).toBeLessThan(0.002)
  expect(volts! * amps!).toBeCloseTo(2.1, 1)
  expect(elements['alternator.rotor'].amps! - amps!).toBeCloseTo(0.02, 2)
  expect(elements['alternator.rotor'].amps).toBeGreaterThan(EXCITING_A)
  expect(charges(ledAndResistor)).toBe(true)
})

test('a diode towards D+ lets the lamp work', () => {
  const { lamps, elements } = standing(withDiode)
  expect(lamps.lamp.class).toBe('normal')
  // Its 0.7 V leave the lamp some 11.3 V: 0.183 A x (11.3/12)^0.55 = 0.177 A.
  expect(Math.abs(elements['alternator.rotor'].amps! - 0.177)).toBeLessThan(0.002)
  expect(charges(withDiode)).toBe(true)
})

test('reversed it keeps the lamp dark and nothing charges', () => {
  const reversed = { kind: 'swap', a: 'valve:anode', b: 'valve:cathode' } as const
  const { lamps, elements } = withDiode.solve(keyOn, { faults: [...stiff, reversed] }).solved
  expect(lamps.lamp.class).toBe('off')
  expect(lamps.lamp.light).toBe(0)
  expect(Math.abs(elements['alternator.rotor'].amps!)).toBeLessThan(1e-6)
  expect(charges(withDiode, { faults: [reversed] })).toBe(false)
})
