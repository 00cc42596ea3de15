import type { Sourced } from './sources.ts'

/** A figure of ignition or cranking; least and most are the same where the source gives one value. */
export interface StartingFigure extends Sourced {
  readonly item: string
  readonly minOhm?: number
  readonly maxOhm?: number
  readonly minA?: number
  readonly maxA?: number
  readonly minV?: number
  readonly maxV?: number
  readonly maxS?: number
}

/** Coil ignition: primary resistance, current, volts. */
export const ignition = {
  plainCoil12V: { item: '12 V coil without ballast, primary resistance', minOhm: 2.8, maxOhm: 3.5, source: 'common-practice', status: 'common practice' },
  ballastedCoil: { item: 'ballasted coil, primary resistance', minOhm: 1.3, maxOhm: 1.8, source: 'common-practice', status: 'common practice' },
  ballast: { item: 'ballast resistor or resistance wire', minOhm: 1.2, maxOhm: 1.8, source: 'common-practice', status: 'common practice' },
  coil6V: { item: '6 V coil, primary resistance', minOhm: 1, maxOhm: 1.6, source: 'common-practice', status: 'common practice' },
  pointsClosed12V: { item: 'points-closed current, 12 V plain coil, 12 V / 3 ohm', minA: 4, maxA: 4, source: 'common-practice', status: 'common practice' },
  pointsClosed6V: { item: 'points-closed current, 6 V coil, 6 V / 1.5 ohm', minA: 4, maxA: 4, source: 'common-practice', status: 'common practice' },
  ballastedRunning: { item: 'coil voltage while running in a ballasted system', minV: 7, maxV: 9, source: 'common-practice', status: 'common practice', note: 'two trade pages read speak of about 8 V and about 9 V' },
  sparkFloor: { item: 'lowest battery voltage while cranking for a plain coil to spark reliably', minV: 9, source: 'common-practice', status: 'common practice' },
  closedPoints: { item: 'voltage across closed contact points', minV: 0, maxV: 0.2, source: 'common-practice', status: 'common practice' },
} as const satisfies Readonly<Record<string, StartingFigure>>

/** Cranking: volts at the battery, amps, time. */
export const cranking = {
  batteryFloor12V: { item: 'cranking voltage at the battery, 12 V, warm engine, not below', minV: 9.6, source: 'common-practice', status: 'common practice' },
  batteryFloor6V: { item: 'cranking voltage at the battery, 6 V, not below', minV: 4.8, source: 'common-practice', status: 'common practice' },
  fourCylinder12V: { item: 'cranking current, small 4-cylinder, 12 V', minA: 100, maxA: 180, source: 'common-practice', status: 'common practice' },
  fourCylinder6V: { item: 'cranking current, small 4-cylinder, 6 V', minA: 180, maxA: 300, source: 'common-practice', status: 'common practice' },
  large12V: { item: 'cranking current, large 6 or 8 cylinder, 12 V', minA: 180, maxA: 300, source: 'common-practice', status: 'common practice' },
  longestTurn: { item: 'do not crank longer than, then rest 2 min', maxS: 30, source: 'tm-10-3930-671-24', status: 'read' },
  solenoidPull12V: { item: 'solenoid or relay pull-in, 12 V unit, not above', maxV: 8, source: 'common-practice', status: 'common practice' },
} as const satisfies Readonly<Record<string, StartingFigure>>
