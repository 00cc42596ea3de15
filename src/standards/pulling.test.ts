import { describe, expect, test } from 'vitest'
import { pullForceRules } from './fitting-rule-rows.ts'
import { printHeightsMm, wrapLabelMm } from './labels.ts'
import { fillPct, findFillLimit, mayJam, pullLimitN, pullThroughBend } from './pulling.ts'
import { sizeStarterCable } from './starter-cables.ts'

describe('check cases of the reference', () => {
  // A Belgian cable maker's page: 50 N/mm2 of copper, three wires of 1.5 and two of 2.5 mm2.
  test('4: force on wires tied to a cord', () => {
    expect(pullLimitN([1.5, 1.5, 1.5, 2.5, 2.5])).toBe(475)
  })

  // NEC chapter 9 Table 1, 40 % for three wires or more: 2.4 mm in a bore of 10 mm.
  test('5: six wires fit, seven do not', () => {
    const [six, seven] = [6, 7].map((wires) => fillPct(10, Array.from({ length: wires }, () => 2.4)))
    expect([six, seven]).toEqual([expect.closeTo(34.56, 2), expect.closeTo(40.32, 2)])
    expect([six, seven].map((pct) => pct <= findFillLimit(6).maxPct)).toEqual([true, false])
  })

  // The notes of that table: three like wires jam between 2.8 and 3.2.
  test('6: jam ratio in a bore of 8 mm', () => {
    expect([2.7, 2.4].map((outsideMm) => mayJam(8, outsideMm))).toEqual([true, false])
  })

  // A cable maker's leaflet: friction 0.3, 50 N into a right angle of 60 mm radius.
  test('7: one bend', () => {
    const { outN, sidewallNPerM } = pullThroughBend(50, 0.3, 90, 0.06)
    expect(Math.abs(outN - 80.1)).toBeLessThanOrEqual(0.05)
    expect(Math.abs(sidewallNPerM - 1335)).toBeLessThanOrEqual(2)
    expect(sidewallNPerM).toBeLessThan(pullForceRules.sidewallNPerM.value)
  })

  // NUREG-0700 and a chart after AS 1319: least 1:250, preferred 1:167, capitals 1:200, signs 1:300.
  test('8: print read at half a metre', () => {
    const heights = printHeightsMm(500)
    const at = (rule: RegExp) => heights.find((height) => rule.test(height.rule))?.heightMm
    expect([at(/least/), at(/preferred/), at(/capital letters, good/), at(/sign text/)]).toEqual([2, 3, 2.5, 1.67].map((mm) => expect.closeTo(mm, 2)))
  })

  // Arithmetic of the reference: turns x pi x diameter.
  test('9: a label round 3 mm', () => {
    expect(Math.abs(wrapLabelMm(3, 2.5) - 23.56)).toBeLessThanOrEqual(0.05)
    expect([2, 2.5, 3].map((turns) => wrapLabelMm(12, turns))).toEqual([75.4, 94.2, 113.1].map((mm) => expect.closeTo(mm, 1)))
  })

  // Arithmetic of the reference, A = 0.0175 I L / U: 250 A, 2 m, 0.5 V is 17.5 mm2, next size 20. Printed to a tenth.
  test.each([
    [6, 150, 1, 10.5, 16], [6, 250, 0.5, 8.8, 10], [6, 250, 4, 70, 70], [6, 400, 4, 112, 120], [12, 150, 4, 21, 25], [12, 250, 2, 17.5, 20],
    [12, 400, 2, 28, 35], [12, 400, 4, 56, 70],
  ])('10: starter lead, %s V, %s A, %s m', (systemV, currentA, lengthM, areaMm2, tradeMm2) => {
    const found = sizeStarterCable(systemV, currentA, lengthM)
    expect(found).toMatchObject({ ok: true, tradeMm2, assumed: true })
    expect(found.ok && Math.abs(found.areaMm2 - areaMm2)).toBeLessThan(0.0501)
  })
})

test('fill by number of wires', () => {
  expect([1, 2, 3, 9].map((wires) => findFillLimit(wires).maxPct)).toEqual([53, 31, 40, 40])
})

test('a wrong caller is told', () => {
  expect(() => pullThroughBend(50, 0.3, 90, 0)).toThrow(/more than 0 m/)
  expect(() => findFillLimit(0)).toThrow(RangeError)
  expect(sizeStarterCable(24, 200, 2)).toMatchObject({ ok: false, nearest: expect.arrayContaining(['12 V']) })
  expect(sizeStarterCable(6, 1000, 9).ok).toBe(false)
})
