import { expect, test } from 'vitest'
import { readAwg } from './awg.ts'
import { boatSizingRows } from './boat-sizing-rows.ts'
import { aircraftRows, necRows } from './conductor-rows.ts'
import { copper } from './copper-rows.ts'
import type { DropCircuit } from './drop-limit-rows.ts'
import { findDropLimit, starterCableLimit } from './drop-limits.ts'

// US Army TM 10-3930-671-24: 0.20 V for each 100 A of a starter circuit; 200 A may lose 0.40 V, which 2.0 milliohms do.
test('200 A may lose 0.40 V', () => {
  expect(starterCableLimit(200)).toMatchObject({ source: 'tm-10-3930-671-24', status: 'read' })
  expect(starterCableLimit(200).maxV).toBeCloseTo(0.4, 9)
  expect(200 * 0.0021).toBeGreaterThan(starterCableLimit(200).maxV)
  expect(starterCableLimit(100).maxV).toBeCloseTo(0.2, 9)
})

test('a current of nothing is refused', () => {
  expect(() => starterCableLimit(0)).toThrow(/more than 0 A/)
  expect(() => starterCableLimit(NaN)).toThrow(RangeError)
})

function limitV(systemV: number, circuit: DropCircuit): number {
  const found = findDropLimit(systemV, circuit)
  if (!found.ok) throw new Error(found.sentence)
  return found.maxV
}

// US Navy NAVEDTRA 14050 p. 94: a battery cable that drops 0.15 V fails at 6 V and passes at 12 V; a switch at 0.12 V fails.
test('a battery cable at 6 and 12 V', () => {
  expect(0.15).toBeGreaterThan(limitV(6, 'battery cable'))
  expect(0.15).toBeLessThan(limitV(12, 'battery cable'))
  for (const systemV of [6, 12]) expect(0.12).toBeGreaterThan(limitV(systemV, 'starter switch'))
})

// US Army TM 5-3820-256-24-4 p. 8: 0.25 V from the starter body to the battery's earth post at 160 A fails; 1.56 milliohms.
test('the earth side while cranking', () => {
  expect(0.25).toBeGreaterThan(limitV(12, 'starter earth'))
  expect(0.25 / 160).toBeCloseTo(0.00156, 5)
})

// US Army TM 5-3820-256-24-4 p. 9: 0.6 V to the solenoid terminal fails; so does the one switch that drops 0.45 V of it.
test('the starter control circuit', () => {
  expect(0.6).toBeGreaterThan(limitV(12, 'starter control'))
  expect(0.45).toBeGreaterThan(limitV(12, 'starter control step'))
})

// AC 43.13-1B par. 11-68 example 1, p. 11-26: 50 ft, 20 A, 28 V: No. 10 drops 1.26 V, No. 8 0.70 V: choose No. 8.
test('the smallest aircraft wire that serves', () => {
  const maxV = limitV(28, 'aircraft equipment')
  const dropsV = aircraftRows.map((row) => ({ awg: row.awg, dropV: (row.ohmPer1000Ft / 1000) * 50 * 20 }))
  expect(dropsV.find(({ awg }) => awg === '10')?.dropV).toBeCloseTo(1.26, 9)
  expect(dropsV.find(({ dropV }) => dropV <= maxV)).toMatchObject({ awg: '8', dropV: expect.closeTo(0.7, 9) })
})

test('the strictest limit comes first', () => {
  const found = findDropLimit(12, 'starter control')
  expect(found.ok && found.limits.map((row) => row.maxV)).toEqual([0.5, 1, 1.4])
  expect(limitV(24, 'charging lead')).toBe(0.8)
  expect(limitV(6, 'lamp earth')).toBe(0.05)
})

test('a limit nobody published is refused', () => {
  expect(findDropLimit(6, 'charging earth')).toMatchObject({ ok: false, expected: 'a class with a known limit at 6 V' })
  expect(findDropLimit(48, 'headlamp')).toMatchObject({ ok: false, nearest: [] })
})

// The printed table of a chandler's catalogue, 2022: K = 10.75, 0.36 V of 12 V. 56 of its 65 cells are what the formula gives;
// the other nine are one size larger. Sizes are the circular mils of NEC chapter 9 Table 8.
test('boat wire for 3 % at 12 V', () => {
  const nine = boatSizingRows.filter((row) => row.printedAwg !== row.formulaAwg)
  expect(nine).toHaveLength(9)
  for (const row of boatSizingRows) {
    const circularMils = (copper.boatMilFootOhm.value * row.currentA * row.roundTripFt) / 0.36
    expect(Math.abs(circularMils - row.formulaCircularMils)).toBeLessThan(1)
    const printed = necRows.find((nec) => readAwg(nec.awg) === readAwg(row.printedAwg))!
    expect(printed.circularMils, JSON.stringify(row)).toBeGreaterThanOrEqual(circularMils)
  }
})
