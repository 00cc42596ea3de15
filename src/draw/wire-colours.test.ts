import { expect, test } from 'vitest'
import { drawnSection, wireColour } from './wire-colours.ts'
import type { WiringWire } from '../record/index.ts'

const wire = (more: Partial<WiringWire>): WiringWire => ({ id: 'w', ends: [{ at: null, state: 'loose' }, { at: null, state: 'loose' }], ...more })

test('letters come from the colour names', () => {
  expect(wireColour(wire({ colour: { base: 'grey', tracers: ['black'] } }))).toMatchObject({ letters: 'GY/BK', words: 'grey with black' })
  expect(wireColour(wire({ colour: { base: 'Light green', tracers: ['white', 'red'] } })).letters).toBe('LGN/WH/RD')
})

test('letters as read go before those of the standard', () => {
  expect(wireColour(wire({ colour: { base: 'black', tracers: ['white'], letters: 'sw/ws' } })).letters).toBe('sw/ws')
})

test('an unknown colour says so', () => {
  expect(wireColour(wire({}))).toMatchObject({ base: '', letters: '?', words: 'colour not known' })
  expect(wireColour(wire({ colour: 'bare' })).letters).toBe('bare')
})

test('the weight of a line follows the copper', () => {
  expect(drawnSection(wire({ sizeStrands: '28/0.30' }))).toBeCloseTo(1.98, 2)
  expect(drawnSection(wire({ sizeAwg: '16' }))).toBeCloseTo(1.32, 1)
})
