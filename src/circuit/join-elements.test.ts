import { expect, test } from 'vitest'
import { circuitOf } from '../../test/builders/circuits.ts'
import { part, wire } from '../../test/builders/record.ts'

const copper = (size: object) => {
  const { network } = circuitOf({ metals: ['body'], parts: [part('battery', 'battery', {})], wires: [wire('e', 'battery:-', 'body', { lengthMm: 1000, ...size })] })
  return network.assumed.filter(({ path }) => path.startsWith('wires.e') && !path.includes('joint'))
}

test.each([
  [{ sizeMm2: 1 }, 0.0185, 'ISO 6722, 1 mm2'], [{ sizeStrands: '28/0.30' }, undefined, 'British PVC cable, 28/0.30'],
])('the resistance of a wire of %j rests on the row of its table', (size, ohmPerM, row) => {
  expect(copper(size)).toMatchObject([{ path: 'wires.e.ohmPerM', ...ohmPerM === undefined ? {} : { value: ohmPerM }, why: expect.stringContaining(row) as string }])
})

test('a measured resistance rests on no table', () => {
  expect(copper({ sizeMm2: 1, ohm: 0.01 })).toEqual([])
})

test('a size that cannot be read is taken as 1 mm², and both that and its row are told', () => {
  expect(copper({ sizeStrands: 'thin' }).map(({ path, value }) => [path, value])).toEqual([['wires.e.sizeMm2', 1], ['wires.e.ohmPerM', 0.0185]])
})
