import fc from 'fast-check'
import { expect, test } from 'vitest'
import { fakeKinds } from '../../test/builders/fake-kinds.ts'
import { sampleRecord } from '../../test/builders/sample-record.ts'
import { makeRecord, part } from '../../test/builders/record.ts'
import { isObject, type Json } from './path.ts'
import { readRecord } from './read-record.ts'
import type { WiringRecord } from './schema.ts'
import { writeRecord } from './write-record.ts'

test('the text has the order of the schema and of the ids', () => {
  const { wires, supply } = sampleRecord()
  const record = { ...makeRecord({ parts: [part('b10', 'battery'), part('b2', 'battery', { b: 1, a: 2 })] }), supply, wires: { w10: wires!.w10, w2: wires!.w1 } }
  const lines = writeRecord(record as WiringRecord).split('\n').filter((line) => /^ {0,6}"/.test(line)).map((line) => line.trim().split('"')[1])
  expect(lines).toEqual([
    'format', 'version', 'id', 'title', 'supply', 'early', 'systemV', 'earth', 'fits', 'late', 'systemV', 'earth', 'fits',
    'parts', 'b2', 'kind', 'title', 'params', 'b10', 'kind', 'title',
    'wires', 'w2', 'ends', 'sizeMm2', 'colour', 'loom', 'lengthMm', 'w10', 'ends', 'copperDiameterMm', 'colour', 'loom', 'runs',
  ])
})

test('save then load is the identity', () => {
  expect(readRecord(writeRecord(sampleRecord()), fakeKinds)).toEqual({ ok: true, record: sampleRecord() })
})

test('empty maps are left out, but not those that a part kind gives a meaning', () => {
  const record = makeRecord({ parts: [part('r', 'relay', { windings: {} }, { terminals: {} })], splices: {}, layout: { paths: {} } })
  const read = readRecord(writeRecord(record), fakeKinds)
  expect(read).toEqual({ ok: true, record: makeRecord({ parts: [part('r', 'relay', { windings: {} })] }) })
})

test('the order of keys in memory changes no byte', () => {
  const text = writeRecord(sampleRecord())
  fc.assert(fc.property(fc.infiniteStream(fc.nat(1000)), (numbers) => {
    const shuffled = shuffleKeys(sampleRecord() as unknown as Json, () => numbers.next().value ?? 0) as unknown as WiringRecord
    expect(writeRecord(shuffled)).toBe(text)
  }))
})

test('any text in any field comes back', () => {
  fc.assert(fc.property(fc.string({ unit: 'binary', maxLength: 50 }), fc.json({ maxDepth: 3 }).filter((json) => !/__|[a-z](Of|String|Property|Enumerable|uctor)/.test(json)), (about, json) => {
    const record: WiringRecord = { ...sampleRecord(), about, claims: { c: { about: ['title'], how: 'seen', says: JSON.parse(json.replaceAll('-0', '0')) } } }
    expect(readRecord(writeRecord(record), fakeKinds)).toEqual({ ok: true, record })
  }))
})

function shuffleKeys(value: Json, next: () => number): Json {
  if (Array.isArray(value)) return value.map((entry: Json) => shuffleKeys(entry, next))
  if (!isObject(value)) return value
  const keyed = Object.entries(value).map(([key, entry]) => ({ key, entry: shuffleKeys(entry, next), order: next() }))
  return Object.fromEntries(keyed.sort((a, b) => a.order - b.order).map(({ key, entry }) => [key, entry]))
}
