import { UnionFind } from '../math/index.ts'
import type { Network } from './network.ts'

/** Controls whose settings have to be tried together, by their axes. */
export interface ControlGroups {
  /** Axes that are themselves on the trunk: a key, a main switch. They belong to every group. */
  readonly key: readonly string[]
  readonly groups: readonly (readonly string[])[]
}

/**
 * Controls that still share an element once the trunk and the points it joins are taken away form a group. A control that
 * shares nothing is a group of its own; groups are in order of their first axis.
 */
export function groupControls(network: Network, trunk: ReadonlySet<number>): ControlGroups {
  const { elements, points, axes, reference } = network
  const bare = new Set<number>([reference])
  for (const e of trunk) for (const end of [elements[e].from, elements[e].to]) bare.add(end)
  const sets = new UnionFind(points.length)
  const joined = (point: number) => !bare.has(point)
  elements.forEach(({ from, to, does }, e) => { if (!trunk.has(e) && does !== 'source' && joined(from) && joined(to)) sets.join(from, to) })
  joinPart(network, sets, joined)
  // The two sides of a contact belong together, whether it is made or not.
  for (const { id } of axes) {
    const ends = elementsOfAxis(network, id).flatMap((e) => [elements[e].from, elements[e].to]).filter(joined)
    for (const end of ends) sets.join(ends[0], end)
  }
  const byRoot = new Map<string, string[]>()
  const key: string[] = []
  for (const { id } of axes) {
    const own = elementsOfAxis(network, id)
    if (own.some((e) => trunk.has(e))) { key.push(id); continue }
    const end = own.flatMap((e) => [elements[e].from, elements[e].to]).find(joined)
    const root = end === undefined ? id : String(sets.find(end))
    byRoot.set(root, [...byRoot.get(root) ?? [], id])
  }
  return { key, groups: [...byRoot.values()] }
}

/** The elements of a control that its axis moves. */
function elementsOfAxis({ parts, partOf }: Network, id: string): number[] {
  const dot = id.indexOf('.')
  const { model, elements } = parts[partOf.get(id.slice(0, dot)) as number]
  return model.elements.flatMap((spec) => (spec.axes?.includes(id.slice(dot + 1)) ? [elements.get(spec.id) as number] : []))
}

/** A relay's coil moves its contacts, a wiper's motor its cam: what is in one part belongs together, but for the rows of a switch. */
function joinPart({ parts, elements }: Network, sets: UnionFind, joined: (point: number) => boolean): void {
  for (const part of parts) {
    if (part.model.axes) continue
    const ends = [...part.elements.values()].flatMap((e) => [elements[e].from, elements[e].to]).filter(joined)
    for (const end of ends) sets.join(ends[0], end)
  }
}
