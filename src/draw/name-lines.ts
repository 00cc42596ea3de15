import { innerId, type AxisSpec, type DialSpec, type ElementSpec, type PartModel, type WiringPart } from '../record/index.ts'
import type { Manner } from './manner.ts'
import type { GraphNode } from './path-graph.ts'
import { LETTER, LINE, type NameLine } from './scene.ts'
import { NO_BREAK, textWidth, wrapText } from './text-widths.ts'

/** Room for a name beside its symbol before it goes on in the next line: the least in which it takes no more than `NAME_LINES`. */
const NAME_ROOMS = [50, 58, 66, 74]
const NAME_ROOM = 74
const NAME_LINES = 3

/** The lettering beside a piece, and the room that it needs whatever is solved. */
export interface Name { readonly lines: readonly NameLine[]; readonly width: number; readonly height: number; readonly upright: boolean; readonly isLine: boolean }

export const NO_NAME: Name = { lines: [], width: 0, height: 0, upright: false, isLine: false }

/** Title, rating and live lines of a piece. */
export function nameOf(node: GraphNode, letter: number): Name {
  const lines: NameLine[] = node.kind === 'piece' ? [...wrapTitle(node.text).map((text) => ({ text })), ...partLines(node)] : [{ text: node.text, soft: true }]
  const scale = letter / LETTER
  return { lines, width: Math.max(0, ...lines.map(lineRoom)) * scale, height: lines.length * LINE * scale, upright: false, isLine: false }
}

/** The title and what is live, one after the other in a line; upright it is read from below. */
export function lineName(node: GraphNode, upright: boolean, { letter, lineRoom }: Manner): Name {
  const title = wrapText(node.text, LETTER, lineRoom, 600).map((text): NameLine => ({ text }))
  const [first, ...others] = partLines(node).filter((line) => line.live)
  const last: NameLine = { ...title[title.length - 1], live: first?.live }
  const fits = first !== undefined && lineLength(last) <= lineRoom * LONGER
  const lines = first === undefined ? title : fits ? [...title.slice(0, -1), last, ...others] : [...title, first, ...others]
  const scale = letter / LETTER
  const [along, across] = [(Math.max(0, ...lines.map(lineLength)) + 4) * scale, lines.length * LINE * scale]
  return { lines, upright, isLine: true, ...upright ? { width: across, height: along } : { width: along, height: across } }
}

function lineLength(line: NameLine): number {
  const title = line.text === '' ? 0 : textWidth(line.text, LETTER, 600) + AFTER_TITLE
  return title + Math.max(0, ...(line.live?.room ?? []).map((text) => textWidth(text, LETTER)))
}

/** So much longer than its room a line may become by what is live. */
const LONGER = 1.7

/** Between a title and what is live after it. */
export const AFTER_TITLE = 6

/** The name of the metal below an earth symbol, in lines hardly wider than the path; left out of a drawing of the whole. */
export function earthLines(text: string, { whole }: Manner): string[] {
  return whole ? [] : wrapText(text, LETTER, NAME_ROOMS[0])
}

/** A title in narrow lines: the width of a drawing is the sum of its names. */
function wrapTitle(title: string): string[] {
  const wrapped = NAME_ROOMS.map((room) => wrapText(title, LETTER, room, 600))
  const widest = (lines: readonly string[]) => Math.max(...lines.map((text) => textWidth(text, LETTER, 600)))
  return wrapped.find((lines, i) => lines.length <= NAME_LINES && widest(lines) <= NAME_ROOMS[i]) ?? wrapped[wrapped.length - 1]
}

/** The widest text that a line can come to carry. */
function lineRoom(line: NameLine): number {
  const own = textWidth(line.text, LETTER, line.soft || line.live ? 400 : 600)
  return Math.max(own, ...(line.live?.room ?? []).map((text) => textWidth(text, LETTER)))
}

function partLines({ part, model, elements }: GraphNode): NameLine[] {
  if (!part) return []
  const lamps = (model?.lamps ?? []).filter((lamp) => elements.some(({ id }) => id === lamp.element))
  if (lamps.length > 0) return lamps.flatMap((lamp) => lampLines(part.id, lamp.id, lamps.length > 1 ? lamp.title ?? lamp.id : '', wattsOf(model, lamp.element)))
  const isContactPiece = elements.length > 0 && elements.every(({ does }) => does === 'contact')
  return [
    ...ratingLines(part.kind, part.params),
    ...fuseLines(part, model, elements),
    ...(model?.dials ?? []).map((dial) => dialLine(part.id, dial)),
    ...(model?.axes ?? []).map((axis) => axisLine(axis, model)),
    ...part.kind === 'battery' ? [{ text: '', live: { says: 'battery', room: ['12.65 V'] } } satisfies NameLine] : [],
    ...part.kind === 'battery' ? [{ text: '', live: { says: 'battery-amps', room: ['99.9 A out', 'no current'] } } satisfies NameLine] : [],
    ...stateLines(model, isContactPiece && elements.length < (model?.elements.length ?? 0)),
  ]
}

function lampLines(part: string, lamp: string, title: string, watts: string): NameLine[] {
  const rating = [title, watts].filter((word) => word !== '').join(' ')
  const live: NameLine = { text: '', live: { says: 'lamp', key: innerId(part, lamp), room: ['108 % over', '44 % dim'] } }
  return rating === '' ? [live] : [...wrapText(rating, LETTER, NAME_ROOM).map((text) => ({ text, soft: true })), live]
}

function wattsOf(model: PartModel | undefined, element: string): string {
  const law = model?.elements.find(({ id }) => id === element)?.law
  return typeof law === 'object' && law.kind === 'filament' ? `${round(law.ratedW)}${NO_BREAK}W` : ''
}

function ratingLines(kind: string, params: Readonly<Record<string, unknown>>): NameLine[] {
  const { ratingA, powerW } = params
  const text = kind === 'fuse' && params.ways === undefined && typeof ratingA === 'number' ? `${ratingA} A` : typeof powerW === 'number' ? `${round(powerW)} W` : ''
  return text === '' ? [] : [{ text, soft: true }]
}

/** A blown fuse; in a box each fuse of this piece by its name, as long as it is whole with its rating. */
function fuseLines({ params }: WiringPart, model: PartModel | undefined, elements: readonly ElementSpec[]): NameLine[] {
  const ways = params.ways as Readonly<Record<string, { readonly ratingA?: unknown }>> | undefined
  return (model?.states ?? []).filter(({ element }) => elements.some(({ id }) => id === element)).map(({ id, element = '' }) => {
    const ratingA = ways?.[element]?.ratingA ?? params.ratingA
    const whole = element === '' ? '' : `${element}${typeof ratingA === 'number' ? `: ${ratingA} A` : ''}`
    const prefix = element === '' ? '' : `${element} `
    return { text: '', live: { says: 'fuse', key: id, prefix, rest: whole, room: [whole, `${prefix}blown`] } }
  })
}

function dialLine(part: string, { id, unit }: DialSpec): NameLine {
  return { text: '', live: { says: 'dial', key: innerId(part, id), room: [`−88.8 ${unit}`] } }
}

function axisLine(axis: AxisSpec, model: PartModel | undefined): NameLine {
  const prefix = (model?.axes?.length ?? 0) > 1 ? `${axis.title.toLowerCase()}: ` : ''
  const unit = axis.range?.unit ?? ''
  const room = axis.range ? [`${prefix}${axis.range.from} ${unit}`, `${prefix}${axis.range.to}.9 ${unit}`] : axis.positions.map((position) => prefix + position)
  return { text: '', live: { says: 'axis', key: axis.id, prefix, room } }
}

/** States that a person would ask for: whether a magnet holds, a cut-out is made, a breaker has opened. */
function stateLines(model: PartModel | undefined, detachedContact: boolean): NameLine[] {
  if (detachedContact) return []
  if (model?.phase) return [{ text: '', live: { says: 'phase', room: ['stays lit', ...model.phase.names] } }]
  return (model?.states ?? []).filter(({ values, element }) => values.length > 1 && element === undefined).map((state) => {
    const prefix = STATE_WORDS[state.id] ?? ''
    return { text: '', live: { says: 'state', key: state.id, prefix, rest: state.rest, room: state.values.map((value) => prefix + value) } }
  })
}

const STATE_WORDS: Readonly<Record<string, string>> = { cutout: 'cut-out ' }

const round = (value: number) => String(Math.round(value * 10) / 10)
