import type { Shape } from '../scene.ts'
import { line, ring, type Core, type CoreView, type PartSymbol } from './symbol.ts'

const R = 12

/** A lamp: the circle fills with light as the lamp really gives it. */
export const lampSymbol: PartSymbol = { whole: false, marked: false, core: () => lampCore }

const lampCore: Core = { half: R, height: 2 * R, draw: drawLamp }

function drawLamp({ x, top, live }: CoreView): Shape[] {
  const y = top + R
  const d = R * Math.SQRT1_2
  const light = Math.min(1, live.lamp?.light ?? 0)
  return [
    ring([x, y], R),
    ...light > 0.002 ? [ring([x, y], R, 'lamp', 0.12 + 0.88 * light)] : [],
    line([[x - d, y - d], [x + d, y + d]]),
    line([[x - d, y + d], [x + d, y - d]]),
  ]
}
