import type { Shape } from '../scene.ts'
import { line, type PartSymbol } from './symbol.ts'

/** Plates of two cells; the long plate is the positive one. */
export const batterySymbol: PartSymbol = {
  whole: true, marked: true,
  core: () => ({
    half: 15, height: 32,
    draw({ x, top, upper, element }): Shape[] {
      const plusUp = upper === (element?.from ?? '+')
      return [0, 1, 2, 3].flatMap((i) => {
        const long = i % 2 === 0 === plusUp
        const y = top + 1 + i * 10
        const plate = line([[x - (long ? 15 : 8), y], [x + (long ? 15 : 8), y]], long ? 1.8 : 3)
        return i === 1 ? [plate, line([[x, y + 3], [x, y + 7]])] : [plate]
      })
    },
  }),
}
