import { contactCore } from './contact.ts'
import { line, type PartSymbol } from './symbol.ts'

/** A thermal breaker: a contact with its heated strip. */
export const breakerSymbol: PartSymbol = {
  whole: false, marked: false,
  core: () => ({
    ...contactCore,
    draw: (view) => [...contactCore.draw(view), line([[view.x + 3, view.top + 17], [view.x + 8, view.top + 17], [view.x + 8, view.top + 12], [view.x + 12, view.top + 12]])],
  }),
}
