import type { RegulatorSpec } from '../record/index.ts'
import { findPairNear, findRoot, findRootNear, type Near } from '../math/index.ts'
import type { Circuit } from './circuit.ts'
import type { Condition } from './condition.ts'
import type { Setting } from './solved.ts'

const MOST_STEPS = 400
/** EMFs are found to this many volts, and what a regulator senses to this share of its setting. */
const EMF_V = 1e-8
const REACH = 1e-7
/** How near a first guess has to come. */
const ROUGH = 1e-3

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
    for (let r = 0; r < regulators.length; r++) moved = Math.max(moved, regulate(circuit, condition, r))
    if (regulators.length === 0) excite(circuit, condition)
    if (regulators.length < 2 || moved < 1e-6) return
  }
}

/**
 * Find the mean resistance of one regulating contact; answers by how much its logarithm moved. Closed it may
 * be enough. Otherwise the EMF of the machine that it governs is sought at which the sensed figure comes to its
 * setting; at each EMF tried one resistance gives the field for it. Both searches are monotone, where the EMF by
 * resistance may fold and collapse: a vibrating contact holds such a field, a fixed resistor would not.
 */
function regulate(circuit: Circuit, condition: Condition, r: number): number {
  const before = condition.regulatorOhm[r]
  if (!regulateNear(circuit, condition, r)) regulateAnew(circuit, condition, r)
  return Math.abs(Math.log(condition.regulatorOhm[r] / before))
}

/** From a regulated condition to the next, a little way off: a resistance inside the contact's range is the answer, since closed would be too much. */
function regulateNear(circuit: Circuit, condition: Condition, r: number): boolean {
  const { spec } = circuit.network.regulators[r]
  const ohm = condition.regulatorOhm[r], emf = condition.emf[0]
  if (condition.emf.length !== 1 || emf === 0 || !isVibrating(spec, ohm)) return false
  if (balance(circuit, condition, r, 0)) return true
  condition.regulatorOhm[r] = ohm
  condition.emf[0] = emf
  return false
}

function regulateAnew(circuit: Circuit, condition: Condition, r: number): void {
  const { spec, part } = circuit.network.regulators[r]
  condition.regulatorOhm[r] = spec.closedOhm
  excite(circuit, condition)
  const overClosed = spec.reach(circuit.views[part]) - 1
  if (overClosed <= REACH) return
  const m = governedMachine(circuit, condition, r)
  if (m < 0) return vibrate(circuit, condition, r, overClosed)
  const machine = circuit.network.machines[m], strong = condition.emf[m]
  const overAt = overWith(circuit, condition, r, m)
  const weak = descend(overAt, strong, overClosed, machine.spec.residual(circuit.views[machine.part].now))
  if (weak.over < 0) findRoot(overAt, weak.emf, weak.above, weak.over, weak.overAbove, EMF_V, ROUGH)
  if (!balance(circuit, condition, r, m)) {
    condition.regulatorOhm[r] = spec.openOhm
    condition.emf[m] = strong
    excite(circuit, condition)
  }
}

/** What is sensed over its setting, less 1, with the machine at an EMF and the contact as it is. */
function overWith(circuit: Circuit, condition: Condition, r: number, m: number): (emf: number) => number {
  const { spec, part } = circuit.network.regulators[r]
  return (emf) => {
    condition.emf[m] = emf
    circuit.solveExcitation()
    return spec.reach(circuit.views[part]) - 1
  }
}

/**
 * In turn the resistance at which the field gives the EMF, and the EMF at which the sensed figure comes to its setting, until
 * both hold. The field takes little beside what the machine gives, so each turn leaves a small share of the error. False where
 * the contact would have to be open or closed for good.
 */
function balance(circuit: Circuit, condition: Condition, r: number, m: number): boolean {
  if (balanceBoth(circuit, condition, r, m)) return true
  const { spec, part } = circuit.network.regulators[r]
  const overAt = overWith(circuit, condition, r, m)
  const sign = Math.sign(condition.emf[m]), size = Math.abs(condition.emf[m])
  const byField: Near = { low: Math.log(spec.closedOhm), high: Math.log(spec.openOhm), step: 0.1, tolF: EMF_V }
  const byEmf: Near = { low: 0.3 * size, high: 2 * size, step: 0.003 * size, tolF: REACH / 10 }
  for (let turn = 0; turn < 30; turn++) {
    if (!fieldFor(circuit, condition, r, m, byField) || !isVibrating(spec, condition.regulatorOhm[r])) return false
    if (Math.abs(spec.reach(circuit.views[part]) - 1) <= REACH) return true
    if (!findRootNear((emf) => overAt(sign * emf), Math.abs(condition.emf[m]), byEmf)) return false
  }
  return false
}

/** Both at once, which is quick where both are near; then the contact is neither closed nor open. Elsewhere all is left as it was. */
function balanceBoth(circuit: Circuit, condition: Condition, r: number, m: number): boolean {
  const { spec, part } = circuit.network.regulators[r], machine = circuit.network.machines[m]
  const emf = condition.emf[m], ohm = condition.regulatorOhm[r], sign = Math.sign(emf), size = Math.abs(emf)
  const errorsAt = (x: number, y: number): readonly [number, number] => {
    condition.regulatorOhm[r] = Math.exp(x)
    condition.emf[m] = sign * y
    circuit.solveExcitation()
    return [y - sign * machine.spec.emf(circuit.views[machine.part]), spec.reach(circuit.views[part]) - 1]
  }
  const byField = { low: Math.log(spec.closedOhm), high: Math.log(spec.openOhm), step: 0.01, most: 0.7 }
  const byEmf = { low: 0.3 * size, high: 2 * size, step: 0.001 * size, most: 0.1 * size }
  if (findPairNear(errorsAt, [Math.log(ohm), size], [byField, byEmf], [EMF_V, REACH]) && isVibrating(spec, condition.regulatorOhm[r])) return true
  condition.regulatorOhm[r] = ohm
  condition.emf[m] = emf
  return false
}

/** Neither closed nor open for good, but for what taking a logarithm and its power leaves. */
function isVibrating({ closedOhm, openOhm }: RegulatorSpec, ohm: number): boolean {
  return ohm > closedOhm * (1 + 1e-9) && ohm < openOhm * (1 - 1e-9)
}

/** A contact that governs no machine, as in a dynamo that stands: the resistance at which it just works, or open. */
function vibrate(circuit: Circuit, condition: Condition, r: number, overClosed: number): void {
  const { spec, part } = circuit.network.regulators[r]
  const overAt = (x: number): number => {
    condition.regulatorOhm[r] = Math.exp(x)
    circuit.solveExcitation()
    return spec.reach(circuit.views[part]) - 1
  }
  const high = Math.log(spec.openOhm), overOpen = overAt(high)
  if (overOpen < 0) findRoot(overAt, Math.log(spec.closedOhm), high, overClosed, overOpen, 1e-12, REACH)
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

/** The contact's mean resistance at which the machine's field gives just the EMF that it has; false where its range holds none. */
function fieldFor(circuit: Circuit, condition: Condition, r: number, m: number, near: Near): boolean {
  const { spec, part } = circuit.network.machines[m]
  const emf = condition.emf[m]
  const missing = (x: number): number => {
    condition.regulatorOhm[r] = Math.exp(x)
    circuit.solveExcitation()
    return (emf - spec.emf(circuit.views[part])) * Math.sign(emf)
  }
  return findRootNear(missing, Math.log(condition.regulatorOhm[r]), near) !== null
}

/** The machine whose field the contact changes most; −1 where it changes none. */
function governedMachine(circuit: Circuit, condition: Condition, r: number): number {
  const { machines, regulators } = circuit.network
  const emfs = () => machines.map(({ spec, part }) => spec.emf(circuit.views[part]))
  const closed = emfs(), kept = condition.regulatorOhm[r]
  condition.regulatorOhm[r] = regulators[r].spec.openOhm
  circuit.solveExcitation()
  const change = emfs().map((emf, m) => Math.abs(emf - closed[m]))
  condition.regulatorOhm[r] = kept
  circuit.solveExcitation()
  const most = Math.max(...change)
  return most > EMF_V ? change.indexOf(most) : -1
}

/** Move every machine's EMF to the next fixed point of field → EMF → field. */
function excite(circuit: Circuit, condition: Condition): void {
  const { machines } = circuit.network
  for (let round = 0; round < 20; round++) {
    let moved = 0
    for (let m = 0; m < machines.length; m++) moved = Math.max(moved, exciteOne(circuit, condition, m))
    if (machines.length < 2 || moved < EMF_V * 10) return
  }
}

/** Answers by how many volts the EMF moved. */
function exciteOne(circuit: Circuit, condition: Condition, m: number): number {
  const { spec, part } = circuit.network.machines[m]
  const rise = (emf: number): number => {
    condition.emf[m] = emf
    circuit.solveExcitation()
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
