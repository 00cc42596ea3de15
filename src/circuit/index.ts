export { Circuit } from './circuit.ts'
export { copyCondition, type Condition } from './condition.ts'
export { STILL_NOTE } from './conductor-notes.ts'
export { planSweep, sweepSettings, type Swept, type SweepPlan, type SweptGroup } from './every-setting.ts'
export { figuresOf, noteExtremes, type Extreme, type Extremes } from './extremes.ts'
export { describeConductor, endPoint, type WireConductor, type WireJoint } from './join-elements.ts'
export { lampClass } from './lamp-result.ts'
export { layFaults, setIn } from './lay-faults.ts'
export { METER_OHM, readOhms, readSeriesLamp, readVolts, type SeriesLampReading, type VoltsReading } from './meters.ts'
export { buildNetwork } from './network.ts'
export type { Network, NetAxis, NetElement, NetLamp, NetPart } from './network.ts'
export { engineRpm } from './positions.ts'
export { prepareCircuit, solveSetting, type Solved, type SolveOptions } from './solve-setting.ts'
export type {
  Balance, DialResult, ElementResult, EngineState, Fault, LampClass, LampResult, PhaseResult, Setting, SolvedSetting, Solution, StandingState,
  WireResult,
} from './solved.ts'
export { readSolution } from './read-solution.ts'
export { restCondition, settle } from './settle.ts'
