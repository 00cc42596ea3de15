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
    if (regulators.length === 0) excite(circuit, setting, condition)
    if (regulators.length < 2 || moved < 1e-6) return
  }
}

/**
 * Find the mean resistance of one regulating contact; answers by how much its logarithm moved. Closed it may
 * be enough. Otherwise the EMF of the machine that it governs is sought at which the sensed figure comes to its
 * setting; at each EMF tried one resistance gives the field for it. Both searches are monotone, where the EMF by
 * resistance may fold and collapse: a vibrating contact holds such a field, a fixed resistor would not.
 */
function regulate(circuit: Circuit, setting: Setting, condition: Condition, r: number): number {
  const { spec, part } = circuit.network.regulators[r]
  const before = condition.regulatorOhm[r]
  const over = () => spec.reach(circuit.views[part]) - 1
  condition.regulatorOhm[r] = spec.closedOhm
  excite(circuit, setting, condition)
  const overClosed = over()
  const m = overClosed > REACH ? governedMachine(circuit, setting, condition, r) : -1
  if (m >= 0) {
    const residual = circuit.network.machines[m].spec.residual(circuit.views[circuit.network.machines[m].part].now)
    const overAt = (emf: number): number => {
      fieldFor(circuit, setting, condition, r, m, emf)
      return over()
    }
    const strong = condition.emf[m]
    const weak = descend(overAt, strong, overClosed, residual)
    if (weak.over < 0) overAt(findRoot(overAt, weak.emf, weak.above, weak.over, weak.overAbove, EMF_V / 10, REACH).x)
    if (condition.regulatorOhm[r] === spec.openOhm) excite(circuit, setting, condition)
  } else if (overClosed > REACH) {
    vibrate(circuit, setting, condition, r, overClosed)
  }
  return Math.abs(Math.log(condition.regulatorOhm[r] / before))
}

/** A contact that governs no machine, as in a dynamo that stands: the resistance at which it just works, or open. */
function vibrate(circuit: Circuit, setting: Setting, condition: Condition, r: number, overClosed: number): void {
  const { spec, part } = circuit.network.regulators[r]
  const overAt = (x: number): number => {
    condition.regulatorOhm[r] = Math.exp(x)
    circuit.solveFixed(setting, condition)
    return spec.reach(circuit.views[part]) - 1
  }
  const high = Math.log(spec.openOhm), overOpen = overAt(high)
  if (overOpen < 0) overAt(findRoot(overAt, Math.log(spec.closedOhm), high, overClosed, overOpen, 1e-12, REACH).x)
}

/**
 * Down from an EMF that is too strong by secants that reach a little too far, to the first that is not: far
 * below, a current bobbin would pull again on reverse current.
 */
function descend(overAt: (emf: number) => number, strong: number, overStrong: number, residual: number) {
  let above = strong, overAbove = overStrong
  let emf = strong - 0.1 * (strong - residual), over = overAt(emf)
  for (let step = 0; step < 40 && over > 0 && emf !== residual; step++) {
    const slope = (overAbove - over) / (above - emf)
    above = emf
    overAbove = over
    const leap = Math.abs(1.05 * over / slope), left = Math.abs(emf - residual)
    emf = leap < left ? emf - Math.sign(strong) * leap : residual
    over = overAt(emf)
  }
  return { emf, over, above, overAbove }
}

/** Set the machine's EMF, and the contact's mean resistance at which its field gives just that EMF, or the nearer end of its range. */
function fieldFor(circuit: Circuit, setting: Setting, condition: Condition, r: number, m: number, emf: number): void {
  const { closedOhm, openOhm } = circuit.network.regulators[r].spec
  const { spec, part } = circuit.network.machines[m]
  condition.emf[m] = emf
  const excess = (x: number): number => {
    condition.regulatorOhm[r] = Math.exp(x)
    circuit.solveFixed(setting, condition)
    return (spec.emf(circuit.views[part]) - emf) * Math.sign(emf)
  }
  const low = Math.log(closedOhm), high = Math.log(openOhm)
  const closed = excess(low)
  if (closed <= EMF_V) return
  const open = excess(high)
  if (open < -EMF_V) excess(findRoot(excess, low, high, closed, open, 1e-13, EMF_V).x)
  else condition.regulatorOhm[r] = openOhm
}

/** The machine whose field the contact changes most; −1 where it changes none. */
function governedMachine(circuit: Circuit, setting: Setting, condition: Condition, r: number): number {
  const { machines, regulators } = circuit.network
  const emfs = () => machines.map(({ spec, part }) => spec.emf(circuit.views[part]))
  const closed = emfs(), kept = condition.regulatorOhm[r]
  condition.regulatorOhm[r] = regulators[r].spec.openOhm
  circuit.solveFixed(setting, condition)
  const change = emfs().map((emf, m) => Math.abs(emf - closed[m]))
  condition.regulatorOhm[r] = kept
  circuit.solveFixed(setting, condition)
  const most = Math.max(...change)
  return most > EMF_V ? change.indexOf(most) : -1
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
