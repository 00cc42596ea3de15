// A small record with something in every collection: what the laws of reading, writing and editing are tried on.
import type { WiringRecord } from '../../src/record/index.ts'
import { fixing, link, makeRecord, part, wire, years } from './record.ts'

/** Resolves for any vehicle whose year is known. Between 1950 and 1970 nothing else is asked. */
export function sampleRecord(): WiringRecord {
  return makeRecord({
    about: 'A test vehicle with two editions.',
    serials: { chassis: { title: 'chassis number', prefixes: ['A', 'B'] }, 'body-no': { title: 'body number' } },
    markets: { home: { title: 'Home' }, export: { title: 'Export' } },
    options: { towbar: { title: 'Tow bar', usual: false }, fog: { title: 'Fog lamp' } },
    supply: { early: { systemV: 6, earth: 'positive', fits: years(undefined, 1960) }, late: { systemV: 12, earth: 'negative', fits: years(1961) } },
    engine: { speeds: { crankingRpm: 120, idleRpm: 650, cruiseRpm: 2400 } },
    assume: { jointOhm: 0.002, why: 'cleaned last winter' },
    metals: ['body', 'block'],
    parts: [
      part('battery', 'battery', { capacityAh: 60 }, { place: 'boot', terminals: { '+': { form: 'post' }, '-': { form: 'post' } } }),
      part('switch', 'control', {
        axes: { turn: { positions: ['off', 'side', 'head'], rest: 'off' }, dim: { range: { from: 0, to: 1 }, rest: 1 } },
        rows: {
          side: { when: { turn: ['side', 'head'] }, joins: ['30', '58'] },
          head: { when: { turn: ['head'] }, joins: ['30', '56'], fits: [{ years: { from: 1955 } }] },
        },
      }, { place: 'dash' }),
      part('tail', 'lamp', { powerW: 5 }, {
        role: 'left tail lamp', place: 'unknown', terminals: { L: { is: '58', marking: 'unknown' } },
        paramSets: { early: { fits: years(undefined, 1960), params: { voltsV: 6 } }, late: { fits: years(1961), params: { voltsV: 12 } } },
      }),
      part('tow', 'lamp', { powerW: 21 }, { fits: [{ with: ['towbar'] }] }),
    ],
    splices: { s1: { place: 'unknown', loom: 'main' } },
    connectors: { c1: { title: 'Rear connector', place: 'boot', ways: [['1', 'A'], ['2', 'B']], jointOhm: 0.003 } },
    halves: {
      front: { connector: 'c1', side: 'a', loom: 'main', ways: ['1', '2'] },
      rear: { connector: 'c1', side: 'b', ways: ['A', 'B', 'C'] },
    },
    wires: [
      wire('w1', 'battery:+', 'switch:30', { sizeMm2: 2.5, colour: { base: 'red', letters: 'R' }, lengthMm: 2400, loom: 'main' }),
      wire('w2', 'switch:58', 's1', {
        sizeStrands: '14/0.30', loom: 'main', colour: { base: 'red', tracers: ['green'] },
        ends: [{ at: 'switch:58', leaves: 'dash-point', tailMm: 120 }, { at: 's1' }],
      }),
      wire('w3', 's1', 'front:1', { sizeAwg: '16', loom: 'main', colour: 'unknown' }),
      wire('w10', 'rear:A', 'tail:L', { copperDiameterMm: 1.4, loom: 'separate', runs: ['r1'], colour: 'bare' }),
      wire('w11', 'rear:B', 'tow:58', { sizeMm2: 1, fits: [{ with: ['towbar'] }] }),
      link('w12', 'tow:31', 'body', { fits: [{ with: ['towbar'] }] }),
      wire('w13', 's1', '', { ends: [{ at: 's1' }, { at: { place: 'boot', state: 'loose' } }] }),
    ],
    fixings: [fixing('f1', 'tail:31', 'body', 0.001), fixing('f2', 'block', 'body'), fixing('f3', 'battery:-', 'body', 0)],
    looms: {
      main: {
        title: 'Main loom', role: 'main loom',
        points: { 'dash-point': { place: 'dash' }, 'boot-point': { place: 'boot' }, middle: {} },
        branches: { b1: { from: 'dash-point', to: 'middle', lengthMm: 900 }, b2: { from: 'middle', to: 'boot-point', covering: 'cotton' } },
        lies: { l1: { branch: 'b1', runs: ['r1'], fits: years(undefined, 1957) }, l2: { branch: 'b1', runs: ['r1'], fits: years(1958) } },
        madeFor: years(1950, 1970),
      },
    },
    places: { dash: { title: 'Dash', xMm: 500, yMm: 0, zMm: 700 }, boot: { title: 'Boot' } },
    passages: { sill: { title: 'Sill tube', form: 'tube', insideMm: 18, largestFittingMm: 'unknown' } },
    runs: { r1: { from: 'dash', to: 'boot', lengthMm: 2200, passages: ['sill'], besideMetal: 'body' } },
    duties: {
      d1: { title: 'Side lights', when: { 'switch.turn': ['side', 'head'], engine: ['stopped', 'running'] }, must: ['tail'], mustNot: [], may: ['tow'] },
    },
    limits: { no1: { never: { 'switch.turn': ['off'], 'switch.dim': ['0.5'] }, why: 'the dimmer is locked' } },
    claims: {
      cl1: { about: ['wires', 'w1', 'sizeMm2'], says: 4, how: 'measured', by: 'owner', when: '1999-05-01' },
      cl2: { about: ['wires', 'w1', 'sizeMm2'], says: 2.5, how: 'papers', source: 'wiring diagram' },
    },
    layout: { order: ['battery', 'switch'], paths: { tail: { x: 3, y: 4 } }, photos: { 'tail:L': { photo: 'p1', x: 0.5, y: 0.25 } } },
  })
}
