import type { PanelAxis, Setting } from '../tasks/index.ts'
import type { Shown } from './use-vehicle.ts'

/** For paper alone, above the drawing: in which setting it is, what is lit in it, and what must be seen at once. */
export function PrintedSetting({ shown: { opened, positions, stand: { setting, circuit }, lit, notes } }: { readonly shown: Shown }) {
  if (!opened) return null
  return (
    <div className="printed">
      {circuit === null ? null : <p>Drawn: {circuit}.</p>}
      <p>{saySetting(opened.axes, positions, setting, opened.turns)}</p>
      <p>{lit}</p>
      {notes.told.map((note) => <p key={note}><strong>{note}</strong></p>)}
    </div>
  )
}

/** For paper alone, below the drawing: what else is said of the setting and of the wiring, and what the answer rests on. */
export function PrintedNotes({ shown: { opened, notes } }: { readonly shown: Shown }) {
  if (!opened) return null
  const checks = opened.checks.map(({ said, why, picks }) => `${said} ${picks.map((pick) => pick.said).join(', ')}${why === '' ? '' : `: ${why}`}.`)
  const said = [...checks, ...notes.more]
  return (
    <div className="printed">
      {said.length === 0 ? null : <h2>Notes</h2>}
      {said.map((note) => <p key={note}>{note}</p>)}
      {opened.assumed.length === 0 ? null : <h2>Assumed, because the record does not say</h2>}
      <ul>{opened.assumed.map(({ said: value, where }) => <li key={value}>{value}: {where.length > 3 ? `${where.length} places` : where.join(', ')}</li>)}</ul>
      <p>A computed result is a help to judgement. Lamps, brakes and first power of a changed vehicle: local rules and licensed practice decide.</p>
    </div>
  )
}

/** Where everything stands: what has been moved, then engine and battery. */
function saySetting(axes: readonly PanelAxis[], positions: Shown['positions'], { engine, battery }: Setting, turns: boolean): string {
  const moved = axes.filter(({ key, spec }) => (positions[key] ?? spec.rest) !== spec.rest).map(({ key, title, spec }) => `${title} ${positions[key]}${spec.range?.unit ? ` ${spec.range.unit}` : ''}`)
  return [...moved, ...moved.length < axes.length ? [moved.length === 0 ? 'all controls at rest' : 'all other controls at rest'] : [], ...turns ? [`engine ${engine}`] : [], `battery ${battery}`].join('; ').replace(/^./, (letter) => letter.toUpperCase()) + '.'
}
