import type { Census } from './census.ts'
import { inIdOrder } from './compare-ids.ts'
import { ENGINE_STATES } from './engine-states.ts'
import { nearest } from './nearest.ts'
import { listParamVariants } from './part-ends.ts'
import { isObject, type Path } from './path.ts'
import { makeProblem, saidProblem, showNames, showValue, type Problem } from './problem.ts'
import { findItemProblem } from './reference-problems.ts'
import type { Positions, RecordPart } from './schema.ts'

/** What positions may say of the engine; `running` is idle and cruise together. */
const ENGINE_POSITIONS = [...ENGINE_STATES, 'running']

/** What is wrong with duties and limits: parts, controls, axes and positions that are not there. */
export function findPositionProblems(census: Census): Problem[] {
  const duties = inIdOrder(census.sound.duties).flatMap(([id, duty]) => [
    ...findWhenProblems(census, ['duties', id, 'when'], duty.when),
    ...(['must', 'mustNot', 'may'] as const).flatMap((key) => (duty[key] ?? []).flatMap((name, i) =>
      findItemProblem(census, ['duties', id, key, String(i)], name.split('.')[0], ['parts']))),
  ])
  const limits = inIdOrder(census.sound.limits).flatMap(([id, limit]) => findWhenProblems(census, ['limits', id, 'never'], limit.never))
  return [...duties, ...limits]
}

function findWhenProblems(census: Census, at: Path, when: Positions): Problem[] {
  return inIdOrder(when).flatMap(([key, names]) => {
    const path = [...at, key]
    if (key === 'engine') return findNameProblems(path, names, ENGINE_POSITIONS)
    const missing = findItemProblem(census, path, key.split('.')[0], ['parts'])
    const control = census.sound.parts[key.split('.')[0]] as RecordPart | undefined
    if (missing.length > 0 || !control) return missing
    return findAxisProblems(path, names, key.split('.')[1], listAxes(control))
  })
}

interface Axis { readonly positions: readonly string[]; readonly isContinuous: boolean }

/** The axes of a part over all its sets of parameters; empty where its kind does not write axes down as parameters. */
function listAxes(part: RecordPart): ReadonlyMap<string, Axis> {
  const axes = new Map<string, Axis>()
  for (const params of listParamVariants(part)) {
    if (!isObject(params.axes)) continue
    for (const [id, axis] of Object.entries(params.axes)) {
      if (!isObject(axis)) continue
      const positions = Array.isArray(axis.positions) ? axis.positions.map(String) : []
      const before = axes.get(id)
      axes.set(id, { positions: [...new Set([...before?.positions ?? [], ...positions])], isContinuous: isObject(axis.range) || before?.isContinuous === true })
    }
  }
  return axes
}

function findAxisProblems(at: Path, names: readonly string[], axisId: string | undefined, axes: ReadonlyMap<string, Axis>): Problem[] {
  if (axes.size === 0) return []
  const ids = [...axes.keys()]
  if (axisId === undefined && axes.size > 1) {
    return [saidProblem(at, `an axis: ${showNames(ids)}`, 'no axis', `this control has several axes, so say which: ${showNames(ids.map((id) => `${at.at(-1)}.${id}`))}`)]
  }
  const axis = axes.get(axisId ?? ids[0])
  if (!axis) return [makeProblem(at, `an axis of this control: ${showNames(ids)}`, showValue(axisId), () => nearest(axisId ?? '', ids))]
  return findNameProblems(at, axis.isContinuous ? names.filter((name) => !isNumeric(name)) : names, axis.positions)
}

function isNumeric(name: string): boolean {
  return name.trim() !== '' && Number.isFinite(Number(name))
}

function findNameProblems(at: Path, names: readonly string[], positions: readonly string[]): Problem[] {
  return names.flatMap((name, i) => positions.includes(name) ? []
    : [makeProblem([...at, String(i)], positions.length === 0 ? 'a number' : `one of ${showNames(positions)}`, showValue(name), () => nearest(name, positions))])
}
