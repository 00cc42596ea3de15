import type { RecordPart, WiringRecord } from '../src/record/index.ts'

/** How a thing on the vehicle is written into a record: by which kind, and how. A test reads and solves every example. */
export interface PartUse {
  readonly id: string
  readonly thing: string
  readonly kind: string
  readonly how: string
  /** Entries of `parts`. */
  readonly parts?: Readonly<Record<string, RecordPart>>
  /** What else of a record shows it. */
  readonly more?: Pick<WiringRecord, 'connectors' | 'halves' | 'options' | 'wires'>
}

/** A switch of one contact that is made in one position. */
function contactOf(title: string, axis: string, [rest, made]: readonly [string, string], joins: readonly [string, string], more: object = {}): RecordPart {
  return {
    kind: 'control', title,
    params: { axes: { [axis]: { positions: [rest, made], rest, ...more } }, rows: { made: { when: { [axis]: [made] }, joins: [...joins] } } },
  }
}

/** Every thing that a person may look for under a name that is no kind's. */
export const partUses: readonly PartUse[] = [
  {
    id: 'battery-isolator', thing: 'Battery isolator, master switch', kind: 'control', how: 'Between a battery post and its lead. State the ohms of its heavy contact.',
    parts: { isolator: { kind: 'control', title: 'Battery isolator', params: { axes: { key: { positions: ['in', 'out'], rest: 'in' } }, rows: { main: { when: { key: ['in'] }, joins: ['1', '2'], ohm: 0.0005 } } } } },
  },
  {
    id: 'in-line-fuse', thing: 'In-line fuse', kind: 'fuse', how: 'One fuse; its two wires end on it.',
    parts: { 'radio-fuse': { kind: 'fuse', title: 'Radio fuse', params: { ratingA: 2, ratingMeans: 'continuous' } } },
  },
  {
    id: 'fuse-box', thing: 'Fuse box', kind: 'fuse', how: 'One part with `ways`; fuses on a common bar share their first end.',
    parts: {
      fuses: {
        kind: 'fuse', title: 'Fuse box',
        params: { ratingMeans: 'blow', ways: { A: { from: 'A1', to: 'A2', ratingA: 35 }, B: { from: 'A3', to: 'A4', ratingA: 35 } } },
      },
    },
  },
  {
    id: 'lighting-switch', thing: 'Lighting switch (pull, rotary or key) with panel dimmer', kind: 'control',
    how: 'One axis of positions with its rows as the switch table shows them, and one with a range for the dimmer.',
    parts: {
      lights: {
        kind: 'control', title: 'Lighting switch',
        params: {
          axes: { pull: { positions: ['off', 'side', 'head'], rest: 'off' }, knob: { range: { from: 0, to: 100, unit: '%' }, rest: 100 } },
          rows: { side: { when: { pull: ['side', 'head'] }, joins: ['30', '58'] }, head: { when: { pull: ['head'] }, joins: ['30', '56'] } },
          resistors: { dimmer: { between: ['58', '58d'], axis: 'knob', ohmAt: [[0, 25], [100, 0]] } },
        },
      },
    },
  },
  {
    id: 'dip-switch', thing: 'Foot dip switch', kind: 'control', how: 'Two positions that both stay; each joins the feed to one beam.',
    parts: {
      dip: {
        kind: 'control', title: 'Dip switch',
        params: {
          axes: { foot: { positions: ['main', 'dip'], rest: 'dip' } },
          rows: { main: { when: { foot: ['main'] }, joins: ['56', '56a'] }, dip: { when: { foot: ['dip'] }, joins: ['56', '56b'] } },
        },
      },
    },
  },
  {
    id: 'dip-reflector', thing: 'Solenoid that dips a reflector', kind: 'electromagnet', how: 'A winding that is fed while dipped, with no contacts, or the one that puts its holding winding in; `pulled` means dipped.',
    parts: { reflector: { kind: 'electromagnet', title: 'Dipping reflector', params: { windings: { dip: { from: 'in', to: 'case', ohm: 6 } }, contacts: {}, pullV: 8 } } },
  },
  {
    id: 'turn-stalk', thing: 'Turn stalk that cancels itself, with the brake feed through it', kind: 'control',
    how: 'The wheel moves the lever back: for the wiring it stays where it is put. Rows of the brake feed are made where that side does not turn.',
    parts: {
      stalk: {
        kind: 'control', title: 'Turn stalk',
        params: {
          axes: { turn: { positions: ['left', 'off', 'right'], rest: 'off' } },
          rows: {
            'stop-left': { when: { turn: ['off', 'right'] }, joins: ['54', 'rear-left'] }, 'stop-right': { when: { turn: ['off', 'left'] }, joins: ['54', 'rear-right'] },
            'left': { when: { turn: ['left'] }, joins: ['49a', 'rear-left', 'front-left'] }, 'right': { when: { turn: ['right'] }, joins: ['49a', 'rear-right', 'front-right'] },
          },
        },
      },
    },
  },
  {
    id: 'hazard-switch', thing: 'Hazard switch', kind: 'control', how: 'Off, it passes the key\'s feed to the flasher; on, it opens that, feeds the flasher from the battery and joins both sides.',
    parts: {
      hazard: {
        kind: 'control', title: 'Hazard switch',
        params: {
          axes: { push: { positions: ['off', 'on'], rest: 'off' } },
          rows: { key: { when: { push: ['off'] }, joins: ['15', '49'] }, battery: { when: { push: ['on'] }, joins: ['30', '49'] }, both: { when: { push: ['on'] }, joins: ['49a', 'L', 'R'] } },
        },
      },
    },
  },
  {
    id: 'semaphore', thing: 'Semaphore arm', kind: 'electromagnet', how: 'Its solenoid, and the contact that feeds the lamp in the arm once it is up; the lamp is a part of its own.',
    parts: {
      'arm': { kind: 'electromagnet', title: 'Left arm', params: { windings: { lift: { from: 'in', to: 'case', ohm: 6 } }, contacts: { lamp: { from: 'in', to: 'tip' } }, pullV: 8 } },
      'arm-lamp': { kind: 'lamp', title: 'Lamp in the left arm', params: { powerW: 3 } },
    },
  },
  {
    id: 'stop-turn-relays', thing: 'Stop and turn relay box', kind: 'module', how: 'One part with the box\'s own terminals: its relay windings are inputs, its contacts follow by state.',
    parts: {
      relays: {
        kind: 'module', title: 'Stop and turn relays',
        params: {
          inputs: { left: { from: 'L', to: 'E', ohm: 60 }, right: { from: 'R', to: 'E', ohm: 60 } },
          contacts: {
            'stop-left': { from: 'stop', to: 'rear-left' }, 'stop-right': { from: 'stop', to: 'rear-right' },
            'turn-left': { from: '49a', to: 'rear-left' }, 'turn-right': { from: '49a', to: 'rear-right' },
          },
          states: {
            straight: { closed: ['stop-left', 'stop-right'], next: [{ when: ['left'], to: 'left' }, { when: ['right'], to: 'right' }] },
            left: { closed: ['turn-left', 'stop-right'], next: [{ unless: ['left'], to: 'straight' }] },
            right: { closed: ['stop-left', 'turn-right'], next: [{ unless: ['right'], to: 'straight' }] },
          },
        },
      },
    },
  },
  {
    id: 'two-filaments', thing: 'Bulb of two filaments', kind: 'lamp', how: 'One part with `filaments`; each begins at an end of its own name and ends on the shell.',
    parts: { rear: { kind: 'lamp', title: 'Left rear lamp', params: { filaments: { stop: { powerW: 21 }, tail: { powerW: 5 } } } } },
  },
  { id: 'door-switch', thing: 'Door switch', kind: 'control', how: 'Moved by the door; its case earths the lamp.', parts: { door: contactOf('Door switch', 'door', ['shut', 'open'], ['1', 'case'], { movedBy: 'door' }) } },
  { id: 'brake-switch', thing: 'Brake-lamp switch', kind: 'control', how: 'Moved by the brake fluid, or by the driver where the pedal works it.', parts: { brake: contactOf('Brake switch', 'pressure', ['none', 'up'], ['1', '2'], { movedBy: 'brake fluid', springsFrom: ['up'] }) } },
  { id: 'reversing-switch', thing: 'Reversing-lamp switch', kind: 'control', how: 'Moved by the gear lever.', parts: { reverse: contactOf('Reversing switch', 'gear', ['forward', 'reverse'], ['1', '2'], { movedBy: 'gear lever' }) } },
  {
    id: 'oil-switch', thing: 'Oil-pressure switch', kind: 'control', how: 'Moved by the oil pressure; `follows` says where it stands while the engine stands, is cranked or runs.',
    parts: {
      oil: {
        kind: 'control', title: 'Oil-pressure switch',
        params: {
          axes: { pressure: { positions: ['none', 'up'], rest: 'none', movedBy: 'oil pressure', follows: { stopped: 'none', cranking: 'none', running: 'up' } } },
          rows: { made: { when: { pressure: ['none'] }, joins: ['1', 'case'] } },
        },
      },
    },
  },
  {
    id: 'thermostat-fan', thing: 'Temperature switch, thermostat fan', kind: 'control', how: 'A switch moved by the temperature, before a motor.',
    parts: { 'thermostat': contactOf('Fan thermostat', 'water', ['cool', 'hot'], ['1', '2'], { movedBy: 'temperature' }), 'fan': { kind: 'motor', title: 'Fan', params: { ratedA: 8 } } },
  },
  {
    id: 'start-inhibitor', thing: 'Gear or clutch switch that forbids starting', kind: 'control', how: 'In the wire to the starter relay; moved by the gear lever, or by the driver\'s foot.',
    parts: { neutral: contactOf('Neutral switch', 'lever', ['gear', 'neutral'], ['1', '2'], { movedBy: 'gear lever' }) },
  },
  {
    id: 'brake-warning', thing: 'Brake-warning lamp with test contact', kind: 'control', how: 'One switch of two axes: fluid pressure, and the push that tries the lamp; each earths the lamp.',
    parts: {
      warning: {
        kind: 'control', title: 'Brake-warning switch',
        params: {
          axes: { fluid: { positions: ['equal', 'one lost'], rest: 'equal', movedBy: 'brake fluid' }, test: { positions: ['out', 'in'], rest: 'out', springsFrom: ['in'] } },
          rows: { lost: { when: { fluid: ['one lost'] }, joins: ['W', 'E'] }, tried: { when: { test: ['in'] }, joins: ['W', 'E'] } },
        },
      },
    },
  },
  {
    id: 'interlock', thing: 'Seat and belt switches with an interlock', kind: 'module', how: 'The switches are controls; the module is a sequence: the seat first, then the belt, then the starter relay may be earthed.',
    parts: {
      seat: contactOf('Seat switch', 'seat', ['empty', 'taken'], ['1', '2'], { movedBy: 'passenger' }), belt: contactOf('Belt switch', 'belt', ['open', 'shut'], ['1', '2']),
      interlock: {
        kind: 'module', title: 'Interlock',
        params: {
          inputs: { seat: { from: 'seat', to: '31', ohm: 1000 }, belt: { from: 'belt', to: '31', ohm: 1000 } }, contacts: { start: { from: 'start', to: '31' } },
          states: {
            empty: { tells: 'forbids starting', next: [{ when: ['seat'], unless: ['belt'], to: 'seated' }] },
            seated: { tells: 'forbids starting', next: [{ unless: ['seat'], to: 'empty' }, { when: ['belt'], to: 'ready' }] },
            ready: { closed: ['start'], next: [{ unless: ['seat'], to: 'empty' }] },
          },
        },
      },
    },
  },
  {
    id: 'buzzer', thing: 'Buzzer that sounds for a while', kind: 'module', how: 'A delay leads out of the state in which it sounds; the sounder itself is a horn of few amps, or a load of the module.',
    parts: {
      'belt-buzzer': {
        kind: 'module', title: 'Belt buzzer',
        params: {
          inputs: { key: { from: '15', to: '31', ohm: 1000 } }, contacts: { buzz: { from: '15', to: 'out' } },
          states: { off: { next: [{ when: ['key'], to: 'sounds' }] }, sounds: { closed: ['buzz'], next: [{ afterMs: 8000, to: 'done' }] }, done: { next: [{ unless: ['key'], to: 'off' }] } },
        },
      },
      'sounder': { kind: 'horn', title: 'Sounder', params: { ratedA: 0.1 } },
    },
  },
  {
    id: 'lights-left-on', thing: 'Buzzer for lights left on', kind: 'horn', how: 'Between the side-lamp feed and the door switch: no module is needed.',
    parts: { 'sounder': { kind: 'horn', title: 'Sounder', params: { ratedA: 0.1 } } },
  },
  {
    id: 'horn-earthed', thing: 'Horn switched on the earth side', kind: 'horn', how: 'Fed all the time; the button earths it through the column, whose joint to the body is a fixing.',
    parts: { horn: { kind: 'horn', title: 'Horn', params: { ratedA: 4 } }, button: contactOf('Horn button', 'push', ['out', 'in'], ['1', 'column'], { springsFrom: ['in'] }) },
  },
  {
    id: 'horn-fed', thing: 'Horn switched on the supply side', kind: 'horn', how: 'The button lies before it.',
    parts: { horn: { kind: 'horn', title: 'Horn', params: { ratedA: 4 } }, button: contactOf('Horn button', 'push', ['out', 'in'], ['1', '2'], { springsFrom: ['in'] }) },
  },
  {
    id: 'blower', thing: 'Blower with speed resistor', kind: 'motor', how: 'A switch, a resistor before the motor for the low speed, and the motor.',
    parts: {
      'blower-switch': {
        kind: 'control', title: 'Blower switch',
        params: { axes: { turn: { positions: ['off', 'slow', 'fast'], rest: 'off' } }, rows: { slow: { when: { turn: ['slow'] }, joins: ['30', 'slow'] }, fast: { when: { turn: ['fast'] }, joins: ['30', 'fast'] } } },
      },
      'dropper': { kind: 'resistor', title: 'Speed resistor', params: { ohm: 1.5 } }, 'blower': { kind: 'motor', title: 'Blower', params: { ratedA: 6 } },
    },
  },
  { id: 'washer', thing: 'Washer pump, rotary fuel pump', kind: 'motor', how: 'A small motor.', parts: { washer: { kind: 'motor', title: 'Washer', params: { ratedA: 3 } } } },
  { id: 'fuel-pump', thing: 'Pulsing fuel pump', kind: 'horn', how: 'Breaks its own current as a horn does: state its mean amps.', parts: { pump: { kind: 'horn', title: 'Fuel pump', params: { ratedA: 1.5 } } } },
  {
    id: 'cut-off-valve', thing: 'Cut-off valve', kind: 'electromagnet', how: 'A winding with no contacts; `pulled` means that fuel flows.',
    parts: { valve: { kind: 'electromagnet', title: 'Idle cut-off', params: { windings: { coil: { from: 'in', to: 'case', ohm: 24 } }, contacts: {} } } },
  },
  {
    id: 'glow-plugs', thing: 'Glow plugs in series with their indicator', kind: 'resistor', how: 'Each a resistor of its hot ohms (no published figure was found for how they rise); the indicator is one too. One burnt through stops all.',
    parts: {
      'plug-1': { kind: 'resistor', title: 'Glow plug 1', params: { ohm: 0.04 } }, 'plug-2': { kind: 'resistor', title: 'Glow plug 2', params: { ohm: 0.04 } },
      'indicator': { kind: 'resistor', title: 'Glow indicator', params: { ohm: 0.06 } }, 'glow-dropper': { kind: 'resistor', title: 'Series resistor', params: { ohm: 0.16 } },
    },
  },
  {
    id: 'starter-switch', thing: 'Inertia starter with separate switch', kind: 'motor', how: 'A heavy switch, pulled by hand, or an electromagnet with a heavy contact, before the motor; its pinion needs no wire.',
    parts: {
      'starter-switch': { kind: 'control', title: 'Starter switch', params: { axes: { pull: { positions: ['in', 'out'], rest: 'in', springsFrom: ['out'] } }, rows: { main: { when: { pull: ['out'] }, joins: ['1', '2'], ohm: 0.0005 } } } },
      'starter': { kind: 'motor', title: 'Starter', params: { ratedA: 150, stalledOhm: 0.02 } },
    },
  },
  {
    id: 'charging-rate', thing: 'Third-brush dynamo, its rate switched with the lights', kind: 'dynamo', how: '`thirdBrush`; its F is earthed by the lighting switch, through a resistor for the low rate.',
    parts: {
      dynamo: { kind: 'dynamo', title: 'Dynamo', params: { thirdBrush: true, ratedA: 12, ratio: 1 } }, rate: { kind: 'resistor', title: 'Charging resistor', params: { ohm: 3 } },
      lights: {
        kind: 'control', title: 'Lighting and charging switch',
        params: { axes: { turn: { positions: ['off', 'side', 'head'], rest: 'off' } }, rows: { low: { when: { turn: ['off'] }, joins: ['F', 'rate'] }, full: { when: { turn: ['side', 'head'] }, joins: ['F', 'E'] } } },
      },
    },
  },
  { id: 'ballast', thing: 'Ballast resistor', kind: 'resistor', how: 'Before a coil that is `ballasted`; the starter\'s contact bridges it.', parts: { ballast: { kind: 'resistor', title: 'Ballast', params: { ohm: 1.5 } }, coil: { kind: 'coil', title: 'Coil', params: { ballasted: true, primaryOhm: 1.5 } } } },
  {
    id: 'resistor-wire', thing: 'Resistor wire', kind: 'wire', how: 'A wire with its `ohm` stated.',
    more: { wires: { 'w-ballast': { ends: [{ at: 'key:15' }, { at: 'coil:15' }], ohm: 1.5, note: 'pink resistance wire in the loom' } } },
  },
  {
    id: 'tachometer', thing: 'Tachometer in series with the coil', kind: 'module', how: 'A loop that the coil\'s current passes, and a small load for its works; it has one state.',
    parts: { tachometer: { kind: 'module', title: 'Tachometer', params: { loads: { loop: { from: 'in', to: 'coil', ohm: 0.02 }, works: { from: 'B', to: 'case', ohm: 240 } } } } },
  },
  {
    id: 'electronic-ignition', thing: 'Electronic ignition', kind: 'module', how: 'Closes the coil\'s primary while it is fed and the engine turns.',
    parts: {
      ignition: {
        kind: 'module', title: 'Electronic ignition',
        params: {
          inputs: { fed: { from: '15', to: 'case', ohm: 240 }, turns: {} }, contacts: { transistor: { from: '1', to: 'case', ohm: 0.2 } },
          states: { rest: { next: [{ when: ['fed', 'turns'], to: 'fires' }] }, fires: { closed: ['transistor'], next: [{ unless: ['fed'], to: 'rest' }, { unless: ['turns'], to: 'rest' }] } },
        },
      },
    },
  },
  {
    id: 'magneto-switch', thing: 'Magneto with earthing switch', kind: 'magneto', how: 'The switch earths terminal 2 to stop the engine; battery and key have no part in it.',
    parts: { magneto: { kind: 'magneto', title: 'Magneto', params: { primaryA: 4, primaryOhm: 0.5, pointsOhm: 0.5 } }, stop: contactOf('Magneto switch', 'turn', ['run', 'stop'], ['2', '31']) },
  },
  {
    id: 'overdrive', thing: 'Overdrive with relay and switches', kind: 'electromagnet', how: 'A relay whose winding goes through the hand switch and a gear switch; a solenoid whose contact takes its strong winding out once it is in.',
    parts: {
      'overdrive-switch': contactOf('Overdrive switch', 'lever', ['out', 'in'], ['1', '2']), 'gear-switch': contactOf('Overdrive gear switch', 'gear', ['low', 'top'], ['1', 'case'], { movedBy: 'gear lever' }),
      'overdrive-relay': { kind: 'electromagnet', title: 'Overdrive relay', params: { windings: { coil: { from: '86', to: '85', ohm: 80 } } } },
      'solenoid': {
        kind: 'electromagnet', title: 'Overdrive solenoid',
        params: {
          windings: { pull: { from: 'in', to: '~cut', ohm: 0.75, turns: 100 }, hold: { from: 'in', to: 'case', ohm: 12, turns: 800 } },
          contacts: { cut: { from: '~cut', to: 'case', closed: 'released' } }, pullAt: 1500, releaseAt: 300,
        },
      },
    },
  },
  {
    id: 'fuel-sender', thing: 'Tank sender, temperature sender', kind: 'control', how: 'An axis with a range, moved by the fuel or the temperature, and a resistor with its pairs of number and ohms; the gauge is its own part.',
    parts: {
      tank: {
        kind: 'control', title: 'Fuel sender',
        params: { axes: { float: { range: { from: 0, to: 40, unit: 'litres' }, rest: 0, movedBy: 'fuel' } }, resistors: { track: { between: ['T', 'case'], axis: 'float', ohmAt: [[0, 240], [40, 35]] } } },
      },
      fuel: { kind: 'gauge', title: 'Fuel gauge', params: { ohm: 65, unit: 'litres', scale: [[0.04, 0], [0.12, 40]] } },
    },
  },
  { id: 'heated-window', thing: 'Heated window, seat heater', kind: 'resistor', how: 'By its watts, often behind a relay.', parts: { window: { kind: 'resistor', title: 'Heated window', params: { powerW: 96, ratedV: 12 } } } },
  {
    id: 'lighter', thing: 'Cigar lighter', kind: 'control', how: 'A push that springs back, before the resistor that glows.',
    parts: { lighter: contactOf('Cigar lighter', 'push', ['out', 'in'], ['1', '2'], { springsFrom: ['in'] }), element: { kind: 'resistor', title: 'Glowing element', params: { ohm: 1.5 } } },
  },
  { id: 'radio', thing: 'Radio', kind: 'resistor', how: 'By its watts, behind its in-line fuse; what it plays on is none of the wiring\'s.', parts: { 'radio': { kind: 'resistor', title: 'Radio', params: { powerW: 12 } }, 'radio-fuse': { kind: 'fuse', title: 'Radio fuse', params: { ratingA: 2 } } } },
  {
    id: 'socket', thing: 'Accessory socket', kind: 'connector', how: 'A half of a connector on the vehicle; what is plugged in comes with the other half, mostly under an option.',
    more: { connectors: { socket: { title: 'Accessory socket' } }, halves: { 'socket-front': { connector: 'socket', side: 'a', ways: ['+', '-'] } } },
  },
  {
    id: 'trailer-socket', thing: 'Trailer socket', kind: 'connector', how: 'As an accessory socket; the trailer\'s half, with its lamps, fits where the vehicle has the option.',
    more: {
      options: { trailer: { title: 'Trailer' } }, connectors: { tow: { title: 'Trailer socket' } },
      halves: {
        'tow-car': { connector: 'tow', side: 'a', ways: ['L', '31', 'R', '54'] },
        'tow-trailer': { connector: 'tow', side: 'b', ways: ['L', '31', 'R', '54'], fits: [{ with: ['trailer'] }] },
      },
    },
  },
]
