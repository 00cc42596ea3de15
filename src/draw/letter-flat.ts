import type { Wiring } from '../record/index.ts'
import { FreeRoom } from './find-overlaps.ts'
import { LETTER, type Scene, type SceneWire, type TextShape } from './scene.ts'
import { textWidth } from './text-widths.ts'
import { labelShape, wireLabel } from './wire-label.ts'

/**
 * Letters for the wires that no stretch of their channel had room for: along a level stretch, or level beside an upright
 * one, where nothing else is; and then the id before the letters of every wire where there is room for it.
 */
export function letterFlat(scene: Scene, wiring: Wiring): Scene {
  const room = new FreeRoom(scene)
  const lettered = scene.wires.map((wire) => {
    const found = wiring.wires.get(wire.id)
    return !found || wire.label ? wire : withLabel(wire, room.letter([...flatTexts(wire, wireLabel(found)), ...besideTexts(wire, wireLabel(found))]))
  })
  return { ...scene, wires: lettered.map((wire) => wire.label ? withLabel(wire, room.letter(idTexts(wire, wire.label), labelShape(wire.label))) : wire) }
}

function withLabel(wire: SceneWire, text: TextShape | undefined): SceneWire {
  return text ? { ...wire, label: { text: text.text, at: text.at, upright: text.upright ?? false } } : wire
}

const STEP = 12

/** The label above and below each level stretch, from its middle outward. */
function flatTexts({ points, width }: SceneWire, said: string): TextShape[] {
  return points.slice(1).flatMap(([x1, y1], i) => {
    const [x0, y0] = points[i]
    if (y0 !== y1) return []
    const steps = Math.floor(Math.abs(x1 - x0) / 2 / STEP)
    return [-width / 2 - 9, width / 2 + 16].flatMap((dy) => fromMiddle(steps).map((dx) => level(said, (x0 + x1) / 2 + dx, y0 + dy)))
  })
}

/** The label level on the right and on the left of each upright stretch, from its middle outward. */
function besideTexts({ points, width }: SceneWire, said: string): TextShape[] {
  return points.slice(1).flatMap(([x1, y1], i) => {
    const [x0, y0] = points[i]
    if (x0 !== x1) return []
    const steps = Math.floor(Math.abs(y1 - y0) / 2 / STEP)
    const aside = width / 2 + 8 + textWidth(said, LETTER) / 2
    return [aside, -aside].flatMap((dx) => fromMiddle(steps).map((dy) => level(said, x0 + dx, (y0 + y1) / 2 + dy + 4)))
  })
}

function level(text: string, x: number, y: number): TextShape {
  return labelShape({ text, at: [x, y], upright: false })
}

function fromMiddle(steps: number): number[] {
  return Array.from({ length: steps + 1 }, (_, k) => k === 0 ? [0] : [k * STEP, -k * STEP]).flat()
}

/** The label with the id before it, where the wire's own stretch is long enough, moved along it as little as it must. */
function idTexts({ id, points }: SceneWire, { text, at: [x, y], upright }: NonNullable<SceneWire['label']>): TextShape[] {
  const said = `${id} ${text}`
  const more = textWidth(said, LETTER) - textWidth(text, LETTER)
  if (!upright) return [more / 2, 0, -more / 2].map((dx) => level(said, x + dx, y))
  const half = textWidth(said, LETTER) / 2 + 2
  return points.slice(1).flatMap(([x1, y1], i): TextShape[] => {
    const [x0, y0] = points[i]
    const [top, bottom] = [Math.min(y0, y1) + half, Math.max(y0, y1) - half]
    if (x0 !== x1 || x0 < x || x0 > x + 24 || y < Math.min(y0, y1) || y > Math.max(y0, y1) || top > bottom) return []
    const middle = Math.min(bottom, Math.max(top, y))
    return [0, 8, -8, 16, -16, 28, -28].map((dy) => middle + dy).filter((one) => one >= top && one <= bottom).map((one) => labelShape({ text: said, at: [x, one], upright }))
  })
}
