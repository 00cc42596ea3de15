import { fitsOf, sharedYears } from './find-overlaps.ts'
import { showFits } from './fits.ts'
import type { PartKind } from './part-kind.ts'
import { clash, party, type Resolving } from './resolving.ts'
import { Ways } from './ways.ts'
import type { ShortedBattery, Wiring, WiringPart } from './wiring.ts'

/** `supply` is the id of the supply that is meant for this vehicle. */
type Joined = Pick<Wiring, 'earth' | 'metals' | 'parts' | 'wires' | 'fixings' | 'matings'> & { readonly supply: string }

/**
 * Follows the posts of every battery along conductors. The live post on metal, and the earthed one not, through whatever
 * switch or fuse, is a conflict with the supply; both posts together are a short circuit, which can still be solved and is listed.
 */
export function followPosts(resolving: Resolving, joined: Joined, kinds: readonly PartKind[]): ShortedBattery[] {
  const ways = listWays(joined), passed = listWays(joined, new Set(kinds.flatMap(({ kind, passes }) => passes ? [kind] : [])))
  const postsOf = new Map(kinds.flatMap(({ kind, posts }) => posts ? [[kind, posts] as const] : []))
  return [...joined.parts.values()].flatMap((part) => {
    const posts = postsOf.get(part.kind)
    if (!posts) return []
    const [plus, minus] = [pointOf(part, posts.plus), pointOf(part, posts.minus)]
    const through = ways.find(plus, (point) => point === minus)
    if (through) return [{ part: part.id, through, sentence: sayShort(resolving, part, through) }]
    const isSupplied = !resolving.conflicts.some(({ at }) => at[0] === 'supply')
    if (isSupplied && joined.earth !== 'none') refuseReversed(resolving, joined, { ways, passed }, part.id, joined.earth === 'positive' ? [plus, minus] : [minus, plus])
    return []
  })
}

function sayShort(resolving: Resolving, { id, title }: WiringPart, through: readonly string[]): string {
  const shown = through.map((way) => {
    const fits = fitsOf(resolving.record, way)
    return fits ? `${way} (${showFits(fits)})` : way
  })
  const way = through.length > 0 ? `through ${shown.join(', ')} with no load between` : 'at one point'
  return `${title} (${id}) is short-circuited, from post to post ${way}: leave it off, and ${sayRemedy(resolving, through)}`
}

function sayRemedy(resolving: Resolving, through: readonly string[]): string {
  for (const [i, second] of through.entries()) {
    const first = through.slice(0, i).find((one) => sharedYears(resolving, one, second) !== null)
    if (first !== undefined) return `let the years of ${first} and ${second} not overlap: both are in the vehicles of ${sharedYears(resolving, first, second)}`
  }
  return 'see where each of these really leads: one end is on the wrong point'
}

function pointOf(part: WiringPart, end: string): string {
  const terminal = [...part.terminals.values()].find(({ is }) => is === end)
  return `${part.id}:${terminal?.id ?? end}`
}

function refuseReversed(
  resolving: Resolving, { earth, metals, supply }: Joined, { ways, passed }: { readonly ways: Ways<string>; readonly passed: Ways<string> }, id: string,
  [earthed, live]: readonly [string, string],
): void {
  const isMetal = (point: string) => metals.has(point)
  const wrong = ways.find(live, isMetal)
  if (!wrong || passed.find(earthed, isMetal)) return
  const said = `the supply has its ${earth} pole earthed, but it is ${live} that leads to metal (by ${wrong.join(', ')}), and ${earthed} does not`
  clash(resolving, ['parts', id], 'battery reversed', said, [party(['supply', supply], resolving.record.supply[supply]?.fits)])
}

/** What wires, fixings and connectors join, and what the parts of these kinds may. */
function listWays({ parts, wires, fixings, matings }: Joined, passing: ReadonlySet<string> = new Set()): Ways<string> {
  const ways = new Ways<string>()
  for (const { id, ends: [a, b] } of wires.values()) if (a.at !== null && b.at !== null) ways.join(a.at, b.at, id)
  for (const { id, joins: [a, b] } of [...fixings.values(), ...matings.values()]) ways.join(a, b, id)
  for (const { id, kind, terminals } of parts.values()) {
    const [first, ...others] = passing.has(kind) ? [...terminals.keys()] : []
    for (const other of others) ways.join(`${id}:${first}`, `${id}:${other}`, id)
  }
  return ways
}
