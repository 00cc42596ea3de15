import type { Shape } from '../scene.ts'
import { line, type PartSymbol } from './symbol.ts'

/** A fuse: a box with the wire through it; a blown one has its wire parted. A box of several is drawn fuse by fuse. */
export const fuseSymbol: PartSymbol = {
  whole: false, marked: false,
  core: () => ({
    half: 6, height: 26,
    draw({ x, top, bottom, live }): Shape[] {
      const box = line([[x - 6, top + 2], [x + 6, top + 2], [x + 6, bottom - 2], [x - 6, bottom - 2], [x - 6, top + 2]], 1.6, 'ink', 'sheet')
      // In a box of several only the blown ones are open.
      if (!live.broken || live.closed) return [box, line([[x, top], [x, bottom]])]
      return [box, line([[x, top], [x, top + 9]], 1.8, 'bad'), line([[x, bottom], [x, bottom - 9]], 1.8, 'bad')]
    },
  }),
}
