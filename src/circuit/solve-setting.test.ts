import { describe, expect, it } from 'vitest'
import { circuitOf, IDEAL, onOff, setting, solved } from '../../test/builders/circuits.ts'
import { link, part, wire, type RecordPlan } from '../../test/builders/record.ts'
import { readOhms, readSeriesLamp, readVolts } from './meters.ts'
import { restCondition } from './settle.ts'
import { solveSetting } from './solve-setting.ts'

/** Battery 12 V behind 0.1 Ω, a switch, and a resistor of 5.9 Ω: 2 A when on. */
const simple: RecordPlan = {
  metals: ['body'], assume: IDEAL,
  parts: [part('battery', 'battery', { emfV: 12, ohm: 0.1 }), part('switch', 'control', onOff()), part('load', 'resistor', { ohm: 5.9 })],
  wires: [link('w1', 'battery:+', 'switch:a'), link('w2', 'switch:b', 'load:a'), link('w3', 'load:b', 'body'), link('e', 'battery:-', 'body')],
}
const on = setting({ 'switch.p': 'on' })

describe('a solved setting', () => {
  it('follows Ohm', () => {
    const { voltages, wires } = solved(simple, on)
    expect(voltages['load:a']).toBeCloseTo(11.8, 9)
    expect(wires.w2.amps).toBeCloseTo(2, 9)
    expect(wires.e.amps).toBeCloseTo(-2, 9)
  })

  it('reads negative with positive earth', () => {
    const { voltages, wires } = solved({ ...simple, supply: '12+', wires: [
      link('w1', 'battery:-', 'switch:a'), link('w2', 'switch:b', 'load:a'), link('w3', 'load:b', 'body'), link('e', 'battery:+', 'body')] }, on)
    expect(voltages['load:a']).toBeCloseTo(-11.8, 9)
    expect(wires.w2.amps).toBeCloseTo(-2, 9)
  })

  it('says floating where no path leads', () => {
    const { voltages, floating } = solved(simple, on, [{ kind: 'open', id: 'w2' }, { kind: 'open', id: 'w3' }])
    expect(voltages['load:a']).toBeNull()
    expect(floating).toEqual(expect.arrayContaining(['load:a', 'load:b']))
  })

  it('leaves the amps of a loop of zeros undetermined', () => {
    const { wires } = solved({ ...simple, wires: [...simple.wires ?? [], link('w2b', 'switch:b', 'load:a')] }, on)
    expect(wires.w2.amps).toBeNull()
    expect(wires.w3.amps).toBeCloseTo(2, 9)
  })

  it('gives swapped wires their own amps', () => {
    const two: RecordPlan = { ...simple, parts: [...simple.parts ?? [], part('other', 'resistor', { ohm: 11.9 })],
      wires: [...simple.wires ?? [], wire('o1', 'battery:+', 'other:a', { ohm: 0.01 }), wire('o2', 'other:b', 'body', { ohm: 0 })] }
    const sound = solved(two, on), swapped = solved(two, on, [{ kind: 'swap', a: 'load:a', b: 'other:a' }])
    expect(swapped.wires.w2.amps).toBeCloseTo(swapped.elements.other.amps as number, 9)
    expect(swapped.wires.o1.amps).toBeCloseTo(swapped.elements.load.amps as number, 9)
    const again = solved(two, on, [{ kind: 'swap', a: 'load:a', b: 'other:a' }, { kind: 'swap', a: 'load:a', b: 'other:a' }])
    expect(again.voltages).toEqual(sound.voltages)
    const opened = solved(two, on, [{ kind: 'swap', a: 'load:a', b: 'other:a' }, { kind: 'open', id: 'w2' }])
    expect(opened.elements.other.amps).toBeCloseTo(0, 9)
  })

  it('says where a combination cannot occur, running engine included', () => {
    const limited: RecordPlan = { ...simple, limits: { gear: { never: { engine: ['running'], switch: ['on'] } } } }
    expect(solved(limited, { ...on, engine: 'cruise' }).notes).toHaveLength(1)
    expect(solved(limited, { ...on, engine: 2500 }).notes).toHaveLength(1)
    expect(solved(limited, on).notes).toEqual([])
  })

  it('survives a shorted battery', () => {
    const { wires, balance } = solved({ ...simple, parts: [part('battery', 'battery', { emfV: 12, ohm: 0 }), ...simple.parts?.slice(1) ?? []] }, on,
      [{ kind: 'join', a: 'battery:+', b: 'battery:-' }])
    // 12 V behind the least battery, 0.1 mΩ, on the touch of 0.1 mΩ beside 5.9 Ω: some 6 V remain, and 60 kA flow.
    const outside = 1 / (1 / 1e-4 + 1 / 5.9)
    expect(wires.w2.amps).toBeCloseTo(12 * outside / (1e-4 + outside) / 5.9, 6)
    expect(balance.worstA).toBeLessThan(1e-6)
  })

  it('a battery without its earth floats, and brings no volts to a load', () => {
    expect(solved(simple, setting(), [{ kind: 'open', id: 'e' }]).voltages['battery:+']).toBeNull()
    const through = solved(simple, on, [{ kind: 'open', id: 'e' }])
    expect(through.voltages['battery:+']).toBe(0)
    expect(through.voltages['battery:-']).toBeCloseTo(-12, 9)
  })
})

/** A relay that holds itself: its contact feeds its own coil beside the button. */
const latching: RecordPlan = {
  metals: ['body'], assume: IDEAL,
  parts: [
    part('battery', 'battery', { emfV: 12, ohm: 0.01 }), part('button', 'control', onOff()), part('key', 'control', onOff()),
    part('relay', 'electromagnet', { windings: { coil: { from: '86', to: '85', ohm: 80, turns: 1000 } }, pullAt: 100, releaseAt: 40 }),
  ],
  wires: [
    link('w1', 'battery:+', 'key:a'), link('w2', 'key:b', 'relay:30'), link('w3', 'relay:30', 'button:a'), link('w4', 'button:b', 'relay:86'),
    link('w5', 'relay:87', 'relay:86'), link('w6', 'relay:85', 'body'), link('e', 'battery:-', 'body'),
  ],
}

describe('states', () => {
  it('a latching relay holds once made', () => {
    const circuit = circuitOf(latching)
    const key = setting({ 'key.p': 'on' }), pressed = setting({ 'key.p': 'on', 'button.p': 'on' })
    const first = solveSetting(circuit, key)
    expect(first.solved.states['relay.armature']).toBe('released')
    expect(first.solved.standing.map(({ name, states }) => [name, states['relay.armature']])).toEqual([['holds once made', 'pulled']])
    const made = solveSetting(circuit, pressed, { from: first.condition, fromSetting: key })
    const after = solveSetting(circuit, key, { from: made.condition, fromSetting: pressed })
    expect(after.solved.states['relay.armature']).toBe('pulled')
  })

  it('pulls at its ampere-turns and not below', () => {
    // 12 V over 80 Ω is 0.15 A less the battery's share: 149.98 ampere-turns with 1000 turns, half of it with 500.
    const at = setting({ 'key.p': 'on', 'button.p': 'on' })
    const turns = (value: number) => solved(latching, at, [{ kind: 'set', part: 'relay', param: ['windings', 'coil', 'turns'], value }])
    expect(turns(1000).states['relay.armature']).toBe('pulled')
    expect(turns(500).states['relay.armature']).toBe('released')
    expect(turns(700).states['relay.armature']).toBe('pulled')
  })

  it('a buzzer chatters', () => {
    const { outcome, cycle } = solved({ ...simple, parts: [
      part('battery', 'battery', { emfV: 12, ohm: 0.1 }),
      part('buzzer', 'electromagnet', { windings: { coil: { from: '~c', to: '85', ohm: 10, turns: 100 } }, contacts: { self: { from: '30', to: '~c', closed: 'released' } }, pullAt: 50, releaseAt: 20 }),
    ], wires: [link('w1', 'battery:+', 'buzzer:30'), link('w2', 'buzzer:85', 'body'), link('e', 'battery:-', 'body')] })
    expect(outcome).toBe('chatters')
    expect(cycle?.map(({ states }) => states['buzzer.armature'])).toEqual(['released', 'pulled'])
  })

  it('a fuse blows above its blow figure and stays blown', () => {
    const fused = (blowA: number) => solved({ ...simple, parts: [...simple.parts ?? [], part('fuse', 'fuse', { ratingA: 10, blowA })],
      wires: [link('w1', 'battery:+', 'switch:a'), link('w2', 'switch:b', 'fuse:in'), link('w2b', 'fuse:out', 'load:a'), link('w3', 'load:b', 'body'), link('e', 'battery:-', 'body')] }, on)
    expect(fused(1.9).states['fuse.element']).toBe('blown')
    expect(fused(1.9).wires.w3.amps).toBe(0)
    expect(fused(2.1).wires.w3.amps).toBeCloseTo(2, 6)
  })

  it('a held motor takes its stalled current', () => {
    const plan: RecordPlan = { ...simple, parts: [part('battery', 'battery', { emfV: 12, ohm: 0.1 }), part('switch', 'control', onOff()), part('load', 'motor', { ratedV: 12, ratedA: 4, stalledOhm: 0.9 })],
      wires: [link('w1', 'battery:+', 'switch:a'), link('w2', 'switch:b', 'load:in'), link('w3', 'load:out', 'body'), link('e', 'battery:-', 'body')] }
    expect(solved(plan, on).wires.w3.amps).toBeCloseTo(12 / 3.1, 6)
    expect(solved(plan, on, [{ kind: 'hold', part: 'load', state: 'shaft', value: 'still' }]).wires.w3.amps).toBeCloseTo(12, 6)
  })
})

describe('meters', () => {
  it('a voltmeter of 10 megohm shows a ghost through an open circuit', () => {
    const plan: RecordPlan = { ...simple, wires: [link('w1', 'battery:+', 'load:a'), link('e', 'battery:-', 'body'), wire('w3', 'load:b', 'switch:a', { ohm: 0 })] }
    const circuit = circuitOf(plan)
    const { condition } = solveSetting(circuit, setting())
    const point = (name: string) => circuit.network.pointOf.get(name) as number
    const digital = readVolts(circuit, setting(), condition, point('load:b'), point('body'))
    expect(digital.volts).toBeCloseTo(12, 4)
    const lamp = readVolts(circuit, setting(), condition, point('load:b'), point('body'), 6)
    expect(lamp.volts).toBeCloseTo(12 * 6 / 12, 6)
  })

  it('reads nothing on a floating wire', () => {
    const circuit = circuitOf(simple, [{ kind: 'open', id: 'w2' }, { kind: 'open', id: 'w3' }])
    const { condition } = solveSetting(circuit, on)
    const reading = readVolts(circuit, on, condition, circuit.network.pointOf.get('load:a') as number, circuit.network.pointOf.get('body') as number)
    expect(reading.volts).toBe(0)
    expect(reading.withoutMeterV).toBeNull()
  })

  it('reads cold filaments, the battery off', () => {
    const plan: RecordPlan = { ...simple, parts: [part('battery', 'battery', { emfV: 12, ohm: 0.1 }), part('lamp', 'lamp', { powerW: 24, ratedV: 12, coldRatio: 12 })],
      wires: [link('w1', 'battery:+', 'lamp:in'), link('w2', 'lamp:out', 'body'), link('e', 'battery:-', 'body')] }
    const circuit = circuitOf(plan)
    // 12²/24 = 6 Ω hot, a twelfth cold.
    expect(readOhms(circuit, setting(), circuit.network.pointOf.get('lamp:in') as number, circuit.network.reference).ohm).toBeCloseTo(0.5, 4)
  })

  it('says no path where there is none', () => {
    const circuit = circuitOf(simple)
    expect(readOhms(circuit, setting(), circuit.network.pointOf.get('battery:+') as number, circuit.network.reference).ohm).toBeNull()
    expect(readOhms(circuit, on, circuit.network.pointOf.get('battery:+') as number, circuit.network.reference).ohm).toBeCloseTo(5.9, 6)
  })

  it('a series lamp is dark on an open circuit and full on a short', () => {
    const dark = readSeriesLamp(circuitOf(simple), setting(), 21)
    expect(dark.lamp.class).toBe('off')
    const short = readSeriesLamp(circuitOf(simple, [{ kind: 'join', a: 'load:a', b: 'load:b' }]), on, 21)
    expect(short.lamp.class).toBe('normal')
    expect(short.amps).toBeGreaterThan(1.6)
  })

  it('starts from rest for every answer', () => {
    const circuit = circuitOf(latching)
    expect(restCondition(circuit, setting()).states).toEqual(['released'])
  })
})

const STILL = 'no current flows in this setting: every way from a source is open'

describe('conductances far apart', () => {
  // Forty micro-ohms side by side between two leaking diodes: the sum of their siemens has no digit left for the leak.
  it('leave the half of the volts to each of two leaks', () => {
    const micro = Array.from({ length: 40 }, (_, i) => wire(`p${i}`, 'a', 'b', { ohm: 1e-6, ends: [{ at: 'a', jointOhm: 0 }, { at: 'b', jointOhm: 0 }] }))
    const { voltages, balance, notes } = solved({
      metals: ['body'], splices: { a: {}, b: {} },
      parts: [part('battery', 'battery', { emfV: 12, ohm: 0.01 }), part('d1', 'diode'), part('d2', 'diode')],
      wires: [link('e', 'battery:-', 'body'), link('w1', 'battery:+', 'd1:cathode'), link('w2', 'd1:anode', 'a'), link('w3', 'b', 'd2:cathode'), link('w4', 'd2:anode', 'body'), ...micro],
    })
    expect(Math.abs(voltages.a as number - 6)).toBeLessThan(0.5)
    expect(balance.worstA).toBeLessThan(1e-8)
    expect(notes.join()).not.toContain('did not converge')
  })
})

describe('what is said beside the figures', () => {
  it('a fuse that has blown', () => {
    const plan: RecordPlan = { ...simple, parts: [...simple.parts ?? [], part('fuse', 'fuse', { ratingA: 1, ratingMeans: 'blow' }, { title: 'Main fuse' })],
      wires: [link('w1', 'battery:+', 'fuse:in'), link('w1b', 'fuse:out', 'switch:a'), link('w2', 'switch:b', 'load:a'), link('w3', 'load:b', 'body'), link('e', 'battery:-', 'body')] }
    expect(solved(plan, on).notes).toEqual([STILL, 'Main fuse (fuse) has blown'])
    expect(solved(plan).notes).toEqual([STILL])
  })

  it('a lamp that would burn out', () => {
    const plan: RecordPlan = { ...simple, parts: [...(simple.parts ?? []).slice(0, 2), part('load', 'lamp', { powerW: 5, ratedV: 6 }, { title: 'Small lamp', terminals: { a: { is: 'in' }, b: { is: 'out' } } })] }
    expect(solved(plan, on).notes).toEqual([expect.stringMatching(/^Small lamp \(load\) gets \d{3} % of its rated volts and would burn out$/)])
  })

  it('a battery without its earth lead', () => {
    const lost = 'battery:- leads to no metal, so nothing that is earthed there has a way back to the battery'
    expect(solved({ ...simple, wires: (simple.wires ?? []).filter(([id]) => id !== 'e') }, on).notes).toContain(lost)
    expect(solved(simple, on, [{ kind: 'open', id: 'e' }]).notes).toContain(lost)
    expect(solved(simple, on).notes).toEqual([])
  })

  it('a battery that is turned round', () => {
    const notes = solved(simple, on, [{ kind: 'swap', a: 'battery:+', b: 'battery:-' }]).notes
    expect(notes).toEqual([expect.stringMatching(/^the battery is the wrong way round: battery:\+ leads to metal, on a vehicle with its negative pole earthed/)])
  })

  it('an engine that could not run', () => {
    const plan: RecordPlan = { ...simple, parts: [...(simple.parts ?? []).slice(0, 2), part('load', 'coil', { primaryOhm: 3 }, { terminals: { a: { is: '15' }, b: { is: '1' } } })] }
    const notes = (key: string, engine: 'idle' | 'cranking') => solved(plan, setting({ 'switch.p': key }, { engine })).notes
    expect(notes('off', 'idle')).toEqual([STILL, 'nothing makes sparks in this setting, so the engine that is taken to run would stop'])
    expect([notes('on', 'idle'), notes('off', 'cranking')]).toEqual([[], [STILL]])
  })
})
