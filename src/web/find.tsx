import { useId, useRef, useState, type KeyboardEvent } from 'react'
import type { Findable, Picked } from '../tasks/index.ts'

interface FindProps {
  /** What was found by the words last asked for. */
  readonly found: readonly Findable[]
  readonly ask: (words: string) => void
  readonly take: (pick: Picked) => void
}

/** As many as a person looks through; more words find less. */
const MOST = 40

/** A field to be typed into: what has all the words is listed below it, to be chosen by finger or arrow keys. */
export function Find({ found, ask, take }: FindProps) {
  const [words, setWords] = useState('')
  const [isOpen, setOpen] = useState(false)
  const [at, setAt] = useState(0)
  const list = useId()
  const field = useRef<HTMLInputElement>(null)
  const shown = found.slice(0, MOST)
  const show = (said: string) => {
    setWords(said)
    setAt(0)
    setOpen(true)
    ask(said)
  }
  const choose = (one: Findable | undefined) => {
    if (!one) return
    setWords('')
    setOpen(false)
    field.current?.focus()
    take(one.pick)
  }
  const press = (event: KeyboardEvent) => {
    const step = { ArrowDown: 1, ArrowUp: -1 }[event.key]
    if (step !== undefined) {
      event.preventDefault()
      if (!isOpen) show(words)
      else setAt(Math.max(0, Math.min(shown.length - 1, at + step)))
    } else if (event.key === 'Enter' && isOpen) choose(shown[at])
    else if (event.key === 'Escape' && isOpen) {
      event.stopPropagation()
      setOpen(false)
    }
  }
  return (
    <div className="find" onBlur={({ currentTarget, relatedTarget }) => { if (!currentTarget.contains(relatedTarget)) setOpen(false) }}>
      <label><span>Find </span>
        <input ref={field} type="search" role="combobox" aria-label="Find" aria-expanded={isOpen} aria-controls={list} aria-autocomplete="list" autoComplete="off" spellCheck={false}
          aria-activedescendant={isOpen && at < shown.length ? `${list}-${at}` : undefined} placeholder="part, wire, colour, place" value={words}
          onFocus={() => { show(words) }} onClick={() => { show(words) }} onChange={(event) => { show(event.target.value) }} onKeyDown={press} />
      </label>
      {isOpen ? (
        <ul id={list} className="found" role="listbox" aria-label="Found">
          {shown.map((one, i) => (
            <li key={`${one.pick.kind} ${one.pick.id}`} id={`${list}-${i}`} role="option" aria-selected={i === at} data-found={`${one.pick.kind} ${one.pick.id}`}
              ref={i === at ? keepSeen : undefined}
              onMouseDown={(event) => { event.preventDefault() }} onClick={() => { choose(one) }}>{one.said}</li>
          ))}
          {shown.length < found.length ? <li className="soft" role="presentation">and {found.length - shown.length} more: say another word of it</li> : null}
          {found.length === 0 ? <li className="soft" role="presentation">Nothing here has all these words.</li> : null}
        </ul>
      ) : null}
    </div>
  )
}

function keepSeen(option: HTMLLIElement | null): void {
  option?.scrollIntoView({ block: 'nearest' })
}
