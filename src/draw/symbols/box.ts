import { line, type PartSymbol } from './symbol.ts'

/** What has no symbol of its own: a plain box between its ends, so that every record draws. */
export function boxSymbol(letter?: string): PartSymbol {
  return {
    whole: true, marked: true, letter,
    core: () => ({ half: 13, height: 26, draw: ({ x, top, bottom }) => [line([[x - 13, top], [x + 13, top], [x + 13, bottom], [x - 13, bottom], [x - 13, top]], 1.6, 'ink', 'sheet')] }),
  }
}
