import { useEffect, useState } from 'react'
import type { Vehicle } from '../record/index.ts'
import type { VehicleChoices } from '../tasks/index.ts'
import type { Answer, OpenedPage } from './messages.ts'

interface HeaderProps {
  readonly names: readonly string[]
  readonly opened: OpenedPage | null
  readonly refused: Extract<Answer, { say: 'refused' }> | null
  readonly choose: (vehicle: Vehicle) => void
  readonly openText: (text: string) => void
}

/** Which vehicle it is, and the choices that make it another. */
export function Header({ names, opened, refused, choose, openText }: HeaderProps) {
  const choices = opened?.choices ?? refused?.choices ?? null
  const vehicle = opened?.vehicle ?? refused?.vehicle ?? {}
  return (
    <header className="head">
      <h1>{opened?.title ?? 'Loomwright'}</h1>
      <p className="under">{opened?.under ?? ''}</p>
      <div className="choices">
        {choices ? <Choices choices={choices} vehicle={vehicle} choose={choose} /> : null}
        {names.length > 1 ? <RecordChoice names={names} /> : null}
        <OpenFile openText={openText} />
        <LookSwitch />
      </div>
    </header>
  )
}

function RecordChoice({ names }: { readonly names: readonly string[] }) {
  const now = new URLSearchParams(location.search).get('record') ?? names[0]
  return (
    <label>Record{' '}
      <select value={now} onChange={(event) => { location.search = `?record=${encodeURIComponent(event.target.value)}` }}>
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
          <select value={String(spanOf(choices, vehicle.year) ?? '')} onChange={(event) => { choose({ ...vehicle, year: Number(event.target.value) }) }}>
            {choices.years.map(({ year, said }) => <option key={year} value={year}>{said}</option>)}
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

/** The year that stands for the span in which a year lies. */
function spanOf({ years }: VehicleChoices, year: number | undefined): number | undefined {
  if (year === undefined) return undefined
  return (years.findLast((span) => span.year <= year) ?? years[0])?.year
}

function OpenFile({ openText }: { readonly openText: (text: string) => void }) {
  return (
    <label className="plain-button">Open a record
      <input type="file" accept=".json,application/json" className="unseen" onChange={(event) => {
        const file = event.target.files?.[0]
        event.target.value = ''
        void file?.text().then(openText)
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
