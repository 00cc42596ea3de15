import type { Colour, RecordWire, WiringRecord } from '../../src/record/index.ts'
import { fixing, makeRecord, part, wire } from './record.ts'

const hue = (text: string): Colour => {
  const [base, ...tracers] = text.split('/')
  return { base, ...tracers.length > 0 && { tracers } }
}

const run = (id: string, from: string, to: string, colour: string, sizeMm2: number, lengthMm: number): readonly [string, RecordWire] =>
  wire(id, from, to, { sizeMm2, lengthMm, colour: hue(colour) })

const lamp = (id: string, title: string, powerW: number) => part(id, 'lamp', { powerW, ratedV: 12 }, { title })

/** A three-wheeled parcel van of an invented make, for tests of drawing and page; it has no layout. */
export function makeTessarby(): WiringRecord {
  return makeRecord({
    id: 'tessarby-errand', title: 'Tessarby Errand', metals: { body: { title: 'body' }, block: { title: 'engine' } },
    engine: { engine: { crankingRpm: 200, idleRpm: 700, cruiseRpm: 2500 } },
    parts: [
      part('battery', 'battery', { capacityAh: 50 }, { title: 'Battery' }),
      part('key', 'control', {
        axes: { turn: { title: 'Key', positions: ['off', 'on', 'start'], rest: 'off', springsFrom: ['start'] } },
        rows: { run: { when: { turn: ['on', 'start'] }, joins: ['30', '15'] }, crank: { when: { turn: ['start'] }, joins: ['30', '50'] } },
      }, { title: 'Key switch' }),
      part('light', 'control', {
        axes: { pull: { title: 'Lighting switch', positions: ['off', 'side', 'head'], rest: 'off' } },
        rows: { side: { when: { pull: ['side', 'head'] }, joins: ['30', '58'] }, head: { when: { pull: ['head'] }, joins: ['30', '56'] } },
      }, { title: 'Lighting switch' }),
      part('dip', 'control', {
        axes: { foot: { title: 'Dip switch', positions: ['dip', 'main'], rest: 'dip' } },
        rows: { dip: { when: { foot: ['dip'] }, joins: ['56', '56b'] }, main: { when: { foot: ['main'] }, joins: ['56', '56a'] } },
      }, { title: 'Dip switch' }),
      part('brake', 'control', { axes: { pedal: { title: 'Brake pedal', positions: ['up', 'pressed'], rest: 'up', springsFrom: ['pressed'] } }, rows: { made: { when: { pedal: ['pressed'] }, joins: ['a', 'b'] } } }, { title: 'Brake switch' }),
      part('push', 'control', { axes: { ring: { title: 'Horn push', positions: ['out', 'pressed'], rest: 'out', springsFrom: ['pressed'] } }, rows: { made: { when: { ring: ['pressed'] }, joins: ['H', 'E'] } } }, { title: 'Horn push' }),
      part('stalk', 'control', {
        axes: { turn: { title: 'Turn stalk', positions: ['left', 'middle', 'right'], rest: 'middle' } },
        rows: { left: { when: { turn: ['left'] }, joins: ['49a', 'L'] }, right: { when: { turn: ['right'] }, joins: ['49a', 'R'] } },
      }, { title: 'Turn stalk' }),
      part('panel', 'control', {
        axes: { knob: { title: 'Panel dimmer', range: { from: 0, to: 10 }, rest: 10 } },
        resistors: { track: { between: ['58', '58d'], axis: 'knob', ohmAt: [[0, 40], [10, 0.2]] } },
      }, { title: 'Panel dimmer' }),
      part('oil', 'control', { axes: { press: { title: 'Oil pressure', positions: ['none', 'up'], rest: 'none', movedBy: 'oil pressure', follows: { stopped: 'none', cranking: 'none', running: 'up' } } }, rows: { made: { when: { press: ['none'] }, joins: ['t', 'case'] } } }, { title: 'Oil pressure switch' }),
      part('flasher', 'flasher', { ratedW: 42 }, { title: 'Flasher' }),
      part('f1', 'fuse', { ratingA: 15 }, { title: 'Fuse 1' }),
      part('f2', 'fuse', { ratingA: 8 }, { title: 'Fuse 2' }),
      part('f3', 'fuse', { ratingA: 8 }, { title: 'Fuse 3' }),
      part('solenoid', 'electromagnet', { windings: { coil: { from: '50', to: 'case', ohm: 4, turns: 200 } }, contacts: { make: { from: '30', to: 'M', ohm: 0.001 } }, pullV: 7, releaseV: 3 }, { title: 'Starter solenoid' }),
      part('starter', 'motor', {}, { title: 'Starter' }),
      part('dynamo', 'dynamo', { ratedA: 18 }, { title: 'Dynamo' }),
      part('box', 'control-box', { ratedA: 18 }, { title: 'Control box' }),
      lamp('charge', 'Charge lamp', 2.2), lamp('oillamp', 'Oil lamp', 2.2), lamp('panellamp', 'Panel lamp', 3), lamp('mainlamp', 'Main beam lamp', 2.2),
      part('head', 'lamp', { filaments: { main: { title: 'main', from: '56a', powerW: 45 }, dip: { title: 'dip', from: '56b', powerW: 40 } }, ratedV: 12 }, { title: 'Headlamp' }),
      lamp('front', 'Front side lamp', 5), lamp('taill', 'Tail lamp, left', 5), lamp('tailr', 'Tail lamp, right', 5), lamp('plate', 'Number plate lamp', 5),
      lamp('stop', 'Stop lamp', 21), lamp('fl', 'Turn lamp, front left', 21), lamp('rl', 'Turn lamp, rear left', 21), lamp('fr', 'Turn lamp, front right', 21), lamp('rr', 'Turn lamp, rear right', 21),
      part('horn', 'horn', {}, { title: 'Horn' }),
      part('coil', 'coil', {}, { title: 'Ignition coil' }),
    ],
    splices: { s1: {}, s2: {} },
    wires: [
      run('1', 'battery:+', 'solenoid:30', 'black', 16, 900), run('2', 'battery:-', 'body', 'black', 16, 400), run('3', 'solenoid:M', 'starter:in', 'black', 16, 300),
      run('4', 'solenoid:30', 'box:A', 'brown', 4, 900), run('5', 'box:A', 'key:30', 'brown', 2.5, 700), run('6', 'box:A', 'f1:in', 'brown', 2.5, 300),
      run('7', 'f1:out', 'light:30', 'brown/blue', 2.5, 600), run('8', 'key:15', 'f2:in', 'white', 1.5, 500), run('9', 'key:15', 'coil:15', 'white/black', 1.5, 900),
      run('10', 'key:15', 'charge:in', 'white/red', 0.75, 300), run('11', 'charge:out', 'box:D', 'yellow', 0.75, 800), run('12', 'key:50', 'solenoid:50', 'white/red', 1.5, 1200),
      run('13', 'box:D', 'dynamo:D', 'yellow', 4, 1100), run('14', 'box:F', 'dynamo:F', 'yellow/green', 1.5, 1100), run('15', 'box:E', 'body', 'black', 1.5, 200),
      run('16', 'key:15', 'oillamp:in', 'white/brown', 0.75, 300), run('17', 'oillamp:out', 'oil:t', 'white/brown', 0.75, 1500),
      run('18', 'light:58', 'f3:in', 'red', 1.5, 400), run('19', 'f3:out', 's1', 'red/black', 1.0, 900), run('20', 's1', 'front:in', 'red', 0.75, 1100), run('21', 's1', 'taill:in', 'red', 0.75, 2600),
      run('22', 's1', 'tailr:in', 'red/orange', 0.75, 2900), run('23', 's1', 'plate:in', 'red/white', 0.75, 2800), run('24', 'light:58', 'panel:58', 'red/green', 0.75, 300), run('25', 'panel:58d', 'panellamp:in', 'red/white', 0.75, 300),
      run('26', 'light:56', 'dip:56', 'blue', 2.5, 800), run('27', 'dip:56a', 'head:56a', 'blue/white', 2.5, 1300), run('28', 'dip:56b', 'head:56b', 'blue/red', 2.5, 1300), run('29', 'dip:56a', 'mainlamp:in', 'blue/white', 0.75, 900),
      run('30', 'f2:out', 'brake:a', 'green', 1.0, 700), run('31', 'brake:b', 'stop:in', 'green/purple', 1.0, 2500), run('32', 'f2:out', 'flasher:49', 'green', 1.0, 400), run('33', 'flasher:49a', 'stalk:49a', 'green/brown', 1.0, 500),
      run('34', 'stalk:L', 'fl:in', 'green/red', 1.0, 1300), run('35', 'stalk:L', 'rl:in', 'green/red', 1.0, 2700), run('36', 'stalk:R', 'fr:in', 'green/white', 1.0, 1300), run('37', 'stalk:R', 'rr:in', 'green/white', 1.0, 2900),
      run('38', 'f2:out', 'horn:in', 'green', 1.0, 900), run('39', 'horn:out', 'push:H', 'brown/black', 1.0, 800), run('40', 'push:E', 'body', 'black', 1.0, 300),
      run('41', 'head:out', 'body', 'black', 2.5, 400), run('42', 'taill:out', 's2', 'black', 0.75, 200), run('43', 'stop:out', 's2', 'black', 1.0, 200), run('44', 's2', 'body', 'black', 1.5, 300),
      wire('45', 'block', 'body', { sizeMm2: 10, lengthMm: 300, colour: 'bare' }),
    ],
    fixings: [
      ...['panellamp', 'mainlamp', 'front', 'tailr', 'plate', 'fl', 'rl', 'fr', 'rr'].map((id) => fixing(`x-${id}`, `${id}:out`, 'body')),
      fixing('x-sol', 'solenoid:case', 'body'), fixing('x-start', 'starter:out', 'block'), fixing('x-dyn', 'dynamo:case', 'block'), fixing('x-oil', 'oil:case', 'block'), fixing('x-coil', 'coil:1', 'block'),
    ],
  })
}
