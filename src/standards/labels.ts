import { printHeightRows } from './label-rows.ts'

/** Length in mm of a label wound this many turns round a wire: turns x pi x diameter. Two to three turns are practice. */
export function wrapLabelMm(outsideMm: number, turns: number): number {
  return turns * Math.PI * outsideMm
}

/** Height of print in mm to be read from this distance, by each rule of the table, in its order. */
export function printHeightsMm(distanceMm: number): { readonly rule: string; readonly heightMm: number }[] {
  return printHeightRows.map(({ rule, share }) => ({ rule, heightMm: share * distanceMm }))
}
