import { expect, test } from 'vitest'
import { fixing, link, makeRecord, mustResolve, part, years } from '../builders/record.ts'
import { partKinds } from '../../src/parts/index.ts'
import type { Fits } from '../../src/record/index.ts'

/** A feed in two editions from 1951 and to 1964. */
function overlapping(first: Fits | undefined, second: Fits | undefined, year = 1957) {
  const record = makeRecord({
    metals: ['body', 'wing'], parts: [part('fuse', 'fuse'), part('lamp', 'lamp')], fixings: [fixing('bolt', 'wing', 'body', 0, first && { fits: first }), fixing('bolt-2', 'body', 'wing', 0, second && { fits: second })],
    wires: [link('old', 'fuse:out', 'lamp:in', first && { fits: first }), link('new', 'lamp:in', 'fuse:out', second && { fits: second })],
  })
  return mustResolve(record, { year }, partKinds).overlapping
}

test('two editions of a wire or a fixing that share a year are told with the year and what to do', () => {
  const [wires, fixings] = overlapping(years(1951, 1957), years(1957, 1964))
  expect(wires.sentence).toBe('wires.old and wires.new join the same two points, and both are in the vehicles of 1957 (the first is for 1951 to 1957, the second for 1957 to 1964): '
    + 'if they are two editions of one, let the earlier end the year before the later begins')
  expect(fixings.items).toEqual(['bolt', 'bolt-2'])
  expect(overlapping(years(undefined, 1958), years(1956))[0].sentence).toContain('in the vehicles of 1956 to 1958')
})

test.each([
  ['without conditions', undefined, undefined], ['for the same years', years(1951, 1964), years(1951, 1964)],
  ['doubled for some of the years', years(1951, 1964), years(1957, 1960)], ['doubled from a year on', years(1951), years(1957)],
  ['doubled in every vehicle of the later years', undefined, years(1957)], ['doubled at first', years(1951, 1964), years(1951, 1957)],
])('wires in parallel %s are none', (_name, first, second) => {
  expect(overlapping(first, second)).toEqual([])
})

test('editions that follow one another are none', () => {
  expect(overlapping(years(1951, 1956), years(1957, 1964))).toEqual([])
})
