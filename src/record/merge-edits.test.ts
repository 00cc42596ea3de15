import fc from 'fast-check'
import { expect, test } from 'vitest'
import { fakeKinds } from '../../test/builders/fake-kinds.ts'
import { sampleRecord } from '../../test/builders/sample-record.ts'
import { editsBetween } from './diff-records.ts'
import { applyEdits, mustApplyEdits, type Edit } from './edit.ts'
import type { Envelope } from './envelope.ts'
import { mergeEdits } from './merge-edits.ts'
import { valueAt, type Json, type Path } from './path.ts'
import { readRecord } from './read-record.ts'
import { writeRecord } from './write-record.ts'

const base = sampleRecord()
const at = (path: string): Path => path.split('.')
const set = (path: string, to: Json): Edit => ({ kind: 'set', path: at(path), from: valueAt(base, at(path)) as Json, to })
const put = (path: string, value: Json): Edit => ({ kind: 'put', path: at(path), value })
const remove = (path: string): Edit => ({ kind: 'remove', path: at(path) })
const from = (device: string, ...edits: Edit[]): Envelope => ({ device, sequence: 1, base: 'r1', edits })

/** Merges, having seen that the result reads, follows from its edits and does not depend on the order. */
function merge(...envelopes: Envelope[]) {
  const merged = mergeEdits(base, envelopes, fakeKinds)
  if (!merged.ok) throw new Error(JSON.stringify(merged.refusals))
  expect(mergeEdits(base, [...envelopes].reverse(), fakeKinds)).toEqual(merged)
  expect(readRecord(writeRecord(merged.record), fakeKinds)).toEqual({ ok: true, record: merged.record })
  expect(writeRecord(mustApplyEdits(base, merged.edits, fakeKinds))).toBe(writeRecord(merged.record))
  return merged
}

test('different facts merge', () => {
  const { record, undecided } = merge(from('a', set('wires.w1.lengthMm', 2500), put('places.bay', { title: 'Bay' })), from('b', set('wires.w1.loom', 'separate'), put('places.door', { title: 'Door' })))
  expect([record.wires!.w1.lengthMm, record.wires!.w1.loom, Object.keys(record.places!).sort(), undecided]).toEqual([2500, 'separate', ['bay', 'boot', 'dash', 'door'], []])
})

test('one fact set in two ways becomes two claims', () => {
  const { record, undecided } = merge({ ...from('a', set('wires.w1.lengthMm', 2500)), by: 'Kim', when: '2001-02-03' }, from('b', set('wires.w1.lengthMm', 2600)))
  expect(record.wires!.w1.lengthMm).toBe(2400)
  expect(undecided).toEqual([{ path: at('wires.w1.lengthMm'), claims: ['claim1-a-1', 'claim1-b-1'] }])
  expect(record.claims!['claim1-a-1']).toEqual({ about: at('wires.w1.lengthMm'), says: 2500, how: 'assumed', source: 'edit on device a', by: 'Kim', when: '2001-02-03' })
  expect(record.claims!['claim1-b-1'].says).toBe(2600)
})

test('one fact set twice alike is set', () => {
  const { record, undecided } = merge(from('a', set('wires.w1.lengthMm', 2500)), from('b', set('wires.w1.lengthMm', 2500)))
  expect([record.wires!.w1.lengthMm, undecided]).toEqual([2500, []])
})

test('an absent fact put in two ways stays absent', () => {
  const { record, undecided } = merge(from('a', put('wires.w3.lengthMm', 1)), from('b', put('wires.w3.lengthMm', 2)))
  expect([record.wires!.w3.lengthMm, undecided.length]).toEqual([undefined, 1])
})

test('the size of a wire is one fact however it is given', () => {
  const { record, undecided } = merge(from('a', set('wires.w1.sizeMm2', 4)), from('b', remove('wires.w1.sizeMm2'), put('wires.w1.sizeAwg', '12')))
  expect([record.wires!.w1.sizeMm2, record.wires!.w1.sizeAwg, undecided[0].claims.length]).toEqual([2.5, undefined, 3])
})

test('a removed item that another device changed stays', () => {
  const { record, undecided } = merge(from('a', remove('wires.w12')), from('b', put('wires.w12.lengthMm', 90)))
  expect(record.wires!.w12).toEqual(base.wires!.w12)
  expect(undecided[0].claims.map((id) => record.claims![id].says)).toEqual([null, 90])
})

test('a removed item that another device has come to need stays', () => {
  const { record, undecided } = merge(from('a', remove('fixings.f2'), remove('metals.block')), from('b', put('fixings.f9', { joins: ['tow:31', 'block'] }), set('title', 'New')))
  expect([Object.keys(record.metals!), record.title]).toEqual([['body', 'block'], 'New'])
  expect(undecided.map(({ path }) => path.join('.'))).toContain('metals.block')
})

test('later edits of one device count once, in their sequence', () => {
  const second: Envelope = { device: 'a', sequence: 2, base: 'r2', edits: [{ kind: 'set', path: ['title'], from: 'One', to: 'Two' }] }
  expect(merge(second, from('a', set('title', 'One')), second).record.title).toBe('Two')
})

test('edits that do not apply to the base are refused by device', () => {
  expect(mergeEdits(base, [from('a', remove('wires.w99'))], fakeKinds)).toMatchObject({ ok: false, refusals: [{ device: 'a', refusal: { sentence: /wires\.w99/ } }] })
})

test('the same number with other edits throws', () => {
  expect(() => mergeEdits(base, [from('a', set('title', 'One')), from('a', set('title', 'Two'))], fakeKinds)).toThrow(RangeError)
})

test('a difference is written as edits and undone by them', () => {
  const other = mustApplyEdits(base, [remove('layout'), put('parts.x', { kind: 'lamp', title: 'x' }), set('wires.w3.ends.0.at', 'body')], fakeKinds)
  expect(editsBetween(base, other).map(({ kind, path }) => `${kind} ${path.join('.')}`)).toEqual([
    'remove layout.order', 'remove layout.paths.tail', 'remove layout.photos.tail:L', 'put parts.x', 'set wires.w3.ends.0.at',
  ])
  expect(writeRecord(mustApplyEdits(other, editsBetween(other, base), fakeKinds))).toBe(writeRecord(base))
})

test('any two devices merge, in either order, and lose nothing', () => {
  const wires = Object.keys(base.wires!)
  const edit = fc.oneof(
    fc.constantFrom(...wires).map((id) => remove(`wires.${id}`)),
    fc.tuple(fc.constantFrom(...wires), fc.nat(3)).map(([id, length]) => put(`wires.${id}.note`, `n${length}`)),
    fc.nat(3).map((n) => set('title', `Title ${n}`)),
    fc.nat(3).map((n) => put('splices.s9', { note: `${n}` })),
    fc.nat(2).map((n) => put(`wires.w20`, { ends: [{ at: 's1' }, { at: n === 0 ? 's9' : 'body' }] })),
    fc.constantFrom(remove('splices.s1'), remove('claims.cl1'), remove('parts.tow'), remove('fixings.f2'), remove('metals.block'), remove('layout.order')),
    fc.constantFrom(set('wires.w1.colour', 'bare'), set('wires.w1.colour', { base: 'blue' }), put('wires.w3.lengthMm', 4), remove('wires.w1.lengthMm')),
  )
  const device = (name: string) => fc.array(edit, { maxLength: 6 }).map((edits) => from(name, ...keepApplying(edits)))
  fc.assert(fc.property(device('a'), device('b'), device('c'), (a, b, c) => {
    const { record, undecided } = merge(a, b, c)
    for (const { claims } of undecided) for (const id of claims) expect(record.claims).toHaveProperty(id)
  }), { numRuns: 200 })
})

/** Only those of the edits that apply one after the other. */
function keepApplying(edits: readonly Edit[]): Edit[] {
  const kept: Edit[] = []
  for (const edit of edits) if (applyEdits(base, [...kept, edit], fakeKinds).ok) kept.push(edit)
  return kept
}
