// The small demo vehicle as a whole: its record, its two editions, its duty table, and figures worked out by hand.
import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { prepareCircuit, solveSetting, type Fault, type Setting, type SolvedSetting } from '../../src/circuit/index.ts'
import { partKinds } from '../../src/parts/index.ts'
import { readRecord, writeRecord, type Vehicle, type WiringRecord } from '../../src/record/index.ts'
import { measureWires } from '../../src/routes/index.ts'
import { brokenDuties, checkDuty, settingsOf } from '../builders/duties.ts'
import { mustResolve } from '../builders/record.ts'

const text = readFileSync(new URL('../../examples/vehicles/tessarby-errand.json', import.meta.url), 'utf8')

function mustRead(): WiringRecord {
  const read = readRecord(text, partKinds)
  if (read.ok) return read.record
  throw new Error(read.problems.map(({ sentence }) => sentence).join('\n'))
}

const record = mustRead()
const wiringOf = (vehicle: Vehicle) => mustResolve(record, vehicle, partKinds)
const circuitOf = (vehicle: Vehicle, faults: readonly Fault[] = []) => prepareCircuit(wiringOf(vehicle), partKinds, faults)

const EARLY: Vehicle = { year: 1954 }, LATE: Vehicle = { year: 1961 }
const EDITIONS: readonly [string, Vehicle][] = [
  ['early', EARLY], ['later', LATE],
  ['early with the second horn', { ...EARLY, options: { 'second-horn': true } }], ['later with the second horn', { ...LATE, options: { 'second-horn': true } }],
]

function at(controls: Setting['controls'], engine: Setting['engine'] = 'stopped'): Setting {
  return { controls, engine, battery: 'full', phases: {} }
}

function solve(vehicle: Vehicle, setting: Setting, faults: readonly Fault[] = []): SolvedSetting {
  return solveSetting(circuitOf(vehicle, faults), setting, { skipStanding: true }).solved
}

const KEY = { 'switch-box.key': 'on' }
const HEAD = { 'switch-box.lights': 'head' }

test.each(EDITIONS)('no sound wire is said to be overloaded: %s', (_name, vehicle) => {
  const circuit = circuitOf(vehicle)
  for (const { id, spec } of circuit.network.axes) {
    for (const position of spec.positions) {
      for (const engine of ['stopped', 'cranking', 'cruise'] as const) {
        const { notes } = solveSetting(circuit, at({ ...KEY, ...HEAD, [id]: position }, engine), { skipStanding: true }).solved
        expect(notes.filter((note) => note.startsWith('wire ')), `${id} at ${position}, ${engine}`).toEqual([])
      }
    }
  }
})

describe('the record', () => {
  test('it is written as the product writes it', () => {
    expect(writeRecord(record)).toBe(text)
  })

  test('each edition has its own supply', () => {
    const [early, late] = [wiringOf(EARLY), wiringOf(LATE)]
    expect([early.systemV, early.earth, late.systemV, late.earth]).toEqual([6, 'positive', 12, 'negative'])
    for (let year = 1951; year <= 1964; year++) expect(wiringOf({ year }).systemV).toBe(year < 1958 ? 6 : 12)
  })

  test('each edition has 25 to 40 wires', () => {
    for (const vehicle of [EARLY, LATE]) {
      const { size } = wiringOf(vehicle).wires
      expect(size).toBeGreaterThanOrEqual(25)
      expect(size).toBeLessThanOrEqual(40)
    }
  })

  test('the second horn is usually not fitted', () => {
    const { assumed, parts } = wiringOf(LATE)
    expect(parts.has('horn-2')).toBe(false)
    expect(assumed.map(({ path }) => path)).toContain('options.second-horn')
  })

  test('nothing is left without a mate', () => {
    for (const [, vehicle] of EDITIONS) expect(wiringOf(vehicle).unmatched).toEqual([])
  })
})

describe('lengths', () => {
  test('a run is no shorter than its straight line', () => {
    const { places, runs } = wiringOf(LATE)
    for (const { from, to, lengthMm } of runs.values()) {
      const [a, b] = [places.get(from), places.get(to)].map((place) => [place?.xMm, place?.yMm, place?.zMm].map(Number))
      const straightMm = Math.hypot(...a.map((x, i) => x - b[i]))
      expect(Number(lengthMm)).toBeGreaterThanOrEqual(straightMm)
      expect(Number(lengthMm)).toBeLessThan(1.2 * straightMm)
    }
  })

  test('every loom wire is as long as its loom says', () => {
    for (const vehicle of [EARLY, LATE]) {
      const wiring = wiringOf(vehicle)
      for (const [id, { lengthMm, madeMm, neededMm }] of measureWires(wiring)) {
        const { loom, lengthMm: stated } = wiring.wires.get(id)!
        if (loom === 'separate') continue
        expect(stated, id).toBeUndefined()
        expect(lengthMm, id).toBe(madeMm ?? neededMm)
        expect(lengthMm, id).toBeGreaterThanOrEqual(neededMm!)
      }
    }
  })

  test('a branch nobody measured takes its runs', () => {
    const route = measureWires(wiringOf(EARLY)).get('e22')!
    // post to roof 760 mm along the groove, tails 110 and 150
    expect([route.madeMm, route.neededMm, route.lengthMm]).toEqual([null, 1020, 1020])
  })
})

describe('duties', () => {
  test.each(EDITIONS)('every duty is met: %s', (_, vehicle) => {
    const circuit = circuitOf(vehicle)
    expect(brokenDuties(circuit)).toEqual([])
    expect(circuit.network.wiring.duties.size).toBeGreaterThanOrEqual(20)
  })

  test('a blown fuse breaks the duties behind it', () => {
    const circuit = circuitOf(LATE, [{ kind: 'open', id: 'fuse-1' }])
    const broken = [...circuit.network.wiring.duties].filter(([, duty]) => settingsOf(duty).some((setting) => checkDuty(circuit, duty, setting).length > 0))
    expect(broken.map(([id]) => id)).toEqual(['duty-stop-lever', 'duty-turn-left', 'duty-turn-right', 'duty-turn-stop-left', 'duty-turn-stop-right', 'duty-wiper-late'])
  })
})

describe('by hand', () => {
  /** I = I0·u·(u² + e²)^−0.225 with u = V/V0, I0 = P/V0 and e = 12^(−1/0.45). */
  const lampAmps = (volts: number, ratedV: number, powerW: number) => powerW / ratedV * (volts / ratedV) * ((volts / ratedV) ** 2 + 12 ** (-2 / 0.45)) ** -0.225

  // A full battery rests at 12.65 V at 26.7 °C and 1.2 mV lower a kelvin below it; half of that with three cells.
  const REST_V = 12.65 - 0.0012 * 6.7

  test('dipped beam on 12 V', () => {
    // Wires: ohms a metre × metres + two joints of 2 mohm (0.3 at the heavy leads).
    const battery = 0.009, l1 = 0.000743 * 0.65 + 0.0006, l2 = 0.000743 * 0.29 + 0.0006
    const l4 = 0.00471 * 1.98 + 0.004, l30 = 0.0076 * 0.96 + 0.004, l33 = 0.00942 * 2.48 + 0.004, l34 = 0.0127 * 1.3 + 0.004
    const lighting = 0.01, dip = 0.008, shell = 0.001, cab = 0.001
    // Three lamps of 5.5 W, two of 4.4 and one of 2, all near 12.2 V of their 13.5.
    const small = lampAmps(12.2, 13.5, 3 * 5.5 + 2 * 4.4 + 2)
    let left = 12, right = 12
    for (let round = 0; round < 30; round++) {
      const [leftA, rightA] = [lampAmps(left, 13.2, 51), lampAmps(right, 13.2, 51)]
      const shared = (leftA + rightA + small) * (battery + l1 + l4 + l2) + (leftA + rightA) * (lighting + l30 + dip + l33 + cab)
      left = REST_V - shared - leftA * shell
      right = REST_V - shared - rightA * (l34 + shell)
    }
    const { lamps } = solve(LATE, at(HEAD))
    expect(lamps['head-left.dip'].volts / left).toBeCloseTo(1, 2.3)
    expect(lamps['head-right.dip'].volts / right).toBeCloseTo(1, 2.3)
    expect(left).toBeCloseTo(11.99, 1)
  })

  test('exciting current on 12 V', () => {
    // To 15 at the switch box: battery, leads, feed, key contact, bar; 4.1 A in all. Then lamp, wire, rotor, closed regulator.
    const to15 = REST_V - 4.1 * (0.009 + 0.00108 + 0.00082 + 0.01333 + 0.01 + 0.001)
    const rest = 0.0185 * 2.14 + 0.004 + 3.2 + 0.05
    let amps = 0.15
    for (let round = 0; round < 60; round++) amps = lampAmps(to15 - amps * rest, 12, 2.2)
    const { wires } = solve(LATE, at(KEY))
    expect(Math.abs(wires.l6.amps!)).toBeCloseTo(amps, 3)
    expect(amps).toBeGreaterThan(0.1)
  })

  test('starter amps on 6 V', () => {
    // 35 mm2 lead, 25 mm2 straps, main contact, link, case, and the motor as 6 V / 125 A; 9.5 A go elsewhere.
    const battery = 0.0044, e1 = 0.000527 * 0.65 + 0.0006, strap = 0.000743 * 0.4 + 0.0006, e2 = 0.000743 * 0.29 + 0.0006
    const amps = (REST_V / 2 - 9.5 * (battery + e1 + e2)) / (battery + e1 + strap + e2 + 0.0008 + 0.0002 + 0.0003 + 6 / 125)
    const { elements } = solve(EARLY, at({ ...KEY, 'starter-button.press': 'pressed' }, 'cranking'))
    expect(Math.abs(elements.starter.amps!) / amps).toBeCloseTo(1, 2.3)
    expect(Math.abs(elements.starter.volts!)).toBeGreaterThan(5)
  })

  test('one horn on 6 V', () => {
    const { elements } = solve(EARLY, at({ 'horn-button.press': 'pressed' }))
    // Battery and its leads; ammeter and its wires; switch box, bar and fuse 2; horn wires; button with its column; cab.
    const path = 0.0044 + 0.00094 + 0.00082 + 0.0082 + 0.002 + 0.00373 + 0.005 + 0.001 + 0.00833 + 0.01627 + 0.02136 + 0.02 + 0.001
    // The horn itself: 6 V / 5 A.
    expect(Math.abs(elements.horn.amps!)).toBeCloseTo(REST_V / 2 / (6 / 5 + path), 2)
  })
})

describe('charging', () => {
  test('the early van charges at cruise only', () => {
    const amps = (engine: Setting['engine'], controls = {}) => solve(EARLY, at({ ...KEY, ...controls }, engine)).elements.battery.amps!
    expect(amps('idle')).toBeLessThan(-3)
    expect(amps('cruise')).toBeGreaterThan(3)
    expect(amps('cruise', HEAD)).toBeGreaterThan(0)
  })

  test('the alternator charges at idle without lamps', () => {
    const amps = (engine: Setting['engine'], controls = {}) => solve(LATE, at({ ...KEY, ...controls }, engine)).elements.battery.amps!
    expect(amps('idle')).toBeGreaterThan(1)
    expect(amps('idle', HEAD)).toBeLessThan(0)
    expect(amps('cruise', HEAD)).toBeGreaterThan(1)
  })

  test('a dynamo magnetised against the battery is told of, whichever of the two is turned', () => {
    const notes = (fault: Fault) => solve(EARLY, at(KEY, 'cruise'), [fault]).notes.join(' ')
    for (const fault of [{ kind: 'set', part: 'dynamo', param: ['residual'], value: 'reversed' }, { kind: 'swap', a: 'battery:+', b: 'battery:-' }] as const) {
      expect(notes(fault)).toContain('Dynamo (dynamo) is magnetised against the battery: its cut-out closes on battery and generator volts together')
    }
    expect(solve(EARLY, at(KEY, 'cruise')).notes).toEqual([])
  })

  test('what a welded cut-out lets the dynamo take is heat, not charge', () => {
    const { balance, elements } = solve(EARLY, at(KEY), [{ kind: 'hold', part: 'control-box', state: 'cutout', value: 'welded' }])
    expect(elements.battery.amps).toBeLessThan(-10)
    expect(balance.chargeW).toBe(0)
    expect(balance.insideW).toBeGreaterThan(50)
  })

  test('the early charging lamp glimmers at idle', () => {
    const { percent } = solve(EARLY, at(KEY, 'idle')).lamps['charge-lamp']
    expect(percent).toBeGreaterThan(10)
    expect(percent).toBeLessThan(40)
  })
})

describe('what moves by itself', () => {
  test('the solenoid lets go with the key', () => {
    const circuit = circuitOf(LATE)
    const cranking = solveSetting(circuit, at({ 'switch-box.key': 'start' }, 'cranking'), { skipStanding: true })
    expect(cranking.solved.states['solenoid.armature']).toBe('pulled')
    const after = solveSetting(circuit, at(KEY, 'cranking'), { from: cranking.condition, skipStanding: true })
    expect(after.solved.states['solenoid.armature']).toBe('released')
  })

  test('the later wiper parks by itself', () => {
    const on = solve(LATE, at({ ...KEY, 'wiper-switch.pull': 'on' }))
    expect(on.phases['wiper-12'].cycle).toHaveLength(4)
    const off = solve(LATE, { ...at(KEY), phases: { 'wiper-12': 'across' } })
    expect(off.phases['wiper-12'].rests).toBe('parked')
  })

  test('the turn lamps flash at a lawful rate', () => {
    const { flasher } = solve(LATE, at({ ...KEY, 'turn-switch.lever': 'left' }, 'idle')).phases
    expect([flasher.cycle, flasher.rate]).toEqual([['dark', 'lit'], '60 to 120 a minute'])
  })

  test('a dead turn bulb is told by the tell-tale', () => {
    const { flasher } = solve(LATE, at({ ...KEY, 'turn-switch.lever': 'left' }, 'idle'), [{ kind: 'open', id: 'stop-left' }]).phases
    expect(Math.max(...flasher.solutions!.map(({ lamps }) => lamps['tell-tale'].percent))).toBeLessThan(10)
    expect(flasher.rate).not.toBe('60 to 120 a minute')
  })
})

describe('a wing without its bolts', () => {
  const bolts: Fault[] = [{ kind: 'open', id: 'left-wing-bolts' }]
  const brake = at({ ...KEY, 'brake-switch.pedal': 'pressed' })

  test.each([['early', EARLY], ['later', LATE]] as const)('braking lights the tail lamp instead: %s', (_, vehicle) => {
    const { lamps } = solve(vehicle, brake, bolts)
    expect(lamps['stop-left'].class).toBe('off')
    expect(lamps['tail-left'].class).toBe('dim')
    expect(lamps['tail-right'].percent).toBeGreaterThan(5)
    expect(lamps['stop-right'].class).toBe('normal')
  })

  test('with both lines live its lamps are dark', () => {
    const { lamps } = solve(LATE, at({ ...brake.controls, 'switch-box.lights': 'parking' }), bolts)
    expect([lamps['stop-left'].class, lamps['tail-left'].class, lamps['tail-right'].class]).toEqual(['off', 'off', 'normal'])
  })

  test('healthy lines light nothing but their own', () => {
    for (const vehicle of [EARLY, LATE]) expect(solve(vehicle, brake).lamps['tail-left'].percent).toBeLessThan(0.5)
  })
})

test('nothing floats in a healthy van', () => {
  for (const vehicle of [EARLY, LATE]) {
    for (const setting of [at({}), at(KEY), at({ ...KEY, ...HEAD }, 'cruise')]) expect(solve(vehicle, setting).floating).toEqual([])
  }
})
