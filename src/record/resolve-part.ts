import { inIdOrder } from './compare-ids.ts'
import { showFits } from './fits.ts'
import { joinEnds } from './part-ends.ts'
import type { PartKind } from './part-kind.ts'
import { isObject, type Path } from './path.ts'
import { underPath } from './problem.ts'
import { assume, clash, editionOf, holds, party, type Resolving } from './resolving.ts'
import type { Edition, Fits, Params, RecordPart } from './schema.ts'
import { checkShape } from './shape-problems.ts'
import type { WiringPart, WiringTerminal } from './wiring.ts'

/** A part as it is in this vehicle; undefined where its parameters are in conflict or cannot be told, which is then written down. */
export function resolvePart(resolving: Resolving, id: string, part: RecordPart, kind: PartKind): WiringPart | undefined {
  const params = resolveParams(resolving, id, part)
  // Parameters that cannot be told yet are no conflict, and the part's ends hang on them.
  if (resolving.cannotTell.some(({ at }) => at[0] === 'parts' && at[1] === id && at[2] !== 'terminals' && at.length > 2)) return undefined
  const { problems } = checkShape(params, kind.params)
  for (const problem of problems) {
    const { path, expected, received } = underPath(['parts', id, 'params'], problem)
    clash(resolving, path, 'wrong parameters', `expected ${expected} in this vehicle, found ${received}`, [])
  }
  const inner = problems.length > 0 ? [] : kind.check?.(params) ?? []
  for (const { path, expected, received } of inner) clash(resolving, ['parts', id, 'params', ...path], 'wrong parameters', `expected ${expected} in this vehicle, found ${received}`, [])
  if (problems.length + inner.length > 0) return undefined
  const { title, tag, role, place } = part
  return {
    id, kind: part.kind, title, ...tag !== undefined && { tag }, ...role !== undefined && { role },
    ...place !== undefined && { place }, params, terminals: resolveTerminals(resolving, id, part, kind, params),
  }
}

function resolveTerminals(resolving: Resolving, id: string, part: RecordPart, kind: PartKind, params: Params): Map<string, WiringTerminal> {
  const edition = editionOf(resolving, id)
  const at = ['parts', id, 'terminals']
  const kept = inIdOrder(part.terminals).filter(([terminal, { fits }]) => holds(resolving, fits, [...at, terminal], edition))
  const byEnd = new Map<string, [string, Fits | undefined]>()
  for (const [terminal, { is = terminal, fits }] of kept) {
    const other = byEnd.get(is)
    if (other) {
      const parties = [party([...at, other[0]], other[1]), party([...at, terminal], fits)]
      clash(resolving, [...at, terminal], 'same end twice', `${terminal} and ${other[0]} are both the end ${is}`, parties)
    }
    byEnd.set(is, [terminal, fits])
  }
  // An end that the record declares for other vehicles only is not there, whatever the kind says.
  const declared = new Set(Object.entries(part.terminals ?? {}).map(([terminal, { is = terminal }]) => is))
  return joinEnds(kept, kind.terminals(params).filter(({ is }) => byEnd.has(is) || !declared.has(is)))
}

/** The parameters with every fitting set laid over them, and without what is meant for other vehicles. */
function resolveParams(resolving: Resolving, id: string, part: RecordPart): Params {
  const edition = editionOf(resolving, id)
  const laid: { [key: string]: unknown } = {}
  const from = new Map<string, string>()
  let fitting = 0
  for (const [key, value] of Object.entries(part.params ?? {})) laid[key] = keepInside(resolving, value, ['parts', id, 'params', key], edition)
  for (const [setId, { fits, params }] of inIdOrder(part.paramSets)) {
    const at = ['parts', id, 'paramSets', setId]
    if (!holds(resolving, fits, at, edition)) continue
    fitting++
    for (const [key, value] of Object.entries(params)) {
      const other = from.get(key)
      if (other !== undefined && part.paramSets) {
        const parties = [party([...at.slice(0, 3), other], part.paramSets[other].fits), party(at, fits)]
        clash(resolving, [...at, 'params', key], 'parameter set twice', `both ${other} and ${setId} state ${key} for this vehicle`, parties)
      }
      from.set(key, setId)
      laid[key] = keepInside(resolving, value, [...at, 'params', key], edition)
    }
  }
  if (fitting === 0 && part.paramSets && !part.params) noteNoSet(resolving, id, part.paramSets)
  return laid
}

/** A part whose parameters all stand in sets, of which none is for this vehicle, takes every default: perhaps a slip of a year. */
function noteNoSet(resolving: Resolving, id: string, sets: NonNullable<RecordPart['paramSets']>): void {
  const shown = inIdOrder(sets).map(([set, { fits }]) => `${set} is for ${showFits(fits)}`).join(', ')
  assume(resolving, { path: `parts.${id}.paramSets`, value: 'none', why: `none of its parameter sets is for this vehicle (${shown})`, source: 'the record' })
}

/** A parameter without the entries whose own `fits` does not hold, and without the word `fits`. */
function keepInside(resolving: Resolving, value: unknown, at: Path, edition: Edition): unknown {
  const stays = (entry: unknown, key: string) => !isObject(entry) || !Array.isArray(entry.fits) || holds(resolving, entry.fits as unknown as Fits, [...at, key], edition)
  if (Array.isArray(value)) {
    return value.flatMap((entry, i) => stays(entry, String(i)) ? [keepInside(resolving, entry, [...at, String(i)], edition)] : [])
  }
  if (!isObject(value)) return value
  const kept = Object.entries(value).filter(([key, entry]) => key !== 'fits' && stays(entry, key))
  return Object.fromEntries(kept.map(([key, entry]) => [key, keepInside(resolving, entry, [...at, key], edition)]))
}
