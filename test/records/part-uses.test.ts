// The page on part kinds says which kind serves for what on the vehicle. Every example there is written out as a record, read
// again, and solved against arithmetic by hand.
import { describe, expect, it } from 'vitest'
import { partUses, type PartUse } from '../../scripts/part-uses.ts'
import type { Fault, Setting } from '../../src/circuit/index.ts'
import { writeRecord } from '../../src/record/index.ts'
import { IDEAL } from '../builders/circuits.ts'
import { openPlan } from '../builders/on-battery.ts'
import { link, makeRecord, part, type RecordPlan } from '../builders/record.ts'
import { lampAmps } from './by-hand.ts'
import { openVehicle, readRecordText, type OpenVehicle } from './open-vehicle.ts'

const solvedIds = new Set<string>()

function useOf(id: string): PartUse {
  solvedIds.add(id)
  const use = partUses.find((one) => one.id === id)
  if (!use) throw new RangeError(`no use ${id}`)
  return use
}

/** The parts of an example with a battery of 12 V, wires without resistance written `from > to`, and further parts. */
function around(id: string, wires: string, more: RecordPlan['parts'] = [], rest: Partial<RecordPlan> = {}): OpenVehicle {
  const { parts = {}, more: pieces = {} } = useOf(id)
  return openPlan({
    assume: IDEAL, ...pieces, ...rest,
    parts: [part('battery', 'battery', { emfV: 12, ohm: 0 }), ...Object.entries(parts), ...more],
    wires: [
      link('e', 'battery:-', 'body'),
      ...wires.split(',').map((pair, i) => { const [from, to] = pair.split('>').map((end) => end.trim()); return link(`w${i + 1}`, from, to) }),
      ...Object.entries(pieces.wires ?? {}),
    ],
  })
}

const ohms = (id: string, ohm: number) => part(id, 'resistor', { ohm })
const lamp = (id: string, powerW: number) => part(id, 'lamp', { powerW, ratedV: 12 })

function at(vehicle: OpenVehicle, controls: Setting['controls'] = {}, more: Partial<Setting> = {}, faults: readonly Fault[] = []) {
  return vehicle.solve({ controls, ...more }, { faults }).solved
}
/** Parts whose lamp is lit. */
const litOf = ({ lamps }: ReturnType<typeof at>) => Object.keys(lamps).filter((id) => lamps[id].class === 'normal').sort()
/** The battery's least resistance, 0.1 mΩ, is all that these figures leave out. */
const near = (value: number | null, expected: number) => { expect(Math.abs(value! - expected)).toBeLessThanOrEqual(0.003 * Math.abs(expected) + 1e-9) }

describe('supply', () => {
  it('a battery isolator cuts the earth lead', () => {
    const { parts } = useOf('battery-isolator')
    const vehicle = openPlan({
      assume: IDEAL, parts: [part('battery', 'battery', { emfV: 12, ohm: 0 }), ...Object.entries(parts!), ohms('load', 1)],
      wires: [link('w1', 'battery:-', 'isolator:1'), link('w2', 'isolator:2', 'body'), link('w3', 'battery:+', 'load:a'), link('w4', 'load:b', 'body')],
    })
    near(at(vehicle).elements.load.amps, 12 / (1 + 0.0005))
    expect(at(vehicle, { 'isolator.key': 'out' }).elements.load.amps).toBe(0)
  })

  it('an in-line fuse blows above 2.7 A', () => {
    const after = (ohm: number) => at(around('in-line-fuse', 'battery:+ > radio-fuse:in, radio-fuse:out > load:a, load:b > body', [ohms('load', ohm)])).states['radio-fuse.element']
    // 135 % of 2 A: 12 V over 5 Ω are 2.4 A, over 4 Ω 3 A.
    expect([after(5), after(4)]).toEqual(['whole', 'blown'])
  })

  it('a fuse box blows one way and keeps the other', () => {
    const vehicle = around('fuse-box', 'battery:+ > fuses:A1, battery:+ > fuses:A3, fuses:A2 > horns:a, horns:b > body, fuses:A4 > lamps:a, lamps:b > body', [ohms('horns', 0.3), ohms('lamps', 0.5)])
    // 40 A on a printed 35 A that is its blow figure; 24 A on the other.
    expect(at(vehicle).states).toEqual({ 'fuses.A-element': 'blown', 'fuses.B-element': 'whole' })
    near(at(vehicle).elements.lamps.amps, 24)
  })

  it('a charging rate falls by the resistor in the field', () => {
    const vehicle = around('charging-rate', [
      'dynamo:F > lights:F, lights:rate > rate:a, rate:b > body, lights:E > body, dynamo:case > body', 'dynamo:D > cutout:D, cutout:E > body, cutout:A > battery:+',
    ].join(), [part('cutout', 'electromagnet', {
      windings: { shunt: { from: 'D', to: 'E', ohm: 60, turns: 1000 }, series: { from: '~c', to: 'A', ohm: 0.001, turns: 5 } }, contacts: { main: { from: 'D', to: '~c' } }, pullAt: 213, releaseAt: 190,
    })])
    const rate = (position: string) => at(vehicle, { 'lights.turn': position }, { engine: 2000 })
    const low = rate('off'), full = rate('head')
    expect(low.wires.w8.amps!).toBeGreaterThan(1)
    expect(low.wires.w8.amps!).toBeLessThan(0.8 * full.wires.w8.amps!)
    // F lies above earth by the field amps through 3 Ω, or not at all.
    near(low.voltages['dynamo:F'], 3 * low.elements['dynamo.field'].amps!)
    expect(full.voltages['dynamo:F']).toBeCloseTo(0, 6)
  })
})

describe('lamps', () => {
  it('a lighting switch dims its panel lamps', () => {
    const vehicle = around('lighting-switch', 'battery:+ > lights:30, lights:58d > panel:a, panel:b > body, lights:56 > head:a, head:b > body', [ohms('panel', 10), ohms('head', 2)])
    // Straight from 25 Ω at 0 to none at 100: 15 Ω at 40.
    near(at(vehicle, { 'lights.pull': 'side', 'lights.knob': 40 }).elements.panel.amps, 12 / 25)
    near(at(vehicle, { 'lights.pull': 'side' }).elements.panel.amps, 1.2)
    expect(at(vehicle, { 'lights.pull': 'side' }).elements.head.amps).toBe(0)
    near(at(vehicle, { 'lights.pull': 'head' }).elements.head.amps, 6)
  })

  it('a foot dip switch feeds one beam', () => {
    const vehicle = around('dip-switch', 'battery:+ > dip:56, dip:56a > main:in, main:out > body, dip:56b > dipped:in, dipped:out > body', [lamp('main', 45), lamp('dipped', 40)])
    expect([litOf(at(vehicle)), litOf(at(vehicle, { 'dip.foot': 'main' }))]).toEqual([['dipped'], ['main']])
  })

  it('a dipping reflector takes 2 A while dipped', () => {
    const fed = around('dip-reflector', 'battery:+ > reflector:in, reflector:case > body')
    near(at(fed).elements['reflector.dip'].amps, 2)
    expect(at(fed).states['reflector.armature']).toBe('pulled')
    expect(at(fed, {}, {}, [{ kind: 'open', id: 'w1' }]).states['reflector.armature']).toBe('released')
  })

  it('a stalk takes the brake feed off the side that turns', () => {
    const lamps = ['rear-left', 'rear-right', 'front-left', 'front-right']
    const vehicle = around('turn-stalk', ['battery:+ > stop:a, stop:b > stalk:54, battery:+ > flash:a, flash:b > stalk:49a', ...lamps.map((id) => `stalk:${id} > ${id}:in, ${id}:out > body`)].join(), [
      ...lamps.map((id) => lamp(id, 21)), ...['stop', 'flash'].map((id) => part(id, 'control', { axes: { p: { positions: ['off', 'on'], rest: 'off' } }, rows: { on: { when: { p: ['on'] }, joins: ['a', 'b'] } } })),
    ])
    const lit = (turn: string, stop: string, flash: string) => litOf(at(vehicle, { 'stalk.turn': turn, 'stop.p': stop, 'flash.p': flash }))
    expect(lit('off', 'on', 'off')).toEqual(['rear-left', 'rear-right'])
    expect(lit('left', 'on', 'off')).toEqual(['rear-right'])
    expect(lit('left', 'on', 'on')).toEqual(['front-left', 'rear-left', 'rear-right'])
    expect(lit('right', 'off', 'on')).toEqual(['front-right', 'rear-right'])
  })

  it('a hazard switch feeds both sides from the battery', () => {
    const vehicle = around('hazard-switch', 'battery:+ > hazard:30, hazard:49 > hazard:49a, hazard:L > left:in, left:out > body, hazard:R > right:in, right:out > body', [lamp('left', 21), lamp('right', 21)])
    expect([litOf(at(vehicle)), litOf(at(vehicle, { 'hazard.push': 'on' }))]).toEqual([[], ['left', 'right']])
    near(at(vehicle, { 'hazard.push': 'on' }).elements['hazard.battery'].amps, 2 * 21 / 12)
    const keyed = around('hazard-switch', 'battery:+ > hazard:15, hazard:49 > load:a, load:b > body', [ohms('load', 6)])
    near(at(keyed).elements.load.amps, 2)
    expect(at(keyed, { 'hazard.push': 'on' }).elements.load.amps).toBe(0)
  })

  it('a semaphore lights its lamp once it is up', () => {
    const on = (emfV: number) => at(around('semaphore', 'battery:+ > arm:in, arm:case > body, arm:tip > arm-lamp:in, arm-lamp:out > body'), {}, {}, [{ kind: 'set', part: 'battery', param: ['emfV'], value: emfV }])
    near(on(12).elements['arm.lift'].amps, 2)
    near(on(12).elements['arm-lamp'].amps, 3 / 12)
    // Below 8 V it stays down, and its lamp dark.
    expect(on(7.5).states['arm.armature']).toBe('released')
    expect(on(7.5).lamps['arm-lamp'].class).toBe('off')
  })

  it('a stop and turn relay box flashes one side and stops with the other', () => {
    const vehicle = around('stop-turn-relays', [
      'battery:+ > stop:a, stop:b > relays:stop, battery:+ > relays:49a, battery:+ > turn:30, turn:L > relays:L, turn:R > relays:R, relays:E > body',
      'relays:rear-left > left:in, left:out > body, relays:rear-right > right:in, right:out > body',
    ].join(), [
      lamp('left', 21), lamp('right', 21), part('stop', 'control', { axes: { p: { positions: ['off', 'on'], rest: 'off' } }, rows: { on: { when: { p: ['on'] }, joins: ['a', 'b'] } } }),
      part('turn', 'control', { axes: { p: { positions: ['left', 'off', 'right'], rest: 'off' } }, rows: { left: { when: { p: ['left'] }, joins: ['30', 'L'] }, right: { when: { p: ['right'] }, joins: ['30', 'R'] } } }),
    ])
    const turned = (turn: string, stop: string) => at(vehicle, { 'turn.p': turn, 'stop.p': stop })
    expect(litOf(turned('off', 'on'))).toEqual(['left', 'right'])
    expect(litOf(turned('left', 'off'))).toEqual(['left'])
    expect(litOf(turned('right', 'off'))).toEqual(['right'])
    expect(turned('left', 'on').elements['relays.turn-left'].amps).toBeCloseTo(1.75, 2)
    expect(turned('left', 'on').elements['relays.stop-right'].amps).toBeCloseTo(1.75, 2)
    near(turned('left', 'off').elements['relays.left-input'].amps, 12 / 60)
  })

  it('a bulb of two filaments has one shell', () => {
    const vehicle = around('two-filaments', 'battery:+ > rear:tail, rear:out > body')
    near(at(vehicle).elements['rear.tail'].amps, 5 / 12)
    expect(at(vehicle).elements['rear.stop'].amps).toBe(0)
    near(at(around('two-filaments', 'battery:+ > rear:stop, rear:out > body')).elements['rear.stop'].amps, 21 / 12)
  })
})

describe('switches that the vehicle moves', () => {
  it.each([
    ['door-switch', 'battery:+ > lamp:in, lamp:out > door:1, door:case > body', { 'door.door': 'open' }],
    ['brake-switch', 'battery:+ > brake:1, brake:2 > lamp:in, lamp:out > body', { 'brake.pressure': 'up' }],
    ['reversing-switch', 'battery:+ > reverse:1, reverse:2 > lamp:in, lamp:out > body', { 'reverse.gear': 'reverse' }],
    ['brake-warning', 'battery:+ > lamp:in, lamp:out > warning:W, warning:E > body', { 'warning.fluid': 'one lost' }],
    ['brake-warning', 'battery:+ > lamp:in, lamp:out > warning:W, warning:E > body', { 'warning.test': 'in' }],
  ] as const)('%s lights its lamp', (id, wires, controls) => {
    const vehicle = around(id, wires, [lamp('lamp', 10)])
    expect(litOf(at(vehicle))).toEqual([])
    expect(litOf(at(vehicle, controls))).toEqual(['lamp'])
    near(at(vehicle, controls).elements.lamp.amps, 10 / 12)
  })

  it('an oil-pressure switch lights its lamp until the engine runs', () => {
    const vehicle = around('oil-switch', 'battery:+ > lamp:in, lamp:out > oil:1, oil:case > body', [lamp('lamp', 2.2)])
    const lit = (engine: 'stopped' | 'cranking' | 'idle') => litOf(at(vehicle, {}, { engine }))
    expect([lit('stopped'), lit('cranking'), lit('idle')]).toEqual([['lamp'], ['lamp'], []])
  })

  it('a thermostat starts its fan', () => {
    const vehicle = around('thermostat-fan', 'battery:+ > thermostat:1, thermostat:2 > fan:in, fan:out > body')
    expect(at(vehicle).states['fan.shaft']).toBe('still')
    near(at(vehicle, { 'thermostat.water': 'hot' }).elements.fan.amps, 8)
  })

  it('a gear switch keeps the starter relay dead in gear', () => {
    const vehicle = around('start-inhibitor', 'battery:+ > relay:86, relay:85 > neutral:1, neutral:2 > body', [part('relay', 'electromagnet', { windings: { coil: { from: '86', to: '85', ohm: 40 } } })])
    expect(at(vehicle, { 'neutral.lever': 'gear' }).states['relay.armature']).toBe('released')
    near(at(vehicle, { 'neutral.lever': 'neutral' }).elements['relay.coil'].amps, 12 / 40)
  })

  it('an interlock takes the seat before the belt', () => {
    const vehicle = around('interlock', 'battery:+ > seat:1, seat:2 > interlock:seat, battery:+ > belt:1, belt:2 > interlock:belt, interlock:31 > body, battery:+ > relay:86, relay:85 > interlock:start', [
      part('relay', 'electromagnet', { windings: { coil: { from: '86', to: '85', ohm: 40 } } }),
    ])
    const after = (...order: readonly (readonly [string, string])[]) => order.reduce<ReturnType<OpenVehicle['solve']> | undefined>((last, [seat, belt]) =>
      vehicle.solve({ controls: { 'seat.seat': seat, 'belt.belt': belt } }, last ? { from: last.condition } : {}), undefined)!.solved
    const right = after(['empty', 'open'], ['taken', 'open'], ['taken', 'shut']), wrong = after(['empty', 'open'], ['empty', 'shut'], ['taken', 'shut'])
    near(right.elements['relay.coil'].amps, 12 / 40)
    expect(wrong.elements['relay.coil'].amps).toBe(0)
    expect(wrong.notes).toContain('Interlock (interlock) forbids starting')
  })
})

describe('sounders', () => {
  it('a belt buzzer falls silent after its delay', () => {
    const vehicle = around('buzzer', 'battery:+ > belt-buzzer:15, belt-buzzer:31 > body, belt-buzzer:out > sounder:in, sounder:out > body')
    const sounds: Fault = { kind: 'hold', part: 'belt-buzzer', state: 'state', value: 'sounds' }
    expect(at(vehicle).states['belt-buzzer.state']).toBe('done')
    expect(at(vehicle).elements.sounder.amps).toBe(0)
    near(at(vehicle, {}, {}, [sounds]).elements.sounder.amps, 0.1)
  })

  it('lights left on sound through the open door', () => {
    const vehicle = around('lights-left-on', 'battery:+ > side:a, side:b > tail:in, tail:out > body, side:b > sounder:in, sounder:out > door:1, door:2 > body', [
      lamp('tail', 5), part('side', 'control', { axes: { p: { positions: ['off', 'on'], rest: 'off' } }, rows: { on: { when: { p: ['on'] }, joins: ['a', 'b'] } } }),
      part('door', 'control', { axes: { p: { positions: ['shut', 'open'], rest: 'shut' } }, rows: { on: { when: { p: ['open'] }, joins: ['1', '2'] } } }),
    ])
    const amps = (side: string, door: string) => at(vehicle, { 'side.p': side, 'door.p': door }).elements.sounder.amps
    expect([amps('off', 'open'), amps('on', 'shut')]).toEqual([0, 0])
    near(amps('on', 'open'), 0.1)
  })

  it('a horn is earthed through the column', () => {
    const vehicle = around('horn-earthed', 'battery:+ > horn:in, horn:out > button:1, button:column > column', [], {
      metals: ['body', 'column'], fixings: [['f-column', { joins: ['column', 'body'], ohm: 0 }]],
    })
    expect(at(vehicle).elements.horn.amps).toBe(0)
    near(at(vehicle, { 'button.push': 'in' }).elements.horn.amps, 4)
    expect(at(vehicle, { 'button.push': 'in' }, {}, [{ kind: 'open', id: 'f-column' }]).elements.horn.amps).toBe(0)
    // The wire to the button chafed to the body sounds it for good.
    near(at(vehicle, {}, {}, [{ kind: 'join', a: 'horn:out', b: 'body' }]).elements.horn.amps, 4)
  })

  it('a horn is fed by its button', () => {
    const vehicle = around('horn-fed', 'battery:+ > button:1, button:2 > horn:in, horn:out > body')
    expect(at(vehicle).voltages['horn:in']).toBeCloseTo(0, 9)
    near(at(vehicle, { 'button.push': 'in' }).elements.horn.amps, 4)
  })
})

describe('motors, pumps and valves', () => {
  it('a blower runs slow through its resistor', () => {
    const vehicle = around('blower', 'battery:+ > blower-switch:30, blower-switch:slow > dropper:a, dropper:b > blower:in, blower-switch:fast > blower:in, blower:out > body')
    // Running it is worth 12 V / 6 A = 2 Ω, and 1.5 Ω before it.
    near(at(vehicle, { 'blower-switch.turn': 'slow' }).elements.blower.amps, 12 / 3.5)
    near(at(vehicle, { 'blower-switch.turn': 'fast' }).elements.blower.amps, 6)
    expect(at(vehicle, { 'blower-switch.turn': 'slow' }, {}, [{ kind: 'open', id: 'dropper' }]).elements.blower.amps).toBe(0)
  })

  it.each([['washer', 'washer', 3], ['fuel-pump', 'pump', 1.5]] as const)('a %s takes its amps', (id, name, amps) => {
    near(at(around(id, `battery:+ > ${name}:in, ${name}:out > body`)).elements[name].amps, amps)
  })

  it('a cut-off valve opens while it is fed', () => {
    const vehicle = around('cut-off-valve', 'battery:+ > valve:in, valve:case > body')
    expect(at(vehicle).states['valve.armature']).toBe('pulled')
    near(at(vehicle).elements['valve.coil'].amps, 0.5)
    expect(at(vehicle, {}, {}, [{ kind: 'open', id: 'valve.coil' }]).states['valve.armature']).toBe('released')
  })

  it('glow plugs in series share their current', () => {
    const vehicle = around('glow-plugs', 'battery:+ > indicator:a, indicator:b > glow-dropper:a, glow-dropper:b > plug-1:a, plug-1:b > plug-2:a, plug-2:b > body')
    // 12 V over 0.06 + 0.16 + 0.04 + 0.04 Ω.
    near(at(vehicle).elements['plug-1'].amps, 40)
    near(at(vehicle).elements['plug-1'].volts, 1.6)
    expect(at(vehicle, {}, {}, [{ kind: 'open', id: 'plug-2' }]).elements.indicator.amps).toBe(0)
  })

  it('a starter runs through its separate switch', () => {
    const vehicle = around('starter-switch', 'battery:+ > starter-switch:1, starter-switch:2 > starter:in, starter:out > body')
    // 12 V / 150 A = 0.08 Ω while it runs, 0.02 Ω stalled; 0.5 mΩ of contact and 0.1 mΩ of battery before it.
    expect(at(vehicle, { 'starter-switch.pull': 'out' }).elements.starter.amps).toBeCloseTo(12 / 0.0806, 2)
    expect(at(vehicle, { 'starter-switch.pull': 'out' }, {}, [{ kind: 'hold', part: 'starter', state: 'shaft', value: 'still' }]).elements.starter.amps).toBeCloseTo(12 / 0.0206, 1)
    expect(at(vehicle).elements.starter.amps).toBe(0)
  })

  it('an overdrive takes its strong winding out', () => {
    const vehicle = around('overdrive', [
      'battery:+ > overdrive-switch:1, overdrive-switch:2 > overdrive-relay:86, overdrive-relay:85 > gear-switch:1, gear-switch:case > body',
      'battery:+ > overdrive-relay:30, overdrive-relay:87 > solenoid:in, solenoid:case > body',
    ].join())
    const amps = (lever: string, gear: string, faults: readonly Fault[] = []) => at(vehicle, { 'overdrive-switch.lever': lever, 'gear-switch.gear': gear }, {}, faults).wires.w6.amps
    expect([amps('in', 'low'), amps('out', 'top')]).toEqual([0, 0])
    // Once in, 12 Ω hold it; with the contact stuck 0.75 Ω burn beside them.
    near(amps('in', 'top'), 1)
    near(amps('in', 'top', [{ kind: 'hold', part: 'solenoid', state: 'armature', value: 'released' }]), 1 + 16)
  })
})

describe('ignition', () => {
  it('a ballast halves the volts at its coil', () => {
    const vehicle = around('ballast', 'battery:+ > ballast:a, ballast:b > coil:15, coil:1 > body, battery:+ > crank:a, crank:b > coil:15', [
      part('crank', 'control', { axes: { p: { positions: ['off', 'on'], rest: 'off' } }, rows: { on: { when: { p: ['on'] }, joins: ['a', 'b'] } } }),
    ])
    near(at(vehicle).voltages['coil:15'], 6)
    near(at(vehicle).elements['coil.primary'].amps, 4)
    // Bridged by the starter's contact while it cranks.
    near(at(vehicle, { 'crank.p': 'on' }).elements['coil.primary'].amps, 8)
  })

  it('a resistor wire is a wire of its ohms', () => {
    const vehicle = around('resistor-wire', 'battery:+ > key:30, coil:1 > body', [
      part('key', 'control', { axes: { turn: { positions: ['off', 'on'], rest: 'off' } }, rows: { on: { when: { turn: ['on'] }, joins: ['30', '15'] } } }), part('coil', 'coil', { primaryOhm: 1.5 }),
    ])
    const { wires } = at(vehicle, { 'key.turn': 'on' })
    near(wires['w-ballast'].amps, 4)
    near(wires['w-ballast'].dropV, 6)
  })

  it('a broken tachometer loop stops the engine', () => {
    const vehicle = around('tachometer', 'battery:+ > tachometer:in, tachometer:coil > coil:15, coil:1 > body, battery:+ > tachometer:B, tachometer:case > body', [part('coil', 'coil', { primaryOhm: 3 })])
    near(at(vehicle).elements['coil.primary'].amps, 12 / 3.02)
    near(at(vehicle).elements['tachometer.works'].amps, 12 / 240)
    const broken = at(vehicle, {}, { engine: 'idle' }, [{ kind: 'open', id: 'tachometer.loop' }])
    expect(broken.elements['coil.primary'].amps).toBe(0)
    expect(broken.notes.join()).toContain('would stop')
  })

  it('an electronic ignition closes while the engine turns', () => {
    const vehicle = around('electronic-ignition', 'battery:+ > coil:15, coil:1 > ignition:1, battery:+ > ignition:15, ignition:case > body', [part('coil', 'coil', { primaryOhm: 3 })])
    expect(at(vehicle).elements['coil.primary'].amps).toBe(0)
    for (const engine of ['cranking', 'idle'] as const) near(at(vehicle, {}, { engine }).elements['coil.primary'].amps, 12 / 3.2)
    near(at(vehicle).elements['ignition.fed-input'].amps, 12 / 240)
    expect(at(vehicle, {}, { engine: 'idle' }, [{ kind: 'open', id: 'w3' }]).states['ignition.state']).toBe('rest')
  })

  it('a magneto stops by its earthing switch', () => {
    const vehicle = around('magneto-switch', 'magneto:2 > stop:2, stop:31 > body, magneto:case > body')
    const sparksA = (turn: string) => at(vehicle, { 'stop.turn': turn }, { engine: 'idle' }).elements['magneto.points'].amps
    near(sparksA('run'), 2)
    expect(sparksA('stop')).toBeCloseTo(0, 6)
  })
})

describe('instruments and comforts', () => {
  it('a tank sender moves its gauge', () => {
    const vehicle = around('fuel-sender', 'battery:+ > fuel:in, fuel:T > tank:T, tank:case > body')
    const litres = (float: number) => at(vehicle, { 'tank.float': float }).dials.fuel.shows
    // 12 V over 65 + 35 Ω: 0.12 A, full; half way 65 + 137.5 Ω: 59.3 mA.
    near(litres(40), 40)
    near(litres(20), 40 * (12 / 202.5 - 0.04) / 0.08)
  })

  it('a heated window takes its watts', () => {
    near(at(around('heated-window', 'battery:+ > window:a, window:b > body')).elements.window.amps, 8)
  })

  it('a lighter glows while it is pushed', () => {
    const vehicle = around('lighter', 'battery:+ > lighter:1, lighter:2 > element:a, element:b > body')
    expect(at(vehicle).elements.element.amps).toBe(0)
    near(at(vehicle, { 'lighter.push': 'in' }).elements.element.amps, 8)
  })

  it('a radio blows its fuse when shorted inside', () => {
    const vehicle = around('radio', 'battery:+ > radio-fuse:in, radio-fuse:out > radio:a, radio:b > body')
    near(at(vehicle).elements.radio.amps, 1)
    expect(at(vehicle, {}, {}, [{ kind: 'join', a: 'radio:a', b: 'radio:b' }]).states['radio-fuse.element']).toBe('blown')
  })

  it('an accessory socket is live with nothing in it', () => {
    const vehicle = around('socket', 'battery:+ > socket-front:+, socket-front:- > body')
    near(at(vehicle).voltages['socket-front:+'], 12)
    expect(at(vehicle).wires.w1.amps).toBeCloseTo(0, 9)
  })

  it('a trailer\'s lamps come with its half', () => {
    const { more } = useOf('trailer-socket')
    const tail = part('tail', 'lamp', { powerW: 5, ratedV: 12 }, { fits: [{ with: ['trailer'] }] })
    const behind = { fits: [{ with: ['trailer'] }] }
    const record = makeRecord({
      assume: IDEAL, metals: ['body'], ...more, parts: [part('battery', 'battery', { emfV: 12, ohm: 0 }), tail],
      wires: [
        link('e', 'battery:-', 'body'), link('w1', 'battery:+', 'tow-car:R'), link('w2', 'tow-car:31', 'body'), link('w3', 'tow-trailer:R', 'tail:in', behind), link('w4', 'tail:out', 'tow-trailer:31', behind),
      ],
    })
    const vehicle = (trailer: boolean) => openVehicle(readRecordText(writeRecord(record)), { options: { trailer } })
    near(at(vehicle(true)).wires.w1.amps, lampAmps(12, 12, 5))
    expect(at(vehicle(false)).wires.w1.amps).toBeCloseTo(0, 9)
  })
})

it('every use on the page has been solved here', () => {
  expect([...solvedIds].sort()).toEqual(partUses.map(({ id }) => id).sort())
})
