import { useLayoutEffect, useRef, useState } from 'react'
import type { AssumedLine, Check, Picked } from '../tasks/index.ts'
import { PrintedNotes } from './printed.tsx'
import type { Shown } from './use-vehicle.ts'

interface UnderDrawingProps { readonly shown: Shown, readonly take: (pick: Picked) => void }

/** In words below the drawing: what must be seen at once, what is lit; and folded, what can wait and what the answer rests on. */
export function UnderDrawing({ shown, take }: UnderDrawingProps) {
  const { lit, notes, opened } = shown
  if (!opened) return <div className="under-drawing" />
  const loud = opened.checks.filter(({ isQuiet }) => !isQuiet), quiet = opened.checks.filter(({ isQuiet }) => isQuiet)
  return (
    <div className="under-drawing">
      <div className="told" role="status">{notes.told.map((note) => <p key={note}>{note}</p>)}</div>
      {loud.map((check) => <Look key={check.said} check={check} take={take} />)}
      <Lit said={lit} />
      <details>
        <summary>{sayCount(notes.more.length + quiet.length, opened.assumed)}</summary>
        <div className="notes" tabIndex={0} role="region" aria-label="Notes and assumptions">
          {notes.more.map((note) => <p key={note}>{note}</p>)}
          {quiet.map((check) => <Look key={check.said} check={check} take={take} />)}
          <ul>{opened.assumed.map((line) => <li key={line.said}>{line.said} <span className="soft">{sayWhere(line)}</span></li>)}</ul>
        </div>
      </details>
      <PrintedNotes shown={shown} />
    </div>
  )
}

/** As many things as a line names before the rest is asked for. */
const FEW = 4

/** Something to be looked at, and a way to each thing that it is about. */
function Look({ check: { said, why, picks }, take }: { readonly check: Check, readonly take: (pick: Picked) => void }) {
  const [isAll, setAll] = useState(false)
  const shown = isAll ? picks : picks.slice(0, FEW)
  return (
    <p className="look">{said}{' '}
      {shown.map(({ pick, said: name }) => <button key={name} type="button" className="link" onClick={() => { take(pick) }}>{name}</button>)}
      {shown.length < picks.length ? <button type="button" className="link" onClick={() => { setAll(true) }}>and {picks.length - FEW} more</button> : null}
      {why === '' ? null : <span className="soft">: {why}</span>}
    </p>
  )
}

/** What is lit in two lines; where there is more, a button says so. */
function Lit({ said }: { readonly said: string }) {
  const text = useRef<HTMLParagraphElement>(null)
  const [isCut, setCut] = useState(false)
  const [isOpen, setOpen] = useState(false)
  useLayoutEffect(() => {
    const element = text.current
    if (!element) return undefined
    const measure = () => { setCut(element.scrollHeight > element.clientHeight + 2) }
    measure()
    const observer = new ResizeObserver(measure)
    observer.observe(element)
    return () => { observer.disconnect() }
  }, [said])
  return (
    <div className={isOpen ? 'lit is-open' : 'lit'}>
      <p ref={text} aria-live="polite">{said}</p>
      {isCut || isOpen ? <button type="button" className="plain-button" aria-expanded={isOpen} onClick={() => { setOpen(!isOpen) }}>{isOpen ? 'Less' : 'All'}</button> : null}
    </div>
  )
}

function sayCount(notes: number, assumed: readonly AssumedLine[]): string {
  const values = assumed.reduce((sum, { where }) => sum + where.length, 0)
  const said = [...notes > 0 ? [`${notes} ${notes === 1 ? 'note' : 'notes'}`] : [], ...values > 0 ? [`${values} assumed ${values === 1 ? 'value' : 'values'}`] : []]
  return said.length === 0 ? 'Nothing is assumed' : said.join(', ')
}

function sayWhere({ where }: AssumedLine): string {
  return where.length > 3 ? `${where.slice(0, 3).join(', ')} and ${where.length - 3} more` : where.join(', ')
}
