// Scenario S5: the left rear lamp has lost its earth, and its filaments feed back through one another.
import { describe, expect, test } from 'vitest'
import { openVehicle, readRecordFile } from '../records/open-vehicle.ts'

const record = readRecordFile(new URL('./s5-lost-earth.json', import.meta.url))
const lostEarth = { faults: [{ kind: 'open', id: 'left-earth' }] } as const
const set = (controls: Readonly<Record<string, string>>) =>
  ({ controls: Object.fromEntries(Object.entries(controls).map(([axis, position]) => [`switches.${axis}`, position])) })

/** Per cent of rated volts: left tail, left stop, left rear turn, front left turn and tell-tale, right stop. */
const table: readonly (readonly [string, Readonly<Record<string, string>>, readonly [number, number, number, number, number]])[] = [
  ['lamps', { lights: 'on' }, [101, 2, 2, 2, 2]],
  ['brake', { brake: 'on' }, [53, 50, 30, 25, 105]],
  ['lamps and brake', { lights: 'on', brake: 'on' }, [28, 28, 42, 35, 105]],
  ['left turn, lit phase', { turn: 'left' }, [54, 28, 48, 105, 28]],
  ['lamps and left turn', { lights: 'on', turn: 'left' }, [27, 39, 27, 105, 39]],
]

for (const [polarity, year] of [['negative', 1968], ['positive', 1960]] as const) {
  describe(`${polarity} earth`, () => {
    const vehicle = openVehicle(record, { year })

    test.each(table)('%s: every lamp within one per cent', (_, controls, [tail, stop, rearTurn, frontTurn, rightStop]) => {
      const { lamps } = vehicle.solve(set(controls), lostEarth).solved
      const expected = {
        'left-tail': tail, 'left-stop': stop, 'left-turn': rearTurn, 'front-left-turn': frontTurn, 'tell-tale': frontTurn, 'right-stop': rightStop,
      }
      for (const [id, percent] of Object.entries(expected)) {
        expect(Math.abs(lamps[id].percent - percent), `${id}: ${lamps[id].percent} %, expected ${percent} %`).toBeLessThanOrEqual(1)
      }
    })

    test('the shell stands at 6.6 V with the brake on', () => {
      const shellV = (more = {}) => Math.abs(vehicle.solve(set({ brake: 'on' }), more).solved.voltages['left-shell']!)
      expect(Math.abs(shellV(lostEarth) - 6.6)).toBeLessThan(0.1)
      expect(shellV()).toBeLessThan(0.1)
    })

    test('live has the sign of the unearthed post', () => {
      const { voltages } = vehicle.solve(set({ brake: 'on' }), lostEarth).solved
      expect(Math.sign(voltages['left-shell']!)).toBe(year < 1966 ? -1 : 1)
      expect(voltages['switches:S']).toBeCloseTo(year < 1966 ? -12.6 : 12.6, 2)
    })

    test('with only the lamps on nothing is seen', () => {
      const classes = (more = {}) => Object.fromEntries(Object.entries(vehicle.solve(set({ lights: 'on' }), more).solved.lamps).map(([id, lamp]) => [id, lamp.class]))
      expect(classes(lostEarth)).toEqual(classes())
    })

    test('with its earth every lamp on has full volts', () => {
      const { lamps } = vehicle.solve(set({ lights: 'on', brake: 'on', turn: 'left' })).solved
      for (const { percent } of Object.values(lamps)) expect(percent).toBeCloseTo(105, 0)
    })
  })
}

test('half the watts of the tail lamp change the table', () => {
  const half = { kind: 'set', part: 'left-tail', param: ['powerW'], value: 2.5 } as const
  const { lamps } = openVehicle(record, { year: 1968 }).solve(set({ brake: 'on' }), { faults: [...lostEarth.faults, half] }).solved
  expect(Math.abs(lamps['left-tail'].percent - 53)).toBeGreaterThan(3)
})
