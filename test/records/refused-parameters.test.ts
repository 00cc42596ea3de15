import { describe, expect, it } from 'vitest'
import { partKinds } from '../../src/parts/index.ts'
import { readRecord, resolveVehicle, writeRecord } from '../../src/record/index.ts'
import { circuitOf, onOff } from '../builders/circuits.ts'
import { makeRecord, part } from '../builders/record.ts'

/** Paths and nearest names of what is wrong with one part. */
function problemsOf(kind: string, params: Record<string, unknown>) {
  const read = readRecord(writeRecord(makeRecord({ parts: [part('it', kind, params)] })), partKinds)
  return read.ok ? [] : read.problems.map(({ path, nearest }) => `${path.join('.')}${nearest === undefined ? '' : ` (${nearest})`}`)
}

const control = (more: object) => ({ ...onOff(), ...more })

describe('parameters of the right shape that name nothing', () => {
  it.each([
    ['a row at a position that is not there', 'control', control({ rows: { on: { when: { p: ['onn'] }, joins: ['a', 'b'] } } }), 'parts.it.params.rows.on.when.p.0 (on)'],
    ['a row on an axis that is not there', 'control', control({ rows: { on: { when: { q: ['on'] }, joins: ['a', 'b'] } } }), 'parts.it.params.rows.on.when.q (p)'],
    ['a rest that is no position', 'control', control({ axes: { p: { positions: ['off', 'on'], rest: 'of' } } }), 'parts.it.params.axes.p.rest (off)'],
    ['an axis of nothing', 'control', control({ axes: { p: { rest: 'off' } } }), 'parts.it.params.axes.p'],
    ['a rest out of range', 'control', { axes: { p: { range: { from: 0, to: 100 }, rest: 500 } } }, 'parts.it.params.axes.p.rest'],
    ['a resistor on an axis that is not there', 'control', control({ resistors: { r: { between: ['a', 'b'], axis: 'dim', ohmAt: [[0, 1]] } } }), 'parts.it.params.resistors.r.axis'],
    ['a core without a winding', 'electromagnet', { windings: {} }, 'parts.it.params.windings'],
    ['a release above the pull', 'electromagnet', { pullAt: 50, releaseAt: 80 }, 'parts.it.params.releaseAt'],
    ['a state that closes a contact that is not there', 'module', { inputs: {}, contacts: { out: { from: 'a', to: 'b' } }, states: { on: { closed: ['uot'] } } }, 'parts.it.params.states.on.closed.0 (out)'],
    ['a step to a state that is not there', 'module', { inputs: {}, contacts: {}, states: { on: { next: [{ to: 'onn' }] } } }, 'parts.it.params.states.on.next.0.to (on)'],
    ['an input with one end', 'module', { inputs: { key: { from: '15' } }, states: { on: {} } }, 'parts.it.params.inputs.key'],
    ['two readings for one figure', 'gauge', { scale: [[0.1, 5], [0.1, 6]] }, 'parts.it.params.scale.1'],
    ['a winding to an end that is not there', 'control-box', { voltage: { windings: { shunt: { from: 'D', to: 'EE' } } } }, 'parts.it.params.voltage.windings.shunt.to (E)'],
  ])('%s is a problem at its path', (_, kind, params, expected) => {
    expect(problemsOf(kind, params)[0]).toBe(expected)
  })

  it('sound parameters are none', () => {
    expect(problemsOf('control', onOff())).toEqual([])
    expect(problemsOf('electromagnet', {})).toEqual([])
  })
})

describe('what is stated as unknown', () => {
  it('is read everywhere but in ids, and asked for where nothing can be said without it', () => {
    const record = makeRecord({
      supply: { s: { systemV: 'unknown', earth: 'unknown' } }, engine: { e: { crankingRpm: 'unknown', idleRpm: 650, cruiseRpm: 'unknown' } },
      places: { p: { title: 'Somewhere', xMm: 'unknown' } }, passages: { g: { title: 'Grommet', form: 'unknown' } },
      parts: [part('fuse', 'fuse', { ratingMeans: 'unknown' }), part('dynamo', 'dynamo', { fieldTo: 'unknown', residual: 'unknown' })],
    })
    const read = readRecord(writeRecord(record), partKinds)
    expect(read.ok).toBe(true)
    const resolved = resolveVehicle(record, {}, partKinds)
    expect(!resolved.ok && resolved.cannotTell.map(({ ask }) => ask[0])).toEqual(['find out the volts of the system', 'find out which pole is earthed'])
  })

  it('is taken as usual, and said, where a usual value exists', () => {
    const { assumed } = circuitOf({ metals: ['body'], engine: { e: { crankingRpm: 'unknown', idleRpm: 650, cruiseRpm: 2400 } }, parts: [part('dynamo', 'dynamo', { residual: 'unknown' })] }).network
    expect(assumed.find(({ path }) => path === 'engine.crankingRpm')).toMatchObject({ value: 150, why: 'stated as unknown' })
    expect(assumed.find(({ path }) => path === 'parts.dynamo.params.residual')).toMatchObject({ value: 'right', why: expect.stringContaining('stated as unknown') as string })
  })
})
