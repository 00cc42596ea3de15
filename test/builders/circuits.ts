import { prepareCircuit, solveSetting, type Circuit, type Fault, type Setting, type SolvedSetting } from '../../src/circuit/index.ts'
import { partKinds } from '../../src/parts/index.ts'
import { makeRecord, mustResolve, type RecordPlan } from './record.ts'

/** Conductors without resistance: what remains is what a test states. */
export const IDEAL = { jointOhm: 0, contactOhm: 0, relayContactOhm: 0, fixingOhm: 0, fuseOhm: 0, wireOhm: 0 }

/** The circuit of a record plan, with faults. */
export function circuitOf(plan: RecordPlan, faults: readonly Fault[] = []): Circuit {
  return prepareCircuit(mustResolve(makeRecord(plan), {}, partKinds), partKinds, faults)
}

/** A setting from `control.axis` positions; engine stopped and battery full unless `more` says otherwise. */
export function setting(controls: Setting['controls'] = {}, more: Partial<Setting> = {}): Setting {
  return { controls, engine: 'stopped', battery: 'full', phases: {}, ...more }
}

/** The plan solved at a setting with everything at rest before. */
export function solved(plan: RecordPlan, at: Setting = setting(), faults: readonly Fault[] = []): SolvedSetting {
  return solveSetting(circuitOf(plan, faults), at).solved
}

/** A switch of one row: `a` and `b` are joined while it is on. */
export function onOff(a = 'a', b = 'b') {
  return { axes: { p: { positions: ['off', 'on'], rest: 'off' } }, rows: { on: { when: { p: ['on'] }, joins: [a, b] } } }
}
