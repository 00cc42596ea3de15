import { expect, test } from 'vitest'
import { link, makeRecord, part, years, type RecordPlan } from '../../test/builders/record.ts'
import type { Fits, Vehicle } from '../record/index.ts'
import { checkEditions } from './check-editions.ts'

const supply = (from?: number, to?: number) => ({ systemV: 12, earth: 'negative', fits: years(from, to) }) as const
const lamp = (id: string, fits: Fits, role?: string) => part(id, 'lamp', {}, { fits, ...role !== undefined && { role } })

/** The editions of a record with a battery and what the plan adds: what sets each apart, and whether it has a wiring. */
function editionsOf(plan: RecordPlan, stated: Vehicle = {}) {
  const { parts = [], ...rest } = plan
  const { editions, ...others } = checkEditions(makeRecord({ ...rest, parts: [part('battery', 'battery'), ...parts] }), stated)
  return { ...others, editions: editions.map(({ span: { from, to }, variant, numbers, ok }) => [from, to, [variant, numbers].filter((word) => word !== '').join(', '), ok]) }
}

test('years before the first supply and after the last are outside the record', () => {
  const { editions, outside } = editionsOf({ supply: { a: supply(1951, 1957), b: supply(1958, 1964) } })
  expect(editions).toEqual([[1951, 1957, '', true], [1958, 1964, '', true]])
  expect(outside).toEqual([{ to: 1950 }, { from: 1965 }])
})

test('years without a supply between two are an edition without a wiring', () => {
  const { editions, outside } = editionsOf({ supply: { a: supply(undefined, 1957), b: supply(1960) } })
  expect(editions).toEqual([[undefined, 1957, '', true], [1958, 1959, '', false], [1960, undefined, '', true]])
  expect(outside).toEqual([])
})

test('a record whose supply is for no year has editions without a wiring', () => {
  expect(editionsOf({ supply: { a: { systemV: 12, earth: 'negative', fits: [{ with: ['x'], without: ['x'] }] } }, options: { x: { title: 'X' } } }).editions.map(([,,, ok]) => ok)).toEqual([false, false])
})

test('every market is checked without options and with each alone', () => {
  const plan: RecordPlan = {
    options: { fog: { title: 'Fog lamp' }, tow: { title: 'Tow bar', usual: true }, never: { title: 'Never asked for' } }, markets: { home: { title: 'Home' }, far: { title: 'Far' }, near: { title: 'Near' } },
    parts: [lamp('l1', [{ with: ['fog'], markets: ['far'] }]), lamp('l2', [{ with: ['tow'] }])],
  }
  const names = (stated: Vehicle) => editionsOf(plan, stated).editions.map(([,, name]) => name)
  expect(names({})).toEqual([
    'market home, no options', 'market home, with fog', 'market home, with tow', 'market far, no options', 'market far, with fog', 'market far, with tow',
  ])
  expect(names({ market: 'near', options: { tow: true } })).toEqual(['no options', 'with fog'])
  expect(names({ market: 'near', options: { tow: true, fog: false } })).toEqual([''])
})

test('a number stands for each span of numbers, and one that does not go with a year is passed over', () => {
  const numbers = (from?: string, to?: string): Fits => [{ serials: { series: 'chassis', from, to } }]
  const plan: RecordPlan = {
    serials: { chassis: { title: 'Chassis', prefixes: ['A'] } },
    parts: [lamp('old', numbers(undefined, 'A 099'), 'tail'), lamp('new', [{ years: { from: 1960 } }, { years: { to: 1959 }, serials: { series: 'chassis', from: 'A 100' } }], 'tail')],
  }
  expect(editionsOf(plan).editions).toEqual([[undefined, 1959, 'chassis A 099', true], [undefined, 1959, 'chassis A 100', true], [1960, undefined, 'chassis A 100', true]])
})

test('a number that gives no wiring in any year is an edition without one', () => {
  const plan: RecordPlan = {
    serials: { chassis: { title: 'Chassis', prefixes: ['A'] } },
    parts: [lamp('old', [{ serials: { series: 'chassis', to: 'A 100' } }], 'tail'), lamp('new', [{ serials: { series: 'chassis', from: 'A 100' } }], 'tail'), lamp('late', years(1960))],
  }
  expect(editionsOf(plan).editions.filter(([,,, ok]) => !ok)).toEqual([[undefined, 1959, 'chassis A 100', false], [1960, undefined, 'chassis A 100', false]])
})

test('of more editions than can be read the rest is counted', () => {
  const ids = Array.from({ length: 14 }, (_, i) => `o${i}`)
  const options = Object.fromEntries(ids.map((id) => [id, { title: id }]))
  const { editions, leftOut } = editionsOf({ options, parts: ids.map((id, i) => lamp(`l${i}`, [{ with: [id], years: { from: 1950 + i } }])) })
  expect([editions.length, leftOut]).toEqual([200, 25])
})

test('series of many borders do not multiply beyond what can be checked', () => {
  const ids = ['a', 'b', 'c', 'd'], borders = Array.from({ length: 60 }, (_, i) => String(1000 + 10 * i))
  const serials = Object.fromEntries(ids.map((id) => [id, { title: id }]))
  const fits = ids.flatMap((series) => borders.map((from) => ({ serials: { series, from } })))
  const { editions, leftOut } = editionsOf({ serials, parts: [lamp('l', fits)] })
  expect(editions.length + leftOut).toBe(61 ** 4)
})

test('what is found in an edition is said of it alone', () => {
  const wires = [link('early', 'battery:+', 'fuse:in', { fits: years(1950, 1954) }), link('late', 'fuse:in', 'battery:+', { fits: years(1954) })]
  const { editions } = checkEditions(makeRecord({ parts: [part('battery', 'battery'), part('fuse', 'fuse')], wires }), {})
  expect(editions.map((one) => one.ok ? one.overlapping.length : one)).toEqual([0, 0, 1, 0])
})
