import { MOST_COUNTED } from './check-in-pieces.ts'
import { compareIds, inIdOrder } from './compare-ids.ts'
import { wordFor, type Collection } from './collections.ts'
import type { Census } from './census.ts'
import { nearest } from './nearest.ts'
import { endsInAnyVehicle, kindEndsInAnyVehicle } from './part-ends.ts'
import type { PartKind } from './part-kind.ts'
import { showName, type Path } from './path.ts'
import { makeProblem, saidProblem, showNames, showValue, type Problem } from './problem.ts'
import { listReferences } from './references.ts'
import type { RecordPart } from './schema.ts'

export type Kinds = ReadonlyMap<string, PartKind>

/** Everything in the record that points to something which is not there. */
export function findReferenceProblems(census: Census, kinds: Kinds): Problem[] {
  const ends = new EndsOfParts(census, kinds)
  const problems: Problem[] = []
  for (const reference of listReferences(census.sound)) {
    problems.push(...reference.kind === 'item' ? findItemProblem(census, reference.at, reference.id, [reference.among])
      : findPointProblem(census, ends, reference.at, reference.point))
    if (problems.length > MOST_COUNTED) return problems
  }
  return [...problems, ...findRenameProblems(census, kinds)]
}

/** Nothing, or the one problem: no item of that id is in any of the collections. */
export function findItemProblem(census: Census, at: Path, id: string, among: readonly Collection[]): Problem[] {
  const found = census.collectionOf.get(id)
  if (found && among.includes(found)) return []
  if (!among.every(census.isReadable)) return []
  const received = found ? `${showValue(id)}, ${nameKinds([found])}` : showValue(id)
  const ids = () => idsOf(census, among)
  const said = found ? `${showName(id)} is ${nameKinds([found])}, where ${nameKinds(among)} is needed` : `there is no ${among.map(wordFor).join(' or ')} ${showName(id)}`
  return [saidProblem(at, `the id of ${nameKinds(among)}`, received, said, () => nearest(id, ids()), ids)]
}

/** `a splice or metal`, `an option`. */
function nameKinds(collections: readonly Collection[]): string {
  const words = collections.map(wordFor).join(' or ')
  return `${/^[aeiou]/.test(words) ? 'an' : 'a'} ${words}`
}

function idsOf({ collectionOf }: Census, among: readonly Collection[]): string[] {
  return [...collectionOf].filter(([, collection]) => among.includes(collection)).map(([id]) => id)
}

/** The ends of every part, worked out once each. */
class EndsOfParts {
  private readonly known = new Map<string, ReadonlySet<string> | undefined>()
  private readonly census: Census
  private readonly kinds: Kinds

  constructor(census: Census, kinds: Kinds) {
    this.census = census
    this.kinds = kinds
  }

  /** In the order of their ids; undefined where the owner's shape is not right enough to tell. */
  of(owner: string): ReadonlySet<string> | undefined {
    if (!this.known.has(owner)) this.known.set(owner, this.workOut(owner))
    return this.known.get(owner)
  }

  private workOut(owner: string): ReadonlySet<string> | undefined {
    const { sound, isSound } = this.census
    if (!isSound(owner)) return undefined
    if (this.census.collectionOf.get(owner) === 'halves') return sorted(sound.halves?.[owner].ways ?? [])
    const part: RecordPart | undefined = sound.parts[owner]
    const kind = part && this.kinds.get(part.kind)
    const ends = kind && endsInAnyVehicle(part, kind)
    return ends && sorted(ends)
  }
}

function sorted(ids: Iterable<string>): ReadonlySet<string> {
  return new Set([...ids].sort(compareIds))
}

function findPointProblem(census: Census, ends: EndsOfParts, at: Path, point: string): Problem[] {
  const colon = point.indexOf(':')
  if (colon < 0) return findNodeProblem(census, ends, at, point)
  const owner = point.slice(0, colon)
  const missing = findItemProblem(census, at, owner, ['parts', 'halves'])
  if (missing.length > 0) return missing.map((problem) => withEnd(problem, point))
  const known = ends.of(owner)
  if (!known || known.has(point.slice(colon + 1))) return []
  return [makeProblem(at, listEnds(owner, known), showValue(point), () => {
    const near = nearest(point.slice(colon + 1), known)
    return near === undefined ? undefined : `${owner}:${near}`
  })]
}

/** An end without a colon: a splice or a metal, or a part whose terminal was left out. */
function findNodeProblem(census: Census, ends: EndsOfParts, at: Path, point: string): Problem[] {
  const collection = census.collectionOf.get(point)
  if (collection !== 'parts' && collection !== 'halves') return findItemProblem(census, at, point, ['splices', 'metals'])
  const known = ends.of(point) ?? new Set()
  return [makeProblem(at, listEnds(point, known), `${showValue(point)} without a terminal`)]
}

function listEnds(owner: string, ends: ReadonlySet<string>): string {
  if (ends.size === 0) return `a terminal of ${owner}`
  return `one of ${showNames(ends, 12, (end) => `${owner}:${end}`)}`
}

/** The sentence of the part stays; what is near it is a point. */
function withEnd(problem: Problem, point: string): Problem {
  const end = point.slice(point.indexOf(':'))
  return {
    path: problem.path, expected: `${problem.expected}, a colon and a terminal`, received: showValue(point),
    get nearest() { return problem.nearest === undefined ? undefined : problem.nearest + end },
    get sentence() { return problem.sentence },
  }
}

/** Terminals that claim to be an end which their kind does not have. */
function findRenameProblems({ sound }: Census, kinds: Kinds): Problem[] {
  return inIdOrder(sound.parts).flatMap(([id, part]) => {
    const kind = kinds.get(part.kind)
    const own = kind && part.terminals && kindEndsInAnyVehicle(part, kind)
    if (!own) return []
    const names = new Set(own.map(({ is }) => is))
    return inIdOrder(part.terminals).flatMap(([terminal, { is }]) => is === undefined || names.has(is) ? []
      : [makeProblem(['parts', id, 'terminals', terminal, 'is'], `an end of a ${part.kind}: ${showNames(names)}`, showValue(is), () => nearest(is, names))])
  })
}

/** Two values of one fact: only one of the fields may stand. */
export function findDoubleSizes({ sound }: Census): Problem[] {
  const fields = ['sizeMm2', 'sizeAwg', 'sizeStrands', 'copperDiameterMm'] as const
  return inIdOrder(sound.wires).flatMap(([id, wire]) => {
    const given = fields.filter((field) => wire[field] !== undefined)
    if (given.length < 2) return []
    const said = `a wire has one size, and this one has ${given.length}: ${given.join(', ')}`
    return [saidProblem(['wires', id, given[1]], `only one of ${fields.join(', ')}`, given.join(' and '), said)]
  })
}
