/** x[right] − x[left] ≥ apart. */
export interface Apart { readonly left: number; readonly right: number; readonly apart: number }
/** A wish that two columns stand at the same x, with its weight. */
export interface Wish { readonly a: number; readonly b: number; readonly weight: number }

/**
 * Columns x ≥ 0 that keep all distances and make Σ weight·|x[a] − x[b]| as small as it can be: most wires come out
 * straight. The dual is a circulation of least cost; shortest augmenting paths with potentials solve it exactly. Null
 * where the distances form a ring.
 */
export function placeColumns(count: number, apart: readonly Apart[], wishes: readonly Wish[]): number[] | null {
  const start = startColumns(count, apart)
  if (start === null) return null
  const flow = new Flow(count, start)
  for (const { left, right, apart: d } of apart) flow.addArc(left, right, Infinity, -d)
  for (const { a, b, weight } of wishes) {
    if (a === b) continue
    flow.addArc(a, b, weight, 0)
    flow.addArc(b, a, weight, 0)
  }
  flow.settle()
  const x = flow.potential.map((value) => -value)
  const least = Math.min(...x)
  return x.map((value) => Math.round((value - least) * 100) / 100)
}

/** Each column as far left as the distances allow. */
function startColumns(count: number, apart: readonly Apart[]): number[] | null {
  const x = new Array<number>(count).fill(0)
  for (let round = 0; round <= count; round++) {
    let moved = false
    for (const { left, right, apart: d } of apart) {
      if (x[right] >= x[left] + d) continue
      x[right] = x[left] + d
      moved = true
    }
    if (!moved) return x
  }
  return null
}

/** Residual network; arc k and arc k ^ 1 are each other's return. */
class Flow {
  readonly potential: number[]
  private readonly to: number[] = []
  private readonly room: number[] = []
  private readonly cost: number[] = []
  private readonly out: number[][]
  private readonly excess: number[]

  constructor(count: number, x: readonly number[]) {
    this.potential = x.map((value) => -value)
    this.out = x.map(() => [])
    this.excess = new Array<number>(count).fill(0)
  }

  addArc(from: number, to: number, room: number, cost: number): void {
    const arc = this.to.length
    this.to.push(to, from)
    this.room.push(room, 0)
    this.cost.push(cost, -cost)
    this.out[from].push(arc)
    this.out[to].push(arc + 1)
    if (room < Infinity && this.reduced(arc) < -1e-9) this.push(arc, room)
  }

  /** Sends every excess to a want along shortest paths; reduced costs stay at or above zero throughout. */
  settle(): void {
    for (let node = 0; node < this.excess.length; node++) {
      while (this.excess[node] > 1e-9) this.augment(node)
    }
  }

  private reduced(arc: number): number {
    return this.cost[arc] + this.potential[this.to[arc ^ 1]] - this.potential[this.to[arc]]
  }

  private push(arc: number, amount: number): void {
    this.room[arc] -= amount
    this.room[arc ^ 1] += amount
    this.excess[this.to[arc ^ 1]] -= amount
    this.excess[this.to[arc]] += amount
  }

  private augment(source: number): void {
    const { reached, by, end, distance } = this.shortest(source)
    for (const node of reached.keys()) this.potential[node] += (reached.get(node) ?? 0) - distance
    const path: number[] = []
    for (let node = end; node !== source; node = this.to[by[node] ^ 1]) path.push(by[node])
    const amount = Math.min(this.excess[source], -this.excess[end], ...path.map((arc) => this.room[arc]))
    for (const arc of path) this.push(arc, amount)
  }

  /** Distances of the nodes nearer than the nearest want, by Dijkstra's rule. */
  private shortest(source: number): { reached: Map<number, number>, by: number[], end: number, distance: number } {
    const distance = new Array<number>(this.out.length).fill(Infinity)
    const by = new Array<number>(this.out.length).fill(-1)
    const reached = new Map<number, number>()
    const open = new Set([source])
    distance[source] = 0
    while (open.size > 0) {
      let node = -1
      for (const other of open) if (node < 0 || distance[other] < distance[node]) node = other
      open.delete(node)
      reached.set(node, distance[node])
      if (this.excess[node] < -1e-9) return { reached, by, end: node, distance: distance[node] }
      for (const arc of this.out[node]) {
        const next = this.to[arc]
        if (this.room[arc] <= 1e-9 || reached.has(next)) continue
        const far = distance[node] + Math.max(0, this.reduced(arc))
        if (far >= distance[next] - 1e-12) continue
        distance[next] = far
        by[next] = arc
        open.add(next)
      }
    }
    throw new RangeError('expected a want that the excess can reach')
  }
}
