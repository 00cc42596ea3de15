import type { SolvedSetting } from '../circuit/index.ts'
import { LETTER, LINE, type Scene, type ScenePiece, type Shape, type Spot, type TextShape } from './scene.ts'
import { sceneShapes, type ShapeGroup } from './scene-shapes.ts'
import { textWidth } from './text-widths.ts'

/** Two things of a drawing that touch and must not. */
export interface Overlap { readonly what: 'text on text' | 'text on line' | 'wire on wire' | 'off the sheet'; readonly a: string; readonly b: string }

interface Area { readonly x0: number; readonly y0: number; readonly x1: number; readonly y1: number }
interface Lettering { readonly group: string; readonly text: string; readonly area: Area }
interface Stroke { readonly group: string; readonly area: Area }

/** Every text that touches another text or a line, every two wires that lie on one another; empty for a clean drawing. */
export function findOverlaps(scene: Scene, solved: SolvedSetting | null): Overlap[] {
  const { letterings, strokes } = readAreas(sceneShapes(scene, solved))
  return [...textsOnTexts(letterings), ...textsOnLines(letterings, strokes), ...wiresOnWires(scene), ...offTheSheet(scene, letterings)]
}

function readAreas(groups: readonly ShapeGroup[]): { letterings: Lettering[], strokes: Stroke[] } {
  return {
    letterings: groups.flatMap(({ id, shapes }) => shapes.filter((shape) => shape.kind === 'text' && !shape.inside)
      .map((shape): Lettering => ({ group: id, text: (shape as TextShape).text, area: textArea(shape as TextShape) }))),
    strokes: groups.flatMap(({ id, shapes }) => shapes.flatMap((shape) => areasOf(shape).map((area): Stroke => ({ group: id, area })))),
  }
}

/** What a scene leaves free, so that more lettering finds a place; what is lettered takes its room at once. */
export class FreeRoom {
  private readonly taken: Area[]

  constructor(private readonly scene: Scene) {
    const { letterings, strokes } = readAreas(sceneShapes(scene, null))
    this.taken = [...[...letterings, ...strokes].map(({ area }) => area), ...scene.pieces.flatMap(liveRooms)]
  }

  /** The first of several texts that touches nothing, with room to spare on all sides; `instead` is a text that it takes the place of. */
  letter(texts: readonly TextShape[], instead: TextShape | null = null): TextShape | undefined {
    const own = instead && textArea(instead)
    const others = own ? this.taken.filter((area) => !isSame(area, own)) : this.taken
    const found = texts.find((text) => {
      const { x0, y0, x1, y1 } = textArea(text)
      const [along, across] = [SPARE_ALONG, SPARE_ACROSS]
      const area = text.upright ? { x0: x0 - across, y0: y0 - along, x1: x1 + across, y1: y1 + along } : { x0: x0 - along, y0: y0 - across, x1: x1 + along, y1: y1 + across }
      return isOnSheet(this.scene, area) && others.every((other) => !meet(area, other))
    })
    if (found) this.taken.splice(0, this.taken.length, ...others, textArea(found))
    return found
  }
}

/** The lines beside a piece that are empty until something is solved, as wide as they can come to be. */
function liveRooms({ name: { at: [x, y], lines } }: ScenePiece): Area[] {
  return lines.flatMap(({ live }, i) => {
    const width = Math.max(0, ...(live?.room ?? []).map((text) => textWidth(text, LETTER)))
    return width === 0 ? [] : [{ x0: x, y0: y + i * LINE, x1: x + width, y1: y + (i + 1) * LINE }]
  })
}

/** Free room before and behind a text, where lines may come to be edged, and above and below it. */
const SPARE_ALONG = 6
const SPARE_ACROSS = 1

function isSame(a: Area, b: Area): boolean {
  return a.x0 === b.x0 && a.y0 === b.y0 && a.x1 === b.x1 && a.y1 === b.y1
}

/** The room of a text: capitals above the base line, tails below it. */
function textArea({ at: [x, y], text, size, weight, anchor, upright }: TextShape): Area {
  const width = textWidth(text, size, weight)
  const from = anchor === 'start' ? 0 : anchor === 'middle' ? -width / 2 : -width
  const [up, down] = [size * 0.74, size * 0.2]
  if (upright) return { x0: x - up, x1: x + down, y0: y - from - width, y1: y - from }
  return { x0: x + from, x1: x + from + width, y0: y - up, y1: y + down }
}

function textsOnTexts(letterings: readonly Lettering[]): Overlap[] {
  return letterings.flatMap((a, i) => letterings.slice(0, i).filter((b) => meet(a.area, b.area)).map((b): Overlap => ({ what: 'text on text', a: name(a), b: name(b) })))
}

function textsOnLines(letterings: readonly Lettering[], strokes: readonly Stroke[]): Overlap[] {
  return letterings.flatMap((a) => strokes.filter((b) => meet(a.area, b.area)).map((b): Overlap => ({ what: 'text on line', a: name(a), b: b.group })))
}

const name = ({ group, text }: Lettering) => `${group} "${text}"`

function meet(a: Area, b: Area): boolean {
  return a.x0 < b.x1 && b.x0 < a.x1 && a.y0 < b.y1 && b.y0 < a.y1
}

/** The strokes of a shape as rectangles; a slanting line in short steps. */
function areasOf(shape: Shape): Area[] {
  if (shape.kind === 'circle') {
    const r = shape.r * 0.85
    return [{ x0: shape.at[0] - r, x1: shape.at[0] + r, y0: shape.at[1] - r, y1: shape.at[1] + r }]
  }
  if (shape.kind === 'rect') {
    const { x, y, w, h, width } = shape
    return segments([[x, y], [x + w, y], [x + w, y + h], [x, y + h], [x, y]], width)
  }
  return shape.kind === 'line' ? segments(shape.points, shape.width) : []
}

const STEP = 4

function segments(points: readonly Spot[], width: number): Area[] {
  return points.slice(1).flatMap(([x1, y1], i) => {
    const [x0, y0] = points[i]
    const steps = x0 === x1 || y0 === y1 ? 1 : Math.ceil(Math.hypot(x1 - x0, y1 - y0) / STEP)
    return Array.from({ length: steps }, (_, k) => grown([x0 + (x1 - x0) * k / steps, y0 + (y1 - y0) * k / steps], [x0 + (x1 - x0) * (k + 1) / steps, y0 + (y1 - y0) * (k + 1) / steps], width / 2))
  })
}

function grown([x0, y0]: Spot, [x1, y1]: Spot, by: number): Area {
  const [flat, tall] = [Math.abs(y1 - y0) < 0.01, Math.abs(x1 - x0) < 0.01]
  const [gx, gy] = [tall || !flat ? by : 0, flat || !tall ? by : 0]
  return { x0: Math.min(x0, x1) - gx, x1: Math.max(x0, x1) + gx, y0: Math.min(y0, y1) - gy, y1: Math.max(y0, y1) + gy }
}

/** Wires may cross; they may not run along one another. */
function wiresOnWires(scene: Scene): Overlap[] {
  const runs = scene.wires.map((wire) => ({ id: wire.id, areas: segments(wire.points, Math.max(2, wire.width)) }))
  return runs.flatMap((a, i) => runs.slice(0, i).filter((b) => a.areas.some((one) => b.areas.some((other) => alongside(one, other))))
    .map((b): Overlap => ({ what: 'wire on wire', a: a.id, b: b.id })))
}

function alongside(a: Area, b: Area): boolean {
  if (!meet(a, b)) return false
  const w = Math.min(a.x1, b.x1) - Math.max(a.x0, b.x0)
  const h = Math.min(a.y1, b.y1) - Math.max(a.y0, b.y0)
  return Math.max(w, h) > 9
}

function isOnSheet({ width, height }: Scene, { x0, y0, x1, y1 }: Area): boolean {
  return x0 >= 0 && y0 >= 0 && x1 <= width && y1 <= height
}

function offTheSheet(scene: Scene, letterings: readonly Lettering[]): Overlap[] {
  return letterings.filter(({ area }) => !isOnSheet(scene, area)).map((a): Overlap => ({ what: 'off the sheet', a: name(a), b: '' }))
}
