import fc from 'fast-check'
import { expect, test } from 'vitest'
import { makeRecord, mustResolve, part, wire } from '../../test/builders/record.ts'
import { prepareCircuit, solveSetting } from '../circuit/index.ts'
import { partKinds } from '../parts/index.ts'
import type { WiringRecord } from '../record/index.ts'
import { drawPaths } from './draw-paths.ts'
import { findOverlaps } from './find-overlaps.ts'

const lever = { axes: { lever: { positions: ['off', 'on'], rest: 'off' } } }
const forms: Record<string, { kind: string, params: Record<string, unknown>, ends: readonly string[] }> = {
  lamp: { kind: 'lamp', params: { powerW: 5 }, ends: ['in', 'out'] },
  twin: { kind: 'lamp', params: { filaments: { a: { powerW: 21 }, b: { powerW: 5 } } }, ends: ['a', 'b', 'out'] },
  fuse: { kind: 'fuse', params: { ratingA: 8 }, ends: ['in', 'out'] },
  switch: { kind: 'control', params: { ...lever, rows: { made: { when: { lever: ['on'] }, joins: ['1', '2'] } } }, ends: ['1', '2'] },
  change: { kind: 'control', params: { ...lever, rows: { a: { when: { lever: ['on'] }, joins: ['56', '56a'] }, b: { when: { lever: ['off'] }, joins: ['56', '56b'] } } }, ends: ['56', '56a', '56b'] },
  relay: { kind: 'electromagnet', params: {}, ends: ['30', '87', '86', '85'] },
  motor: { kind: 'motor', params: {}, ends: ['in', 'out'] },
  stabiliser: { kind: 'stabiliser', params: {}, ends: ['B', 'I', 'E'] },
  gauge: { kind: 'gauge', params: {}, ends: ['in', 'T'] },
  twoCoil: { kind: 'gauge', params: { type: 'two-coil' }, ends: ['in', 'T', 'E'] },
  ammeter: { kind: 'ammeter', params: {}, ends: ['in', 'out'] },
  voltmeter: { kind: 'voltmeter', params: {}, ends: ['in', 'out'] },
  clock: { kind: 'clock', params: { type: 'wound' }, ends: ['in', 'out'] },
  breaker: { kind: 'circuit-breaker', params: { resets: 'by hand' }, ends: ['in', 'out'] },
  capacitor: { kind: 'capacitor', params: {}, ends: ['in', 'case'] },
  magneto: { kind: 'magneto', params: {}, ends: ['2', 'case'] },
  module: { kind: 'module', params: {}, ends: ['15', '31', '30', '87'] },
  fuses: { kind: 'fuse', params: { ratingA: 8, ways: { one: { from: 'bar', to: '1' }, two: { from: 'bar', to: '2', ratingA: 25 }, three: { from: 'in', to: '3' } } }, ends: ['bar', '1', '2', 'in', '3'] },
}
const names = Object.keys(forms)

/** Parts joined anyhow, with more or less sense. */
const records = fc.record({
  kinds: fc.array(fc.constantFrom(...names), { minLength: 1, maxLength: 12 }),
  joins: fc.array(fc.tuple(fc.nat(), fc.nat()), { minLength: 2, maxLength: 28 }),
}).map(({ kinds, joins }): WiringRecord => {
  const parts = kinds.map((name, i) => part(`p${i}`, forms[name].kind, forms[name].params, { title: `Some ${name} ${i}` }))
  const points = ['battery:+', 'battery:+', 'body', 'body', 's1', ...kinds.flatMap((name, i) => forms[name].ends.map((end) => `p${i}:${end}`))]
  const wires = joins.map(([a, b]) => [points[a % points.length], points[b % points.length]]).filter(([a, b]) => a !== b)
  return makeRecord({
    metals: ['body'], splices: { s1: {} }, parts: [part('battery', 'battery', {}), ...parts],
    wires: [wire('w0', 'battery:-', 'body'), ...wires.map(([a, b], i) => wire(`w${i + 1}`, a, b, { sizeMm2: 1.5, colour: { base: 'red', tracers: ['blue'] } }))],
  })
})

test('any wiring draws, with no text on anything', () => {
  fc.assert(fc.property(records, (record) => {
    const wiring = mustResolve(record, {}, partKinds)
    const circuit = prepareCircuit(wiring, partKinds)
    const scene = drawPaths(wiring, new Map(circuit.network.parts.map(({ id, model }) => [id, model])), { width: 800, height: 600 })
    const { solved } = solveSetting(circuit, { controls: {}, engine: 'stopped', battery: 'full', phases: {} }, { skipStanding: true })
    expect(findOverlaps(scene, solved)).toEqual([])
  }))
}, 60_000)
