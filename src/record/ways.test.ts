import { expect, it } from 'vitest'
import { Ways } from './ways.ts'

it('finds a shortest way in either direction, by its names', () => {
  const ways = new Ways<string>()
  for (const [a, b, by] of [['a', 'b', 'ab'], ['b', 'c', 'bc'], ['c', 'd', 'cd'], ['a', 'd', 'ad'], ['x', 'y', 'xy']]) ways.join(a, b, by)
  expect(ways.find('c', (point) => point === 'a')).toEqual(['bc', 'ab'])
  expect(ways.find('a', (point) => point === 'd')).toEqual(['ad'])
  expect(ways.find('a', (point) => point === 'a')).toEqual([])
  expect(ways.find('a', (point) => point === 'y')).toBeNull()
})
