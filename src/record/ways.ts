/** What leads from point to point, each way by a name: wires, fixings, contacts. */
export class Ways<Point> {
  private readonly from = new Map<Point, { readonly to: Point; readonly by: string }[]>()

  /** A way between two points, open in both directions. */
  join(a: Point, b: Point, by: string): void {
    this.add(a, b, by)
    this.add(b, a, by)
  }

  private add(from: Point, to: Point, by: string): void {
    const known = this.from.get(from)
    if (known) known.push({ to, by })
    else this.from.set(from, [{ to, by }])
  }

  /** The names on a shortest way from a point to a goal, nearest first; null where none leads there. */
  find(start: Point, isGoal: (point: Point) => boolean): string[] | null {
    const cameBy = new Map<Point, { readonly back: Point; readonly by: string } | null>([[start, null]])
    for (const [point] of cameBy) {
      if (isGoal(point)) return this.trail(cameBy, point)
      for (const { to, by } of this.from.get(point) ?? []) if (!cameBy.has(to)) cameBy.set(to, { back: point, by })
    }
    return null
  }

  private trail(cameBy: ReadonlyMap<Point, { readonly back: Point; readonly by: string } | null>, goal: Point): string[] {
    const names: string[] = []
    for (let step = cameBy.get(goal); step; step = cameBy.get(step.back)) names.push(step.by)
    return names.reverse()
  }
}
