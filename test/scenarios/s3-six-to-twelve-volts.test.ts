// Scenario S3: the same wires with 6 V and with 12 V bulbs of equal watts, and a 6 V heater left in a 12 V vehicle.
import { describe, expect, test } from 'vitest'
import { reversePolarity } from '../builders/reverse-polarity.ts'
import { openVehicle, readRecordFile, type OpenVehicle } from '../records/open-vehicle.ts'

const asMade = readRecordFile(new URL('./s3-six-to-twelve-volts.json', import.meta.url))

describe.each([['positive', asMade, -1], ['negative', reversePolarity(asMade), 1]] as const)('%s earth', (_, record, live) => {
  const six = openVehicle(record, {})
  const twelve = openVehicle(record, { options: { 'twelve-volts': true } })
  const dropper = openVehicle(record, { options: { 'twelve-volts': true, 'dropper': true } })

  const headsOf = (vehicle: OpenVehicle) => vehicle.solve({ controls: { 'switch.pull': 'head' } }).solved
  const heaterOf = (vehicle: OpenVehicle) => vehicle.solve({ controls: { 'fan.turn': 'on' } }).solved.elements

  test('on 6 V the headlamps get 6.11 V and 71 %', () => {
    const { lamps, wires } = headsOf(six)
    for (const side of ['head-left', 'head-right']) {
      expect(Math.abs(lamps[side].volts - 6.11)).toBeLessThan(0.01)
      expect(Math.abs(100 * lamps[side].light - 71)).toBeLessThan(1)
    }
    expect(Math.abs(Math.abs(wires['w-head'].amps!) - 9.8)).toBeLessThan(0.1)
  })

  test('on 12 V the same wires leave 13.39 V and 97 %', () => {
    const { lamps, wires } = headsOf(twelve)
    for (const side of ['head-left', 'head-right']) {
      expect(Math.abs(lamps[side].volts - 13.39)).toBeLessThan(0.01)
      expect(Math.abs(100 * lamps[side].light - 97)).toBeLessThan(1)
    }
    expect(Math.abs(Math.abs(wires['w-head'].amps!) - 5.2)).toBeLessThan(0.1)
  })

  test('live has the sign of the unearthed post', () => {
    expect(headsOf(six).voltages['switch:H']).toBeCloseTo(live * 6.9, 2)
    expect(headsOf(twelve).voltages['switch:H']).toBeCloseTo(live * 13.8, 2)
    expect(Math.sign(headsOf(six).wires['w-head'].amps!)).toBe(live)
  })

  test('the 6 V heater would draw 9.2 A', () => {
    // 6 V 4 A is 1.5 Ω; 6.9 V and 13.8 V over it.
    expect(heaterOf(six).heater.volts! / heaterOf(six).heater.amps!).toBeCloseTo(1.5, 6)
    expect(Math.abs(heaterOf(six).heater.amps!)).toBeCloseTo(4.6, 2)
    expect(Math.abs(heaterOf(twelve).heater.amps!)).toBeCloseTo(9.2, 2)
  })

  test('a dropper of 1.95 ohm leaves it 6.0 V and burns 31 W', () => {
    const { heater, dropping } = heaterOf(dropper)
    expect(Math.abs(heater.volts!)).toBeCloseTo(6.0, 2)
    expect(Math.abs(dropping.volts! * dropping.amps! - 31)).toBeLessThan(0.5)
  })

  test('the gauge takes 0.15 A at its 6 V alone', () => {
    expect(Math.abs(six.solve().solved.elements.gauge.amps!)).toBeCloseTo(0.15 * 6.9 / 6, 4)
    expect(Math.abs(twelve.solve().solved.elements.gauge.amps!)).toBeCloseTo(0.15 * 13.8 / 6, 4)
  })
})
