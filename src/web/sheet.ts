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

// --- from thing to thing by the keys ---

/** Middle and size of something drawn, px. */
export interface Area { readonly x: number; readonly y: number; readonly width: number; readonly height: number }

const DIRECTIONS: Readonly<Record<string, readonly [number, number]>> = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] }
/** How much farther a thing counts for what it lies beside the direction. */
const ASIDE = 2.5

/** Which of some areas lies nearest in the direction of an arrow key; −1 where none does. */
export function nearestAhead(from: Area, areas: readonly Area[], key: string): number {
  const direction = DIRECTIONS[key]
  if (!direction) return -1
  const middle = ({ x, y, width, height }: Area) => [x + width / 2, y + height / 2] as const
  const [fx, fy] = middle(from)
  let best = -1, least = Infinity
  areas.forEach((area, i) => {
    const [x, y] = middle(area)
    const ahead = (x - fx) * direction[0] + (y - fy) * direction[1]
    const aside = Math.abs((x - fx) * direction[1]) + Math.abs((y - fy) * direction[0])
    const far = ahead + ASIDE * aside
    if (ahead > 1 && far < least) [best, least] = [i, far]
  })
  return best
}

/** The keys in the drawing: from the sheet Enter goes to its first part, arrows on from thing to thing, Escape back to the sheet. Answers whether the key was one of these. */
export function moveFocus(sheet: HTMLElement, key: string): boolean {
  const things = [...sheet.querySelectorAll<SVGGElement>('g[data-pick]')]
  const now = document.activeElement
  if (now === sheet) {
    const first = key === 'Enter' ? things.find(({ dataset }) => dataset.kind === 'part') : undefined
    first?.focus()
    return first !== undefined
  }
  const at = things.findIndex((thing) => thing === now)
  if (at < 0) return false
  if (key === 'Escape') sheet.focus()
  const next = nearestAhead(things[at].getBoundingClientRect(), things.map((thing) => thing.getBoundingClientRect()), key)
  if (next >= 0) things[next].focus()
  return key === 'Escape' || key in DIRECTIONS
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
