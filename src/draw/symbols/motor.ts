import { letter, ring, type PartSymbol } from './symbol.ts'

/** A motor, or any machine that is drawn as a circle with its letter. */
export function roundSymbol(text: string, whole = false): PartSymbol {
  return {
    whole, marked: false, letter: text,
    core: () => ({ half: 13, height: 26, draw: ({ x, top }) => [ring([x, top + 13], 13), letter([x, top + 13], text)] }),
  }
}
