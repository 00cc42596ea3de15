import { expect, test } from 'vitest'
import { routeChannel, type Net } from './route-channel.ts'

const net = (link: number, from: number, to: number): Net => ({ link, from, to, fromTop: true, toTop: false })

test('a straight wire needs no track', () => {
  expect(routeChannel([net(0, 100, 100)], [100]).tracks).toBe(0)
})

test('wires that go the same way nest without crossing', () => {
  const { byLink } = routeChannel([net(0, 0, 100), net(1, 50, 150)], [0, 50, 100, 150])
  expect(byLink.get(1)!.steps[0].track).toBeLessThan(byLink.get(0)!.steps[0].track)
})

test('wires far apart share a track', () => {
  expect(routeChannel([net(0, 0, 50), net(1, 200, 260)], [0, 50, 200, 260]).tracks).toBe(1)
})

test('two wires that change places are told of and step aside', () => {
  const { byLink, clashes } = routeChannel([net(0, 0, 100), net(1, 100, 0)], [0, 100])
  expect(clashes.length).toBe(2)
  expect([...byLink.values()].map(({ steps }) => steps.length).sort()).toEqual([1, 2])
})
