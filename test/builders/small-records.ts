import type { WiringRecord } from '../../src/record/index.ts'
import { fixing, makeRecord, part, wire } from './record.ts'

const lamp = (id: string, title: string, powerW: number) => part(id, 'lamp', { powerW }, { title })
const toggle = (id: string, title: string) => part(id, 'control', {
  axes: { lever: { title, positions: ['off', 'on'], rest: 'off' } }, rows: { made: { when: { lever: ['on'] }, joins: ['1', '2'] } },
}, { title })
const red = { colour: { base: 'red' }, sizeMm2: 1 }
const brown = { colour: { base: 'brown' }, sizeMm2: 1 }

/** A battery, a switch and a lamp. */
export function makeLampAndSwitch(): WiringRecord {
  return makeRecord({
    id: 'lamp-and-switch', title: 'Lamp and switch', metals: { frame: { title: 'frame' } },
    parts: [part('battery', 'battery', {}, { title: 'Battery' }), lamp('lamp', 'Lamp', 21), toggle('switch', 'Switch')],
    wires: [
      wire('w1', 'battery:+', 'switch:1', { ...red, sizeMm2: 1.5, lengthMm: 500 }), wire('w2', 'switch:2', 'lamp:in', { colour: { base: 'red', tracers: ['white'] }, sizeMm2: 1, lengthMm: 900 }),
      wire('w3', 'lamp:out', 'frame', { ...brown, lengthMm: 200 }), wire('w4', 'battery:-', 'frame', { colour: { base: 'black' }, sizeMm2: 10, lengthMm: 300 }),
    ],
  })
}

/** Positive earth, two lamps whose common earth goes through a splice and a connector, a loose end, sizes in strands. */
export function makeSharedEarth(): WiringRecord {
  return makeRecord({
    id: 'shared-earth', title: 'Shared earth', supply: '6+', metals: { body: { title: 'body' }, wing: { title: 'wing' } },
    parts: [
      part('battery', 'battery', {}, { title: 'Battery' }), part('fuse', 'fuse', { ratingA: 10 }, { title: 'Fuse' }),
      toggle('side', 'Side lamp switch'), toggle('stop', 'Stop switch'), lamp('tail', 'Tail lamp', 6), lamp('brake', 'Stop lamp', 18), lamp('plate', 'Number plate lamp', 6),
    ],
    splices: { s1: {}, s2: {} },
    connectors: { c: { title: 'Wing connector' } },
    halves: { ca: { connector: 'c', side: 'a', ways: ['1', '2'] }, cb: { connector: 'c', side: 'b', ways: ['1'] } },
    wires: [
      wire('1', 'battery:-', 'fuse:in', { colour: { base: 'brown', tracers: ['blue'] }, sizeStrands: '44/0.30' }), wire('2', 'fuse:out', 'side:1', { colour: { base: 'brown' }, sizeStrands: '28/0.30' }),
      wire('3', 'fuse:out', 'stop:1', { colour: { base: 'brown' }, sizeAwg: '16' }), wire('4', 'side:2', 's1', red), wire('5', 's1', 'tail:in', red), wire('6', 's1', 'plate:in', red),
      wire('7', 'stop:2', 'brake:in', { colour: { base: 'green', tracers: ['purple'], letters: 'GP' }, sizeMm2: 0.75 }),
      wire('8', 'tail:out', 's2', { colour: { base: 'black' } }), wire('9', 'brake:out', 's2', { colour: { base: 'black' } }), wire('10', 's2', 'ca:1', { colour: { base: 'black' } }),
      wire('11', 'cb:1', 'body', { colour: { base: 'black' } }), wire('12', 'battery:+', 'body', { colour: 'bare', sizeMm2: 16 }), wire('13', 'ca:2', 'brake:out', { colour: 'unknown' }),
      wire('14', 'side:2', 'body', {}),
    ].map(([id, one]) => id === '14' ? [id, { ...one, ends: [{ at: 'side:2' }, { at: { place: 'unknown', state: 'loose' } }] }] as const : [id, one] as const),
    fixings: [fixing('plate-on-wing', 'plate:out', 'wing'), fixing('wing-on-body', 'wing', 'body')],
  })
}

/** A horn by a relay, an alternator with its warning lamp, and a switch of several poles. */
export function makeRelayAndAlternator(): WiringRecord {
  return makeRecord({
    id: 'relay-and-alternator', title: 'Relay and alternator', metals: { body: { title: 'body' } },
    parts: [
      part('battery', 'battery', {}, { title: 'Battery' }), part('relay', 'electromagnet', {}, { title: 'Horn relay' }), part('horn', 'horn', {}, { title: 'Horn' }),
      toggle('push', 'Horn push'), part('alternator', 'alternator', { ratedA: 35 }, { title: 'Alternator' }), lamp('charge', 'Charge lamp', 2.2), lamp('room', 'Lamp over the door', 5),
      part('key', 'control', {
        axes: { turn: { title: 'Key', positions: ['off', 'on'], rest: 'off' } },
        rows: { a: { when: { turn: ['on'] }, joins: ['30', '15'] }, b: { when: { turn: ['off'] }, joins: ['P', 'R'] } },
      }, { title: 'Key switch' }),
    ],
    wires: [
      wire('1', 'battery:+', 'relay:30', red), wire('2', 'relay:87', 'horn:in', red), wire('3', 'battery:+', 'relay:86', red), wire('4', 'relay:85', 'push:1', { colour: { base: 'black', tracers: ['white', 'red'] } }),
      wire('5', 'push:2', 'body', brown), wire('6', 'battery:-', 'body', brown), wire('7', 'alternator:B+', 'battery:+', { ...red, sizeMm2: 6 }), wire('8', 'battery:+', 'key:30', red),
      wire('9', 'key:15', 'charge:in', { colour: { base: 'blue' } }), wire('10', 'charge:out', 'alternator:D+', { colour: { base: 'blue', tracers: ['white'] } }), wire('11', 'battery:+', 'key:P', red), wire('12', 'key:R', 'room:in', red),
    ],
    fixings: [fixing('f1', 'horn:out', 'body'), fixing('f2', 'alternator:case', 'body'), fixing('f3', 'room:out', 'body')],
  })
}

/** A box of two fuses on one bar, of which the right one cannot hold what hangs on it, and a voltmeter. */
export function makeFuseBox(): WiringRecord {
  return makeRecord({
    id: 'fuse-box', title: 'Fuse box', metals: { body: { title: 'body' } },
    parts: [
      part('battery', 'battery', {}, { title: 'Battery' }), part('box', 'fuse', { ratingA: 8, ways: { left: { from: 'bar', to: '1' }, right: { from: 'bar', to: '2' } } }, { title: 'Fuse box' }),
      part('volts', 'voltmeter', {}, { title: 'Voltmeter' }), lamp('lamp', 'Lamp', 5), part('heater', 'resistor', { ohm: 0.2 }, { title: 'Heater' }),
    ],
    wires: [
      wire('w1', 'battery:+', 'box:bar', red), wire('w2', 'box:1', 'lamp:in', red), wire('w3', 'lamp:out', 'body', brown), wire('w4', 'box:2', 'heater:a', red), wire('w5', 'heater:b', 'body', brown),
      wire('w6', 'battery:-', 'body', brown), wire('w7', 'battery:+', 'volts:in', red), wire('w8', 'volts:out', 'body', brown),
    ],
  })
}

/** Twenty alike circuits, each a fuse, a switch and two lamps behind a splice: 141 wires. */
export function makeTwentyCircuits(): WiringRecord {
  const numbers = Array.from({ length: 20 }, (_, i) => i + 1)
  return makeRecord({
    id: 'twenty-circuits', title: 'Twenty circuits', metals: { body: { title: 'body' } },
    parts: [part('battery', 'battery', {}, { title: 'Battery' }), ...numbers.flatMap((n) => [
      part(`fuse-${n}`, 'fuse', { ratingA: 10 }, { title: `Fuse ${n}` }), toggle(`switch-${n}`, `Switch ${n}`), lamp(`left-${n}`, `Left lamp ${n}`, 5), lamp(`right-${n}`, `Right lamp ${n}`, 5),
    ])],
    splices: Object.fromEntries(numbers.map((n) => [`s${n}`, {}])),
    wires: [wire('earth', 'battery:-', 'body', { ...brown, sizeMm2: 16 }), ...numbers.flatMap((n) => [
      wire(`${n}a`, 'battery:+', `fuse-${n}:in`, red), wire(`${n}b`, `fuse-${n}:out`, `switch-${n}:1`, red), wire(`${n}c`, `switch-${n}:2`, `s${n}`, red),
      wire(`${n}d`, `s${n}`, `left-${n}:in`, red), wire(`${n}e`, `s${n}`, `right-${n}:in`, red), wire(`${n}f`, `left-${n}:out`, 'body', brown), wire(`${n}g`, `right-${n}:out`, 'body', brown),
    ])],
    layout: { circuits: Object.fromEntries(numbers.map((n) => [`Circuit ${n}`, [`fuse-${n}`, `switch-${n}`, `left-${n}`, `right-${n}`]])) },
  })
}
