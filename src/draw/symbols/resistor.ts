import { line, type PartSymbol } from './symbol.ts'

/** A plain resistance: heater, gauge, dropper. */
export const resistorSymbol: PartSymbol = {
  whole: false, marked: false,
  core: () => ({
    half: 6, height: 32,
    draw: ({ x, top, bottom }) => [
      line([[x, top], [x, top + 3]]), line([[x, bottom - 3], [x, bottom]]),
      line([[x - 6, top + 3], [x + 6, top + 3], [x + 6, bottom - 3], [x - 6, bottom - 3], [x - 6, top + 3]], 1.6, 'ink', 'sheet'),
    ],
  }),
}
