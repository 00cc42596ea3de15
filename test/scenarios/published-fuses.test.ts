// Published facts on fuses, built as records with a box of fuses and answered by the product.
import { expect, test } from 'vitest'
import { battery, lamp, openPlan, resistor } from '../builders/on-battery.ts'
import { fixing, link, part } from '../builders/record.ts'

// Source: a table of British fuses of three ratings, read through an owners' mailing list; a club page confirms that the
// printed 35 A is 17.5 A continuous.
test.each([
  ['what they carry', [12.5, 17.5, 30], ['whole', 'whole', 'whole']], ['their print, sustained', [25.5, 35.5, 60.5], ['blown', 'blown', 'blown']],
  ['what blows them at once', [30, 40, 75], ['blown', 'blown', 'blown']], ['one more than its print', [12.5, 35.5, 30], ['whole', 'blown', 'whole']],
] as const)('British fuses of 25, 35 and 60 A on %s', (_, amps, expected) => {
  const ids = ['pink', 'white', 'yellow'] as const
  const vehicle = openPlan({
    assume: { jointOhm: 0, fuseOhm: 0, fixingOhm: 0 },
    parts: [
      battery({ emfV: 12, ohm: 0 }), ...ids.map((id, i) => resistor(id, 12 / amps[i])),
      part('box', 'fuse', { ratingMeans: 'blow', ways: Object.fromEntries(ids.map((id, i) => [id, { from: 'bar', to: id, ratingA: [25, 35, 60][i] }])) }),
    ],
    wires: [link('w-bar', 'battery:+', 'box:bar'), ...ids.map((id) => link(`w-${id}`, `box:${id}`, `${id}:a`))],
    fixings: [fixing('f-battery', 'battery:-', 'body', 0), ...ids.map((id) => fixing(`f-${id}`, `${id}:b`, 'body', 0))],
  })
  const { states } = vehicle.solve().solved
  expect(ids.map((id) => states[`box.${id}-element`])).toEqual(expected)
})

// Source: StVZO section 53 (1): the two required tail lamps must not share one fuse. What the rule is for is solved here; the
// rule itself is a finding.
test('tail lamps on one fuse go dark together', () => {
  const litWithout = (fuse: string, right: 'A' | 'B') => {
    const { lamps } = openPlan({
      parts: [battery({ emfV: 12, ohm: 0 }), part('box', 'fuse', { ratingA: 8, ways: { A: { from: 'bar', to: 'A' }, B: { from: 'bar', to: 'B' } } }), lamp('left', 5, 12), lamp('right', 5, 12)],
      wires: [link('w-bar', 'battery:+', 'box:bar'), link('w-left', 'box:A', 'left:in'), link('w-right', `box:${right}`, 'right:in')],
      fixings: [fixing('f-battery', 'battery:-', 'body'), fixing('f-left', 'left:out', 'body'), fixing('f-right', 'right:out', 'body')],
    }).solve({}, { faults: [{ kind: 'open', id: `box.${fuse}` }] }).solved
    return Object.keys(lamps).filter((id) => lamps[id].class === 'normal')
  }
  expect([litWithout('A', 'A'), litWithout('A', 'B'), litWithout('B', 'B')]).toEqual([[], ['right'], ['left']])
})
