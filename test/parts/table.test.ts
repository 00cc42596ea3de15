import { describe, expect, it } from 'vitest'
import { circuitOf, IDEAL, onOff, setting, solved } from '../builders/circuits.ts'
import { link, part, wire, type RecordPlan } from '../builders/record.ts'
import { layFaults, type SolvedSetting } from '../../src/circuit/index.ts'
import type { Params, PartKind } from '../../src/record/index.ts'
import { nameSource, sources, type SourceId } from '../../src/standards/index.ts'
import { readFault } from '../../src/tasks/read-fault.ts'
import { partKinds } from '../../src/parts/table.ts'

/** The least that a part of the kind has to state. */
const leastParams = (kind: string): Params => (kind === 'control' ? onOff() : {})
const sourceNames = new Set(Object.keys(sources).map((id) => nameSource(id as SourceId)))
const everyKind = partKinds.map(({ kind }) => kind)
const kindOf = (name: string) => partKinds.find(({ kind }) => kind === name) as PartKind
const endsOf = (kind: string, params: Params) => kindOf(kind).terminals(kindOf(kind).params.parse(params)).map(({ is }) => is)
const alone = (kind: string, params: Params = leastParams(kind)): RecordPlan => ({ metals: ['body'], parts: [part('it', kind, params)] })

describe('every part kind', () => {
  it.each(everyKind)('%s is said plainly, with its ends and failures', (name) => {
    const { plain } = kindOf(name), fails = kindOf(name).fails(leastParams(name))
    expect(plain).toMatch(/^[A-Z].*\.$/)
    expect(fails.length).toBeGreaterThan(0)
    expect(endsOf(name, leastParams(name)).length).toBeGreaterThan(1)
    expect(new Set(fails.map(({ what }) => what)).size).toBe(fails.length)
  })

  it.each(everyKind)('%s has failures that the fault reader takes', (name) => {
    expect(refusedFaults(name, leastParams(name))).toEqual([])
  })

  it.each([
    ['lamp', { filaments: { stop: {}, tail: {} } }], ['motor', { brushes: { low: {}, high: {} } }], ['joint', { ways: 3 }], ['flasher', { type: 'bimetal' }],
    ['fuse', { ways: { A1: { from: 'A', to: '1' }, A2: { from: 'A', to: '2' } } }], ['clock', { type: 'wound' }], ['circuit-breaker', { resets: 'by hand' }],
    ['gauge', { type: 'two-coil' }], ['dynamo', { thirdBrush: true }],
    ['module', { loads: { buzzer: { from: '15', to: '31' } }, states: { quiet: {}, loud: {} } }],
    ['electromagnet', { windings: { pull: { from: '50', to: 'M' } }, contacts: { crank: { from: '30', to: 'M' } } }],
  ])('%s of several elements has failures that the fault reader takes', (name, params) => {
    expect(refusedFaults(name, params)).toEqual([])
  })

  it.each(everyKind)('%s names a source for every default', (name) => {
    for (const supply of ['6-', '12-', '24-'] as const) {
      const { assumed } = circuitOf({ ...alone(name), supply }).network
      const own = assumed.filter(({ path }) => path.startsWith('parts.it.'))
      for (const { path, value, why, source } of own) {
        expect(why, path).not.toBe('')
        expect(typeof value !== 'number' || Number.isFinite(value), path).toBe(true)
        expect(sourceNames.has(source), `${path}: ${source}`).toBe(true)
      }
    }
  })
})

/** Fault texts of the kind that the reader refuses, or that cannot be laid on the circuit. */
function refusedFaults(name: string, params: Params): string[] {
  const circuit = circuitOf(alone(name, params))
  return kindOf(name).fails(params).map(({ fault }) => fault.replaceAll('*', 'it')).filter((text) => {
    const read = readFault(text, circuit)
    if (read.ok) layFaults(circuit, partKinds, [read.value])
    return !read.ok
  })
}

/** The part's ends fed and earthed by turns, each through its own resistance. */
function between(name: string, id = 'it', earth: '-' | '+' = '-', params = leastParams(name)): RecordPlan {
  const [live, earthed] = earth === '-' ? ['+', '-'] : ['-', '+']
  const ends = endsOf(name, params)
  return {
    supply: `12${earth}`, metals: ['body'], assume: IDEAL,
    parts: [part('supply', 'battery', { emfV: 12, ohm: 0.01 }), part(id, name, params)],
    wires: [
      link('e', `supply:${earthed}`, 'body'),
      ...ends.map((end, i) => wire(`w${i}`, `${id}:${end}`, i % 2 ? 'body' : `supply:${live}`, { ohm: 0.5 + i })),
    ],
  }
}
const running = (plan: RecordPlan, id = 'it') => solved(plan, setting({ [`${id}.p`]: 'on' }, { engine: 'cruise' }))
const ampsOf = ({ wires }: SolvedSetting) => Object.values(wires).map(({ amps }) => amps)
const isClose = (to: number | null) => (to === null ? null : expect.closeTo(to, 5))

describe('the name of a part', () => {
  it.each(everyKind)('%s changes no answer', (name) => {
    const one = running(between(name)), other = running(between(name, 'zz-last'), 'zz-last')
    expect(ampsOf(other)).toEqual(ampsOf(one).map(isClose))
    expect(Object.values(other.states)).toEqual(Object.values(one.states))
    expect(Object.values(other.phases).map(({ rests, cycle, rate }) => [rests, cycle, rate]))
      .toEqual(Object.values(one.phases).map(({ rests, cycle, rate }) => [rests, cycle, rate]))
  })
})

/** The same vehicle with either pole earthed; what has a direction is turned round. */
const chargingSet = (earth: '-' | '+', dynamo: boolean): RecordPlan => {
  const [live, earthed] = earth === '-' ? ['+', '-'] : ['-', '+']
  const generator: Pick<RecordPlan, 'parts' | 'wires'> = dynamo
    ? { parts: [part('gen', 'dynamo'), part('box', 'control-box', { compensationV: 1 })], wires: [link('g1', 'gen:D', 'box:D'), link('g2', 'gen:F', 'box:F'), link('g3', 'box:E', 'body'), link('out', 'box:A', `supply:${live}`), link('g4', 'box:D', 'warning:out')] }
    : { parts: [part('gen', 'alternator')], wires: [link('g1', 'gen:D+', 'warning:out'), link('out', 'gen:B+', `supply:${live}`)] }
  return {
    supply: `12${earth}`, metals: ['body'], assume: IDEAL,
    parts: [part('supply', 'battery'), part('warning', 'lamp', { powerW: 2.2 }), part('load', 'lamp', { powerW: 90 }), ...generator.parts!],
    wires: [
      link('e', `supply:${earthed}`, 'body'), link('c', 'gen:case', 'body'), link('k', `supply:${live}`, 'warning:in'),
      link('l1', `supply:${live}`, 'load:in'), link('l2', 'load:out', 'body'), ...generator.wires!,
    ],
  }
}

describe('positive earth', () => {
  it.each([['dynamo and control box', true], ['alternator', false]] as const)('mirrors every amp: %s', (_, dynamo) => {
    for (const engine of ['stopped', 'cranking', 'idle', 'cruise'] as const) {
      const [one, other] = (['-', '+'] as const).map((earth) => solved(chargingSet(earth, dynamo), setting({}, { engine })))
      expect(other.wires.out.amps).toBeCloseTo(-one.wires.out.amps!, 5)
      expect(other.voltages['warning:out']).toBeCloseTo(-one.voltages['warning:out']!, 5)
      expect(other.lamps.warning.class).toBe(one.lamps.warning.class)
      expect(other.states).toEqual(one.states)
      expect(other.standing.map(({ name, states }) => [name, states])).toEqual(one.standing.map(({ name, states }) => [name, states]))
    }
  })

  it.each(everyKind.filter((name) => !['battery', 'diode', 'led', 'alternator', 'dynamo', 'control-box'].includes(name)))('mirrors every amp: %s', (name) => {
    const one = running(between(name)), other = running(between(name, 'it', '+'))
    expect(ampsOf(other)).toEqual(ampsOf(one).map((amps) => isClose(amps === null ? null : -amps)))
    expect(other.states).toEqual(one.states)
  })
})
