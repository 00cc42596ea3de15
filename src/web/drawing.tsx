import { memo, useEffect, useRef, useState, type RefObject } from 'react'
import type { DrawnGroup } from '../draw/index.ts'
import type { Picked } from '../tasks/index.ts'
import type { Stand } from './address.ts'
import { CardSheet } from './card-sheet.tsx'
import { Find } from './find.tsx'
import type { DrawingSize, SheetSize } from './messages.ts'
import { keepInView, moveFocus, showPicked, useDrag, useSheetSize } from './sheet.ts'
import { UnderDrawing } from './under-drawing.tsx'
import type { PickedHold } from './use-picked.ts'
import type { Shown } from './use-vehicle.ts'

interface DrawingProps {
  readonly shown: Shown
  readonly pick: PickedHold['pick']
  readonly move: (change: Partial<Stand>) => void
  readonly measure: (sheet: SheetSize) => void
  readonly find: (words: string) => void
}

/** Steps of enlargement; at 1 the lettering is 12 px high, and it is never read smaller. */
const STEPS = [1, 1.25, 1.6, 2]
const LETTER = 12
/** A small drawing is not blown up beyond this. */
const LARGEST = 1.35

const NO_SIZE: DrawingSize = { width: 1, height: 1, letter: LETTER, whole: false }

/** The path drawing on its sheet: it is scrolled and dragged, enlarged, or seen as a whole with larger names and no wire letters. */
export function Drawing({ shown, pick, move, measure, find }: DrawingProps) {
  const { opened, stand: { circuit, whole, pick: picked } } = shown
  const sheet = useRef<HTMLDivElement>(null)
  const [step, setStep] = useState(0)
  const size = useSheetSize(sheet, measure, picked !== null)
  const drawn = opened?.size ?? NO_SIZE
  const { width, height } = drawn
  const fit = Math.min(size.width / width, size.height / height)
  const scales = scalesOf(drawn, fit)
  const at = Math.min(step, scales.length - 1)
  const drag = useDrag(sheet)
  const seek = useInSight(sheet, shown)
  usePaintMark(shown)
  const pickAt = (target: EventTarget) => {
    const found = (target as Element).closest<SVGGElement>('g[data-pick]')
    pick(found ? { kind: found.dataset.kind as Picked['kind'], id: found.dataset.id ?? '' } : null)
  }
  const take = (next: Picked) => {
    pick(next, isDrawn(shown, next) ? {} : { circuit: null })
    seek(next)
  }
  return (
    <main className="drawing">
      <div className="tools">
        {opened && opened.circuits.length > 1 ? <CircuitChoice circuits={opened.circuits} circuit={circuit} choose={(next) => { move({ circuit: next }) }} /> : null}
        {opened ? <Find found={shown.found} ask={find} take={take} /> : null}
        <p className="busy" aria-live="polite">{shown.isBusy ? 'Drawing …' : ''}</p>
        <Zoom at={at} last={scales.length - 1} setAt={setStep} whole={fit < 1 || whole ? drawn.whole : null} setWhole={(next) => { move({ whole: next }) }} />
      </div>
      {/* A scrolled area that the keys must reach. */}
      <div ref={sheet} className="sheet" tabIndex={0} role="region" aria-label="Path drawing: Enter goes into it, the arrow keys from part to part" {...drag.handlers} onKeyDown={(event) => { if (moveFocus(event.currentTarget, event.key)) event.preventDefault() }}>
        <svg className={drawn.whole ? 'is-whole' : undefined} width={width * scales[at]} height={height * scales[at]} viewBox={`0 0 ${width} ${height}`} role="group" aria-label="Wiring as paths from the supply rail to the earth rail"
          onClick={({ target }) => { if (!drag.moved()) pickAt(target) }}
          onKeyDown={(event) => { if (event.key === 'Enter' && event.target !== event.currentTarget) pickAt(event.target) }}>
          {[...shown.groups.entries()].map(([key, group]) => <Group key={key} group={group} picked={isPicked(group, picked)} />)}
        </svg>
      </div>
      {shown.card ? <CardSheet card={shown.card} close={() => { move({ card: false }) }} /> : null}
      <UnderDrawing shown={shown} take={take} />
    </main>
  )
}

interface ZoomProps {
  readonly at: number
  readonly last: number
  readonly setAt: (at: number) => void
  /** Whether all is seen at once; null where it is anyway. */
  readonly whole: boolean | null
  readonly setWhole: (whole: boolean) => void
}

function Zoom({ at, last, setAt, whole, setWhole }: ZoomProps) {
  return (
    <div className="zoom">
      <button type="button" className="plain-button" disabled={at === 0} onClick={() => { setAt(at - 1) }}>Smaller</button>
      <button type="button" className="plain-button" disabled={at === last} onClick={() => { setAt(at + 1) }}>Larger</button>
      {whole === null ? null : (
        <button type="button" className="plain-button" aria-pressed={whole} onClick={() => {
          setAt(0)
          setWhole(!whole)
        }}>{whole ? 'Read' : 'Whole'}</button>
      )}
    </div>
  )
}

/** Keeps in sight what is picked, whenever the drawing is laid out anew; answers how to look for something once it is drawn. */
function useInSight(sheet: RefObject<HTMLDivElement | null>, shown: Shown): (pick: Picked) => void {
  const { opened, stand: { pick: picked }, facts } = shown
  const sought = useRef<Picked | null>(null)
  useEffect(() => {
    sheet.current?.scrollTo({ left: 0, top: 0 })
    sought.current ??= picked
    // Only a new layout brings it back: another pick must not move the drawing.
  }, [opened?.size.width, opened?.size.height])
  useEffect(() => {
    if (!sought.current || !isDrawn(shown, sought.current)) return
    showPicked(sheet.current, sought.current)
    sought.current = null
  })
  const explained = facts !== null
  useEffect(() => { if (picked && explained) keepInView(sheet.current, picked) }, [sheet, picked, explained])
  return (pick) => { sought.current = pick }
}

/** As large as can be chosen, least first: to be read, or all of it at once and then with its names at reading size. */
function scalesOf({ letter, whole }: DrawingSize, fit: number): readonly number[] {
  const seen = Math.min(LARGEST, fit)
  if (!whole) return STEPS.map((step) => Math.max(step, seen))
  return LETTER / letter > seen * 1.01 ? [seen, LETTER / letter] : [seen]
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

// --- choosing a circuit, and how long a movement takes to be seen ---

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
