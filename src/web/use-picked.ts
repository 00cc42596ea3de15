import { useCallback, useEffect, useRef } from 'react'
import type { Picked } from '../tasks/index.ts'
import type { Stand } from './address.ts'

export interface PickedHold {
  /** Picks something, or nothing, and looks at the drawing otherwise where that is asked for too. */
  pick(pick: Picked | null, sight?: Partial<Stand>): void
  close(): void
}

/** What is picked, and its card: Esc closes the one on top, and the keys go back to where it was picked. */
export function usePicked({ pick: picked, card }: Stand, move: (change: Partial<Stand>) => void): PickedHold {
  const from = useRef<Element | null>(null)
  const pick = useCallback((next: Picked | null, sight: Partial<Stand> = {}) => {
    if (next) from.current = document.activeElement
    move({ ...sight, pick: next, card: false })
  }, [move])
  const close = useCallback(() => {
    if (card) {
      move({ card: false })
      return
    }
    const drawn = picked && document.querySelector(`g[data-kind="${picked.kind}"][data-id="${CSS.escape(picked.id)}"]`)
    const focused = from.current instanceof HTMLInputElement ? from.current : drawn
    pick(null)
    if (focused instanceof HTMLElement || focused instanceof SVGElement) focused.focus()
  }, [picked, card, pick, move])
  useEffect(() => {
    if (!picked) return undefined
    const escape = (event: KeyboardEvent) => { if (event.key === 'Escape') close() }
    addEventListener('keydown', escape)
    return () => { removeEventListener('keydown', escape) }
  }, [picked, close])
  return { pick, close }
}
