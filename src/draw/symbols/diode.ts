import type { Shape } from '../scene.ts'
import { line, ring, type Core, type CoreView, type PartSymbol } from './symbol.ts'

/** A diode: the triangle points the way it lets current through. */
export const diodeSymbol: PartSymbol = { whole: false, marked: false, core: () => ({ half: 9, height: 24, draw: (view) => arrow(view, 8) }) }

/** A light-emitting diode: a diode in a circle that fills with its light. */
export const ledSymbol: PartSymbol = { whole: false, marked: false, core: () => ledCore }

const ledCore: Core = {
  half: 13, height: 26,
  draw(view): Shape[] {
    const at = [view.x, view.top + 13] as const
    const light = Math.min(1, view.live.lamp?.light ?? 0)
    return [ring(at, 13), ...light > 0.002 ? [ring(at, 13, 'lamp', 0.12 + 0.88 * light)] : [], ...arrow(view, 6)]
  },
}

function arrow({ x, top, bottom, upper, element }: CoreView, size: number): Shape[] {
  const down = upper === element?.from ? 1 : -1
  const y = (top + bottom) / 2
  const [base, tip] = [y - down * size * 0.7, y + down * size * 0.7]
  return [
    line([[x, top], [x, bottom]]),
    line([[x - size, base], [x + size, base], [x, tip], [x - size, base]], 1.6, 'ink', 'ink'),
    line([[x - size, tip], [x + size, tip]]),
  ]
}
