/** Disjoint sets over 0 … size − 1. */
export class UnionFind {
  private readonly parent: Int32Array

  constructor(size: number) {
    this.parent = new Int32Array(size)
    for (let i = 0; i < size; i++) this.parent[i] = i
  }

  /** The smallest member of the set that holds i. */
  find(i: number): number {
    const { parent } = this
    let root = i
    while (parent[root] !== root) root = parent[root]
    while (parent[i] !== root) {
      const next = parent[i]
      parent[i] = root
      i = next
    }
    return root
  }

  join(i: number, j: number): void {
    const a = this.find(i), b = this.find(j)
    if (a !== b) this.parent[Math.max(a, b)] = Math.min(a, b)
  }
}
