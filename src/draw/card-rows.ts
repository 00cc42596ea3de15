import { compareIds, type Wiring, type WiringWire } from '../record/index.ts'
import { wireLabel } from './wire-label.ts'

/** What is joined to one terminal: a wire, a metal or another part's terminal that it sits on, or nothing. */
export interface CardRow {
  readonly wire: WiringWire | null
  readonly on: 'wire' | 'metal' | 'terminal' | 'nothing'
  /** Where it goes: the far end, and what lies behind it where that is a connector or a splice. */
  readonly goes: readonly string[]
}

/** One terminal as a connection card shows it. */
export interface CardTerminal { readonly id: string; readonly marking: string; readonly rows: readonly CardRow[] }

/** Every terminal of a part in order of its marking, each with all that is joined to it. */
export function listTerminals(wiring: Wiring, part: string): CardTerminal[] {
  const terminals = [...wiring.parts.get(part)?.terminals.values() ?? []]
  return terminals.sort((a, b) => compareIds(a.marking, b.marking) || compareIds(a.id, b.id)).map(({ id, marking }) => {
    const point = `${part}:${id}`
    const rows = [...wiresAt(wiring, point).map(({ wire, far }): CardRow => ({ wire, on: 'wire', goes: followFrom(wiring, wire, far) })), ...seatsOf(wiring, point)]
    return { id, marking, rows: rows.length > 0 ? rows : [{ wire: null, on: 'nothing', goes: ['nothing joined'] }] }
  })
}

interface Leaving { readonly wire: WiringWire; readonly far: string | null }

/** Wires that end at a point, with the point at their other end; null where that end is loose or not known. */
function wiresAt({ wires }: Wiring, point: string): Leaving[] {
  return [...wires.values()].flatMap((wire) => wire.ends.flatMap(({ at }, i) => at === point ? [{ wire, far: wire.ends[1 - i].at }] : []))
}

function seatsOf(wiring: Wiring, point: string): CardRow[] {
  return [...wiring.fixings.values()].flatMap(({ joins }): CardRow[] => {
    if (!joins.includes(point)) return []
    const other = joins[0] === point ? joins[1] : joins[0]
    return [{ wire: null, on: wiring.metals.has(other) ? 'metal' : 'terminal', goes: [`on ${sayFar(wiring, other)}`] }]
  })
}

/** Behind a connector or a splice the way goes on, through two of them at most; behind a second splice too much hangs. */
function followFrom(wiring: Wiring, wire: WiringWire, far: string | null, depth = 0): string[] {
  if (far === null) return [wire.ends.some(({ state }) => state === 'loose') ? 'to a loose end' : 'to an end that nobody knows']
  const here = `to ${sayFar(wiring, far)}`
  if (depth === DEEPEST || depth > 0 && wiring.splices.has(far)) return [here]
  const on = beyond(wiring, far).flatMap((point) => wiresAt(wiring, point)).filter((next) => next.wire.id !== wire.id)
  return [here, ...on.flatMap((next) => {
    const [first, ...rest] = followFrom(wiring, next.wire, next.far, depth + 1)
    return [`on by ${wireLabel(next.wire)} ${first}`, ...rest]
  })]
}

const DEEPEST = 2

/** Points at which a way that ends here goes on: the other half's way, or the splice itself. */
function beyond({ matings, splices }: Wiring, point: string): string[] {
  if (splices.has(point)) return [point]
  return [...matings.values()].flatMap(({ joins: [a, b] }) => a === point ? [b] : b === point ? [a] : [])
}

/** A point in words: a part with its marking, a metal, a connector with its way, a splice with its place. */
function sayFar({ parts, metals, matings, splices, places }: Wiring, point: string): string {
  const [owner, end] = point.split(':')
  const part = parts.get(owner)
  if (part) return `${part.title}, ${part.terminals.get(end)?.marking ?? end}`
  const metal = metals.get(point)
  if (metal) return metal.title
  const mating = [...matings.values()].find(({ joins }) => joins.includes(point))
  if (mating) return `${mating.title ?? 'connector'}, way ${end}`
  const place = splices.get(point)?.place
  return splices.has(point) ? `a splice${place === undefined ? '' : `, ${places.get(place)?.title ?? place}`}` : `${owner}, way ${end}`
}
