import { describe, expect, test } from 'vitest'
import { WARDEN_OPTIONS, WARDEN_YEARS, wardenCircuit } from '../../test/builders/warden.ts'
import type { Wiring } from '../record/index.ts'
import { drawPaths } from './draw-paths.ts'
import { findOverlaps } from './find-overlaps.ts'
import type { Scene } from './scene.ts'

/** Every circuit of a year's tender with all its options, drawn alone on a desk. */
function drawn(year: typeof WARDEN_YEARS[number]) {
  const { network } = wardenCircuit(year, WARDEN_OPTIONS)
  const models = new Map(network.parts.map(({ id, model }) => [id, model]))
  const draw = (circuit: string | null) => drawPaths(network.wiring, models, { width: 1188, height: 640 }, circuit)
  return { wiring: network.wiring, scenes: draw(null).circuits.map((name) => ({ name, scene: draw(name) })) }
}

/** Points that the drawing joins to one another, over wires, splices and whatever a part's elements join. */
function reachFrom(wiring: Wiring, scene: Scene, start: (point: string) => boolean): Set<string> {
  const links = [
    ...scene.wires.map(({ ends }) => ends), ...scene.splices.map(({ id }) => wiring.matings.get(id)?.joins ?? [id]),
    ...scene.pieces.map(({ part, elements }) => [...part.terminals.values()].filter(({ is }) => elements.some(({ from, to }) => from === is || to === is)).map(({ id }) => `${part.id}:${id}`)),
  ].map((points) => (points as readonly (string | null)[]).filter((point) => point !== null))
  const reached = new Set(links.flat().filter(start))
  for (let before = -1; before < reached.size;) {
    before = reached.size
    for (const points of links) if (points.some((point) => reached.has(point))) for (const point of points) reached.add(point)
  }
  return reached
}

describe.each(WARDEN_YEARS)('circuits of the tender of %s drawn alone', (year) => {
  const { wiring, scenes } = drawn(year)
  const listed = Object.entries(wiring.layout.circuits ?? {})

  test('each that the record names is there, with every part that it lists, and few others', () => {
    for (const [name, entries] of listed) {
      const own = [...new Set(entries.map((entry) => entry.split('.')[0]))].filter((id) => wiring.parts.has(id))
      const scene = scenes.find((one) => one.name === name)?.scene
      if (own.length === 0) { expect(scene, name).toBeUndefined(); continue }
      const shown = new Set(scene?.pieces.map(({ part }) => part.id))
      expect(own.filter((id) => !shown.has(id)), name).toEqual([])
      expect([...shown].filter((id) => !own.includes(id)).length, `${name}: ${[...shown].filter((id) => !own.includes(id)).join()}`).toBeLessThanOrEqual(10)
    }
  })

  test('each part of the vehicle is in one of them', () => {
    const shown = new Set(scenes.flatMap(({ scene }) => scene.pieces.map(({ part }) => part.id)))
    expect([...wiring.parts.keys()].filter((id) => !shown.has(id))).toEqual([])
  })

  test('each lamp of a circuit has its way to earth and to the supply in the drawing', () => {
    for (const { name, scene } of scenes) {
      const earthed = reachFrom(wiring, scene, (point) => wiring.metals.has(point))
      const fed = reachFrom(wiring, scene, (point) => point === scene.rails.find((rail) => rail.point !== null)?.point)
      const lamps = scene.pieces.filter(({ part }) => part.kind === 'lamp')
      const cut = lamps.filter(({ part }) => [earthed, fed].some((side) => ![...part.terminals.keys()].some((id) => side.has(`${part.id}:${id}`))))
      expect(cut.map(({ part }) => part.id), name).toEqual([])
    }
  })

  test('no letter touches anything', () => {
    for (const { name, scene } of scenes) expect(findOverlaps(scene, null), name).toEqual([])
  })
})
