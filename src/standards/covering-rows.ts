import type { Sourced } from './sources.ts'

/** A round rubber grommet: panel hole, bore, and the sheet its groove takes. */
export interface GrommetRow extends Sourced {
  readonly holeIn: string
  readonly holeMm: number
  readonly boreMm: number
  readonly panelMm: number
}

/** A covering for a loom: bores, or widths of a tape, and its wall. No sizes where it is made to the drawing. */
export interface SleeveRow extends Sourced {
  readonly name: string
  readonly sizesMm: readonly number[]
  readonly wallMm: number
}

/** A heat-shrink tube before and after. */
export interface HeatShrinkRow extends Sourced {
  readonly ratio: string
  readonly expandedMm: number
  readonly recoveredMm: number
}

/** Makers differ by 1 to 2 mm: measure the part. A chassis of 3 mm needs a groove of 3.2 mm (common practice). */
export const grommetRows: readonly GrommetRow[] = [
  { holeIn: '1/4', holeMm: 6.4, boreMm: 3.2, panelMm: 1.6, source: 'grommet-memory', status: 'from memory' },
  { holeIn: '5/16', holeMm: 7.9, boreMm: 4.8, panelMm: 1.6, source: 'grommet-memory', status: 'from memory' },
  { holeIn: '3/8', holeMm: 9.5, boreMm: 6.4, panelMm: 1.6, source: 'grommet-memory', status: 'from memory' },
  { holeIn: '7/16', holeMm: 11.1, boreMm: 7.9, panelMm: 1.6, source: 'grommet-memory', status: 'from memory' },
  { holeIn: '1/2', holeMm: 12.7, boreMm: 9.5, panelMm: 1.6, source: 'grommet-memory', status: 'from memory' },
  { holeIn: '5/8', holeMm: 15.9, boreMm: 11.1, panelMm: 1.6, source: 'grommet-memory', status: 'from memory' },
  { holeIn: '3/4', holeMm: 19.1, boreMm: 14.3, panelMm: 1.6, source: 'grommet-memory', status: 'from memory' },
  { holeIn: '7/8', holeMm: 22.2, boreMm: 15.9, panelMm: 1.6, source: 'grommet-memory', status: 'from memory' },
  { holeIn: '1', holeMm: 25.4, boreMm: 19.1, panelMm: 1.6, source: 'grommet-memory', status: 'from memory' },
  { holeIn: '1 1/4', holeMm: 31.8, boreMm: 25.4, panelMm: 1.6, source: 'grommet-memory', status: 'from memory' },
]

/** Coverings of old looms. */
export const sleeveRows: readonly SleeveRow[] = [
  { name: 'PVC sleeve, soft, black', sizesMm: [3, 4, 5, 6, 7, 8, 9, 10, 12, 14, 16, 18, 20, 25], wallMm: 0.5, source: 'common-practice', status: 'common practice', note: 'wall 0.4-0.8' },
  { name: 'varnished cotton or glass braid sleeve', sizesMm: [2, 3, 4, 5, 6, 8, 10, 12, 15, 20], wallMm: 0.5, source: 'common-practice', status: 'common practice' },
  { name: 'woven braid over the whole loom (cotton or rayon, lacquered)', sizesMm: [], wallMm: 0.8, source: 'common-practice', status: 'common practice', note: 'adds about 1.5 mm to the diameter; braided by machine, made to the drawing' },
  { name: 'PVC harness tape, non-adhesive', sizesMm: [19, 25], wallMm: 0.13, source: 'common-practice', status: 'common practice' },
  { name: 'cloth harness tape, adhesive', sizesMm: [19, 25], wallMm: 0.28, source: 'common-practice', status: 'common practice', note: '0.25-0.30' },
  { name: 'split corrugated conduit', sizesMm: [4.5, 6.5, 8.5, 10, 13, 17, 23], wallMm: 0.4, source: 'common-practice', status: 'common practice', note: 'nominal inside; not original on old vehicles' },
]

/** Heat-shrink tube as commonly made. */
export const heatShrinkRows: readonly HeatShrinkRow[] = [
  { ratio: '2:1 thin wall', expandedMm: 1.6, recoveredMm: 0.8, source: 'heat-shrink-memory', status: 'from memory' },
  { ratio: '2:1 thin wall', expandedMm: 2.4, recoveredMm: 1.2, source: 'heat-shrink-memory', status: 'from memory' },
  { ratio: '2:1 thin wall', expandedMm: 3.2, recoveredMm: 1.6, source: 'heat-shrink-memory', status: 'from memory' },
  { ratio: '2:1 thin wall', expandedMm: 4.8, recoveredMm: 2.4, source: 'heat-shrink-memory', status: 'from memory' },
  { ratio: '2:1 thin wall', expandedMm: 6.4, recoveredMm: 3.2, source: 'heat-shrink-memory', status: 'from memory' },
  { ratio: '2:1 thin wall', expandedMm: 9.6, recoveredMm: 4.8, source: 'heat-shrink-memory', status: 'from memory' },
  { ratio: '2:1 thin wall', expandedMm: 12.8, recoveredMm: 6.4, source: 'heat-shrink-memory', status: 'from memory' },
  { ratio: '2:1 thin wall', expandedMm: 19, recoveredMm: 9.5, source: 'heat-shrink-memory', status: 'from memory' },
  { ratio: '2:1 thin wall', expandedMm: 25.4, recoveredMm: 12.7, source: 'heat-shrink-memory', status: 'from memory' },
  { ratio: '3:1 adhesive-lined', expandedMm: 3, recoveredMm: 1, source: 'heat-shrink-memory', status: 'from memory' },
  { ratio: '3:1 adhesive-lined', expandedMm: 6, recoveredMm: 2, source: 'heat-shrink-memory', status: 'from memory' },
  { ratio: '3:1 adhesive-lined', expandedMm: 9, recoveredMm: 3, source: 'heat-shrink-memory', status: 'from memory' },
  { ratio: '3:1 adhesive-lined', expandedMm: 12, recoveredMm: 4, source: 'heat-shrink-memory', status: 'from memory' },
  { ratio: '3:1 adhesive-lined', expandedMm: 18, recoveredMm: 6, source: 'heat-shrink-memory', status: 'from memory' },
  { ratio: '3:1 adhesive-lined', expandedMm: 24, recoveredMm: 8, source: 'heat-shrink-memory', status: 'from memory' },
  { ratio: '3:1 adhesive-lined', expandedMm: 39, recoveredMm: 13, source: 'heat-shrink-memory', status: 'from memory' },
]
