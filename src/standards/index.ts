export { awgAreaMm2, awgDiameterMm, awgName, readAwg } from './awg.ts'
export {
  chargeAtRestVolts, correctedGravity, crankingBoundMohm, internalMohm, restVolts, restVoltsByGravity, runDown,
  type InternalMohm, type RunDown,
} from './battery.ts'
export {
  batteryRules, hydrometerRows, internalResistance, loadTestRows, restVoltsArmyRows, restVoltsRows,
  type BatteryRule, type HydrometerRow, type InternalResistance, type LoadTestRow, type RestVoltsRow,
} from './battery-rows.ts'
export {
  cableRows, temperatureClassRows, type CableRow, type ConductorTable, type TemperatureClassRow, type Wall,
} from './cable-rows.ts'
export { findCable, type CableFound } from './cables.ts'
export {
  aircraftRows, awgRows, britishRows, iecRows, imperialRows, isoRows, jisRows, saeDiameterRows, saeRows,
  type AwgRow, type BritishRow, type IecRow, type ImperialRow, type IsoRow, type JisRow, type SaeDiameterRow, type SaeRow,
} from './conductor-rows.ts'
export { findConductor, type Conductor, type ConductorFound, type ConductorSize } from './conductors.ts'
export { copperOhmPerM, ohmAtTemperature } from './copper.ts'
export { copper, type Constant } from './copper-rows.ts'
export { componentTests, dropLimitRows, type ComponentTest, type DropLimitRow } from './drop-limit-rows.ts'
export { starterCableLimit, type DropAllowed } from './drop-limits.ts'
export { flasherFigures, type FlasherFigure } from './flasher-rows.ts'
export { isoDiameterMm, isoOhmPerM, type BetweenRows } from './iso-law.ts'
export {
  britishLampRows, categoryRows, coldFilament, lampExponents, sealedBeamRows, tradeNumberRows,
  type BritishLampRow, type CategoryRow, type Filament, type LampFigure, type SealedBeamRow, type TradeNumberRow,
} from './lamp-rows.ts'
export { findLamp, lampNames, lumensFromCandlepower, type LampFilament, type LampFound } from './lamps.ts'
export { partDefaults, type PartDefault } from './part-default-rows.ts'
export { type NotFound } from './refusal.ts'
export { regulation, type Regulation } from './regulation-rows.ts'
export { nameSource, findSource, sources, type Source, type Sourced, type SourceId, type Status } from './sources.ts'
export { cranking, ignition, type StartingFigure } from './starting-rows.ts'
export { readStrands, strandsAreaMm2, type Strands } from './strands.ts'
export {
  markingRows, relayUsages, renamedRows, trailerPinRows,
  type Convention, type MarkingKind, type MarkingRow, type Pole, type RelayUsageRow, type RenamedRow, type TrailerPinRow,
} from './terminal-marking-rows.ts'
export {
  describeMarking, markingNames, sameMarking,
  type MarkingFound, type MarkingMeaning, type NewerName, type SameMarkingFound,
} from './terminal-markings.ts'
