import { expect, test } from 'vitest'
import { findContradiction, withoutRepeats } from './find-contradiction.ts'
import type { Fault } from './solved.ts'

const open = (id: string): Fault => ({ kind: 'open', id })
const ohms = (id: string, ohm: number): Fault => ({ kind: 'ohms', id, ohm })
const set = (...[value, ...param]: [number, ...string[]]): Fault => ({ kind: 'set', part: 'lamp', param, value })
const hold = (state: string, value: string): Fault => ({ kind: 'hold', part: 'box', state, value })

test('ends swapped the other way round are the same fault', () => {
  const swap: Fault = { kind: 'swap', a: 'lamp:in', b: 'body' }
  expect(withoutRepeats([swap, ohms('w1', 2), { kind: 'swap', a: 'body', b: 'lamp:in' }, ohms('w1', 2)])).toEqual([swap, ohms('w1', 2)])
})

test.each([
  [open('w1'), ohms('w1', 2)], [ohms('w1.1', 2), open('w1')], [open('lamp'), ohms('lamp.dip', 2)], [ohms('w1', 2), ohms('w1', 3)],
  [set(5, 'powerW'), set(6, 'powerW')], [hold('cutout', 'open'), hold('cutout', 'closed')],
])('%j and %j cannot both be', (...both) => {
  expect(findContradiction(both)).toEqual(both)
})

test.each([
  [open('w1'), ohms('w10', 2)], [open('w1'), open('w1.1')], [ohms('w1.1', 2), ohms('w1.2', 2)], [ohms('w1', 2), ohms('w1', 2)],
  [set(5, 'powerW'), set(6, 'filaments', 'dip', 'powerW')], [hold('cutout', 'open'), hold('field', 'closed')],
  [open('w1'), { kind: 'join', a: 'lamp:in', b: 'body' } as Fault],
])('%j and %j can', (...both) => {
  expect(findContradiction(both)).toBe(null)
})
