import type { SolvedSetting } from '../circuit/index.ts'
import { coreLive, isClosed } from './live.ts'
import { polesOf } from './measure-items.ts'
import type { ScenePiece, ScenePin, Shape, Spot } from './scene.ts'
import { letter, line, ring, STROKE } from './symbols/symbol.ts'
import { symbolOf } from './symbols/table.ts'

/** The box of a part of many ends, with its contacts as they stand, or its letter; nothing for any other form. */
export function drawBox(piece: ScenePiece, solved: SolvedSetting | null): Shape[] {
  const { box, pins } = piece
  if (!box) return []
  const symbol = symbolOf(piece.symbol)
  const poles = symbol.contacts ? polesOf(piece.elements) : []
  return [
    { kind: 'rect', ...box, r: 3, width: STROKE, tone: 'ink', fill: 'sheet' },
    ...poles.flatMap((pole, index) => drawPole(piece, pole, box.y + box.h / 2 + 3 - 6 * poles.length + index * 12, solved)),
    ...poles.length === 0 && symbol.letter ? drawLetter(piece, symbol.letter) : [],
    ...poles.length === 0 && symbol.letter === undefined ? drawLamps(piece, solved) : [],
    ...sharedPins(pins),
    ...pins.map(({ at }) => ring(at, PIN)),
  ]
}

/** Radius of a pin. */
const PIN = 3

function slotOf(spots: readonly Spot[]): Shape {
  const xs = spots.map(([x]) => x)
  const x = Math.min(...xs) - PIN
  return { kind: 'rect', x, y: spots[0][1] - PIN, w: Math.max(...xs) + PIN - x, h: 2 * PIN, r: PIN, width: 1, tone: 'ink', fill: 'sheet' }
}

/** The lamps of a holder that other wires run on from, side by side. */
function drawLamps(piece: ScenePiece, solved: SolvedSetting | null): Shape[] {
  const { box, model, elements } = piece
  const lit = elements.filter(({ id }) => model?.lamps?.some((lamp) => lamp.element === id))
  const core = symbolOf(piece.symbol).core(lit[0])
  if (!box) return []
  return lit.flatMap((element, i) => {
    const x = box.x + box.w * (i + 1) / (lit.length + 1)
    const top = box.y + box.h / 2 - core.height / 2
    return core.draw({ x, top, bottom: top + core.height, upper: element.from, element, live: coreLive(piece, element, solved) })
  })
}

function drawLetter({ box }: ScenePiece, said: string): Shape[] {
  if (!box) return []
  const at = [box.x + box.w / 2, box.y + box.h / 2] as const
  if (said.length > 1) return [line([[at[0] - 9, at[1] + 5], [at[0] - 4, at[1] + 5], [at[0] - 4, at[1] - 5], [at[0] + 2, at[1] - 5], [at[0] + 2, at[1] + 5], [at[0] + 9, at[1] + 5]])]
  return [ring(at, 11), letter(at, said)]
}

/** Several wires on one end: its pin is drawn as one long slot that holds them all. */
function sharedPins(pins: readonly ScenePin[]): Shape[] {
  const ends = new Map<string, ScenePin[]>()
  for (const pin of pins) ends.set(`${pin.terminal} ${pin.side}`, [...ends.get(`${pin.terminal} ${pin.side}`) ?? [], pin])
  return [...ends.values()].filter((same) => same.length > 1).map((same) => slotOf(same.map(({ at }) => at)))
}

/**
 * The contacts of one pole: a bar from the common end, and a blade to each other end, closed when the two are joined.
 * Where no end is common to all, ends that are joined now share a bar.
 */
function drawPole(piece: ScenePiece, pole: ReadonlySet<string>, y: number, solved: SolvedSetting | null): Shape[] {
  const pins = distinctPins(piece.pins.filter(({ is }) => pole.has(is)))
  const joined = joinedEnds(piece, pole, solved)
  const hub = commonEnd(piece, pole)
  if (hub === null) return [...joined].flatMap((set) => barOf(pins.filter(({ is }) => set.has(is)), y)).concat(pins.filter(({ is }) => joined.every((set) => !set.has(is))).flatMap((pin) => blade(pin, y, false)))
  const common = pins.filter(({ is }) => is === hub)
  const others = pins.filter(({ is }) => is !== hub)
  const xs = [...common, ...others].map(({ at }) => at[0])
  const made = joined.find((set) => set.has(hub)) ?? new Set<string>()
  return [
    line([[Math.min(...xs), y], [Math.max(...xs), y]]),
    ...common.map((pin) => leg(pin, y)),
    ...others.flatMap((pin) => blade(pin, y, made.has(pin.is))),
    ...joined.filter((set) => !set.has(hub)).flatMap((set) => barOf(pins.filter(({ is }) => set.has(is)), y + 6)),
  ]
}

/** One pin for each end and side: the one that carries the marking. */
function distinctPins(pins: readonly ScenePin[]): ScenePin[] {
  return [...new Map(pins.map((pin) => [`${pin.terminal} ${pin.side}`, pin])).values()]
}

/** The end that every contact of the pole has in common, or null. */
function commonEnd({ elements }: ScenePiece, pole: ReadonlySet<string>): string | null {
  const own = elements.filter(({ from, does }) => does === 'contact' && pole.has(from))
  return [...pole].find((is) => own.every(({ from, to }) => from === is || to === is)) ?? null
}

function joinedEnds(piece: ScenePiece, pole: ReadonlySet<string>, solved: SolvedSetting | null): Set<string>[] {
  const closed = piece.elements.filter((element) => element.does === 'contact' && pole.has(element.from) && isClosed(piece, element, solved))
  return polesOf(closed)
}

const edgeOf = ({ at, side }: ScenePin) => at[1] + (side === 'top' ? 3 : -3)

function leg(pin: ScenePin, y: number): Shape {
  return line([[pin.at[0], edgeOf(pin)], [pin.at[0], y]])
}

function barOf(pins: readonly ScenePin[], y: number): Shape[] {
  const xs = pins.map(({ at }) => at[0])
  return [line([[Math.min(...xs), y], [Math.max(...xs), y]], 2.2), ...pins.map((pin) => leg(pin, y))]
}

/** A blade hinged at the pin: straight to the bar when it is closed, swung aside when it is open. */
function blade(pin: ScenePin, y: number, closed: boolean): Shape[] {
  const [x] = pin.at
  const start = edgeOf(pin)
  if (closed) return [line([[x, start], [x, y]], 2.2), { kind: 'circle', at: [x, y], r: 2, width: 1, tone: 'ink', fill: 'ink' }]
  const way = pin.side === 'top' ? 1 : -1
  const hinge = start + way * Math.min(16, Math.abs(y - start) * 0.53)
  return [line([[x, start], [x, hinge]]), line([[x, hinge], [x - 7, y - way * 3]]), line([[x, y], [x, y - way * 4]])]
}
