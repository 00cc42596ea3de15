import { findRoot } from '../math/index.ts'
import type { Circuit, Condition } from './circuit.ts'
import type { Setting } from './solved.ts'

const MOST_STEPS = 400
/** EMFs are found to this many volts, and what a regulator senses to this share of its setting. */
const EMF_V = 1e-8
const REACH = 1e-7

/**
 * Solve with the machines excited: each EMF is the one that its own field gives, each regulating contact
 * has the mean resistance at which what it senses comes to its setting. The EMFs start from those in the
 * condition and move to the next fixed point, as the iron does; both are written into the condition.
 */
export function solveExcited(circuit: Circuit, setting: Setting, condition: Condition): void {
  const { machines, regulators } = circuit.network
  circuit.solveFixed(setting, condition)
  if (machines.length === 0) return
  for (let round = 0; round < 20; round++) {
    let moved = 0
    for (let r = 0; r < regulators.length; r++) moved = Math.max(moved, regulate(circuit, setting, condition, r))
    excite(circuit, setting, condition)
    if (regulators.length < 2 || moved < 1e-6) return
  }
}

/** Find the mean resistance of one regulating contact; answers by how much its logarithm moved. */
function regulate(circuit: Circuit, setting: Setting, condition: Condition, r: number): number {
  const { spec, part } = circuit.network.regulators[r]
  const before = condition.regulatorOhm[r]
  const low = Math.log(spec.closedOhm), high = Math.log(spec.openOhm)
  let excited = Float64Array.from(condition.emf)
  // Each trial starts from the EMFs with the contact closed: with it open the field may die, and would then stay dead.
  const over = (x: number): number => {
    condition.regulatorOhm[r] = Math.exp(x)
    condition.emf.set(excited)
    excite(circuit, setting, condition)
    return spec.reach(circuit.views[part]) - 1
  }
  const overClosed = over(low)
  excited = Float64Array.from(condition.emf)
  if (overClosed > REACH) {
    const overOpen = over(high)
    if (overOpen < -REACH) over(findRoot(over, low, high, overClosed, overOpen, 1e-12, REACH).x)
  }
  return Math.abs(Math.log(condition.regulatorOhm[r] / before))
}

/** Move every machine's EMF to the next fixed point of field → EMF → field. */
function excite(circuit: Circuit, setting: Setting, condition: Condition): void {
  const { machines } = circuit.network
  for (let round = 0; round < 20; round++) {
    let moved = 0
    for (let m = 0; m < machines.length; m++) moved = Math.max(moved, exciteOne(circuit, setting, condition, m))
    if (machines.length < 2 || moved < EMF_V * 10) return
  }
}

/** Answers by how many volts the EMF moved. */
function exciteOne(circuit: Circuit, setting: Setting, condition: Condition, m: number): number {
  const { spec, part } = circuit.network.machines[m]
  const rise = (emf: number): number => {
    condition.emf[m] = emf
    circuit.solveFixed(setting, condition)
    return spec.emf(circuit.views[part]) - emf
  }
  const before = condition.emf[m]
  const found = walkToFixedPoint(rise, before)
  rise(found)
  return Math.abs(found - before)
}

/**
 * From `start` in the direction that `rise` points, to its next root. Plain steps never pass one, since
 * the EMF grows with itself; a secant shortens the way where the slope lets it, and brackets the root.
 */
function walkToFixedPoint(rise: (emf: number) => number, start: number): number {
  let x = start, f = rise(x)
  const sign = Math.sign(f)
  for (let step = 0; step < MOST_STEPS && Math.abs(f) > EMF_V; step++) {
    const next = x + f
    const fNext = rise(next)
    if (fNext * sign < -EMF_V) return findRoot(rise, x, next, f, fNext, EMF_V / 10, EMF_V).x
    const slope = (fNext - f) / (next - x)
    if (Math.abs(fNext) <= EMF_V) return next
    const leap = slope < -1e-3 ? Math.min(Math.abs(fNext / slope), 8 * Math.abs(fNext)) : Math.abs(fNext)
    const far = next + sign * leap
    const fFar = rise(far)
    if (fFar * sign < -EMF_V) return findRoot(rise, next, far, fNext, fFar, EMF_V / 10, EMF_V).x
    x = far
    f = fFar
  }
  return x
}
