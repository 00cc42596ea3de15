import { useEffect, useState } from 'react'
import type { Vehicle } from '../record/index.ts'
import type { VehicleChoices } from '../tasks/index.ts'
import type { Vehicles } from './messages.ts'
import type { OpenedFile, RecordHold } from './use-record.ts'

interface HeaderProps {
  readonly record: RecordHold
  readonly vehicles: Vehicles & { readonly title: string } | null
  /** What the vehicle is, in few words; empty where none is open. */
  readonly under: string
  readonly choose: (vehicle: Vehicle) => void
}

/** Which vehicle it is, and the choices that make it another; on a phone these are folded away. */
export function Header({ record: { names, file, openFile }, vehicles, under, choose }: HeaderProps) {
  const title = vehicles?.title ?? ''
  const [isOpen, setOpen] = useState(false)
  return (
    <header className={isOpen ? 'head is-open' : 'head'}>
      <h1>{title === '' ? 'Loomwright' : title}</h1>
      <p className="under">{[under, ...file ? [sayFile(file)] : []].filter(Boolean).join(' · ')}</p>
      <button type="button" className="plain-button fold" aria-expanded={isOpen} onClick={() => { setOpen(!isOpen) }}>{isOpen ? 'Done' : 'Vehicle'}</button>
      <div className="choices">
        {vehicles?.choices ? <Choices choices={vehicles.choices} vehicle={vehicles.vehicle} choose={choose} /> : null}
        {names.length > (file ? 0 : 1) ? <RecordChoice names={names} file={file} /> : null}
        <OpenFile openFile={openFile} />
        <LookSwitch />
      </div>
    </header>
  )
}

function sayFile({ name, isKept }: OpenedFile): string {
  return `${name} from this computer${isKept ? '' : ', too large to be kept: after a reload it must be opened again'}`
}

function RecordChoice({ names, file }: Pick<RecordHold, 'names' | 'file'>) {
  const now = file ? '' : new URLSearchParams(location.search).get('record') ?? names[0]
  return (
    <label>Record{' '}
      <select value={now} onChange={(event) => { location.assign(`${location.pathname}?record=${encodeURIComponent(event.target.value)}`) }}>
        {file ? <option value="">{file.name}</option> : null}
        {names.map((name) => <option key={name}>{name}</option>)}
      </select>
    </label>
  )
}

function Choices({ choices, vehicle, choose }: { readonly choices: VehicleChoices, readonly vehicle: Vehicle, readonly choose: (vehicle: Vehicle) => void }) {
  return (
    <>
      {choices.years.length > 0 ? (
        <label>Built{' '}
          <select value={spanOf(choices, vehicle.year)?.said ?? ''} onChange={(event) => { choose({ ...vehicle, year: choices.years.find(({ said }) => said === event.target.value)?.year }) }}>
            {spanOf(choices, vehicle.year) ? null : <option value="">{vehicle.year ?? 'not known'}, not in this record</option>}
            {choices.years.map(({ said, fits }) => <option key={said} value={said}>{said}{fits ? '' : ', does not fit together'}</option>)}
          </select>
        </label>
      ) : null}
      {choices.markets.length > 1 ? (
        <label>Market{' '}
          <select value={vehicle.market ?? ''} onChange={(event) => { choose({ ...vehicle, market: event.target.value }) }}>
            {choices.markets.map(({ id, title }) => <option key={id} value={id}>{title}</option>)}
          </select>
        </label>
      ) : null}
      {choices.options.map(({ id, title, usual }) => (
        <label key={id} className="tick">
          <input type="checkbox" checked={vehicle.options?.[id] ?? usual} onChange={(event) => { choose({ ...vehicle, options: { ...vehicle.options, [id]: event.target.checked } }) }} />
          {' '}{title}
        </label>
      ))}
      {choices.serials.map(({ id, title }) => (
        <label key={id}>{title}{' '}
          <input className="serial" defaultValue={vehicle.serials?.[id] ?? ''} onBlur={(event) => {
            const said = event.target.value.trim()
            if (said !== (vehicle.serials?.[id] ?? '')) choose({ ...vehicle, serials: { ...vehicle.serials, [id]: said } })
          }} />
        </label>
      ))}
    </>
  )
}

/** The span in which a year lies. */
function spanOf({ years }: VehicleChoices, year: number | undefined): VehicleChoices['years'][number] | undefined {
  return year === undefined ? undefined : years.find(({ from = year, to = year }) => from <= year && year <= to)
}

function OpenFile({ openFile }: Pick<RecordHold, 'openFile'>) {
  return (
    <label className="plain-button">Open a record
      <input type="file" accept=".json,application/json" className="unseen" onChange={(event) => {
        const file = event.target.files?.[0]
        event.target.value = ''
        if (file) openFile(file)
      }} />
    </label>
  )
}

type Look = 'day' | 'night'

/** As the computer is set, until a person says otherwise. */
function LookSwitch() {
  const [look, setLook] = useState<Look>(() => {
    const kept = localStorage.getItem('look')
    if (kept === 'day' || kept === 'night') return kept
    return matchMedia('(prefers-color-scheme: dark)').matches ? 'night' : 'day'
  })
  useEffect(() => { document.documentElement.dataset.look = look }, [look])
  const other: Look = look === 'day' ? 'night' : 'day'
  return (
    <button type="button" className="plain-button" onClick={() => {
      localStorage.setItem('look', other)
      setLook(other)
    }}>{other === 'night' ? 'Night' : 'Day'}</button>
  )
}
