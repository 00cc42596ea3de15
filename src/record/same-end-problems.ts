import type { Census } from './census.ts'
import { inIdOrder } from './compare-ids.ts'
import { saidProblem, showValue, type Problem } from './problem.ts'

/** Wires and fixings that begin and end on one point and so join nothing. A strap on one metal may: a metal is large. */
export function findSameEnds({ sound }: Census): Problem[] {
  const wires = inIdOrder(sound.wires).flatMap(([id, { ends: [{ at: from }, { at: to }] }]) =>
    from === to && typeof from === 'string' && !Object.hasOwn(sound.metals ?? {}, from) ? [refuse(['wires', id, 'ends', '1', 'at'], 'wire', from)] : [])
  const fixings = inIdOrder(sound.fixings).flatMap(([id, { joins: [from, to] }]) => from === to ? [refuse(['fixings', id, 'joins', '1'], 'fixing', from)] : [])
  return [...wires, ...fixings]
}

function refuse(at: readonly string[], what: 'wire' | 'fixing', point: string): Problem {
  const unknown = what === 'wire' ? '; while nobody knows it, it is { "place": "unknown", "state": "unknown" }' : ''
  return saidProblem(at, `another point than ${point}`, showValue(point), `both ends of this ${what} are on ${point}, so that it joins nothing: correct the end that leads elsewhere${unknown}`)
}
