// What the package exports: read a record, resolve it for one vehicle, solve its circuit.
export {
  layFaults, prepareCircuit, readOhms, readSeriesLamp, readVolts, solveSetting,
  type Circuit, type Condition, type Fault, type Setting, type Solution, type SolvedSetting,
} from './circuit/index.ts'
export { partKinds } from './parts/index.ts'
export {
  readRecord, resolveVehicle, writeRecord,
  type PartKind, type Problem, type Vehicle, type Wiring, type WiringRecord,
} from './record/index.ts'
