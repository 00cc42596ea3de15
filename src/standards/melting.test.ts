import { describe, expect, test } from 'vitest'
import { copperFuseWireRows, preeceRows, shortTimeRows } from './melting-rows.ts'
import { onderdonkAmps, preeceAmps, shortTimeK } from './melting.ts'

describe('published examples', () => {
  // A page of fuse-wire tables, copper in air, I = 10244 d^1.5 with d in inches: within 1 % from 10 A up; thinner wires are
  // printed to two figures.
  test('copper fuse wire as printed', () => {
    for (const { currentA, diameterIn } of copperFuseWireRows) {
      const melting = preeceAmps('copper', diameterIn * 25.4)
      expect(melting.ok && Math.abs(melting.amps / currentA - 1), String(currentA)).toBeLessThan(currentA < 10 ? 0.02 : 0.01)
    }
  })

  test('metric and inch constants agree', () => {
    for (const { metal, ampsPerIn15, ampsPerMm15 } of preeceRows) expect(Math.abs(ampsPerIn15 / 25.4 ** 1.5 / ampsPerMm15 - 1), metal).toBeLessThan(0.001)
  })

  // IEC 60364-5-54 and 60364-4-43 Table 43A: k = 115 for PVC, 143 for cross-linked.
  test('short-time constant of copper', () => {
    for (const { startC, endC, k } of shortTimeRows) expect(Math.abs(shortTimeK(startC, endC) - k)).toBeLessThanOrEqual(0.5)
  })

  // Worked from the formula in the reference: 2581 circular mils, 25 C, 5 s: 168.9 A (the thread prints 178 A with a slip of
  // sign); 10381 circular mils, 1 s: 1519 A.
  test('Onderdonk with the sign put right', () => {
    expect(onderdonkAmps(2581, 25, 5)).toBeCloseTo(168.9, 1)
    expect(onderdonkAmps(10381, 25, 1)).toBeCloseTo(1519, 0)
  })
})

test('an unknown metal is refused', () => {
  expect(preeceAmps('coper', 1)).toMatchObject({ ok: false, nearest: expect.arrayContaining(['copper']) })
})
