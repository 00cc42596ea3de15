import { LETTER } from './scene.ts'

/**
 * How close a drawing is set: to be read wire by wire, or so that all of it is seen at once: no letters beside the
 * wires, names in one line, upright where they stand close, and as large as `letter` so that they can still be read.
 */
export interface Manner {
  readonly whole: boolean
  readonly letter: number
  /** Room for a name in one line before it goes on in a second, for letters of 12. */
  readonly lineRoom: number
  /** Whether the columns go the other way round than they were ordered; null where the supply's place decides. */
  readonly mirrored: boolean | null
}

export const READ: Manner = { whole: false, letter: LETTER, lineRoom: 0, mirrored: null }
