import { expect, test } from 'vitest'
import { expectLawful } from '../../test/builders/expect-lawful.ts'
import { fakeKinds } from '../../test/builders/fake-kinds.ts'
import { sampleRecord } from '../../test/builders/sample-record.ts'
import { acceptClaim, listClaimedFacts, listClaims } from './claims.ts'
import type { WiringRecord } from './schema.ts'

const record = sampleRecord()

test('sources are listed with whether they agree with the accepted value', () => {
  const { accepted, sayings, isDisputed } = listClaims(record, ['wires', 'w1', 'sizeMm2'])
  expect([accepted, isDisputed, sayings.map(({ id, says, agrees }) => [id, says, agrees])]).toEqual([2.5, true, [['cl1', 4, false], ['cl2', 2.5, true]]])
})

test('a fact of which nobody says anything has no sayings', () => {
  expect(listClaims(record, ['wires', 'w1', 'lengthMm'])).toEqual({ path: ['wires', 'w1', 'lengthMm'], accepted: 2400, sayings: [], isDisputed: false })
})

test('every fact that is claimed is listed once', () => {
  expect(listClaimedFacts(record).map(({ path, sayings }) => [path.join('.'), sayings.length])).toEqual([['wires.w1.sizeMm2', 2]])
})

test('accepting a claim is a lawful edit and keeps every claim', () => {
  const edit = acceptClaim(record, 'cl1')
  expect(edit).toEqual({ kind: 'set', path: ['wires', 'w1', 'sizeMm2'], from: 2.5, to: 4 })
  const applied = expectLawful(record, edit!, fakeKinds)
  expect(applied.ok && applied.record.claims).toEqual(record.claims)
  expect(acceptClaim(record, 'cl2')).toBeUndefined()
})

test('a claim that there is none takes the value away', () => {
  const claimed: WiringRecord = { ...record, claims: { c: { about: ['wires', 'w1', 'lengthMm'], says: null, how: 'seen' }, d: { about: ['wires', 'w3', 'lengthMm'], says: 9, how: 'seen' } } }
  expect(acceptClaim(claimed, 'c')).toEqual({ kind: 'remove', path: ['wires', 'w1', 'lengthMm'] })
  expect(acceptClaim(claimed, 'd')).toEqual({ kind: 'put', path: ['wires', 'w3', 'lengthMm'], value: 9 })
  expect(() => acceptClaim(claimed, 'e')).toThrow('no claim e in record test')
})
