import { expect, test } from 'vitest'
import { coldFilament, lampExponents } from './lamp-rows.ts'
import { partDefaults, type PartDefault } from './part-default-rows.ts'
import { dropLimitRows } from './drop-limit-rows.ts'
import { regulation } from './regulation-rows.ts'
import { ignition } from './starting-rows.ts'

test('every default lies in its own band', () => {
  for (const row of Object.values<PartDefault>(partDefaults)) {
    expect(row.value, row.item).toBeGreaterThanOrEqual(row.low ?? row.value)
    expect(row.value, row.item).toBeLessThanOrEqual(row.high ?? row.value)
  }
})

test('defaults agree with the tables they repeat', () => {
  expect(partDefaults.lampCurrentExponent.value).toBe(lampExponents.current.value)
  expect(partDefaults.lampFluxExponent.value).toBe(lampExponents.flux.value)
  expect(partDefaults.lampColdRatio.high).toBe(coldFilament.hotOverCold.value)
  expect([partDefaults.plainCoil12Ohm.low, partDefaults.plainCoil12Ohm.high]).toEqual([ignition.plainCoil12V.minOhm, ignition.plainCoil12V.maxOhm])
  expect([partDefaults.coil6Ohm.low, partDefaults.coil6Ohm.high]).toEqual([ignition.coil6V.minOhm, ignition.coil6V.maxOhm])
  expect(12 / partDefaults.plainCoil12Ohm.value).toBe(ignition.pointsClosed12V.minA)
  expect(6 / partDefaults.coil6Ohm.value).toBe(ignition.pointsClosed6V.minA)
})

// US Army TM 5-3820-233-35/1: 14.3 V charging passes, 15.2 and 13.7 V fail; cut-out 12.8 V passes, 13.6 V fails.
test('regulator and cut-out bands at 12 V', () => {
  const isIn = (band: { minV: number; maxV: number }, volts: number) => volts >= band.minV && volts <= band.maxV
  expect([14.3, 15.2, 13.7].map((volts) => isIn(regulation.dynamo12V, volts))).toEqual([true, false, false])
  expect([12.8, 13.6].map((volts) => isIn(regulation.cutOutClose12V, volts))).toEqual([true, false])
})

// US Navy NAVEDTRA 14050 p. 94: a battery cable may drop 0.1 V at 6 V and 0.2 V at 12 V.
test('battery cable limits while cranking', () => {
  const limits = dropLimitRows.filter((row) => row.path === 'each battery cable while cranking')
  expect(limits.map((row) => [row.systemsV, row.maxV])).toEqual([[[6], 0.1], [[12], 0.2]])
})
