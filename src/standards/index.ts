export { chartPointRows, type ChartPointRow } from './aircraft-chart-rows.ts'
export { findAmbientFactor, type AmbientFactorFound, type AmbientRule, type Warmth } from './ambient-factor.ts'
export { findAmpacity, type Ampacity, type AmpacityFound, type AmpacityQuestion } from './ampacity.ts'
export {
  aircraftAmpacityRows, boatAmpacityRows, densityRows, densityRule, imperialAmpacityRows, wireChoiceRows,
  type AircraftAmpacityRow, type BoatAmpacityRow, type DensityRow, type DensityRule, type ImperialAmpacityRow, type WireChoiceRow,
} from './ampacity-rows.ts'
export { ampacityRules, type AmpacityRule, type AmpacityRuleName } from './ampacity-rules.ts'
export { awgAreaMm2, awgDiameterMm, awgName, readAwg } from './awg.ts'
export {
  chargeAtRestVolts, correctedGravity, crankingBoundMohm, internalMohm, restVolts, restVoltsByGravity, runDown,
  type InternalMohm, type RunDown,
} from './battery.ts'
export {
  batteryRules, hydrometerRows, internalResistance, loadTestRows, restVoltsArmyRows, restVoltsPageRows, restVoltsRows,
  type BatteryRule, type HydrometerRow, type InternalResistance, type LoadTestRow, type RestVoltsRow,
} from './battery-rows.ts'
export { boatSizingRows, type BoatSizingRow } from './boat-sizing-rows.ts'
export {
  bundleRules, findBundleFactor, lowestBundleFactor, type BundleFactor, type BundleFactorFound, type BundleRule,
} from './bundle-factor.ts'
export {
  cableRows, temperatureClassRows, type CableRow, type ConductorTable, type TemperatureClassRow, type Wall,
} from './cable-rows.ts'
export { findCable, type CableFound } from './cables.ts'
export { circlePackingRows, type CirclePackingRow } from './circle-packing-rows.ts'
export {
  britishColourRows, colourConflictRows, colourRuleRows, colourUseRows, germanColourRows, iecColourRows, screenColourRows,
  type ColourConflictRow, type ColourLetterRow, type ColourPractice, type ColourRuleRow, type ColourUseRow, type IecColourRow,
  type LetterConvention, type ScreenColourRow,
} from './colour-rows.ts'
export {
  findColourUses, nameColour, readAnywhere, readColour, writeColour,
  type ColourConvention, type ColourRead, type ColourReading, type ColourUses, type ColourWritten, type InsulationColour,
  type OwnConvention,
} from './colours.ts'
export {
  aircraftRows, awgRows, britishRows, iecRows, imperialRows, isoRows, jisRows, necRows, saeDiameterRows, saeRows,
  type AwgRow, type BritishRow, type IecRow, type ImperialRow, type IsoRow, type JisRow, type NecRow, type SaeDiameterRow, type SaeRow,
} from './conductor-rows.ts'
export { findConductor, type Conductor, type ConductorFound, type ConductorSize } from './conductors.ts'
export { copperOhmPerM, ohmAtTemperature } from './copper.ts'
export { copper, type Constant } from './copper-rows.ts'
export { grommetRows, heatShrinkRows, sleeveRows, type GrommetRow, type HeatShrinkRow, type SleeveRow } from './covering-rows.ts'
export {
  boatPullOutRows, crimpHeightRows, crimpPullRows, nickedStrandsRows, pullOutRows, screwPullRows, stripLengthRows,
  type AreaPullOutRow, type BoatPullOutRow, type CrimpHeightRow, type NickedStrandsRow, type PullOutRow,
  type StripLengthRow,
} from './crimp-rows.ts'
export {
  boatBundleRows, britishAmbientRows, britishGroupingRows, bundleCurveRows, engineSpaceRows, necBundleRows,
  type AmbientFactorRow, type BundleCurveRow, type BundleFactorRow, type EngineSpaceRow,
} from './derating-rows.ts'
export {
  componentTests, dropLimitRows, dropShareRows, type ComponentTest, type DropCircuit, type DropLimitRow, type DropShareRow,
} from './drop-limit-rows.ts'
export { findDropLimit, starterCableLimit, type DropAllowed, type DropLimitFound } from './drop-limits.ts'
export { faultPriors, faultRows, type FaultModel, type FaultPrior, type FaultRow, type FaultSpan } from './fault-rows.ts'
export { findFault, type FaultFound } from './faults.ts'
export { ferruleColourRows, ferruleSizeRows, type FerruleColourRow, type FerruleSizeRow } from './ferrule-rows.ts'
export {
  bladeRules, earthRules, grommetRules, heatShrinkRules, printRules, pullForceRules, pullRules, screwRules, slackRules,
  sleeveRules, solderRules, spliceRules, stripRules, studRules, type FittingRule,
} from './fitting-rule-rows.ts'
export {
  findFitting, findFittings, findGrommet, findNut, findRingHole, findSleeve, fittingKinds, fittings, type Fitting,
  type FittingFound, type FittingKind, type FittingsFound, type GrommetFound, type NutFound, type NutSpanner,
  type RingHoleFound, type SleeveFound,
} from './fittings.ts'
export { flashRatePerMin, type FlashCycle } from './flash-rate.ts'
export { flasherFigures, type FlasherFigure } from './flasher-rows.ts'
export {
  britishFuseRows, britishToAmericanRows, fuseBandRows, fuseColourRows, fuseDropRows, fuseKinds, fuseLoadingRows, wireProtectorRows,
  type BritishFuseRow, type BritishToAmericanRow, type FuseBandRow, type FuseColourRow, type FuseDropRow, type FuseKind,
  type FuseKindRow, type FuseLoadingRow, type PrintedMeans, type WireProtectorRow,
} from './fuse-rows.ts'
export {
  findAmericanFuse, findFuse, findMeltingBand, findWireProtector,
  type AmericanFuseFound, type Fuse, type FuseFound, type MeltingBand, type MeltingBandFound, type WireProtectorFound,
} from './fuses.ts'
export { isoDiameterMm, isoOhmPerM, type BetweenRows } from './iso-law.ts'
export {
  labelSheetRows, labelWireRows, printHeightRows, type LabelSheetRow, type LabelWireRow, type PrintHeightRow,
} from './label-rows.ts'
export { printHeightsMm, wrapLabelMm } from './labels.ts'
export { lampLaw, type LampLaw } from './lamp-law-rows.ts'
export {
  armyLampRows, britishLampRows, categoryRows, coldFilament, lampExponents, sealedBeamRows, tradeNumberRows,
  type ArmyLampRow, type BritishLampRow, type CategoryRow, type Filament, type LampFigure, type SealedBeamRow, type TradeNumberRow,
} from './lamp-rows.ts'
export { findLamp, lampNames, lumensFromCandlepower, type LampFilament, type LampFound } from './lamps.ts'
export { onderdonkAmps, preeceAmps, shortTimeK, type MeltingFound } from './melting.ts'
export {
  copperFuseWireRows, meltingLaws, preeceRows, shortTimeRows,
  type CopperFuseWireRow, type MeltingLaw, type PreeceRow, type ShortTimeRow,
} from './melting-rows.ts'
export {
  baNutRows, metricNutRows, unifiedNutRows, whitworthNutRows, type BaNutRow, type MetricNutRow, type UnifiedNutRow,
  type WhitworthNutRow,
} from './nut-rows.ts'
export { partDefaults, type PartDefault } from './part-default-rows.ts'
export { fillPct, findFillLimit, mayJam, pullLimitN, pullThroughBend, type BendPull } from './pulling.ts'
export {
  frictionRows, lubricantRows, pullCordRows, pullFormulaRows, tapeFormulaRows, type FormulaRow, type FrictionRow,
  type LubricantRow, type PullCordRow,
} from './pulling-rows.ts'
export { type NotFound } from './refusal.ts'
export { regulation, type Regulation } from './regulation-rows.ts'
export {
  bendRadiusRows, clearanceRows, fillRows, jamRows, supportRows, type BendRadiusRow, type ClearanceRow, type FillRow,
  type JamRow, type SupportRow,
} from './routing-rows.ts'
export { nameSource, findSource, sources, type Source, type Sourced, type SourceId, type Status } from './sources.ts'
export {
  jumpLeadRows, oldStarterCableRows, starterCable, type JumpLeadRow, type OldStarterCableRow, type StarterCableFigure,
} from './starter-cable-rows.ts'
export { sizeStarterCable, type StarterCableFound } from './starter-cables.ts'
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
export {
  autoCableRows, bladeCurrentRows, bladeForceRows, bladeRows, bulletRows, bulletSocketRows, insulatedStudRows,
  insulatedTerminalRows, ringHoleRows, tubeLugRows, type AutoCableRow, type BladeCurrentRow, type BladeForceRow,
  type BladeRow, type BulletRow, type BulletSocketRow, type InsulatedStudRow, type InsulatedTerminalRow, type RingHoleRow,
  type TubeLugRow,
} from './terminal-rows.ts'
export {
  inchTorqueRows, jointTorqueRows, threadTorqueRows, type InchTorqueRow, type JointTorqueRow, type ThreadTorqueRow,
} from './torque-rows.ts'
