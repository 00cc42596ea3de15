import { useCallback, useEffect, useReducer, useRef } from 'react'
import type { DrawnGroup } from '../draw/index.ts'
import type { Facts, Pick, Setting } from '../tasks/index.ts'
import type { Answer, Ask, Drawn, From, OpenedPage, View } from './messages.ts'

/** What the page shows at the moment. */
export interface Shown {
  readonly opened: OpenedPage | null
  readonly refused: Extract<Answer, { say: 'refused' }> | null
  /** Groups of the drawing in their order, each with its present SVG. */
  readonly groups: ReadonlyMap<string, DrawnGroup>
  readonly positions: Drawn['positions']
  readonly lit: string
  readonly notes: readonly string[]
  readonly facts: Facts | null
}

const NOTHING: Shown = { opened: null, refused: null, groups: new Map(), positions: {}, lit: '', notes: [], facts: null }

export interface VehicleHold {
  readonly shown: Shown
  open(text: string, from: From, view: View): void
  set(setting: Setting): void
  layOut(view: View): void
  pick(pick: Pick | null): void
}

/** A worker that holds the vehicle, and what it has last said. A movement that comes while it is busy waits; only the last one counts. */
export function useVehicle(): VehicleHold {
  const [shown, receive] = useReducer(take, NOTHING)
  const line = useRef<Line | null>(null)
  useEffect(() => {
    const held = new Line(receive)
    line.current = held
    return () => { held.end() }
  }, [])
  const send = useCallback((asked: Ask) => { line.current?.send(asked) }, [])
  return {
    shown,
    open: useCallback((text, from, view) => { send({ ask: 'open', text, from, view }) }, [send]),
    set: useCallback((setting) => { send({ ask: 'set', setting }) }, [send]),
    layOut: useCallback((view) => { send({ ask: 'sheet', view }) }, [send]),
    pick: useCallback((pick) => { send({ ask: 'pick', pick }) }, [send]),
  }
}

/** The wire to the worker: one question at a time. */
class Line {
  private readonly worker = new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' })
  private busy = false
  private readonly waiting: Ask[] = []

  constructor(receive: (answer: Answer) => void) {
    this.worker.onmessage = (event: MessageEvent<Answer>) => {
      receive(event.data)
      if (event.data.say === 'notes') return
      this.busy = false
      this.next()
    }
  }

  send(asked: Ask): void {
    const same = this.waiting.findIndex(({ ask }) => ask === asked.ask)
    if (same >= 0) this.waiting.splice(same, 1)
    this.waiting.push(asked)
    this.next()
  }

  end(): void {
    this.worker.terminate()
  }

  private next(): void {
    const asked = this.busy ? undefined : this.waiting.shift()
    if (!asked) return
    this.busy = true
    this.worker.postMessage(asked)
  }
}

function take(shown: Shown, answer: Answer): Shown {
  switch (answer.say) {
    case 'refused': return { ...NOTHING, refused: answer }
    case 'opened': return { ...NOTHING, opened: answer.opened, ...unpack(new Map(), answer.drawn) }
    case 'laid out': return shown.opened ? { ...shown, opened: { ...shown.opened, size: answer.size }, ...unpack(new Map(), answer.drawn) } : shown
    case 'drawn': return { ...shown, ...unpack(shown.groups, answer.drawn) }
    case 'facts': return { ...shown, facts: answer.facts }
    case 'notes': return { ...shown, notes: answer.notes }
  }
}

function unpack(before: ReadonlyMap<string, DrawnGroup>, { groups, positions, lit, notes, facts }: Drawn): Part<Shown, 'groups' | 'positions' | 'lit' | 'notes' | 'facts'> {
  const next = new Map(before)
  for (const group of groups) next.set(`${group.kind} ${group.id}`, group)
  return { groups: next, positions, lit, notes, facts }
}

type Part<T, K extends keyof T> = { readonly [P in K]: T[P] }
