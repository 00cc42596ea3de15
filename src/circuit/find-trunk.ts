import { UnionFind } from '../math/index.ts'
import { batteryPosts, type NetElement, type Network, type Posts } from './network.ts'

/** An element belongs to the trunk when it is on the path of this share of the loads or more. */
const TRUNK_SHARE = 2 / 3

/**
 * The trunk of a network: every element without which two thirds of the loads or more have no way to the battery's live
 * post or none to its earthed one, whatever the contacts do; the battery's leads, the main earth, an ammeter, a key feed.
 */
export function findTrunk(network: Network): ReadonlySet<number> {
  const trunk = new Set<number>()
  const loads = network.elements.filter(isLoad)
  const posts = batteryPosts(network)
  if (!posts) return trunk
  const fedBefore = fedLoads(network, loads, posts, -1)
  const candidates = network.elements.flatMap((element, e) => (isLoad(element) ? [] : [e]))
  for (const e of candidates) {
    const fed = fedLoads(network, loads, posts, e)
    const lost = loads.filter((_, i) => fedBefore[i] && !fed[i]).length
    if (lost > 0 && lost >= TRUNK_SHARE * fedBefore.filter(Boolean).length) trunk.add(e)
  }
  return trunk
}

/** Loads and windings end a path; everything else passes it on. */
export function isLoad({ does }: NetElement): boolean {
  return does === 'load' || does === 'winding'
}

/** For each load: does one end reach the live post and the other the earthed one, past every contact, without this element? */
function fedLoads({ elements, points }: Network, loads: readonly NetElement[], { live, earthed }: Posts, without: number): boolean[] {
  const sets = new UnionFind(points.length)
  elements.forEach((element, e) => { if (e !== without && !isLoad(element) && element.does !== 'source') sets.join(element.from, element.to) })
  const up = sets.find(live), down = sets.find(earthed)
  return loads.map(({ from, to }) => {
    const a = sets.find(from), b = sets.find(to)
    return (a === up && b === down) || (a === down && b === up)
  })
}
