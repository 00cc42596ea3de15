import type { SolvedSetting } from '../circuit/index.ts'
import { drawBox } from './draw-box.ts'
import { inkLive, type InkLive } from './live-ink.ts'
import { coreLive, liveText, PALE, wireLive } from './live.ts'
import { LETTER, LINE, type NameLine, type PathGroup, type Rail, type Scene, type SceneMark, type ScenePiece, type SceneSplice, type SceneWire, type Shape, type Spot, type TextShape, type Tone } from './scene.ts'
import { AFTER_TITLE } from './name-lines.ts'
import { line, ring, STROKE } from './symbols/symbol.ts'
import { symbolOf } from './symbols/table.ts'
import { textWidth } from './text-widths.ts'
import { labelShape } from './wire-label.ts'

/** Shapes that belong to one thing of the wiring; `reach` is where a finger finds it. */
export interface ShapeGroup {
  readonly kind: 'rail' | 'wire' | 'part' | 'splice' | 'earth' | 'path'
  readonly id: string
  readonly label: string
  readonly shapes: readonly Shape[]
  readonly reach: readonly Spot[] | null
}

/** The scene in one solved setting, or at rest, from the back to the front. */
export function sceneShapes(scene: Scene, solved: SolvedSetting | null): ShapeGroup[] {
  const ink = inkLive(scene, solved)
  return [
    ...scene.wires.map((wire) => wireGroup(wire, solved, ink)),
    ...scene.rails.map((rail) => railGroup(rail, ink.rail(rail), scene.letter)),
    ...scene.marks.map(earthGroup),
    ...scene.splices.map((splice) => spliceGroup(splice, scene.letter)),
    ...scene.pieces.map((piece) => pieceGroup(piece, solved, ink, scene.letter)),
    ...scene.paths.map(({ number, x, y }): ShapeGroup => ({
      kind: 'path', id: `path-${number}`, label: '', reach: null, shapes: [text([x, y], String(number), { anchor: 'middle', weight: 600, size: scene.letter })],
    })),
    ...scene.groups.map(bracketGroup),
    footGroup(scene.foot, scene.letter),
  ]
}

export function text(at: Spot, said: string, more: Partial<TextShape> = {}): TextShape {
  return { kind: 'text', at, text: said, size: LETTER, weight: 400, anchor: 'start', tone: 'ink', ...more }
}

// --- wires ---

function wireGroup(wire: SceneWire, solved: SolvedSetting | null, ink: InkLive): ShapeGroup {
  if (wire.kind !== 'wire') return { kind: 'wire', id: wire.id, label: '', reach: null, shapes: inkLine(wire.points, ink.bare(wire), wire.kind === 'rail' ? RAIL : STROKE) }
  const letters = wire.label ? [labelShape(wire.label, wireLive(wire, solved).state === 'dead' ? 'soft' : 'ink')] : []
  return { kind: 'wire', id: wire.id, label: `wire ${wire.id}, ${wire.colour.words}`, reach: wire.points, shapes: [...wireStrokes(wire, solved), ...letters] }
}

/** A wire in its own colours: heavy with an amber edge where it is live, thin and pale where it is not. */
export function wireStrokes(wire: SceneWire, solved: SolvedSetting | null): Shape[] {
  const live = wireLive(wire, solved)
  return live.state === 'dead' && solved ? deadStrokes(wire) : fullStrokes(wire, live.edge)
}

/** A line of ink, and the amber edge under it where it is live. */
function inkLine(points: readonly Spot[], edge: number, width: number): Shape[] {
  const wide = edge > 0 ? width + 1 : width
  return [...edge > 0 ? [line(points, wide + 1 + 2 * edge, 'live')] : [], line(points, wide)]
}

/** Width of a rail, and of the battery's hold on it. */
const RAIL = 2.2

function deadStrokes({ points, width, colour }: SceneWire): Shape[] {
  return strokes(points, Math.max(2, width * 0.55), colour, PALE)
}

function fullStrokes({ points, width, colour }: SceneWire, edge: number): Shape[] {
  const under: Shape[] = edge > 0 ? [{ kind: 'line', points, width: width + 1.6 + 2 * edge, tone: 'live' }] : []
  return [...under, ...strokes(points, width, colour, 1)]
}

/** A hairline of ink on either side, so that white shows on paper and yellow on amber. */
function strokes(points: readonly Spot[], width: number, { base, tracers }: SceneWire['colour'], strength: number): Shape[] {
  const dash = 9
  // Nobody knows the colour: an empty line between broken edges.
  if (base === '') return [{ kind: 'line', points, width: width + 2, tone: 'casing', strength, dash: [6, 3] }, { kind: 'line', points, width, tone: 'sheet' }]
  return [
    { kind: 'line', points, width: width + 1.2, tone: 'casing', strength },
    { kind: 'line', points, width, tone: { css: base }, strength },
    ...tracers.map((css, i): Shape => ({
      kind: 'line', points, width: Math.max(1.1, width * 0.42), tone: { css }, strength,
      dash: [dash, 5 + (tracers.length - 1) * (dash + 5)], dashFrom: -i * (dash + 5),
    })),
  ]
}

// --- rails, earths, splices, brackets ---

function railGroup({ marking, x0, x1, y }: Rail, edge: number, size: number): ShapeGroup {
  return {
    kind: 'rail', id: `rail-${marking.slice(0, 2)}`, label: '', reach: null,
    shapes: [...inkLine([[x0, y], [x1, y]], edge, RAIL), text([x0 - 6, y + 4.5], marking, { anchor: 'end', weight: 600, size })],
  }
}

function earthGroup({ id, at: [x, y], lines }: SceneMark): ShapeGroup {
  const bars = [[9, 4], [6, 7.5], [2.5, 11]].map(([half, down]) => line([[x - half, y + down], [x + half, y + down]]))
  const name = lines.map((said, i) => text([x, y + 25 + i * LINE], said, { anchor: 'middle', tone: 'soft' }))
  return { kind: 'earth', id, label: '', reach: null, shapes: [line([[x, y], [x, y + 4]]), ...bars, ...name] }
}

function spliceGroup(splice: SceneSplice, size: number): ShapeGroup {
  const bars = splice.bars.map((bar) => line(bar, 2.6))
  const label = splice.kind === 'splice' ? `splice ${splice.id}` : splice.kind === 'mating' ? `connector ${splice.id}` : splice.text
  return { kind: 'splice', id: splice.id, label, reach: [splice.at], shapes: [...bars, ...spliceMark(splice, size)] }
}

function spliceMark({ kind, at, text: said }: SceneSplice, size: number): Shape[] {
  const [x, y] = at
  if (kind === 'splice') return [{ kind: 'circle', at, r: 4, width: 1, tone: 'ink', fill: 'ink' }]
  if (kind === 'loose') return [ring(at, 4), ...said === '' ? [] : [text([x + 8, y + 4.5], said, { tone: 'doubtful', size })]]
  return [
    line([[x - 6, y - 3], [x, y + 2], [x + 6, y - 3]], 2), line([[x - 6, y + 2], [x, y + 7], [x + 6, y + 2]], 2),
  ]
}

function bracketGroup({ x0, x1, y, lines }: PathGroup): ShapeGroup {
  return {
    kind: 'path', id: `bracket-${Math.round(x0)}`, label: '', reach: null,
    shapes: lines.length === 0 ? [] : [
      line([[x0, y], [x0, y + 5], [x1, y + 5], [x1, y]], 1, 'soft'),
      ...lines.map((said, i) => text([(x0 + x1) / 2, y + 19 + i * LINE], said, { anchor: 'middle', tone: 'soft' })),
    ],
  }
}

function footGroup({ at: [x, y], lines }: Scene['foot'], size: number): ShapeGroup {
  return { kind: 'path', id: 'foot', label: '', reach: null, shapes: lines.map((said, i) => text([x, y + i * LINE * size / LETTER], said, { tone: 'soft', size })) }
}

// --- parts ---

function pieceGroup(piece: ScenePiece, solved: SolvedSetting | null, ink: InkLive, size: number): ShapeGroup {
  const symbol = symbolOf(piece.symbol)
  const cores = piece.cores.flatMap((core) => symbol.core(core.element).draw({ ...core, live: coreLive(piece, core.element, solved) }))
  return {
    kind: 'part', id: piece.id, label: piece.part.title, reach: reachOf(piece),
    // Where names are lettered larger, the drawing is read smaller: a letter inside a symbol could not be read.
    shapes: [...piece.leads.flatMap((lead) => inkLine(lead.points, ink.lead(piece, lead), STROKE)), ...[...cores, ...drawBox(piece, solved)].filter((shape) => shape.kind !== 'text' || size <= LETTER), ...markings(piece), ...nameShapes(piece, solved, size)],
  }
}

function reachOf({ box, cores }: ScenePiece): Spot[] {
  if (box) return [[box.x, box.y], [box.x + box.w, box.y], [box.x + box.w, box.y + box.h], [box.x, box.y + box.h]]
  const [x0, x1] = [Math.min(...cores.map(({ x }) => x)) - 18, Math.max(...cores.map(({ x }) => x)) + 18]
  const [y0, y1] = [cores[0].top - 4, cores[0].bottom + 4]
  return [[x0, y0], [x1, y0], [x1, y1], [x0, y1]]
}

function markings({ pins, form }: ScenePiece): Shape[] {
  return pins.filter(({ showMarking, marking }) => showMarking && marking !== '').map(({ at: [x, y], side, marking }) => form === 'box'
    ? text([x + 6, side === 'top' ? y + 15 : y - 7], marking)
    : text([x - 8, side === 'top' ? y - 5 : y + 14], marking, { anchor: 'end', tone: 'soft' }))
}

function nameShapes(piece: ScenePiece, solved: SolvedSetting | null, size: number): Shape[] {
  const { at: [x, y], lines, upright, isLine } = piece.name
  const [step, down] = [LINE * size / LETTER, size * 0.9]
  return lines.flatMap((one, i): TextShape[] => {
    const at: Spot = upright ? [x + i * step + down, y] : [x, y + i * step + down]
    if (isLine) return followed(piece, one, at, upright, size, solved)
    const { said, tone, weight } = lineText(piece, one, solved)
    return said === '' ? [] : [text(at, said, { tone, weight, size })]
  })
}

/** A title, and what is live behind it in the same line. */
function followed(piece: ScenePiece, one: NameLine, [x, y]: Spot, upright: boolean, size: number, solved: SolvedSetting | null): TextShape[] {
  const title = one.text === '' ? [] : [text([x, y], one.text, { weight: 600, upright, size })]
  const live = one.live ? liveText(piece, one.live, solved) : null
  if (!live || live.text === '') return title
  const after = one.text === '' ? 0 : textWidth(one.text, size, 600) + AFTER_TITLE * size / LETTER
  return [...title, text(upright ? [x, y - after] : [x + after, y], live.text, { tone: live.tone, upright, size })]
}

function lineText(piece: ScenePiece, one: NameLine, solved: SolvedSetting | null): { said: string, tone: Tone, weight: 400 | 600 } {
  if (!one.live) return { said: one.text, tone: one.soft ? 'soft' : 'ink', weight: one.soft ? 400 : 600 }
  const { text: said, tone } = liveText(piece, one.live, solved)
  return { said, tone, weight: 400 }
}
