import { useCallback, useEffect, useRef, useState } from 'react'
import type { Vehicle } from '../record/index.ts'
import type { Pick, Setting } from '../tasks/index.ts'
import { AT_REST, readSetting, readVehicle, splitAddress, writeAddress } from './address.ts'
import { Controls } from './controls.tsx'
import { Drawing } from './drawing.tsx'
import { FactsPanel } from './facts-panel.tsx'
import { fetchNames, fetchText } from './fetch-record.ts'
import { Header } from './header.tsx'
import type { From, OpenedPage, View } from './messages.ts'
import { Refusal } from './refusal.tsx'
import { useVehicle } from './use-vehicle.ts'

/** One vehicle, alive: controls, drawing, facts. Vehicle and setting stand in the address, so that they can be kept, sent and gone back to. */
export function LivePage() {
  const { shown, open, set, layOut, pick } = useVehicle()
  const { opened } = shown
  const [names, setNames] = useState<readonly string[]>([])
  const [text, setText] = useState<string | null>(null)
  const [trouble, setTrouble] = useState('')
  const [setting, setSetting] = useState(AT_REST)
  const [picked, setPicked] = useState<Pick | null>(null)
  const [view, setView] = useState<View>(FIRST_VIEW)
  const viewed = useRef(view)
  const clicked = useRef<Element | null>(null)

  const see = useCallback((change: Partial<View>) => {
    viewed.current = { ...viewed.current, ...change }
    setView(viewed.current)
    return viewed.current
  }, [])

  const openFrom = useCallback((found: string, from: From) => {
    setText(found)
    setTrouble('')
    setPicked(null)
    open(found, from, see({ circuit: null, whole: false }))
  }, [open, see])

  const openText = useCallback((found: string) => {
    keepAddress('', false)
    openFrom(found, { kind: 'chosen', vehicle: null, setting: AT_REST })
  }, [openFrom])
  const openAddressed = useCallback((found: string) => { openFrom(found, { kind: 'address', words: splitAddress(location.hash) }) }, [openFrom])

  useEffect(() => { startFrom(setNames, openAddressed, setTrouble) }, [openAddressed])
  const opening = opened?.setting
  useEffect(() => { if (opening) setSetting(opening) }, [opening])

  useEffect(() => {
    const back = () => {
      const before = opened && settingBefore(opened)
      if (before) {
        setSetting(before)
        set(before)
      } else if (text !== null) openAddressed(text)
    }
    addEventListener('popstate', back)
    return () => { removeEventListener('popstate', back) }
  }, [text, opened, set, openAddressed])

  const move = useCallback((change: Partial<Setting>) => {
    performance.mark('control')
    const next = { ...setting, ...change }
    setSetting(next)
    set(next)
    if (opened) keepAddress(writeAddress(opened.vehicle, next, opened.first), isSlide(setting, next))
  }, [set, setting, opened])

  const choose = useCallback((vehicle: Vehicle) => {
    const first = opened?.first ?? vehicle
    if (text === null) return
    keepAddress(writeAddress(vehicle, setting, first), false)
    openFrom(text, { kind: 'chosen', vehicle, setting })
  }, [openFrom, text, setting, opened])

  const pickUp = useCallback((next: Pick | null) => {
    if (next) clicked.current = document.activeElement
    setPicked(next)
    pick(next)
  }, [pick])

  const close = useCallback(() => {
    const from = clicked.current
    const drawn = picked && document.querySelector(`g[data-kind="${picked.kind}"][data-id="${CSS.escape(picked.id)}"]`)
    pickUp(null)
    const focused = from instanceof HTMLSelectElement ? from : drawn
    if (focused instanceof HTMLElement || focused instanceof SVGElement) focused.focus()
  }, [picked, pickUp])

  useEffect(() => {
    if (!picked) return undefined
    const escape = (event: KeyboardEvent) => { if (event.key === 'Escape') close() }
    addEventListener('keydown', escape)
    return () => { removeEventListener('keydown', escape) }
  }, [picked, close])

  const show = useCallback((change: Partial<View>) => { layOut(see(change)) }, [layOut, see])

  return (
    <div className={picked && shown.facts ? 'page has-facts' : 'page'}>
      <Header names={names} opened={opened} refused={shown.refused} choose={choose} openText={openText} />
      {trouble === '' && !opened?.ignored.length ? null : (
        <p className="trouble" role="alert">{[trouble, ...opened?.ignored ?? []].join(' ')}</p>
      )}
      {shown.refused ? <Refusal refused={shown.refused} /> : (
        <>
          <Controls opened={opened} positions={shown.positions} setting={setting} move={move} rest={AT_REST} />
          <Drawing shown={shown} picked={picked} pick={pickUp} view={view} show={show} />
          <FactsPanel shown={shown} setting={setting} move={move} close={close} />
        </>
      )}
    </div>
  )
}

const FIRST_VIEW: View = { sheet: { width: 0, height: 0 }, circuit: null, whole: false }

/** The setting that the address says, where it is of the vehicle that is open; else null. */
function settingBefore({ first, vehicle, choices, axes }: OpenedPage): Setting | null {
  const read = readVehicle(splitAddress(location.hash), first, choices)
  const isSame = writeAddress(read.vehicle, AT_REST, first) === writeAddress(vehicle, AT_REST, first)
  return isSame ? readSetting(read.rest, axes).setting : null
}

/** Each movement is a step to go back by; a lever that slides makes one step only. */
function keepAddress(hash: string, slides: boolean): void {
  const address = `${location.pathname}${location.search}${hash}`
  if (slides) history.replaceState(null, '', address)
  else history.pushState(null, '', address)
}

function isSlide(before: Setting, after: Setting): boolean {
  const moved = Object.keys(after.controls).filter((key) => before.controls[key] !== after.controls[key])
  return moved.length === 1 && typeof before.controls[moved[0]] === 'number'
}

/** The record named in the address, else the first that the server offers. */
function startFrom(setNames: (names: readonly string[]) => void, openText: (text: string) => void, fail: (said: string) => void): void {
  void fetchNames().then(async (names) => {
    setNames(names)
    const name = new URLSearchParams(location.search).get('record') ?? names[0]
    if (name === undefined) fail('No record is served. Open one from this computer.')
    else openText(await fetchText(name))
  }).catch((error: unknown) => { fail(error instanceof Error ? error.message : String(error)) })
}
