// Letter d: a hot-wire flasher with a contact for the tell-tale, and a bimetal one in a later edition.
import { describe, expect, test } from 'vitest'
import type { Fault, Solution } from '../../src/circuit/index.ts'
import { findZero, lampAmps } from './by-hand.ts'
import { openVehicle, readRecordFile } from './open-vehicle.ts'

const record = readRecordFile(new URL('./d-hot-wire-flasher.json', import.meta.url))
const hotWire = openVehicle(record, { year: 1958 })
const bimetal = openVehicle(record, { year: 1970 })

const left = { controls: { 'stalk.turn': 'left' } }
const dead = (...lamps: readonly string[]): Fault[] => lamps.map((id) => ({ kind: 'open', id }))
const watts = (part: string, value: number): Fault => ({ kind: 'set', part, param: ['powerW'], value })

const EMF_V = 12.6, BATTERY_OHM = 0.05, CONTACT_OHM = 0.01, DARK_OHM = 20
/** 42 W at 12 V; the tell-tale contact makes at three quarters of it. */
const RATED_A = 42 / 12, TELLTALE_A = 0.75 * RATED_A

/**
 * Lit, by hand: `powerW` of turn lamps behind the contact (a hot wire lies beside it), and beside them, where it is made,
 * the tell-tale of 2.2 W behind its own contact; both on 12.6 V through 0.05 Ω.
 */
function litByHand(powerW: number, telltaleOn: boolean, besideOhm = Infinity) {
  const seriesOhm = 1 / (1 / CONTACT_OHM + 1 / besideOhm)
  const behind = (feedV: number, ohm: number, W: number) => findZero((v) => v + ohm * lampAmps(v, 12, W) - feedV, 0, feedV)
  const telltaleV = (feedV: number) => telltaleOn ? behind(feedV, CONTACT_OHM, 2.2) : 0
  const taken = (feedV: number) => lampAmps(behind(feedV, seriesOhm, powerW), 12, powerW) + lampAmps(telltaleV(feedV), 12, 2.2)
  const feedV = findZero((v) => v + BATTERY_OHM * taken(v) - EMF_V, 0, EMF_V)
  const lampV = behind(feedV, seriesOhm, powerW)
  const lampsA = lampAmps(lampV, 12, powerW)
  return { feedV, lampV, lampsA, contactA: lampsA * seriesOhm / CONTACT_OHM, telltaleV: telltaleV(feedV), feedA: taken(feedV) }
}

/** Dark, by hand: the lamps behind 20 Ω of hot wire; (12.6 − V) / 20.05 = I(V). */
function darkByHand(powerW: number) {
  const lampV = findZero((v) => v + (BATTERY_OHM + DARK_OHM) * lampAmps(v, 12, powerW) - EMF_V, 0, EMF_V)
  return { lampV, wireA: lampAmps(lampV, 12, powerW) }
}

/**
 * The hot wire's heat θ runs towards q with a time constant of 0.64 s: from a to b it takes 0.64·ln((q − a)/(q − b)).
 * It closes at 0.5; lit it is shorted (q = 0) and opens at 0.5·(1 − 0.5·lit amps/rated), for the current helps to hold.
 * Common practice, no source.
 */
function hotWirePerMinute(powerW: number, telltaleOn: boolean): number {
  const q = (darkByHand(powerW).wireA / (12 / DARK_OHM)) ** 2
  const opens = 0.5 * (1 - 0.5 * litByHand(powerW, telltaleOn, DARK_OHM).contactA / RATED_A)
  const litS = 0.64 * Math.log(0.5 / opens)
  const darkS = 0.64 * Math.log((q - opens) / (q - 0.5))
  return 60 / (litS + darkS)
}

function phasesOf(vehicle: typeof hotWire, faults: Fault[] = []) {
  const { solved } = vehicle.solve(left, { faults })
  const { cycle, rate, rests, solutions = [] } = solved.phases.flasher
  return { solved, cycle, rate, rests, in: (phase: string): Solution => solutions[(cycle ?? []).indexOf(phase)] }
}

describe('hot wire', () => {
  test('it is dark first and goes on flashing', () => {
    const { cycle, rests } = phasesOf(hotWire)
    expect(cycle).toEqual(['dark', 'lit'])
    expect(rests).toBeUndefined()
  })

  test('lit, both lamps and the tell-tale burn', () => {
    const { lamps, elements, wires, voltages, states } = phasesOf(hotWire).in('lit')
    const byHand = litByHand(42, true, DARK_OHM)
    expect(voltages['flasher:49']).toBeCloseTo(byHand.feedV, 6)
    expect(lamps['front-left'].volts).toBeCloseTo(byHand.lampV, 6)
    expect(lamps['rear-left'].volts).toBeCloseTo(byHand.lampV, 6)
    expect(wires['w-left'].amps).toBeCloseTo(byHand.lampsA, 6)
    expect(wires['w-front-left'].amps).toBeCloseTo(byHand.lampsA / 2, 6)
    expect(elements['flasher.contact'].amps).toBeCloseTo(byHand.contactA, 6)
    expect(states['flasher.telltale']).toBe('made')
    expect(lamps.telltale.volts).toBeCloseTo(byHand.telltaleV, 6)
    expect(wires['w-feed'].amps).toBeCloseTo(byHand.feedA, 6)
    expect([lamps['front-left'].class, lamps.telltale.class, lamps['front-right'].class]).toEqual(['normal', 'normal', 'off'])
    expect(byHand.contactA).toBeGreaterThan(TELLTALE_A)
  })

  test('dark, the cold lamps take the hot wire\'s amps', () => {
    const { lamps, elements, wires, states } = phasesOf(hotWire).in('dark')
    const byHand = darkByHand(42)
    expect(lamps['front-left'].volts).toBeCloseTo(byHand.lampV, 6)
    expect(elements['flasher.wire'].amps).toBeCloseTo(byHand.wireA, 6)
    expect(elements['flasher.contact'].amps).toBe(0)
    expect(wires['w-feed'].amps).toBeCloseTo(byHand.wireA, 6)
    expect(states['flasher.telltale']).toBe('open')
    expect([lamps['front-left'].class, lamps.telltale.class]).toEqual(['off', 'off'])
    expect(lamps.telltale.volts).toBe(0)
  })

  test('two lamps flash at the legal rate', () => {
    expect(phasesOf(hotWire).rate).toBe('60 to 120 a minute')
    expect(hotWirePerMinute(42, true)).toBeGreaterThan(60)
    expect(hotWirePerMinute(42, true)).toBeLessThan(120)
  })

  test('one lamp flashes about double, without the tell-tale', () => {
    for (const lamp of ['front-left', 'rear-left']) {
      const phases = phasesOf(hotWire, dead(lamp))
      expect(phases.rate).toBe('about double')
      const lit = litByHand(21, false, DARK_OHM)
      expect(phases.in('lit').elements['flasher.contact'].amps).toBeCloseTo(lit.contactA, 6)
      expect(lit.contactA).toBeLessThan(TELLTALE_A)
      expect(phases.in('dark').elements['flasher.wire'].amps).toBeCloseTo(darkByHand(21).wireA, 6)
      for (const phase of ['lit', 'dark']) expect(phases.in(phase).lamps.telltale.class).toBe('off')
    }
    // Less current to hold it: it opens sooner, and is warm enough again sooner.
    expect(hotWirePerMinute(21, false) / hotWirePerMinute(42, true)).toBeGreaterThan(1.7)
    expect(hotWirePerMinute(21, false) / hotWirePerMinute(42, true)).toBeLessThan(2.5)
  })

  test('without lamps it stays dark', () => {
    const { solved, rests } = phasesOf(hotWire, dead('front-left', 'rear-left'))
    expect(rests).toBe('dark')
    expect(solved.wires['w-feed'].amps).toBeCloseTo(0, 9)
    expect(solved.voltages['flasher:49a']).toBeCloseTo(EMF_V, 6)
    expect(solved.lamps.telltale.class).toBe('off')
    expect(hotWire.solve().solved.phases.flasher).toEqual({ rests: 'dark' })
  })

  test('two lamps of half the watts are as one', () => {
    const halves = phasesOf(hotWire, [watts('front-left', 10.5), watts('rear-left', 10.5)])
    expect(halves.rate).toBe('about double')
    expect(halves.in('lit').elements['flasher.contact'].amps).toBeCloseTo(litByHand(21, false, DARK_OHM).contactA, 6)
    expect(halves.in('lit').states['flasher.telltale']).toBe('open')
  })

  test('a third lamp makes it slow', () => {
    // 42 W behind stands for the rear lamp and a trailer's.
    const phases = phasesOf(hotWire, [watts('rear-left', 42)])
    expect(phases.rate).toBe('slow')
    expect(hotWirePerMinute(63, true)).toBeLessThan(60)
    expect(phases.in('lit').elements['flasher.contact'].amps).toBeCloseTo(litByHand(63, true, DARK_OHM).contactA, 6)
  })
})

describe('bimetal', () => {
  test('it is lit first, and quite dark between', () => {
    const { cycle, in: at } = phasesOf(bimetal)
    expect(cycle).toEqual(['lit', 'dark'])
    const byHand = litByHand(42, true)
    const lit = at('lit'), dark = at('dark')
    expect(lit.elements['flasher.contact'].amps).toBeCloseTo(byHand.contactA, 6)
    expect(lit.lamps['rear-left'].volts).toBeCloseTo(byHand.lampV, 6)
    expect(lit.lamps.telltale.volts).toBeCloseTo(byHand.telltaleV, 6)
    expect(dark.wires['w-feed'].amps).toBe(0)
    expect(dark.lamps['rear-left'].volts).toBe(0)
    expect(dark.states['flasher.telltale']).toBe('open')
    expect(dark.lamps.telltale.volts).toBe(0)
  })

  test('its rated load flashes at the legal rate', () => {
    // Two lamps of 21 W are what it is made for: whatever its constants, they must flash 60 to 120 times a minute. Its
    // heat q = (lit amps/rated)² is near 1, as for a hot wire with its rated load.
    expect(litByHand(42, true).contactA / RATED_A).toBeCloseTo(1, 1)
    expect(phasesOf(bimetal).rate).toBe('60 to 120 a minute')
  })

  test('one lamp stays lit without the tell-tale', () => {
    const { solved, rests } = phasesOf(bimetal, dead('rear-left'))
    // (1.8 A / 3.5 A)² = 0.27: never hot enough to open at 0.5.
    const byHand = litByHand(21, false)
    expect((byHand.contactA / RATED_A) ** 2).toBeLessThan(0.5)
    expect(rests).toBe('lit')
    expect(solved.lamps['front-left'].volts).toBeCloseTo(byHand.lampV, 6)
    expect(solved.elements['flasher.contact'].amps).toBeCloseTo(byHand.contactA, 6)
    expect(solved.lamps.telltale.class).toBe('off')
  })

  test('without lamps nothing burns and nothing moves', () => {
    const { solved, rests } = phasesOf(bimetal, dead('front-left', 'rear-left'))
    expect(rests).toBe('lit')
    expect(solved.wires['w-feed'].amps).toBeCloseTo(0, 9)
    expect([solved.states['flasher.telltale'], solved.lamps.telltale.class]).toEqual(['open', 'off'])
  })

  test('two lamps of half the watts stay lit', () => {
    const { solved, rests } = phasesOf(bimetal, [watts('front-left', 10.5), watts('rear-left', 10.5)])
    expect(rests).toBe('lit')
    expect(solved.elements['flasher.contact'].amps).toBeCloseTo(litByHand(21, false).contactA, 6)
  })
})

test('a burnt-out lamp is off, whatever its holder has', () => {
  const { solved } = phasesOf(bimetal, dead('front-left', 'rear-left'))
  expect(solved.voltages['front-left:in']).toBeCloseTo(EMF_V, 6)
  expect(solved.elements['front-left'].amps).toBe(0)
  expect(solved.lamps['front-left']).toMatchObject({ light: 0, class: 'off' })
})

test('it has no hot wire in the later edition', () => {
  expect(Object.keys(hotWire.solve().solved.elements)).toContain('flasher.wire')
  expect(Object.keys(bimetal.solve().solved.elements)).not.toContain('flasher.wire')
})
