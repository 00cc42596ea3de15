import type { Sourced } from './sources.ts'

/** The radius of the smallest circle known to hold this many equal circles of radius 1, and whether it is proved smallest. */
export interface CirclePackingRow extends Sourced {
  readonly wires: number
  readonly radius: number
  readonly proved: boolean
}

/** Bundles of equal wires, as printed to three decimals. */
export const circlePackingRows: readonly CirclePackingRow[] = [
  { wires: 1, radius: 1, proved: true, source: 'wikipedia-circle-packing', status: 'read' },
  { wires: 2, radius: 2, proved: true, source: 'wikipedia-circle-packing', status: 'read' },
  { wires: 3, radius: 2.155, proved: true, source: 'wikipedia-circle-packing', status: 'read' },
  { wires: 4, radius: 2.414, proved: true, source: 'wikipedia-circle-packing', status: 'read' },
  { wires: 5, radius: 2.701, proved: true, source: 'wikipedia-circle-packing', status: 'read' },
  { wires: 6, radius: 3, proved: true, source: 'wikipedia-circle-packing', status: 'read' },
  { wires: 7, radius: 3, proved: true, source: 'wikipedia-circle-packing', status: 'read' },
  { wires: 8, radius: 3.304, proved: true, source: 'wikipedia-circle-packing', status: 'read' },
  { wires: 9, radius: 3.613, proved: true, source: 'wikipedia-circle-packing', status: 'read' },
  { wires: 10, radius: 3.813, proved: true, source: 'wikipedia-circle-packing', status: 'read' },
  { wires: 11, radius: 3.923, proved: true, source: 'wikipedia-circle-packing', status: 'read' },
  { wires: 12, radius: 4.029, proved: true, source: 'wikipedia-circle-packing', status: 'read' },
  { wires: 13, radius: 4.236, proved: true, source: 'wikipedia-circle-packing', status: 'read' },
  { wires: 14, radius: 4.328, proved: true, source: 'wikipedia-circle-packing', status: 'read' },
  { wires: 15, radius: 4.521, proved: false, source: 'wikipedia-circle-packing', status: 'read' },
  { wires: 16, radius: 4.615, proved: false, source: 'wikipedia-circle-packing', status: 'read' },
  { wires: 17, radius: 4.792, proved: false, source: 'wikipedia-circle-packing', status: 'read' },
  { wires: 18, radius: 4.863, proved: false, source: 'wikipedia-circle-packing', status: 'read' },
  { wires: 19, radius: 4.863, proved: true, source: 'wikipedia-circle-packing', status: 'read' },
  { wires: 20, radius: 5.122, proved: false, source: 'wikipedia-circle-packing', status: 'read' },
]
