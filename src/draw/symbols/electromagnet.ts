import type { Shape } from '../scene.ts'
import { contactCore } from './contact.ts'
import { line, type Core, type PartSymbol } from './symbol.ts'

/** The winding of a relay: a box with a stroke through it, double when it is fed. */
const windingCore: Core = {
  half: 14, height: 22,
  draw({ x, top, bottom, live }): Shape[] {
    const [y0, y1] = [top + 3, bottom - 3]
    return [
      line([[x, top], [x, y0]]), line([[x, y1], [x, bottom]]),
      line([[x - 14, y0], [x + 14, y0], [x + 14, y1], [x - 14, y1], [x - 14, y0]], live.fed ? 2.6 : 1.6, 'ink', 'sheet'),
      line([[x - 5, y1], [x + 5, y0]], live.fed ? 2.6 : 1.6),
    ]
  },
}

/** Relays, solenoids and cut-outs, drawn detached: windings in one path, contacts in another. */
export const electromagnetSymbol: PartSymbol = {
  whole: false, marked: true, contacts: true, core: (element) => element?.does === 'contact' ? contactCore : windingCore,
}
