// Letter f: a dynamo with a control box of three bobbins, and one of two bobbins with compensation.
import { describe, expect, test } from 'vitest'
import type { Fault, SolvedSetting } from '../../src/circuit/index.ts'
import { findZero } from './by-hand.ts'
import { openVehicle, readRecordFile } from './open-vehicle.ts'

const record = readRecordFile(new URL('./f-control-box.json', import.meta.url))
const three = openVehicle(record, { year: 1955 })
const two = openVehicle(record, { year: 1965 })

const cruise = (take: string) => ({ controls: { 'loads.take': take }, engine: 'cruise' }) as const
const turns = (bobbin: string, winding: string, value: number): Fault => ({ kind: 'set', part: 'box', param: [bobbin, 'windings', winding, 'turns'], value })

const EMF_V = 12.6, BATTERY_OHM = 0.04, HALF_OHM = 1.3, OVER_OHM = 0.4
/** Both shunt windings lie from the dynamo's side of the cut-out to earth. */
const SHUNTS_S = 1 / 64 + 1 / 50
/** Ohms of each series winding; the cut-out's contact inside the box has as many. */
const SERIES_OHM = 0.003
/** From the dynamo's side of the cut-out to A: contact and cut-out winding; in the two-bobbin box the compensation turns as well. */
const THREE_OHM = 2 * SERIES_OHM, TWO_OHM = 3 * SERIES_OHM
/** Pulls: 1000 turns / 50 Ω at 286 is 14.3 V, 10 turns at 220 is 22 A, 1000 turns / 64 Ω at 200 is 12.8 V. */
const SET_V = 286 / (1000 / 50), LIMIT_A = 220 / 10, CLOSING_V = 200 / (1000 / 64)
/** What a battery between its rest volts and its counter-voltage may still take, A: next to nothing. */
const TRICKLE_A = 0.02

const armatureSide = (solved: SolvedSetting) => solved.elements['box.voltage-shunt'].volts!
/** Amps out of A to battery and loads. */
const outputA = (solved: SolvedSetting) => solved.elements['box.cutout-series'].amps!

function expectNear(value: number | null, byHand: number, tolerance: number): void {
  expect(Math.abs(value! - byHand)).toBeLessThan(tolerance)
}

/**
 * The dynamo by hand: EMF = E0·(n/n0)·(m(x) + 0.06), m(x) = 1.5·y/(y + 0.5), y = 1.05·x²/(x + 0.05), x = field amps/(V0/6 Ω). Without load it gives V0 =
 * 12.8 V at n0 = 1100: E0·1.06 = V0 + 0.12 Ω·V0/6 Ω. The armature has 0.12 Ω and turns 1.5 times as fast as the engine.
 */
const FIELD_OHM = 6, ARMATURE_OHM = 0.12
const E0 = 12.8 * (1 + ARMATURE_OHM / FIELD_OHM) / 1.06
const excitation = (fieldA: number) => {
  const x = fieldA / (12.8 / FIELD_OHM)
  const y = 1.05 * x * x / (x + 0.05)
  return 1.5 * y / (y + 0.5) + 0.06
}
/** Engine speed at which it gives `emfV` with this field. */
const speedFor = (emfV: number, fieldA: number) => 1100 * emfV / (E0 * excitation(fieldA)) / 1.5

/** Field amps and mean ohms of the regulating contact at an engine speed: EMF = U + 0.12 Ω·(I + If). */
function fieldByHand(dynamoV: number, boxA: number, engineRpm: number) {
  const fieldA = findZero((i) => E0 * (1.5 * engineRpm / 1100) * excitation(i) - dynamoV - ARMATURE_OHM * (boxA + i), 0, 2)
  return { fieldA, contactOhm: dynamoV / fieldA - FIELD_OHM }
}

describe('three bobbins', () => {
  test('without a load the voltage bobbin works', () => {
    // 1000·U/50 = 286: U = 14.3 V before the cut-out. The battery's 6 x 2.4 V let nothing in; only the shunts take amps.
    const { solved } = three.solve(cruise('none'))
    expect(solved.outcome).toBe('rests')
    expect(solved.states['box.cutout']).toBe('closed')
    expect(armatureSide(solved)).toBeCloseTo(SET_V, 5)
    expectNear(outputA(solved), 0, TRICKLE_A)
    expectNear(solved.elements['box.current-series'].amps, SET_V * SHUNTS_S, TRICKLE_A)
    expect(10 * solved.elements['box.current-series'].amps!).toBeLessThan(220)
  })

  test('at half load the voltage bobbin works', () => {
    // U = 14.3 V; I = 14.3 / (1.3 + 0.006) = 10.9 A to the load.
    const { solved } = three.solve(cruise('half'))
    const loadA = SET_V / (HALF_OHM + THREE_OHM)
    expect(armatureSide(solved)).toBeCloseTo(SET_V, 5)
    expectNear(outputA(solved), loadA, TRICKLE_A)
    expectNear(solved.wires['w-half'].amps, loadA, TRICKLE_A)
    expectNear(solved.elements['box.current-series'].amps, loadA + SET_V * SHUNTS_S, TRICKLE_A)
    expect(10 * solved.elements['box.current-series'].amps!).toBeLessThan(220)
    expectNear(solved.voltages['dynamo:D'], SET_V + SERIES_OHM * (loadA + SET_V * SHUNTS_S), 1e-3)
  })

  test('over load the current bobbin works', () => {
    // 10·I = 220: I = 22 A through it, at whatever volts: U·(1/64 + 1/50) of it goes to the shunts, the rest out of A. There
    // the battery helps: I + (12.6 − UA)/0.04 = UA/0.4, UA = U − 0.006·I.
    const { solved } = three.solve(cruise('over'))
    const output = (u: number) => LIMIT_A - u * SHUNTS_S
    const u = findZero((v) => {
      const atA = v - THREE_OHM * output(v)
      return atA / OVER_OHM - (EMF_V - atA) / BATTERY_OHM - output(v)
    }, 10, 14)
    expect(solved.elements['box.current-series'].amps).toBeCloseTo(LIMIT_A, 5)
    expect(armatureSide(solved)).toBeCloseTo(u, 5)
    expect(outputA(solved)).toBeCloseTo(output(u), 5)
    expect(solved.wires['w-battery'].amps).toBeCloseTo(-(EMF_V - (u - THREE_OHM * output(u))) / BATTERY_OHM, 4)
    expect(1000 * armatureSide(solved) / 50).toBeLessThan(286)
    expect(u).toBeLessThan(EMF_V)
  })

  test('the contact\'s mean ohms make the field that is needed', () => {
    for (const take of ['none', 'half', 'over']) {
      const { solved } = three.solve(cruise(take))
      const { fieldA, contactOhm } = fieldByHand(solved.voltages['dynamo:D']!, solved.elements['box.current-series'].amps!, 2500)
      expect(solved.elements['dynamo.field'].amps).toBeCloseTo(fieldA, 5)
      const { volts, amps } = solved.elements['box.regulator']
      expect(volts! / amps!).toBeCloseTo(contactOhm, 3)
      expect(contactOhm).toBeGreaterThan(0.02)
      expect(contactOhm).toBeLessThan(80)
    }
  })

  test('half the current turns leave the volts to work', () => {
    // 5·I = 220 is 44 A; 0.4 Ω at 14.3 V takes 35 A, so the voltage bobbin is there first.
    const { solved } = three.solve(cruise('over'), { faults: [turns('current', 'series', 5)] })
    const loadA = SET_V / (OVER_OHM + THREE_OHM)
    expect(armatureSide(solved)).toBeCloseTo(SET_V, 5)
    expectNear(outputA(solved), loadA, TRICKLE_A)
    expect(loadA).toBeGreaterThan(LIMIT_A)
  })

  test('half the voltage turns leave the amps to work', () => {
    // 500·U/50 = 286 would be 28.6 V; at 22 A the battery has taken charge at 6 x 2.4 V + 0.04 Ω·I long before.
    const { solved } = three.solve(cruise('none'), { faults: [turns('voltage', 'shunt', 500)] })
    expect(solved.elements['box.current-series'].amps).toBeCloseTo(LIMIT_A, 5)
    const u = findZero((v) => v - (14.4 + (BATTERY_OHM + THREE_OHM) * (LIMIT_A - v * SHUNTS_S)), 14, 20)
    expectNear(armatureSide(solved), u, 1e-3)
    expectNear(outputA(solved), LIMIT_A - u * SHUNTS_S, TRICKLE_A)
  })
})

describe('two bobbins with compensation', () => {
  test('each ampere takes a tenth of a volt off', () => {
    // 1000·U/50 + 2·I = 286: U = 14.3 − 0.1·I.
    for (const take of ['none', 'half', 'over']) {
      const { solved } = two.solve(cruise(take))
      expect(solved.states['box.cutout']).toBe('closed')
      expect(armatureSide(solved)).toBeCloseTo(SET_V - 2 / 20 * outputA(solved), 5)
    }
  })

  test('the output falls in with the load', () => {
    const solvedFor = (take: string) => two.solve(cruise(take)).solved
    expectNear(outputA(solvedFor('none')), 0, TRICKLE_A)
    // Half load: UA = 14.3 − 0.1·I − 0.009·I = 1.3·I.
    const halfA = SET_V / (HALF_OHM + 2 / 20 + TWO_OHM)
    expectNear(outputA(solvedFor('half')), halfA, TRICKLE_A)
    expect(halfA).toBeCloseTo(10.15, 2)
    // Over load: I = (14.3 − UA)/0.109, and I + (12.6 − UA)/0.04 = UA/0.4. No bobbin counts amps, yet the volts give way.
    const slopeOhm = 2 / 20 + TWO_OHM
    const atA = (SET_V / slopeOhm + EMF_V / BATTERY_OHM) / (1 / slopeOhm + 1 / BATTERY_OHM + 1 / OVER_OHM)
    const over = solvedFor('over')
    expect(over.voltages['box:A']).toBeCloseTo(atA, 5)
    expect(outputA(over)).toBeCloseTo((SET_V - atA) / slopeOhm, 4)
    expect(over.wires['w-battery'].amps).toBeCloseTo((atA - EMF_V) / BATTERY_OHM, 4)
    expect(outputA(over)).toBeCloseTo(19.6, 1)
  })

  test('half the series turns halve the compensation', () => {
    const { solved } = two.solve(cruise('half'), { faults: [turns('voltage', 'series', 1)] })
    const amps = SET_V / (HALF_OHM + 1 / 20 + TWO_OHM)
    expectNear(outputA(solved), amps, TRICKLE_A)
    expect(armatureSide(solved)).toBeCloseTo(SET_V - 1 / 20 * outputA(solved), 5)
  })

  test('it has no bobbin that counts amps alone', () => {
    expect(Object.keys(three.solve().solved.elements)).toContain('box.current-series')
    expect(Object.keys(two.solve().solved.elements)).not.toContain('box.current-series')
  })
})

/**
 * The speed at which the open cut-out closes: 1000·U/64 = 200, U = 12.8 V before the contact, with only the shunts and the
 * field to feed, the field through a closed regulating contact of 0.02 Ω.
 */
function closingByHand(coilOhm: number): number {
  const shuntsA = CLOSING_V * SHUNTS_S
  const dynamoV = CLOSING_V + coilOhm * shuntsA
  const fieldA = dynamoV / (FIELD_OHM + 0.02)
  return speedFor(dynamoV + ARMATURE_OHM * (shuntsA + fieldA), fieldA)
}

/**
 * The speed at which the closed cut-out opens. On I amps back: U = 12.6 − (0.04 + R)·I before the contact, and
 * 1000·U/64 − 20·I = 120 there. The dynamo takes those amps in, less what shunts and field want.
 */
function openingByHand(coilOhm: number, wayOhm: number) {
  const perVolt = 1000 / 64
  const backA = (perVolt * EMF_V - 120) / (perVolt * (BATTERY_OHM + wayOhm) + 20)
  const u = EMF_V - (BATTERY_OHM + wayOhm) * backA
  const boxA = u * SHUNTS_S - backA
  const dynamoV = u + coilOhm * boxA
  const fieldA = dynamoV / (FIELD_OHM + 0.02)
  return { backA, rpm: speedFor(dynamoV + ARMATURE_OHM * (boxA + fieldA), fieldA) }
}

describe.each([['three bobbins', three, SERIES_OHM, THREE_OHM], ['two bobbins', two, 0, TWO_OHM]] as const)('cut-out, %s', (_, vehicle, coilOhm, wayOhm) => {
  const closing = closingByHand(coilOhm), opening = openingByHand(coilOhm, wayOhm)
  const afterCruise = (engine: number | 'idle' | 'stopped', faults: Fault[] = []) =>
    vehicle.solve({ engine }, { from: vehicle.solve(cruise('none'), { faults }).condition, faults }).solved

  test('it closes at 12.8 V', () => {
    expect(vehicle.solve({ engine: 0.998 * closing }).solved.states['box.cutout']).toBe('open')
    expect(vehicle.solve({ engine: 1.002 * closing }).solved.states['box.cutout']).toBe('closed')
    const { solved } = vehicle.solve({ engine: closing }, { faults: [{ kind: 'hold', part: 'box', state: 'cutout', value: 'open' }] })
    expect(armatureSide(solved)).toBeCloseTo(CLOSING_V, 5)
  })

  test('it opens on reverse current', () => {
    const just = afterCruise(1.002 * opening.rpm)
    expect(just.states['box.cutout']).toBe('closed')
    // A few thousandths of the speed away, the amps are nearly those at which it opens, and they run backwards.
    expectNear(outputA(just), -opening.backA, 0.3)
    expect(just.wires['w-battery'].amps).toBeCloseTo(outputA(just), 6)
    const gone = afterCruise(0.998 * opening.rpm)
    expect(gone.states['box.cutout']).toBe('open')
    expect(gone.wires['w-battery'].amps).toBeCloseTo(0, 9)
    expect(opening.backA).toBeCloseTo(3.71, 1)
  })

  test('at the very speed the amps are those by hand', () => {
    const { solved } = vehicle.solve({ engine: opening.rpm }, { faults: [{ kind: 'hold', part: 'box', state: 'cutout', value: 'closed' }] })
    expect(outputA(solved)).toBeCloseTo(-opening.backA, 5)
    expect(1000 * solved.elements['box.cutout-shunt'].amps! + 20 * outputA(solved)).toBeCloseTo(120, 4)
  })

  test('at idle and at rest it is open', () => {
    for (const engine of ['idle', 'stopped'] as const) {
      const solved = afterCruise(engine)
      expect(solved.outcome).toBe('rests')
      expect(solved.states['box.cutout']).toBe('open')
      expect(solved.wires['w-battery'].amps).toBeCloseTo(0, 9)
    }
  })

  test('between the two speeds it stays as it was', () => {
    const engine = (closing + opening.rpm) / 2
    expect(opening.rpm).toBeLessThan(closing)
    const fromRest = vehicle.solve({ engine }).solved
    expect(fromRest.states['box.cutout']).toBe('open')
    expect(fromRest.standing.map(({ name, states }) => [name, states['box.cutout']])).toEqual([['holds once made', 'closed']])
    expect(afterCruise(engine).states['box.cutout']).toBe('closed')
  })

  test('half the series turns let twice the amps back', () => {
    // 1000·U/64 − 10·I = 120.
    const perVolt = 1000 / 64
    const backA = (perVolt * EMF_V - 120) / (perVolt * (BATTERY_OHM + wayOhm) + 10)
    expect(backA).toBeGreaterThan(1.9 * opening.backA)
    const faults = [turns('cutout', 'series', 10)]
    expect(afterCruise(0.998 * opening.rpm, faults).states['box.cutout']).toBe('closed')
    const u = EMF_V - (BATTERY_OHM + wayOhm) * backA
    const boxA = u * SHUNTS_S - backA
    const dynamoV = u + coilOhm * boxA
    const fieldA = dynamoV / (FIELD_OHM + 0.02)
    const rpm = speedFor(dynamoV + ARMATURE_OHM * (boxA + fieldA), fieldA)
    expect(afterCruise(1.002 * rpm, faults).states['box.cutout']).toBe('closed')
    expect(afterCruise(0.998 * rpm, faults).states['box.cutout']).toBe('open')
  })

  test('stuck closed it drains the battery into the armature', () => {
    const stuck: Fault[] = [{ kind: 'hold', part: 'box', state: 'cutout', value: 'closed' }]
    const { solved } = vehicle.solve({ engine: 'stopped' }, { faults: stuck })
    // Armature and field side by side behind the current coil, the shunts beside them, all behind the way and the battery.
    // A current bobbin pulls whichever way its amps go, 10 x 75 A against 220: its contact is open, 80 Ω before the field.
    const machineOhm = coilOhm + 1 / (1 / ARMATURE_OHM + 1 / (FIELD_OHM + (vehicle === three ? 80 : 0.02)))
    const amps = EMF_V / (BATTERY_OHM + wayOhm + 1 / (1 / machineOhm + SHUNTS_S))
    expect(outputA(solved)).toBeCloseTo(-amps, 4)
    expect(amps).toBeGreaterThan(70)
  })
})
