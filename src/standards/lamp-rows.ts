import type { Sourced } from './sources.ts'

/** A filament of a lamp: the only one, the bright or dim one of a stop and tail lamp, or a beam of a headlamp. */
export type Filament = 'single' | 'stop' | 'tail' | 'main' | 'dipped'

/**
 * A lamp category of UN Regulation 37. `powerW` is the watts at the test volts: the regulation's largest, or its nominal
 * with a tolerance, as `powerIs` says.
 */
export interface CategoryRow extends Sourced {
  readonly lamp: string
  readonly filament: Filament
  readonly nominalV: number | null
  readonly nominalW: number
  readonly testV: number | null
  readonly powerW: number | null
  readonly powerIs: 'max' | 'nominal' | null
  readonly powerTolPct: number | null
  readonly fluxLm: number | null
  readonly fluxTolPct: number | null
  readonly cap: string
  readonly use: string
}

/** An American trade number: amps and mean spherical candlepower at the design volts. */
export interface TradeNumberRow extends Sourced {
  readonly lamp: string
  readonly filament: Filament
  readonly nominalV: number
  readonly designV: number
  readonly designA: number
  readonly candlepower: number
  readonly fluxLm: number
  readonly cap: string
  readonly lifeH: number | null
}

/** Amps of a lamp as a manual gives them, one for each filament. */
export interface ArmyLampRow extends Sourced {
  readonly item: string
  readonly amps: readonly number[]
}

/** An American sealed-beam unit; `dips` is false for a unit with a main beam only. */
export interface SealedBeamRow extends Sourced {
  readonly lamp: string
  readonly nominalV: number
  readonly mainW: number | null
  readonly dippedW: number | null
  readonly dips: boolean
  readonly sizeIn: number
}

/** A filament of a British lamp number: cap volts and watts only. */
export interface BritishLampRow extends Sourced {
  readonly lamp: string
  readonly filament: Filament
  readonly nominalV: number
  readonly nominalW: number
  readonly cap: string
  readonly use: string
}

/** A pure number or small figure of filament lamps, up to `toValue` where the source gives a band. */
export interface LampFigure extends Sourced {
  readonly quantity: string
  readonly value: number
  readonly toValue?: number
}

/** Lamp categories of UN Regulation 37 / IEC 60809, and a few older trade types. */
export const categoryRows: readonly CategoryRow[] = [
  { lamp: 'P21/5W', filament: 'stop', nominalV: 6, nominalW: 21, testV: 6.75, powerW: 26, powerIs: 'nominal', powerTolPct: 6, fluxLm: 440, fluxTolPct: 15, cap: 'BAY15d', use: 'stop', source: 'directive-97-24', status: 'read' },
  { lamp: 'P21/5W', filament: 'tail', nominalV: 6, nominalW: 5, testV: 6.75, powerW: 6, powerIs: 'nominal', powerTolPct: 10, fluxLm: 35, fluxTolPct: 20, cap: 'BAY15d', use: 'tail', source: 'directive-97-24', status: 'read' },
  { lamp: 'P21/5W', filament: 'stop', nominalV: 12, nominalW: 21, testV: 13.5, powerW: 25, powerIs: 'nominal', powerTolPct: 6, fluxLm: 440, fluxTolPct: 15, cap: 'BAY15d', use: 'stop', source: 'directive-97-24', status: 'read' },
  { lamp: 'P21/5W', filament: 'tail', nominalV: 12, nominalW: 5, testV: 13.5, powerW: 6, powerIs: 'nominal', powerTolPct: 10, fluxLm: 35, fluxTolPct: 20, cap: 'BAY15d', use: 'tail', source: 'directive-97-24', status: 'read' },
  { lamp: 'P21/5W', filament: 'stop', nominalV: 24, nominalW: 21, testV: 28, powerW: 28, powerIs: 'nominal', powerTolPct: 6, fluxLm: 440, fluxTolPct: 15, cap: 'BAY15d', use: 'stop', source: 'directive-97-24', status: 'read' },
  { lamp: 'P21/5W', filament: 'tail', nominalV: 24, nominalW: 5, testV: 28, powerW: 10, powerIs: 'nominal', powerTolPct: 10, fluxLm: 40, fluxTolPct: 20, cap: 'BAY15d', use: 'tail', source: 'directive-97-24', status: 'read' },
  { lamp: 'H1', filament: 'single', nominalV: 12, nominalW: 55, testV: 13.2, powerW: 68, powerIs: 'max', powerTolPct: null, fluxLm: 1550, fluxTolPct: 15, cap: 'P14.5s', use: 'headlamp, driving lamp', source: 'wikipedia-h1', status: 'read' },
  { lamp: 'H1', filament: 'single', nominalV: 6, nominalW: 55, testV: 6.3, powerW: 63, powerIs: 'max', powerTolPct: null, fluxLm: 1350, fluxTolPct: 15, cap: 'P14.5s', use: 'headlamp, driving lamp', source: 'r37-memory', status: 'from memory', note: '6 V 55 W read in an encyclopedia, the other figures from memory' },
  { lamp: 'H1', filament: 'single', nominalV: 24, nominalW: 70, testV: 28, powerW: 84, powerIs: 'max', powerTolPct: null, fluxLm: 1900, fluxTolPct: 15, cap: 'P14.5s', use: 'headlamp', source: 'r37-memory', status: 'from memory', note: '24 V 70 W read in an encyclopedia' },
  { lamp: 'H3', filament: 'single', nominalV: 12, nominalW: 55, testV: 13.2, powerW: 68, powerIs: 'max', powerTolPct: null, fluxLm: 1450, fluxTolPct: 15, cap: 'PK22s', use: 'fog lamp', source: 'r37-memory', status: 'from memory', note: '12 V 55 W, PK22s and 1450 lm +-15 % read in an encyclopedia; 13.2 V and 68 W from memory' },
  { lamp: 'H3', filament: 'single', nominalV: 6, nominalW: 55, testV: 6.3, powerW: 63, powerIs: 'max', powerTolPct: null, fluxLm: 1050, fluxTolPct: 15, cap: 'PK22s', use: 'fog lamp', source: 'r37-memory', status: 'from memory', note: '6 V 55 W read in an encyclopedia' },
  { lamp: 'H4', filament: 'main', nominalV: 12, nominalW: 60, testV: 13.2, powerW: 75, powerIs: 'max', powerTolPct: null, fluxLm: 1650, fluxTolPct: 15, cap: 'P43t', use: 'headlamp', source: 'en60809-h4', status: 'mixed', note: 'cap from memory' },
  { lamp: 'H4', filament: 'dipped', nominalV: 12, nominalW: 55, testV: 13.2, powerW: 68, powerIs: 'max', powerTolPct: null, fluxLm: 1000, fluxTolPct: 15, cap: 'P43t', use: 'headlamp', source: 'en60809-h4', status: 'mixed', note: 'cap from memory' },
  { lamp: 'H4', filament: 'main', nominalV: 6, nominalW: 60, testV: null, powerW: null, powerIs: null, powerTolPct: null, fluxLm: null, fluxTolPct: null, cap: 'P43t', use: 'headlamp', source: 'r37-memory', status: 'from memory', note: 'an encyclopedia excerpt names 6 V with 60 W; no photometry found' },
  { lamp: 'H2', filament: 'single', nominalV: 6, nominalW: 55, testV: 6.3, powerW: 63, powerIs: 'max', powerTolPct: null, fluxLm: 1300, fluxTolPct: 15, cap: 'X511', use: 'driving lamp', source: 'r37-memory', status: 'from memory' },
  { lamp: 'H2', filament: 'single', nominalV: 12, nominalW: 55, testV: 13.2, powerW: 68, powerIs: 'max', powerTolPct: null, fluxLm: 1800, fluxTolPct: 15, cap: 'X511', use: 'driving lamp', source: 'r37-memory', status: 'from memory' },
  { lamp: 'H2', filament: 'single', nominalV: 24, nominalW: 70, testV: 28, powerW: 84, powerIs: 'max', powerTolPct: null, fluxLm: 2150, fluxTolPct: 15, cap: 'X511', use: 'driving lamp', source: 'r37-memory', status: 'from memory' },
  { lamp: 'R2', filament: 'main', nominalV: 6, nominalW: 45, testV: 6.3, powerW: 53, powerIs: 'max', powerTolPct: null, fluxLm: 720, fluxTolPct: null, cap: 'P45t-41', use: 'headlamp (pre-halogen)', source: 'r37-memory', status: 'from memory', note: 'flux is a minimum' },
  { lamp: 'R2', filament: 'dipped', nominalV: 6, nominalW: 40, testV: 6.3, powerW: 47, powerIs: 'max', powerTolPct: null, fluxLm: 570, fluxTolPct: 15, cap: 'P45t-41', use: 'headlamp (pre-halogen)', source: 'r37-memory', status: 'from memory' },
  { lamp: 'R2', filament: 'main', nominalV: 12, nominalW: 45, testV: 13.2, powerW: 57, powerIs: 'max', powerTolPct: null, fluxLm: 860, fluxTolPct: null, cap: 'P45t-41', use: 'headlamp (pre-halogen)', source: 'r37-memory', status: 'from memory', note: 'flux is a minimum' },
  { lamp: 'R2', filament: 'dipped', nominalV: 12, nominalW: 40, testV: 13.2, powerW: 51, powerIs: 'max', powerTolPct: null, fluxLm: 675, fluxTolPct: 15, cap: 'P45t-41', use: 'headlamp (pre-halogen)', source: 'r37-memory', status: 'from memory' },
  { lamp: 'R2', filament: 'main', nominalV: 24, nominalW: 55, testV: 28, powerW: 76, powerIs: 'max', powerTolPct: null, fluxLm: 1000, fluxTolPct: null, cap: 'P45t-41', use: 'headlamp (pre-halogen)', source: 'r37-memory', status: 'from memory', note: 'flux is a minimum' },
  { lamp: 'R2', filament: 'dipped', nominalV: 24, nominalW: 50, testV: 28, powerW: 69, powerIs: 'max', powerTolPct: null, fluxLm: 860, fluxTolPct: 15, cap: 'P45t-41', use: 'headlamp (pre-halogen)', source: 'r37-memory', status: 'from memory' },
  { lamp: 'HS1', filament: 'main', nominalV: 6, nominalW: 35, testV: 6.3, powerW: 35, powerIs: 'nominal', powerTolPct: 5, fluxLm: 700, fluxTolPct: 15, cap: 'PX43t', use: 'motorcycle headlamp', source: 'r37-memory', status: 'from memory' },
  { lamp: 'HS1', filament: 'dipped', nominalV: 6, nominalW: 35, testV: 6.3, powerW: 35, powerIs: 'nominal', powerTolPct: 5, fluxLm: 440, fluxTolPct: 15, cap: 'PX43t', use: 'motorcycle headlamp', source: 'r37-memory', status: 'from memory' },
  { lamp: 'HS1', filament: 'main', nominalV: 12, nominalW: 35, testV: 13.2, powerW: 35, powerIs: 'nominal', powerTolPct: 5, fluxLm: 825, fluxTolPct: 15, cap: 'PX43t', use: 'motorcycle headlamp', source: 'r37-memory', status: 'from memory' },
  { lamp: 'HS1', filament: 'dipped', nominalV: 12, nominalW: 35, testV: 13.2, powerW: 35, powerIs: 'nominal', powerTolPct: 5, fluxLm: 525, fluxTolPct: 15, cap: 'PX43t', use: 'motorcycle headlamp', source: 'r37-memory', status: 'from memory' },
  { lamp: 'HS2', filament: 'single', nominalV: 6, nominalW: 15, testV: 6.75, powerW: 15, powerIs: 'nominal', powerTolPct: 6, fluxLm: 320, fluxTolPct: 15, cap: 'PX13.5s', use: 'moped headlamp', source: 'r37-memory', status: 'from memory', note: '15 W and test voltage confirmed by an EN 60809 table read on a page about lighting' },
  { lamp: 'S1', filament: 'main', nominalV: 6, nominalW: 25, testV: 6.75, powerW: 25, powerIs: 'nominal', powerTolPct: 5, fluxLm: 435, fluxTolPct: 20, cap: 'BA20d', use: 'motorcycle headlamp', source: 'r37-memory', status: 'from memory' },
  { lamp: 'S1', filament: 'dipped', nominalV: 6, nominalW: 25, testV: 6.75, powerW: 25, powerIs: 'nominal', powerTolPct: 5, fluxLm: 315, fluxTolPct: 20, cap: 'BA20d', use: 'motorcycle headlamp', source: 'r37-memory', status: 'from memory' },
  { lamp: 'S3', filament: 'single', nominalV: 6, nominalW: 15, testV: 6.75, powerW: 15, powerIs: 'nominal', powerTolPct: 6, fluxLm: 240, fluxTolPct: 15, cap: 'P26s', use: 'moped headlamp', source: 'r37-memory', status: 'from memory' },
  { lamp: 'HS2', filament: 'single', nominalV: 12, nominalW: 15, testV: 13.5, powerW: 15, powerIs: 'nominal', powerTolPct: 6, fluxLm: 320, fluxTolPct: 15, cap: 'PX13.5s', use: 'moped headlamp', source: 'r37-memory', status: 'from memory', note: '15 W and test voltage confirmed by an EN 60809 table read on a page about lighting' },
  { lamp: 'S1', filament: 'main', nominalV: 12, nominalW: 25, testV: 13.5, powerW: 25, powerIs: 'nominal', powerTolPct: 5, fluxLm: 435, fluxTolPct: 20, cap: 'BA20d', use: 'motorcycle headlamp', source: 'r37-memory', status: 'from memory' },
  { lamp: 'S1', filament: 'dipped', nominalV: 12, nominalW: 25, testV: 13.5, powerW: 25, powerIs: 'nominal', powerTolPct: 5, fluxLm: 315, fluxTolPct: 20, cap: 'BA20d', use: 'motorcycle headlamp', source: 'r37-memory', status: 'from memory' },
  { lamp: 'S3', filament: 'single', nominalV: 12, nominalW: 15, testV: 13.5, powerW: 15, powerIs: 'nominal', powerTolPct: 6, fluxLm: 240, fluxTolPct: 15, cap: 'P26s', use: 'moped headlamp', source: 'r37-memory', status: 'from memory' },
  { lamp: 'S2', filament: 'main', nominalV: 6, nominalW: 35, testV: 6.3, powerW: 35, powerIs: 'nominal', powerTolPct: 5, fluxLm: 650, fluxTolPct: 20, cap: 'BA20d', use: 'motorcycle headlamp', source: 'r37-memory', status: 'from memory' },
  { lamp: 'S2', filament: 'dipped', nominalV: 6, nominalW: 35, testV: 6.3, powerW: 35, powerIs: 'nominal', powerTolPct: 5, fluxLm: 465, fluxTolPct: 20, cap: 'BA20d', use: 'motorcycle headlamp', source: 'r37-memory', status: 'from memory' },
  { lamp: 'S2', filament: 'main', nominalV: 12, nominalW: 35, testV: 13.5, powerW: 35, powerIs: 'nominal', powerTolPct: 5, fluxLm: 650, fluxTolPct: 20, cap: 'BA20d', use: 'motorcycle headlamp', source: 'r37-memory', status: 'from memory' },
  { lamp: 'S2', filament: 'dipped', nominalV: 12, nominalW: 35, testV: 13.5, powerW: 35, powerIs: 'nominal', powerTolPct: 5, fluxLm: 465, fluxTolPct: 20, cap: 'BA20d', use: 'motorcycle headlamp', source: 'r37-memory', status: 'from memory' },
  { lamp: 'P21W', filament: 'single', nominalV: 6, nominalW: 21, testV: 6.75, powerW: 27.6, powerIs: 'max', powerTolPct: null, fluxLm: 460, fluxTolPct: 15, cap: 'BA15s', use: 'stop, turn, reversing', source: 'r37-memory', status: 'from memory', note: 'agrees with the P21/5W sheet: 25 W + 6 % = 26.5 W, 26 W + 6 % = 27.6 W, 28 W + 6 % = 29.7 W' },
  { lamp: 'P21W', filament: 'single', nominalV: 12, nominalW: 21, testV: 13.5, powerW: 26.5, powerIs: 'max', powerTolPct: null, fluxLm: 460, fluxTolPct: 15, cap: 'BA15s', use: 'stop, turn, reversing', source: 'r37-memory', status: 'from memory', note: 'agrees with the P21/5W sheet: 25 W + 6 % = 26.5 W, 26 W + 6 % = 27.6 W, 28 W + 6 % = 29.7 W' },
  { lamp: 'P21W', filament: 'single', nominalV: 24, nominalW: 21, testV: 28, powerW: 29.7, powerIs: 'max', powerTolPct: null, fluxLm: 460, fluxTolPct: 15, cap: 'BA15s', use: 'stop, turn, reversing', source: 'r37-memory', status: 'from memory', note: 'agrees with the P21/5W sheet: 25 W + 6 % = 26.5 W, 26 W + 6 % = 27.6 W, 28 W + 6 % = 29.7 W' },
  { lamp: 'P21/4W', filament: 'stop', nominalV: 12, nominalW: 21, testV: 13.5, powerW: 26.5, powerIs: 'max', powerTolPct: null, fluxLm: 440, fluxTolPct: 15, cap: 'BAZ15d', use: 'stop', source: 'r37-memory', status: 'from memory' },
  { lamp: 'P21/4W', filament: 'tail', nominalV: 12, nominalW: 4, testV: 13.5, powerW: 5.5, powerIs: 'max', powerTolPct: null, fluxLm: 15, fluxTolPct: 20, cap: 'BAZ15d', use: 'tail', source: 'r37-memory', status: 'from memory' },
  { lamp: 'R5W', filament: 'single', nominalV: 6, nominalW: 5, testV: 6.75, powerW: 5.5, powerIs: 'max', powerTolPct: null, fluxLm: 50, fluxTolPct: 20, cap: 'BA15s', use: 'side, tail', source: 'r37-memory', status: 'from memory' },
  { lamp: 'R5W', filament: 'single', nominalV: 12, nominalW: 5, testV: 13.5, powerW: 5.5, powerIs: 'max', powerTolPct: null, fluxLm: 50, fluxTolPct: 20, cap: 'BA15s', use: 'side, tail', source: 'r37-memory', status: 'from memory' },
  { lamp: 'R5W', filament: 'single', nominalV: 24, nominalW: 5, testV: 28, powerW: 7.7, powerIs: 'max', powerTolPct: null, fluxLm: 50, fluxTolPct: 20, cap: 'BA15s', use: 'side, tail', source: 'r37-memory', status: 'from memory' },
  { lamp: 'R10W', filament: 'single', nominalV: 6, nominalW: 10, testV: 6.75, powerW: 11, powerIs: 'max', powerTolPct: null, fluxLm: 125, fluxTolPct: 20, cap: 'BA15s', use: 'tail, number plate', source: 'r37-memory', status: 'from memory' },
  { lamp: 'R10W', filament: 'single', nominalV: 12, nominalW: 10, testV: 13.5, powerW: 11, powerIs: 'max', powerTolPct: null, fluxLm: 125, fluxTolPct: 20, cap: 'BA15s', use: 'tail, number plate', source: 'r37-memory', status: 'from memory' },
  { lamp: 'R10W', filament: 'single', nominalV: 24, nominalW: 10, testV: 28, powerW: 14, powerIs: 'max', powerTolPct: null, fluxLm: 125, fluxTolPct: 20, cap: 'BA15s', use: 'tail, number plate', source: 'r37-memory', status: 'from memory' },
  { lamp: 'T4W', filament: 'single', nominalV: 6, nominalW: 4, testV: 6.75, powerW: 4.4, powerIs: 'max', powerTolPct: null, fluxLm: 35, fluxTolPct: 20, cap: 'BA9s', use: 'side', source: 'r37-memory', status: 'from memory' },
  { lamp: 'T4W', filament: 'single', nominalV: 12, nominalW: 4, testV: 13.5, powerW: 4.4, powerIs: 'max', powerTolPct: null, fluxLm: 35, fluxTolPct: 20, cap: 'BA9s', use: 'side', source: 'r37-memory', status: 'from memory' },
  { lamp: 'T4W', filament: 'single', nominalV: 24, nominalW: 4, testV: 28, powerW: 5.5, powerIs: 'max', powerTolPct: null, fluxLm: 35, fluxTolPct: 20, cap: 'BA9s', use: 'side', source: 'r37-memory', status: 'from memory' },
  { lamp: 'C5W', filament: 'single', nominalV: 6, nominalW: 5, testV: 6.75, powerW: 5.5, powerIs: 'max', powerTolPct: null, fluxLm: 45, fluxTolPct: 20, cap: 'SV8.5', use: 'number plate, interior', source: 'r37-memory', status: 'from memory' },
  { lamp: 'C5W', filament: 'single', nominalV: 12, nominalW: 5, testV: 13.5, powerW: 5.5, powerIs: 'max', powerTolPct: null, fluxLm: 45, fluxTolPct: 20, cap: 'SV8.5', use: 'number plate, interior', source: 'r37-memory', status: 'from memory' },
  { lamp: 'C5W', filament: 'single', nominalV: 24, nominalW: 5, testV: 28, powerW: 7.7, powerIs: 'max', powerTolPct: null, fluxLm: 45, fluxTolPct: 20, cap: 'SV8.5', use: 'number plate, interior', source: 'r37-memory', status: 'from memory' },
  { lamp: 'C21W', filament: 'single', nominalV: 12, nominalW: 21, testV: 13.5, powerW: 26.5, powerIs: 'max', powerTolPct: null, fluxLm: 460, fluxTolPct: 15, cap: 'SV8.5', use: 'reversing', source: 'r37-memory', status: 'from memory' },
  { lamp: 'W3W', filament: 'single', nominalV: 6, nominalW: 3, testV: 6.75, powerW: 3.45, powerIs: 'max', powerTolPct: null, fluxLm: 22, fluxTolPct: 30, cap: 'W2.1x9.5d', use: 'side, instruments', source: 'r37-memory', status: 'from memory' },
  { lamp: 'W3W', filament: 'single', nominalV: 12, nominalW: 3, testV: 13.5, powerW: 3.45, powerIs: 'max', powerTolPct: null, fluxLm: 22, fluxTolPct: 30, cap: 'W2.1x9.5d', use: 'side, instruments', source: 'r37-memory', status: 'from memory' },
  { lamp: 'W3W', filament: 'single', nominalV: 24, nominalW: 3, testV: 28, powerW: 4.6, powerIs: 'max', powerTolPct: null, fluxLm: 22, fluxTolPct: 30, cap: 'W2.1x9.5d', use: 'side, instruments', source: 'r37-memory', status: 'from memory' },
  { lamp: 'W5W', filament: 'single', nominalV: 6, nominalW: 5, testV: 6.75, powerW: 5.5, powerIs: 'max', powerTolPct: null, fluxLm: 50, fluxTolPct: 20, cap: 'W2.1x9.5d', use: 'side, number plate', source: 'r37-memory', status: 'from memory' },
  { lamp: 'W5W', filament: 'single', nominalV: 12, nominalW: 5, testV: 13.5, powerW: 5.5, powerIs: 'max', powerTolPct: null, fluxLm: 50, fluxTolPct: 20, cap: 'W2.1x9.5d', use: 'side, number plate', source: 'r37-memory', status: 'from memory' },
  { lamp: 'W5W', filament: 'single', nominalV: 24, nominalW: 5, testV: 28, powerW: 7.7, powerIs: 'max', powerTolPct: null, fluxLm: 50, fluxTolPct: 20, cap: 'W2.1x9.5d', use: 'side, number plate', source: 'r37-memory', status: 'from memory' },
  { lamp: 'W2.3W', filament: 'single', nominalV: 12, nominalW: 2.3, testV: 13.5, powerW: 2.5, powerIs: 'max', powerTolPct: null, fluxLm: 18.6, fluxTolPct: 20, cap: 'W2x4.6d', use: 'instruments', source: 'r37-memory', status: 'from memory' },
  { lamp: 'T2W', filament: 'single', nominalV: 12, nominalW: 2, testV: null, powerW: null, powerIs: null, powerTolPct: null, fluxLm: null, fluxTolPct: null, cap: 'BA7s', use: 'warning and panel lamps', source: 'common-practice', status: 'common practice', note: 'trade type, not a regulation 37 category as far as remembered' },
  { lamp: 'T2W', filament: 'single', nominalV: 6, nominalW: 2, testV: null, powerW: null, powerIs: null, powerTolPct: null, fluxLm: null, fluxTolPct: null, cap: 'BA7s', use: 'warning and panel lamps', source: 'common-practice', status: 'common practice' },
  { lamp: 'semaphore festoon 3 W', filament: 'single', nominalV: 6, nominalW: 3, testV: null, powerW: null, powerIs: null, powerTolPct: null, fluxLm: null, fluxTolPct: null, cap: 'festoon (various)', use: 'semaphore arm', source: 'common-practice', status: 'common practice' },
  { lamp: 'turn lamp 18 W', filament: 'single', nominalV: null, nominalW: 18, testV: null, powerW: null, powerIs: null, powerTolPct: null, fluxLm: null, fluxTolPct: null, cap: 'BA15s', use: 'turn lamps of very old vehicles', source: 'wikipedia-blinkrelais', status: 'read', note: 'very old vehicles used 18 W or 15 W turn lamps instead of 21 W; match the flasher' },
]

/** American lamp trade numbers, SAE J573. */
export const tradeNumberRows: readonly TradeNumberRow[] = [
  { lamp: '51', filament: 'single', nominalV: 6, designV: 7.5, designA: 0.22, candlepower: 1, fluxLm: 12.6, cap: 'BA9s', lifeH: 1000, source: 'sae-j573d', status: 'read', note: 'candle-power tolerance 20 %, current tolerance 10 %' },
  { lamp: '55', filament: 'single', nominalV: 6, designV: 7, designA: 0.41, candlepower: 2, fluxLm: 25.1, cap: 'BA9s', lifeH: 500, source: 'sae-j573d', status: 'mixed', note: 'candle-power tolerance 12 %, current tolerance 7 %; cap from memory' },
  { lamp: '63', filament: 'single', nominalV: 6, designV: 7, designA: 0.63, candlepower: 3, fluxLm: 37.7, cap: 'BA15s', lifeH: null, source: 'sae-j573-memory', status: 'from memory' },
  { lamp: '81', filament: 'single', nominalV: 6, designV: 6.5, designA: 1.02, candlepower: 6, fluxLm: 75.4, cap: 'BA15s', lifeH: null, source: 'sae-j573-memory', status: 'from memory' },
  { lamp: '1129', filament: 'single', nominalV: 6, designV: 6.4, designA: 2.63, candlepower: 21, fluxLm: 263.9, cap: 'BA15s', lifeH: null, source: 'sae-j573-memory', status: 'from memory' },
  { lamp: '1133', filament: 'single', nominalV: 6, designV: 6.2, designA: 3.91, candlepower: 32, fluxLm: 402.1, cap: 'BA15s', lifeH: null, source: 'sae-j573-memory', status: 'from memory' },
  { lamp: '1154', filament: 'stop', nominalV: 6, designV: 6.4, designA: 2.63, candlepower: 21, fluxLm: 263.9, cap: 'BAY15d', lifeH: null, source: 'sae-j573-memory', status: 'from memory' },
  { lamp: '1154', filament: 'tail', nominalV: 6, designV: 7, designA: 0.75, candlepower: 3, fluxLm: 37.7, cap: 'BAY15d', lifeH: null, source: 'sae-j573-memory', status: 'from memory' },
  { lamp: '53', filament: 'single', nominalV: 12, designV: 14.4, designA: 0.12, candlepower: 1, fluxLm: 12.6, cap: 'BA9s', lifeH: null, source: 'sae-j573-memory', status: 'from memory' },
  { lamp: '57', filament: 'single', nominalV: 12, designV: 14, designA: 0.24, candlepower: 2, fluxLm: 25.1, cap: 'BA9s', lifeH: null, source: 'sae-j573-memory', status: 'from memory' },
  { lamp: '67', filament: 'single', nominalV: 12, designV: 13.5, designA: 0.59, candlepower: 4, fluxLm: 50.3, cap: 'BA15s', lifeH: null, source: 'sae-j573-memory', status: 'from memory' },
  { lamp: '89', filament: 'single', nominalV: 12, designV: 13, designA: 0.58, candlepower: 6, fluxLm: 75.4, cap: 'BA15s', lifeH: null, source: 'sae-j573-memory', status: 'from memory' },
  { lamp: '1003', filament: 'single', nominalV: 12, designV: 12.8, designA: 0.94, candlepower: 15, fluxLm: 188.5, cap: 'BA15s', lifeH: 200, source: 'lamp-sheet-1003', status: 'read', note: 'the sheet prints 12 W and 189 lm; 0.94 A = 12 W / 12.8 V' },
  { lamp: '1141', filament: 'single', nominalV: 12, designV: 12.8, designA: 1.44, candlepower: 21, fluxLm: 263.9, cap: 'BA15s', lifeH: null, source: 'sae-j573-memory', status: 'from memory' },
  { lamp: '1156', filament: 'single', nominalV: 12, designV: 12.8, designA: 2.1, candlepower: 32, fluxLm: 402.1, cap: 'BA15s', lifeH: null, source: 'sae-j573-memory', status: 'from memory' },
  { lamp: '1157', filament: 'stop', nominalV: 12, designV: 12.8, designA: 2.1, candlepower: 32, fluxLm: 402.1, cap: 'BAY15d', lifeH: null, source: 'sae-j573-memory', status: 'from memory' },
  { lamp: '1157', filament: 'tail', nominalV: 12, designV: 14, designA: 0.59, candlepower: 3, fluxLm: 37.7, cap: 'BAY15d', lifeH: null, source: 'sae-j573-memory', status: 'from memory' },
  { lamp: '1034', filament: 'stop', nominalV: 12, designV: 12.8, designA: 1.8, candlepower: 32, fluxLm: 402.1, cap: 'BAY15d', lifeH: null, source: 'sae-j573-memory', status: 'from memory' },
  { lamp: '1034', filament: 'tail', nominalV: 12, designV: 14, designA: 0.59, candlepower: 3, fluxLm: 37.7, cap: 'BAY15d', lifeH: null, source: 'sae-j573-memory', status: 'from memory' },
  { lamp: '1895', filament: 'single', nominalV: 12, designV: 14, designA: 0.27, candlepower: 2, fluxLm: 25.1, cap: 'BA9s', lifeH: null, source: 'sae-j573-memory', status: 'from memory' },
  { lamp: '194', filament: 'single', nominalV: 12, designV: 14, designA: 0.27, candlepower: 2, fluxLm: 25.1, cap: 'W2.1x9.5d', lifeH: null, source: 'sae-j573-memory', status: 'from memory' },
]

/** American sealed beams. */
export const sealedBeamRows: readonly SealedBeamRow[] = [
  { lamp: '4030', nominalV: 6, mainW: 40, dippedW: 30, dips: true, sizeIn: 7, source: 'sealed-beam-forum', status: 'read' },
  { lamp: '5040', nominalV: 6, mainW: 50, dippedW: 40, dips: true, sizeIn: 7, source: 'sealed-beam-forum', status: 'read' },
  { lamp: '5400', nominalV: 12, mainW: 50, dippedW: 40, dips: true, sizeIn: 7, source: 'sealed-beam-forum', status: 'read' },
  { lamp: '6006', nominalV: 6, mainW: null, dippedW: null, dips: true, sizeIn: 7, source: 'sealed-beam-forum', status: 'read', note: 'improved 6 V successor of 5040' },
  { lamp: '6012', nominalV: 12, mainW: null, dippedW: null, dips: true, sizeIn: 7, source: 'sealed-beam-forum', status: 'read', note: 'improved 12 V successor of 5400' },
  { lamp: '4002', nominalV: 12, mainW: 37.5, dippedW: 50, dips: true, sizeIn: 5.75, source: 'sealed-beam-forum', status: 'read' },
  { lamp: '4001', nominalV: 12, mainW: 37.5, dippedW: null, dips: false, sizeIn: 5.75, source: 'sealed-beam-forum', status: 'read' },
]

/** British lamp numbers. */
export const britishLampRows: readonly BritishLampRow[] = [
  { lamp: '382', filament: 'single', nominalV: 12, nominalW: 21, cap: 'BA15s', use: 'stop, turn', source: 'british-lamp-memory', status: 'from memory' },
  { lamp: '380', filament: 'stop', nominalV: 12, nominalW: 21, cap: 'BAY15d', use: 'stop', source: 'british-lamp-memory', status: 'from memory' },
  { lamp: '380', filament: 'tail', nominalV: 12, nominalW: 5, cap: 'BAY15d', use: 'tail', source: 'british-lamp-memory', status: 'from memory' },
  { lamp: '207', filament: 'single', nominalV: 12, nominalW: 5, cap: 'BA15s', use: 'side, tail', source: 'british-lamp-memory', status: 'from memory' },
  { lamp: '233', filament: 'single', nominalV: 12, nominalW: 4, cap: 'BA9s', use: 'side', source: 'british-lamp-memory', status: 'from memory' },
  { lamp: '281', filament: 'single', nominalV: 12, nominalW: 2, cap: 'BA7s', use: 'panel', source: 'british-lamp-memory', status: 'from memory' },
  { lamp: '987', filament: 'single', nominalV: 12, nominalW: 2.2, cap: 'E10', use: 'panel, warning', source: 'british-lamp-memory', status: 'from memory' },
  { lamp: '501', filament: 'single', nominalV: 12, nominalW: 5, cap: 'W2.1x9.5d', use: 'side', source: 'british-lamp-memory', status: 'from memory' },
  { lamp: '254', filament: 'single', nominalV: 12, nominalW: 6, cap: 'festoon', use: 'interior', source: 'british-lamp-memory', status: 'from memory' },
]

/** Exponents n in quantity / rated = (V / V0)^n. Meant for about 0.8 to 1.15 of the rated volts; far below, the
 * filament tends to a small constant resistance (common practice). */
export const lampExponents = {
  current: { quantity: 'current', value: 0.55, source: 'wikipedia-rerating', status: 'read' },
  power: { quantity: 'electrical power', value: 1.6, source: 'wikipedia-rerating', status: 'read', note: 'current exponent 0.55 implies 1.55; difference is rounding' },
  flux: { quantity: 'luminous flux / intensity', value: 3.4, toValue: 3.5, source: 'wikipedia-rerating', status: 'read' },
  life: { quantity: 'life', value: -12, toValue: -16, source: 'wikipedia-rerating', status: 'read' },
  colourTemperature: { quantity: 'colour temperature', value: 0.42, source: 'wikipedia-rerating', status: 'read' },
  fluxGasFilledSite: { quantity: 'luminous flux', value: 3.5, source: 'lamp-technology-site', status: 'read', note: 'stated as 3.5 % light for 1 % voltage, gas-filled lamps' },
  lifeSite: { quantity: 'life', value: -14, source: 'lamp-technology-site', status: 'read', note: 'derived from "5 % over-voltage roughly halves life, 5 % under roughly doubles": ln2/ln1.05 = 14.2, ln2/-ln0.95 = 13.5' },
  fluxGasFilled: { quantity: 'luminous flux, gas-filled', value: 3.4, source: 'ies-memory', status: 'from memory' },
  fluxVacuum: { quantity: 'luminous flux, vacuum', value: 3.5, source: 'ies-memory', status: 'from memory' },
  lifeGasFilled: { quantity: 'life, gas-filled / vacuum', value: -13.1, toValue: -13.5, source: 'ies-memory', status: 'from memory' },
  powerGasFilled: { quantity: 'power, gas-filled / vacuum', value: 1.54, toValue: 1.58, source: 'ies-memory', status: 'from memory' },
} as const satisfies Readonly<Record<string, LampFigure>>

/** The cold filament, its inrush, and lumens from candlepower. */
export const coldFilament = {
  hotOverCold: { quantity: 'hot / cold resistance ratio, tungsten lamp', value: 15, source: 'wikipedia-incandescent', status: 'read', note: '100 W 120 V: 144 ohm hot, about 9.5 ohm cold, ratio 15.2' },
  inrush: { quantity: 'inrush / running current', value: 14, source: 'lamp-technology-site', status: 'read' },
  inrushBand: { quantity: 'inrush / running current, range', value: 10, toValue: 15, source: 'installation-guide-fr', status: 'read' },
  inrushFirstMs: { quantity: 'inrush / running current, falling to 2 within 3 to 5 ms', value: 10, toValue: 12, source: 'inrush-white-paper', status: 'read' },
  settlingS: { quantity: 'time to steady current, 100 W mains lamp', value: 0.1, source: 'wikipedia-incandescent', status: 'read' },
  tungstenOhmM: { quantity: 'resistivity of tungsten, ohm m, at 300 K and at 2800 K', value: 5.65e-08, toValue: 8.19e-07, source: 'tungsten-memory', status: 'from memory' },
  lumensPerCandlepower: { quantity: 'lumens from mean spherical candlepower', value: 12.566, source: 'filament-notes', status: 'read', note: 'lm = 4 pi x MSCP (source prints 12.56)' },
} as const satisfies Readonly<Record<string, LampFigure>>

/** Lamp currents of a US Army manual. */
export const armyLampRows: readonly ArmyLampRow[] = [
  { item: '2-candlepower lamp at 12 V', amps: [0.21], source: 'tm-9-8000-lighting', status: 'read' },
  { item: '4-candlepower lamp at 12 V', amps: [0.22], source: 'tm-9-8000-lighting', status: 'read', note: 'as printed; looks low' },
  { item: 'twin-filament 32 / 21 candlepower lamp, 12 V', amps: [1.3, 1.8], source: 'tm-9-8000-lighting', status: 'read', note: 'order as printed in the manual' },
  { item: 'two headlamps of 4 A each, 80 Ah battery', amps: [8], source: 'tm-9-8000-lighting', status: 'read', note: 'about 10 h' },
]
