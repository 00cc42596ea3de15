import { inIdOrder } from './compare-ids.ts'
import type { Census } from './census.ts'
import { nearest } from './nearest.ts'
import { showName, type Path } from './path.ts'
import { makeProblem, saidProblem, showNames, showValue, type Problem } from './problem.ts'
import type { RecordLoom, RecordWire } from './schema.ts'

/** Looms that are no tree, branches and points that are not there, wires that leave a loom at no point of it, ways that are none. */
export function findLoomProblems(census: Census): Problem[] {
  const looms = inIdOrder(census.sound.looms).flatMap(([id, loom]) => findTreeProblems(['looms', id], loom))
  const wires = inIdOrder(census.sound.wires).flatMap(([id, wire]) => findLeavingProblems(census, ['wires', id], wire))
  return [...looms, ...wires, ...findHalfProblems(census)]
}

function findTreeProblems(at: Path, loom: RecordLoom): Problem[] {
  const points = new Set(Object.keys(loom.points)), branches = new Set(Object.keys(loom.branches))
  const missing = inIdOrder(loom.branches).flatMap(([id, branch]) => (['from', 'to'] as const).flatMap((end) =>
    findLocalProblem([...at, 'branches', id, end], branch[end], points, 'a point of this loom')))
  const lies = inIdOrder(loom.lies).flatMap(([id, lie]) =>
    findLocalProblem([...at, 'lies', id, 'branch'], lie.branch, branches, 'a branch of this loom'))
  return [...missing, ...missing.length === 0 ? findShapeOfTree(at, loom) : [], ...lies]
}

/** A loom is one tree: every branch joins two pieces that were apart, and in the end one piece is left. */
function findShapeOfTree(at: Path, loom: RecordLoom): Problem[] {
  // Every piece goes by one of its points, and every point leads there over other points of the piece.
  const towards = new Map(Object.keys(loom.points).map((point) => [point, point]))
  const pieceOf = (point: string): string => {
    let piece = point
    for (let next = towards.get(piece); next !== undefined && next !== piece; next = towards.get(piece)) {
      towards.set(piece, towards.get(next) as string)
      piece = next
    }
    return piece
  }
  const problems: Problem[] = []
  for (const [id, { from, to }] of inIdOrder(loom.branches)) {
    const [one, other] = [pieceOf(from), pieceOf(to)]
    if (one === other) {
      const said = `this branch closes a ring between ${from} and ${to}, and a loom has no rings`
      problems.push(saidProblem([...at, 'branches', id], 'a branch to a point not yet reached', `${from} to ${to}`, said))
    }
    towards.set(other, one)
  }
  const pieces = new Set(Object.keys(loom.points).map(pieceOf))
  if (pieces.size > 1) {
    const said = `the loom falls into ${pieces.size} pieces, with no branch between ${[...pieces].slice(0, 3).join(' and ')}`
    problems.push(saidProblem([...at, 'branches'], 'one connected loom', `${pieces.size} pieces`, said))
  }
  return problems
}

function findLeavingProblems({ sound, isSound }: Census, at: Path, wire: RecordWire): Problem[] {
  return wire.ends.flatMap(({ leaves }, i) => {
    if (leaves === undefined) return []
    const path = [...at, 'ends', String(i), 'leaves']
    if (wire.loom === undefined || wire.loom === 'separate') {
      return [saidProblem(path, 'a wire of a loom', showValue(leaves), `the wire leaves its loom at ${leaves}, but is in no loom`)]
    }
    const loom = isSound(wire.loom) ? sound.looms?.[wire.loom] : undefined
    return loom && !Object.hasOwn(loom.points, leaves) ? findLocalProblem(path, leaves, new Set(Object.keys(loom.points)), `a point of the loom ${wire.loom}`) : []
  })
}

/** Ways written twice, and pairs of ways that no half of the connector has. */
function findHalfProblems({ sound }: Census): Problem[] {
  const halves = inIdOrder(sound.halves)
  const doubles = halves.flatMap(([id, { ways }]) => findDoubles(['halves', id, 'ways'], ways))
  const pairs = inIdOrder(sound.connectors).flatMap(([id, connector]) => (['a', 'b'] as const).flatMap((side, s) => {
    const paired = (connector.ways ?? []).map((pair) => pair[s])
    const ways = new Set(halves.filter(([, half]) => half.connector === id && half.side === side).flatMap(([, half]) => half.ways))
    const unknown = ways.size === 0 ? [] : paired.flatMap((way, i) =>
      findLocalProblem(['connectors', id, 'ways', String(i), String(s)], way, ways, `a way of side ${side}`))
    return [...unknown, ...findDoubles(['connectors', id, 'ways'], paired, (i) => [String(i), String(s)])]
  }))
  return [...doubles, ...pairs]
}

function findDoubles(at: Path, names: readonly string[], step = (i: number): Path => [String(i)]): Problem[] {
  const seen = new Set<string>()
  return names.flatMap((name, i) => {
    if (seen.size < seen.add(name).size) return []
    return [saidProblem([...at, ...step(i)], 'every way once', showValue(name), `the way ${showName(name)} stands here twice`)]
  })
}

function findLocalProblem(path: Path, name: string, names: ReadonlySet<string>, what: string): Problem[] {
  if (names.has(name)) return []
  const expected = names.size === 0 ? what : `${what}: ${showNames(names, 12)}`
  return [makeProblem(path, expected, showValue(name), () => nearest(name, names))]
}
