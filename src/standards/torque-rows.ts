import type { Sourced } from './sources.ts'

/** Torque of a coarse inch thread at a wire connection and at a bolted joint; null where none is given. */
export interface InchTorqueRow extends Sourced {
  readonly thread: string
  readonly intoBrass: boolean
  readonly wireNm: number
  readonly jointNm: number | null
}

/** Torque by thread diameter: with a screwdriver, and with a spanner. */
export interface ThreadTorqueRow extends Sourced {
  readonly threadMm: number
  readonly slottedNm: number | null
  readonly spannerNm: number
}

/** Torque of one joint, least and most. */
export interface JointTorqueRow extends Sourced {
  readonly joint: string
  readonly minNm: number
  readonly maxNm: number
}

/**
 * Least torque of electrical connections, steel screws of grade 2; into brass the lower figures. How the columns of the page are
 * grouped is inferred. Two issues of the manual give 135 and 120 lbf in for the 5/16-18 joint.
 */
export const inchTorqueRows: readonly InchTorqueRow[] = [
  { thread: '8-32', intoBrass: false, wireNm: 1.7, jointNm: 2.1, source: 'telecom-manual-1998', status: 'read' },
  { thread: '10-24', intoBrass: false, wireNm: 2.4, jointNm: 3.1, source: 'telecom-manual-1998', status: 'read' },
  { thread: '1/4-20', intoBrass: false, wireNm: 5.6, jointNm: 7.3, source: 'telecom-manual-1998', status: 'read' },
  { thread: '5/16-18', intoBrass: false, wireNm: 11.3, jointNm: 15.3, source: 'telecom-manual-1998', status: 'read' },
  { thread: '3/8-16', intoBrass: false, wireNm: 20.3, jointNm: 27.1, source: 'telecom-manual-1998', status: 'read' },
  { thread: '7/16-14', intoBrass: false, wireNm: 31.6, jointNm: 43.5, source: 'telecom-manual-1998', status: 'read' },
  { thread: '1/2-13', intoBrass: false, wireNm: 56.5, jointNm: 66.1, source: 'telecom-manual-1998', status: 'read' },
  { thread: '8-32', intoBrass: true, wireNm: 1.24, jointNm: null, source: 'office-machine-manual', status: 'read' },
  { thread: '10-24', intoBrass: true, wireNm: 2.26, jointNm: null, source: 'office-machine-manual', status: 'read' },
  { thread: '10-32', intoBrass: true, wireNm: 1.69, jointNm: null, source: 'office-machine-manual', status: 'read' },
  { thread: '1/4-20', intoBrass: true, wireNm: 4.52, jointNm: null, source: 'office-machine-manual', status: 'read' },
]

/** IEC 60947-1: a cautious default where no figure for the unit is known. */
export const threadTorqueRows: readonly ThreadTorqueRow[] = [
  { threadMm: 3, slottedNm: 0.5, spannerNm: 0.5, source: 'iec60947-1-memory', status: 'from memory' },
  { threadMm: 3.5, slottedNm: 0.8, spannerNm: 0.8, source: 'iec60947-1-memory', status: 'from memory' },
  { threadMm: 4, slottedNm: 1.2, spannerNm: 1.2, source: 'iec60947-1-memory', status: 'from memory' },
  { threadMm: 4.5, slottedNm: 1.8, spannerNm: 1.8, source: 'iec60947-1-memory', status: 'from memory' },
  { threadMm: 5, slottedNm: 2, spannerNm: 2, source: 'iec60947-1-memory', status: 'from memory' },
  { threadMm: 6, slottedNm: 2.5, spannerNm: 3, source: 'iec60947-1-memory', status: 'from memory' },
  { threadMm: 8, slottedNm: 3.5, spannerNm: 6, source: 'iec60947-1-memory', status: 'from memory' },
  { threadMm: 10, slottedNm: 4, spannerNm: 10, source: 'iec60947-1-memory', status: 'from memory' },
  { threadMm: 12, slottedNm: null, spannerNm: 14, source: 'iec60947-1-memory', status: 'from memory' },
]

/** Battery, starter and generator joints. No published torque for old instrument, switch or fuse-box studs was found. */
export const jointTorqueRows: readonly JointTorqueRow[] = [
  { joint: 'battery post clamp or M6 battery terminal', minNm: 5.6, maxNm: 7.9, source: 'battery-installation-manual', status: 'read' },
  { joint: 'M8 battery terminal', minNm: 9.6, maxNm: 10.7, source: 'battery-installation-manual', status: 'read' },
  { joint: 'M10 battery stud', minNm: 12.2, maxNm: 14, source: 'battery-installation-manual', status: 'read' },
  { joint: 'battery post clamp, positive (2015-2017 cars)', minNm: 7.8, maxNm: 9.8, source: 'service-manuals-1996-2023', status: 'read' },
  { joint: 'battery post clamp, negative (2015-2017 cars)', minNm: 4, maxNm: 6, source: 'service-manuals-1996-2023', status: 'read' },
  { joint: 'battery top-post terminal nut (1996-2005 vehicles)', minNm: 15, maxNm: 17, source: 'service-manuals-1996-2023', status: 'read' },
  { joint: 'starter main cable nut', minNm: 9, maxNm: 21, source: 'service-manuals-1996-2023', status: 'read', note: 'single figures 9, 12 and 21 read for three vehicles' },
  { joint: 'starter solenoid small-wire nut', minNm: 6, maxNm: 6, source: 'service-manuals-1996-2023', status: 'read' },
  { joint: 'generator output nut', minNm: 9, maxNm: 12, source: 'service-manuals-1996-2023', status: 'read' },
  { joint: 'body earth bolt of battery cable', minNm: 4, maxNm: 12, source: 'service-manuals-1996-2023', status: 'read', note: 'engine-block earth nut 34 in one' },
  { joint: 'old brass instrument stud 4BA / M4', minNm: 0.8, maxNm: 1.2, source: 'common-practice', status: 'common practice' },
  { joint: 'old brass switch or ammeter stud 2BA / M5', minNm: 1.2, maxNm: 2, source: 'common-practice', status: 'common practice' },
]
