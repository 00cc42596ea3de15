import fc from 'fast-check'
import { expect, test } from 'vitest'
import { makeRecord } from '../../test/builders/record.ts'
import { judgeFits, showFits } from './fits.ts'
import type { Edition, Fits } from './schema.ts'

const record = makeRecord({
  options: { towbar: { title: 'Tow bar', usual: false }, fog: { title: 'Fog lamp' } }, markets: { home: { title: 'Home' }, export: { title: 'Export' } },
  serials: { chassis: { title: 'chassis number', prefixes: ['H', 'A', 'AB'] }, body: { title: 'body number' } },
})

function answer(fits: Fits | undefined, edition: Edition): string {
  const { answer, ask } = judgeFits(fits, edition, record)
  return [answer, ...ask].join('; ')
}

const chassis = (from?: string, to?: string): Fits => [{ serials: { series: 'chassis', from, to } }]

test.each<[string, Fits | undefined, Edition, string]>([
  ['no condition', undefined, {}, 'yes'],
  ['an empty condition', [{}], {}, 'yes'],
  ['the first year', [{ years: { from: 1950, to: 1960 } }], { year: 1950 }, 'yes'],
  ['the last year', [{ years: { from: 1950, to: 1960 } }], { year: 1960 }, 'yes'],
  ['the year after', [{ years: { from: 1950, to: 1960 } }], { year: 1961 }, 'no'],
  ['no year', [{ years: { from: 1950 } }], {}, 'cannot tell; find out the year'],
  ['a market', [{ markets: ['home'] }], { market: 'export' }, 'no'],
  ['no market', [{ markets: ['home'] }], {}, 'cannot tell; find out for which market the vehicle was made'],
  ['an option stated', [{ with: ['fog'] }], { options: { fog: true } }, 'yes'],
  ['an option stated away', [{ without: ['fog'] }], { options: { fog: true } }, 'no'],
  ['an option not stated', [{ with: ['fog'] }], {}, 'cannot tell; is the option "Fog lamp" fitted?'],
  ['an option not usual', [{ with: ['towbar'] }], {}, 'no'],
  ['a number of a later prefix', chassis('H 900', 'A 20'), { serials: { chassis: 'A7' } }, 'yes'],
  ['numbers count as numbers', chassis('H 900'), { serials: { chassis: 'h-0899' } }, 'no'],
  ['the longer prefix', chassis('AB 1'), { serials: { chassis: 'AB 1' } }, 'yes'],
  ['a number of no prefix', chassis('H 900'), { serials: { chassis: 'C 1' } }, 'cannot tell; check the number C 1: it is none of the series "chassis number"'],
  ['no number', chassis('H 900'), {}, 'cannot tell; find out the number of the series "chassis number"'],
  ['numbers without prefixes', [{ serials: { series: 'body', from: 'x9', to: 'x10' } }], { serials: { body: 'X 9' } }, 'no'],
  ['one of several', [{ years: { from: 1970 } }, { with: ['fog'] }], { year: 1975 }, 'yes'],
  ['several open', [{ markets: ['home'] }, { with: ['fog'], years: { to: 1960 } }], { year: 1950 }, 'cannot tell; find out for which market the vehicle was made; is the option "Fog lamp" fitted?'],
  ['what does not matter is not asked', [{ years: { from: 1970 }, with: ['fog'] }], { year: 1950 }, 'no'],
])('%s is judged', (_name, fits, edition, expected) => {
  expect(answer(fits, edition)).toBe(expected)
})

test('an assumption is told only where the answer rests on it', () => {
  const assumed = (fits: Fits, edition: Edition) => judgeFits(fits, edition, record).assumed.map(({ path }) => path)
  expect(assumed([{ with: ['towbar'] }], {})).toEqual(['options.towbar'])
  expect(assumed([{ with: ['towbar'], years: { to: 1950 } }], { year: 1960 })).toEqual([])
  expect(assumed([{ without: ['towbar'] }, { years: { from: 1950 } }], { year: 1960 })).toEqual([])
  expect(assumed([{ with: ['towbar'], markets: ['home'] }, { without: ['fog'] }], { market: 'home' })).toEqual([])
})

test('finding out more never turns a yes into a no', () => {
  const condition = fc.record({
    years: fc.record({ from: fc.integer({ min: 1950, max: 1952 }) }, { requiredKeys: [] }), markets: fc.constantFrom(['home'], ['export']),
    with: fc.constantFrom(['fog']), without: fc.constantFrom(['fog']), serials: fc.constantFrom({ series: 'chassis', from: 'A 5' }, { series: 'chassis', to: 'A 3' }),
  }, { requiredKeys: [] })
  const edition = { year: fc.integer({ min: 1949, max: 1953 }), market: fc.constantFrom('home', 'export'), options: fc.boolean().map((fog) => ({ fog })), serials: fc.constantFrom('A 1', 'A 9').map((chassis) => ({ chassis })) }
  fc.assert(fc.property(fc.array(condition, { minLength: 1, maxLength: 3 }), fc.record(edition), fc.subarray(Object.keys(edition)), (fits, whole, known) => {
    const part = Object.fromEntries(Object.entries(whole).filter(([key]) => known.includes(key)))
    const [less, more] = [judgeFits(fits, part, record), judgeFits(fits, whole, record)]
    expect(more.answer).not.toBe('cannot tell')
    if (less.answer !== 'cannot tell') expect(less.answer).toBe(more.answer)
    expect(less.ask.length > 0).toBe(less.answer === 'cannot tell')
  }))
})

test('a condition is shown in words', () => {
  expect(showFits([{ years: { from: 1950, to: 1950 }, with: ['fog'] }, { markets: ['home'], serials: { series: 'chassis', to: 'A 5' } }]))
    .toBe('1950, with fog; or chassis up to A 5, market home')
  expect(showFits(undefined)).toBe('every vehicle')
})
