import type { Sourced } from './sources.ts'

/** Outside diameters of industrial cable by size, to choose a label; vehicle wire is slimmer. */
export interface LabelWireRow extends Sourced {
  readonly mm2: string
  readonly outsideMm: string
}

/** Least height of print as a share of the distance it is read from. */
export interface PrintHeightRow extends Sourced {
  readonly rule: string
  readonly share: number
}

/** A sheet of labels. */
export interface LabelSheetRow extends Sourced {
  readonly sheet: 'A4' | 'Letter'
  readonly labels: number
  readonly widthMm: number
  readonly heightMm: number
}

/** A label maker's table. */
export const labelWireRows: readonly LabelWireRow[] = [
  { mm2: '0.2-0.5', outsideMm: '1.0-2.0', source: 'label-page', status: 'read' },
  { mm2: '0.75-1.5', outsideMm: '2.0-4.0', source: 'label-page', status: 'read' },
  { mm2: '2.5-4', outsideMm: '4.0-7.0', source: 'label-page', status: 'read' },
  { mm2: '6-16', outsideMm: '7.0-14.0', source: 'label-page', status: 'read' },
  { mm2: '25-95', outsideMm: '14.0-35.0', source: 'label-page', status: 'read' },
]

/** Print by reading distance. */
export const printHeightRows: readonly PrintHeightRow[] = [
  { rule: 'character height, least (15 minutes of arc)', share: 0.004, source: 'nureg-0700', status: 'read' },
  { rule: 'character height, preferred (20 minutes of arc)', share: 0.006, source: 'nureg-0700', status: 'read' },
  { rule: 'capital letters, good light', share: 0.005, source: 'as1319-chart', status: 'read' },
  { rule: 'lower-case letters, good light', share: 0.004, source: 'as1319-chart', status: 'read' },
  { rule: 'capital letters, poor light', share: 0.0075, source: 'as1319-chart', status: 'read' },
  { rule: 'safety-sign text, 1 inch per 25 ft', share: 0.00333, source: 'ansi-z535-page', status: 'read' },
  { rule: 'old fire-sign rule, 100 mm at 25 m', share: 0.004, source: 'sign-article', status: 'read' },
]

/** 65 on A4, text along the short edge: 38.1 mm goes 2.5 turns round wires up to 4.8 mm. */
export const labelSheetRows: readonly LabelSheetRow[] = [
  { sheet: 'A4', labels: 189, widthMm: 25.4, heightMm: 10, source: 'label-sheet-memory', status: 'from memory' },
  { sheet: 'A4', labels: 65, widthMm: 38.1, heightMm: 21.2, source: 'label-sheet-memory', status: 'from memory' },
  { sheet: 'A4', labels: 40, widthMm: 48.5, heightMm: 25.4, source: 'label-sheet-memory', status: 'from memory' },
  { sheet: 'A4', labels: 24, widthMm: 63.5, heightMm: 33.9, source: 'label-sheet-memory', status: 'from memory' },
  { sheet: 'A4', labels: 24, widthMm: 70, heightMm: 37, source: 'label-sheet-memory', status: 'from memory' },
  { sheet: 'A4', labels: 21, widthMm: 63.5, heightMm: 38.1, source: 'label-sheet-memory', status: 'from memory' },
  { sheet: 'A4', labels: 14, widthMm: 99.1, heightMm: 38.1, source: 'label-sheet-memory', status: 'from memory' },
  { sheet: 'Letter', labels: 80, widthMm: 44.5, heightMm: 12.7, source: 'label-sheet-memory', status: 'from memory' },
  { sheet: 'Letter', labels: 30, widthMm: 66.7, heightMm: 25.4, source: 'label-sheet-memory', status: 'from memory' },
]
