import type { Sourced } from './sources.ts'

/** A point of a chart: amps of one wire in free air at a temperature rise, or a factor for altitude or for a bundle. */
export interface ChartPointRow extends Sourced {
  readonly chart: 'free air' | 'altitude' | 'bundle'
  readonly awg?: string
  readonly riseC?: number
  readonly altitudeFt?: number
  readonly wires?: number
  readonly loadingPct?: number
  readonly value: number
}

/**
 * Points of the charts of AC 43.13-1B that its text quotes; the curves themselves were not read. Altitude and bundle charts
 * change figure numbers between revisions of the circular.
 */
export const chartPointRows: readonly ChartPointRow[] = [
  { chart: 'free air', awg: '14', riseC: 150, value: 47, source: 'ac43-13-1b-11-68', status: 'read' },
  { chart: 'altitude', altitudeFt: 20000, value: 0.91, source: 'ac43-13-1b-11-68', status: 'read' },
  { chart: 'bundle', wires: 8, loadingPct: 60, value: 0.6, source: 'ac43-13-1b-11-68', status: 'read' },
  { chart: 'free air', awg: '20', riseC: 140, value: 21.5, source: 'ac43-13-1b-11-69-memory', status: 'from memory' },
  { chart: 'free air', awg: '22', riseC: 140, value: 16.2, source: 'ac43-13-1b-11-69-memory', status: 'from memory' },
  { chart: 'free air', awg: '12', riseC: 175, value: 68, source: 'ac43-13-1b-11-69-memory', status: 'from memory' },
  { chart: 'free air', awg: '12', riseC: 140, value: 61, source: 'ac43-13-1b-11-69-memory', status: 'from memory' },
  { chart: 'bundle', wires: 35, loadingPct: 20, value: 0.52, source: 'ac43-13-1b-11-69-memory', status: 'from memory' },
  { chart: 'bundle', wires: 12, loadingPct: 100, value: 0.43, source: 'ac43-13-1b-11-69-memory', status: 'from memory', note: '0.43 was also read in the digitised bundle curve' },
  { chart: 'altitude', altitudeFt: 0, value: 1, source: 'ac43-13-1b-11-69-memory', status: 'from memory' },
  { chart: 'altitude', altitudeFt: 60000, value: 0.79, source: 'ac43-13-1b-11-69-memory', status: 'from memory' },
]
