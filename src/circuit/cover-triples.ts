/** An axis and the positions at which it is tried: each step, or both ends and the middle of a range. */
export interface AxisSteps { readonly axis: string; readonly positions: readonly (string | number)[] }

type Controls = Record<string, string | number>

/**
 * A few combinations in which every triple of positions of three axes occurs, and the one with every axis at its first
 * position. Greedy: each combination is built axis by axis with the position that meets most triples not met yet.
 */
export function coverTriples(steps: readonly AxisSteps[]): Controls[] {
  const missing = listTriples(steps)
  const combinations: number[][] = [steps.map(() => 0)]
  strike(missing, combinations[0])
  while (missing.size > 0) {
    const next = build(steps, missing)
    strike(missing, next)
    combinations.push(next)
  }
  return combinations.map((at) => Object.fromEntries(at.map((position, i) => [steps[i].axis, steps[i].positions[position]])))
}

const keyOf = (i: number, a: number, j: number, b: number, k: number, c: number) => `${i}.${a} ${j}.${b} ${k}.${c}`

function listTriples(steps: readonly AxisSteps[]): Set<string> {
  const triples = new Set<string>()
  const each = (i: number, use: (position: number) => void) => { for (let p = 0; p < steps[i].positions.length; p++) use(p) }
  for (let i = 0; i < steps.length; i++) for (let j = i + 1; j < steps.length; j++) for (let k = j + 1; k < steps.length; k++) {
    each(i, (a) => { each(j, (b) => { each(k, (c) => { triples.add(keyOf(i, a, j, b, k, c)) }) }) })
  }
  return triples
}

/** Begin with a triple that is missing, and give every other axis the position that meets most of what is. */
function build(steps: readonly AxisSteps[], missing: ReadonlySet<string>): number[] {
  const [first] = missing
  const at = steps.map(() => -1)
  for (const word of first.split(' ')) {
    const [i, p] = word.split('.').map(Number)
    at[i] = p
  }
  for (let i = 0; i < steps.length; i++) {
    if (at[i] >= 0) continue
    let best = 0, most = -1
    for (let p = 0; p < steps[i].positions.length; p++) {
      at[i] = p
      const met = countMet(missing, at, i)
      if (met > most) { most = met; best = p }
    }
    at[i] = best
  }
  return at
}

/** Triples not met yet that axis i would meet with two of those already placed. */
function countMet(missing: ReadonlySet<string>, at: readonly number[], i: number): number {
  let met = 0
  for (let j = 0; j < at.length; j++) for (let k = j + 1; k < at.length; k++) {
    if (j === i || k === i || at[j] < 0 || at[k] < 0) continue
    const [x, y, z] = [i, j, k].sort((a, b) => a - b)
    if (missing.has(keyOf(x, at[x], y, at[y], z, at[z]))) met++
  }
  return met
}

function strike(missing: Set<string>, at: readonly number[]): void {
  for (let i = 0; i < at.length; i++) for (let j = i + 1; j < at.length; j++) for (let k = j + 1; k < at.length; k++) {
    missing.delete(keyOf(i, at[i], j, at[j], k, at[k]))
  }
}
