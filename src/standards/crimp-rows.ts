import type { Sourced } from './sources.ts'

/** How far to strip for a terminal; null where it follows from the part. */
export interface StripLengthRow extends Sourced {
  readonly terminal: string
  readonly minMm: number | null
  readonly maxMm: number | null
}

/** The most nicked and broken strands that a conductor may have. */
export interface NickedStrandsRow extends Sourced {
  readonly awg: string
  readonly strands: string
  readonly nicked: number
  readonly broken: number
}

/** Crimp height of two dies on a solder slug, mm. */
export interface CrimpHeightRow extends Sourced {
  readonly awg: string
  readonly slugMm: number
  readonly crescentMinMm: number
  readonly crescentMaxMm: number
  readonly tetraMinMm: number | null
  readonly tetraMaxMm: number | null
}

/** Least pull in newtons that a crimp stands, commercial and military. */
export interface PullOutRow extends Sourced {
  readonly awg: string
  readonly mm2: number
  readonly commercialN: number
  readonly militaryN: number | null
}

/** Least pull that a boat connection stands for a minute. */
export interface BoatPullOutRow extends Sourced {
  readonly awg: string
  readonly pullN: number
}

/** Least pull by wire size. */
export interface AreaPullOutRow extends Sourced {
  readonly mm2: number
  readonly pullN: number
}

/** Always measure the barrel. */
export const stripLengthRows: readonly StripLengthRow[] = [
  { terminal: 'pre-insulated ring, fork, blade, bullet: red', minMm: 5, maxMm: 6, source: 'strip-memory', status: 'from memory' },
  { terminal: 'pre-insulated ring, fork, blade, bullet: blue', minMm: 5, maxMm: 6, source: 'strip-memory', status: 'from memory' },
  { terminal: 'pre-insulated ring, fork, blade, bullet: yellow', minMm: 6, maxMm: 8, source: 'strip-memory', status: 'from memory' },
  { terminal: 'butt splice, each side: red or blue', minMm: 7, maxMm: 8, source: 'strip-memory', status: 'from memory' },
  { terminal: 'butt splice, each side: yellow', minMm: 8, maxMm: 10, source: 'strip-memory', status: 'from memory' },
  { terminal: 'open-barrel blade 2.8', minMm: 3, maxMm: 4, source: 'strip-memory', status: 'from memory' },
  { terminal: 'open-barrel blade 4.8', minMm: 4, maxMm: 5, source: 'strip-memory', status: 'from memory' },
  { terminal: 'open-barrel blade 6.3, 0.5-2.5 mm2', minMm: 4.5, maxMm: 5.5, source: 'strip-memory', status: 'from memory' },
  { terminal: 'open-barrel blade 6.3, 4-6 mm2', minMm: 6, maxMm: 7, source: 'strip-memory', status: 'from memory' },
  { terminal: 'open-barrel blade 9.5', minMm: 6, maxMm: 8, source: 'strip-memory', status: 'from memory' },
  { terminal: 'open-barrel bullet 3.9', minMm: 4, maxMm: 5, source: 'strip-memory', status: 'from memory' },
  { terminal: 'British solder or crimp bullet 4.7', minMm: 9, maxMm: 11, source: 'strip-memory', status: 'from memory', note: 'strands must show at the hole in the nose' },
  { terminal: 'pin terminal red or blue', minMm: 5, maxMm: 6, source: 'strip-memory', status: 'from memory' },
  { terminal: 'bare ferrule: strip = ferrule length (+0..1)', minMm: null, maxMm: null, source: 'strip-memory', status: 'from memory' },
  { terminal: 'collared ferrule 6 mm pin', minMm: 8, maxMm: 8, source: 'strip-memory', status: 'from memory' },
  { terminal: 'collared ferrule 8 mm pin', minMm: 10, maxMm: 10, source: 'strip-memory', status: 'from memory' },
  { terminal: 'collared ferrule 12 mm pin', minMm: 14, maxMm: 14, source: 'strip-memory', status: 'from memory' },
  { terminal: 'screw terminal, no ferrule', minMm: 6, maxMm: 7, source: 'automation-terminal-pages', status: 'read' },
  { terminal: 'any small crimp terminal, repair in the field', minMm: 6.4, maxMm: 12.7, source: 'tm-5-4120-393-14', status: 'read', note: 'par. 4-34, 1/4 to 1/2 in' },
  { terminal: 'battery lug 8 AWG (8.4 mm2): barrel length', minMm: 10.4, maxMm: 11.4, source: 'battery-lug-sheet-2018', status: 'read', note: 'barrel 0.41 in; upper value barrel + 1 mm' },
  { terminal: 'battery lug 6 AWG (13.3 mm2): barrel length', minMm: 11.2, maxMm: 12.2, source: 'battery-lug-sheet-2018', status: 'read', note: 'barrel 0.44 in; upper value barrel + 1 mm' },
]

/** AC 43.13-1B Table 11-13, copper. */
export const nickedStrandsRows: readonly NickedStrandsRow[] = [
  { awg: '24-14', strands: '19', nicked: 2, broken: 0, source: 'ac43-13-1b-11-13', status: 'read' },
  { awg: '12-10', strands: '37', nicked: 4, broken: 0, source: 'ac43-13-1b-11-13', status: 'read' },
  { awg: '8-4', strands: '133', nicked: 6, broken: 6, source: 'ac43-13-1b-11-13', status: 'read' },
  { awg: '2-1', strands: '665-817', nicked: 6, broken: 6, source: 'ac43-13-1b-11-13', status: 'read' },
  { awg: '0-00', strands: '1045-1330', nicked: 6, broken: 6, source: 'ac43-13-1b-11-13', status: 'read' },
]

/** One maker's pre-insulated terminals with that maker's tools: not for other makers, nor for open barrels. */
export const crimpHeightRows: readonly CrimpHeightRow[] = [
  { awg: '26-22', slugMm: 3.18, crescentMinMm: 1.6, crescentMaxMm: 1.75, tetraMinMm: null, tetraMaxMm: null, source: 'terminal-maker-specs', status: 'read' },
  { awg: '24-20', slugMm: 3.18, crescentMinMm: 2.26, crescentMaxMm: 2.41, tetraMinMm: null, tetraMaxMm: null, source: 'terminal-maker-specs', status: 'read' },
  { awg: '22-16', slugMm: 3.18, crescentMinMm: 2.77, crescentMaxMm: 2.92, tetraMinMm: 1.98, tetraMaxMm: 2.18, source: 'terminal-maker-specs', status: 'read' },
  { awg: '20-16 heavy duty', slugMm: 4.76, crescentMinMm: 3.02, crescentMaxMm: 3.18, tetraMinMm: 2.34, tetraMaxMm: 2.54, source: 'terminal-maker-specs', status: 'read' },
  { awg: '16-14', slugMm: 4.76, crescentMinMm: 3.02, crescentMaxMm: 3.18, tetraMinMm: 2.34, tetraMaxMm: 2.54, source: 'terminal-maker-specs', status: 'read' },
  { awg: '16-14 heavy duty', slugMm: 6.35, crescentMinMm: 4.29, crescentMaxMm: 4.44, tetraMinMm: 3.25, tetraMaxMm: 3.45, source: 'terminal-maker-specs', status: 'read' },
  { awg: '12-10', slugMm: 6.35, crescentMinMm: 4.29, crescentMaxMm: 4.44, tetraMinMm: 3.25, tetraMaxMm: 3.45, source: 'terminal-maker-specs', status: 'read' },
  { awg: '8', slugMm: 6.35, crescentMinMm: 5.11, crescentMaxMm: 5.26, tetraMinMm: null, tetraMaxMm: null, source: 'terminal-maker-specs', status: 'read' },
  { awg: '6', slugMm: 6.35, crescentMinMm: 6.02, crescentMaxMm: 6.17, tetraMinMm: null, tetraMaxMm: null, source: 'terminal-maker-specs', status: 'read' },
  { awg: '4', slugMm: 9.53, crescentMinMm: 6.83, crescentMaxMm: 6.98, tetraMinMm: null, tetraMaxMm: null, source: 'terminal-maker-specs', status: 'read' },
  { awg: '2', slugMm: 9.53, crescentMinMm: 8.1, crescentMaxMm: 8.26, tetraMinMm: null, tetraMaxMm: null, source: 'terminal-maker-specs', status: 'read' },
  { awg: '1/0', slugMm: 12.7, crescentMinMm: 10.19, crescentMaxMm: 10.34, tetraMinMm: null, tetraMaxMm: null, source: 'terminal-maker-specs', status: 'read' },
  { awg: '2/0', slugMm: 15.88, crescentMinMm: 12.67, crescentMaxMm: 12.83, tetraMinMm: null, tetraMaxMm: null, source: 'terminal-maker-specs', status: 'read', note: 'sheet prints 10.67-12.83; its own inch figure .499 is 12.67' },
]

/**
 * UL 486A and MIL-T-7928 figures (which they are: from memory); 25.4 mm a minute, held for 1 minute. For AWG 6 another maker prints
 * 455 N beside 100 lbf, which is 445 N.
 */
export const pullOutRows: readonly PullOutRow[] = [
  { awg: '28', mm2: 0.081, commercialN: 8.9, militaryN: null, source: 'terminal-maker-specs', status: 'read' },
  { awg: '26', mm2: 0.129, commercialN: 13.4, militaryN: 31.1, source: 'terminal-maker-specs', status: 'read' },
  { awg: '24', mm2: 0.205, commercialN: 22.3, militaryN: 44.5, source: 'terminal-maker-specs', status: 'read' },
  { awg: '22', mm2: 0.326, commercialN: 35.6, militaryN: 66.7, source: 'terminal-maker-specs', status: 'read' },
  { awg: '20', mm2: 0.519, commercialN: 57.9, militaryN: 84.5, source: 'terminal-maker-specs', status: 'read' },
  { awg: '18', mm2: 0.823, commercialN: 89, militaryN: 169, source: 'terminal-maker-specs', status: 'read' },
  { awg: '16', mm2: 1.31, commercialN: 133.5, militaryN: 222.5, source: 'terminal-maker-specs', status: 'read' },
  { awg: '14', mm2: 2.08, commercialN: 222.5, militaryN: 311.5, source: 'terminal-maker-specs', status: 'read' },
  { awg: '12', mm2: 3.31, commercialN: 311.5, militaryN: 489.3, source: 'terminal-maker-specs', status: 'read' },
  { awg: '10', mm2: 5.26, commercialN: 356, militaryN: 667.2, source: 'terminal-maker-specs', status: 'read' },
  { awg: '8', mm2: 8.37, commercialN: 400.5, militaryN: null, source: 'terminal-maker-specs', status: 'read' },
  { awg: '6', mm2: 13.3, commercialN: 445, militaryN: null, source: 'terminal-maker-specs', status: 'read' },
  { awg: '4', mm2: 21.2, commercialN: 623, militaryN: null, source: 'terminal-maker-specs', status: 'read' },
  { awg: '2', mm2: 33.6, commercialN: 801, militaryN: null, source: 'terminal-maker-specs', status: 'read' },
  { awg: '1/0', mm2: 53.5, commercialN: 1112.5, militaryN: null, source: 'terminal-maker-specs', status: 'read' },
  { awg: '2/0', mm2: 67.4, commercialN: 1334, militaryN: null, source: 'terminal-maker-specs', status: 'read', note: 'sheet prints 1235 N beside 300 lbf; 300 lbf is 1334 N, given here' },
]

/** ABYC E-11: well below UL 486A for thin wire. */
export const boatPullOutRows: readonly BoatPullOutRow[] = [
  { awg: '18', pullN: 44, source: 'boat-handbook', status: 'read' },
  { awg: '16', pullN: 67, source: 'boat-handbook', status: 'read' },
  { awg: '14', pullN: 133, source: 'boat-handbook', status: 'read' },
  { awg: '12', pullN: 156, source: 'boat-handbook', status: 'read' },
  { awg: '10', pullN: 178, source: 'abyc-e11-memory', status: 'from memory' },
  { awg: '8', pullN: 200, source: 'abyc-e11-memory', status: 'from memory' },
  { awg: '6', pullN: 222, source: 'abyc-e11-memory', status: 'from memory' },
  { awg: '5', pullN: 267, source: 'abyc-e11-memory', status: 'from memory' },
  { awg: '4', pullN: 311, source: 'boat-handbook', status: 'read' },
  { awg: '3', pullN: 356, source: 'boat-handbook', status: 'read' },
  { awg: '2', pullN: 400, source: 'boat-handbook', status: 'read' },
  { awg: '1', pullN: 445, source: 'boat-handbook', status: 'read' },
  { awg: '1/0', pullN: 556, source: 'abyc-e11-memory', status: 'from memory' },
  { awg: '2/0', pullN: 667, source: 'abyc-e11-memory', status: 'from memory' },
  { awg: '3/0', pullN: 778, source: 'abyc-e11-memory', status: 'from memory' },
  { awg: '4/0', pullN: 1001, source: 'abyc-e11-memory', status: 'from memory' },
]

/** IEC 60352-2, unproved: unsourced pages give other figures (0.5 mm2: 40 N, 1.0: 70, 2.5: 150, 4: 210, 6: 280, 10: 420). */
export const crimpPullRows: readonly AreaPullOutRow[] = [
  { mm2: 0.22, pullN: 28, source: 'iec60352-2-memory', status: 'from memory' },
  { mm2: 0.25, pullN: 32, source: 'iec60352-2-memory', status: 'from memory' },
  { mm2: 0.32, pullN: 40, source: 'iec60352-2-memory', status: 'from memory' },
  { mm2: 0.5, pullN: 60, source: 'iec60352-2-memory', status: 'from memory' },
  { mm2: 0.75, pullN: 85, source: 'iec60352-2-memory', status: 'from memory' },
  { mm2: 0.82, pullN: 90, source: 'iec60352-2-memory', status: 'from memory' },
  { mm2: 1, pullN: 108, source: 'iec60352-2-memory', status: 'from memory' },
  { mm2: 1.3, pullN: 135, source: 'iec60352-2-memory', status: 'from memory' },
  { mm2: 1.5, pullN: 150, source: 'iec60352-2-memory', status: 'from memory' },
  { mm2: 2.1, pullN: 200, source: 'iec60352-2-memory', status: 'from memory' },
  { mm2: 2.5, pullN: 230, source: 'iec60352-2-memory', status: 'from memory' },
  { mm2: 3.3, pullN: 275, source: 'iec60352-2-memory', status: 'from memory' },
  { mm2: 4, pullN: 310, source: 'iec60352-2-memory', status: 'from memory' },
  { mm2: 5.3, pullN: 355, source: 'iec60352-2-memory', status: 'from memory' },
  { mm2: 6, pullN: 360, source: 'iec60352-2-memory', status: 'from memory' },
  { mm2: 8.4, pullN: 370, source: 'iec60352-2-memory', status: 'from memory' },
  { mm2: 10, pullN: 380, source: 'iec60352-2-memory', status: 'from memory' },
]

/** A conductor in a screw clamp or ferrule, held for 1 minute. */
export const screwPullRows: readonly AreaPullOutRow[] = [
  { mm2: 0.5, pullN: 20, source: 'iec60999-1-memory', status: 'from memory' },
  { mm2: 0.75, pullN: 30, source: 'iec60999-1-memory', status: 'from memory' },
  { mm2: 1, pullN: 35, source: 'iec60999-1-memory', status: 'from memory' },
  { mm2: 1.5, pullN: 40, source: 'iec60999-1-memory', status: 'from memory' },
  { mm2: 2.5, pullN: 50, source: 'iec60999-1-memory', status: 'from memory' },
  { mm2: 4, pullN: 60, source: 'iec60999-1-memory', status: 'from memory' },
  { mm2: 6, pullN: 80, source: 'iec60999-1-memory', status: 'from memory' },
  { mm2: 10, pullN: 90, source: 'iec60999-1-memory', status: 'from memory' },
  { mm2: 16, pullN: 100, source: 'iec60999-1-memory', status: 'from memory' },
]
