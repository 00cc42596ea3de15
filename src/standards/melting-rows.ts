import type { Sourced } from './sources.ts'

/** Preece: amps that melt a wire in air = constant x d^1.5, d in inches or in mm. */
export interface PreeceRow extends Sourced {
  readonly metal: string
  readonly ampsPerIn15: number
  readonly ampsPerMm15: number
}

/** Printed diameter of a copper fuse wire that melts at this current. */
export interface CopperFuseWireRow extends Sourced {
  readonly currentA: number
  readonly diameterIn: number
}

/** k of I2 t = k2 S2 in A s^0.5 / mm2, for copper heated between two temperatures. */
export interface ShortTimeRow extends Sourced {
  readonly insulation: string
  readonly startC: number
  readonly endC: number
  readonly k: number
}

/** A short-time melting law as printed: its constant and its melting point in C, null where it has none of its own. */
export interface MeltingLaw extends Sourced {
  readonly formula: string
  readonly constant: number
  readonly meltingC: number | null
}

/** Preece's constants. The page prints 0.1208 in for aluminium at 250 A, where its formula gives 0.1028 in. */
export const preeceRows: readonly PreeceRow[] = [
  { metal: 'copper', ampsPerIn15: 10244, ampsPerMm15: 80.02, source: 'fuse-wire-page', status: 'read' },
  { metal: 'aluminium', ampsPerIn15: 7585, ampsPerMm15: 59.25, source: 'fuse-wire-page', status: 'read' },
  { metal: 'platinum', ampsPerIn15: 5172, ampsPerMm15: 40.4, source: 'fuse-wire-page', status: 'read' },
  { metal: 'german silver', ampsPerIn15: 5230, ampsPerMm15: 40.86, source: 'fuse-wire-page', status: 'read' },
  { metal: 'platinoid', ampsPerIn15: 4750, ampsPerMm15: 37.11, source: 'fuse-wire-page', status: 'read' },
  { metal: 'iron', ampsPerIn15: 3148, ampsPerMm15: 24.59, source: 'fuse-wire-page', status: 'read' },
  { metal: 'tin', ampsPerIn15: 1642, ampsPerMm15: 12.83, source: 'fuse-wire-page', status: 'read' },
  { metal: 'tin-lead', ampsPerIn15: 1318, ampsPerMm15: 10.3, source: 'fuse-wire-page', status: 'read' },
  { metal: 'lead', ampsPerIn15: 1379, ampsPerMm15: 10.77, source: 'fuse-wire-page', status: 'read' },
]

/** Copper fuse wire as printed beside its law. */
export const copperFuseWireRows: readonly CopperFuseWireRow[] = [
  { currentA: 1, diameterIn: 0.0021, source: 'fuse-wire-page', status: 'read' },
  { currentA: 2, diameterIn: 0.0034, source: 'fuse-wire-page', status: 'read' },
  { currentA: 5, diameterIn: 0.0062, source: 'fuse-wire-page', status: 'read' },
  { currentA: 10, diameterIn: 0.0098, source: 'fuse-wire-page', status: 'read' },
  { currentA: 15, diameterIn: 0.0129, source: 'fuse-wire-page', status: 'read' },
  { currentA: 20, diameterIn: 0.0156, source: 'fuse-wire-page', status: 'read' },
  { currentA: 30, diameterIn: 0.0205, source: 'fuse-wire-page', status: 'read' },
  { currentA: 50, diameterIn: 0.0288, source: 'fuse-wire-page', status: 'read' },
  { currentA: 100, diameterIn: 0.0457, source: 'fuse-wire-page', status: 'read' },
  { currentA: 200, diameterIn: 0.0725, source: 'fuse-wire-page', status: 'read' },
  { currentA: 300, diameterIn: 0.095, source: 'fuse-wire-page', status: 'read' },
]

/** How much current copper stands for a few seconds inside its insulation. */
export const shortTimeRows: readonly ShortTimeRow[] = [
  { insulation: 'PVC 70 C', startC: 70, endC: 160, k: 115, source: 'iec60364-4-43-memory', status: 'mixed', note: 'the temperatures were read; the rounded k is from memory, the formula gives it too' },
  { insulation: 'XLPE/EPR 90 C', startC: 90, endC: 250, k: 143, source: 'iec60364-4-43-memory', status: 'mixed', note: 'the temperatures were read; the rounded k is from memory, the formula gives it too' },
]

/**
 * Melting laws for short times: A in circular mils, t in seconds, temperatures in C. The printed Onderdonk example (16 AWG,
 * 5 s: 178 A) has 234 - Ta in place of 234 + Ta, which gives 168.9 A.
 */
export const meltingLaws = {
  onderdonk: { formula: 'I = A x sqrt( log10(1 + (Tm - Ta)/(234 + Ta)) / (33 x t) )', constant: 33, meltingC: 1083, source: 'onderdonk-thread', status: 'read', note: 'the thread prints 234 - Ta; 234 + Ta agrees with ICEA and IEC' },
  icea: { formula: '(I/A)^2 x t = 0.0297 x log10((T2 + 234)/(T1 + 234))', constant: 0.0297, meltingC: null, source: 'icea-quotation', status: 'read' },
} as const satisfies Readonly<Record<string, MeltingLaw>>
