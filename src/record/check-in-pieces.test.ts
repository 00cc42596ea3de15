import { expect, test } from 'vitest'
import { fakeKinds } from '../../test/builders/fake-kinds.ts'
import { makeRecord } from '../../test/builders/record.ts'
import { readRecord } from './read-record.ts'

const entries = (count: number, entry: unknown) => Object.fromEntries(Array.from({ length: count }, (_, i) => [`w${i}`, entry]))
const read = (more: object) => readRecord(JSON.stringify({ ...makeRecord({}), ...more }), fakeKinds)

test('thousands of wrong entries are counted to the last', () => {
  const answer = read({ wires: entries(9999, 5) })
  expect(answer.ok ? 0 : answer.count).toBe(9999)
  expect(answer.ok ? [] : answer.problems.map(({ path }) => path.join('.')).slice(0, 2)).toEqual(['wires.w0', 'wires.w1'])
})

test('a wrong entry among thousands of sound ones is found once', () => {
  const places = { ...entries(12_000, { title: 'here' }), w7000: { title: 5 } }
  const answer = read({ places })
  expect(answer.ok ? [] : answer.problems.map(({ path }) => path.join('.'))).toEqual(['places.w7000.title'])
  expect(read({ places: entries(12_000, { title: 'here' }) }).ok).toBe(true)
})

test.each([
  ['wires', { wires: entries(20_001, 5) }, 'wires: this holds more than 20000 entries'],
  ['keys', entries(30_000, 5), 'the document: this holds more than 20000 entries'],
  ['a list', { layout: { order: Array.from({ length: 250_000 }, () => 5) } }, 'layout: this holds more than 200000 values'],
  ['one entry', { wires: { w1: { ends: Array.from({ length: 250_000 }, () => 5) } } }, 'wires.w1: this holds more than 200000 values'],
])('too many: %s', (_, more, sentence) => {
  const answer = read(more)
  expect(answer.ok ? [] : answer.problems.map((problem) => problem.sentence)).toEqual([expect.stringContaining(sentence)])
})

test('beyond ten thousand problems the count stops', () => {
  const answer = read({ wires: entries(15_000, { x: 5, y: 6 }) })
  expect(answer.ok ? 0 : answer.count).toBeGreaterThan(10_000)
  expect(answer.ok ? 0 : answer.count).toBeLessThan(45_000)
})
