import { arc, line, type Core, type PartSymbol } from './symbol.ts'

/** Turns of wire, seen from the side. */
const turnsCore: Core = {
  half: 8, height: 36,
  draw: ({ x, top }) => [
    line([[x, top], [x, top + 2], ...[0, 1, 2, 3].flatMap((i) => arc([x, top + 6 + i * 8], 4, -90, 90)), [x, top + 36]]),
  ],
}

/** An ignition coil, or any other winding that moves nothing. */
export const coilSymbol: PartSymbol = { whole: false, marked: true, core: () => turnsCore }
