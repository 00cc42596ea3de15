import { expect, test } from 'vitest'
import { mustResolve } from '../../test/builders/record.ts'
import { makeFuseBox, makeLampAndSwitch, makeRelayAndAlternator } from '../../test/builders/small-records.ts'
import { prepareCircuit, solveSetting } from '../circuit/index.ts'
import { partKinds } from '../parts/index.ts'
import type { WiringRecord } from '../record/index.ts'
import { drawPaths } from './draw-paths.ts'
import { isClosed, lampText, sayDial, wireLive } from './live.ts'
import { renderGroups, renderSvg } from './render-svg.ts'

function solve(record: WiringRecord, controls: Record<string, string>) {
  const wiring = mustResolve(record, {}, partKinds)
  const circuit = prepareCircuit(wiring, partKinds)
  const scene = drawPaths(wiring, new Map(circuit.network.parts.map(({ id, model }) => [id, model])))
  return { scene, solved: solveSetting(circuit, { controls, engine: 'stopped', battery: 'full', phases: {} }).solved }
}

test('a wire is dead, at volts or carrying current', () => {
  const state = (position: string) => {
    const { scene, solved } = solve(makeLampAndSwitch(), { 'switch.lever': position })
    return scene.wires.filter(({ id }) => id.startsWith('w')).map((wire) => wireLive(wire, solved).state)
  }
  expect(state('off')).toEqual(['volts', 'dead', 'dead', 'dead'])
  expect(state('on')).toEqual(['current', 'current', 'current', 'current'])
})

test('the edge widens with the root of the current', () => {
  const { scene, solved } = solve(makeLampAndSwitch(), { 'switch.lever': 'on' })
  const wire = scene.wires.find(({ id }) => id === 'w2')!
  const edge = (amps: number) => wireLive(wire, { ...solved, wires: { w2: { amps, dropV: 0, volts: [0, 0] } } }).edge
  expect(edge(9) - edge(4)).toBeCloseTo(edge(4) - edge(1), 9)
  expect(edge(4)).toBeGreaterThan(edge(1))
  expect(edge(300)).toBe(4.5)
})

test('a relay contact closes when its winding holds', () => {
  const closed = (position: string) => {
    const { scene, solved } = solve(makeRelayAndAlternator(), { 'push.lever': position })
    const piece = scene.pieces.find(({ part, elements }) => part.id === 'relay' && elements.some(({ does }) => does === 'contact'))!
    return isClosed(piece, piece.elements[0], solved)
  }
  expect([closed('off'), closed('on')]).toEqual([false, true])
})

test('a lamp says its class in words unless it is normal', () => {
  const say = (percent: number, name: 'off' | 'faint' | 'dim' | 'normal' | 'over') => lampText({ volts: 0, ratedV: 12, percent, light: 0, class: name }).text
  expect([say(0, 'off'), say(5, 'off'), say(22, 'faint'), say(58, 'dim'), say(97.4, 'normal'), say(115, 'over')])
    .toEqual(['off', '5 % off', '22 % faint', '58 % dim', '97 %', '115 % over'])
})

test('in a fuse box the one that has blown is named', () => {
  const { scene, solved } = solve(makeFuseBox(), {})
  const said = renderGroups(scene, solved).filter(({ id }) => id.startsWith('box')).map(({ svg }) => svg).join('')
  expect(said).toContain('>right blown<')
  expect(said).toContain('>left: 8 A<')
})

test('a needle says by name what it shows', () => {
  const { scene, solved } = solve(makeFuseBox(), {})
  expect(renderGroups(scene, solved).find(({ id }) => id === 'volts')?.svg).toMatch(/>1[12](\.\d)? V</)
  expect([sayDial({ shows: -0.01, unit: 'A' }), sayDial({ shows: -4.26, unit: 'A' }), sayDial({ shows: null, unit: 'A' })]).toEqual(['0 A', '−4.3 A', '? A'])
})

test('only what changes has another drawing', () => {
  const off = solve(makeLampAndSwitch(), {})
  const on = solve(makeLampAndSwitch(), { 'switch.lever': 'on' })
  const before = new Map(renderGroups(off.scene, off.solved).map(({ kind, id, svg }) => [`${kind} ${id}`, svg]))
  const changed = renderGroups(on.scene, on.solved).filter(({ kind, id, svg }) => before.get(`${kind} ${id}`) !== svg).map(({ id }) => id)
  expect(changed.sort()).toEqual(['battery', 'lamp', 'rail-30', 'rail-30', 'switch', 'w1', 'w2', 'w3', 'w4'])
})

test('a drawing that stands alone carries its own colours', () => {
  const { scene, solved } = solve(makeLampAndSwitch(), { 'switch.lever': 'on' })
  expect(renderSvg(scene, solved, 'day')).not.toContain('var(')
  expect(renderSvg(scene, solved, 'page')).toContain('var(--live)')
})

test('a title from the record cannot become markup', () => {
  const record = makeLampAndSwitch()
  const svg = solve({ ...record, parts: { ...record.parts, lamp: { ...record.parts.lamp, title: '<b>&"' } } }, {})
  expect(renderSvg(svg.scene, svg.solved, 'day')).toContain('&lt;b&gt;&amp;&quot;')
})
