// The main demo vehicle, a light fire tender: its record, its four editions with their options, its duty table, every setting, and figures worked out by hand.
import { describe, expect, test } from 'vitest'
import { layFaults, planSweep, readSolution, solveSetting, sweepSettings, type Fault, type Setting, type SolvedSetting } from '../../src/circuit/index.ts'
import { partKinds } from '../../src/parts/index.ts'
import { writeRecord } from '../../src/record/index.ts'
import { measureWires } from '../../src/routes/index.ts'
import { brokenDuties } from '../builders/duties.ts'
import { mustResolve } from '../builders/record.ts'
import { readWarden, WARDEN_OPTIONS, WARDEN_TEXT, WARDEN_YEARS, wardenCircuit, wardenWiring, type WardenOption, type WardenYear } from '../builders/warden.ts'

const isLong = import.meta.env.MODE === 'long'
/** No option, each alone, all together. */
const FITTINGS: readonly (readonly WardenOption[])[] = [[], ...WARDEN_OPTIONS.map((option) => [option]), WARDEN_OPTIONS]

function at(controls: Setting['controls'], engine: Setting['engine'] = 'stopped'): Setting {
  return { controls, engine, battery: 'full', phases: {} }
}

const circuits = new Map(WARDEN_YEARS.map((year) => [year, wardenCircuit(year)]))

function solve(year: WardenYear, setting: Setting, faults: readonly Fault[] = []): SolvedSetting {
  return solveSetting(layFaults(circuits.get(year)!, partKinds, faults), setting, { skipStanding: true }).solved
}

const KEY = { 'key.key': 'on' }
const HEAD = { 'light-switch.lights': 'head' }

describe('the record', () => {
  test('it is written as the product writes it', () => {
    expect(writeRecord(readWarden())).toBe(WARDEN_TEXT)
  })

  test('each edition has its own supply', () => {
    expect(WARDEN_YEARS.map((year) => wardenWiring(year)).map(({ systemV, earth }) => `${systemV} V, ${earth}`))
      .toEqual(['6 V, positive', '12 V, positive', '12 V, negative', '12 V, negative'])
  })

  test('the latest has 130 wires and 50 parts or more', () => {
    const { wires, parts, metals, looms, splices } = wardenWiring(1966)
    expect(wires.size).toBeGreaterThanOrEqual(130)
    expect(parts.size).toBeGreaterThanOrEqual(50)
    expect([metals.size, looms.size, splices.size]).toEqual([7, 3, 5])
  })

  test('every year is of one edition', () => {
    const wires = (year: number) => [...mustResolve(readWarden(), { year }, partKinds).wires.keys()].join()
    const years = Array.from({ length: 21 }, (_, i) => 1948 + i)
    expect(years.filter((year) => year === 1948 || wires(year) !== wires(year - 1))).toEqual([1948, 1954, 1959, 1964])
  })

  test('every set of options is one wiring, and only the socket meets nothing', () => {
    for (const year of WARDEN_YEARS) for (let set = 0; set < 2 ** WARDEN_OPTIONS.length; set++) {
      const options = WARDEN_OPTIONS.filter((_, i) => set >> i & 1)
      const ways = wardenWiring(year, options).unmatched.map(({ half, way }) => `${half}:${way}`)
      expect(ways, `${year} ${options.join()}`).toEqual(year === 1950 || options.includes('lead-lamp') ? [] : ['socket-dash:plus', 'socket-dash:minus'])
    }
  })

  test('claims disagree, and some facts are unknown', () => {
    const { claims = {}, passages = {}, fixings = {} } = readWarden()
    const all = Object.values(claims)
    const disputed = all.filter(({ about, says }) => all.some((other) => other.about.join() === about.join() && JSON.stringify(other.says) !== JSON.stringify(says)))
    expect(new Set(disputed.map(({ about }) => about.join())).size).toBe(3)
    expect([passages['roof-lining'].insideMm, fixings['tail-panel-screws'].ohm]).toEqual(['unknown', 'unknown'])
  })
})

describe('lengths', () => {
  test.each(WARDEN_YEARS)('a run is no shorter than its straight line: %s', (year) => {
    const { places, runs } = wardenWiring(year, WARDEN_OPTIONS)
    for (const [id, { from, to, lengthMm }] of runs) {
      const [a, b] = [places.get(from), places.get(to)].map((place) => [place?.xMm, place?.yMm, place?.zMm].map(Number))
      const straightMm = Math.hypot(...a.map((x, i) => x - b[i]))
      expect(Number(lengthMm), id).toBeGreaterThanOrEqual(straightMm)
      expect(Number(lengthMm), id).toBeLessThan(1.25 * straightMm + 10)
    }
  })

  test.each(WARDEN_YEARS)('every wire has a length, of its loom, of its runs or as made: %s', (year) => {
    const wiring = wardenWiring(year, WARDEN_OPTIONS)
    for (const [id, { lengthMm, madeMm, neededMm }] of measureWires(wiring)) {
      const { loom, lengthMm: stated } = wiring.wires.get(id)!
      expect(lengthMm, id).toBeGreaterThan(0)
      if (loom === 'separate') continue
      expect([stated, lengthMm], id).toEqual([undefined, madeMm ?? neededMm])
      if (neededMm !== null) expect(lengthMm, id).toBeGreaterThanOrEqual(neededMm)
    }
  })

  test('the roof-rail loom takes the long way to the tail', () => {
    const tail = (year: WardenYear, from: RegExp) => {
      const wiring = wardenWiring(year)
      const id = [...wiring.wires.values()].find(({ role, ends }) => role === 'left tail lamp' && from.test(String(ends[0].at)))!.id
      return measureWires(wiring).get(id)!.lengthMm!
    }
    // Rail: 1,520 along it to its middle, 1,700 to its end, 1,330 down the post, tails 60 and 160. Sill: 1,700, 1,590 and 580.
    const rail = tail(1956, /rail-joint/), sill = tail(1961, /sill-joint/)
    expect([rail, sill]).toEqual([1520 + 1700 + 1330 + 3 * 20 + 220, 1700 + 1590 + 580 + 3 * 30 + 220])
  })
})

describe('duties', () => {
  test.each(WARDEN_YEARS)('every duty is met, with every option: %s', (year) => {
    for (const options of FITTINGS) expect(brokenDuties(wardenCircuit(year, options)), options.join()).toEqual([])
    expect(wardenWiring(year).duties.size).toBeGreaterThanOrEqual(20)
  })

  test('the starter is dead in gear, and a duty says so', () => {
    const bridged: Fault = { kind: 'join', a: 'neutral-switch:85', b: 'neutral-switch:31' }
    const broken = brokenDuties(layFaults(circuits.get(1966)!, partKinds, [bridged]))
    expect(broken.map((line) => line.split(',')[0])).toEqual(['duty-start-in-gear'])
  })
})

describe('every setting', () => {
  // The usual tests solve the plan of the sweep with no option and with all; the long ones each option too, and climb every extreme.
  const fittings = isLong ? FITTINGS : [[], WARDEN_OPTIONS]
  test.each(WARDEN_YEARS.flatMap((year) => fittings.map((options) => [year, options] as const)))('comes to rest and balances: %s, %s', (year, options) => {
    const circuit = wardenCircuit(year, options)
    const plan = planSweep(circuit)
    let solved = 0
    for (const { setting, condition, outcome } of sweepSettings(circuit, plan)) {
      if (outcome !== 'rests') throw new Error(`it chatters at ${JSON.stringify(setting)}`)
      if (Object.keys(setting.phases).length === 0) solved++
      if (solved % 10 === 0) expect(readSolution(circuit, condition).balance.worstA, JSON.stringify(setting)).toBeLessThan(1e-6)
      if (!isLong && solved >= plan.count) break
    }
    expect(solved).toBeGreaterThan(300)
  }, 600_000)
})

describe('by hand', () => {
  /** I = I0·u·(u² + e²)^−0.225 with u = V/V0, I0 = P/V0 and e = 12^(−1/0.45). */
  const lampAmps = (volts: number, ratedV: number, powerW: number) => powerW / ratedV * (volts / ratedV) * ((volts / ratedV) ** 2 + 12 ** (-2 / 0.45)) ** -0.225
  // A full battery rests at 12.65 V at 26.7 °C and 1.2 mV lower a kelvin below it.
  const REST_V = 12.65 - 0.0012 * 6.7
  /** British PVC cable of 0.30 mm strands, ohm a metre: a tow-bar fitter's cable table; 65/0.30 lies between ISO 6722 sizes 4 and 5. */
  const cable = { 14: 0.0189, 28: 0.0094, 44: 0.006, 65: 0.004282 }
  const JOINT = 0.002, FIXING = 0.001
  const wire = (strands: keyof typeof cable, metres: number, joints = 2) => cable[strands] * metres + joints * JOINT

  test('dipped beam behind its relay, 1966', () => {
    const battery = 0.0055, leads = 0.000527 * (1.08 + 0.35 + 0.18) + 6 * 0.0003 + 0.0005
    // The small lamps come through the main feed, the dipped beams straight from the solenoid.
    const small = lampAmps(12.3, 13.5, 3 * 5.5 + 2 * 6 + 2 * 2)
    const shared = wire(65, 2.75) + wire(65, 0.22) + 0.005 + wire(44, 2.62)
    // A fuse of 8 A: clips of 3 mohm and an element of 0.08/8 ohm.
    const own = 0.003 + 0.08 / 8 + wire(28, 3.38) + wire(28, 0.16)
    // Left earth: splice to cab, with the left side lamp; cab on the chassis carries nearly all.
    const earth = wire(44, 2.2), park = lampAmps(12.2, 13.5, 5.5)
    let volts = 12
    for (let round = 0; round < 40; round++) {
      const amps = lampAmps(volts, 13.2, 51), all = 2 * amps + small
      volts = REST_V - all * (battery + leads) - 2 * amps * shared - amps * own - (amps + park) * earth - all * FIXING
    }
    const { lamps } = solve(1966, at(HEAD))
    expect(lamps['head-left.dip'].volts).toBeCloseTo(volts, 1.7)
    expect(volts).toBeCloseTo(11.95, 1)
  })

  test('half a tank on the stabilised gauge', () => {
    // 70 litres from 220 down to 30 ohm: 125 ohm at 35 litres; 10 V over 65 + 125 ohm is 52.6 mA, which its scale calls 35.
    const { dials } = solve(1966, at(KEY))
    expect(dials['fuel-gauge'].shows).toBeCloseTo(35, 0)
    // The running engine raises the volts by more than one; the stabiliser's gauge does not move.
    expect(solve(1966, at(KEY, 'cruise')).dials['fuel-gauge'].shows).toBeCloseTo(35, 0)
  })

  test('a moving-coil gauge without a stabiliser reads hotter as the volts rise', () => {
    const shows = (engine: Setting['engine']) => solve(1961, at({ ...KEY, 'temp-sender.water': 80 }, engine)).dials['temp-gauge'].shows!
    expect(shows('stopped')).toBeCloseTo(80, -0.5)
    expect(shows('cruise')).toBeGreaterThan(shows('stopped') + 5)
  })

  test('the by-pass gives the coil nearly all volts while the starter turns', () => {
    const cranking = at({ 'key.key': 'start' }, 'cranking')
    const { elements, voltages } = solve(1966, cranking)
    const [coil, feed] = [Math.abs(elements['coil.primary'].volts!), voltages['solenoid:30']!]
    expect(coil / feed).toBeGreaterThan(0.9)
    // Without it the ballast of 1.5 ohm and the coil of 1.5 ohm share what the key's wires leave.
    const alone = solve(1966, cranking, [{ kind: 'open', id: 'solenoid.bypass' }])
    expect(Math.abs(alone.elements['coil.primary'].volts!) / alone.voltages['solenoid:30']!).toBeLessThan(0.5)
  })
})

describe('charging', () => {
  test.each([[1950, -1, 1], [1956, -1, 1], [1961, -1, 1], [1966, 1, 1]] as const)('of %s at idle and at cruise', (year, idle, cruise) => {
    const amps = (engine: Setting['engine']) => Math.sign(solve(year, at(KEY, engine)).elements.battery.amps!)
    expect([amps('idle'), amps('cruise')]).toEqual([idle, cruise])
  })

  test('the second battery is charged only while it is joined', () => {
    const circuit = wardenCircuit(1966, ['second-battery'])
    const amps = (handle: string) => solveSetting(circuit, at({ ...KEY, 'battery-link.handle': handle }, 'cruise'), { skipStanding: true }).solved.elements['battery-2'].amps!
    expect(amps('apart')).toBeCloseTo(0, 6)
    expect(amps('joined')).toBeGreaterThan(0.5)
  })
})

describe('faults that such a vehicle has', () => {
  test('a lost rear earth feeds the turn lamps back through the tail lamps', () => {
    const rearEarth = [...wardenWiring(1966).wires.values()].find(({ role }) => role === 'rear earth')!.id
    const braking = at({ ...KEY, 'stop-switch.pedal': 'pressed' })
    const { lamps } = solve(1966, braking, [{ kind: 'open', id: rearEarth }])
    expect(lamps['rear-left.stop'].percent).toBeLessThan(85)
    expect(lamps['park-left'].percent).toBeGreaterThan(10)
    expect(solve(1966, braking).lamps['park-left'].percent).toBeLessThan(1)
  })

  test('the turn flasher tells of one dead bulb', () => {
    const left = at({ ...KEY, 'turn-switch.lever': 'left' })
    const rate = (faults: readonly Fault[]) => solve(1961, left, faults).phases.flasher.rate
    expect(rate([])).toBe('60 to 120 a minute')
    expect(rate([{ kind: 'open', id: 'turn-rear-left' }])).not.toBe('60 to 120 a minute')
  })

  test('four lamps flash on the hazard flasher at a lawful rate', () => {
    for (const year of [1961, 1966] as const) expect(solve(year, at({ 'hazard-switch.push': 'on' })).phases['hazard-flasher'].rate).toBe('60 to 120 a minute')
  })
})
