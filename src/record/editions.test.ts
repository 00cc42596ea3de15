import { expect, test } from 'vitest'
import { makeRecord, part, years } from '../../test/builders/record.ts'
import { sampleRecord } from '../../test/builders/sample-record.ts'
import { listEditions } from './editions.ts'

test('years fall into spans at every border, those inside parameters too', () => {
  const { years: spans, options, markets } = listEditions(sampleRecord())
  expect(spans.map(({ from, to }) => [from, to])).toEqual([[undefined, 1954], [1955, 1957], [1958, 1960], [1961, undefined]])
  expect(spans[1].begins.map((path) => path.join('.'))).toEqual(['parts.switch.params.rows.head.fits.0'])
  expect(spans[3].ends.map((path) => path.join('.'))).toEqual(['supply.early.fits.0', 'parts.tail.paramSets.early.fits.0'])
  expect([options, markets]).toEqual([['towbar'], []])
})

test('serial borders are in the order of their series', () => {
  const lamp = (id: string, from?: string, to?: string) => part(id, 'lamp', {}, { fits: [{ serials: { series: 'c', from, to } }] })
  const record = makeRecord({ serials: { c: { title: 'c', prefixes: ['H', 'A'] } }, parts: [lamp('a', 'A 1'), lamp('b', 'H 20', 'A 1'), lamp('d', 'H 3'), lamp('e', 'A 1')] })
  expect(listEditions(record).serials.map(({ serial, side, at }) => [serial, side, at.length])).toEqual([['H 3', 'from', 1], ['H 20', 'from', 1], ['A 1', 'from', 2], ['A 1', 'to', 1]])
})

test('a record without conditions is one edition', () => {
  expect(listEditions(makeRecord({}))).toEqual({ years: [{ begins: [], ends: [] }], serials: [], markets: [], options: [] })
})

test('what a loom was made for is no border', () => {
  const looms = { l: { title: '', points: {}, branches: {}, madeFor: years(1950) } }
  expect(listEditions(makeRecord({ looms })).years).toHaveLength(1)
})
