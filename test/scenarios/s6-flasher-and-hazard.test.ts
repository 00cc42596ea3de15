// Scenario S6: a flasher fed through the hazard switch, what makes the turn lamps or both dead, and two ways of saving parts.
import { describe, expect, test } from 'vitest'
import type { Fault } from '../../src/circuit/index.ts'
import { openVehicle, readRecordFile, type OpenVehicle } from '../records/open-vehicle.ts'

const record = readRecordFile(new URL('./s6-flasher-and-hazard.json', import.meta.url))
const options = (one: 'none' | 'one-pole' | 'second-flasher') => openVehicle(record, { options: { 'one-pole': one === 'one-pole', 'second-flasher': one === 'second-flasher' } })
const asMade = options('none'), onePole = options('one-pole'), twoFlashers = options('second-flasher')

const LEFT = ['front-left', 'rear-left'], RIGHT = ['front-right', 'rear-right'], ALL = [...LEFT, ...RIGHT].sort()
const turnLeft = { 'key.turn': 'on', 'stalk.turn': 'left' }, turnRight = { 'key.turn': 'on', 'stalk.turn': 'right' }, hazard = { 'hazard.push': 'on' }

const solve = (vehicle: OpenVehicle, controls: Readonly<Record<string, string>>, faults: readonly Fault[] = []) => vehicle.solve({ controls }, { faults }).solved

/** The lamps that are bright in some phase. */
function flashing(...of: Parameters<typeof solve>): string[] {
  const solved = solve(...of)
  const moments = [solved, ...Object.values(solved.phases).flatMap(({ solutions }) => solutions ?? [])]
  return [...new Set(moments.flatMap(({ lamps }) => Object.keys(lamps).filter((id) => lamps[id].class === 'normal')))].sort()
}

describe('as it should be', () => {
  test('the stalk flashes one side with the key on', () => {
    expect(flashing(asMade, turnLeft)).toEqual(LEFT)
    expect(flashing(asMade, turnRight)).toEqual(RIGHT)
    expect(flashing(asMade, { 'stalk.turn': 'left' })).toEqual([])
    const { phases } = solve(asMade, turnLeft)
    expect(phases.flasher.rate).toBe('60 to 120 a minute')
    // 42 W at 12 V.
    expect(phases.flasher.solutions![1].wires['w-flasher'].amps).toBeCloseTo(3.5, 2)
  })

  test.each(['off', 'on'] as const)('the hazard flashes both sides with the key %s, and takes nothing from it', (key) => {
    const controls = { ...hazard, 'key.turn': key }
    expect(flashing(asMade, controls)).toEqual(ALL)
    for (const { wires } of solve(asMade, controls).phases.flasher.solutions!) expect(wires['w-key-fuse'].amps).toBe(0)
  })
})

const open = (id: string): Fault => ({ kind: 'open', id })
const lost = (...of: readonly string[]): readonly Fault[] => of.map(open)
/** Whether the turn lamps of either side, and whether the hazard, still flash all that they should. */
function symptom(faults: readonly Fault[]) {
  const turns = flashing(asMade, turnLeft, faults).length === 2 && flashing(asMade, turnRight, faults).length === 2
  const dead = flashing(asMade, turnLeft, faults).length === 0 && flashing(asMade, turnRight, faults).length === 0
  return { turn: turns ? 'works' : dead ? 'dead' : 'partly', hazard: ['dead', 'partly', 'partly', 'partly', 'works'][flashing(asMade, hazard, faults).length] }
}

describe('a: turn lamps dead, hazard works', () => {
  test.each([
    ['the key fuse', lost('key-fuse')], ['its feed', lost('w-key-fuse')], ['the wire to contact 1', lost('w-contact-1')], ['contact 1-2', lost('hazard.1-2')], ['the stalk', lost('w-stalk')],
  ])('%s is a suspect', (_, faults) => {
    expect(symptom(faults)).toEqual({ turn: 'dead', hazard: 'works' })
  })

  test.each([
    ['the flasher', lost('flasher.contact'), 'dead'], ['every bulb', lost(...ALL), 'dead'], ['the lamps\' earths', lost(...ALL.map((id) => `f-${id}`)), 'dead'], ['a bulb', lost('front-left'), 'partly'],
  ] as const)('%s is cleared: the hazard would fail too', (_, faults, withHazard) => {
    expect(symptom(faults).hazard).toBe(withHazard)
  })

  test('volts on contact 2, then on 1, tell the suspects apart', () => {
    const volts = (faults: readonly Fault[]) => (['hazard:2', 'hazard:1'] as const).map((point) => {
      const value = solve(asMade, turnLeft, faults).voltages[point]
      return Math.abs(value ?? 0) > 11.9
    })
    // With the stalk open 2 has volts; with contact 1-2 open only 1; with fuse or feed gone neither.
    expect(volts(lost('w-stalk'))).toEqual([true, true])
    expect(volts(lost('hazard.1-2'))).toEqual([false, true])
    for (const id of ['key-fuse', 'w-key-fuse', 'w-contact-1']) expect(volts(lost(id))).toEqual([false, false])
  })

  test('with both dead the flasher or its wire comes first', () => {
    for (const id of ['flasher.contact', 'w-contact-2', 'w-flasher']) expect(symptom(lost(id))).toEqual({ turn: 'dead', hazard: 'dead' })
  })
})

describe('b: a switch that only joins left and right', () => {
  const pushed = { 'joiner.push': 'on' }

  test('works only with key on and stalk moved', () => {
    expect([pushed, { ...pushed, 'key.turn': 'on' }, { ...pushed, 'stalk.turn': 'left' }].map((controls) => flashing(onePole, controls))).toEqual([[], [], []])
    expect(flashing(onePole, { ...pushed, ...turnLeft })).toEqual(ALL)
  })

  test('puts 7.0 A on a flasher for 42 W, which then flashes slowly', () => {
    const { flasher } = solve(onePole, { ...pushed, ...turnLeft }).phases
    // 84 W at 12 V, twice the 3.5 A of its rating.
    expect(flasher.solutions![1].wires['w-flasher'].amps).toBeCloseTo(7, 2)
    expect(flasher.rate).toBe('slow')
  })
})

describe('c: a second flasher with no change-over', () => {
  const pushed = { 'added.push': 'on' }

  test('mixes two rates', () => {
    const { phases } = solve(twoFlashers, { ...pushed, ...turnLeft })
    expect([phases.flasher.rate, phases['flasher-2'].rate]).toEqual(['slow', '60 to 120 a minute'])
  })

  test('feeds back to what the key feeds, with the key off', () => {
    const lit = solve(twoFlashers, { ...pushed, 'stalk.turn': 'left' }).phases['flasher-2'].solutions![1]
    // Through the stalk and backwards through the first flasher's hot wire of 20 Ω to the 6 Ω behind the key.
    expect(lit.wires['w-other'].amps).toBeCloseTo(12 / 26, 3)
    expect(lit.voltages['key:15']).toBeCloseTo(6 * 12 / 26, 2)
    const proper = solve(asMade, { ...hazard, 'stalk.turn': 'left' }).phases.flasher.solutions!
    expect(proper.map(({ wires }) => wires['w-other'].amps)).toEqual([0, 0])
  })
})
