// Scenario S4: dipped beams through aged wiring, cleaned, with a relay, and with a relay and good earths.
import { describe, expect, test } from 'vitest'
import { reversePolarity } from '../builders/reverse-polarity.ts'
import { openVehicle, readRecordFile } from '../records/open-vehicle.ts'

const asMade = readRecordFile(new URL('./s4-dim-headlamps.json', import.meta.url))
const dipped = { controls: { 'switch.pull': 'dipped' } }

describe.each([['negative', asMade, 1], ['positive', reversePolarity(asMade), -1]] as const)('%s earth', (_, record, live) => {
  const solveWith = (...options: readonly string[]) =>
    openVehicle(record, { options: Object.fromEntries(options.map((id) => [id, true])) }).solve(dipped).solved

  /** Within 0.1 V and 3 % of light. */
  function expectLamps(solved: ReturnType<typeof solveWith>, volts: number, lightPercent: number) {
    for (const side of ['left', 'right']) {
      expect(Math.abs(solved.lamps[side].volts - volts)).toBeLessThan(0.1)
      expect(Math.abs(100 * solved.lamps[side].light - lightPercent)).toBeLessThan(3)
    }
  }

  test('as found: 11.5 V, 7.7 A, 62 % light', () => {
    const solved = solveWith()
    expectLamps(solved, 11.5, 62)
    expect(Math.abs(live * solved.wires['w-shared-old'].amps! - 7.7)).toBeLessThan(0.1)
  })

  test('as found 1.73 V are lost before the split', () => {
    const { wires, voltages } = solveWith()
    expect(live * wires['w-shared-old'].dropV!).toBeCloseTo(1.73, 2)
    for (const side of ['left', 'right']) {
      expect(live * (wires[`w-${side}-old`].dropV! + voltages[`${side}:out`]!)).toBeCloseTo(0.57, 2)
      // 0.386 V, which the scenario gives as 0.39.
      expect(live * voltages[`${side}:out`]!).toBeCloseTo(0.39, 2)
    }
  })

  test('cleaned: 12.7 V, 88 % light', () => {
    expectLamps(solveWith('cleaned'), 12.7, 88)
  })

  test('relays with the old earths: 13.05 V, 96 % light', () => {
    expectLamps(solveWith('relays'), 13.05, 96)
  })

  test('relays with cleaned earths: 13.4 V, 106 % light', () => {
    expectLamps(solveWith('relays', 'earths'), 13.4, 106)
  })

  test('with relays the old wire carries only the coil', () => {
    const { wires, states } = solveWith('relays', 'earths')
    expect(states['relay.armature']).toBe('pulled')
    // 13.8 V over 80 Ω and the aged 0.224 Ω.
    expect(live * wires['w-coil'].amps!).toBeCloseTo(13.8 / 80.224, 3)
    expect(live * wires['w-relay-feed'].amps!).toBeGreaterThan(8)
  })
})
