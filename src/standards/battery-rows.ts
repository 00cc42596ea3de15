import type { Sourced } from './sources.ts'

/** Rest volts of a battery of six cells at about 27 C, by state of charge. */
export interface RestVoltsRow extends Sourced {
  readonly socPct: number
  readonly restV: number
  readonly gravity?: number
  readonly freezeC?: number
}

/** What to add to a hydrometer reading when the acid is at this temperature. */
export interface HydrometerRow extends Sourced {
  readonly acidC: number
  readonly acidF: number
  readonly addGravity: number
}

/** A rule or definition; the unit of its value is at the end of the key it stands under. */
export interface BatteryRule extends Sourced {
  readonly item: string
  readonly value: number
}

/** A load test and the least volts that a good battery shows; the temperature is null where the source names none. */
export interface LoadTestRow extends Sourced {
  readonly test: string
  readonly systemV: number
  readonly minV: number
  readonly temperatureC: number | null
}

/** Internal resistance of a battery or starter, with the capacities it holds for. */
export interface InternalResistance extends Sourced {
  readonly item: string
  readonly minMohm?: number
  readonly maxMohm?: number
  readonly minAh?: number
  readonly maxAh?: number
  readonly minFactor?: number
  readonly maxFactor?: number
}

/** Rest volts, gravity and freezing point by state of charge, from full to empty. */
export const restVoltsRows: readonly RestVoltsRow[] = [
  { socPct: 100, restV: 12.65, gravity: 1.265, freezeC: -59.4, source: 'battery-maker-table', status: 'read' },
  { socPct: 75, restV: 12.45, gravity: 1.225, freezeC: -48.3, source: 'battery-maker-table', status: 'read' },
  { socPct: 50, restV: 12.24, gravity: 1.19, freezeC: -36.7, source: 'battery-maker-table', status: 'read' },
  { socPct: 25, restV: 12.06, gravity: 1.155, freezeC: -26.7, source: 'battery-maker-table', status: 'read' },
  { socPct: 0, restV: 11.89, gravity: 1.12, freezeC: -23.3, source: 'battery-maker-table', status: 'read' },
]

/** The same in a second published table, which reads up to 0.2 V lower. */
export const restVoltsArmyRows: readonly RestVoltsRow[] = [
  { socPct: 100, restV: 12.6, source: 'tm-5-3805-262-20', status: 'read' },
  { socPct: 75, restV: 12.4, source: 'tm-5-3805-262-20', status: 'read' },
  { socPct: 50, restV: 12.2, source: 'tm-5-3805-262-20', status: 'read' },
  { socPct: 25, restV: 12, source: 'tm-5-3805-262-20', status: 'read' },
  { socPct: 0, restV: 11.7, source: 'tm-5-3805-262-20', status: 'read' },
]

/** The same on a page of 2009. Its 6 V column is the rounded half, 6.0 V for 25 % and for 0 % alike: half of these instead. */
export const restVoltsPageRows: readonly RestVoltsRow[] = [
  { socPct: 100, restV: 12.65, gravity: 1.265, source: 'rest-volts-page-2009', status: 'read' },
  { socPct: 75, restV: 12.45, gravity: 1.225, source: 'rest-volts-page-2009', status: 'read' },
  { socPct: 50, restV: 12.24, gravity: 1.19, source: 'rest-volts-page-2009', status: 'read' },
  { socPct: 25, restV: 12.06, gravity: 1.155, source: 'rest-volts-page-2009', status: 'read' },
  { socPct: 0, restV: 11.89, gravity: 1.12, source: 'rest-volts-page-2009', status: 'read' },
]

/** Hydrometer correction, from 80 F (26.7 C). */
export const hydrometerRows: readonly HydrometerRow[] = [
  { acidC: -17.8, acidF: 0, addGravity: -0.032, source: 'battery-maker-table', status: 'read' },
  { acidC: -12.2, acidF: 10, addGravity: -0.028, source: 'battery-maker-table', status: 'read' },
  { acidC: -6.7, acidF: 20, addGravity: -0.024, source: 'battery-maker-table', status: 'read' },
  { acidC: -1.1, acidF: 30, addGravity: -0.02, source: 'battery-maker-table', status: 'read' },
  { acidC: 4.4, acidF: 40, addGravity: -0.016, source: 'battery-maker-table', status: 'read' },
  { acidC: 10, acidF: 50, addGravity: -0.012, source: 'battery-maker-table', status: 'read' },
  { acidC: 15.6, acidF: 60, addGravity: -0.008, source: 'battery-maker-table', status: 'read' },
  { acidC: 21.1, acidF: 70, addGravity: -0.004, source: 'battery-maker-table', status: 'read' },
  { acidC: 26.7, acidF: 80, addGravity: 0, source: 'battery-maker-table', status: 'read' },
  { acidC: 32.2, acidF: 90, addGravity: 0.004, source: 'battery-maker-table', status: 'read' },
  { acidC: 37.8, acidF: 100, addGravity: 0.008, source: 'battery-maker-table', status: 'read' },
  { acidC: 43.3, acidF: 110, addGravity: 0.012, source: 'battery-maker-table', status: 'read' },
  { acidC: 48.9, acidF: 120, addGravity: 0.016, source: 'battery-maker-table', status: 'read' },
  { acidC: 54.4, acidF: 130, addGravity: 0.02, source: 'battery-maker-table', status: 'read' },
  { acidC: 60, acidF: 140, addGravity: 0.024, source: 'battery-maker-table', status: 'read' },
  { acidC: 65.6, acidF: 150, addGravity: 0.028, source: 'battery-maker-table', status: 'read' },
  { acidC: 71.1, acidF: 160, addGravity: 0.032, source: 'battery-maker-table', status: 'read' },
]

/** Battery rules and definitions; V at a 12 V battery unless the key says cell. */
export const batteryRules = {
  cellVOverGravity: { item: 'open-circuit cell voltage = specific gravity + 0.84', value: 0.84, source: 'gravity-article', status: 'read' },
  gravityPer10F: { item: 'hydrometer correction per 10 F from 80 F', value: 0.004, source: 'technician-study-guide', status: 'read' },
  fullGravity: { item: 'specific gravity, fully charged, at 80 F', value: 1.265, source: 'technician-study-guide', status: 'read' },
  cellSpreadGravity: { item: 'largest allowed sg difference between cells, fully charged', value: 0.025, source: 'tm-9-6140-200-14', status: 'read' },
  cellV: { item: 'nominal cell voltage', value: 2.1, source: 'technician-study-guide', status: 'read', note: '6 cells = 12.6 V; 3 cells = 6.3 V (derived)' },
  emptyV: { item: 'do not discharge a 12 V battery below', value: 10.5, source: 'tm-9-6140-200-14', status: 'read' },
  restGoodV: { item: '12 V battery: probably fine if, at rest after removing surface charge, at least', value: 12.4, source: 'tm-5-3805-262-20', status: 'read' },
  crankingRatingEndV: { item: 'cold cranking rating: current for 30 s at 0 F (-18 C) with a 12 V battery not below', value: 7.2, source: 'technician-study-guide', status: 'read' },
  reserveEndV: { item: 'reserve capacity: minutes at 25 A, 80 F, until 12 V battery reaches', value: 10.5, source: 'technician-study-guide', status: 'read' },
  coldCrankingEndV: { item: 'cold cranking rating in a service manual: 30 s at -18 C to', value: 7.2, source: 'service-manual-1997', status: 'read' },
  crankingAmpsEndV: { item: 'cranking amps (CA): 30 s at 0 C to', value: 7.2, source: 'battery-seller-page', status: 'read' },
  reserveCapacityEndV: { item: 'reserve capacity in a service manual: 25 A at 27 C to', value: 10.5, source: 'service-manual-1997', status: 'read' },
  capacityEndCellV: { item: '20-hour capacity end voltage per cell', value: 1.75, source: 'technician-study-guide', status: 'read' },
  drainExcessMa: { item: 'excess key-off drain, more than', value: 35, source: 'battery-service-module', status: 'read' },
  drainUsualMa: { item: 'key-off drain limit, usual rule', value: 50, source: 'common-practice', status: 'common practice', note: 'an old vehicle without clock or radio memory should draw practically 0 mA' },
  caseDrainV: { item: 'case (surface) drain if voltmeter from post to case top shows at least', value: 0.5, source: 'battery-service-module', status: 'read' },
} as const satisfies Readonly<Record<string, BatteryRule>>

/** Battery load tests. */
export const loadTestRows: readonly LoadTestRow[] = [
  { test: '12 V load test, half the cold-cranking amps, 15 s, 70 F (21 C): not below', systemV: 12, minV: 9.6, temperatureC: 21, source: 'technician-study-guide', status: 'read' },
  { test: '12 V load test, 3 x Ah rating, 15 s: a good battery shows', systemV: 12, minV: 9, temperatureC: null, source: 'tm-5-3805-260-24', status: 'read' },
  { test: '6 V load test, 2 x Ah rating, 15 s: a good battery shows', systemV: 6, minV: 4.5, temperatureC: null, source: 'tm-5-3805-260-24', status: 'read' },
  { test: 'load test 3 x Ah (at most 500 A), 15 s: each cell at least 1.6 V', systemV: 12, minV: 9.6, temperatureC: null, source: 'tm-5-3805-263-14', status: 'read', note: '1.6 V x 6 cells; the same page also says a 12 V battery will show 9 V' },
  { test: '6 V load test scaled from 9.6 V', systemV: 6, minV: 4.8, temperatureC: null, source: 'common-practice', status: 'common practice' },
  { test: '12 V load test, half the cold-cranking amps, 15 s', systemV: 12, minV: 9.6, temperatureC: 21, source: 'bci-memory', status: 'from memory' },
  { test: '12 V load test, half the cold-cranking amps, 15 s', systemV: 12, minV: 9.5, temperatureC: 16, source: 'bci-memory', status: 'from memory' },
  { test: '12 V load test, half the cold-cranking amps, 15 s', systemV: 12, minV: 9.4, temperatureC: 10, source: 'bci-memory', status: 'from memory' },
  { test: '12 V load test, half the cold-cranking amps, 15 s', systemV: 12, minV: 9.3, temperatureC: 4, source: 'bci-memory', status: 'from memory' },
  { test: '12 V load test, half the cold-cranking amps, 15 s', systemV: 12, minV: 9.1, temperatureC: -1, source: 'bci-memory', status: 'from memory' },
  { test: '12 V load test, half the cold-cranking amps, 15 s', systemV: 12, minV: 8.9, temperatureC: -7, source: 'bci-memory', status: 'from memory' },
  { test: '12 V load test, half the cold-cranking amps, 15 s', systemV: 12, minV: 8.7, temperatureC: -12, source: 'bci-memory', status: 'from memory' },
  { test: '12 V load test, half the cold-cranking amps, 15 s', systemV: 12, minV: 8.5, temperatureC: -18, source: 'bci-memory', status: 'from memory' },
]

/** Internal resistance. `wornFactor` multiplies the healthy figures. */
export const internalResistance = {
  starterBatteryTextbook: { item: '12 V starter battery, textbook example', minMohm: 10, maxMohm: 10, source: 'openstax-starter', status: 'read' },
  batteryTextbook: { item: '12.5 V battery, textbook example', minMohm: 20, maxMohm: 20, source: 'university-physics', status: 'read' },
  poorBatteryTextbook: { item: '12.6 V battery, textbook example (poor or small battery)', minMohm: 80, maxMohm: 80, source: 'university-physics', status: 'read' },
  crankingBound400A: { item: 'upper bound from the cold-cranking definition, 400 A: (12.6 - 7.2) / 400 at -18 C', minMohm: 13.5, maxMohm: 13.5, source: 'common-practice', status: 'common practice', note: 'from the definition of the cold-cranking rating' },
  healthy12V: { item: '12 V, healthy, 40-60 Ah, room temperature', minMohm: 4, maxMohm: 10, minAh: 40, maxAh: 60, source: 'common-practice', status: 'common practice' },
  healthy6V: { item: '6 V, healthy, 70-100 Ah, room temperature', minMohm: 2, maxMohm: 6, minAh: 70, maxAh: 100, source: 'common-practice', status: 'common practice' },
  wornFactor: { item: 'worn or half-charged: multiply by', minFactor: 2, maxFactor: 4, source: 'common-practice', status: 'common practice' },
  starterTextbook: { item: 'starter motor at crank, textbook example 12 V', minMohm: 50, maxMohm: 50, source: 'openstax-starter', status: 'read' },
  smallStarterTextbook: { item: 'starter motor, textbook example 12.5 V', minMohm: 150, maxMohm: 150, source: 'university-physics', status: 'read' },
} as const satisfies Readonly<Record<string, InternalResistance>>
