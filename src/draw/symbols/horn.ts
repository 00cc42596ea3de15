import { arc, line, type PartSymbol } from './symbol.ts'

/** A horn: a half dome, mouth to the left; struck with two strokes while it sounds. */
export const hornSymbol: PartSymbol = {
  whole: false, marked: false,
  core: () => ({
    half: 13, height: 28,
    draw: ({ x, top, bottom, live }) => [
      line([[x, top], [x, bottom]]),
      line([[x + 6, top + 3], ...arc([x + 6, top + 14], 11, -90, -270), [x + 6, top + 3]], live.fed ? 2.4 : 1.6, 'ink', 'sheet'),
      ...live.fed ? [line(arc([x + 6, top + 14], 16, 150, 210)), line(arc([x + 6, top + 14], 19.5, 155, 205))] : [],
    ],
  }),
}
