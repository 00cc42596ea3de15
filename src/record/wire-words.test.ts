import { expect, test } from 'vitest'
import { wireHue, wireSize } from './wire-words.ts'

test('a size is written as it was given', () => {
  const sizes = [{ sizeMm2: 1 }, { sizeMm2: 0.75 }, { sizeAwg: '16' }, { sizeStrands: '28/0.30' }, { copperDiameterMm: 1.2 }, { sizeMm2: 'unknown' as const }]
  expect(sizes.map(wireSize)).toEqual(['1.0', '0.75', '16 AWG', '28/0.30', 'dia. 1.2', ''])
})

test('a colour is its words with strokes between, else the letters as read', () => {
  const colours = [{ base: 'brown', tracers: ['blue'] }, { base: 'unknown', letters: 'br' }, 'bare', 'unknown', undefined] as const
  expect(colours.map((colour) => wireHue({ colour }))).toEqual(['brown/blue', 'br', 'bare', '', ''])
})
