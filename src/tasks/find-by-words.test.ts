import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { mustResolve } from '../../test/builders/record.ts'
import { makeSharedEarth } from '../../test/builders/small-records.ts'
import { partKinds } from '../parts/index.ts'
import type { WiringRecord } from '../record/index.ts'
import { findByWords } from './find-by-words.ts'

const shared = mustResolve(makeSharedEarth(), {}, partKinds)
const idsOf = (said: string) => findByWords(shared, said).map(({ pick: { kind, id } }) => `${kind} ${id}`)

test('a wire is found by its colours and the part at its end, in any order', () => {
  expect(idsOf('brown-blue at the fuse')).toEqual(['wire 1'])
  expect(idsOf('fuse brown blue')).toEqual(['wire 1'])
  expect(idsOf('green to the stop lamp')).toEqual(['wire 7'])
})

test('letters of the record and of the standard both find a wire', () => {
  expect(idsOf('GP')).toEqual(['wire 7'])
  expect(idsOf('gn/vt')).toEqual(['wire 7'])
})

test('kind, size, splice and connector are words too', () => {
  expect(idsOf('battery')[0]).toBe('part battery')
  expect(idsOf('44/0.30')).toEqual(['wire 1'])
  expect(idsOf('splice s1')).toEqual(['splice s1', 'wire 4', 'wire 5', 'wire 6'])
  expect(idsOf('wing connector')).toEqual(['splice c.1'])
})

test('what has the words in full comes first', () => {
  expect(idsOf('lamps')).toContain('part tail')
  expect(idsOf('1')[0]).toBe('wire 1')
})

test('no words find everything, and a word that nothing has finds nothing', () => {
  expect(idsOf('').length).toBe(shared.parts.size + shared.wires.size + shared.splices.size + shared.matings.size)
  expect(idsOf('brown at the moon')).toEqual([])
})

test('a wire of the demo vehicle is found by a place at which it ends', () => {
  const record = JSON.parse(readFileSync(join(import.meta.dirname, '../../examples/vehicles/tessarby-errand.json'), 'utf8')) as WiringRecord
  const wiring = mustResolve(record, { year: 1961 }, partKinds)
  const placed = [...wiring.parts.values()].find(({ place }) => place !== undefined)!
  expect(findByWords(wiring, wiring.places.get(placed.place!)!.title).map(({ pick }) => pick.id)).toContain(placed.id)
})
