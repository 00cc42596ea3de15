import { expect, test } from 'vitest'
import { sayAssumed } from './say-assumed.ts'

const from = (path: string, value: unknown) => ({ path, value, why: 'as usual', source: 'the trade' })
const first = (path: string, value: unknown) => sayAssumed([from(path, value)])[0]

test('alike values are told once with every place, those taken most often first', () => {
  const lines = sayAssumed([from('parts.horn.params.ratedV', 12), from('wires.w1.ends.0.jointOhm', 0.002), from('wires.w1.ends.1.jointOhm', 0.002)])
  expect(lines.map(({ said, where }) => [said, where])).toEqual([
    ['Joint 2 mΩ: as usual (the trade)', ['w1.1', 'w1.2']], ['Rated 12 V: as usual (the trade)', ['horn']],
  ])
})

test.each([
  ['parts.battery.params.capacityAh', 50, 'Capacity 50 Ah'], ['parts.battery.params.chargePercent', 100, 'Charge 100 %'],
  ['parts.battery.params.counterVPerCell', 2.25, 'Counter 2.25 V a cell'], ['wires.w1.ohmPerM', 0.0185, 'Resistance 18.5 mΩ a metre'],
  ['fixings.bolt.ohm', 0, 'Resistance 0 Ω'], ['engine.idleRpm', 800, 'Idle 800 rpm'], ['parts.wiper.params.brakes', false, 'Brakes no'],
  ['limits.l1.never.switch-box.key', 'left out', 'Left out'], ['wires.w1.ends.1', 'loose', 'Loose'],
])('%s of %s reads %s', (path, value, said) => {
  expect(first(path, value).what).toBe(`${said}: as usual`)
})

test.each([
  ['parts.head.params.filaments.dip.powerW', 'head.filaments.dip'], ['connectors.rear.58.ohm', 'rear.58'], ['options.towbar', 'towbar'], ['engine.idleRpm', 'engine'],
  ['duties.tail.may.0', 'tail'], ['wires.w1.sizeMm2', 'w1'],
])('%s is at %s', (path, place) => {
  expect(first(path, 1).where).toEqual([place])
})
