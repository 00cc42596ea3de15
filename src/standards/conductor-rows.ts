import type { Sourced } from './sources.ts'

/** A metric vehicle cable: its size, the largest resistance at 20 C, outside diameters and strands (type B, type A). */
export interface IsoRow extends Sourced {
  readonly sizeMm2: number
  readonly ohmPerKm: number
  readonly thickMaxMm: number | null
  readonly thinMaxMm: number | null
  readonly strandsB: string | null
  readonly strandsA: string | null
}

/** A general conductor: the largest resistance at 20 C as class 1 or 2 and as class 5 (6 is the same). */
export interface IecRow extends Sourced {
  readonly sizeMm2: number
  readonly class2OhmPerKm: number | null
  readonly class5OhmPerKm: number
  readonly class5TinnedOhmPerKm: number
  readonly maxStrandMm: number | null
}

/** A Japanese AV cable. The conditions of `limitA` were cut off in the copy read: assume no ambient for it. */
export interface JisRow extends Sourced {
  readonly sizeMm2: number
  readonly strands: string
  readonly areaMm2: number
  readonly ohmPerKm: number
  readonly copperMm: number
  readonly insulationMm: number
  readonly usualMm: number
  readonly maxMm: number
  readonly limitA: number
  readonly massGPerM: number
}

/** A British PVC cable with metric strands; `ohmPerM` at 20 C. */
export interface BritishRow extends Sourced {
  readonly strands: string
  readonly areaMm2: number
  readonly ohmPerM: number | null
  readonly ratingA: number
}

/** A British cable with imperial strands; nobody published its resistance. */
export interface ImperialRow extends Sourced {
  readonly strands: string
  readonly areaMm2: number
}

/** Copper wire by AWG size, at 20 C. */
export interface AwgRow extends Sourced {
  readonly awg: string
  readonly circularMils: number
  readonly ohmPer1000Ft: number
  readonly diameterIn?: number
}

/** A copper conductor by AWG size, direct current at 75 C; coated is tinned. */
export interface NecRow extends Sourced {
  readonly awg: string
  readonly circularMils: number
  readonly solidOhmPer1000Ft: number | null
  readonly strandedOhmPer1000Ft: number
  readonly solidCoatedOhmPer1000Ft: number | null
  readonly strandedCoatedOhmPer1000Ft: number
}

/** The least copper of an SAE gauge, beside the boat wire of the same number. */
export interface SaeRow extends Sourced {
  readonly awg: string
  readonly circularMils: number
  readonly areaMm2: number
  readonly boatCircularMils: number
  readonly boatAreaMm2: number
}

/** Outside diameters of SAE cables of one gauge. */
export interface SaeDiameterRow extends Sourced {
  readonly awg: string
  readonly gptUsualMm: number | null
  readonly gptMaxMm: number | null
  readonly twpUsualMm: number | null
  readonly twpMaxMm: number | null
  readonly gxlMm: number | null
}

/** Metric vehicle cable, ISO 6722-1 / ISO 19642-3 sizes, plain copper. */
export const isoRows: readonly IsoRow[] = [
  { sizeMm2: 0.22, ohmPerKm: 84.4, thickMaxMm: null, thinMaxMm: 1.2, strandsB: null, strandsA: '7/0.20', source: 'iso6722-sheets', status: 'read', note: 'data sheet prints 84.4; 84.8 remembered from ISO 6722-1 (not re-read)' },
  { sizeMm2: 0.35, ohmPerKm: 54.4, thickMaxMm: null, thinMaxMm: 1.4, strandsB: '12/0.20', strandsA: '7/0.26', source: 'iso6722-sheets', status: 'read', note: 'type B thin wall 1.40; type A thin wall printed 1.30' },
  { sizeMm2: 0.5, ohmPerKm: 37.1, thickMaxMm: 2.3, thinMaxMm: 1.6, strandsB: '16/0.20', strandsA: '19/0.19', source: 'iso6722-sheets', status: 'read' },
  { sizeMm2: 0.75, ohmPerKm: 24.7, thickMaxMm: 2.5, thinMaxMm: 1.9, strandsB: '24/0.20', strandsA: '19/0.23', source: 'iso6722-sheets', status: 'read' },
  { sizeMm2: 1, ohmPerKm: 18.5, thickMaxMm: 2.7, thinMaxMm: 2.1, strandsB: '32/0.20', strandsA: '19/0.26', source: 'iso6722-sheets', status: 'read' },
  { sizeMm2: 1.5, ohmPerKm: 12.7, thickMaxMm: 3, thinMaxMm: 2.4, strandsB: '30/0.25', strandsA: '19/0.32', source: 'iso6722-sheets', status: 'read' },
  { sizeMm2: 2, ohmPerKm: 9.42, thickMaxMm: 3.3, thinMaxMm: 2.8, strandsB: '30/0.30', strandsA: '19/0.36', source: 'iso6722-sheets', status: 'read', note: 'type A sheet prints 9.40' },
  { sizeMm2: 2.5, ohmPerKm: 7.6, thickMaxMm: 3.6, thinMaxMm: 3, strandsB: '50/0.25', strandsA: '19/0.41', source: 'iso6722-sheets', status: 'read', note: 'the thin-wall XLPE sheet prints 3.40 and 0.40 mm wall for this size; the two PVC sheets print 3.00' },
  { sizeMm2: 3, ohmPerKm: 6.15, thickMaxMm: 4.1, thinMaxMm: 3.4, strandsB: '45/0.30', strandsA: null, source: 'iso6722-sheets', status: 'read', note: 'some sheets print 45x0.31' },
  { sizeMm2: 4, ohmPerKm: 4.71, thickMaxMm: 4.4, thinMaxMm: 3.7, strandsB: '56/0.30', strandsA: null, source: 'iso6722-sheets', status: 'read' },
  { sizeMm2: 5, ohmPerKm: 3.94, thickMaxMm: null, thinMaxMm: null, strandsB: null, strandsA: null, source: 'iso6722-memory', status: 'from memory' },
  { sizeMm2: 6, ohmPerKm: 3.14, thickMaxMm: 5, thinMaxMm: 4.3, strandsB: '84/0.30', strandsA: null, source: 'iso6722-sheets', status: 'read' },
  { sizeMm2: 8, ohmPerKm: 2.38, thickMaxMm: null, thinMaxMm: null, strandsB: null, strandsA: null, source: 'iso6722-memory', status: 'from memory' },
  { sizeMm2: 10, ohmPerKm: 1.82, thickMaxMm: 6.5, thinMaxMm: null, strandsB: '80/0.40', strandsA: null, source: 'iso6722-sheets', status: 'read' },
  { sizeMm2: 12, ohmPerKm: 1.52, thickMaxMm: null, thinMaxMm: null, strandsB: null, strandsA: null, source: 'iso6722-memory', status: 'from memory' },
  { sizeMm2: 16, ohmPerKm: 1.16, thickMaxMm: 8.3, thinMaxMm: 7.2, strandsB: '126/0.40', strandsA: null, source: 'iso6722-sheets', status: 'read' },
  { sizeMm2: 20, ohmPerKm: 0.955, thickMaxMm: null, thinMaxMm: null, strandsB: null, strandsA: null, source: 'iso6722-memory', status: 'from memory' },
  { sizeMm2: 25, ohmPerKm: 0.743, thickMaxMm: 10.4, thinMaxMm: null, strandsB: '196/0.40', strandsA: null, source: 'iso6722-memory', status: 'mixed', note: 'diameter and strands read in the data sheets, resistance from memory: the sheet truncates resistance to 0.70' },
  { sizeMm2: 35, ohmPerKm: 0.527, thickMaxMm: 11.6, thinMaxMm: null, strandsB: '276/0.40', strandsA: null, source: 'iso6722-memory', status: 'mixed', note: 'diameter and strands read in the data sheets, resistance from memory: the sheet truncates resistance to 0.50' },
  { sizeMm2: 50, ohmPerKm: 0.368, thickMaxMm: 13.5, thinMaxMm: null, strandsB: '396/0.40', strandsA: null, source: 'iso6722-memory', status: 'mixed', note: 'diameter and strands read in the data sheets, resistance from memory: the sheet truncates resistance to 0.30' },
  { sizeMm2: 70, ohmPerKm: 0.259, thickMaxMm: 15.5, thinMaxMm: null, strandsB: '360/0.50', strandsA: null, source: 'iso6722-memory', status: 'mixed', note: 'diameter and strands read in the data sheets, resistance from memory: the sheet truncates resistance to 0.20' },
]

/** IEC 60228 conductors, with the small flexible ones of DIN VDE 0295 in front. */
export const iecRows: readonly IecRow[] = [
  { sizeMm2: 0.14, class2OhmPerKm: null, class5OhmPerKm: 134, class5TinnedOhmPerKm: 138, maxStrandMm: null, source: 'iec60228-extract', status: 'read' },
  { sizeMm2: 0.22, class2OhmPerKm: null, class5OhmPerKm: 96, class5TinnedOhmPerKm: 99, maxStrandMm: null, source: 'iec60228-extract', status: 'read' },
  { sizeMm2: 0.25, class2OhmPerKm: null, class5OhmPerKm: 76, class5TinnedOhmPerKm: 79, maxStrandMm: null, source: 'iec60228-extract', status: 'read' },
  { sizeMm2: 0.34, class2OhmPerKm: null, class5OhmPerKm: 53, class5TinnedOhmPerKm: 56, maxStrandMm: null, source: 'iec60228-extract', status: 'read' },
  { sizeMm2: 0.5, class2OhmPerKm: 36, class5OhmPerKm: 39, class5TinnedOhmPerKm: 40.1, maxStrandMm: 0.21, source: 'iec60228-extract', status: 'read' },
  { sizeMm2: 0.75, class2OhmPerKm: 24.5, class5OhmPerKm: 26, class5TinnedOhmPerKm: 26.7, maxStrandMm: 0.21, source: 'iec60228-extract', status: 'read' },
  { sizeMm2: 1, class2OhmPerKm: 18.1, class5OhmPerKm: 19.5, class5TinnedOhmPerKm: 20, maxStrandMm: 0.21, source: 'iec60228-extract', status: 'read' },
  { sizeMm2: 1.5, class2OhmPerKm: 12.1, class5OhmPerKm: 13.3, class5TinnedOhmPerKm: 13.7, maxStrandMm: 0.26, source: 'iec60228-extract', status: 'read' },
  { sizeMm2: 2.5, class2OhmPerKm: 7.41, class5OhmPerKm: 7.98, class5TinnedOhmPerKm: 8.21, maxStrandMm: 0.26, source: 'iec60228-extract', status: 'read' },
  { sizeMm2: 4, class2OhmPerKm: 4.61, class5OhmPerKm: 4.95, class5TinnedOhmPerKm: 5.09, maxStrandMm: 0.31, source: 'iec60228-extract', status: 'read' },
  { sizeMm2: 6, class2OhmPerKm: 3.08, class5OhmPerKm: 3.3, class5TinnedOhmPerKm: 3.39, maxStrandMm: 0.31, source: 'iec60228-extract', status: 'read' },
  { sizeMm2: 10, class2OhmPerKm: 1.83, class5OhmPerKm: 1.91, class5TinnedOhmPerKm: 1.95, maxStrandMm: 0.41, source: 'iec60228-extract', status: 'read' },
  { sizeMm2: 16, class2OhmPerKm: 1.15, class5OhmPerKm: 1.21, class5TinnedOhmPerKm: 1.24, maxStrandMm: 0.41, source: 'iec60228-extract', status: 'read' },
  { sizeMm2: 25, class2OhmPerKm: 0.727, class5OhmPerKm: 0.78, class5TinnedOhmPerKm: 0.795, maxStrandMm: 0.41, source: 'iec60228-extract', status: 'read' },
  { sizeMm2: 35, class2OhmPerKm: 0.524, class5OhmPerKm: 0.554, class5TinnedOhmPerKm: 0.565, maxStrandMm: 0.41, source: 'iec60228-extract', status: 'read' },
  { sizeMm2: 50, class2OhmPerKm: 0.387, class5OhmPerKm: 0.386, class5TinnedOhmPerKm: 0.393, maxStrandMm: 0.41, source: 'iec60228-extract', status: 'read' },
  { sizeMm2: 70, class2OhmPerKm: 0.268, class5OhmPerKm: 0.272, class5TinnedOhmPerKm: 0.277, maxStrandMm: 0.51, source: 'iec60228-extract', status: 'read' },
  { sizeMm2: 95, class2OhmPerKm: 0.193, class5OhmPerKm: 0.206, class5TinnedOhmPerKm: 0.21, maxStrandMm: 0.51, source: 'iec60228-extract', status: 'read' },
  { sizeMm2: 120, class2OhmPerKm: 0.153, class5OhmPerKm: 0.161, class5TinnedOhmPerKm: 0.164, maxStrandMm: 0.51, source: 'iec60228-extract', status: 'read' },
]

/** Japanese vehicle cable, type AV, JIS C 3406. */
export const jisRows: readonly JisRow[] = [
  { sizeMm2: 0.5, strands: '7/0.32', areaMm2: 0.5629, ohmPerKm: 32.7, copperMm: 1, insulationMm: 0.6, usualMm: 2.2, maxMm: 2.4, limitA: 12, massGPerM: 10, source: 'jis-av-sheet', status: 'read' },
  { sizeMm2: 0.85, strands: '11/0.32', areaMm2: 0.8846, ohmPerKm: 20.8, copperMm: 1.2, insulationMm: 0.6, usualMm: 2.4, maxMm: 2.6, limitA: 16, massGPerM: 13, source: 'jis-av-sheet', status: 'read' },
  { sizeMm2: 1.25, strands: '16/0.32', areaMm2: 1.287, ohmPerKm: 14.3, copperMm: 1.5, insulationMm: 0.6, usualMm: 2.7, maxMm: 2.9, limitA: 21, massGPerM: 17, source: 'jis-av-sheet', status: 'read' },
  { sizeMm2: 2, strands: '26/0.32', areaMm2: 2.091, ohmPerKm: 8.81, copperMm: 1.9, insulationMm: 0.6, usualMm: 3.1, maxMm: 3.4, limitA: 28, massGPerM: 26, source: 'jis-av-sheet', status: 'read' },
  { sizeMm2: 3, strands: '41/0.32', areaMm2: 3.297, ohmPerKm: 5.59, copperMm: 2.4, insulationMm: 0.7, usualMm: 3.8, maxMm: 4.1, limitA: 38, massGPerM: 40, source: 'jis-av-sheet', status: 'read' },
  { sizeMm2: 5, strands: '65/0.32', areaMm2: 5.228, ohmPerKm: 3.52, copperMm: 3, insulationMm: 0.8, usualMm: 4.6, maxMm: 4.9, limitA: 51, massGPerM: 62, source: 'jis-av-sheet', status: 'read' },
  { sizeMm2: 8, strands: '50/0.45', areaMm2: 7.952, ohmPerKm: 2.32, copperMm: 3.7, insulationMm: 0.9, usualMm: 5.5, maxMm: 5.8, limitA: 66, massGPerM: 92, source: 'jis-av-sheet', status: 'read' },
  { sizeMm2: 10, strands: '7/9/0.45', areaMm2: 10.02, ohmPerKm: 1.84, copperMm: 4.5, insulationMm: 1, usualMm: 6.5, maxMm: 6.9, limitA: 78, massGPerM: 120, source: 'jis-av-sheet', status: 'read' },
  { sizeMm2: 15, strands: '7/12/0.45', areaMm2: 13.36, ohmPerKm: 1.38, copperMm: 5.4, insulationMm: 1.1, usualMm: 7.6, maxMm: 8, limitA: 94, massGPerM: 160, source: 'jis-av-sheet', status: 'read' },
  { sizeMm2: 20, strands: '41/0.80', areaMm2: 20.61, ohmPerKm: 0.887, copperMm: 6.1, insulationMm: 1.1, usualMm: 8.3, maxMm: 8.8, limitA: 121, massGPerM: 226, source: 'jis-av-sheet', status: 'read' },
  { sizeMm2: 30, strands: '70/0.80', areaMm2: 35.19, ohmPerKm: 0.52, copperMm: 8, insulationMm: 1.4, usualMm: 10.8, maxMm: 11.5, limitA: 168, massGPerM: 384, source: 'jis-av-sheet', status: 'read' },
  { sizeMm2: 40, strands: '85/0.80', areaMm2: 42.73, ohmPerKm: 0.428, copperMm: 8.6, insulationMm: 1.4, usualMm: 11.4, maxMm: 12.1, limitA: 188, massGPerM: 462, source: 'jis-av-sheet', status: 'read' },
  { sizeMm2: 50, strands: '108/0.80', areaMm2: 54.29, ohmPerKm: 0.337, copperMm: 9.8, insulationMm: 1.6, usualMm: 13, maxMm: 13.8, limitA: 220, massGPerM: 583, source: 'jis-av-sheet', status: 'read' },
  { sizeMm2: 60, strands: '127/0.80', areaMm2: 63.84, ohmPerKm: 0.287, copperMm: 10.4, insulationMm: 1.6, usualMm: 13.6, maxMm: 14.4, limitA: 243, massGPerM: 678, source: 'jis-av-sheet', status: 'read' },
  { sizeMm2: 85, strands: '169/0.80', areaMm2: 84.96, ohmPerKm: 0.215, copperMm: 12, insulationMm: 2, usualMm: 16, maxMm: 17, limitA: 300, massGPerM: 924, source: 'jis-av-sheet', status: 'read' },
  { sizeMm2: 100, strands: '217/0.80', areaMm2: 109.1, ohmPerKm: 0.168, copperMm: 13.6, insulationMm: 2, usualMm: 17.6, maxMm: 18.6, limitA: 356, massGPerM: 1151, source: 'jis-av-sheet', status: 'read' },
]

/** British PVC vehicle cable with strands of 0.30 mm. */
export const britishRows: readonly BritishRow[] = [
  { strands: '9/0.30', areaMm2: 0.65, ohmPerM: 0.0294, ratingA: 5.75, source: 'british-cable-table', status: 'read' },
  { strands: '14/0.30', areaMm2: 1, ohmPerM: 0.0189, ratingA: 8.75, source: 'british-cable-table', status: 'read' },
  { strands: '21/0.30', areaMm2: 1.5, ohmPerM: 0.0125, ratingA: 12.75, source: 'british-cable-table', status: 'read' },
  { strands: '28/0.30', areaMm2: 2, ohmPerM: 0.0094, ratingA: 17.5, source: 'british-cable-table', status: 'read' },
  { strands: '35/0.30', areaMm2: 2.5, ohmPerM: 0.0075, ratingA: 21.75, source: 'british-cable-table', status: 'read' },
  { strands: '44/0.30', areaMm2: 3, ohmPerM: 0.006, ratingA: 25.5, source: 'british-cable-table', status: 'read' },
  { strands: '65/0.30', areaMm2: 4.5, ohmPerM: null, ratingA: 35, source: 'british-cable-memory', status: 'from memory' },
  { strands: '84/0.30', areaMm2: 6, ohmPerM: null, ratingA: 42, source: 'british-cable-memory', status: 'from memory' },
  { strands: '97/0.30', areaMm2: 7, ohmPerM: null, ratingA: 50, source: 'british-cable-memory', status: 'from memory' },
  { strands: '120/0.30', areaMm2: 8.5, ohmPerM: null, ratingA: 60, source: 'british-cable-memory', status: 'from memory' },
]

/** British vehicle cable with strands of 0.012 in: area by arithmetic. */
export const imperialRows: readonly ImperialRow[] = [
  { strands: '9/.012', areaMm2: 0.657, source: 'imperial-strands', status: 'common practice' },
  { strands: '14/.012', areaMm2: 1.022, source: 'imperial-strands', status: 'common practice' },
  { strands: '28/.012', areaMm2: 2.043, source: 'imperial-strands', status: 'common practice' },
  { strands: '35/.012', areaMm2: 2.554, source: 'imperial-strands', status: 'common practice' },
  { strands: '44/.012', areaMm2: 3.21, source: 'imperial-strands', status: 'common practice' },
  { strands: '65/.012', areaMm2: 4.743, source: 'imperial-strands', status: 'common practice' },
  { strands: '84/.012', areaMm2: 6.129, source: 'imperial-strands', status: 'common practice' },
  { strands: '97/.012', areaMm2: 7.078, source: 'imperial-strands', status: 'common practice' },
  { strands: '120/.012', areaMm2: 8.756, source: 'imperial-strands', status: 'common practice' },
]

/** Solid annealed copper by AWG size, as published; the formula is in `awgDiameterMm`. */
export const awgRows: readonly AwgRow[] = [
  { awg: '22', circularMils: 642.4, ohmPer1000Ft: 16.14, diameterIn: 0.02535, source: 'hyperphysics-wire', status: 'read' },
  { awg: '21', circularMils: 810.1, ohmPer1000Ft: 12.8, diameterIn: 0.02846, source: 'hyperphysics-wire', status: 'read' },
  { awg: '20', circularMils: 1021.5, ohmPer1000Ft: 10.15, diameterIn: 0.03196, source: 'hyperphysics-wire', status: 'read' },
  { awg: '19', circularMils: 1288.1, ohmPer1000Ft: 8.051, diameterIn: 0.03589, source: 'hyperphysics-wire', status: 'read' },
  { awg: '18', circularMils: 1624.3, ohmPer1000Ft: 6.385, diameterIn: 0.0403, source: 'hyperphysics-wire', status: 'read' },
  { awg: '17', circularMils: 2048.2, ohmPer1000Ft: 5.064, diameterIn: 0.04526, source: 'hyperphysics-wire', status: 'read' },
  { awg: '16', circularMils: 2582.9, ohmPer1000Ft: 4.016, diameterIn: 0.05082, source: 'hyperphysics-wire', status: 'read' },
  { awg: '15', circularMils: 3256.7, ohmPer1000Ft: 3.184, diameterIn: 0.05707, source: 'hyperphysics-wire', status: 'read' },
  { awg: '14', circularMils: 4106.8, ohmPer1000Ft: 2.525, diameterIn: 0.06408, source: 'hyperphysics-wire', status: 'read' },
  { awg: '13', circularMils: 5178.4, ohmPer1000Ft: 2.003, diameterIn: 0.07196, source: 'hyperphysics-wire', status: 'read' },
  { awg: '12', circularMils: 6529, ohmPer1000Ft: 1.588, diameterIn: 0.0808, source: 'hyperphysics-wire', status: 'read' },
  { awg: '11', circularMils: 8234, ohmPer1000Ft: 1.26, diameterIn: 0.09074, source: 'hyperphysics-wire', status: 'read' },
  { awg: '10', circularMils: 10381, ohmPer1000Ft: 0.9989, diameterIn: 0.10189, source: 'hyperphysics-wire', status: 'read' },
  { awg: '9', circularMils: 13094, ohmPer1000Ft: 0.7921, diameterIn: 0.11443, source: 'hyperphysics-wire', status: 'read' },
  { awg: '8', circularMils: 16509, ohmPer1000Ft: 0.6282, diameterIn: 0.12849, source: 'hyperphysics-wire', status: 'read' },
  { awg: '7', circularMils: 20816, ohmPer1000Ft: 0.4982, diameterIn: 0.14428, source: 'hyperphysics-wire', status: 'read' },
  { awg: '6', circularMils: 26250, ohmPer1000Ft: 0.3951, diameterIn: 0.16202, source: 'hyperphysics-wire', status: 'read' },
  { awg: '5', circularMils: 33102, ohmPer1000Ft: 0.3133, diameterIn: 0.18194, source: 'hyperphysics-wire', status: 'read' },
  { awg: '4', circularMils: 41742, ohmPer1000Ft: 0.2485, diameterIn: 0.20431, source: 'hyperphysics-wire', status: 'read' },
  { awg: '3', circularMils: 52634, ohmPer1000Ft: 0.197, diameterIn: 0.22942, source: 'hyperphysics-wire', status: 'read' },
  { awg: '2', circularMils: 66373, ohmPer1000Ft: 0.1563, diameterIn: 0.25763, source: 'hyperphysics-wire', status: 'read' },
  { awg: '1', circularMils: 83694, ohmPer1000Ft: 0.124, diameterIn: 0.2893, source: 'hyperphysics-wire', status: 'read' },
  { awg: '0', circularMils: 105530, ohmPer1000Ft: 0.0983, diameterIn: 0.32485, source: 'hyperphysics-wire', status: 'read' },
  { awg: '00', circularMils: 133080, ohmPer1000Ft: 0.078, diameterIn: 0.3648, source: 'hyperphysics-wire', status: 'read' },
  { awg: '000', circularMils: 167810, ohmPer1000Ft: 0.0618, diameterIn: 0.40965, source: 'hyperphysics-wire', status: 'read' },
  { awg: '0000', circularMils: 211600, ohmPer1000Ft: 0.049, diameterIn: 0.46, source: 'hyperphysics-wire', status: 'read' },
]

/** SAE J1127 / J1128 gauges hold 3 to 12 % less copper than the AWG size of the same number. */
export const saeRows: readonly SaeRow[] = [
  { awg: '18', circularMils: 1537, areaMm2: 0.779, boatCircularMils: 1600, boatAreaMm2: 0.811, source: 'sae-area-table', status: 'read' },
  { awg: '16', circularMils: 2336, areaMm2: 1.184, boatCircularMils: 2600, boatAreaMm2: 1.317, source: 'sae-area-table', status: 'read' },
  { awg: '14', circularMils: 3702, areaMm2: 1.876, boatCircularMils: 4100, boatAreaMm2: 2.078, source: 'sae-area-table', status: 'read' },
  { awg: '12', circularMils: 5833, areaMm2: 2.956, boatCircularMils: 6500, boatAreaMm2: 3.294, source: 'sae-area-table', status: 'read' },
  { awg: '10', circularMils: 9343, areaMm2: 4.734, boatCircularMils: 10500, boatAreaMm2: 5.32, source: 'sae-area-table', status: 'read' },
  { awg: '8', circularMils: 14810, areaMm2: 7.504, boatCircularMils: 16800, boatAreaMm2: 8.513, source: 'sae-area-table', status: 'read' },
  { awg: '6', circularMils: 24538, areaMm2: 12.434, boatCircularMils: 26600, boatAreaMm2: 13.478, source: 'sae-area-table', status: 'read' },
  { awg: '4', circularMils: 37360, areaMm2: 18.931, boatCircularMils: 42000, boatAreaMm2: 21.282, source: 'sae-area-table', status: 'read' },
  { awg: '2', circularMils: 62450, areaMm2: 31.644, boatCircularMils: 66500, boatAreaMm2: 33.696, source: 'sae-area-table', status: 'read' },
  { awg: '1', circularMils: 77790, areaMm2: 39.417, boatCircularMils: 83690, boatAreaMm2: 42.406, source: 'sae-area-table', status: 'read' },
  { awg: '0', circularMils: 98980, areaMm2: 50.154, boatCircularMils: 105600, boatAreaMm2: 53.508, source: 'sae-area-table', status: 'read' },
  { awg: '00', circularMils: 125100, areaMm2: 63.389, boatCircularMils: 133100, boatAreaMm2: 67.443, source: 'sae-area-table', status: 'read' },
  { awg: '0000', circularMils: 205500, areaMm2: 104.128, boatCircularMils: 211600, boatAreaMm2: 107.219, source: 'sae-area-table', status: 'read' },
]

/** Outside diameters to SAE J1128: GPT thick PVC, TWP thin PVC, GXL medium cross-linked. */
export const saeDiameterRows: readonly SaeDiameterRow[] = [
  { awg: '24', gptUsualMm: null, gptMaxMm: null, twpUsualMm: 1.4, twpMaxMm: 1.5, gxlMm: null, source: 'sae-j1128-sheets', status: 'read' },
  { awg: '22', gptUsualMm: null, gptMaxMm: null, twpUsualMm: 1.6, twpMaxMm: 1.7, gxlMm: null, source: 'sae-j1128-sheets', status: 'read' },
  { awg: '20', gptUsualMm: 2.2, gptMaxMm: 2.4, twpUsualMm: 1.8, twpMaxMm: 1.9, gxlMm: 2.4, source: 'sae-j1128-sheets', status: 'read' },
  { awg: '18', gptUsualMm: 2.4, gptMaxMm: 2.5, twpUsualMm: 2, twpMaxMm: 2.2, gxlMm: 2.6, source: 'sae-j1128-sheets', status: 'read' },
  { awg: '16', gptUsualMm: 2.6, gptMaxMm: 2.9, twpUsualMm: 2.3, twpMaxMm: 2.4, gxlMm: 3, source: 'sae-j1128-sheets', status: 'read' },
  { awg: '14', gptUsualMm: 3, gptMaxMm: 3.2, twpUsualMm: 2.6, twpMaxMm: 2.7, gxlMm: 3.5, source: 'sae-j1128-sheets', status: 'read' },
  { awg: '12', gptUsualMm: 3.6, gptMaxMm: 3.8, twpUsualMm: 3.2, twpMaxMm: 3.3, gxlMm: 4.1, source: 'sae-j1128-sheets', status: 'read' },
  { awg: '10', gptUsualMm: 4.5, gptMaxMm: 4.7, twpUsualMm: 3.9, twpMaxMm: 4, gxlMm: 4.8, source: 'sae-j1128-sheets', status: 'read' },
  { awg: '8', gptUsualMm: 5.6, gptMaxMm: 6, twpUsualMm: 4.8, twpMaxMm: 4.9, gxlMm: 5.9, source: 'sae-j1128-sheets', status: 'read' },
]

/** Tin-plated aircraft copper wire, AC 43.13-1B Table 11-9; two decimals only, so coarse from size 4 up. */
export const aircraftRows: readonly AwgRow[] = [
  { awg: '24', circularMils: 475, ohmPer1000Ft: 28.4, source: 'ac43-13-1b', status: 'read' },
  { awg: '22', circularMils: 755, ohmPer1000Ft: 16.2, source: 'ac43-13-1b', status: 'read' },
  { awg: '20', circularMils: 1216, ohmPer1000Ft: 9.88, source: 'ac43-13-1b', status: 'read' },
  { awg: '18', circularMils: 1900, ohmPer1000Ft: 6.23, source: 'ac43-13-1b', status: 'read' },
  { awg: '16', circularMils: 2426, ohmPer1000Ft: 4.81, source: 'ac43-13-1b', status: 'read' },
  { awg: '14', circularMils: 3831, ohmPer1000Ft: 3.06, source: 'ac43-13-1b', status: 'read' },
  { awg: '12', circularMils: 5874, ohmPer1000Ft: 2.02, source: 'ac43-13-1b', status: 'read' },
  { awg: '10', circularMils: 9354, ohmPer1000Ft: 1.26, source: 'ac43-13-1b', status: 'read' },
  { awg: '8', circularMils: 16983, ohmPer1000Ft: 0.7, source: 'ac43-13-1b', status: 'read' },
  { awg: '6', circularMils: 26818, ohmPer1000Ft: 0.44, source: 'ac43-13-1b', status: 'read' },
  { awg: '4', circularMils: 42615, ohmPer1000Ft: 0.28, source: 'ac43-13-1b', status: 'read' },
  { awg: '2', circularMils: 66500, ohmPer1000Ft: 0.18, source: 'ac43-13-1b', status: 'read' },
  { awg: '1', circularMils: 81700, ohmPer1000Ft: 0.15, source: 'ac43-13-1b', status: 'read' },
  { awg: '0', circularMils: 104500, ohmPer1000Ft: 0.12, source: 'ac43-13-1b', status: 'read' },
  { awg: '00', circularMils: 133000, ohmPer1000Ft: 0.09, source: 'ac43-13-1b', status: 'read' },
  { awg: '000', circularMils: 166500, ohmPer1000Ft: 0.07, source: 'ac43-13-1b', status: 'read' },
  { awg: '0000', circularMils: 210900, ohmPer1000Ft: 0.06, source: 'ac43-13-1b', status: 'read' },
]

/** Copper conductors at 75 C, NEC chapter 9 Table 8; null where a size is not made solid. */
export const necRows: readonly NecRow[] = [
  { awg: '18', circularMils: 1620, solidOhmPer1000Ft: 7.77, strandedOhmPer1000Ft: 7.95, solidCoatedOhmPer1000Ft: 8.08, strandedCoatedOhmPer1000Ft: 8.45, source: 'nec-ch9-table8-page', status: 'read' },
  { awg: '16', circularMils: 2580, solidOhmPer1000Ft: 4.89, strandedOhmPer1000Ft: 4.99, solidCoatedOhmPer1000Ft: 5.08, strandedCoatedOhmPer1000Ft: 5.29, source: 'nec-ch9-table8-page', status: 'read' },
  { awg: '14', circularMils: 4110, solidOhmPer1000Ft: 3.07, strandedOhmPer1000Ft: 3.14, solidCoatedOhmPer1000Ft: 3.19, strandedCoatedOhmPer1000Ft: 3.26, source: 'nec-ch9-table8-page', status: 'read' },
  { awg: '12', circularMils: 6530, solidOhmPer1000Ft: 1.93, strandedOhmPer1000Ft: 1.98, solidCoatedOhmPer1000Ft: 2.01, strandedCoatedOhmPer1000Ft: 2.05, source: 'nec-ch9-table8-page', status: 'read' },
  { awg: '10', circularMils: 10380, solidOhmPer1000Ft: 1.21, strandedOhmPer1000Ft: 1.24, solidCoatedOhmPer1000Ft: 1.26, strandedCoatedOhmPer1000Ft: 1.29, source: 'nec-ch9-table8-page', status: 'read' },
  { awg: '8', circularMils: 16510, solidOhmPer1000Ft: 0.764, strandedOhmPer1000Ft: 0.778, solidCoatedOhmPer1000Ft: 0.786, strandedCoatedOhmPer1000Ft: 0.809, source: 'nec-ch9-table8-page', status: 'read' },
  { awg: '6', circularMils: 26240, solidOhmPer1000Ft: null, strandedOhmPer1000Ft: 0.491, solidCoatedOhmPer1000Ft: null, strandedCoatedOhmPer1000Ft: 0.51, source: 'nec-ch9-table8-page', status: 'read' },
  { awg: '4', circularMils: 41740, solidOhmPer1000Ft: null, strandedOhmPer1000Ft: 0.308, solidCoatedOhmPer1000Ft: null, strandedCoatedOhmPer1000Ft: 0.321, source: 'nec-ch9-table8-page', status: 'read' },
  { awg: '3', circularMils: 52620, solidOhmPer1000Ft: null, strandedOhmPer1000Ft: 0.245, solidCoatedOhmPer1000Ft: null, strandedCoatedOhmPer1000Ft: 0.254, source: 'nec-ch9-table8-page', status: 'read' },
  { awg: '2', circularMils: 66360, solidOhmPer1000Ft: null, strandedOhmPer1000Ft: 0.194, solidCoatedOhmPer1000Ft: null, strandedCoatedOhmPer1000Ft: 0.201, source: 'nec-ch9-table8-page', status: 'read' },
  { awg: '1', circularMils: 83690, solidOhmPer1000Ft: null, strandedOhmPer1000Ft: 0.154, solidCoatedOhmPer1000Ft: null, strandedCoatedOhmPer1000Ft: 0.16, source: 'nec-ch9-table8-page', status: 'read' },
  { awg: '0', circularMils: 105600, solidOhmPer1000Ft: null, strandedOhmPer1000Ft: 0.122, solidCoatedOhmPer1000Ft: null, strandedCoatedOhmPer1000Ft: 0.127, source: 'nec-ch9-table8-page', status: 'read' },
  { awg: '00', circularMils: 133100, solidOhmPer1000Ft: null, strandedOhmPer1000Ft: 0.0967, solidCoatedOhmPer1000Ft: null, strandedCoatedOhmPer1000Ft: 0.101, source: 'nec-ch9-table8-page', status: 'read' },
  { awg: '000', circularMils: 167800, solidOhmPer1000Ft: null, strandedOhmPer1000Ft: 0.0766, solidCoatedOhmPer1000Ft: null, strandedCoatedOhmPer1000Ft: 0.0797, source: 'nec-ch9-table8-page', status: 'read' },
  { awg: '0000', circularMils: 211600, solidOhmPer1000Ft: null, strandedOhmPer1000Ft: 0.0608, solidCoatedOhmPer1000Ft: null, strandedCoatedOhmPer1000Ft: 0.0626, source: 'nec-ch9-table8-page', status: 'read' },
]
