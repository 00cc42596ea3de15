import type { Sourced } from './sources.ts'

/** Amps of a copper wire by AWG size, one figure for each temperature in C that its insulation bears. */
export interface BoatAmpacityRow extends Sourced {
  readonly awg: string
  readonly by60A: number
  readonly by75A: number
  readonly by80A: number
  readonly by90A: number
  readonly by105A: number
  readonly by125A: number
  readonly by200A: number
}

/** Amps of an aircraft wire inside a large bundle, one figure for each temperature in C that its insulation bears. */
export interface AircraftAmpacityRow extends Sourced {
  readonly awg: string
  readonly by105A: number
  readonly by150A: number
  readonly by200A: number
}

/** Continuous amps by cross-section, and the amps a square millimetre that they come from. */
export interface DensityRow extends Sourced {
  readonly areaMm2: number
  readonly densityAPerMm2: number
  readonly currentA: number
}

/** A rule of thumb in amps a square millimetre. */
export interface DensityRule extends Sourced {
  readonly densityAPerMm2: number
}

/** The wire chosen for currents below `belowA` (null: any, a starter). */
export interface WireChoiceRow extends Sourced {
  readonly belowA: number | null
  readonly minMm2: number
  readonly maxMm2: number
  readonly use: string
}

/** Amps of a British cable with imperial strands. */
export interface ImperialAmpacityRow extends Sourced {
  readonly strands: string
  readonly ratingA: number
}

/** 33 CFR 183.425 Table 5, boats; 30 C ambient. */
export const boatAmpacityRows: readonly BoatAmpacityRow[] = [
  { awg: '18', by60A: 10, by75A: 10, by80A: 15, by90A: 20, by105A: 20, by125A: 25, by200A: 25, source: 'cfr33-183-425', status: 'read' },
  { awg: '16', by60A: 15, by75A: 15, by80A: 20, by90A: 25, by105A: 25, by125A: 30, by200A: 35, source: 'cfr33-183-425', status: 'read' },
  { awg: '14', by60A: 20, by75A: 20, by80A: 25, by90A: 30, by105A: 35, by125A: 40, by200A: 45, source: 'cfr33-183-425', status: 'read' },
  { awg: '12', by60A: 25, by75A: 25, by80A: 35, by90A: 40, by105A: 45, by125A: 50, by200A: 55, source: 'cfr33-183-425', status: 'read' },
  { awg: '10', by60A: 40, by75A: 40, by80A: 50, by90A: 55, by105A: 60, by125A: 70, by200A: 70, source: 'cfr33-183-425', status: 'read' },
  { awg: '8', by60A: 55, by75A: 65, by80A: 70, by90A: 70, by105A: 80, by125A: 90, by200A: 100, source: 'cfr33-183-425', status: 'read' },
  { awg: '6', by60A: 80, by75A: 95, by80A: 100, by90A: 100, by105A: 120, by125A: 125, by200A: 135, source: 'cfr33-183-425', status: 'read' },
  { awg: '4', by60A: 105, by75A: 125, by80A: 130, by90A: 135, by105A: 160, by125A: 170, by200A: 180, source: 'cfr33-183-425', status: 'read' },
  { awg: '3', by60A: 120, by75A: 145, by80A: 150, by90A: 155, by105A: 180, by125A: 195, by200A: 210, source: 'cfr33-183-425', status: 'read' },
  { awg: '2', by60A: 140, by75A: 170, by80A: 175, by90A: 180, by105A: 210, by125A: 225, by200A: 240, source: 'cfr33-183-425', status: 'read' },
  { awg: '1', by60A: 165, by75A: 195, by80A: 210, by90A: 210, by105A: 245, by125A: 265, by200A: 280, source: 'cfr33-183-425', status: 'read' },
  { awg: '0', by60A: 195, by75A: 230, by80A: 245, by90A: 245, by105A: 285, by125A: 305, by200A: 325, source: 'cfr33-183-425', status: 'read' },
  { awg: '00', by60A: 225, by75A: 265, by80A: 285, by90A: 285, by105A: 330, by125A: 355, by200A: 370, source: 'cfr33-183-425', status: 'read' },
  { awg: '000', by60A: 260, by75A: 310, by80A: 330, by90A: 330, by105A: 385, by125A: 410, by200A: 430, source: 'cfr33-183-425', status: 'read' },
  { awg: '0000', by60A: 300, by75A: 360, by80A: 385, by90A: 385, by105A: 445, by125A: 475, by200A: 510, source: 'cfr33-183-425', status: 'read' },
]

/**
 * AC 43.13-1B Table 11-9: 70 C ambient, 33 or more wires in the bundle for sizes 24 to 10 and 9 wires for 8 and larger, at most
 * 20 % of the bundle capacity used, 60,000 ft. Conservative against a road vehicle.
 */
export const aircraftAmpacityRows: readonly AircraftAmpacityRow[] = [
  { awg: '24', by105A: 2.5, by150A: 4, by200A: 5, source: 'ac43-13-1b', status: 'read' },
  { awg: '22', by105A: 3, by150A: 5, by200A: 6, source: 'ac43-13-1b', status: 'read' },
  { awg: '20', by105A: 4, by150A: 7, by200A: 9, source: 'ac43-13-1b', status: 'read' },
  { awg: '18', by105A: 6, by150A: 9, by200A: 12, source: 'ac43-13-1b', status: 'read' },
  { awg: '16', by105A: 7, by150A: 11, by200A: 14, source: 'ac43-13-1b', status: 'read' },
  { awg: '14', by105A: 10, by150A: 14, by200A: 18, source: 'ac43-13-1b', status: 'read' },
  { awg: '12', by105A: 13, by150A: 19, by200A: 25, source: 'ac43-13-1b', status: 'read' },
  { awg: '10', by105A: 17, by150A: 26, by200A: 32, source: 'ac43-13-1b', status: 'read' },
  { awg: '8', by105A: 38, by150A: 57, by200A: 71, source: 'ac43-13-1b', status: 'read' },
  { awg: '6', by105A: 50, by150A: 76, by200A: 97, source: 'ac43-13-1b', status: 'read' },
  { awg: '4', by105A: 68, by150A: 103, by200A: 133, source: 'ac43-13-1b', status: 'read' },
  { awg: '2', by105A: 95, by150A: 141, by200A: 179, source: 'ac43-13-1b', status: 'read' },
  { awg: '1', by105A: 113, by150A: 166, by200A: 210, source: 'ac43-13-1b', status: 'read' },
  { awg: '0', by105A: 128, by150A: 192, by200A: 243, source: 'ac43-13-1b', status: 'read' },
  { awg: '00', by105A: 147, by150A: 222, by200A: 285, source: 'ac43-13-1b', status: 'read' },
  { awg: '000', by105A: 172, by150A: 262, by200A: 335, source: 'ac43-13-1b', status: 'read' },
  { awg: '0000', by105A: 204, by150A: 310, by200A: 395, source: 'ac43-13-1b', status: 'read' },
]

/** Permissible continuous current of vehicle cable by cross-section. Ambient and laying are not printed. */
export const densityRows: readonly DensityRow[] = [
  { areaMm2: 1, densityAPerMm2: 10, currentA: 10, source: 'journal-2017', status: 'read' },
  { areaMm2: 1.5, densityAPerMm2: 10, currentA: 15, source: 'journal-2017', status: 'read' },
  { areaMm2: 2.5, densityAPerMm2: 10, currentA: 25, source: 'journal-2017', status: 'read' },
  { areaMm2: 4, densityAPerMm2: 10, currentA: 40, source: 'journal-2017', status: 'read' },
  { areaMm2: 6, densityAPerMm2: 6, currentA: 36, source: 'journal-2017', status: 'read' },
  { areaMm2: 10, densityAPerMm2: 6, currentA: 60, source: 'journal-2017', status: 'read' },
  { areaMm2: 16, densityAPerMm2: 6, currentA: 96, source: 'journal-2017', status: 'read' },
  { areaMm2: 25, densityAPerMm2: 4, currentA: 100, source: 'journal-2017', status: 'read' },
  { areaMm2: 35, densityAPerMm2: 4, currentA: 140, source: 'journal-2017', status: 'read' },
  { areaMm2: 50, densityAPerMm2: 4, currentA: 200, source: 'journal-2017', status: 'read' },
  { areaMm2: 70, densityAPerMm2: 3, currentA: 210, source: 'journal-2017', status: 'read' },
  { areaMm2: 95, densityAPerMm2: 3, currentA: 285, source: 'journal-2017', status: 'read' },
]

/** The rule of thumb for old vehicles. */
export const densityRule = {
  continuous: { densityAPerMm2: 5, source: 'wire-choice-pages', status: 'read' },
  shortTime: { densityAPerMm2: 10, source: 'wire-choice-pages', status: 'read' },
} as const satisfies Readonly<Record<string, DensityRule>>

/** Wire sizes by current on older German vehicles; at least 1 mm2 for a single wire laid alone, for strength. */
export const wireChoiceRows: readonly WireChoiceRow[] = [
  { belowA: 2.5, minMm2: 0.5, maxMm2: 0.75, use: 'rear, parking, interior, warning lamps', source: 'wire-choice-pages', status: 'read' },
  { belowA: 8, minMm2: 1.5, maxMm2: 1.5, use: 'indicators, headlamp, wiper, single horn', source: 'wire-choice-pages', status: 'read' },
  { belowA: 16, minMm2: 2.5, maxMm2: 2.5, use: 'shared headlamp feed', source: 'wire-choice-pages', status: 'read' },
  { belowA: 40, minMm2: 6, maxMm2: 6, use: 'feed to ignition switch / fuse box', source: 'wire-choice-pages', status: 'read' },
  { belowA: null, minMm2: 16, maxMm2: 35, use: 'starter', source: 'wire-choice-pages', status: 'read' },
]

/** Standard ratings of British cable in the 1950s. Insulation, ambient and laying are not printed. */
export const imperialAmpacityRows: readonly ImperialAmpacityRow[] = [
  { strands: '14/.012', ratingA: 7, source: 'british-1950s-article', status: 'read' },
  { strands: '28/.012', ratingA: 14, source: 'british-1950s-article', status: 'read' },
  { strands: '44/.012', ratingA: 22, source: 'british-1950s-article', status: 'read' },
]
