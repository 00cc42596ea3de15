/** Everything inside the parts that moves or is found around the inner solve. Arrays are in the network's order. */
export interface Condition {
  readonly states: string[]
  /** A number kept by each state, for example the EMF of a coasting motor. */
  readonly kept: Float64Array
  readonly phases: string[]
  /** EMF of each machine, V. */
  readonly emf: Float64Array
  /** Mean resistance of each regulating contact, ohm. */
  readonly regulatorOhm: Float64Array
}

export function copyCondition(c: Condition): Condition {
  return {
    states: [...c.states], kept: c.kept.slice(), phases: [...c.phases],
    emf: c.emf.slice(), regulatorOhm: c.regulatorOhm.slice(),
  }
}
