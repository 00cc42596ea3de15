import { describe, expect, test } from 'vitest'
import { wardenCircuit } from '../../test/builders/warden.ts'
import { solveSetting } from './solve-setting.ts'
import type { Setting } from './solved.ts'

const circuit = wardenCircuit(1966)
const stray = (controls: Setting['controls'], engine: Setting['engine'] = 'stopped') => {
  const { solved } = solveSetting(circuit, { controls, engine, battery: 'full', phases: {} }, { skipStanding: true })
  return { ...solved, stray: new Set(solved.stray) }
}

describe('what only the drop of the earth side reaches', () => {
  test('with the dipped beam on, the main-beam feeds carry current and are dead all the same', () => {
    const { stray: points, wires, voltages } = stray({ 'light-switch.lights': 'head' })
    for (const point of ['head-left:56a', 'head-right:56a', 'fuse-box:5', 'main-tell:56a']) expect([point, points.has(point)]).toEqual([point, true])
    const feed = [...circuit.network.wiring.wires.values()].find(({ ends }) => ends[1].at === 'head-left:56a')!.id
    expect(Math.abs(wires[feed].amps!)).toBeGreaterThan(0.001)
    expect(Math.abs(voltages['head-left:56a']!)).toBeLessThan(0.3)
    for (const point of ['head-left:56b', 'head-left:31', 'cab', 'fuse-box:30']) expect([point, points.has(point)]).toEqual([point, false])
  })

  test('turned over to main beam it is the other way round', () => {
    const { stray: points } = stray({ 'light-switch.lights': 'head', 'dip-switch.beam': 'main' })
    expect([points.has('head-left:56a'), points.has('head-left:56b')]).toEqual([false, true])
  })

  test('what is fed through a lamp that glows is no stray, nor is a lost earth', () => {
    // The charging lamp feeds the rotor: 0.6 V at D+ and 0.18 A.
    expect(stray({ 'key.key': 'on' }).stray.has('alternator:D+')).toBe(false)
    expect(stray({ 'key.key': 'on', 'stop-switch.pedal': 'pressed' }).stray.has('rear-left:54')).toBe(false)
  })

  test('at rest nothing carries, and what hangs on no source is stray or floats', () => {
    const { stray: points, voltages } = stray({})
    expect(points.has('battery:+')).toBe(false)
    expect([...points].every((point) => Math.abs(voltages[point] ?? 0) < 1)).toBe(true)
  })
})
