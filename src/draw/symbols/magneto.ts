import { letter, line, ring, type PartSymbol } from './symbol.ts'

/** A magneto: a machine whose field is a horseshoe magnet. */
export const magnetoSymbol: PartSymbol = {
  whole: true, marked: true, letter: 'GS',
  core: () => ({
    half: 15, height: 30,
    draw: ({ x, top }) => [
      ring([x, top + 17], 12), letter([x, top + 17], 'GS', 11),
      line([[x - 15, top + 12], [x - 15, top + 1], [x + 15, top + 1], [x + 15, top + 12]], 2.2),
    ],
  }),
}
