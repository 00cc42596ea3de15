import type { Sourced } from './sources.ts'

/** Collar colour of a ferrule in three codes. */
export interface FerruleColourRow extends Sourced {
  readonly mm2: number
  readonly awgNear: string
  readonly din: string
  readonly oldGerman: string
  readonly french: string
}

/** Dimensions of a ferrule: bore, lengths bare and of the pin of a collared one, and the largest insulation in its collar. */
export interface FerruleSizeRow extends Sourced {
  readonly mm2: number
  readonly boreMm: number
  readonly bareLengthsMm: readonly number[]
  readonly pinLengthsMm: readonly number[]
  readonly collarInsideMm: number
}

/** Grey is 0.75 or 4 mm2: the colour alone is no proof. One page gives 0.25 as light blue and 0.34 as green. */
export const ferruleColourRows: readonly FerruleColourRow[] = [
  { mm2: 0.25, awgNear: '24', din: 'yellow', oldGerman: 'light blue', french: 'violet', source: 'ferrule-colour-pages', status: 'read' },
  { mm2: 0.34, awgNear: '22', din: 'turquoise', oldGerman: 'turquoise', french: 'pink', source: 'ferrule-colour-pages', status: 'read' },
  { mm2: 0.5, awgNear: '20', din: 'white', oldGerman: 'orange', french: 'white', source: 'ferrule-colour-pages', status: 'read' },
  { mm2: 0.75, awgNear: '18', din: 'grey', oldGerman: 'white', french: 'blue', source: 'ferrule-colour-pages', status: 'read' },
  { mm2: 1, awgNear: '17', din: 'red', oldGerman: 'yellow', french: 'red', source: 'ferrule-colour-pages', status: 'read' },
  { mm2: 1.5, awgNear: '16', din: 'black', oldGerman: 'red', french: 'black', source: 'ferrule-colour-pages', status: 'read' },
  { mm2: 2.5, awgNear: '14', din: 'blue', oldGerman: 'blue', french: 'grey', source: 'ferrule-colour-pages', status: 'read' },
  { mm2: 4, awgNear: '12', din: 'grey', oldGerman: 'grey', french: 'orange', source: 'ferrule-colour-pages', status: 'read' },
  { mm2: 6, awgNear: '10', din: 'yellow', oldGerman: 'black', french: 'green', source: 'ferrule-colour-pages', status: 'read' },
  { mm2: 10, awgNear: '8', din: 'red', oldGerman: 'ivory', french: 'brown', source: 'ferrule-colour-pages', status: 'read' },
  { mm2: 16, awgNear: '6', din: 'blue', oldGerman: 'green', french: 'ivory', source: 'ferrule-colour-pages', status: 'read' },
  { mm2: 25, awgNear: '4', din: 'yellow', oldGerman: 'brown', french: 'black', source: 'ferrule-colour-pages', status: 'read' },
]

/**
 * DIN 46228. Clamps of old torpedo fuse boxes are 2.5 to 4 mm: a bare ferrule or a pin of 6 to 8 mm fits, the collar often does
 * not (common practice).
 */
export const ferruleSizeRows: readonly FerruleSizeRow[] = [
  { mm2: 0.5, boreMm: 1, bareLengthsMm: [6, 8, 10], pinLengthsMm: [6, 8, 10], collarInsideMm: 2.6, source: 'din46228-memory', status: 'from memory' },
  { mm2: 0.75, boreMm: 1.2, bareLengthsMm: [6, 8, 10], pinLengthsMm: [6, 8, 10], collarInsideMm: 2.8, source: 'din46228-memory', status: 'from memory' },
  { mm2: 1, boreMm: 1.4, bareLengthsMm: [6, 8, 10], pinLengthsMm: [6, 8, 10], collarInsideMm: 3, source: 'din46228-memory', status: 'from memory' },
  { mm2: 1.5, boreMm: 1.7, bareLengthsMm: [7, 10], pinLengthsMm: [8, 10, 18], collarInsideMm: 3.5, source: 'din46228-memory', status: 'from memory' },
  { mm2: 2.5, boreMm: 2.2, bareLengthsMm: [7, 12], pinLengthsMm: [8, 12, 18], collarInsideMm: 4.2, source: 'din46228-memory', status: 'from memory' },
  { mm2: 4, boreMm: 2.8, bareLengthsMm: [9, 12], pinLengthsMm: [10, 12, 18], collarInsideMm: 4.8, source: 'din46228-memory', status: 'from memory' },
  { mm2: 6, boreMm: 3.5, bareLengthsMm: [10, 12, 15], pinLengthsMm: [12, 18], collarInsideMm: 6.3, source: 'din46228-memory', status: 'from memory' },
  { mm2: 10, boreMm: 4.5, bareLengthsMm: [12, 15, 18], pinLengthsMm: [12, 18], collarInsideMm: 7.6, source: 'din46228-memory', status: 'from memory' },
  { mm2: 16, boreMm: 5.8, bareLengthsMm: [12, 15, 18], pinLengthsMm: [12, 18], collarInsideMm: 8.8, source: 'din46228-memory', status: 'from memory' },
]
