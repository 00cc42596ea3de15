import type { Wiring } from '../record/index.ts'
import { findFree } from './find-overlaps.ts'
import { LETTER, type Scene, type SceneWire, type TextShape } from './scene.ts'
import { textWidth } from './text-widths.ts'
import { wireLabel } from './wire-label.ts'

/** Letters for the wires that no stretch of their channel had room for: along a level stretch, or level beside an upright one, where nothing else is. */
export function letterFlat(scene: Scene, wiring: Wiring): Scene {
  return scene.wires.reduce((lettered, wire) => {
    const found = wiring.wires.get(wire.id)
    if (!found || wire.label) return lettered
    const label = findFree(lettered, [...flatTexts(wire, wireLabel(found)), ...besideTexts(wire, wireLabel(found))])
    if (!label) return lettered
    const { text, at } = label
    return { ...lettered, wires: lettered.wires.map((one) => one === wire ? { ...one, label: { text, at, upright: false } } : one) }
  }, scene)
}

const STEP = 12

/** The label above and below each level stretch, from its middle outward. */
function flatTexts({ points, width }: SceneWire, said: string): TextShape[] {
  return points.slice(1).flatMap(([x1, y1], i) => {
    const [x0, y0] = points[i]
    if (y0 !== y1) return []
    const steps = Math.floor(Math.abs(x1 - x0) / 2 / STEP)
    const shifts = Array.from({ length: steps }, (_, k) => [k * STEP, -k * STEP]).flat()
    return [-width / 2 - 9, width / 2 + 16].flatMap((dy) => shifts.map((dx): TextShape => ({
      kind: 'text', at: [(x0 + x1) / 2 + dx, y0 + dy], text: said, size: LETTER, weight: 400, anchor: 'middle', tone: 'ink',
    })))
  })
}

/** The label level on the right and on the left of each upright stretch, from its middle outward. */
function besideTexts({ points, width }: SceneWire, said: string): TextShape[] {
  return points.slice(1).flatMap(([x1, y1], i) => {
    const [x0, y0] = points[i]
    if (x0 !== x1) return []
    const steps = Math.floor(Math.abs(y1 - y0) / 2 / STEP)
    const shifts = Array.from({ length: steps + 1 }, (_, k) => [k * STEP, -k * STEP]).flat()
    const aside = width / 2 + 6 + textWidth(said, LETTER) / 2
    return [aside, -aside].flatMap((dx) => shifts.map((dy): TextShape => ({
      kind: 'text', at: [x0 + dx, (y0 + y1) / 2 + dy + 4], text: said, size: LETTER, weight: 400, anchor: 'middle', tone: 'ink',
    })))
  })
}
