import { useCallback, useEffect, useRef, useState } from 'react'
import type { Vehicle } from '../record/index.ts'
import type { Pick, Setting } from '../tasks/index.ts'
import { Controls } from './controls.tsx'
import { Drawing } from './drawing.tsx'
import { FactsPanel } from './facts-panel.tsx'
import { fetchNames, fetchText } from './fetch-record.ts'
import { Header } from './header.tsx'
import { Refusal } from './refusal.tsx'
import { useVehicle } from './use-vehicle.ts'
import type { SheetSize } from './messages.ts'

const AT_REST: Setting = { controls: {}, engine: 'stopped', battery: 'full', phases: {} }

/** One vehicle, alive: controls, drawing, facts. */
export function LivePage() {
  const { shown, open, set, layOut, pick } = useVehicle()
  const [names, setNames] = useState<readonly string[]>([])
  const [text, setText] = useState<string | null>(null)
  const [trouble, setTrouble] = useState('')
  const [setting, setSetting] = useState(AT_REST)
  const [picked, setPicked] = useState<Pick | null>(null)
  const [circuit, setCircuit] = useState<string | null>(null)
  const sheet = useRef<SheetSize>({ width: 0, height: 0 })
  const drawn = useRef<string | null>(null)

  const forgetCircuit = useCallback(() => {
    drawn.current = null
    setCircuit(null)
  }, [])

  const openText = useCallback((found: string) => {
    setText(found)
    setTrouble('')
    setPicked(null)
    forgetCircuit()
    setSetting(AT_REST)
    open(found, null, sheet.current, AT_REST)
  }, [open, forgetCircuit])

  useEffect(() => {
    startFrom(setNames, openText, setTrouble)
  }, [openText])

  const move = useCallback((change: Partial<Setting>) => {
    performance.mark('control')
    const next = { ...setting, ...change }
    setSetting(next)
    set(next)
  }, [set, setting])

  const choose = useCallback((vehicle: Vehicle) => {
    if (text === null) return
    setPicked(null)
    forgetCircuit()
    open(text, vehicle, sheet.current, setting)
  }, [open, text, setting, forgetCircuit])

  const pickUp = useCallback((next: Pick | null) => {
    setPicked(next)
    pick(next)
  }, [pick])

  const measure = useCallback((size: SheetSize) => {
    sheet.current = size
    layOut(size, drawn.current)
  }, [layOut])

  const drawCircuit = useCallback((next: string | null) => {
    drawn.current = next
    setCircuit(next)
    layOut(sheet.current, next)
  }, [layOut])

  return (
    <div className="page">
      <Header names={names} opened={shown.opened} refused={shown.refused} choose={choose} openText={openText} />
      {trouble === '' ? null : <p className="trouble" role="alert">{trouble}</p>}
      {shown.refused ? <Refusal refused={shown.refused} /> : null}
      {shown.refused ? null : (
        <>
          <Controls opened={shown.opened} positions={shown.positions} setting={setting} move={move} rest={AT_REST} />
          <Drawing shown={shown} picked={picked} pick={pickUp} measure={measure} circuit={circuit} drawCircuit={drawCircuit} />
          <FactsPanel shown={shown} pick={pickUp} />
        </>
      )}
    </div>
  )
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
