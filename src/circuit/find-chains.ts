/** Elements in a row from one node to another, and the nodes between them, which nothing else touches. */
export interface Chain {
  readonly from: number
  readonly to: number
  readonly elements: readonly number[]
  readonly inner: readonly number[]
}

/**
 * The elements that join two different nodes, in chains as long as can be: a node with two elements and no more, both of
 * them allowed inside a chain, is passed through. Nodes are numbered from 0; `last` is never passed.
 */
export function findChains(from: Int32Array, to: Int32Array, last: number, mayChain: (element: number) => boolean): Chain[] {
  const around = listAround(from, to, last)
  const isInner = around.map((elements, node) => node !== last && elements.length === 2 && elements.every(mayChain))
  const taken = new Uint8Array(from.length)
  const chains: Chain[] = []
  const follow = (first: number, start: number) => {
    const elements = [first], inner: number[] = []
    taken[first] = 1
    let node = from[first] + to[first] - start
    for (let element = first; isInner[node] && node !== start;) {
      inner.push(node)
      element = around[node][0] === element ? around[node][1] : around[node][0]
      elements.push(element)
      taken[element] = 1
      node = from[element] + to[element] - node
    }
    chains.push({ from: start, to: node, elements, inner })
  }
  for (let e = 0; e < from.length; e++) {
    if (from[e] === to[e] || taken[e]) continue
    if (!isInner[from[e]]) follow(e, from[e])
    else if (!isInner[to[e]]) follow(e, to[e])
  }
  // What is left is rings of nothing but inner nodes: each begins and ends where it is first met.
  for (let e = 0; e < from.length; e++) if (from[e] !== to[e] && !taken[e]) follow(e, from[e])
  return chains
}

function listAround(from: Int32Array, to: Int32Array, last: number): number[][] {
  const around: number[][] = Array.from({ length: last + 1 }, () => [])
  for (let e = 0; e < from.length; e++) {
    if (from[e] === to[e]) continue
    around[from[e]].push(e)
    around[to[e]].push(e)
  }
  return around
}
