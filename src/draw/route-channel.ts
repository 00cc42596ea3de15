/** One wire's way across a channel: down from its upper x, along a track, down to its lower x. */
export interface Net {
  readonly link: number
  readonly from: number
  readonly to: number
  /** Which side each end comes from; a turn has both on one side. */
  readonly fromTop: boolean
  readonly toTop: boolean
}

/** The tracks of a wire, each with the x where it goes on downward: one, or two where it must step aside. */
export interface Routed { readonly steps: readonly { readonly track: number; readonly x: number }[] }

interface Piece { readonly link: number; readonly from: number; readonly to: number; readonly fromTop: boolean; readonly toTop: boolean; readonly part: number }

export interface RoutedChannel {
  readonly byLink: ReadonlyMap<number, Routed>
  readonly tracks: number
  /** Pairs of links of which each would have to lie above the other: the first one's upper column is too near the second one's lower. */
  readonly clashes: readonly (readonly [number, number])[]
}

/** From track to track. */
export const TRACK = 17
/** Free room above and below the tracks of a channel. */
export const CHANNEL_EDGE = 6

/** Two lines nearer than this would touch. */
export const CLEAR = 17

/**
 * Tracks for the bent wires of one channel, so that no two lie on one another: a wire from above ends before a wire to
 * below begins in the same column, and the order with fewest crossings is taken. Track 0 is the highest.
 */
export function routeChannel(nets: readonly Net[], columns: readonly number[]): RoutedChannel {
  let pieces: Piece[] = nets.filter(({ from, to, fromTop, toTop }) => Math.abs(from - to) > 0.25 || fromTop === toTop).map((net) => ({ ...net, part: 0 }))
  const clashes = pieces.flatMap((a) => pieces.filter((b) => b !== a && mustBeAbove(a, b) && mustBeAbove(b, a)).map((b) => [a.link, b.link] as const))
  let order = orderPieces(pieces)
  for (let tries = 0; order === null && tries < 40; tries++) {
    pieces = stepAside(pieces, columns)
    order = orderPieces(pieces)
  }
  const track = assignTracks(order ?? pieces)
  const byLink = new Map<number, Routed>()
  for (const piece of [...pieces].sort((a, b) => a.part - b.part)) {
    const steps = byLink.get(piece.link)?.steps ?? []
    byLink.set(piece.link, { steps: [...steps, { track: track.get(piece) ?? 0, x: piece.to }] })
  }
  return { byLink, clashes, tracks: Math.max(0, ...[...track.values()].map((t) => t + 1)) }
}

/** Whether a must lie above b because one's upward line and the other's downward line share a column. */
function mustBeAbove(a: Piece, b: Piece): boolean {
  return downOf(b).some((x) => upOf(a).some((other) => Math.abs(other - x) < CLEAR))
}

const upOf = (piece: Piece) => [...piece.fromTop ? [piece.from] : [], ...piece.toTop ? [piece.to] : []]
const downOf = (piece: Piece) => [...piece.fromTop ? [] : [piece.from], ...piece.toTop ? [] : [piece.to]]

/** From top to bottom, or null where the demands go round in a ring. */
function orderPieces(pieces: readonly Piece[]): Piece[] | null {
  const left = new Set(pieces)
  const order: Piece[] = []
  while (left.size > 0) {
    const free = [...left].filter((piece) => ![...left].some((other) => other !== piece && mustPrecede(other, piece)))
    if (free.length === 0) return null
    const costs = free.map((piece) => [...left].reduce((sum, other) => other === piece ? sum : sum + crossings(piece, other) - crossings(other, piece), 0))
    const next = free[costs.indexOf(Math.min(...costs))]
    order.push(next)
    left.delete(next)
  }
  return order
}

function mustPrecede(a: Piece, b: Piece): boolean {
  if (a.link === b.link) return a.part < b.part
  return mustBeAbove(a, b)
}

/** How often the two cross with a above b. */
function crossings(a: Piece, b: Piece): number {
  const within = (x: number, { from, to }: Piece) => x > Math.min(from, to) && x < Math.max(from, to)
  return upOf(b).filter((x) => within(x, a)).length + downOf(a).filter((x) => within(x, b)).length
}

/** Splits the first piece of a ring in two at a free column. */
function stepAside(pieces: readonly Piece[], columns: readonly number[]): Piece[] {
  const index = pieces.findIndex((piece) => piece.fromTop !== piece.toTop && pieces.some((other) => other.link !== piece.link && mustBeAbove(piece, other) && mustBeAbove(other, piece)))
  const at = index >= 0 ? index : pieces.findIndex((piece) => piece.part === 0 && !pieces.some(({ link, part }) => link === piece.link && part > 0))
  if (at < 0) return [...pieces]
  const piece = pieces[at]
  const x = freeColumn((piece.from + piece.to) / 2, [...columns, ...pieces.flatMap(({ from, to }) => [from, to])])
  const halves = [{ ...piece, to: x, toTop: false, part: piece.part }, { ...piece, from: x, fromTop: true, part: piece.part + 1 }]
  return [...pieces.slice(0, at), ...halves, ...pieces.slice(at + 1)]
}

function freeColumn(near: number, taken: readonly number[]): number {
  for (let d = 0; ; d += 3) {
    const found = [near - d, near + d].find((x) => taken.every((other) => Math.abs(other - x) >= CLEAR))
    if (found !== undefined) return found
  }
}

/** Each piece as high as those above it allow whose spans it meets. */
function assignTracks(order: readonly Piece[]): Map<Piece, number> {
  const track = new Map<Piece, number>()
  order.forEach((piece, index) => {
    const above = order.slice(0, index).filter((other) => spansMeet(piece, other) || mustPrecede(other, piece))
    track.set(piece, Math.max(0, ...above.map((other) => (track.get(other) ?? 0) + 1)))
  })
  return track
}

function spansMeet(a: Piece, b: Piece): boolean {
  return Math.min(a.from, a.to) < Math.max(b.from, b.to) + CLEAR && Math.min(b.from, b.to) < Math.max(a.from, a.to) + CLEAR
}
