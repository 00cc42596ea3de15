import { line, type PartSymbol } from './symbol.ts'

/** A capacitor: two plates that do not touch. */
export const capacitorSymbol: PartSymbol = {
  whole: false, marked: false,
  core: () => ({
    half: 11, height: 22,
    draw: ({ x, top, bottom }) => [
      line([[x, top], [x, top + 8]]), line([[x - 11, top + 8], [x + 11, top + 8]], 2.2),
      line([[x - 11, bottom - 8], [x + 11, bottom - 8]], 2.2), line([[x, bottom - 8], [x, bottom]]),
    ],
  }),
}
