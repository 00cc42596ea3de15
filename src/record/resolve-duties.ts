import { inIdOrder } from './compare-ids.ts'
import { isObject, showPath, type Path } from './path.ts'
import { assume, type Resolving } from './resolving.ts'
import type { Duty, Positions, WiringRecord } from './schema.ts'
import type { Wiring, WiringPart } from './wiring.ts'

type Parts = ReadonlyMap<string, WiringPart>

/**
 * Duties and limits cut down to the controls, positions and parts of this vehicle. A duty of a lamp that it does not
 * have is no duty; what is left out is written down, so that nobody takes it for met.
 */
export function resolveDuties(resolving: Resolving, kept: WiringRecord, parts: Parts): Pick<Wiring, 'duties' | 'limits'> {
  const duties = new Map<string, Duty>()
  for (const [id, duty] of inIdOrder(kept.duties)) {
    const at = ['duties', id]
    const when = cutPositions(resolving, [...at, 'when'], duty.when, parts)
    const cut = (key: 'must' | 'mustNot' | 'may') => duty[key]?.filter((name, i) => isThere(resolving, [...at, key, String(i)], name, parts))
    const [must, mustNot, may] = [cut('must'), cut('mustNot'), cut('may')]
    const { title } = duty
    if (when) duties.set(id, { title, when, ...must && { must }, ...mustNot && { mustNot }, ...may && { may } })
  }
  const limits = new Map(inIdOrder(kept.limits).flatMap(([id, { fits: _fits, ...limit }]) => {
    const never = cutPositions(resolving, ['limits', id, 'never'], limit.never, parts)
    return never ? [[id, { ...limit, never }] as const] : []
  }))
  return { duties, limits }
}

/** Undefined where the positions cannot occur in this vehicle: a control or all of its positions are not there. */
function cutPositions(resolving: Resolving, at: Path, positions: Positions, parts: Parts): Positions | undefined {
  const cut: { [key: string]: readonly string[] } = {}
  for (const [key, names] of inIdOrder(positions)) {
    if (key !== 'engine' && !isThere(resolving, [...at, key], key, parts)) return undefined
    const there = names.filter((name) => key === 'engine' || hasPosition(parts, key, name))
    if (there.length < names.length) leaveOut(resolving, [...at, key], `${key} has not all of these positions in this vehicle`)
    if (there.length === 0) return undefined
    cut[key] = there
  }
  return cut
}

function isThere(resolving: Resolving, at: Path, name: string, parts: Parts): boolean {
  const [id] = name.split('.')
  // A part whose parameters are in conflict is missing here, and reported there.
  if (parts.has(id)) return true
  leaveOut(resolving, at, `${id} is not in this vehicle`)
  return false
}

/** Kinds that do not write their axes down as parameters have fixed positions, which reading let pass. */
function hasPosition(parts: Parts, key: string, name: string): boolean {
  const [id, axisId] = key.split('.')
  const axes = parts.get(id)?.params.axes
  if (!isObject(axes)) return true
  const axis = axes[axisId ?? Object.keys(axes)[0]]
  if (!isObject(axis)) return false
  return isObject(axis.range) || !Array.isArray(axis.positions) || axis.positions.includes(name)
}

function leaveOut(resolving: Resolving, at: Path, why: string): void {
  assume(resolving, { path: showPath(at), value: 'left out', why, source: 'the record' })
}
