import fc from 'fast-check'
import { expect, test } from 'vitest'
import { expectLawful } from '../../test/builders/expect-lawful.ts'
import { fakeKinds } from '../../test/builders/fake-kinds.ts'
import { sampleRecord } from '../../test/builders/sample-record.ts'
import { mustApplyEdit, type Edit } from './edit.ts'
import { editsToRemove } from './remove-item.ts'
import { valueAt, type Json, type Path } from './path.ts'

function refusalOf(edit: Edit | readonly Edit[]): string {
  const applied = expectLawful(sampleRecord(), edit, fakeKinds)
  return applied.ok ? '' : applied.refusal.sentence
}

const at = (path: string): Path => path.split('.')

test.each<[string, Edit | Edit[]]>([
  ['a set fact', { kind: 'set', path: at('wires.w1.lengthMm'), from: 2400, to: 'unknown' }],
  ['a new fact', { kind: 'put', path: at('wires.w3.lengthMm'), value: 300 }],
  ['a fact taken away', { kind: 'remove', path: at('wires.w1.lengthMm') }],
  ['a new part', { kind: 'put', path: at('parts.aerial'), value: { title: 'x', kind: 'lamp', terminals: {} } }],
  ['a parameter where there were none', { kind: 'put', path: at('parts.battery.terminals.+.title'), value: 'plus' }],
  ['the last splice with its wires', [
    { kind: 'remove', path: at('wires.w2') }, { kind: 'remove', path: at('wires.w3') }, { kind: 'remove', path: at('wires.w13') },
    { kind: 'remove', path: at('splices.s1') },
  ]],
  ['the last parameter', { kind: 'remove', path: at('parts.battery.params.capacityAh') }],
  ['a row of contacts', { kind: 'put', path: at('parts.switch.params.rows.a'), value: { when: { turn: ['head'] }, joins: ['30', '56b'] } }],
  ['an entry in a list', { kind: 'put', path: at('layout.order.1'), value: 'tail' }],
  ['an entry out of a list', { kind: 'remove', path: at('duties.d1.may.0') }],
  ['one end of a wire', { kind: 'set', path: at('wires.w3.ends.0.at'), from: 's1', to: 'block' }],
  ['a whole colour', { kind: 'set', path: at('wires.w1.colour'), from: { letters: 'R', base: 'red' }, to: 'bare' }],
  ['a colour letter by letter', { kind: 'put', path: at('wires.w11.colour.base'), value: 'white' }],
  ['the whole layout', { kind: 'remove', path: at('layout') }],
])('%s applies and is taken back', (_name, edit) => {
  expect(refusalOf(edit)).toBe('')
})

test.each<[string, Edit, RegExp]>([
  ['put over something', { kind: 'put', path: at('wires.w1.lengthMm'), value: 1 }, /^wires\.w1\.lengthMm: something is there already/],
  ['remove nothing', { kind: 'remove', path: at('wires.w99') }, /nothing is there to remove/],
  ['set nothing', { kind: 'set', path: at('wires.w3.lengthMm'), from: 1, to: 2 }, /nothing is there to set; put it/],
  ['set what has changed', { kind: 'set', path: at('wires.w1.lengthMm'), from: 2300, to: 2 }, /should be 2300, but has become 2400/],
  ['a part that wires end at', { kind: 'remove', path: at('parts.tail') }, /^the record would be wrong: .*there is no part or connector half tail/],
  ['a wrong value', { kind: 'set', path: at('wires.w1.lengthMm'), from: 2400, to: 'long' }, /expected a number from 0/],
  ['a misspelt field', { kind: 'put', path: at('wires.w1.lenghtMm'), value: 3 }, /the nearest is lengthMm/],
  ['put into nothing', { kind: 'put', path: at('wires.w99.lengthMm'), value: 3 }, /nothing is at wires\.w99 to put it in/],
  ['put into a number', { kind: 'put', path: at('wires.w1.lengthMm.x'), value: 3 }, /holds nothing of that name/],
  ['an empty map', { kind: 'put', path: at('parts.tow.terminals'), value: {} }, /an empty map says nothing/],
  ['a second size', { kind: 'put', path: at('wires.w1.sizeAwg'), value: '14' }, /a wire has one size/],
  ['no path', { kind: 'remove', path: [] }, /the whole record cannot be edited/],
  ['an inherited name', { kind: 'put', path: at('parts.__proto__'), value: { kind: 'lamp', title: '' } }, /__proto__ cannot be used/],
  ['an inherited name inside', { kind: 'put', path: at('claims.x'), value: { about: ['title'], how: 'seen', says: { constructor: 1 } } }, /constructor cannot be used/],
])('%s is refused', (_name, edit, why) => {
  expect(refusalOf(edit)).toMatch(why)
})

test('an item goes with the claims about it and comes back with them', () => {
  const edits = editsToRemove(sampleRecord(), 'w1')
  expect(edits.map(({ path }) => path.join('.'))).toEqual(['claims.cl1', 'claims.cl2', 'wires.w1'])
  expect(refusalOf(edits)).toBe('')
  expect(refusalOf({ kind: 'remove', path: at('wires.w1') })).toMatch(/claims\.cl1\.about\.1/)
  expect(() => editsToRemove(sampleRecord(), 'w99')).toThrow('nothing has the id w99')
})

test('too deep a value is refused', () => {
  const deep = JSON.parse(`${'['.repeat(98)}${']'.repeat(98)}`) as Json
  expect(refusalOf({ kind: 'put', path: at('claims.x'), value: { about: ['title'], how: 'seen', says: deep } })).toMatch(/deeper than 100 levels/)
})

test('a refused edit that must apply throws', () => {
  expect(() => mustApplyEdit(sampleRecord(), { kind: 'remove', path: ['wires', 'w99'] }, fakeKinds)).toThrow(/refused in record test: wires\.w99/)
})

test('any edit at any path keeps the laws', () => {
  const record = sampleRecord()
  const paths = listPaths(record as unknown as Json, [])
  const anyPath = fc.tuple(fc.constantFrom(...paths), fc.constantFrom<string[]>([], ['x'], ['0'], ['length'])).map(([path, more]) => [...path, ...more])
  const value = fc.oneof(fc.constantFrom(...paths.map((path) => valueAt(record, path) as Json)), fc.json({ maxDepth: 2 }).map((text) => JSON.parse(text) as Json))
  const edit = fc.tuple(fc.constantFrom('put', 'remove', 'set'), anyPath, value).map(([kind, path, to]): Edit =>
    kind === 'put' ? { kind, path, value: to } : kind === 'remove' ? { kind, path } : { kind: 'set', path, from: valueAt(record, path) ?? null, to })
  fc.assert(fc.property(edit, (one) => { expectLawful(record, one, fakeKinds) }), { numRuns: 400 })
})

function listPaths(value: Json, path: Path): Path[] {
  const inner = typeof value === 'object' && value !== null ? Object.entries(value).flatMap(([key, entry]) => listPaths(entry as Json, [...path, key])) : []
  return path.length === 0 ? inner : [path, ...inner]
}
