import type { Sourced } from './sources.ts'

/** A metric nut by DIN 934 and by ISO 4032: size across flats and greatest height, mm. */
export interface MetricNutRow extends Sourced {
  readonly thread: string
  readonly pitchMm: number
  readonly dinFlatsMm: number
  readonly isoFlatsMm: number
  readonly dinHeightMm: number
  readonly isoHeightMm: number
}

/** An inch nut of one pattern: thread diameter and size across flats. */
export interface UnifiedNutRow extends Sourced {
  readonly thread: string
  readonly majorMm: number
  readonly pattern: 'machine-screw nut' | 'hex nut' | 'heavy hex nut'
  readonly flatsIn: string
  readonly flatsMm: number
}

/** A British Association nut. */
export interface BaNutRow extends Sourced {
  readonly thread: string
  readonly pitchMm: number
  readonly majorMm: number
  readonly flatsIn: number
  readonly flatsMm: number
}

/** A Whitworth jaw and the threads whose nuts it fits. */
export interface WhitworthNutRow extends Sourced {
  readonly threads: readonly string[]
  readonly flatsIn: number
  readonly flatsMm: number
}

/**
 * Old continental studs: expect DIN, 17 and 19 mm at M10 and M12. Reduced hexagons exist (M8 with 12 mm, M6 with 8 mm bolt heads):
 * measure. A supplier's guide that gives DIN 934 as 16 and 18 mm gives the ISO sizes.
 */
export const metricNutRows: readonly MetricNutRow[] = [
  { thread: 'M3', pitchMm: 0.5, dinFlatsMm: 5.5, isoFlatsMm: 5.5, dinHeightMm: 2.4, isoHeightMm: 2.4, source: 'metric-nut-tables', status: 'read' },
  { thread: 'M3.5', pitchMm: 0.6, dinFlatsMm: 6, isoFlatsMm: 6, dinHeightMm: 2.8, isoHeightMm: 2.8, source: 'metric-nut-tables', status: 'read' },
  { thread: 'M4', pitchMm: 0.7, dinFlatsMm: 7, isoFlatsMm: 7, dinHeightMm: 3.2, isoHeightMm: 3.2, source: 'metric-nut-tables', status: 'read' },
  { thread: 'M5', pitchMm: 0.8, dinFlatsMm: 8, isoFlatsMm: 8, dinHeightMm: 4, isoHeightMm: 4.7, source: 'metric-nut-tables', status: 'read' },
  { thread: 'M6', pitchMm: 1, dinFlatsMm: 10, isoFlatsMm: 10, dinHeightMm: 5, isoHeightMm: 5.2, source: 'metric-nut-tables', status: 'read' },
  { thread: 'M8', pitchMm: 1.25, dinFlatsMm: 13, isoFlatsMm: 13, dinHeightMm: 6.5, isoHeightMm: 6.8, source: 'metric-nut-tables', status: 'read' },
  { thread: 'M10', pitchMm: 1.5, dinFlatsMm: 17, isoFlatsMm: 16, dinHeightMm: 8, isoHeightMm: 8.4, source: 'metric-nut-tables', status: 'read' },
  { thread: 'M12', pitchMm: 1.75, dinFlatsMm: 19, isoFlatsMm: 18, dinHeightMm: 10, isoHeightMm: 10.8, source: 'metric-nut-tables', status: 'read' },
]

/** The spanner follows the hexagon, not fine or coarse thread. Machine-screw nuts of 5/16 and 3/8 are one step larger than finished. */
export const unifiedNutRows: readonly UnifiedNutRow[] = [
  { thread: 'No. 4', majorMm: 2.84, pattern: 'machine-screw nut', flatsIn: '1/4', flatsMm: 6.35, source: 'unified-nut-tables', status: 'read' },
  { thread: 'No. 5', majorMm: 3.17, pattern: 'machine-screw nut', flatsIn: '5/16', flatsMm: 7.94, source: 'unified-nut-tables', status: 'read' },
  { thread: 'No. 6', majorMm: 3.51, pattern: 'machine-screw nut', flatsIn: '5/16', flatsMm: 7.94, source: 'unified-nut-tables', status: 'read' },
  { thread: 'No. 8', majorMm: 4.17, pattern: 'machine-screw nut', flatsIn: '11/32', flatsMm: 8.73, source: 'unified-nut-tables', status: 'read' },
  { thread: 'No. 10', majorMm: 4.83, pattern: 'machine-screw nut', flatsIn: '3/8', flatsMm: 9.52, source: 'unified-nut-tables', status: 'read' },
  { thread: 'No. 12', majorMm: 5.49, pattern: 'machine-screw nut', flatsIn: '7/16', flatsMm: 11.11, source: 'unified-nut-tables', status: 'read' },
  { thread: '1/4', majorMm: 6.35, pattern: 'hex nut', flatsIn: '7/16', flatsMm: 11.11, source: 'unified-nut-tables', status: 'read' },
  { thread: '5/16', majorMm: 7.94, pattern: 'hex nut', flatsIn: '1/2', flatsMm: 12.7, source: 'unified-nut-tables', status: 'read' },
  { thread: '3/8', majorMm: 9.52, pattern: 'hex nut', flatsIn: '9/16', flatsMm: 14.29, source: 'unified-nut-tables', status: 'read' },
  { thread: '7/16', majorMm: 11.11, pattern: 'hex nut', flatsIn: '11/16', flatsMm: 17.46, source: 'unified-nut-tables', status: 'read' },
  { thread: '1/2', majorMm: 12.7, pattern: 'hex nut', flatsIn: '3/4', flatsMm: 19.05, source: 'unified-nut-tables', status: 'read' },
  { thread: '5/16', majorMm: 7.94, pattern: 'machine-screw nut', flatsIn: '9/16', flatsMm: 14.29, source: 'unified-nut-tables', status: 'read' },
  { thread: '3/8', majorMm: 9.52, pattern: 'machine-screw nut', flatsIn: '5/8', flatsMm: 15.88, source: 'unified-nut-tables', status: 'read' },
  { thread: '1/4', majorMm: 6.35, pattern: 'heavy hex nut', flatsIn: '1/2', flatsMm: 12.7, source: 'unified-nut-tables', status: 'read' },
  { thread: '5/16', majorMm: 7.94, pattern: 'heavy hex nut', flatsIn: '9/16', flatsMm: 14.29, source: 'unified-nut-tables', status: 'read' },
  { thread: '3/8', majorMm: 9.52, pattern: 'heavy hex nut', flatsIn: '11/16', flatsMm: 17.46, source: 'unified-nut-tables', status: 'read' },
]

/** BA: pitch 0.9^k mm, major 6 p^1.2 mm, jaw 1.75 x major. Some nuts are made from the next smaller hexagon; 8 mm is too small for 2BA. */
export const baNutRows: readonly BaNutRow[] = [
  { thread: '0BA', pitchMm: 1, majorMm: 6, flatsIn: 0.413, flatsMm: 10.49, source: 'bs57-memory', status: 'from memory' },
  { thread: '1BA', pitchMm: 0.9, majorMm: 5.3, flatsIn: 0.365, flatsMm: 9.27, source: 'bs57-memory', status: 'from memory' },
  { thread: '2BA', pitchMm: 0.81, majorMm: 4.7, flatsIn: 0.324, flatsMm: 8.23, source: 'bs57-memory', status: 'from memory' },
  { thread: '3BA', pitchMm: 0.73, majorMm: 4.1, flatsIn: 0.282, flatsMm: 7.16, source: 'bs57-memory', status: 'from memory' },
  { thread: '4BA', pitchMm: 0.66, majorMm: 3.6, flatsIn: 0.248, flatsMm: 6.3, source: 'bs57-memory', status: 'from memory' },
  { thread: '5BA', pitchMm: 0.59, majorMm: 3.2, flatsIn: 0.22, flatsMm: 5.59, source: 'bs57-memory', status: 'from memory' },
  { thread: '6BA', pitchMm: 0.53, majorMm: 2.8, flatsIn: 0.193, flatsMm: 4.9, source: 'bs57-memory', status: 'from memory' },
  { thread: '8BA', pitchMm: 0.43, majorMm: 2.2, flatsIn: 0.152, flatsMm: 3.86, source: 'bs57-memory', status: 'from memory' },
]

/** Post-war Whitworth and BSF hexagons, one step smaller; before the change a nut took the next larger jaw. */
export const whitworthNutRows: readonly WhitworthNutRow[] = [
  { threads: ['1/8 BSW'], flatsIn: 0.3438, flatsMm: 8.73, source: 'spanner-size-list', status: 'read' },
  { threads: ['3/16 BSW', '1/4 BSF'], flatsIn: 0.445, flatsMm: 11.3, source: 'spanner-size-list', status: 'read' },
  { threads: ['1/4 BSW', '5/16 BSF'], flatsIn: 0.525, flatsMm: 13.34, source: 'spanner-size-list', status: 'read' },
  { threads: ['5/16 BSW', '3/8 BSF'], flatsIn: 0.6, flatsMm: 15.24, source: 'spanner-size-list', status: 'read' },
  { threads: ['3/8 BSW', '7/16 BSF'], flatsIn: 0.71, flatsMm: 18.03, source: 'spanner-size-list', status: 'read' },
  { threads: ['7/16 BSW', '1/2 BSF'], flatsIn: 0.82, flatsMm: 20.83, source: 'spanner-size-list', status: 'read' },
]
