import type { Shape } from '../scene.ts'
import { contactCore } from './contact.ts'
import { line, type CoreView, type PartSymbol } from './symbol.ts'

/** The step of a strip that bends with heat, beside its contact. */
function heatedStrip({ x, top }: CoreView): Shape {
  return line([[x + 3, top + 19], [x + 7, top + 19], [x + 7, top + 14], [x + 11, top + 14], [x + 11, top + 19], [x + 14, top + 19]])
}

/** A thermal circuit breaker: a contact that its own heat opens. */
export const circuitBreakerSymbol: PartSymbol = {
  whole: false, marked: false,
  core: () => ({ half: 14, height: contactCore.height, draw: (view) => [...contactCore.draw(view), heatedStrip(view)] }),
}

/** A voltage stabiliser: a box with pulses under a steady line. */
export const stabiliserSymbol: PartSymbol = {
  whole: true, marked: true, letter: 'U',
  core: () => ({
    half: 14, height: 28,
    draw: ({ x, top, bottom }) => [
      line([[x - 14, top], [x + 14, top], [x + 14, bottom], [x - 14, bottom], [x - 14, top]], 1.6, 'ink', 'sheet'),
      line([[x - 9, top + 21], [x - 9, top + 13], [x - 3, top + 13], [x - 3, top + 21], [x + 3, top + 21], [x + 3, top + 13], [x + 9, top + 13], [x + 9, top + 21]]),
      line([[x - 9, top + 8], [x + 9, top + 8]]),
    ],
  }),
}
