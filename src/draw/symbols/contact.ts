import type { Shape } from '../scene.ts'
import { line, ring, STROKE, type Core, type CoreView, type PartSymbol } from './symbol.ts'

/** A contact with its blade hinged below, in the position that it has now. */
export const contactCore: Core = { half: 11, height: 30, draw: drawContact }

function drawContact({ x, top, bottom, live }: CoreView): Shape[] {
  const tip: readonly [number, number] = live.closed ? [x, top + 4] : [x - 10, top + 7]
  return [
    line([[x, top], [x, top + 5]]),
    line([[x, bottom - 4], tip], live.closed ? 2.2 : STROKE),
    ring([x, bottom - 3], 2.2),
  ]
}

/** A resistance that is set by hand or by a float: a resistor crossed by an arrow. */
const setResistor: Core = {
  half: 12, height: 30,
  draw({ x, top, bottom }): Shape[] {
    return [
      line([[x - 5, top + 2], [x + 5, top + 2], [x + 5, bottom - 2], [x - 5, bottom - 2], [x - 5, top + 2]], 1.6, 'ink', 'sheet'),
      line([[x - 11, bottom - 5], [x + 11, top + 5]]),
      line([[x + 5, top + 5], [x + 11, top + 5], [x + 10, top + 10]]),
    ]
  },
}

/** Any switch. One with more than two ends is a box with its contacts inside. */
export const controlSymbol: PartSymbol = {
  whole: true, marked: true, contacts: true,
  core: (element) => element && element.does !== 'contact' ? setResistor : contactCore,
}
