import type { Sourced } from './sources.ts'

/** Factors of a bundle of this many wires, by the share of the bundle's capacity that is used: 20 % to 100 %. */
export interface BundleCurveRow extends Sourced {
  readonly wires: number
  readonly at20: number
  readonly at40: number
  readonly at60: number
  readonly at80: number
  readonly at100: number
}

/** Factor of a bundle of `fromWires` to `toWires` loaded wires (null: any more). */
export interface BundleFactorRow extends Sourced {
  readonly fromWires: number
  readonly toWires: number | null
  readonly factor: number
}

/** Factor of a 70 C PVC cable at this ambient, referred to 30 C. */
export interface AmbientFactorRow extends Sourced {
  readonly ambientC: number
  readonly factor: number
}

/** Factor of a boat cable in an engine space (50 C), by the temperature in C that its insulation bears. */
export interface EngineSpaceRow extends Sourced {
  readonly insulationC: number
  readonly factor: number
}

/** Bundle curve of MIL-W-5088L, digitised by a third party up to 19 wires; agrees with two points of AC 43.13-1B. */
export const bundleCurveRows: readonly BundleCurveRow[] = [
  { wires: 1, at20: 1, at40: 1, at60: 1, at80: 1, at100: 1, source: 'mil-w-5088l-curve', status: 'read' },
  { wires: 2, at20: 0.9675, at40: 0.92, at60: 0.91, at80: 0.87, at100: 0.825, source: 'mil-w-5088l-curve', status: 'read' },
  { wires: 3, at20: 0.935, at40: 0.855, at60: 0.815, at80: 0.77, at100: 0.725, source: 'mil-w-5088l-curve', status: 'read' },
  { wires: 4, at20: 0.9075, at40: 0.805, at60: 0.75, at80: 0.705, at100: 0.66, source: 'mil-w-5088l-curve', status: 'read' },
  { wires: 5, at20: 0.875, at40: 0.76, at60: 0.695, at80: 0.65, at100: 0.61, source: 'mil-w-5088l-curve', status: 'read' },
  { wires: 6, at20: 0.85, at40: 0.725, at60: 0.655, at80: 0.605, at100: 0.5725, source: 'mil-w-5088l-curve', status: 'read' },
  { wires: 7, at20: 0.82, at40: 0.695, at60: 0.625, at80: 0.57, at100: 0.54, source: 'mil-w-5088l-curve', status: 'read' },
  { wires: 8, at20: 0.795, at40: 0.6675, at60: 0.595, at80: 0.5425, at100: 0.5125, source: 'mil-w-5088l-curve', status: 'read' },
  { wires: 9, at20: 0.775, at40: 0.645, at60: 0.575, at80: 0.52, at100: 0.485, source: 'mil-w-5088l-curve', status: 'read' },
  { wires: 10, at20: 0.755, at40: 0.6225, at60: 0.55, at80: 0.5, at100: 0.465, source: 'mil-w-5088l-curve', status: 'read' },
  { wires: 11, at20: 0.735, at40: 0.6, at60: 0.53, at80: 0.48, at100: 0.445, source: 'mil-w-5088l-curve', status: 'read' },
  { wires: 12, at20: 0.715, at40: 0.585, at60: 0.515, at80: 0.465, at100: 0.43, source: 'mil-w-5088l-curve', status: 'read' },
  { wires: 13, at20: 0.6975, at40: 0.5675, at60: 0.495, at80: 0.4475, at100: 0.415, source: 'mil-w-5088l-curve', status: 'read' },
  { wires: 14, at20: 0.685, at40: 0.5525, at60: 0.48, at80: 0.435, at100: 0.3975, source: 'mil-w-5088l-curve', status: 'read' },
  { wires: 15, at20: 0.67, at40: 0.54, at60: 0.465, at80: 0.42, at100: 0.385, source: 'mil-w-5088l-curve', status: 'read' },
  { wires: 16, at20: 0.6575, at40: 0.5275, at60: 0.455, at80: 0.41, at100: 0.37, source: 'mil-w-5088l-curve', status: 'read' },
  { wires: 17, at20: 0.645, at40: 0.515, at60: 0.4425, at80: 0.3975, at100: 0.36, source: 'mil-w-5088l-curve', status: 'read' },
  { wires: 18, at20: 0.635, at40: 0.505, at60: 0.4325, at80: 0.3875, at100: 0.35, source: 'mil-w-5088l-curve', status: 'read' },
  { wires: 19, at20: 0.625, at40: 0.495, at60: 0.4225, at80: 0.38, at100: 0.3425, source: 'mil-w-5088l-curve', status: 'read' },
]

/** NEC 2014: adjustment for more than three current-carrying conductors. */
export const necBundleRows: readonly BundleFactorRow[] = [
  { fromWires: 4, toWires: 6, factor: 0.8, source: 'nec-310-15', status: 'read' },
  { fromWires: 7, toWires: 9, factor: 0.7, source: 'nec-310-15', status: 'read' },
  { fromWires: 10, toWires: 20, factor: 0.5, source: 'nec-310-15', status: 'read' },
  { fromWires: 21, toWires: 30, factor: 0.45, source: 'nec-310-15', status: 'read' },
  { fromWires: 31, toWires: 40, factor: 0.4, source: 'nec-310-15', status: 'read' },
  { fromWires: 41, toWires: null, factor: 0.35, source: 'nec-310-15', status: 'read' },
]

/** US Coast Guard guideline, for AC and for 50 V and more; the page states no limit for bundles below 50 V. */
export const boatBundleRows: readonly BundleFactorRow[] = [
  { fromWires: 3, toWires: 3, factor: 0.7, source: 'uscg-guideline', status: 'read' },
  { fromWires: 4, toWires: 6, factor: 0.6, source: 'uscg-guideline', status: 'read' },
  { fromWires: 7, toWires: 24, factor: 0.5, source: 'uscg-guideline', status: 'read' },
  { fromWires: 25, toWires: null, factor: 0.4, source: 'uscg-guideline', status: 'read' },
]

/** BS 7671:1992, circuits of 70 C PVC grouped, enclosed or clipped. */
export const britishGroupingRows: readonly BundleFactorRow[] = [
  { fromWires: 2, toWires: 2, factor: 0.8, source: 'bs7671-summary', status: 'read', note: 'the copy lacks the circuit counts 2 to 9: assigned in order, 10 was printed' },
  { fromWires: 3, toWires: 3, factor: 0.7, source: 'bs7671-summary', status: 'read', note: 'the copy lacks the circuit counts 2 to 9: assigned in order, 10 was printed' },
  { fromWires: 4, toWires: 4, factor: 0.65, source: 'bs7671-summary', status: 'read', note: 'the copy lacks the circuit counts 2 to 9: assigned in order, 10 was printed' },
  { fromWires: 5, toWires: 5, factor: 0.6, source: 'bs7671-summary', status: 'read', note: 'the copy lacks the circuit counts 2 to 9: assigned in order, 10 was printed' },
  { fromWires: 6, toWires: 6, factor: 0.57, source: 'bs7671-summary', status: 'read', note: 'the copy lacks the circuit counts 2 to 9: assigned in order, 10 was printed' },
  { fromWires: 7, toWires: 7, factor: 0.54, source: 'bs7671-summary', status: 'read', note: 'the copy lacks the circuit counts 2 to 9: assigned in order, 10 was printed' },
  { fromWires: 8, toWires: 8, factor: 0.52, source: 'bs7671-summary', status: 'read', note: 'the copy lacks the circuit counts 2 to 9: assigned in order, 10 was printed' },
  { fromWires: 9, toWires: 9, factor: 0.5, source: 'bs7671-summary', status: 'read', note: 'the copy lacks the circuit counts 2 to 9: assigned in order, 10 was printed' },
  { fromWires: 10, toWires: 10, factor: 0.48, source: 'bs7671-summary', status: 'read' },
]

/** BS 7671:1992, ambient factor of 70 C PVC; follows the square-root rule within 0.01 from 30 to 55 C. */
export const britishAmbientRows: readonly AmbientFactorRow[] = [
  { ambientC: 25, factor: 1.03, source: 'bs7671-summary', status: 'read', note: 'the square-root rule gives 1.06' },
  { ambientC: 30, factor: 1, source: 'bs7671-summary', status: 'read' },
  { ambientC: 35, factor: 0.94, source: 'bs7671-summary', status: 'read' },
  { ambientC: 40, factor: 0.87, source: 'bs7671-summary', status: 'read' },
  { ambientC: 45, factor: 0.79, source: 'bs7671-summary', status: 'read' },
  { ambientC: 50, factor: 0.71, source: 'bs7671-summary', status: 'read' },
  { ambientC: 55, factor: 0.61, source: 'bs7671-summary', status: 'read' },
]

/** 33 CFR 183.425 Table 5, note 1. */
export const engineSpaceRows: readonly EngineSpaceRow[] = [
  { insulationC: 60, factor: 0.58, source: 'cfr33-183-425-memory', status: 'from memory' },
  { insulationC: 75, factor: 0.75, source: 'cfr33-183-425-memory', status: 'from memory' },
  { insulationC: 80, factor: 0.78, source: 'cfr33-183-425-memory', status: 'from memory' },
  { insulationC: 90, factor: 0.82, source: 'cfr33-183-425-memory', status: 'from memory' },
  { insulationC: 105, factor: 0.85, source: 'boat-shop-note-1', status: 'read' },
  { insulationC: 125, factor: 0.89, source: 'cfr33-183-425-memory', status: 'from memory' },
  { insulationC: 200, factor: 1, source: 'cfr33-183-425-memory', status: 'from memory' },
]
