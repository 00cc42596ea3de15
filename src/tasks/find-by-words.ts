import { wireColour } from '../draw/index.ts'
import { wireSize, type Wiring, type WiringPart, type WiringWire } from '../record/index.ts'
import { kindWords, type Picked } from './live-facts.ts'

/** A wire, a part, a splice or a connector, said in one line by which a person knows it. */
export interface Findable { readonly pick: Picked; readonly said: string }

/**
 * Everything that has all these words, in any order: in its name, colour, letters, size, marking, kind, place or loom, and for a
 * wire in what stands at its ends. What has them in full, in its own name before all, comes first; without words it is everything.
 */
export function findByWords(wiring: Wiring, said: string): Findable[] {
  const asked = splitWords(said).filter((word) => !BETWEEN.includes(word))
  return listNamed(wiring).flatMap(({ findable, own, words }) => {
    const score = scoreOf(asked, own, words)
    return score === null ? [] : [{ findable, score }]
  }).sort((a, b) => b.score - a.score).map(({ findable }) => findable)
}

/** What stands between the words that count: "brown-white at the dip switch". */
const BETWEEN = ['a', 'an', 'and', 'at', 'by', 'for', 'from', 'in', 'of', 'on', 'or', 'the', 'to', 'with']

function splitWords(said: string): string[] {
  return said.toLowerCase().split(/[^\p{L}\p{N}.+]+/u).filter((word) => word !== '')
}

/** How well the words are there; null where one is not there at all. */
function scoreOf(asked: readonly string[], own: ReadonlySet<string>, words: ReadonlySet<string>): number | null {
  const all = [...words]
  let score = 0
  for (const word of asked) {
    if (own.has(word)) score += 2
    else if (words.has(word)) score++
    else if (!all.some((one) => isPartOf(word, one))) return null
  }
  return score
}

/** The beginning of a word, or three letters or more from its middle; a plural means one of them too. */
function isPartOf(asked: string, word: string): boolean {
  return word.startsWith(asked) || asked.length >= 3 && word.includes(asked) || asked.length > 3 && asked.endsWith('s') && word.includes(asked.slice(0, -1))
}

interface Named { readonly findable: Findable; readonly own: ReadonlySet<string>; readonly words: ReadonlySet<string> }

/** Parts by title, then wires, splices and connectors by id. */
function listNamed(wiring: Wiring): Named[] {
  const parts = [...wiring.parts.values()].sort((a, b) => a.title < b.title ? -1 : 1).flatMap((part) => [namePart(wiring, part), ...nameWays(wiring, part)])
  const splices = [...wiring.splices.values()].map(({ id, place }) => name({ kind: 'splice', id }, `Splice ${id}`, [placeWords(wiring, place), ...endsAt(wiring, id)]))
  const matings = [...wiring.matings.values()].map(({ id, title, joins }) => name({ kind: 'splice', id }, `Connector ${title ?? ''} ${id}`, joins))
  return [...parts, ...[...wiring.wires.values()].map((wire) => nameWire(wiring, wire)), ...splices, ...matings]
}

function name(pick: Picked, said: string, more: readonly string[]): Named {
  return { findable: { pick, said }, own: new Set(splitWords(pick.id)), words: new Set(splitWords([pick.id, said, ...more].join(' '))) }
}

function namePart(wiring: Wiring, part: WiringPart): Named {
  const { id, tag, title } = part
  return name({ kind: 'part', id }, tag === undefined ? title : `${title}, ${tag}`, ['part', partWords(wiring, part), ...[...part.terminals.values()].map(({ marking }) => marking)])
}

/** Each fuse of a box by its own name. */
function nameWays(wiring: Wiring, part: WiringPart): Named[] {
  const ways = Object.entries((part.params.ways ?? {}) as Readonly<Record<string, { readonly to?: string; readonly ratingA?: unknown }>>)
  return ways.filter(() => part.kind === 'fuse').map(([id, { to = id, ratingA }]) => {
    const named = name({ kind: 'part', id: part.id }, `Fuse ${id} of ${part.title}${typeof ratingA === 'number' ? `, ${ratingA} A` : ''}`, [partWords(wiring, part), to])
    return { ...named, own: new Set(splitWords(`fuse ${id}`)) }
  })
}

function partWords(wiring: Wiring, { title, tag, kind, place }: WiringPart): string {
  return [title, tag, kind, kindWords(kind), placeWords(wiring, place)].join(' ')
}

function placeWords({ places }: Wiring, place: string | undefined): string {
  return place === undefined ? '' : `${place} ${places.get(place)?.title ?? ''}`
}

function nameWire(wiring: Wiring, wire: WiringWire): Named {
  const { id, tag, loom, ends } = wire
  const { words, letters } = wireColour(wire)
  const ofStandard = typeof wire.colour === 'object' ? wireColour({ colour: { ...wire.colour, letters: undefined } }).letters : ''
  const said = [`Wire ${id}${tag === undefined || tag === id ? '' : ` (${tag})`}`, words, wireSize(wire), ends.map(({ at, state }) => sayEnd(wiring, at, state)).join(' to ')]
  return name({ kind: 'wire', id }, said.filter((one) => one !== '').join(', '), [
    letters, ofStandard, loom === undefined ? '' : `${loom} ${wiring.looms.get(loom)?.title ?? ''}`,
    ...ends.map(({ at, place }) => `${at ?? ''} ${placeWords(wiring, place)} ${ownerWords(wiring, at)}`),
  ])
}

/** What an end is on, as short as it can be said. */
function sayEnd({ parts, metals, splices }: Wiring, at: string | null, state: string): string {
  if (at === null) return state === 'loose' ? 'a loose end' : 'an end not known'
  const [owner, terminal] = at.split(':')
  const part = parts.get(owner)
  if (part) return `${part.title} ${part.terminals.get(terminal)?.marking ?? ''}`.trim()
  return splices.has(at) ? `splice ${at}` : metals.get(at)?.title ?? at
}

function ownerWords(wiring: Wiring, at: string | null): string {
  const part = wiring.parts.get(at?.split(':')[0] ?? '')
  if (part) return `${partWords(wiring, part)} ${part.terminals.get(at?.split(':')[1] ?? '')?.marking ?? ''}`
  return wiring.splices.has(at ?? '') ? 'splice' : wiring.metals.get(at ?? '')?.title ?? ''
}

/** Colours of the wires that meet in a splice. */
function endsAt({ wires }: Wiring, at: string): string[] {
  return [...wires.values()].filter(({ ends }) => ends.some((end) => end.at === at)).map((wire) => `${wire.id} ${wireColour(wire).words}`)
}
