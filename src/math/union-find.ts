/** Disjoint sets over 0 … size − 1. */
export class UnionFind {
  private readonly parent: Int32Array

  constructor(size: number) {
    this.parent = Int32Array.from({ length: size }, (_, i) => i)
  }

  /** The smallest member of the set that holds i. */
  find(i: number): number {
    let root = i
    while (this.parent[root] !== root) root = this.parent[root]
    while (this.parent[i] !== root) [i, this.parent[i]] = [this.parent[i], root]
    return root
  }

  join(i: number, j: number): void {
    const a = this.find(i), b = this.find(j)
    if (a !== b) this.parent[Math.max(a, b)] = Math.min(a, b)
  }
}
