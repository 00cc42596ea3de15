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
  const field = useRef<HTMLInputElement>(null)
  const list = useId()
  const { words, isOpen, at, shown, show, hide, choose, press } = useChoice(found, ask, (one) => {
    field.current?.focus()
    take(one.pick)
  })
  return (
    <div className="find" onBlur={({ currentTarget, relatedTarget }) => { if (!currentTarget.contains(relatedTarget)) hide() }}>
      <label><span>Find </span>
        <input ref={field} type="search" role="combobox" aria-label="Find" aria-expanded={isOpen} aria-controls={list} aria-autocomplete="list" autoComplete="off" spellCheck={false}
          aria-activedescendant={isOpen && at < shown.length ? `${list}-${at}` : undefined} placeholder="part, wire, colour, place" value={words}
          onClick={() => { show(words) }} onChange={(event) => { show(event.target.value) }} onKeyDown={press} />
      </label>
      {isOpen ? <FoundList id={list} shown={shown} at={at} left={found.length - shown.length} choose={choose} /> : null}
    </div>
  )
}

/** What is typed, which of the found is marked, and what the keys do to it. */
function useChoice(found: readonly Findable[], ask: (words: string) => void, take: (one: Findable) => void) {
  const [words, setWords] = useState('')
  const [isOpen, setOpen] = useState(false)
  const [at, setAt] = useState(0)
  const shown = found.slice(0, MOST)
  const show = (said: string) => {
    setWords(said)
    setAt(0)
    setOpen(true)
    ask(said)
  }
  const choose = (one: Findable) => {
    setWords('')
    setOpen(false)
    take(one)
  }
  const press = (event: KeyboardEvent) => {
    const step = { ArrowDown: 1, ArrowUp: -1 }[event.key]
    if (step === undefined && !isOpen) return
    if (step !== undefined) {
      event.preventDefault()
      if (isOpen) setAt(Math.max(0, Math.min(shown.length - 1, at + step)))
      else show(words)
    } else if (event.key === 'Enter' && at < shown.length) choose(shown[at])
    else if (event.key === 'Escape') {
      event.stopPropagation()
      setOpen(false)
    }
  }
  return { words, isOpen, at, shown, show, hide: () => { setOpen(false) }, choose, press }
}

interface FoundListProps { readonly id: string, readonly shown: readonly Findable[], readonly at: number, readonly left: number, readonly choose: (one: Findable) => void }

function FoundList({ id, shown, at, left, choose }: FoundListProps) {
  return (
    <ul id={id} className="found" role="listbox" aria-label="Found">
      {shown.map((one, i) => (
        <li key={`${one.pick.kind} ${one.pick.id}`} id={`${id}-${i}`} role="option" aria-selected={i === at} data-found={`${one.pick.kind} ${one.pick.id}`}
          ref={i === at ? keepSeen : undefined} onMouseDown={keepFocus} onClick={() => { choose(one) }}>{one.said}</li>
      ))}
      {left > 0 ? <li className="soft" role="presentation">and {left} more: say another word of it</li> : null}
      {shown.length === 0 ? <li className="soft" role="presentation">Nothing here has all these words.</li> : null}
    </ul>
  )
}

function keepSeen(option: HTMLLIElement | null): void {
  option?.scrollIntoView({ block: 'nearest' })
}

/** A press on the list must not take the keys away from the field. */
function keepFocus(event: { preventDefault(): void }): void {
  event.preventDefault()
}
