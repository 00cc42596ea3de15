import { memo, useEffect, useLayoutEffect, useRef, useState, type MouseEvent, type PointerEvent } from 'react'
import type { DrawnGroup } from '../draw/index.ts'
import type { Pick } from '../tasks/index.ts'
import type { Findable, SheetSize } from './messages.ts'
import type { Shown } from './use-vehicle.ts'

interface DrawingProps {
  readonly shown: Shown
  readonly picked: Pick | null
  readonly pick: (pick: Pick | null) => void
  readonly measure: (sheet: SheetSize) => void
  /** The circuit drawn alone, or null for the whole vehicle. */
  readonly circuit: string | null
  readonly drawCircuit: (circuit: string | null) => void
}

/** Steps of enlargement; at 1 the lettering is 12 px high, and it is never read smaller. */
const STEPS = [1, 1.25, 1.6, 2]

/** The path drawing on its sheet: it is scrolled and dragged, enlarged, or seen as a whole to find one's way. */
export function Drawing({ shown, picked, pick, measure, circuit, drawCircuit }: DrawingProps) {
  const sheet = useRef<HTMLDivElement>(null)
  const [step, setStep] = useState(0)
  const [whole, setWhole] = useState(false)
  const size = useSheetSize(sheet, measure)
  const { opened } = shown
  const [width, height] = [opened?.width ?? 1, opened?.height ?? 1]
  const fit = Math.min(size.width / width, size.height / height)
  const scale = whole ? Math.min(1, fit) : Math.max(STEPS[step], Math.min(1.35, fit))
  const drag = useDrag(sheet)
  const sought = useRef<Pick | null>(null)
  useEffect(() => { sheet.current?.scrollTo({ left: 0, top: sheet.current.scrollHeight }) }, [width, height])
  usePaintMark(shown)

  const goTo = (event: MouseEvent<SVGSVGElement>) => {
    if (drag.moved()) return
    const found = (event.target as Element).closest<SVGGElement>('g[data-pick]')
    if (whole) {
      lookAt(sheet.current, event, scale, STEPS[0])
      setWhole(false)
      return
    }
    pick(found ? { kind: found.dataset.kind as Pick['kind'], id: found.dataset.id ?? '' } : null)
  }

  const chooseCircuit = (next: string | null) => {
    setWhole(false)
    drawCircuit(next)
  }

  const find = (next: Pick) => {
    setWhole(false)
    pick(next)
    if (!isDrawn(shown, next)) drawCircuit(null)
    sought.current = next
  }
  useEffect(() => {
    if (!sought.current || !isDrawn(shown, sought.current)) return
    showPicked(sheet.current, sought.current)
    sought.current = null
  })

  return (
    <main className="drawing">
      <div className="tools">
        {opened && opened.circuits.length > 1 ? <CircuitChoice circuits={opened.circuits} circuit={circuit} choose={chooseCircuit} /> : null}
        {opened ? <Find findable={opened.findable} picked={picked} find={find} /> : null}
        <div className="zoom">
          <button type="button" className="plain-button" disabled={whole || step === 0} onClick={() => { setStep(step - 1) }}>Smaller</button>
          <button type="button" className="plain-button" disabled={whole || step === STEPS.length - 1} onClick={() => { setStep(step + 1) }}>Larger</button>
          {fit < 1 ? <button type="button" className="plain-button" aria-pressed={whole} onClick={() => { setWhole(!whole) }}>{whole ? 'Read' : 'Whole'}</button> : null}
        </div>
      </div>
      {/* A scrolled area that the keys must reach. */}
      <div ref={sheet} className={whole ? 'sheet far' : 'sheet'} tabIndex={0} role="region" aria-label="Path drawing" {...drag.handlers}>
        <svg width={width * scale} height={height * scale} viewBox={`0 0 ${width} ${height}`} role="img" aria-label="Wiring as paths from the supply rail to the earth rail" onClick={goTo}>
          {[...shown.groups.entries()].map(([key, group]) => <Group key={key} group={group} picked={isPicked(group, picked)} />)}
        </svg>
      </div>
      <p className="unseen" aria-live="polite">{shown.lit}</p>
    </main>
  )
}

function isPicked({ kind, id }: DrawnGroup, picked: Pick | null): boolean {
  return picked !== null && kind === picked.kind && (id === picked.id || id.startsWith(`${picked.id}/`))
}

/** One wire or symbol; only those whose SVG has changed are drawn again. */
const Group = memo(function Group({ group, picked }: { readonly group: DrawnGroup, readonly picked: boolean }) {
  const { kind, id, label, svg } = group
  const canPick = kind === 'part' || kind === 'splice' || (kind === 'wire' && label !== '')
  return <g className={picked ? 'picked' : undefined} data-kind={kind} data-id={id} data-pick={canPick ? '' : undefined} dangerouslySetInnerHTML={{ __html: svg }} />
}, (a, b) => a.picked === b.picked && a.group.svg === b.group.svg && a.group.id === b.group.id)

function isDrawn({ groups }: Shown, { kind, id }: Pick): boolean {
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

function Find({ findable, picked, find }: { readonly findable: readonly Findable[], readonly picked: Pick | null, readonly find: (pick: Pick) => void }) {
  const keyOf = (pick: Pick | null) => pick ? `${pick.kind} ${pick.id.split('/')[0]}` : ''
  const options = (kind: Pick['kind']) => findable.filter(({ pick }) => pick.kind === kind).map(({ pick, said }) => <option key={keyOf(pick)} value={keyOf(pick)}>{said}</option>)
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

function showPicked(sheet: HTMLDivElement | null, { kind, id }: Pick): void {
  const found = sheet?.querySelector(`g[data-kind="${kind}"][data-id="${CSS.escape(id)}"]`)
  if (!sheet || !found) return
  const [area, frame] = [found.getBoundingClientRect(), sheet.getBoundingClientRect()]
  sheet.scrollBy({ left: area.x + area.width / 2 - frame.x - frame.width / 2, top: area.y + area.height / 2 - frame.y - frame.height / 2 })
}

/** The place that was tapped in the whole view, brought to the middle at reading size. */
function lookAt(sheet: HTMLDivElement | null, event: MouseEvent<SVGSVGElement>, from: number, to: number): void {
  if (!sheet) return
  const area = event.currentTarget.getBoundingClientRect()
  const [x, y] = [(event.clientX - area.x) / from * to, (event.clientY - area.y) / from * to]
  requestAnimationFrame(() => { requestAnimationFrame(() => { sheet.scrollTo({ left: x - sheet.clientWidth / 2, top: y - sheet.clientHeight / 2 }) }) })
}

// --- the sheet's size, dragging, and how long a movement takes to be seen ---

function useSheetSize(sheet: React.RefObject<HTMLDivElement | null>, measure: (size: SheetSize) => void): SheetSize {
  const [size, setSize] = useState<SheetSize>({ width: 1, height: 1 })
  const last = useRef(0)
  useLayoutEffect(() => {
    const element = sheet.current
    if (!element) return undefined
    let timer: ReturnType<typeof setTimeout> | undefined
    const read = () => {
      const next = { width: element.clientWidth, height: element.clientHeight }
      setSize(next)
      if (Math.abs(next.width - last.current) < 24) return
      last.current = next.width
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
