import { expect, test } from 'vitest'
import { fuseSymbol } from './fuse.ts'

const tones = (closed: boolean) => fuseSymbol.core(undefined)
  .draw({ x: 0, top: 0, bottom: 26, upper: 'in', element: undefined, live: { closed, fed: closed, lamp: null, broken: true } })
  .map(({ tone }) => tone)

test('in a box with a blown fuse the whole ones are drawn whole', () => {
  expect(tones(false)).toContain('bad')
  expect(tones(true)).not.toContain('bad')
})
