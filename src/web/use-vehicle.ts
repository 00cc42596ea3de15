import { useCallback, useEffect, useMemo, useReducer, useRef } from 'react'
import { flushSync } from 'react-dom'
import type { DrawnGroup } from '../draw/index.ts'
import type { Vehicle } from '../record/index.ts'
import type { Facts, Findable, LiveCard } from '../tasks/index.ts'
import { AT_START, type AddressWords, type Stand } from './address.ts'
import type { Answer, Ask, Drawn, OpenedPage, Refused, SheetSize } from './messages.ts'

/** What the page shows at the moment. */
export interface Shown {
  readonly opened: OpenedPage | null
  readonly refused: Refused | null
  /** As last asked for: the controls stand so at once, the drawing follows. */
  readonly stand: Stand
  readonly ignored: readonly string[]
  /** Groups of the drawing in their order, each with its present SVG. */
  readonly groups: ReadonlyMap<string, DrawnGroup>
  readonly positions: Drawn['positions']
  readonly lit: string
  readonly notes: Drawn['notes']
  readonly facts: Facts | null
  readonly card: LiveCard | null
  readonly found: readonly Findable[]
  /** An answer takes so long that a person should be told. */
  readonly isBusy: boolean
  /** What the program could not do; empty as long as all goes well. */
  readonly failed: string
}

const NOTHING: Shown = { opened: null, refused: null, stand: AT_START, ignored: [], groups: new Map(), positions: {}, lit: '', notes: { told: [], more: [] }, facts: null, card: null, found: [], isBusy: false, failed: '' }

export interface VehicleHold {
  readonly shown: Shown
  /** Another record, at what the address says. */
  open(text: string, words: AddressWords): void
  /** Another vehicle of the record. */
  choose(vehicle: Vehicle): void
  /** To what the address says, of this vehicle or another. */
  go(words: AddressWords): void
  /** Sets and looks at something else; answers whether it is so, which it is not while another vehicle is being opened. */
  move(change: Partial<Stand>): boolean
  measure(sheet: SheetSize): void
  find(words: string): void
}

/** A worker that holds the vehicle, what it has last said, and what has been asked of it since. */
export function useVehicle(): VehicleHold {
  const [shown, receive] = useReducer(take, NOTHING)
  const line = useRef<Line | null>(null)
  const sheet = useRef<SheetSize>({ width: 0, height: 0 })
  useEffect(() => {
    // At once: the next movement must meet what this answer says.
    const held = new Line((answer) => { flushSync(() => { receive(answer) }) }, (isBusy) => { receive({ say: 'busy', isBusy }) })
    line.current = held
    return () => { held.end() }
  }, [])
  const { stand } = shown
  const send = useCallback((asked: Ask) => { line.current?.send(asked) }, [])
  const asks = useMemo(() => ({
    open: (text: string, words: AddressWords) => { send({ ask: 'open', text, words, sheet: sheet.current }) },
    go: (words: AddressWords) => { send({ ask: 'go', words, sheet: sheet.current }) },
    measure: (size: SheetSize) => {
      sheet.current = size
      send({ ask: 'sheet', sheet: size })
    },
    find: (words: string) => { send({ ask: 'find', words }) },
  }), [send])
  const choose = useCallback((vehicle: Vehicle) => {
    receive({ say: 'chosen', vehicle })
    send({ ask: 'choose', vehicle, stand, sheet: sheet.current })
  }, [send, stand])
  const move = useCallback((change: Partial<Stand>) => {
    if (line.current?.isOpening() !== false) return false
    const next = { ...stand, ...change }
    receive({ say: 'moved', stand: next })
    if (change.setting) send({ ask: 'set', setting: next.setting })
    if ('circuit' in change || 'whole' in change) send({ ask: 'view', view: next })
    if ('pick' in change || 'card' in change) send({ ask: 'pick', pick: next.pick, card: next.card })
    return true
  }, [send, stand])
  return { shown, ...asks, choose, move }
}

/** From when on a person is told to wait, ms. */
const LONG_MS = 300

/** The wire to the worker: one question at a time. A movement that comes while it is busy waits; only the last one counts. */
class Line {
  private readonly worker = new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' })
  private asked: Ask | null = null
  private waiting: Ask[] = []
  private isLong = false
  private patience: ReturnType<typeof setTimeout> | undefined

  constructor(receive: (answer: Answer) => void, private readonly tellBusy: (isBusy: boolean) => void) {
    this.worker.onerror = ({ message }) => { receive({ say: 'failed', said: message }) }
    this.worker.onmessage = (event: MessageEvent<Answer>) => {
      if (event.data.say !== 'notes') this.asked = null
      if (!this.asked && this.waiting.length === 0) this.rest()
      // An answer that another vehicle has been asked for since is late: what is shown waits for that one.
      if (!this.waiting.some(opens)) receive(event.data)
      this.next()
    }
  }

  send(asked: Ask): void {
    // What was to be done to the vehicle before is not to be done to the next one.
    this.waiting = this.waiting.filter((other) => other.ask !== asked.ask && (!opens(asked) || opens(other)))
    this.waiting.push(asked)
    this.next()
  }

  /** Whether a vehicle has been asked for that has not been answered yet. */
  isOpening(): boolean {
    return [this.asked, ...this.waiting].some((one) => one !== null && opens(one))
  }

  end(): void {
    clearTimeout(this.patience)
    this.worker.terminate()
  }

  private next(): void {
    const asked = this.asked ? undefined : this.waiting.shift()
    if (!asked) return
    this.asked = asked
    this.patience ??= setTimeout(() => { this.tellBusy(this.isLong = true) }, LONG_MS)
    this.worker.postMessage(asked)
  }

  private rest(): void {
    clearTimeout(this.patience)
    this.patience = undefined
    if (this.isLong) this.tellBusy(this.isLong = false)
  }
}

const opens = ({ ask }: Ask) => ask === 'open' || ask === 'choose' || ask === 'go'

/** What the page says itself: what has been asked for, since its controls and choices stand so at once, and that an answer takes long. */
type Own = { readonly say: 'busy'; readonly isBusy: boolean } | { readonly say: 'moved'; readonly stand: Stand } | { readonly say: 'chosen'; readonly vehicle: Vehicle }

function take(shown: Shown, answer: Answer | Own): Shown {
  switch (answer.say) {
    case 'refused': return { ...NOTHING, isBusy: shown.isBusy, stand: shown.stand, refused: answer.refused }
    case 'opened': return { ...NOTHING, isBusy: shown.isBusy, opened: answer.opened, ...answer.went, ...unpack(new Map(), answer.drawn) }
    case 'laid out': return shown.opened ? { ...shown, opened: { ...shown.opened, size: answer.size, axes: answer.axes }, ...unpack(new Map(), answer.drawn) } : shown
    case 'drawn': return { ...shown, ...unpack(shown.groups, answer.drawn) }
    case 'facts': return { ...shown, facts: answer.facts, card: answer.card }
    case 'found': return { ...shown, found: answer.found }
    case 'notes': return { ...shown, notes: answer.notes }
    case 'nothing': return shown
    case 'failed': return { ...shown, failed: `The page has failed here (${answer.said}): what is shown may not be what was asked for. Reload it.` }
    case 'busy': return { ...shown, isBusy: answer.isBusy }
    case 'moved': return { ...shown, stand: answer.stand }
    case 'chosen': return { ...shown, opened: shown.opened && { ...shown.opened, vehicle: answer.vehicle }, refused: shown.refused && { ...shown.refused, vehicle: answer.vehicle } }
  }
}

function unpack(before: ReadonlyMap<string, DrawnGroup>, { groups, ...said }: Drawn): Pick<Shown, 'groups' | Exclude<keyof Drawn, 'groups'>> {
  const next = new Map(before)
  for (const group of groups) next.set(`${group.kind} ${group.id}`, group)
  return { groups: next, ...said }
}
