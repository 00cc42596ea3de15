import { useCallback, useEffect, useState } from 'react'
import { splitAddress } from './address.ts'
import { fetchNames, fetchText } from './fetch-record.ts'
import { keepFile, readFile } from './kept-file.ts'
import type { VehicleHold } from './use-vehicle.ts'

export interface RecordHold {
  /** The records that the server offers. */
  readonly names: readonly string[]
  /** Where a record from this computer is open: which, and whether a reload brings it back. */
  readonly file: OpenedFile | null
  readonly trouble: string
  openFile(file: File): void
}

export interface OpenedFile { readonly name: string; readonly isKept: boolean }

/** The record named in the address, of the server or of this computer; else the first that the server offers. */
export function useRecord(open: VehicleHold['open']): RecordHold {
  const [names, setNames] = useState<readonly string[]>([])
  const [file, setFile] = useState<OpenedFile | null>(null)
  const [trouble, setTrouble] = useState('')
  const fail = useCallback((error: unknown) => { setTrouble(error instanceof Error ? error.message : String(error)) }, [])

  useEffect(() => {
    const search = new URLSearchParams(location.search)
    const named = search.get('file')
    if (named !== null) openKept(named, open, setFile, setTrouble)
    void fetchNames().then(async (offered) => {
      setNames(offered)
      const name = search.get('record') ?? offered.at(0)
      if (named !== null) return
      if (name === undefined) setTrouble('No record is served. Open one from this computer.')
      else open(await fetchText(name), splitAddress(location.hash))
    }).catch(fail)
  }, [open, fail])

  const openFile = useCallback((chosen: File) => {
    void chosen.text().then((text) => {
      history.pushState(null, '', `${location.pathname}?${new URLSearchParams({ file: chosen.name }).toString()}`)
      setFile({ name: chosen.name, isKept: keepFile(chosen.name, text) })
      setTrouble('')
      open(text, [])
    }).catch(fail)
  }, [open, fail])
  return { names, file, trouble, openFile }
}

function openKept(name: string, open: VehicleHold['open'], setFile: (file: OpenedFile) => void, setTrouble: (said: string) => void): void {
  const text = readFile(name)
  if (text === null) {
    setTrouble(`${name} was opened from a file, which this page does not have any more: open it again.`)
    return
  }
  setFile({ name, isKept: true })
  open(text, splitAddress(location.hash))
}
