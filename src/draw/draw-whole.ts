import type { Wiring } from '../record/index.ts'
import { drawPaths } from './draw-paths.ts'
import type { Sheet } from './layout.ts'
import type { Models } from './path-graph.ts'
import { LETTER, type Scene } from './scene.ts'

/** Largest lettering in the drawing's own unit; a vehicle that needs more is larger than its sheet even as a whole. */
const MOST_LETTER = 30
const TRIES = 6

/**
 * The whole vehicle, or one circuit, so that it fits the sheet when it is made smaller and its names are still 12 px
 * high: they are lettered larger in the drawing's unit until both hold. Its columns go the same way as when it is read.
 */
export function drawWhole(wiring: Wiring, models: Models, sheet: Sheet, circuit: string | null): Scene {
  const { mirrored } = drawPaths(wiring, models, sheet, circuit)
  let letter = LETTER
  for (let i = 0; ; i++) {
    const scene = drawPaths(wiring, models, { width: 0, height: 0 }, circuit, { whole: true, letter, mirrored })
    const scale = Math.min(1, sheet.width / scene.width, sheet.height / scene.height)
    if (letter * scale >= LETTER || letter >= MOST_LETTER || i === TRIES) return scene
    letter = Math.min(MOST_LETTER, LETTER / scale + 0.5)
  }
}
