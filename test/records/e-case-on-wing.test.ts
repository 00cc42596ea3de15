// Letter e: a lamp cluster whose case has no earth but its fixing screw on the wing, and the earth wire that was added.
import { expect, test } from 'vitest'
import type { Fault } from '../../src/circuit/index.ts'
import { findZero, lampAmps } from './by-hand.ts'
import { openVehicle, readRecordFile } from './open-vehicle.ts'

const record = readRecordFile(new URL('./e-case-on-wing.json', import.meta.url))
const screwOnly = openVehicle(record, { year: 1958 })
const earthWire = openVehicle(record, { year: 1966 })

const tails = { controls: { 'lighting.pull': 'on' } }
const brake = { controls: { 'brake.pedal': 'down' } }
const both = { controls: { ...tails.controls, ...brake.controls } }
const screwOut: Fault = { kind: 'open', id: 'screw' }

const EMF_V = 12.6, BATTERY_OHM = 0.01, SCREW_OHM = 0.02, SEAM_OHM = 0.04, EARTH_WIRE_OHM = 0.015

/** The three lines: the filament of the cluster, and the watts of the lamps beside it that have an earth of their own. */
const LINES = { tail: { own: 5, beside: 15 }, stop: { own: 21, beside: 21 }, turn: { own: 21, beside: 21 } }
type Line = keyof typeof LINES
interface Feed { readonly live: readonly Line[]; readonly caseOhm: number; readonly turnOwnW?: number }

/**
 * By hand. Of a live line the volts are known. A dead one has the volts V at which what its filament brings from the case,
 * I(Vc − V), goes to earth through the lamps beside it, I(V). The case has the volts Vc at which what all three filaments
 * bring, and what its own way to earth of `caseOhm` takes, Vc/R, come to nothing.
 */
function caseByHand({ live, caseOhm, turnOwnW = 21 }: Feed) {
  const own = (line: Line) => line === 'turn' ? turnOwnW : LINES[line].own
  const lineV = (line: Line, feedV: number, caseV: number) => live.includes(line)
    ? feedV
    : findZero((v) => lampAmps(v, 12, LINES[line].beside) - lampAmps(caseV - v, 12, own(line)), 0, caseV)
  const names = Object.keys(LINES) as Line[]
  const solveAt = (feedV: number) => {
    const intoCase = (caseV: number) => names.reduce((sum, line) => sum + lampAmps(lineV(line, feedV, caseV) - caseV, 12, own(line)), 0)
    const caseV = findZero((v) => v / caseOhm - intoCase(v), 0, feedV)
    const volts = Object.fromEntries(names.map((line) => [line, lineV(line, feedV, caseV)])) as Readonly<Record<Line, number>>
    const amps = Object.fromEntries(names.map((line) => [line, lampAmps(volts[line] - caseV, 12, own(line))])) as Readonly<Record<Line, number>>
    const total = live.reduce((sum, line) => sum + amps[line] + lampAmps(feedV, 12, LINES[line].beside), 0)
    return { feedV, caseV, volts, amps, total }
  }
  // The battery's drop is small, so what the lamps took a round before gives it: each round is a hundred times nearer.
  let feedV = EMF_V
  for (let round = 0; round < 8; round++) feedV = EMF_V - BATTERY_OHM * solveAt(feedV).total
  return solveAt(feedV)
}

/** The case, the three lines and the three wires of the cluster, against the hand calculation. */
function expectByHand(vehicle: typeof screwOnly, setting: typeof tails | typeof brake | typeof both, feed: Feed, faults: Fault[] = []) {
  const { solved } = vehicle.solve(setting, { faults })
  const byHand = caseByHand(feed)
  expect(solved.voltages['cluster:case']).toBeCloseTo(byHand.caseV, 6)
  for (const line of Object.keys(LINES) as Line[]) {
    expect(solved.voltages[`${line}s`]).toBeCloseTo(byHand.volts[line], 6)
    expect(solved.wires[`w-left-${line}`].amps).toBeCloseTo(byHand.amps[line], 6)
    expect(solved.lamps[`cluster.${line}`].percent).toBeCloseTo(100 * Math.abs(byHand.volts[line] - byHand.caseV) / 12, 2)
  }
  expect(solved.wires['w-battery'].amps).toBeCloseTo(byHand.total, 6)
  return { solved, byHand }
}

const GOOD_OHM = SCREW_OHM + SEAM_OHM

test('with the screw tight the case is near earth', () => {
  const { solved, byHand } = expectByHand(screwOnly, both, { live: ['tail', 'stop'], caseOhm: GOOD_OHM })
  // 5 W and 21 W: some 2.2 A through 0.02 Ω of screw and 0.04 Ω of seam, 0.13 V.
  const amps = byHand.caseV / GOOD_OHM
  expect(solved.voltages.wing).toBeCloseTo(amps * SEAM_OHM, 6)
  expect(solved.voltages.body).toBe(0)
  expect(byHand.caseV).toBeCloseTo(0.13, 2)
})

test('screw out, braking lights the left tail lamp through the case', () => {
  const { solved, byHand } = expectByHand(screwOnly, brake, { live: ['stop'], caseOhm: Infinity }, [screwOut])
  // The path: in by the stop wire, through the case, out by the tail and turn wires, against their usual direction.
  const { wires } = solved
  expect(wires['w-left-stop'].amps).toBeGreaterThan(0.5)
  expect(wires['w-left-tail'].amps).toBeLessThan(0)
  expect(wires['w-left-turn'].amps).toBeLessThan(0)
  expect(wires['w-left-stop'].amps! + wires['w-left-tail'].amps! + wires['w-left-turn'].amps!).toBeCloseTo(0, 8)
  expect(wires['w-tail-right'].amps! + wires['w-plate'].amps!).toBeCloseTo(-byHand.amps.tail, 6)
  expect(wires['w-turn-front'].amps).toBeCloseTo(-byHand.amps.turn, 6)
  expect(wires['w-tails'].amps).toBe(0)
  expect(solved.lamps['tail-right'].volts).toBeCloseTo(byHand.volts.tail, 6)
  expect(solved.lamps['turn-front'].volts).toBeCloseTo(byHand.volts.turn, 6)
  const classes = ['cluster.stop', 'cluster.tail', 'cluster.turn', 'turn-front', 'tail-right'].map((id) => solved.lamps[id].class)
  expect(classes).toEqual(['dim', 'dim', 'faint', 'faint', 'off'])
  expect(solved.voltages.wing).toBe(0)
  expect(byHand.caseV).toBeCloseTo(6.85, 2)
})

test('screw out, the tail lamp looks right by itself', () => {
  // 5 W against two paths of 21 W: nearly all of the volts stay on the tail filament, and the case is at 0.51 V.
  const { solved, byHand } = expectByHand(screwOnly, tails, { live: ['tail'], caseOhm: Infinity }, [screwOut])
  expect(solved.lamps['cluster.tail'].class).toBe('normal')
  expect(byHand.caseV).toBeCloseTo(0.51, 2)
})

test('screw out, tail and stop lamps share one way out', () => {
  const { solved } = expectByHand(screwOnly, both, { live: ['tail', 'stop'], caseOhm: Infinity }, [screwOut])
  // Only the turn line leads to earth: both filaments starve, and the front turn lamp glows.
  expect(solved.lamps['cluster.tail'].class).toBe('faint')
  expect(solved.lamps['turn-front'].class).toBe('faint')
})

test('nothing switched on leaves the loose case dead', () => {
  const { voltages } = screwOnly.solve({}, { faults: [screwOut] }).solved
  expect(voltages['cluster:case']).toBe(0)
})

test('without any lamp beside it the case floats', () => {
  const alone = ['tail-right', 'plate', 'stop-right', 'turn-front'].map((id): Fault => ({ kind: 'open', id }))
  const { solved } = screwOnly.solve({}, { faults: [screwOut, ...alone] })
  expect(solved.voltages['cluster:case']).toBeNull()
  expect(solved.floating).toEqual(expect.arrayContaining(['cluster:case', 'tails', 'stops', 'turns']))
})

test('the later edition only adds the earth wire', () => {
  const ids = [...screwOnly.wiring.wires.keys()]
  expect([...earthWire.wiring.wires.keys()].filter((id) => !ids.includes(id))).toEqual(['w-case-earth'])
})

test('with both earths the amps part by their ohms', () => {
  // 0.06 Ω by the wing beside 0.015 Ω of wire: a fifth goes by the wing.
  const { solved, byHand } = expectByHand(earthWire, both, { live: ['tail', 'stop'], caseOhm: 1 / (1 / GOOD_OHM + 1 / EARTH_WIRE_OHM) })
  expect(solved.wires['w-case-earth'].amps).toBeCloseTo(byHand.caseV / EARTH_WIRE_OHM, 5)
  expect(solved.wires['w-case-earth'].amps! / (byHand.amps.tail + byHand.amps.stop + byHand.amps.turn)).toBeCloseTo(0.8, 6)
  expect(solved.voltages.wing).toBeCloseTo(byHand.caseV * SEAM_OHM / GOOD_OHM, 6)
})

test('with the earth wire the screw may come out', () => {
  for (const [setting, live] of [[brake, ['stop']], [tails, ['tail']], [both, ['tail', 'stop']]] as const) {
    const { solved } = expectByHand(earthWire, setting, { live, caseOhm: EARTH_WIRE_OHM }, [screwOut])
    expect(solved.voltages['cluster:case']).toBeLessThan(0.05)
    for (const line of live) expect(solved.lamps[`cluster.${line}`].class).toBe('normal')
    expect(solved.lamps['turn-front'].class).toBe('off')
  }
})

test('a wing that has come loose is the same fault', () => {
  const bySeam = screwOnly.solve(brake, { faults: [{ kind: 'open', id: 'seam' }] }).solved
  const byScrew = screwOnly.solve(brake, { faults: [screwOut] }).solved
  expect(bySeam.voltages['cluster:case']).toBeCloseTo(byScrew.voltages['cluster:case']!, 6)
  // Only that the wing is live too.
  expect(bySeam.voltages.wing).toBeCloseTo(bySeam.voltages['cluster:case']!, 6)
})

test('half the watts of the turn filament raise the case', () => {
  const faults: Fault[] = [screwOut, { kind: 'set', part: 'cluster', param: ['filaments', 'turn', 'powerW'], value: 10.5 }]
  const { byHand } = expectByHand(screwOnly, brake, { live: ['stop'], caseOhm: Infinity, turnOwnW: 10.5 }, faults)
  expect(byHand.caseV).toBeGreaterThan(caseByHand({ live: ['stop'], caseOhm: Infinity }).caseV + 0.5)
})
