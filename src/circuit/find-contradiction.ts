import { isSameJson } from '../record/index.ts'
import type { Fault } from './solved.ts'

/** The faults of a vehicle as a person lists them, each once: laid one after the other, ohms would count twice and swapped ends go back. */
export function withoutRepeats(faults: readonly Fault[]): Fault[] {
  return faults.filter((fault, i) => !faults.slice(0, i).some((earlier) => isSameFault(earlier, fault)))
}

/** Joining or swapping A and B is the same as B and A. */
export function isSameFault(a: Fault, b: Fault): boolean {
  if (isSameJson(a, b)) return true
  return 'a' in a && 'a' in b && isSameJson({ ...a, a: a.b, b: a.a }, b)
}

/** The first two faults that cannot both be: one thing open and of some ohms, or one thing given two figures or two states. */
export function findContradiction(faults: readonly Fault[]): readonly [Fault, Fault] | null {
  for (const [i, later] of faults.entries()) {
    const earlier = faults.slice(0, i).find((one) => !isSameFault(one, later) && contradict(one, later))
    if (earlier) return [earlier, later]
  }
  return null
}

function contradict(a: Fault, b: Fault): boolean {
  if (a.kind === 'open') return b.kind === 'ohms' && isWithin(a.id, b.id)
  switch (b.kind) {
    case 'open': return contradict(b, a)
    case 'ohms': return a.kind === 'ohms' && a.id === b.id
    case 'set': return a.kind === 'set' && a.part === b.part && isSameJson(a.param, b.param)
    case 'hold': return a.kind === 'hold' && a.part === b.part && a.state === b.state
    default: return false
  }
}

/** Whether one is the other or inside of it: an end of a wire, an element of a part. */
function isWithin(a: string, b: string): boolean {
  return a === b || a.startsWith(`${b}.`) || b.startsWith(`${a}.`)
}
