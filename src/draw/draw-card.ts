import type { SolvedSetting } from '../circuit/index.ts'
import type { Wiring, WiringPart } from '../record/index.ts'
import { listTerminals, type CardRow, type CardTerminal } from './card-rows.ts'
import type { SceneWire, Shape, Spot } from './scene.ts'
import { text, wireStrokes } from './scene-shapes.ts'
import { line, ring } from './symbols/symbol.ts'
import { wrapText } from './text-widths.ts'
import { wireColour } from './wire-colours.ts'
import { lineWidth, wireLabel } from './wire-label.ts'

/** A connection card: one part with its terminals, each with what is joined to it, in letters to be read at arm's length. */
export interface Card { readonly width: number; readonly height: number; readonly shapes: readonly Shape[]; readonly label: string }

const MARKING = 26, WORDS = 20, GOES = 17
const PAD = 14
/** Between two rows. */
const GAP = 16
/** How much heavier a wire is on the card than in a drawing. */
const HEAVIER = 2.2

/** The card of a part at a width from 300, in px at which its smallest letters are 17 px high; null where the vehicle has no such part. */
export function drawCard(wiring: Wiring, id: string, solved: SolvedSetting | null, width: number): Card | null {
  const part = wiring.parts.get(id)
  if (!part) return null
  const columns = { body: width < 500 ? 84 : 120, stub: width < 500 ? 64 : 150, width }
  const head = drawHead(wiring, part, width)
  const drawn: Shape[] = [...head.shapes]
  let y = head.bottom
  const terminals = listTerminals(wiring, id)
  for (const terminal of terminals) {
    const made = drawTerminal(terminal, id, solved, columns, y)
    drawn.push(...made.shapes)
    y = made.bottom
  }
  const body: Shape = { kind: 'rect', x: 1, y: head.bottom, w: columns.body - 1, h: y - head.bottom, r: 4, width: 2, tone: 'ink', fill: 'sheet' }
  return { width, height: y + PAD, shapes: [body, ...drawn], label: `Connections of ${part.title}. ${terminals.map(sayTerminal).join(' ')}` }
}

/** For someone who does not see the card. */
function sayTerminal({ marking, rows }: CardTerminal): string {
  return `${marking}: ${rows.map((row) => [saidOf(row), ...row.goes].filter((word) => word !== '').join(', ')).join('; ')}.`
}

interface Columns { readonly body: number; readonly stub: number; readonly width: number }
interface Drawn { readonly shapes: readonly Shape[]; readonly bottom: number }

function drawHead({ places }: Wiring, { title, place, tag }: WiringPart, width: number): Drawn {
  const under = [tag, place === undefined ? undefined : places.get(place)?.title].filter((word) => word !== undefined && word !== title).join(' · ')
  const lines = wrapText(title, MARKING, width, 600)
  const shapes = lines.map((said, i) => text([0, 28 + i * 30], said, { size: MARKING, weight: 600 }))
  const y = 28 + (lines.length - 1) * 30
  if (under === '') return { shapes, bottom: y + 18 }
  return { shapes: [...shapes, text([0, y + 26], under, { size: GOES, tone: 'soft' })], bottom: y + 44 }
}

function drawTerminal({ id, marking, rows }: CardTerminal, part: string, solved: SolvedSetting | null, columns: Columns, top: number): Drawn {
  const shapes: Shape[] = []
  let y = top + GAP / 2
  const first = y + WORDS
  for (const row of rows) {
    const made = drawRow(row, `${part}:${id}`, solved, columns, y)
    shapes.push(...made.shapes)
    y = made.bottom
  }
  const size = Math.min(MARKING, (columns.body - 30) / Math.max(1, marking.length) * 1.7)
  const border = top > 0 ? [line([[1, top], [columns.body, top]], 1, 'rule')] : []
  return { shapes: [...border, ...shapes, text([columns.body - 18, first + 2], marking, { size, weight: 600, anchor: 'end' })], bottom: y + GAP / 2 }
}

function drawRow(row: CardRow, point: string, solved: SolvedSetting | null, { body, stub, width }: Columns, top: number): Drawn {
  const x = body + stub + 14, room = width - x
  const head = row.wire ? wrapText(saidOf(row), WORDS, room, 600) : []
  const goes = row.goes.flatMap((said, i) => wrapText(said, GOES, room - (i > 0 ? 12 : 0)).map((one, k) => ({ said: one, indent: i > 0 ? 12 : 0, key: k })))
  const shapes = [
    ...head.map((said, i) => text([x, top + WORDS + i * 24], said, { size: WORDS, weight: 600 })),
    ...goes.map(({ said, indent }, i) => text([x + indent, top + WORDS + head.length * 24 + i * 21 - (head.length > 0 ? 2 : 0)], said, { size: GOES, tone: row.on === 'nothing' ? 'soft' : 'ink' })),
  ]
  const y = top + WORDS - 7
  return { shapes: [...drawStub(row, point, solved, [[body, y], [body + stub, y]]), ring([body, y], 5), ...shapes], bottom: top + Math.max(34, head.length * 24 + goes.length * 21 + 4) }
}

const saidOf = ({ wire }: CardRow) => wire ? `${wireColour(wire).words} · ${wireLabel(wire)}` : ''

function drawStub({ wire, on }: CardRow, point: string, solved: SolvedSetting | null, points: readonly [Spot, Spot]): Shape[] {
  if (wire) {
    const stub: SceneWire = { id: wire.id, kind: 'wire', points, colour: wireColour(wire), width: lineWidth(wire) * HEAVIER, label: null, ends: [point, wire.ends.find(({ at }) => at !== point)?.at ?? null] }
    return wireStrokes(stub, solved)
  }
  if (on === 'nothing') return [{ kind: 'line', points: [points[0], [points[0][0] + 26, points[0][1]]], width: 2, tone: 'soft', dash: [4, 4] }]
  if (on === 'terminal') return [line(points, 3)]
  const [[x0, y], [x1]] = points
  const end = Math.min(x1, x0 + 60)
  return [line([[x0, y], [end, y]], 2.4), ...[[0, 12], [6, 8], [12, 4]].map(([along, half]) => line([[end + along, y - half], [end + along, y + half]], 2.4))]
}
