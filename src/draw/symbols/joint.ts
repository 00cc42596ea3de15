import { line, type PartSymbol } from './symbol.ts'

/** A joint that is a part of its own: a post, a stud, a terminal block. */
export const jointSymbol: PartSymbol = {
  whole: true, marked: false,
  core: () => ({ half: 5, height: 16, draw: ({ x, top, bottom }) => [line([[x, top], [x, bottom]]), line([[x - 4, top + 8], [x, top + 4], [x + 4, top + 8], [x, top + 12], [x - 4, top + 8]], 1.6, 'ink', 'sheet')] }),
}
