import type { Wiring } from '../record/index.ts'
import { drawPaths } from './draw-paths.ts'
import type { Sheet } from './layout.ts'
import type { Models } from './path-graph.ts'
import { LETTER, type Scene } from './scene.ts'

/** Largest lettering in the drawing's own unit; a vehicle that needs more is larger than its sheet even as a whole. */
const MOST_LETTER = 40
const TRIES = 8

/**
 * The whole vehicle, or one circuit, so that it fits the sheet when it is made smaller and its names are still 12 px
 * high: they are lettered larger in the drawing's unit until both hold. Its columns go the same way as when it is read.
 */
export function drawWhole(wiring: Wiring, models: Models, sheet: Sheet, circuit: string | null): Scene {
  const { mirrored } = drawPaths(wiring, models, sheet, circuit)
  const sizeOn = (scene: Scene) => scene.letter * Math.min(1, sheet.width / scene.width, sheet.height / scene.height)
  let best: Scene | null = null
  for (const lineRoom of LINE_ROOMS) {
    const scene = fitLetters(sizeOn, (letter) => drawPaths(wiring, models, { width: 0, height: 0 }, circuit, { whole: true, letter, lineRoom, mirrored }))
    if (best === null || sizeOn(scene) > sizeOn(best)) best = scene
    if (sizeOn(best) >= LETTER) break
  }
  return best ?? drawPaths(wiring, models, sheet, circuit)
}

/** Room for a name before it goes on in another line: long lines make a drawing high, short ones make it wide. */
const LINE_ROOMS = [90, 66]

function fitLetters(sizeOn: (scene: Scene) => number, draw: (letter: number) => Scene): Scene {
  let letter = LETTER
  for (let i = 0; ; i++) {
    const scene = draw(letter)
    if (sizeOn(scene) >= LETTER || letter >= MOST_LETTER || i === TRIES) return scene
    letter = Math.min(MOST_LETTER, letter * LETTER / sizeOn(scene) + 1)
  }
}
