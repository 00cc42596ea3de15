// Letter j: a terminal that exists only in some years, and a wire to it that is stated for too many.
import { expect, test } from 'vitest'
import { partKinds } from '../../src/parts/index.ts'
import { resolveVehicle, type Conflict, type Fits, type WiringRecord } from '../../src/record/index.ts'
import { findZero, lampAmps } from './by-hand.ts'
import { openVehicle, readRecordFile, readRecordText } from './open-vehicle.ts'

const record = readRecordFile(new URL('./j-terminal-of-some-years.json', import.meta.url))
const on = { controls: { 'switch.pull': 'on' } }
const years = (from?: number, to?: number): Fits => [{ years: { ...from !== undefined && { from }, ...to !== undefined && { to } } }]

/** The same record after a change to a copy of it, read again from its text. */
function changed(change: (copy: { [key: string]: any }) => void): WiringRecord { // any: the copy is taken apart as plain JSON
  const copy = structuredClone(record) as { [key: string]: any } // any: as above
  change(copy)
  return readRecordText(JSON.stringify(copy))
}

function conflictsIn(of: WiringRecord, year: number): readonly Conflict[] {
  const resolved = resolveVehicle(of, { year }, partKinds)
  return resolved.ok ? [] : resolved.conflicts
}

/** Volts of two lamps behind one resistance, each with its own wire: U = V + R·I(V), and the point before them likewise. */
function twoLamps(sharedOhm: number, frontOhm: number, tailOhm: number, tailW = 10) {
  const front = (v: number) => lampAmps(v, 12, 5), tail = (v: number) => lampAmps(v, 12, tailW)
  const behind = (point: number) => ({
    frontV: findZero((v) => v + frontOhm * front(v) - point, 0, point),
    tailV: findZero((v) => v + tailOhm * tail(v) - point, 0, point),
  })
  const amps = (point: number) => { const { frontV, tailV } = behind(point); return front(frontV) + tail(tailV) }
  const point = findZero((p) => p + sharedOhm * amps(p) - 12.6, 0, 12.6)
  const { frontV, tailV } = behind(point)
  return { frontV, tailV, frontA: front(frontV), tailA: tail(tailV) }
}

test('the terminal is there from its first year', () => {
  expect([...openVehicle(record, { year: 1955 }).wiring.parts.get('switch')!.terminals.keys()]).toEqual(['B', 'P'])
  expect([...openVehicle(record, { year: 1959 }).wiring.parts.get('switch')!.terminals.keys()]).toEqual(['B', 'P', 'R'])
})

test('a wire to it in an earlier year is a conflict', () => {
  for (const year of [1957, 1958]) {
    const conflicts = conflictsIn(record, year)
    expect(conflicts).toHaveLength(1)
    expect(conflicts[0]).toMatchObject({ at: ['wires', 'w-tail', 'ends', '0', 'at'], what: 'not in this vehicle' })
    expect(conflicts[0].fits).toEqual([
      { of: 'wires.w-tail', fits: years(1957) }, { of: 'parts.switch.terminals.R', fits: years(1959) },
    ])
    expect(conflicts[0].sentence).toContain('switch:R')
    expect(conflicts[0].sentence).toContain('1957 and later')
    expect(conflicts[0].sentence).toContain('1959 and later')
  }
  for (const year of [1955, 1956, 1959, 1970]) expect(conflictsIn(record, year)).toEqual([])
})

test('its own years are enough, whatever the row says', () => {
  // The contact row is left without a condition; the terminal alone says from when it is there.
  const bare = changed((copy) => { delete copy.parts.switch.params.rows.rear.fits })
  expect(conflictsIn(bare, 1957)).toMatchObject([{ fits: [{ of: 'wires.w-tail' }, { of: 'parts.switch.terminals.R', fits: years(1959) }] }])
})

test('the corrected years resolve for every vehicle', () => {
  const corrected = changed((copy) => {
    copy.wires['w-tail-early'].fits = years(undefined, 1958)
    copy.wires['w-tail'].fits = years(1959)
  })
  for (const year of [1955, 1957, 1958, 1959]) expect(conflictsIn(corrected, year)).toEqual([])
  expect(openVehicle(corrected, { year: 1957 }).solve(on).solved.wires['w-tail-early'].amps).toBeGreaterThan(0.8)
})

test('before it both lamps share one contact', () => {
  // Battery 0.02 Ω and contact B-P 0.01 Ω carry both; then 0.1 Ω to the front and 0.5 Ω to the tail.
  const byHand = twoLamps(0.03, 0.1, 0.5)
  const { solved } = openVehicle(record, { year: 1955 }).solve(on)
  expect(solved.lamps.front.volts).toBeCloseTo(byHand.frontV, 6)
  expect(solved.lamps.tail.volts).toBeCloseTo(byHand.tailV, 6)
  expect(solved.elements['switch.parking'].amps).toBeCloseTo(byHand.frontA + byHand.tailA, 6)
  expect(solved.elements['switch.rear']).toBeUndefined()
})

test('with it each lamp has its own contact', () => {
  // Only the battery's 0.02 Ω is shared: 0.01 + 0.1 Ω to the front, 0.02 + 0.5 Ω to the tail.
  const byHand = twoLamps(0.02, 0.11, 0.52)
  const { solved } = openVehicle(record, { year: 1960 }).solve(on)
  expect(solved.lamps.front.volts).toBeCloseTo(byHand.frontV, 6)
  expect(solved.lamps.tail.volts).toBeCloseTo(byHand.tailV, 6)
  expect(solved.elements['switch.parking'].amps).toBeCloseTo(byHand.frontA, 6)
  expect(solved.elements['switch.rear'].amps).toBeCloseTo(byHand.tailA, 6)
  const half = openVehicle(record, { year: 1960 }).solve(on, { faults: [{ kind: 'set', part: 'tail', param: ['powerW'], value: 5 }] }).solved
  expect(half.elements['switch.rear'].amps).toBeCloseTo(twoLamps(0.02, 0.11, 0.52, 5).tailA, 6)
})
