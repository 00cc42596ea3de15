import { line, type PartSymbol } from './symbol.ts'

/** A flasher: a box with a square wave. */
export const flasherSymbol: PartSymbol = {
  whole: true, marked: true, letter: 'flash',
  core: () => ({
    half: 14, height: 28,
    draw: ({ x, top, bottom }) => [
      line([[x - 14, top], [x + 14, top], [x + 14, bottom], [x - 14, bottom], [x - 14, top]], 1.6, 'ink', 'sheet'),
      line([[x - 9, top + 19], [x - 4, top + 19], [x - 4, top + 9], [x + 2, top + 9], [x + 2, top + 19], [x + 9, top + 19]]),
    ],
  }),
}
