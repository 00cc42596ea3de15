/** One figure: what was measured, in which unit, the goal, and which way is better. `value` is null where a tool is missing. */
export interface Figure {
  readonly name: string
  readonly value: number | null
  readonly unit: string
  readonly goal: number
  readonly better: 'lower' | 'higher'
}

/** A question that the benchmark asks; it checks what it consumes and answers one or more figures. */
export interface Question { readonly name: string; ask(): Promise<Figure[]> | Figure[] }

/** The least time of one call in µs: `rounds` rounds of `calls` calls, after a round that is not counted. */
export function leastMicroseconds(rounds: number, calls: number, work: (i: number) => void): number {
  let least = Infinity
  for (let round = 0; round <= rounds; round++) {
    const started = performance.now()
    for (let i = 0; i < calls; i++) work(i)
    if (round > 0) least = Math.min(least, (performance.now() - started) / calls * 1000)
  }
  return least
}

/** The median of single calls in µs, after `warm` that are not counted. */
export function medianMicroseconds(warm: number, calls: number, work: (i: number) => void): number {
  const times: number[] = []
  for (let i = 0; i < warm + calls; i++) {
    const started = performance.now()
    work(i)
    if (i >= warm) times.push((performance.now() - started) * 1000)
  }
  return times.sort((a, b) => a - b)[calls >> 1]
}
