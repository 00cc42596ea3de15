// Scenario S2: a pull switch that moves the feed from the parking lamps to the headlamps, and the wire moved to keep both.
import { expect, test } from 'vitest'
import { reversePolarity } from '../builders/reverse-polarity.ts'
import { openVehicle, readRecordFile, type OpenVehicle } from '../records/open-vehicle.ts'

const record = readRecordFile(new URL('./s2-parking-lamps.json', import.meta.url))
const asMade = openVehicle(record, {})
const moved = openVehicle(record, { options: { 'front-on-r': true } })
const pulled = (position: string) => ({ controls: { 'switch.pull': position } })
const heads = ['head-left', 'head-right'], parks = ['park-left', 'park-right'], tails = ['tail-left', 'tail-right']

/** Every lamp is either off or as bright as it should be; these are the bright ones. */
function litLamps(vehicle: OpenVehicle, position: string, more: Parameters<OpenVehicle['solve']>[1] = {}) {
  const { lamps } = vehicle.solve(pulled(position), more).solved
  for (const { class: seen, percent, light } of Object.values(lamps)) {
    expect(['off', 'normal']).toContain(seen)
    // 12 V or none; some tenths of a millivolt are the battery's least resistance.
    expect(Math.abs(percent - (seen === 'off' ? 0 : 100))).toBeLessThan(0.1)
    expect(Math.abs(light - (seen === 'off' ? 0 : 1))).toBeLessThan(0.01)
  }
  return Object.keys(lamps).filter((id) => lamps[id].class === 'normal').sort()
}

test('the parking lamps go out with the headlamps on', () => {
  expect(litLamps(asMade, '0')).toEqual([])
  expect(litLamps(asMade, '1')).toEqual([...parks, ...tails])
  expect(litLamps(asMade, '2')).toEqual([...heads, ...tails])
})

test('moved to R they stay lit in both positions', () => {
  expect(litLamps(moved, '0')).toEqual([])
  expect(litLamps(moved, '1')).toEqual([...parks, ...tails])
  expect(litLamps(moved, '2')).toEqual([...heads, ...parks, ...tails])
})

test('R then carries 0.83 A more', () => {
  const throughR = (vehicle: OpenVehicle, position: string) => {
    const { elements } = vehicle.solve(pulled(position)).solved
    return elements[position === '1' ? 'switch.first.R' : 'switch.second.R'].amps!
  }
  // 2 x 5 W at 12 V more: 0.83 A, on top of the 0.83 A of the tail lamps.
  for (const position of ['1', '2']) {
    expect(throughR(asMade, position)).toBeCloseTo(0.83, 2)
    expect(throughR(moved, position) - throughR(asMade, position)).toBeCloseTo(0.83, 2)
  }
  expect(moved.solve(pulled('1')).solved.elements['switch.first.P'].amps).toBeCloseTo(0, 9)
})

test('earthed by the other post it does the same', () => {
  const positive = reversePolarity(record)
  const positiveMoved = openVehicle(positive, { options: { 'front-on-r': true } })
  for (const position of ['0', '1', '2']) {
    expect(litLamps(openVehicle(positive, {}), position)).toEqual(litLamps(asMade, position))
    expect(litLamps(positiveMoved, position)).toEqual(litLamps(moved, position))
  }
  const { voltages, elements } = positiveMoved.solve(pulled('2')).solved
  expect(voltages['switch:B']).toBeCloseTo(-12, 2)
  expect(elements['switch.second.R'].amps).toBeCloseTo(-1.67, 2)
})

test('P joined to H lights the headlamps too early', () => {
  expect(litLamps(asMade, '1', { faults: [{ kind: 'join', a: 'switch:P', b: 'switch:H' }] })).toEqual([...heads, ...parks, ...tails])
})

test('P joined to B leaves the parking lamps on for ever', () => {
  expect(litLamps(asMade, '0', { faults: [{ kind: 'join', a: 'switch:P', b: 'switch:B' }] })).toEqual(parks)
})
