import { expect, test } from 'vitest'
import { mustResolve } from '../../test/builders/record.ts'
import { makeLampAndSwitch, makeRelayAndAlternator, makeSharedEarth } from '../../test/builders/small-records.ts'
import { makeTessarby } from '../../test/builders/tessarby.ts'
import { prepareCircuit, solveSetting, type Setting } from '../circuit/index.ts'
import { partKinds } from '../parts/index.ts'
import type { WiringRecord } from '../record/index.ts'
import { drawPaths } from './draw-paths.ts'
import { findOverlaps } from './find-overlaps.ts'

const rest: Setting = { controls: {}, engine: 'stopped', battery: 'full', phases: {} }

function draw(record: WiringRecord, sheet = { width: 900, height: 700 }) {
  const wiring = mustResolve(record, {}, partKinds)
  const circuit = prepareCircuit(wiring, partKinds)
  const models = new Map(circuit.network.parts.map(({ id, model }) => [id, model]))
  return { wiring, circuit, scene: drawPaths(wiring, models, sheet) }
}

const records = { makeLampAndSwitch, makeSharedEarth, makeRelayAndAlternator, makeTessarby }

test.each(Object.entries(records))('%s draws with no text on anything', (_, make) => {
  const { circuit, scene } = draw(make())
  expect(findOverlaps(scene, null)).toEqual([])
  for (const engine of ['stopped', 'idle'] as const) {
    expect(findOverlaps(scene, solveSetting(circuit, { ...rest, engine }).solved)).toEqual([])
  }
})

test.each([390, 600, 1600])('a sheet %i wide has no overlap either', (width) => {
  expect(findOverlaps(draw(makeTessarby(), { width, height: 500 }).scene, null)).toEqual([])
})

test.each(Object.entries(records))('%s shows every wire and every part', (_, make) => {
  const { wiring, scene } = draw(make())
  const drawn = new Set(scene.wires.map(({ id }) => id))
  expect([...wiring.wires.keys()].filter((id) => !drawn.has(id))).toEqual([])
  expect(new Set(scene.pieces.map(({ part }) => part.id)).size).toBe(wiring.parts.size)
})

test.each(Object.entries(records))('%s letters every wire', (_, make) => {
  const { wiring, scene } = draw(make())
  expect(scene.wires.filter(({ id, label }) => wiring.wires.has(id) && label === null).map(({ id }) => id)).toEqual([])
})

test('the order of a record changes no drawing', () => {
  const record = makeTessarby()
  const turned = { ...record, parts: turn(record.parts), wires: turn(record.wires ?? {}) }
  expect(JSON.stringify(draw(turned).scene)).toBe(JSON.stringify(draw(record).scene))
})

const turn = <T>(map: Readonly<Record<string, T>>) => Object.fromEntries(Object.entries(map).reverse())

test('supply stands above loads and loads above earth', () => {
  const { scene } = draw(makeLampAndSwitch())
  const top = (id: string) => scene.pieces.find(({ part }) => part.id === id)!.cores[0].top
  expect(scene.rails.map(({ marking }) => marking)).toEqual(['30 +', '31 −'])
  expect(top('switch')).toBeGreaterThan(scene.rails[0].y)
  expect(top('lamp')).toBeGreaterThan(top('switch'))
  expect(top('lamp')).toBeLessThan(scene.rails[1].y)
})

test('a wire runs from its first end to its second', () => {
  const { scene } = draw(makeLampAndSwitch())
  const [from, to] = [scene.wires.find(({ id }) => id === 'w2')!.points[0], scene.wires.find(({ id }) => id === 'w2')!.points.at(-1)!]
  expect(from[1]).toBeLessThan(to[1])
})

test('a relay is drawn detached with winding and contact in two paths', () => {
  const { scene } = draw(makeRelayAndAlternator())
  const pieces = scene.pieces.filter(({ part }) => part.id === 'relay')
  expect(pieces.map(({ form }) => form)).toEqual(['inline', 'inline'])
  expect(new Set(pieces.map(({ path }) => path)).size).toBe(2)
})

test('a part of an unknown form still draws as a box', () => {
  const { scene } = draw(makeRelayAndAlternator())
  expect(scene.pieces.find(({ part }) => part.id === 'alternator')?.form).toBe('box')
})

test('positive earth puts minus on the supply rail', () => {
  expect(draw(makeSharedEarth()).scene.rails.map(({ marking }) => marking)).toEqual(['30 −', '31 +'])
})

test('a wire without an end says so in the drawing', () => {
  expect(draw(makeSharedEarth()).scene.splices.filter(({ kind }) => kind === 'loose').map(({ text }) => text).sort()).toEqual(['loose end', 'meets nothing'])
})
