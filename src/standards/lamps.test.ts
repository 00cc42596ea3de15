import { describe, expect, test } from 'vitest'
import { findLamp, lampNames, lumensFromCandlepower, type LampFilament } from './lamps.ts'
import { lampExponents, tradeNumberRows, type Filament } from './lamp-rows.ts'

function filaments(name: string, wanted: { voltsV?: number; filament?: Filament } = {}): readonly LampFilament[] {
  const lamp = findLamp(name, wanted)
  if (!lamp.ok) throw new Error(lamp.sentence)
  return lamp.filaments
}

function only(name: string, wanted: { voltsV?: number; filament?: Filament } = {}): LampFilament {
  const all = filaments(name, wanted)
  expect(all).toHaveLength(1)
  return all[0]
}

describe('published examples', () => {
  // Directive 97/24/EC annex 15, P21/5W: 26 W at 6.75 V, 25 W at 13.5 V; tail 6 W at both.
  test.each([
    [6, 'stop', 3.852], [12, 'stop', 1.852], [6, 'tail', 0.889], [12, 'tail', 0.444],
  ] as const)('P21/5W amps at %s V, %s filament', (voltsV, filament, currentA) => {
    const { testV, powerW } = only('P21/5W', { voltsV, filament })
    expect(Math.abs(powerW! / testV! - currentA)).toBeLessThanOrEqual(0.0005)
  })

  test.each([[6, 1.752], [12, 7.29]])('P21/5W hot ohms at %s V', (voltsV, hotOhm) => {
    const { testV, powerW } = only('P21/5W', { voltsV, filament: 'stop' })
    expect(Math.abs(testV! ** 2 / powerW! / hotOhm - 1)).toBeLessThanOrEqual(0.001)
  })

  // A lamp maker's data sheet, trade number 1003: 15 cp, 12 W, 12.8 V is 189 lm and 0.9375 A; lm = 4 pi x cp.
  test('lamp 1003 in lumens and amps', () => {
    const { testV, powerW, fluxLm } = only('1003')
    expect(Math.abs(powerW! / testV! / 0.9375 - 1)).toBeLessThan(0.005)
    expect(Math.abs(fluxLm! / 188.5 - 1)).toBeLessThan(0.005)
    expect(Math.abs(lumensFromCandlepower(15) / 188.5 - 1)).toBeLessThan(0.005)
  })

  // Wikipedia, Lamp rerating: 5 % over-voltage gives current x 1.027, power x 1.081, light x 1.18, life x 0.56 to 0.46.
  test('exponents at 5 % over-voltage', () => {
    expect(1.05 ** lampExponents.current.value).toBeCloseTo(1.027, 3)
    expect(1.05 ** lampExponents.power.value).toBeCloseTo(1.081, 3)
    expect(1.05 ** lampExponents.flux.value).toBeCloseTo(1.18, 2)
    expect(1.05 ** lampExponents.life.value).toBeCloseTo(0.56, 2)
    expect(1.05 ** lampExponents.life.toValue).toBeCloseTo(0.46, 2)
  })
})

describe('finding a lamp', () => {
  test('volts choose among three P21W', () => {
    expect(filaments('P21W').map((row) => row.nominalV)).toEqual([6, 12, 24])
    expect(only('p21w', { voltsV: 12 })).toMatchObject({ testV: 13.5, powerW: 26.5, powerIs: 'max', fluxLm: 460, cap: 'BA15s', status: 'from memory' })
  })

  test('two filaments of a stop and tail lamp', () => {
    expect(filaments('P21/5W', { voltsV: 24 }).map((row) => [row.filament, row.powerW])).toEqual([['stop', 28], ['tail', 10]])
    expect(filaments('380').map((row) => [row.filament, row.nominalW])).toEqual([['stop', 21], ['tail', 5]])
  })

  test('an American number gives volts times amps', () => {
    expect(only('1157', { filament: 'stop' }).powerW).toBeCloseTo(26.88, 9)
    expect(only('1157', { filament: 'stop' }).powerIs).toBe('design')
  })

  test('American lumens are 4 pi times candlepower', () => {
    for (const row of tradeNumberRows) expect(Math.abs(row.fluxLm - 4 * Math.PI * row.candlepower), row.lamp).toBeLessThan(0.05)
  })

  test('a sealed beam has watts or none known', () => {
    expect(filaments('5400').map((row) => row.nominalW)).toEqual([50, 40])
    expect(filaments('6012').map((row) => row.nominalW)).toEqual([null, null])
    expect(filaments('4001').map((row) => row.filament)).toEqual(['main'])
  })

  test('watts nobody stated are null, not guessed', () => {
    expect(only('382')).toMatchObject({ nominalW: 21, testV: null, powerW: null, fluxLm: null })
    expect(only('T2W', { voltsV: 12 })).toMatchObject({ nominalW: 2, powerW: null })
  })

  test('test watts are not below cap watts', () => {
    for (const row of lampNames.flatMap((name) => filaments(name))) {
      if (row.powerW !== null && row.nominalW !== null) expect(row.powerW, row.lamp).toBeGreaterThanOrEqual(row.nominalW)
    }
  })

  test('a lamp that is not there is refused', () => {
    expect(findLamp('P21X')).toMatchObject({ ok: false, nearest: ['P21W', 'C21W', 'P21/5W'] })
    expect(findLamp('W2.3W', { voltsV: 6 })).toMatchObject({ ok: false, nearest: ['W2.3W 12 V'] })
    expect(findLamp('P21W', { filament: 'tail' })).toMatchObject({ ok: false, nearest: ['single'] })
  })
})
