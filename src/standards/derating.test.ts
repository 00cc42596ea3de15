import { describe, expect, test } from 'vitest'
import { findAmbientFactor, type AmbientRule, type Warmth } from './ambient-factor.ts'
import { chartPointRows } from './aircraft-chart-rows.ts'
import { findBundleFactor, lowestBundleFactor, type BundleRule } from './bundle-factor.ts'
import { copper } from './copper-rows.ts'
import { britishAmbientRows, engineSpaceRows } from './derating-rows.ts'

function ambient(warmth: Warmth, rule?: AmbientRule): number {
  const found = findAmbientFactor(warmth, rule)
  if (!found.ok) throw new Error(found.sentence)
  return found.factor
}

function bundle(wires: number, rule: BundleRule, loadingPct?: number): number {
  const found = findBundleFactor(wires, rule, loadingPct)
  if (!found.ok) throw new Error(found.sentence)
  return found.factor
}

/** As the circular rounds each step of its examples. */
function tenths(amps: number): number {
  return Math.round(amps * 10) / 10
}

function point(chart: string, where: Partial<Record<'awg' | 'riseC' | 'altitudeFt' | 'wires' | 'loadingPct', unknown>>): number {
  const rows = chartPointRows.filter((row) => row.chart === chart && Object.entries(where).every(([key, value]) => row[key as 'awg'] === value))
  expect(rows).toHaveLength(1)
  return rows[0].value
}

describe('published examples', () => {
  // AC 43.13-1B par. 11-68 example 2, p. 11-27: No. 14, 200 C wire in 50 C: 47 A x 0.91 (20,000 ft) = 42.77 A, x 0.6 = 26 A.
  test('free air, altitude and bundle', () => {
    const high = point('free air', { awg: '14', riseC: 150 }) * point('altitude', { altitudeFt: 20000 })
    expect(Math.abs(high - 42.77)).toBeLessThanOrEqual(0.01)
    expect(Math.abs(high * point('bundle', { wires: 8, loadingPct: 60 }) - 26)).toBeLessThanOrEqual(0.5)
    expect(Math.abs(high * bundle(8, 'mil-w-5088l', 60) - 26)).toBeLessThanOrEqual(0.6)
  })

  // AC 43.13-1B pp. 11-22, 11-23, 11-27; results from memory: T2 = T1 + (TR - T1) sqrt(I2 / Imax) = 182 C, which the circular
  // itself calls too high, and L2 = 254.5 L1 / (234.5 + T2) = 9.5 ft.
  test('a warm conductor shortens the run', () => {
    const hotC = 50 + (200 - 50) * Math.sqrt(20 / 26)
    const zeroC = copper.zeroResistanceC.value
    expect(Math.abs(hotC - 182)).toBeLessThanOrEqual(0.5)
    expect(Math.abs((15.5 * (20 - zeroC)) / (hotC - zeroC) - 9.5)).toBeLessThanOrEqual(0.05)
  })

  // AC 43.13-1B par. 11-69 example 1, from memory: 10 of No. 20 and 25 of No. 22, 60,000 ft, 20 % loading: 50.6 A in all.
  // The example rounds each step to a tenth: 8.4 and 11.2 A in the bundle, 6.6 and 8.8 A at altitude.
  test('a harness of 35 wires', () => {
    const each = (awg: string) => tenths(tenths(point('free air', { awg, riseC: 140 }) * point('bundle', { wires: 35, loadingPct: 20 })) * point('altitude', { altitudeFt: 60000 }))
    expect(each('22')).toBeCloseTo(6.6, 9)
    expect(each('20')).toBeCloseTo(8.8, 9)
    expect(Math.abs((25 * each('22') + 10 * each('20')) * 0.2 - 50.6)).toBeLessThanOrEqual(0.1)
  })

  // AC 43.13-1B par. 11-69 example 2, from memory: 12 of No. 12, fully loaded: 29.2 A at 25 C, 26.2 A at 60 C, 23.8 A
  // of that at 20,000 ft; 350.4 and 285.6 A in all.
  test('a harness of 12 loaded wires', () => {
    const factor = bundle(12, 'mil-w-5088l', 100)
    expect(factor).toBe(point('bundle', { wires: 12, loadingPct: 100 }))
    const [cool, hot] = [175, 140].map((riseC) => point('free air', { awg: '12', riseC }) * factor)
    expect(Math.abs(cool - 29.2)).toBeLessThanOrEqual(0.05)
    expect(Math.abs(hot - 26.2)).toBeLessThanOrEqual(0.05)
    const high = tenths(hot) * point('altitude', { altitudeFt: 20000 })
    expect(Math.abs(high - 23.8)).toBeLessThanOrEqual(0.05)
    expect([tenths(cool), tenths(high)].map((amps) => tenths(12 * amps))).toEqual([350.4, 285.6])
  })

  // BS 7671:1992 Table 4.3: the square-root rule is within 0.01 of it from 30 to 55 C; 25 C is printed 1.03 against 1.06.
  test('the root of the temperature left', () => {
    for (const { ambientC, factor } of britishAmbientRows) {
      const warmth = { limitC: 70, ambientC, ratedAtC: 30 }
      expect(ambient(warmth, 'bs7671')).toBe(factor)
      if (ambientC >= 30) expect(Math.abs(ambient(warmth) - factor), String(ambientC)).toBeLessThanOrEqual(0.01)
    }
  })
})

describe('ambient', () => {
  // 33 CFR 183.425 Table 5 note 1: the same rule within 0.01 from 30 to 50 C, except 200 C, printed 1.0 against 0.94.
  test('the engine space of boats', () => {
    for (const { insulationC, factor } of engineSpaceRows) {
      const warmth = { limitC: insulationC, ambientC: 50, ratedAtC: 30 }
      expect(ambient(warmth, 'engine-space')).toBe(factor)
      if (insulationC < 200) expect(Math.abs(ambient(warmth) - factor)).toBeLessThan(0.01)
    }
  })

  test('beyond a table is refused', () => {
    expect(findAmbientFactor({ limitC: 70, ambientC: 70, ratedAtC: 30 })).toMatchObject({ ok: false, received: '70 C' })
    expect(findAmbientFactor({ limitC: 70, ambientC: 32, ratedAtC: 30 }, 'bs7671')).toMatchObject({ ok: false, nearest: expect.arrayContaining(['35']) })
    expect(findAmbientFactor({ limitC: 100, ambientC: 50, ratedAtC: 30 }, 'engine-space').ok).toBe(false)
    expect(() => findAmbientFactor({ limitC: 70, ambientC: 40, ratedAtC: 70 })).toThrow(RangeError)
  })
})

describe('bundles', () => {
  // The tables disagree strongly: 12 loaded wires are 0.43 on the aircraft curve, 0.50 in the NEC and the boat guideline.
  test('twelve wires by each table', () => {
    expect(bundle(12, 'mil-w-5088l')).toBe(0.43)
    expect(bundle(12, 'nec')).toBe(0.5)
    expect(bundle(12, 'uscg')).toBe(0.5)
    expect(findBundleFactor(12, 'bs7671')).toMatchObject({ ok: false, nearest: ['10'] })
  })

  test('few wires lose nothing', () => {
    expect([1, 2].map((wires) => bundle(wires, 'uscg'))).toEqual([1, 1])
    expect(bundle(3, 'nec')).toBe(1)
    expect(bundle(1, 'bs7671')).toBe(1)
  })

  test('loading between the columns', () => {
    expect(bundle(8, 'mil-w-5088l', 50)).toBeCloseTo((0.6675 + 0.595) / 2, 9)
    expect(findBundleFactor(8, 'mil-w-5088l', 10).ok).toBe(false)
  })

  test('the lowest never rises with more wires', () => {
    for (let wires = 1; wires < 60; wires++) {
      expect(lowestBundleFactor(wires + 1).factor).toBeLessThanOrEqual(lowestBundleFactor(wires).factor)
    }
    expect(lowestBundleFactor(20)).toMatchObject({ factor: 0.3425, rule: 'mil-w-5088l', assumed: true })
    expect(lowestBundleFactor(3)).toMatchObject({ factor: 0.7, assumed: false })
  })

  test('a part of a wire is refused', () => {
    expect(() => findBundleFactor(1.5, 'nec')).toThrow(/whole number/)
    expect(() => lowestBundleFactor(0)).toThrow(RangeError)
  })
})
