import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { fakeKinds } from '../../test/builders/fake-kinds.ts'
import { fixing, makeRecord, mustResolve, part, wire, years, type RecordPlan } from '../../test/builders/record.ts'
import { sampleRecord } from '../../test/builders/sample-record.ts'
import { readRecord } from './read-record.ts'
import { resolveVehicle } from './resolve-vehicle.ts'
import type { Vehicle } from './schema.ts'
import { writeRecord } from './write-record.ts'

const battery = part('battery', 'battery')
const row = (when: string, ...joins: string[]) => ({ when: { turn: [when] }, joins })
const turn = { turn: { positions: ['off', 'on'], rest: 'off' } }

/** Resolves what is first seen to be a record that reads. */
function resolve(plan: RecordPlan, vehicle: Vehicle) {
  const read = readRecord(writeRecord(makeRecord(plan)), fakeKinds)
  if (!read.ok) throw new Error(read.problems.map(({ sentence }) => sentence).join('\n'))
  return resolveVehicle(read.record, vehicle, fakeKinds)
}

function conflictsOf(plan: RecordPlan, vehicle: Vehicle = { year: 1955 }) {
  const resolved = resolve(plan, vehicle)
  return resolved.ok ? [] : resolved.conflicts
}

function wiringOf(plan: RecordPlan, vehicle: Vehicle = { year: 1955 }) {
  return mustResolve(makeRecord(plan), vehicle, fakeKinds)
}

test('the sample resolves for each edition', () => {
  const early = mustResolve(sampleRecord(), { year: 1954 }, fakeKinds)
  const late = mustResolve(sampleRecord(), { year: 1965, options: { towbar: true } }, fakeKinds)
  expect([early.systemV, early.earth, late.systemV, late.earth]).toEqual([6, 'positive', 12, 'negative'])
  expect([...early.wires.keys()]).toEqual(['w1', 'w2', 'w3', 'w10', 'w13'])
  expect([...late.wires.keys()]).toEqual(['w1', 'w2', 'w3', 'w10', 'w11', 'w12', 'w13'])
  expect([early.parts.get('tail')?.params, late.parts.get('tail')?.params]).toEqual([{ powerW: 5, voltsV: 6 }, { powerW: 5, voltsV: 12 }])
  expect([...early.parts.get('switch')!.terminals.keys()]).toEqual(['30', '58'])
  expect([...late.parts.get('switch')!.terminals.keys()]).toEqual(['30', '56', '58'])
  expect(early.looms.get('main')?.lies).toEqual(new Map([['b1', ['r1']]]))
})

test('nothing conditional is left', () => {
  const wiring = mustResolve(sampleRecord(), { year: 1965 }, fakeKinds)
  const text = JSON.stringify(wiring, (key, value) => value instanceof Map ? [...value] : key === 'vehicle' ? undefined : value)
  expect(text).not.toMatch(/"fits"|paramSets/)
})

test('any vehicle gives a whole wiring or reasons why not', () => {
  const edition = fc.record({
    year: fc.integer({ min: 1950, max: 1970 }), market: fc.constantFrom('home', 'export', 'moon'),
    options: fc.dictionary(fc.constantFrom('towbar', 'fog'), fc.boolean()), serials: fc.constantFrom<Record<string, string>>({}, { chassis: 'A 12' }),
  }, { requiredKeys: [] })
  const item = fc.constantFrom('tail', 'tow', 'switch', 'main', 'rear', 'w1', 's1', 'body', 'dash', 'r1', 'd1', 'nothing')
  const vehicle = fc.tuple(edition, fc.array(fc.record({ item, asOf: edition }), { maxLength: 2 })).map(([own, exceptions]): Vehicle => ({ ...own, exceptions }))
  fc.assert(fc.property(vehicle, (one) => {
    const resolved = resolveVehicle(sampleRecord(), one, fakeKinds)
    if (!resolved.ok) {
      expect(resolved.problems.length + resolved.conflicts.length + resolved.cannotTell.length).toBeGreaterThan(0)
      return
    }
    const { parts, splices, metals, wires } = resolved.wiring
    for (const { at } of [...wires.values()].flatMap(({ ends }) => ends)) {
      if (at === null || at.startsWith('front:') || at.startsWith('rear:')) continue
      const [owner, end] = at.split(':')
      expect(end === undefined ? splices.has(owner) || metals.has(owner) : parts.get(owner)?.terminals.has(end)).toBe(true)
    }
  }), { numRuns: 300 })
})

test('a renamed terminal keeps what it is inside', () => {
  const wiring = mustResolve(sampleRecord(), { year: 1965 }, fakeKinds)
  expect([...wiring.parts.get('tail')!.terminals.values()]).toEqual([
    { id: '31', is: '31', marking: '31' }, { id: 'L', is: '58', marking: 'unknown' },
  ])
})

test('an option not stated is taken as usual, and said', () => {
  const wiring = mustResolve(sampleRecord(), { year: 1965 }, fakeKinds)
  expect(wiring.assumed.map(({ path, value }) => [path, value])).toEqual([['duties.d1.may.0', 'left out'], ['options.towbar', false]])
  const stated = mustResolve(sampleRecord(), { year: 1965, options: { towbar: true } }, fakeKinds)
  expect(stated.assumed).toEqual([])
})

test('missing engine speeds are assumed', () => {
  const wiring = wiringOf({})
  expect(wiring.engine).toEqual({ crankingRpm: 150, idleRpm: 700, cruiseRpm: 2500 })
  expect(wiring.assumed.map(({ path, source }) => [path, source])).toContainEqual(['engine.idleRpm', 'common practice, no source'])
})

test('an insulated return resolves', () => {
  expect(wiringOf({ supply: { dc: { systemV: 24, earth: 'none' } } })).toMatchObject({ systemV: 24, earth: 'none' })
})

test('loose and unknown ends join nothing', () => {
  const { wires } = mustResolve(sampleRecord(), { year: 1965 }, fakeKinds)
  expect(wires.get('w13')?.ends).toEqual([{ at: 's1', state: 'joined' }, { at: null, state: 'loose', place: 'boot' }])
})

describe('conflicts', () => {
  test('two of a role are told with both conditions', () => {
    const lamp = (id: string, from: number, to: number) => part(id, 'lamp', {}, { role: 'tail', fits: years(from, to) })
    expect(conflictsOf({ parts: [lamp('a', 1950, 1960), lamp('b', 1955, 1970)] })).toEqual([{
      at: ['parts', 'b'], what: 'same role',
      sentence: 'parts.b: a and b both are "tail" in this vehicle (parts.a is for 1950 to 1960, parts.b is for 1955 to 1970): let one end before the other begins, or give them two roles.',
      fits: [{ of: 'parts.a', fits: years(1950, 1960) }, { of: 'parts.b', fits: years(1955, 1970) }],
    }])
    expect(conflictsOf({ parts: [lamp('a', 1950, 1960), lamp('b', 1955, 1970)] }, { year: 1965 })).toEqual([])
  })

  test('one role in two collections is no conflict', () => {
    expect(conflictsOf({ parts: [part('a', 'lamp', {}, { role: 'rear' })], splices: { s: { role: 'rear' } } })).toEqual([])
  })

  test('a wire to a part of other years', () => {
    const conflicts = conflictsOf({ parts: [battery, part('late', 'lamp', {}, { fits: years(1960) })], wires: [wire('w1', 'battery:+', 'late:58')] })
    expect(conflicts).toMatchObject([{ at: ['wires', 'w1', 'ends', '1', 'at'], what: 'not in this vehicle', fits: [{ of: 'wires.w1' }, { of: 'parts.late', fits: years(1960) }] }])
  })

  test('a wire to a terminal of other years', () => {
    const parts = [battery, part('lamp', 'lamp', {}, { terminals: { X: { fits: years(1960) } } })]
    expect(conflictsOf({ parts, wires: [wire('w1', 'battery:+', 'lamp:X', { fits: years(1950) })] })).toMatchObject(
      [{ fits: [{ of: 'wires.w1', fits: years(1950) }, { of: 'parts.lamp.terminals.X', fits: years(1960) }] }])
  })

  test('a wire to an end that only a later row of contacts makes', () => {
    const rows = { a: row('on', '30', '58'), b: { ...row('on', '30', '56'), fits: years(1960) } }
    const plan: RecordPlan = { parts: [battery, part('s', 'control', { axes: turn, rows })], wires: [wire('w1', 'battery:+', 's:56')] }
    expect(conflictsOf(plan)).toMatchObject([{ at: ['wires', 'w1', 'ends', '1', 'at'], fits: [{ of: 'wires.w1' }, { of: 'parts.s' }] }])
    expect(conflictsOf(plan, { year: 1960 })).toEqual([])
  })

  test('two supplies, and none', () => {
    const supply = (from: number, to: number) => ({ systemV: 12, earth: 'negative', fits: years(from, to) }) as const
    expect(conflictsOf({ supply: { a: supply(1950, 1960), b: supply(1955, 1970) } })).toMatchObject([{ what: 'several supplies', fits: [{ of: 'supply.a' }, { of: 'supply.b' }] }])
    expect(conflictsOf({ supply: { a: supply(1960, 1961) } })).toMatchObject([{ what: 'no supply', fits: [{ of: 'supply.a' }] }])
  })

  test.each([
    [years(1950, 1952), 'supply: the record covers 1950 to 1952, and this vehicle is of 1955 (supply.a is for 1950 to 1952): describe a vehicle that the record is for, or let a supply be for this one too.'],
    [years(undefined, 1952), 'supply: the record covers up to 1952, and this vehicle is of 1955 (supply.a is for up to 1952): describe a vehicle that the record is for, or let a supply be for this one too.'],
    [[...years(1950, 1952), ...years(1958)], 'supply: no supply is meant for this vehicle (supply.a is for 1950 to 1952; or 1958 and later): describe a vehicle that the record is for, or let a supply be for this one too.'],
  ])('a year that no supply covers: %j', (fits, sentence) => {
    const resolved = resolveVehicle(makeRecord({ supply: { a: { systemV: 12, earth: 'negative', fits } } }), { year: 1955 }, fakeKinds)
    expect(resolved.ok ? [] : resolved.conflicts.map((conflict) => conflict.sentence)).toEqual([sentence])
  })

  test('two rows of engine speeds', () => {
    const engine = { crankingRpm: 100, idleRpm: 600, cruiseRpm: 2000 }
    expect(conflictsOf({ engine: { a: engine, b: engine } })).toMatchObject([{ what: 'several engine rows' }])
  })

  test('two halves on one side', () => {
    const half = (side: 'a' | 'b') => ({ connector: 'c', side, ways: ['1'] })
    expect(conflictsOf({ connectors: { c: { title: '' } }, halves: { x: half('a'), y: half('a'), z: half('b') } })).toMatchObject(
      [{ at: ['connectors', 'c'], what: 'two halves on one side', fits: [{ of: 'halves.x' }, { of: 'halves.y' }] }])
  })

  test('one branch in two places', () => {
    const record = sampleRecord()
    const { main } = record.looms!
    const looms = { main: { ...main, lies: { ...main.lies, l1: { branch: 'b1', runs: ['r1'], fits: years(undefined, 1958) } } } }
    expect(resolveVehicle({ ...record, looms }, { year: 1958 }, fakeKinds)).toMatchObject({ ok: false, conflicts: [{ what: 'one branch in two places' }] })
  })

  test('two sets that state one parameter', () => {
    const set = (powerW: number) => ({ fits: years(1950), params: { powerW } })
    expect(conflictsOf({ parts: [part('a', 'lamp', {}, { paramSets: { x: set(5), y: set(6) } })] })).toMatchObject(
      [{ at: ['parts', 'a', 'paramSets', 'y', 'params', 'powerW'], what: 'parameter set twice', fits: [{ of: 'parts.a.paramSets.x' }, { of: 'parts.a.paramSets.y' }] }])
  })

  test('parameters that no set completes', () => {
    const late = { fits: years(1960), params: { axes: turn } }
    expect(conflictsOf({ parts: [part('s', 'control', {}, { paramSets: { late } })] })).toMatchObject(
      [{ at: ['parts', 's', 'params', 'axes'], what: 'wrong parameters', sentence: expect.stringContaining('found nothing') }])
  })

  test('two terminals that are one end', () => {
    const terminals = { L: { is: '58' }, M: { is: '58', fits: years(1950) } }
    expect(conflictsOf({ parts: [part('a', 'lamp', {}, { terminals })] })).toMatchObject([{ what: 'same end twice', at: ['parts', 'a', 'terminals', 'M'] }])
  })

  test('all come at once, with what cannot be told', () => {
    const resolved = resolve({
      options: { fog: { title: 'Fog lamp' } },
      parts: [part('a', 'lamp', {}, { role: 'r' }), part('b', 'lamp', {}, { role: 'r' }), part('c', 'lamp', {}, { fits: [{ with: ['fog'] }] })],
      splices: { s: { fits: years(1960) } }, wires: [wire('w1', 'a:58', 's')],
    }, {})
    expect(resolved).toMatchObject({
      ok: false, conflicts: [{ what: 'same role' }],
      cannotTell: [{ at: ['parts', 'c'], ask: ['is the option "Fog lamp" fitted?'] }, { at: ['splices', 's'], ask: ['find out the year'] }],
    })
  })
})

describe('connectors', () => {
  test('ways meet by pairs and the rest are told', () => {
    const { matings, unmatched } = mustResolve(sampleRecord(), { year: 1965 }, fakeKinds)
    expect([...matings.values()]).toEqual([
      { id: 'c1.1', title: 'Rear connector', joins: ['front:1', 'rear:A'], ohm: 0.003 },
      { id: 'c1.2', title: 'Rear connector', joins: ['front:2', 'rear:B'], ohm: 0.003 },
    ])
    expect(unmatched).toEqual([{ half: 'rear', title: 'Rear connector', way: 'C', wires: [], why: 'the connector joins it to no way of the other half' }])
  })

  test('without pairs, ways of one name meet', () => {
    const { matings, unmatched } = wiringOf({
      connectors: { c: { title: '' } }, parts: [battery], wires: [wire('w1', 'battery:+', 'y:3')],
      halves: { x: { connector: 'c', side: 'a', ways: ['1', '2'] }, y: { connector: 'c', side: 'b', ways: ['2', '3'] } },
    })
    expect([...matings.keys()]).toEqual(['c.2'])
    expect(unmatched).toEqual([
      { half: 'x', title: '', way: '1', wires: [], why: 'the other half, y, has no way 1' }, { half: 'y', title: '', way: '3', wires: ['w1'], why: 'the other half, x, has no way 3' },
    ])
  })

  test('an absent half leaves every way unmatched', () => {
    const { unmatched } = wiringOf({ connectors: { c: { title: '' } }, halves: { x: { connector: 'c', side: 'a', ways: ['1'] } } })
    expect(unmatched).toEqual([{ half: 'x', title: '', way: '1', wires: [], why: 'the other half is absent', isAlone: true }])
  })
})

describe('exceptions', () => {
  const loom = (from: number, to: number) => ({ title: '', role: 'main loom', points: { p: {} }, branches: {}, fits: years(from, to) })
  const plan: RecordPlan = {
    parts: [battery, part('tail', 'lamp'), part('hazard', 'lamp', {}, { fits: years(1970) })],
    looms: { early: loom(1950, 1969), late: loom(1970, 1980) },
    wires: [
      wire('w1', 'battery:+', 'tail:58', { loom: 'early', fits: years(1950, 1969) }),
      wire('w2', 'battery:+', 'tail:58', { loom: 'late', fits: years(1970, 1980) }),
      wire('w3', 'battery:+', 'hazard:58', { loom: 'late', fits: years(1970, 1980) }),
    ],
  }

  test('a later loom brings its wires and takes out the earlier one', () => {
    const wiring = wiringOf(plan, { year: 1955, exceptions: [{ item: 'late', asOf: { year: 1972 } }] })
    expect([[...wiring.looms.keys()], [...wiring.wires.keys()], wiring.parts.has('hazard')]).toEqual([['late'], ['w2', 'w3'], false])
    expect(wiring.wires.get('w3')?.ends[1]).toEqual({ at: null, state: 'loose' })
    expect(wiring.assumed.map(({ path }) => path)).toContain('wires.w3.ends.1')
  })

  test('another part of the same role goes out', () => {
    const generator = (id: string, from: number, to: number) => part(id, 'lamp', {}, { role: 'generator', fits: years(from, to) })
    const wiring = wiringOf({
      parts: [generator('dynamo', 1950, 1960), generator('alternator', 1961, 1970)], metals: ['block'],
      fixings: [fixing('f1', 'dynamo:31', 'block', 0, { fits: years(1950, 1960) })],
    }, { year: 1955, exceptions: [{ item: 'alternator', asOf: { year: 1965 } }] })
    expect([[...wiring.parts.keys()], [...wiring.fixings.keys()]]).toEqual([['alternator'], []])
  })
})

describe('a description of a vehicle', () => {
  test('names that the record does not know are told with those that it does', () => {
    const resolved = resolveVehicle(sampleRecord(), {
      market: 'exprt', options: { fgo: true }, serials: { chasis: 'A1', chassis: 'C 4' }, exceptions: [{ item: 'mian', asOf: { market: 'moon' } }],
    }, fakeKinds)
    expect(resolved.ok ? [] : resolved.problems.map(({ sentence }) => sentence)).toEqual([
      'market: expected a market of the record: export, home, found "exprt"; the nearest is export.',
      'options.fgo: expected an option of the record: fog, towbar, found "fgo"; the nearest is fog.',
      'serials.chasis: expected a serial series of the record: body-no, chassis, found "chasis"; the nearest is chassis.',
      'serials.chassis: C 4 is no number of this series, which has A, B and a number.',
      expect.stringMatching(/^exceptions\.0\.item: expected the id of something in .*, found "mian"; the nearest is main\.$/),
      'exceptions.0.asOf.market: expected a market of the record: export, home, found "moon".',
    ])
  })
})
