import { describe, expect, test } from 'vitest'
import { ampacityRules } from './ampacity-rules.ts'
import { findAmpacity, type Ampacity, type AmpacityQuestion } from './ampacity.ts'
import { cableRows } from './cable-rows.ts'

function ampacity(question: AmpacityQuestion): Ampacity {
  const found = findAmpacity(question)
  if (!found.ok) throw new Error(found.sentence)
  return found
}

describe('a rating by its rule', () => {
  test('British 1.0 mm2 carries 8.75 A alone', () => {
    expect(ampacity({ size: { mm2: 1 }, cable: 'british-pvc' })).toMatchObject({ amps: 8.75, rule: 'british-cable', source: 'british-cable-table', bundleFactor: 1 })
  })

  test('the lowest rule of an unknown cable', () => {
    expect(ampacity({ size: { mm2: 1 } })).toMatchObject({ amps: 8.75, rule: 'british-cable' })
    expect(ampacity({ size: { mm2: 10 } })).toMatchObject({ amps: 60, rule: 'vehicle-current-density' })
  })

  test('imperial strands have their own rating', () => {
    expect(ampacity({ size: { strands: '28/.012' } })).toMatchObject({ amps: 14, rule: 'british-1950s' })
    expect(ampacity({ size: { strands: '28/0.30' }, cable: 'british-pvc' })).toMatchObject({ amps: 17.5, rule: 'british-cable' })
  })

  test('each kind of cable by its own table', () => {
    expect(ampacity({ size: { mm2: 2 }, cable: 'AV' })).toMatchObject({ amps: 28, rule: 'jis-av' })
    expect(ampacity({ size: { awg: '14' }, cable: 'GPT' })).toMatchObject({ amps: 25, rule: 'cfr33-183-425-table-5', assumed: false })
    expect(ampacity({ size: { awg: '14' }, cable: 'GXL' }).amps).toBe(40)
    expect(ampacity({ size: { awg: '14' }, cable: 'aircraft' })).toMatchObject({ amps: 10, rule: 'ac43-13-table-11-9' })
  })

  test('a rule of thumb is asked by name', () => {
    expect(ampacity({ size: { mm2: 1.5 }, rule: 'current-density-rule' }).amps).toBe(7.5)
    expect(ampacity({ size: { mm2: 1.5 }, rule: 'old-vehicle-wire-choice' }).amps).toBe(8)
    expect(ampacity({ size: { mm2: 6 }, rule: 'old-vehicle-wire-choice' }).amps).toBe(40)
  })

  test('a size between rows is assumed', () => {
    const { amps, assumed, why } = ampacity({ size: { mm2: 1.25 }, cable: 'british-pvc' })
    expect(amps).toBeCloseTo((8.75 + 12.75) / 2, 9)
    expect(assumed).toBe(true)
    expect(why).toContain('between its rows')
  })

  test('a size no table reaches goes by thumb', () => {
    expect(ampacity({ size: { mm2: 0.5 }, cable: 'FLRY' })).toMatchObject({ amps: 2.5, rule: 'current-density-rule', assumed: true })
  })

  test('every kind of cable has a rating', () => {
    for (const { id } of cableRows) expect(ampacity({ size: { mm2: 1.5 }, cable: id }).amps, id).toBeGreaterThan(2)
  })
})

describe('where the wire lies', () => {
  // The square-root rule: 28/0.30 PVC, 17.5 A, in rubber of 60 C in place of 70 C: x sqrt((60 - 30) / (70 - 30)).
  test('rubber is derived from its limit', () => {
    const { amps, ratedA, ambientFactor, assumed } = ampacity({ size: { strands: '28/0.30' }, cable: 'rubber-cotton' })
    expect(ratedA).toBe(17.5)
    expect(ambientFactor).toBeCloseTo(Math.sqrt(30 / 40), 9)
    expect(amps).toBeCloseTo(15.16, 2)
    expect(assumed).toBe(true)
  })

  test('a hot place takes from the rating', () => {
    expect(ampacity({ size: { mm2: 1 }, cable: 'british-pvc', ambientC: 60 }).amps).toBeCloseTo(8.75 * 0.5, 9)
    expect(ampacity({ size: { awg: '14' }, cable: 'GPT', ambientC: 50 }).amps).toBeCloseTo(25 * Math.sqrt(30 / 50), 9)
  })

  test('cold raises no rating of unprinted ambient', () => {
    expect(ampacity({ size: { mm2: 1 }, cable: 'british-pvc', ambientC: 0 }).amps).toBe(8.75)
    expect(ampacity({ size: { awg: '14' }, cable: 'GPT', ambientC: 10 }).amps).toBeCloseTo(25 * Math.sqrt(70 / 50), 9)
  })

  test('a bundle factor is for single cables', () => {
    expect(ampacity({ size: { mm2: 1 }, loadedWires: 12, bundleRule: 'nec' }).amps).toBeCloseTo(8.75 * 0.5, 9)
    expect(ampacity({ size: { mm2: 1 }, loadedWires: 12 })).toMatchObject({ bundleFactor: 0.43 })
    expect(ampacity({ size: { awg: '14' }, cable: 'aircraft', loadedWires: 12 })).toMatchObject({ amps: 10, bundleFactor: 1 })
  })

  test('more wires and more heat never carry more', () => {
    for (const { id } of cableRows) {
      const amps = (loadedWires: number, ambientC: number) => ampacity({ size: { mm2: 2 }, cable: id, loadedWires, ambientC }).amps
      for (let wires = 1; wires < 50; wires++) expect(amps(wires + 1, 40), id).toBeLessThanOrEqual(amps(wires, 40))
      for (let ambientC = 0; ambientC < 55; ambientC += 5) expect(amps(3, ambientC + 5), id).toBeLessThanOrEqual(amps(3, ambientC))
    }
  })
})

describe('refusals', () => {
  test('an ambient above the limit carries nothing', () => {
    expect(findAmpacity({ size: { mm2: 1 }, cable: 'rubber-cotton', ambientC: 60 })).toMatchObject({ ok: false, received: '60 C', expected: expect.stringContaining('60 C') })
  })

  test('an unknown cable, size or rule', () => {
    expect(findAmpacity({ size: { mm2: 1 }, cable: 'ruber' })).toMatchObject({ ok: false, nearest: expect.arrayContaining(['rubber']) })
    expect(findAmpacity({ size: { awg: 'x' } }).ok).toBe(false)
    expect(findAmpacity({ size: { mm2: 1 }, rule: 'jis' as keyof typeof ampacityRules })).toMatchObject({ ok: false, nearest: expect.arrayContaining(['jis-av']) })
    expect(findAmpacity({ size: { mm2: 400 }, rule: 'jis-av' })).toMatchObject({ ok: false, expected: expect.stringContaining('JIS') })
  })
})
