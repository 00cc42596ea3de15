import type { Spot } from '../scene.ts'
import { arc, line, ring, type PartSymbol } from './symbol.ts'

/** A gauge: a needle under its scale, that leans over while it is fed. */
export const gaugeSymbol: PartSymbol = {
  whole: false, marked: true,
  core: () => ({
    half: 13, height: 26,
    draw({ x, top, live }) {
      const pivot: Spot = [x, top + 18], lean = live.fed ? -55 : -125
      const [tip] = arc(pivot, 12, lean, lean, 1)
      return [ring([x, top + 13], 13), line(arc(pivot, 12, -140, -40)), line([pivot, tip], live.fed ? 2.2 : 1.6)]
    },
  }),
}

/** A clock: a face with two hands. */
export const clockSymbol: PartSymbol = {
  whole: false, marked: false,
  core: () => ({ half: 13, height: 26, draw: ({ x, top }) => [ring([x, top + 13], 13), line([[x, top + 5], [x, top + 13], [x + 6, top + 16]])] }),
}
