import type { Sourced } from './sources.ts'

/** Copper, and aluminium where given, of jump leads for an engine: the nearest published sizes, not starter cables. */
export interface JumpLeadRow extends Sourced {
  readonly engine: string
  readonly copperMm2: number
  readonly aluminiumMm2: number | null
}

/** A starter cable found in old vehicles, with its trade rating. */
export interface OldStarterCableRow extends Sourced {
  readonly strands: string
  readonly areaMm2: number
  readonly ratingA: number
}

/** What the size of a starter cable is worked out from. */
export interface StarterCableFigure extends Sourced {
  readonly item: string
  readonly value: number
  readonly unit: string
}

/** No published table of starter cable by current and length was found. */
export const jumpLeadRows: readonly JumpLeadRow[] = [
  { engine: 'small petrol', copperMm2: 20, aluminiumMm2: null, source: 'motoring-press', status: 'read' },
  { engine: 'small petrol, least advised (called easily overloaded)', copperMm2: 16, aluminiumMm2: null, source: 'motoring-press', status: 'read' },
  { engine: 'petrol from 2 litres and diesel to 3 litres', copperMm2: 25, aluminiumMm2: 40, source: 'motoring-press', status: 'read' },
  { engine: 'diesel above 3 litres', copperMm2: 35, aluminiumMm2: 55, source: 'motoring-press', status: 'read' },
  { engine: 'four-cylinder, motor-trade advice', copperMm2: 16, aluminiumMm2: null, source: 'motoring-press', status: 'read' },
  { engine: 'larger engines, motor-trade advice', copperMm2: 25, aluminiumMm2: null, source: 'motoring-press', status: 'read' },
  { engine: "petrol above 2.5 litres, another motor club's minimum", copperMm2: 16, aluminiumMm2: null, source: 'motoring-press', status: 'read' },
  { engine: "all diesel cars, another motor club's minimum", copperMm2: 25, aluminiumMm2: null, source: 'motoring-press', status: 'read' },
]

/** Older inch names 37/.036 and 61/.044 are close to 37/0.90 and 61/1.13. */
export const oldStarterCableRows: readonly OldStarterCableRow[] = [
  { strands: '37/0.71', areaMm2: 14.6, ratingA: 105, source: 'starter-cable-memory', status: 'from memory' },
  { strands: '37/0.90', areaMm2: 23.5, ratingA: 170, source: 'starter-cable-memory', status: 'from memory' },
  { strands: '61/0.90', areaMm2: 38.8, ratingA: 300, source: 'starter-cable-memory', status: 'from memory' },
  { strands: '61/1.13', areaMm2: 61.2, ratingA: 415, source: 'starter-cable-memory', status: 'from memory' },
]

/** The sum A = 0.0175 I L / U for one lead, its limits, and the floors of practice. The earth path is counted apart. */
export const starterCable = {
  resistivity: { item: 'resistivity used by a truck-engine maker', value: 0.0175, unit: 'ohm mm2/m', source: 'truck-engine-manual-2018', status: 'read' },
  drop12V: { item: 'drop of the starter main lead at 12 V', value: 0.5, unit: 'V', source: 'journal-2017', status: 'read' },
  drop6V: { item: 'drop at 6 V: half, assumed', value: 0.25, unit: 'V', source: 'common-practice', status: 'common practice' },
  floor12V: { item: 'least area at 12 V, whatever the sum says', value: 16, unit: 'mm2', source: 'common-practice', status: 'common practice' },
  floor6V: { item: 'least area at 6 V, whatever the sum says', value: 25, unit: 'mm2', source: 'common-practice', status: 'common practice' },
} as const satisfies Readonly<Record<string, StarterCableFigure>>
