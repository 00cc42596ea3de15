import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { mustResolve } from '../../test/builders/record.ts'
import { makeLampAndSwitch, makeRelayAndAlternator, makeSharedEarth } from '../../test/builders/small-records.ts'
import { makeTessarby } from '../../test/builders/tessarby.ts'
import { prepareCircuit, solveSetting } from '../circuit/index.ts'
import { partKinds } from '../parts/index.ts'
import type { Vehicle, WiringRecord } from '../record/index.ts'
import { drawPaths } from './draw-paths.ts'
import { drawWhole } from './draw-whole.ts'
import { findOverlaps } from './find-overlaps.ts'
import { sceneShapes } from './scene-shapes.ts'

const desk = { width: 1188, height: 640 }
const demo = JSON.parse(readFileSync(join(import.meta.dirname, '../../examples/vehicles/tessarby-errand.json'), 'utf8')) as WiringRecord

function wholeOf(record: WiringRecord, vehicle: Vehicle = {}, sheet = desk) {
  const wiring = mustResolve(record, vehicle, partKinds)
  const circuit = prepareCircuit(wiring, partKinds)
  const models = new Map(circuit.network.parts.map(({ id, model }) => [id, model]))
  const { solved } = solveSetting(circuit, { controls: {}, engine: 'cruise', battery: 'full', phases: {} })
  return { wiring, solved, scene: drawWhole(wiring, models, sheet, null), read: drawPaths(wiring, models, sheet) }
}

const vehicles = {
  'lamp and switch': wholeOf(makeLampAndSwitch()), 'shared earth': wholeOf(makeSharedEarth()), 'relay and alternator': wholeOf(makeRelayAndAlternator()),
  'test van': wholeOf(makeTessarby()), 'demo of 1951': wholeOf(demo, { year: 1951 }), 'demo of 1958': wholeOf(demo, { year: 1958 }),
}

test.each(Object.entries(vehicles))('the whole of %s names every part and no text touches anything', (_, { wiring, scene, solved }) => {
  expect(findOverlaps(scene, solved)).toEqual([])
  const said = sceneShapes(scene, solved).flatMap(({ shapes }) => shapes.flatMap((shape) => shape.kind === 'text' ? [shape.text] : [])).join(' ')
  const missing = [...wiring.parts.values()].filter(({ title }) => title.split(' ').some((word) => !said.includes(word))).map(({ title }) => title)
  expect(missing).toEqual([])
})

test.each([1951, 1958])('the whole demo of %i is read at 12 px on a desk without scrolling', (year) => {
  const { width, height, letter } = vehicles[`demo of ${year as 1951 | 1958}`].scene
  expect(letter * Math.min(1, desk.width / width, desk.height / height)).toBeGreaterThanOrEqual(11.99)
})

test('the whole goes the same way round as the drawing that is read', () => {
  for (const { scene, read } of Object.values(vehicles)) expect(scene.mirrored).toBe(read.mirrored)
})
