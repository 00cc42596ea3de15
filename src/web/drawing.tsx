import { memo, useCallback, useEffect, useLayoutEffect, useRef, useState, type PointerEvent } from 'react'
import type { DrawnGroup } from '../draw/index.ts'
import type { Picked } from '../tasks/index.ts'
import type { DrawingSize, Findable, SheetSize, View } from './messages.ts'
import { UnderDrawing } from './under-drawing.tsx'
import type { Shown } from './use-vehicle.ts'

interface DrawingProps {
  readonly shown: Shown
  readonly picked: Picked | null
  readonly pick: (pick: Picked | null) => void
  /** What is drawn at present, and how another view is asked for. */
  readonly view: View
  readonly show: (change: Partial<View>) => void
}

/** Steps of enlargement; at 1 the lettering is 12 px high, and it is never read smaller. */
const STEPS = [1, 1.25, 1.6, 2]
const LETTER = 12

const NO_SIZE: DrawingSize = { width: 1, height: 1, letter: LETTER, whole: false }

/** The path drawing on its sheet: it is scrolled and dragged, enlarged, or seen as a whole with larger names and no wire letters. */
export function Drawing({ shown, picked, pick, view, show }: DrawingProps) {
  const sheet = useRef<HTMLDivElement>(null)
  const [step, setStep] = useState(0)
  const measure = useCallback((size: SheetSize) => { show({ sheet: size }) }, [show])
  const size = useSheetSize(sheet, measure, picked !== null)
  const { opened } = shown
  const drawn = opened?.size ?? NO_SIZE
  const { width, height } = drawn
  const fit = Math.min(size.width / width, size.height / height)
  const scale = drawn.whole ? Math.max(LETTER / drawn.letter, Math.min(1.35, fit)) : Math.max(STEPS[step], Math.min(1.35, fit))
  const drag = useDrag(sheet)
  const sought = useRef<Picked | null>(null)
  useEffect(() => { sheet.current?.scrollTo({ left: 0, top: 0 }) }, [width, height])
  usePaintMark(shown)

  const pickAt = (target: EventTarget) => {
    const found = (target as Element).closest<SVGGElement>('g[data-pick]')
    pick(found ? { kind: found.dataset.kind as Picked['kind'], id: found.dataset.id ?? '' } : null)
  }

  const find = (next: Picked) => {
    pick(next)
    if (!isDrawn(shown, next)) show({ circuit: null, whole: false })
    sought.current = next
  }
  useEffect(() => {
    if (!sought.current || !isDrawn(shown, sought.current)) return
    showPicked(sheet.current, sought.current)
    sought.current = null
  })
  const explained = shown.facts !== null
  useEffect(() => { if (picked && explained) keepInView(sheet.current, picked) }, [picked, explained])

  return (
    <main className="drawing">
      <div className="tools">
        {opened && opened.circuits.length > 1 ? <CircuitChoice circuits={opened.circuits} circuit={view.circuit} choose={(circuit) => { show({ circuit }) }} /> : null}
        {opened ? <Find findable={opened.findable} picked={picked} find={find} /> : null}
        <div className="zoom">
          <button type="button" className="plain-button" disabled={view.whole || step === 0} onClick={() => { setStep(step - 1) }}>Smaller</button>
          <button type="button" className="plain-button" disabled={view.whole || step === STEPS.length - 1} onClick={() => { setStep(step + 1) }}>Larger</button>
          {fit < 1 || view.whole ? <button type="button" className="plain-button" aria-pressed={view.whole} onClick={() => { show({ whole: !view.whole, sheet: size }) }}>{view.whole ? 'Read' : 'Whole'}</button> : null}
        </div>
      </div>
      {/* A scrolled area that the keys must reach. */}
      <div ref={sheet} className="sheet" tabIndex={0} role="region" aria-label="Path drawing" {...drag.handlers}>
        <svg width={width * scale} height={height * scale} viewBox={`0 0 ${width} ${height}`} role="group" aria-label="Wiring as paths from the supply rail to the earth rail"
          onClick={({ target }) => { if (!drag.moved()) pickAt(target) }}
          onKeyDown={(event) => { if (event.key === 'Enter') pickAt(event.target) }}>
          {[...shown.groups.entries()].map(([key, group]) => <Group key={key} group={group} picked={isPicked(group, picked)} />)}
        </svg>
      </div>
      <UnderDrawing shown={shown} />
    </main>
  )
}

function isPicked({ kind, id }: DrawnGroup, picked: Picked | null): boolean {
  return picked !== null && kind === picked.kind && (id === picked.id || id.startsWith(`${picked.id}/`))
}

/** One wire or symbol; only those whose SVG has changed are drawn again. */
const Group = memo(function Group({ group, picked }: { readonly group: DrawnGroup, readonly picked: boolean }) {
  const { kind, id, label, svg } = group
  const canPick = kind === 'part' || kind === 'splice' || (kind === 'wire' && label !== '')
  const named = canPick ? { 'data-pick': '', 'role': 'button', 'aria-label': label, 'tabIndex': -1 } : {}
  return <g className={picked ? 'picked' : undefined} data-kind={kind} data-id={id} {...named} dangerouslySetInnerHTML={{ __html: svg }} />
}, (a, b) => a.picked === b.picked && a.group.svg === b.group.svg && a.group.id === b.group.id && a.group.label === b.group.label)

function isDrawn({ groups }: Shown, { kind, id }: Picked): boolean {
  return groups.has(`${kind} ${id}`)
}

// --- choosing a circuit, finding by name ---

interface CircuitChoiceProps { readonly circuits: readonly string[], readonly circuit: string | null, readonly choose: (circuit: string | null) => void }

function CircuitChoice({ circuits, circuit, choose }: CircuitChoiceProps) {
  return (
    <label className="find"><span>Draw </span>
      <select value={circuit ?? ''} aria-label="Draw" onChange={(event) => { choose(event.target.value === '' ? null : event.target.value) }}>
        <option value="">the whole vehicle</option>
        {circuits.map((name) => <option key={name} value={name}>{name}</option>)}
      </select>
    </label>
  )
}

function Find({ findable, picked, find }: { readonly findable: readonly Findable[], readonly picked: Picked | null, readonly find: (pick: Picked) => void }) {
  const keyOf = (pick: Picked | null) => pick ? `${pick.kind} ${pick.id.split('/')[0]}` : ''
  const options = (kind: Picked['kind']) => findable.filter(({ pick }) => pick.kind === kind).map(({ pick, said }) => <option key={keyOf(pick)} value={keyOf(pick)}>{said}</option>)
  return (
    <label className="find"><span>Find </span>
      <select aria-label="Find" value={keyOf(picked)} onChange={(event) => {
        const found = findable.find(({ pick }) => keyOf(pick) === event.target.value)
        if (found) find(found.pick)
      }}>
        <option value="">a part or a wire</option>
        <optgroup label="Parts">{options('part')}</optgroup>
        <optgroup label="Wires">{options('wire')}</optgroup>
      </select>
    </label>
  )
}

function showPicked(sheet: HTMLDivElement | null, { kind, id }: Picked): void {
  const found = sheet?.querySelector(`g[data-kind="${kind}"][data-id="${CSS.escape(id)}"]`)
  if (!sheet || !found) return
  const [area, frame] = [found.getBoundingClientRect(), sheet.getBoundingClientRect()]
  sheet.scrollBy({ left: area.x + area.width / 2 - frame.x - frame.width / 2, top: area.y + area.height / 2 - frame.y - frame.height / 2 })
}

/** What was clicked stays in sight when the facts take room beside it. */
function keepInView(sheet: HTMLDivElement | null, { kind, id }: Picked): void {
  requestAnimationFrame(() => {
    const found = sheet?.querySelector(`g[data-kind="${kind}"][data-id="${CSS.escape(id)}"]`)
    if (!sheet || !found) return
    const [area, frame] = [found.getBoundingClientRect(), sheet.getBoundingClientRect()]
    const over = (from: number, to: number, first: number, last: number) => to > last ? Math.min(to - last, from - first) : 0
    sheet.scrollBy({ left: over(area.left - 24, area.right + 24, frame.left, frame.right), top: over(area.top - 24, area.bottom + 24, frame.top, frame.bottom) })
  })
}

// --- the sheet's size, dragging, and how long a movement takes to be seen ---

/** While the facts take room beside or below it, the drawing keeps its size, unless the window itself changes. */
function useSheetSize(sheet: React.RefObject<HTMLDivElement | null>, measure: (size: SheetSize) => void, holds: boolean): SheetSize {
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
function useDrag(sheet: React.RefObject<HTMLDivElement | null>) {
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

/** Measures, under the name "control to drawing", from a movement until the browser is about to paint its result. */
function usePaintMark(shown: Shown): void {
  const { groups } = shown
  useEffect(() => {
    if (performance.getEntriesByName('control').length === 0) return
    requestAnimationFrame(() => {
      if (performance.getEntriesByName('control').length === 0) return
      performance.measure('control to drawing', 'control')
      performance.clearMarks('control')
    })
  }, [groups])
}
