import type { WireColour } from '../draw/index.ts'
import type { Facts, PanelAxis, Setting } from '../tasks/index.ts'
import { Axes } from './controls.tsx'
import type { Shown } from './use-vehicle.ts'

interface FactsPanelProps {
  readonly shown: Shown
  readonly move: (change: Partial<Setting>) => void
  readonly close: () => void
  readonly showCard: () => void
}

/** What was clicked: first what is to be thought of it, then its controls and figures, last where the figures come from. */
export function FactsPanel({ shown: { facts, card, opened, positions, stand: { setting, pick: picked } }, move, close, showCard }: FactsPanelProps) {
  if (!facts || !picked) return null
  const { pick } = facts
  const axes = opened?.axes.filter(({ part }) => pick.kind === 'part' && part === pick.id) ?? []
  return (
    <aside className="facts" aria-label="Facts">
      <div className="kicker"><h2>{facts.kicker}</h2><button type="button" className="plain-button" onClick={close}>Close</button></div>
      {facts.colour ? <Stripe colour={facts.colour} /> : null}
      <p className="fact-title">{facts.title}</p>
      <p className="soft">{facts.under}</p>
      {pick.kind === 'part' && !card ? <p><button type="button" className="plain-button" onClick={showCard}>Connection card</button></p> : null}
      {facts.judgement === '' ? null : <p className="judgement">{facts.judgement}</p>}
      <Turn axes={axes} positions={positions} setting={setting} move={move} />
      <dl>
        {facts.rows.map(({ name, said }, i) => <div key={`${name}${i}`}><dt>{name}</dt><dd>{said}</dd></div>)}
      </dl>
      {facts.plain === '' ? null : <p className="soft">{facts.plain}</p>}
      <Sources facts={facts} />
    </aside>
  )
}

function Turn({ axes, positions, setting, move }: Pick<FactsPanelProps, 'move'> & { readonly axes: readonly PanelAxis[], readonly setting: Setting, readonly positions: Shown['positions'] }) {
  return axes.length === 0 ? null : <div className="turn"><Axes axes={axes} of="facts " positions={positions} setting={setting} move={move} /></div>
}

function Sources({ facts: { rows } }: { readonly facts: Facts }) {
  const sources = rows.flatMap(({ name, source }) => source === undefined ? [] : [{ name, source }])
  if (sources.length === 0) return null
  return (
    <details className="sources">
      <summary>Sources</summary>
      {sources.map(({ name, source }) => <p key={name}>{name}: {source}</p>)}
    </details>
  )
}

/** The insulation as it looks in the hand. */
function Stripe({ colour: { base, tracers, words } }: { readonly colour: WireColour }) {
  return (
    <svg className="stripe" viewBox="0 0 260 18" preserveAspectRatio="none" role="img" aria-label={words}>
      <rect x="1" y="1" width="258" height="16" rx="8" fill={base === '' ? 'var(--sheet)' : base} stroke="var(--casing)" strokeDasharray={base === '' ? '5 4' : undefined} />
      {[0, 1, 2, 3, 4].map((i) => tracers.map((css, k) => (
        <polygon key={`${i} ${css}`} points={slant(26 + i * 48 + k * (48 / tracers.length))} fill={css} />
      )))}
    </svg>
  )
}

function slant(x: number): string {
  return `${x},16.5 ${x + 9},16.5 ${x + 16},1.5 ${x + 7},1.5`
}
