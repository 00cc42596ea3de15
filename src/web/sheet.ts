import { useEffect, useLayoutEffect, useRef, useState, type PointerEvent, type RefObject } from 'react'
import type { Picked } from '../tasks/index.ts'
import type { SheetSize } from './messages.ts'

/** Brings what was found to the middle of the sheet. */
export function showPicked(sheet: HTMLDivElement | null, { kind, id }: Picked): void {
  const found = sheet?.querySelector(`g[data-kind="${kind}"][data-id="${CSS.escape(id)}"]`)
  if (!sheet || !found) return
  const [area, frame] = [found.getBoundingClientRect(), sheet.getBoundingClientRect()]
  sheet.scrollBy({ left: area.x + area.width / 2 - frame.x - frame.width / 2, top: area.y + area.height / 2 - frame.y - frame.height / 2 })
}

/** What was clicked stays in sight when the facts take room beside it. */
export function keepInView(sheet: HTMLDivElement | null, { kind, id }: Picked): void {
  requestAnimationFrame(() => {
    const found = sheet?.querySelector(`g[data-kind="${kind}"][data-id="${CSS.escape(id)}"]`)
    if (!sheet || !found) return
    const [area, frame] = [found.getBoundingClientRect(), sheet.getBoundingClientRect()]
    const over = (from: number, to: number, first: number, last: number) => to > last ? Math.min(to - last, from - first) : 0
    sheet.scrollBy({ left: over(area.left - 24, area.right + 24, frame.left, frame.right), top: over(area.top - 24, area.bottom + 24, frame.top, frame.bottom) })
  })
}

// --- its size, and dragging it ---

/** While the facts take room beside or below it, the drawing keeps its size, unless the window itself changes. */
export function useSheetSize(sheet: RefObject<HTMLDivElement | null>, measure: (size: SheetSize) => void, holds: boolean): SheetSize {
  const [size, setSize] = useState<SheetSize>({ width: 1, height: 1 })
  const last = useRef<SheetSize>({ width: 0, height: 0 })
  const frame = useRef(0)
  const holding = useRef(holds)
  useEffect(() => { holding.current = holds }, [holds])
  useLayoutEffect(() => {
    const element = sheet.current
    if (!element) return undefined
    let timer: ReturnType<typeof setTimeout> | undefined
    const read = () => {
      if (holding.current && frame.current === innerWidth) return
      frame.current = innerWidth
      const next = { width: element.clientWidth, height: element.clientHeight }
      setSize(next)
      if (Math.abs(next.width - last.current.width) < 24 && Math.abs(next.height - last.current.height) < 24) return
      last.current = next
      measure(next)
    }
    const observer = new ResizeObserver(() => {
      clearTimeout(timer)
      timer = setTimeout(read, 120)
    })
    read()
    observer.observe(element)
    return () => {
      clearTimeout(timer)
      observer.disconnect()
    }
  }, [sheet, measure])
  return size
}

/** A mouse drags the sheet; fingers scroll it by themselves. */
export function useDrag(sheet: RefObject<HTMLDivElement | null>) {
  const from = useRef<{ x: number, y: number, left: number, top: number } | null>(null)
  const far = useRef(false)
  return {
    moved: () => far.current,
    handlers: {
      onPointerDown: (event: PointerEvent) => {
        far.current = false
        if (event.pointerType !== 'mouse' || event.button !== 0 || !sheet.current) return
        from.current = { x: event.clientX, y: event.clientY, left: sheet.current.scrollLeft, top: sheet.current.scrollTop }
      },
      onPointerMove: (event: PointerEvent) => {
        if (!from.current || !sheet.current) return
        const [dx, dy] = [event.clientX - from.current.x, event.clientY - from.current.y]
        if (Math.hypot(dx, dy) > 4) far.current = true
        if (far.current) sheet.current.scrollTo({ left: from.current.left - dx, top: from.current.top - dy })
      },
      onPointerUp: () => { from.current = null },
      onPointerLeave: () => { from.current = null },
    },
  }
}
