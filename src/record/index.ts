export { FORMAT_VERSION, ID_PATTERN, TERMINAL_PATTERN, known, recordSchema, vehicleSchema } from './schema.ts'
export type {
  Assume, Claim, Colour, Condition, Duty, Edition, Fits, Params, Passage, Place, Positions, RecordLoom, RecordPart,
  RecordTerminal, RecordWire, Run, Unknown, Vehicle, WireEnd, WiringRecord,
} from './schema.ts'
export type {
  Assumption, EngineSpeeds, Overlap, ShortedBattery, UnmatchedWay, Wiring, WiringEnd, WiringFixing, WiringLoom, WiringPart, WiringTerminal,
  WiringWire,
} from './wiring.ts'
export type {
  AxisSpec, BuildContext, Default, DialSpec, ElementSpec, FailureSpec, LampSpec, Law, MachineSpec, Now, ParamProblem, PartKind, PartModel,
  PhaseSpec, RegulatorSpec, StateSpec, TerminalSpec, View,
} from './part-kind.ts'
export { readRecord, type ReadRecord } from './read-record.ts'
export { writeRecord } from './write-record.ts'
export { refuse, showNames, type Problem, type Refused } from './problem.ts'
export { isSameJson, showPath, valueAt, type Json, type Path } from './path.ts'
export { compareIds, inIdOrder } from './compare-ids.ts'
export { nearest } from './nearest.ts'
export { COLLECTIONS, wordFor, type Collection } from './collections.ts'
export { judgeFits, showFits, type Judgement } from './fits.ts'
export { groupUnmatched, type UnmatchedWays } from './match-halves.ts'
export { resolveVehicle, type Resolved } from './resolve-vehicle.ts'
export type { CannotTell, Conflict, ConflictKind } from './resolving.ts'
export {
  applyEdit, applyEdits, editSchema, mustApplyEdit, mustApplyEdits, type Applied, type AppliedAll, type Edit, type Refusal,
} from './edit.ts'
export { DEVICE_PATTERN, envelopeSchema, readEnvelope, type Envelope, type ReadEnvelope } from './envelope.ts'
export { mergeBranches, mergeEdits, type Branch, type Merged, type Undecided } from './merge-edits.ts'
export { diffRecords, editsBetween, type Change } from './diff-records.ts'
export { innerId, nameOf, titleOf } from './inner-id.ts'
export { sayAssumed, type AssumedLine } from './say-assumed.ts'
export { wireHue, wireSize } from './wire-words.ts'
export { Ways } from './ways.ts'
export { mintId } from './mint-id.ts'
export { acceptClaim, listClaimedFacts, listClaims, type ClaimedFact, type Saying } from './claims.ts'
export { listEditions, type Editions, type SerialBorder, type YearSpan } from './editions.ts'
export { recordJsonSchema } from './json-schema.ts'
export { jobSchema, type Alteration, type Job, type Photo, type Reading, type SurveyEntry, type Tick } from './job-schema.ts'
export { readJob, writeJob, type ReadJob } from './job.ts'
export { mergeJobs, type JobBranch, type MergedJob } from './merge-jobs.ts'
export { editsToRemove } from './remove-item.ts'
export { LARGEST_BYTES, parseJson, type ParsedJson } from './parse-json.ts'
export { listOutside } from './number-problems.ts'
export { checkShape, type CheckedShape } from './shape-problems.ts'
export { ENGINE_STATES } from './engine-states.ts'
