import { expect, test } from 'vitest'
import { faultPriors, faultRows } from './fault-rows.ts'
import { findFault } from './faults.ts'

test('a fault by its id or its name', () => {
  expect(findFault('conn-resistance')).toMatchObject({ ok: true, model: { kind: 'series resistance', ohm: [0.05, 5] }, intermittent: true })
  expect(findFault('Blown fuse')).toMatchObject({ ok: true, id: 'blown-fuse' })
  expect(findFault('blown-fuze')).toMatchObject({ ok: false, nearest: expect.arrayContaining(['blown-fuse']) })
})

test('ids are used once', () => {
  expect(new Set(faultRows.map((row) => row.id)).size).toBe(faultRows.length)
})

test('shares are the weights in per cent', () => {
  const whole = faultRows.reduce((sum, row) => sum + row.weight, 0)
  for (const row of faultRows) expect(Math.abs((100 * row.weight) / whole - row.sharePct), row.id).toBeLessThanOrEqual(0.051)
})

test('spans go from least to most', () => {
  for (const { id, model } of faultRows) {
    for (const span of Object.values(model)) if (typeof span !== 'string') expect(span[0], id).toBeLessThanOrEqual(span[1])
  }
})

// The prior that a third of faults are in connections, earths, holders and clips is near what the rows add up to.
test('connections make up a third', () => {
  const connections = ['conn-resistance', 'earth-resistance', 'earth-open-backfeed', 'engine-earth', 'battery-terminal', 'fuse-holder', 'lamp-holder']
  const share = faultRows.filter((row) => connections.includes(row.id)).reduce((sum, row) => sum + row.sharePct, 0) / 100
  expect(Math.abs(share - faultPriors.connectionShare.value)).toBeLessThan(0.03)
})
