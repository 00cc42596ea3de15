import { expect, test } from 'vitest'
import { cableRows } from './cable-rows.ts'
import { findCable } from './cables.ts'
import { nameKey } from './refusal.ts'

test('a cable is found by any of its names', () => {
  for (const row of cableRows) {
    for (const name of [row.id, ...row.names]) expect(findCable(name), name).toEqual({ ok: true, ...row })
  }
})

test('no two cables share a name', () => {
  const keys = cableRows.flatMap((row) => [...new Set([row.id, ...row.names].map(nameKey))])
  expect(new Set(keys).size).toBe(keys.length)
})

test('old rubber bears less heat than PVC', () => {
  expect(findCable('VIR')).toMatchObject({ maxC: 60, status: 'from memory' })
  expect(findCable('flry-b')).toMatchObject({ maxC: 105, status: 'read' })
})

test('an unknown cable is refused with neighbours', () => {
  expect(findCable('FLRYB ')).toMatchObject({ ok: true, id: 'thin-pvc' })
  expect(findCable('GXT')).toMatchObject({ ok: false, nearest: ['GPT', 'GXL', 'SXL'] })
})
